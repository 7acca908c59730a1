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
  void cuttingARunInSegmentsChangesNothing(
      @ForAll @DoubleRange(min = 0.1, max = 6) double hours,
      @ForAll @IntRange(min = 2, max = 9) int segments,
      @ForAll @DoubleRange(min = 0, max = 359) double heading) {
    List<SteadyRun> whole = List.of(run(hours, heading));
    List<SteadyRun> cut = new ArrayList<>();
    for (int i = 0; i < segments; i++) {
      cut.add(whole.get(0).lasting(whole.get(0).duration().dividedBy(segments)));
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
    assertEquals(9, budget.contributions().size());
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

  /** The defaults are promised in the javadoc, figure by figure. */
  @Test
  void theUsualErrorsAreThoseStated() {
    ErrorModel usual = ErrorModel.usual();
    assertEquals(Spread.of(1, 2), usual.spread(ErrorSource.COMPASS));
    assertEquals(Spread.constant(0.5), usual.spread(ErrorSource.VARIATION));
    assertEquals(Spread.constant(2), usual.spread(ErrorSource.DEVIATION));
    assertEquals(Spread.of(2, 2), usual.spread(ErrorSource.LEEWAY));
    assertEquals(Spread.ofPercent(7, 7), usual.spread(ErrorSource.SPEED));
    assertEquals(Spread.of(10, 10), usual.spread(ErrorSource.STREAM_SET));
    assertEquals(Spread.of(0.2, 0.15), usual.spread(ErrorSource.STREAM_RATE));
    assertEquals(Spread.of(0.05, 0.05), usual.spread(ErrorSource.OTHER_CURRENT));
    assertEquals(Spread.NONE, usual.spread(ErrorSource.PLOTTED_DIRECTION));
    assertEquals(Spread.NONE, usual.spread(ErrorSource.PLOTTED_POSITION));
    assertEquals(Duration.ofHours(1), usual.interval());
  }

  /**
   * The variance of d sin(e) for a normal error e of 20 degrees is d² (1 - exp(-2 e²)) / 2; to
   * first order it is d² e².
   */
  @Test
  void anErrorOfTheSetIsOverstatedAsStated() {
    SteadyRun drift =
        new SteadyRun(
            Duration.ofHours(1),
            TrueBearing.ofDegrees(0),
            Speed.ofKnots(0),
            Velocity.ofSetAndRate(TrueBearing.ofDegrees(0), Speed.ofKnots(2)));
    ErrorModel set = ErrorModel.none().with(ErrorSource.STREAM_SET, Spread.constant(20));
    double e = Math.toRadians(20);
    double linear = ErrorBudget.of(List.of(drift), set).covariance().eastVariance();
    double exact = 3704.0 * 3704 * -Math.expm1(-2 * e * e) / 2;
    assertEquals(1.127, linear / exact, 0.001);
    double simulated =
        ErrorSimulation.of(List.of(drift), set, 50_000, 1).covariance().eastVariance();
    assertEquals(1.0, simulated / exact, 0.03); // four times the noise of 50 000 passages
  }

  @Test
  void slackWaterIsNotTakenForStill() {
    SteadyRun drift =
        new SteadyRun(
            Duration.ofHours(3), TrueBearing.ofDegrees(0), Speed.ofKnots(0), Velocity.STILL);
    double metres =
        ErrorBudget.of(List.of(drift), ErrorModel.usual()).covariance().rootMeanSquare().metres();
    double constant = 0.05 * 3 * 3600;
    double independent = 0.05 * 3600 * Math.sqrt(3);
    assertEquals(Math.sqrt(2) * Math.hypot(constant, independent), metres, 1e-6);
  }

  /** Three hours in one go or in two halves by the same compass and tables: the same. */
  @Test
  void aPassageThatGoesOnKeepsItsConstantErrors() {
    SteadyRun whole =
        new SteadyRun(
            Duration.ofHours(4),
            TrueBearing.ofDegrees(72),
            Speed.ofKnots(3),
            Velocity.ofSetAndRate(TrueBearing.ofDegrees(160), Speed.ofKnots(1)));
    SteadyRun half = whole.lasting(Duration.ofHours(2));
    Covariance start = Covariance.ofCircle(Distance.ofMetres(50));
    ErrorBudget first = ErrorBudget.of(List.of(half), ErrorModel.usual()).startingFrom(start);
    Covariance expected =
        ErrorBudget.of(List.of(whole), ErrorModel.usual()).startingFrom(start).covariance();
    Covariance together = first.andThen(List.of(half)).covariance();
    assertEquals(1, together.eastVariance() / expected.eastVariance(), 1e-9);
    assertEquals(1, together.northVariance() / expected.northVariance(), 1e-9);
    Covariance apart =
        ErrorBudget.of(List.of(half), ErrorModel.usual())
            .startingFrom(first.covariance())
            .covariance();
    assertTrue(
        apart.rootMeanSquare().metres() < 0.85 * expected.rootMeanSquare().metres(),
        "as the javadoc of startingFrom says");
  }

  @Test
  void aFigureInAnotherUnitIsRefused() {
    assertEquals(
        "constant error of speed must be in [0, 1] as a fraction, 0.1 for ten per cent, but was"
            + " 10.0",
        assertThrows(
                IllegalArgumentException.class,
                () -> ErrorModel.none().with(ErrorSource.SPEED, Spread.constant(10)))
            .getMessage());
    assertThrows(
        IllegalArgumentException.class,
        () -> ErrorModel.none().with(ErrorSource.STREAM_RATE, Spread.independent(20)));
    assertThrows(
        IllegalArgumentException.class,
        () -> ErrorModel.none().with(ErrorSource.OTHER_CURRENT, Spread.constant(50)));
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
