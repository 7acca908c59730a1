package org.ferryglide.nav;

import java.util.List;
import org.ferryglide.testing.HouseRules;

class HouseRulesTest extends HouseRules {
  /** Ground floor first: a room imports earlier rooms only. */
  private static final List<String> ROOMS =
      List.of(
          "basics",
          "note",
          "reading",
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
          "passage",
          "teach");

  HouseRulesTest() {
    super("org.ferryglide.nav", ROOMS);
  }
}
