package org.ferryglide.nav.bearing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.note.Step;
import org.ferryglide.nav.note.Working;
import org.ferryglide.testing.Seeds;

class BearingWorkingProperties {
  private static final BearingWorking WHOLE = BearingWorking.inWholeDegrees();

  @Property(seed = Seeds.SEED, tries = 500)
  void theExactResultIsThatOfTheAngles(
      @ForAll("angles") double bearing,
      @ForAll("small") double variation,
      @ForAll("small") double deviation) {
    TrueBearing start = TrueBearing.ofDegrees(bearing);
    Variation v = Variation.ofDegreesEast(variation);
    Deviation d = Deviation.ofDegreesEast(deviation);
    CompassBearing compass = start.toMagnetic(v).toCompass(d);
    assertEquals(compass.degrees(), WHOLE.trueToCompass(start, v, d).result().exact());
    assertEquals(
        compass.toMagnetic(d).toTrue(v).degrees(),
        WHOLE.compassToTrue(compass, d, v).result().exact());
  }

  @Property(seed = Seeds.SEED, tries = 500)
  void everyWrittenResultFollowsFromTheWrittenLinesAboveIt(
      @ForAll("angles") double bearing,
      @ForAll("small") double variation,
      @ForAll("small") double deviation,
      @ForAll HandRounding rounding) {
    Working working =
        WHOLE
            .withRounding(rounding)
            .trueToCompass(
                TrueBearing.ofDegrees(bearing),
                Variation.ofDegreesEast(variation),
                Deviation.ofDegreesEast(deviation));
    for (Step step : working.steps()) {
      if (!step.isGiven()) {
        double sum = step.inputs().get(0).byHand() - step.inputs().get(1).byHand();
        assertEquals(Angles.reduced(sum), step.result().byHand());
        String text = step.result().text();
        assertEquals(
            rounding.bearing(step.result().byHand(), text.charAt(text.length() - 1)), text);
      }
    }
  }

  @Provide
  Arbitrary<Double> angles() {
    return Arbitraries.doubles().between(0.0, 359.999).ofScale(9);
  }

  @Provide
  Arbitrary<Double> small() {
    return Arbitraries.doubles().between(-30.0, 30.0).ofScale(9);
  }
}
