package org.ferryglide.nav.teach;

import java.io.Serializable;

/** One figure of a problem: given where the rule reads nothing, else worked out. */
record Line(String name, Quantity quantity, String words, boolean given, Rule rule)
    implements Serializable {
  private static final long serialVersionUID = 1L;
}
