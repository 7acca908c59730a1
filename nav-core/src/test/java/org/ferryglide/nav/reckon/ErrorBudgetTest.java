package org.ferryglide.nav.reckon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.testing.Seeds;
import org.junit.jupiter.api.Test;

class ErrorBudgetTest {
  private static final TrueBearing EAST = TrueBearing.ofDegrees(90);
  private static final Velocity STREAM =
      Velocity.ofSetAndRate(TrueBearing.ofDegrees(20), Speed.ofKnots(1.2));

  private static SteadyRun run(double hours, double heading) {
    return new SteadyRun(
        Duration.ofMillis(Math.round(hours * 3_600_000)),
        TrueBearing.ofDegrees(heading),
        Speed.ofKnots(3),
        STREAM);
  }

  private static ErrorModel only(ErrorSource source, Spread spread) {
    return ErrorModel.none().with(source, spread);
  }

  private static double across(List<SteadyRun> runs, ErrorModel model) {
    return ErrorBudget.of(runs, model).covariance().standardDeviationAcross(EAST).metres();
  }

  @Test
  void noErrorIsAPoint() {
    assertEquals(
        Covariance.ZERO, ErrorBudget.of(List.of(run(5, 90)), ErrorModel.none()).covariance());
    assertEquals(List.of(), ErrorBudget.of(List.of(run(5, 90)), ErrorModel.none()).contributions());
  }

  /** One degree of heading for three miles: 3 NM times sin 1°, to first order. */
  @Test
  void oneDegreeIsOneInSixtyOrNearly() {
    ErrorModel degree = only(ErrorSource.VARIATION, Spread.constant(1));
    assertEquals(3 * 1852 * Math.toRadians(1), across(List.of(run(1, 90)), degree), 1e-6);
  }

  @Test
  void constantPartsGrowWithTimeAndIndependentPartsWithItsRoot() {
    ErrorModel constant = only(ErrorSource.COMPASS, Spread.constant(3));
    ErrorModel independent = only(ErrorSource.COMPASS, Spread.independent(3));
    double oneHour = across(List.of(run(1, 90)), constant);
    assertEquals(4 * oneHour, across(List.of(run(4, 90)), constant), 1e-6);
    assertEquals(oneHour, across(List.of(run(1, 90)), independent), 1e-6);
    assertEquals(2 * oneHour, across(List.of(run(4, 90)), independent), 1e-6);
    assertEquals(0.5 * oneHour, across(List.of(run(0.5, 90)), independent), 1e-6);
    assertEquals(
        Math.sqrt(0.5) * oneHour,
        across(List.of(run(1, 90)), independent.withInterval(Duration.ofMinutes(30))),
        1e-6);
  }

  /**
   * Out and home on reciprocal courses: a constant compass error cancels, an independent does not.
   */
  @Test
  void aConstantErrorCancelsOnTheWayHome() {
    List<SteadyRun> outAndHome =
        List.of(
            new SteadyRun(Duration.ofHours(1), EAST, Speed.ofKnots(3), Velocity.STILL),
            new SteadyRun(
                Duration.ofHours(1), EAST.reciprocal(), Speed.ofKnots(3), Velocity.STILL));
    assertEquals(0, across(outAndHome, only(ErrorSource.COMPASS, Spread.constant(3))), 1e-6);
    assertEquals(
        Math.sqrt(2) * 3 * 1852 * Math.toRadians(3),
        across(outAndHome, only(ErrorSource.COMPASS, Spread.independent(3))),
        1e-6);
  }

  @Property(seed = Seeds.SEED, tries = 100)
  void cuttingARunInPiecesChangesNothing(
      @ForAll @DoubleRange(min = 0.1, max = 6) double hours,
      @ForAll @IntRange(min = 2, max = 9) int pieces,
      @ForAll @DoubleRange(min = 0, max = 359) double heading) {
    List<SteadyRun> whole = List.of(run(hours, heading));
    List<SteadyRun> cut = new ArrayList<>();
    for (int i = 0; i < pieces; i++) {
      cut.add(whole.get(0).lasting(whole.get(0).duration().dividedBy(pieces)));
    }
    Covariance a = ErrorBudget.of(whole, ErrorModel.usual()).covariance();
    Covariance b = ErrorBudget.of(cut, ErrorModel.usual()).covariance();
    double rounding = 1e-6 * (a.eastVariance() + a.northVariance());
    assertEquals(a.eastVariance(), b.eastVariance(), rounding);
    assertEquals(a.northVariance(), b.northVariance(), rounding);
    assertEquals(a.eastNorthCovariance(), b.eastNorthCovariance(), rounding);
  }

