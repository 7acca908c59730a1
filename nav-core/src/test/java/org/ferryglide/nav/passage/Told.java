package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.Optional;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WindField;

/** What a plan tells, found by the beginning of its words. */
final class Told {
  /** The metre a second of a knot, by definition. */
  static final double KNOT = 1852.0 / 3600.0;

  private Told() {}

  static Verdict of(PassageBuilder passage, Instant departure, String begins) {
    return of(TimedPlan.of(passage.build(), departure).orElseThrow(), begins);
  }

  static Verdict of(TimedPlan plan, String begins) {
    Optional<Verdict> verdict =
        plan.verdicts().stream().filter(v -> v.reason().startsWith(begins)).findFirst();
    assertTrue(verdict.isPresent(), () -> begins + " among " + plan.verdicts());
    return verdict.get();
  }

  static StreamField stream(double set, double knots) {
    return StreamField.steady(
        Velocity.ofSetAndRate(TrueBearing.ofDegrees(set), Speed.ofKnots(knots)));
  }

  static WindField wind(double from, double knots) {
    return WindField.steady(Velocity.ofWind(TrueBearing.ofDegrees(from), Speed.ofKnots(knots)));
  }

  /** No stream known from a time on. */
  static StreamField unknownFrom(double seconds) {
    return (latitude, longitude, time, out, at) -> {
      out[at] = 0.0;
      out[at + 1] = 0.0;
      return time < seconds;
    };
  }
}
