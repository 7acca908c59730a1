package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.ZoneOffset;
import java.util.Random;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.Covariance;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.reckon.ErrorSource;
import org.ferryglide.nav.reckon.ErrorWalk;
import org.ferryglide.nav.reckon.Spread;
import org.ferryglide.testing.Seeds;

/** An error that walks along a plan in strides is one that walks from look to look. */
class ErrorsAlongProperties {
  /** Sums of a thousand roundings of some kilometres. */
  private static final double ROUNDING = 1e-9;

  private static Position near(Random random) {
    return Position.ofDegrees(46.0 + 0.1 * random.nextDouble(), -26.0 + 0.15 * random.nextDouble());
  }

  private static Passage passage(Random random) {
    ErrorModel errors =
        ErrorModel.usual()
            .with(ErrorSource.PLOTTED_POSITION, Spread.constant(100.0 * random.nextDouble()))
            .with(ErrorSource.PLOTTED_DIRECTION, Spread.of(random.nextDouble(), 1.0))
            .withInterval(Duration.ofSeconds(500 + random.nextInt(5000)));
    PassageBuilder builder =
        Passage.builder("errors", ZoneOffset.UTC, Scenes.party(3.0 + random.nextDouble()))
            .from(WayPoint.of("0", near(random)))
            .stream(Scenes.turning(1.5 * random.nextDouble()))
            .errors(errors);
    for (int i = 1; i <= 3; i++) {
      WayPoint place = WayPoint.of("" + i, near(random));
      builder.to(random.nextInt(3) == 0 ? place.withStop(Stop.ashore(Duration.ofHours(1))) : place);
    }
    return builder.build();
  }

  /** Look by look, as it is defined; and no width grows faster than its bound. */
  @Property(seed = Seeds.SEED, tries = 40)
  void stridesAreTheSumOfTheirSteps(@ForAll Random random) {
    Passage passage = passage(random);
    TimedPlan plan = TimedPlan.of(passage, Scenes.NOON).solved().orElse(null);
    Assume.that(plan != null); // not too strong a stream
    Candidate candidate = new Candidate(passage, plan.route());
    ErrorWalk walk = ErrorWalk.of(passage.errors());
    double[] expected = new double[3];
    double before = 0.0;
    for (int look = 0; look < candidate.size; look++) {
      if (candidate.seconds[look] > 0.0) {
        double streamEast = 0.5 * (candidate.streamEast[look] + candidate.streamEast[look - 1]);
        double streamNorth = 0.5 * (candidate.streamNorth[look] + candidate.streamNorth[look - 1]);
        walk.step(
            candidate.groundEast[look] - streamEast,
            candidate.groundNorth[look] - streamNorth,
            streamEast,
            streamNorth,
            candidate.seconds[look]);
      } else if (candidate.leg[look] > 0 && candidate.isAshoreBefore(candidate.leg[look])) {
        walk.reset();
      }
      walk.covariance(expected, 0);
      // asked for out of order too
      candidate.errors().covariance(random.nextInt(candidate.size));
      Covariance found = candidate.errors().covariance(look);
      double scale = ROUNDING * (1.0 + expected[0] + expected[1]);
      assertEquals(expected[0], found.eastVariance(), scale);
      assertEquals(expected[1], found.northVariance(), scale);
      assertEquals(expected[2], found.eastNorthCovariance(), scale);
      double width = candidate.errors().halfWidth95(look);
      double grown =
          look == 0 ? width : candidate.errors().growth(look) - candidate.errors().growth(look - 1);
      assertTrue(width - before <= grown + ROUNDING * (1.0 + width), "look " + look);
      before = width;
    }
  }
}
