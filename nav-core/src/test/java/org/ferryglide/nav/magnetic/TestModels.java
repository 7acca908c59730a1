package org.ferryglide.nav.magnetic;

import org.ferryglide.testing.Rows;

/** The built-in figures again, in other shapes. */
final class TestModels {
  private TestModels() {}

  static void read(String resource, CoefficientTable values, CoefficientTable changes) {
    for (String line : Rows.text(TestModels.class, resource).split("\n", -1)) {
      if (!line.isEmpty() && Character.isDigit(line.charAt(0))) {
        String[] words = line.split(" ", -1);
        int n = Integer.parseInt(words[0]);
        int m = Integer.parseInt(words[1]);
        values.g[n][m] = Double.parseDouble(words[2]);
        values.h[n][m] = Double.parseDouble(words[3]);
        changes.g[n][m] = Double.parseDouble(words[4]);
        changes.h[n][m] = Double.parseDouble(words[5]);
      }
    }
  }

  /** In the published layout of a .COF file. */
  static String cof(String resource) {
    StringBuilder text = new StringBuilder("    2025.0            WMM-2025     11/13/2024\n");
    for (String line : Rows.text(TestModels.class, resource).split("\n", -1)) {
      if (!line.isEmpty() && Character.isDigit(line.charAt(0))) {
        text.append("  ").append(line.replace(" ", "   ")).append('\n');
      }
    }
    return text.append("9".repeat(48)).append('\n').append("9".repeat(48)).append('\n').toString();
  }
}
