package org.ferryglide.tide.stream;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.ferryglide.testing.Seeds;

/** The segment found through buckets is the one found by looking at all break points. */
class AxisProperties {
  @Property(seed = Seeds.SEED, tries = 200)
  void theSegmentIsTheOneThatHoldsTheValue(@ForAll Random random) {
    double[] breaks = new double[1 + random.nextInt(40)];
    double at = 1.7e9;
    for (int i = 0; i < breaks.length; i++) {
      breaks[i] = at;
      // mostly hours, now and then a gap of weeks, so that one bucket holds nearly all segments
      at +=
          random.nextInt(12) == 0 ? 5e6 * random.nextDouble() : 1.0 + 3600.0 * random.nextDouble();
    }
    Axis axis = new Axis(breaks);
    double last = breaks[breaks.length - 1];
    for (int i = 0; i < 200; i++) {
      double t =
          switch (random.nextInt(3)) {
            case 0 -> breaks[random.nextInt(breaks.length)];
            case 1 -> Math.nextDown(breaks[random.nextInt(breaks.length)]);
            default -> breaks[0] - 10.0 + (last - breaks[0] + 20.0) * random.nextDouble();
          };
      assertEquals(byLookingAtAll(breaks, t), axis.segment(t));
    }
  }

  private static int byLookingAtAll(double[] breaks, double t) {
    int segments = breaks.length - 1;
    if (segments == 0 || t < breaks[0] || t > breaks[segments]) {
      return -1;
    }
    long notLater = Arrays.stream(breaks).filter(b -> b <= t).count();
    return (int) Math.min(notLater - 1, segments - 1);
  }
}
