package org.ferryglide.nav.teach;

/** A slip and the arithmetic that makes it. */
record SlipRule(Slip slip, Rule rule) {}
