package org.ferryglide.nav.reckon;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.testing.Seeds;

class ErrorWalkProperties {
  /** Sums of a few hundred products, each within an ulp. */
  private static final double ROUNDING = 1e-12;

  @Property(seed = Seeds.SEED, tries = 200)
  void theWalkIsTheBudgetAtEveryStep(@ForAll Random random) {
    ErrorModel model =
        ErrorModel.usual()
            .with(ErrorSource.PLOTTED_DIRECTION, Spread.of(0.5, 0.25))
            .with(ErrorSource.PLOTTED_POSITION, Spread.of(20.0, 10.0))
            .with(ErrorSource.OTHER_CURRENT, Spread.of(0.1, 0.05))
            .withInterval(Duration.ofMinutes(10 + random.nextInt(80)));
    ErrorWalk walk = ErrorWalk.of(model);
    walk.step(1.0, 1.0, 0.5, 0.0, 999.0);
    walk.reset();
    List<SteadyRun> runs = new ArrayList<>();
    double[] covariance = new double[3];
    for (int i = 0; i < 12; i++) {
      SteadyRun run =
          new SteadyRun(
              Duration.ofSeconds(1 + random.nextInt(4000)),
              TrueBearing.ofDegrees(360.0 * random.nextDouble()),
              Speed.ofKnots(4.0 * random.nextDouble()),
              Velocity.ofSetAndRate(
                  TrueBearing.ofDegrees(360.0 * random.nextDouble()),
                  Speed.ofKnots(3.0 * random.nextDouble())));
      runs.add(run);
      walk.step(
          run.throughWater().eastMetresPerSecond(),
          run.throughWater().northMetresPerSecond(),
          run.stream().eastMetresPerSecond(),
          run.stream().northMetresPerSecond(),
          Seconds.of(run.duration()));
      walk.covariance(covariance, 0);
      Covariance budget = ErrorBudget.of(runs, model).covariance();
      double size = Math.pow(budget.rootMeanSquare().metres(), 2);
      assertEquals(budget.eastVariance(), covariance[0], ROUNDING * size);
      assertEquals(budget.northVariance(), covariance[1], ROUNDING * size);
      assertEquals(budget.eastNorthCovariance(), covariance[2], ROUNDING * size);
    }
  }

  @Property(seed = Seeds.SEED, tries = 50)
  void cuttingAStepChangesNothing(@ForAll Random random) {
    ErrorWalk whole = ErrorWalk.of(ErrorModel.usual());
    ErrorWalk cut = ErrorWalk.of(ErrorModel.usual());
    double seconds = 20_000.0 * random.nextDouble();
    double part = seconds * random.nextDouble();
    whole.step(1.4, -0.7, 0.3, 0.6, seconds);
    cut.step(1.4, -0.7, 0.3, 0.6, part);
    cut.step(1.4, -0.7, 0.3, 0.6, seconds - part);
    double[] a = new double[3];
    double[] b = new double[3];
    whole.covariance(a, 0);
    cut.covariance(b, 0);
    double size = a[0] + a[1];
    for (int i = 0; i < 3; i++) {
      assertEquals(a[i], b[i], 1e-10 * size); // an interval may close one rounding earlier
    }
  }
}
