package org.ferryglide.nav.teach;

import java.io.Serializable;

/** A slip and the arithmetic that makes it. */
record SlipRule(Slip slip, Rule rule) implements Serializable {
  private static final long serialVersionUID = 1L;
}