  /** Turning the whole passage by an angle turns its ellipse by it; mirroring it mirrors it. */
  @Property(seed = Seeds.SEED, tries = 100)
  void theEllipseTurnsWithThePassage(@ForAll @DoubleRange(min = 0, max = 359) double angle) {
    ErrorModel model = ErrorModel.usual().with(ErrorSource.OTHER_CURRENT, Spread.of(0.05, 0.02));
    ErrorEllipse straight = ErrorBudget.of(List.of(run(2, 90)), model).covariance().ellipse(0.95);
    Velocity turnedStream = Velocity.ofSetAndRate(STREAM.set().turnedBy(angle), STREAM.rate());
    SteadyRun turned =
        new SteadyRun(Duration.ofHours(2), EAST.turnedBy(angle), Speed.ofKnots(3), turnedStream);
    ErrorEllipse after = ErrorBudget.of(List.of(turned), model).covariance().ellipse(0.95);
    assertEquals(straight.semiMajorAxis().metres(), after.semiMajorAxis().metres(), 1e-6);
    assertEquals(straight.semiMinorAxis().metres(), after.semiMinorAxis().metres(), 1e-6);
    double turn =
        Math.IEEEremainder(
            after.direction().degrees() - straight.direction().degrees() - angle, 180);
    assertEquals(0, turn, 1e-6);
    SteadyRun mirrored =
        new SteadyRun(
            Duration.ofHours(2),
            TrueBearing.ofDegrees(-90),
            Speed.ofKnots(3),
            Velocity.ofSetAndRate(TrueBearing.ofDegrees(-20), STREAM.rate()));
    Covariance image = ErrorBudget.of(List.of(mirrored), model).covariance();
    Covariance original = ErrorBudget.of(List.of(run(2, 90)), model).covariance();
    assertEquals(original.eastVariance(), image.eastVariance(), 1e-6);
    assertEquals(-original.eastNorthCovariance(), image.eastNorthCovariance(), 1e-3);
  }

  @Test
  void contributionsAddUpAndTheLargestComesFirst() {
    ErrorBudget budget =
        ErrorBudget.of(List.of(run(2, 90), run(1, 40)), ErrorModel.usual())
            .startingFrom(Covariance.ofCircle(Distance.ofMetres(60)));
    Covariance sum = Covariance.ZERO;
    double last = Double.POSITIVE_INFINITY;
    for (ErrorBudget.Contribution part : budget.contributions()) {
      sum = sum.plus(part.covariance());
      double rms = part.covariance().rootMeanSquare().metres();
      assertTrue(rms <= last);
      last = rms;
    }
    assertEquals(sum, budget.covariance());
    assertEquals(8, budget.contributions().size());
    assertEquals(ErrorSource.STREAM_RATE, budget.contributions().get(0).source());
  }

  /** Regression values, computed by this code. */
  @Test
  void theTableNamesWhatToImprove() {
    ErrorModel model =
        only(ErrorSource.SPEED, Spread.of(0.1, 0)).with(ErrorSource.VARIATION, Spread.constant(2));
    SteadyRun run = new SteadyRun(Duration.ofHours(2), EAST, Speed.ofKnots(3), Velocity.STILL);
    assertEquals(
        """
        speed: 1112 m along, 0 m across
        variation: 0 m along, 388 m across
        all together: 1112 m along, 388 m across
        """,
        ErrorBudget.of(List.of(run), model).asText(EAST));
  }

  @Test
  void plottingErrorsFollowFromScaleAndStraightEdge() {
    ErrorModel model = ErrorModel.none().withPlotting(50_000, 300, 0.5);
    assertEquals(0.135, model.spread(ErrorSource.PLOTTED_DIRECTION).constant(), 0.0005);
    assertEquals(25, model.spread(ErrorSource.PLOTTED_POSITION).constant(), 1e-12);
  }

  @Test
  void badModelsAreRefused() {
    assertEquals(
        "constant part must be a finite number of units, at least 0, but was -1.0",
        assertThrows(IllegalArgumentException.class, () -> Spread.constant(-1)).getMessage());
    assertThrows(IllegalArgumentException.class, () -> only(ErrorSource.START, Spread.constant(1)));
    assertThrows(
        IllegalArgumentException.class, () -> ErrorModel.none().withInterval(Duration.ZERO));
  }
}
