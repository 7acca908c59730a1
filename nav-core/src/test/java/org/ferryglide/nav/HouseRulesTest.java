package org.ferryglide.nav;

import java.util.List;
import java.util.Map;
import org.ferryglide.testing.HouseRules;

class HouseRulesTest extends HouseRules {
  /** Ground floor first: a room imports earlier rooms only. */
  private static final List<String> ROOMS =
      List.of(
          "rows",
          "note",
          "bearing",
          "measure",
          "position",
          "geodesy",
          "chart",
          "plane",
          "grid",
          "magnetic",
          "sky",
          "water",
          "quickest",
          "steer",
          "timing",
          "reckon",
          "fix",
          "sight",
          "landfall",
          "passage");

  /** Rooms not yet emptied to the plan's 25 public types; the numbers only go down. */
  private static final Map<String, Integer> CROWDED = Map.of();

  HouseRulesTest() {
    super("org.ferryglide.nav", ROOMS, CROWDED);
  }
}
