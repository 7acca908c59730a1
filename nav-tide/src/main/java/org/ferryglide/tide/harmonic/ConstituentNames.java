package org.ferryglide.tide.harmonic;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Looks names up, those included that are in use for the same constituent. */
final class ConstituentNames {
  private static final Map<String, String> ALSO =
      Map.of("LAM2", "LDA2", "LAMBDA2", "LDA2", "RHO", "RHO1", "UPSI", "UPS1");

  private ConstituentNames() {}

  static Optional<Constituent> find(String name, List<Constituent> constituents) {
    String upper = name.trim().toUpperCase(Locale.ROOT);
    String wanted = ALSO.getOrDefault(upper, upper);
    return constituents.stream().filter(c -> c.name().equals(wanted)).findFirst();
  }
}
