package org.ferryglide.tide.harmonic;

import java.util.List;

/** What every scheme does with compounds: factors multiply, angles add up. */
final class CompoundNodes {
  private CompoundNodes() {}

  /** Writes the correction of one constituent that is not a compound. */
  interface Simple {
    void write(Constituent constituent, double[] out, int offset);
  }

  static void write(List<Constituent> constituents, Simple simple, double[] out) {
    double[] part = new double[2];
    for (int i = 0; i < constituents.size(); i++) {
      Constituent constituent = constituents.get(i);
      if (!constituent.isCompound()) {
        simple.write(constituent, out, 2 * i);
        continue;
      }
      double factor = 1.0;
      double angle = 0.0;
      for (Constituent.Part p : constituent.parts()) {
        simple.write(p.constituent(), part, 0);
        for (int n = Math.abs(p.times()); n > 0; n--) {
          factor *= part[0];
        }
        angle += p.times() * part[1];
      }
      out[2 * i] = factor;
      out[2 * i + 1] = angle;
    }
  }

  static IllegalArgumentException unknown(Constituent constituent, NodalScheme scheme) {
    return new IllegalArgumentException(
        "constituent must have a nodal correction in the scheme of "
            + scheme.name()
            + ", but was "
            + constituent.name());
  }
}
