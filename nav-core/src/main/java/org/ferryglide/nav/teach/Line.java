package org.ferryglide.nav.teach;

/** One figure of a problem: given where the rule reads nothing, else worked out. */
record Line(String name, Quantity quantity, String words, boolean given, Rule rule) {}
