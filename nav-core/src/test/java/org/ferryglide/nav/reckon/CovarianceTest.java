package org.ferryglide.nav.reckon;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.plane.LocalPlane;
import org.ferryglide.nav.position.Position;
import org.ferryglide.testing.Seeds;
import org.junit.jupiter.api.Test;

class CovarianceTest {
  private static final Position HERE = Position.ofDegrees(56.3, -6.2);

  /** Source: factors of the circular normal distribution, any table of them; four decimals. */
  @Test
  void ellipseFactorsAreThoseOfTheTables() {
    Covariance unit = Covariance.ofCircle(Distance.ofMetres(1));
    double[][] table = {{0.50, 1.1774}, {0.90, 2.1460}, {0.95, 2.4477}, {0.99, 3.0349}};
    for (double[] row : table) {
      assertEquals(row[1], unit.ellipse(row[0]).semiMajorAxis().metres(), 0.00005);
    }
    assertEquals(
        1.0, unit.ellipse(ErrorEllipse.ONE_STANDARD_DEVIATION).semiMajorAxis().metres(), 1e-12);
    assertEquals(
        0.3935,
        ErrorEllipse.ONE_STANDARD_DEVIATION,
        0.00005); // what the ellipse of one sigma holds
  }

  @Property(seed = Seeds.SEED, tries = 300)
  void axesReturnFromTheEllipse(
      @ForAll("angles") double angle, @ForAll("sigmas") double a, @ForAll("sigmas") double b) {
    TrueBearing direction = TrueBearing.ofDegrees(angle);
    Covariance covariance =
        Covariance.ofAxes(direction, Distance.ofMetres(a), Distance.ofMetres(b));
    ErrorEllipse ellipse = covariance.ellipse(ErrorEllipse.ONE_STANDARD_DEVIATION);
    double rounding = 1e-6 * Math.max(a, b);
    assertEquals(Math.max(a, b), ellipse.semiMajorAxis().metres(), rounding);
    assertEquals(Math.min(a, b), ellipse.semiMinorAxis().metres(), rounding);
    assertEquals(a, covariance.standardDeviationAlong(direction).metres(), rounding);
    assertEquals(b, covariance.standardDeviationAcross(direction).metres(), rounding);
    assertEquals(Math.hypot(a, b), covariance.rootMeanSquare().metres(), rounding);
    if (Math.abs(a - b) > 0.01 * Math.max(a, b)) {
      double axis = a > b ? angle : angle + 90;
      double off = Math.IEEEremainder(ellipse.direction().degrees() - axis, 180.0);
      assertEquals(0.0, off, 1e-4);
      assertTrue(ellipse.direction().degrees() < 180.0);
    }
  }

  /** Turning the compass card turns the ellipse and changes nothing else. */
  @Property(seed = Seeds.SEED, tries = 300)
  void theEllipseTurnsWithTheAxes(
      @ForAll("angles") double angle,
      @ForAll("angles") double turn,
      @ForAll("sigmas") double a,
      @ForAll("sigmas") double b) {
    ErrorEllipse before =
        Covariance.ofAxes(TrueBearing.ofDegrees(angle), Distance.ofMetres(a), Distance.ofMetres(b))
            .ellipse(0.95);
    ErrorEllipse after =
        Covariance.ofAxes(
                TrueBearing.ofDegrees(angle + turn), Distance.ofMetres(a), Distance.ofMetres(b))
            .ellipse(0.95);
    double rounding = 1e-6 * Math.max(a, b) * 3;
    assertEquals(before.semiMajorAxis().metres(), after.semiMajorAxis().metres(), rounding);
    assertEquals(before.semiMinorAxis().metres(), after.semiMinorAxis().metres(), rounding);
    assertEquals(
        before.areaSquareMetres(), after.areaSquareMetres(), 1e-4 * Math.max(1, a * a + b * b));
  }

  /** Each combination is at least as certain as either part, in every direction. */
  @Property(seed = Seeds.SEED, tries = 300)
  void combiningNeverAddsUncertainty(
      @ForAll("covariances") Covariance first,
      @ForAll("covariances") Covariance second,
      @ForAll("angles") double angle) {
    EstimatedPosition a = new EstimatedPosition(HERE, first);
    EstimatedPosition b = new EstimatedPosition(Position.ofDegrees(56.301, -6.203), second);
    EstimatedPosition both = a.combinedWith(b);
    TrueBearing direction = TrueBearing.ofDegrees(angle);
    double combined = variance(both.covariance(), direction);
    for (Covariance part : new Covariance[] {first, second}) {
      // A variance along a direction is a sum whose terms are as large as that of the long axis.
      double rounding = 64 * Math.ulp(part.eastVariance() + part.northVariance());
      assertTrue(combined <= variance(part, direction) * (1 + 1e-6) + rounding);
    }
  }

  private static double variance(Covariance covariance, TrueBearing direction) {
    double sigma = covariance.standardDeviationAlong(direction).metres();
    return sigma * sigma;
  }

  /** Axes of a centimetre and of five kilometres: neither is lost in the other. */
  @Test
  void aNarrowEllipseStaysNarrow() {
    TrueBearing along = TrueBearing.ofDegrees(33);
    Covariance narrow = Covariance.ofAxes(along, Distance.ofMetres(4871), Distance.ofMetres(0.01));
    for (double turn : new double[] {0.0, 20.0, 90.0}) {
      Covariance other =
          Covariance.ofAxes(along.turnedBy(turn), Distance.ofMetres(3000), Distance.ofMetres(2000));
      for (boolean swapped : new boolean[] {false, true}) {
        EstimatedPosition a = new EstimatedPosition(HERE, swapped ? other : narrow);
        EstimatedPosition b = new EstimatedPosition(HERE, swapped ? narrow : other);
        double across = a.combinedWith(b).covariance().standardDeviationAcross(along).metres();
        assertEquals(0.01, across, 1e-5, "turned by " + turn);
      }
    }
  }

  @Test
  void equalWeightsMeetHalfWay() {
    Position east = LocalPlane.fromPlane(HERE, 1000, 0);
    EstimatedPosition a = EstimatedPosition.of(HERE, Distance.ofMetres(100));
    EstimatedPosition b = EstimatedPosition.of(east, Distance.ofMetres(100));
    EstimatedPosition both = a.combinedWith(b);
    double[] at = LocalPlane.toPlane(HERE, both.position());
    assertEquals(500, at[0], 1e-6);
    assertEquals(0, at[1], 1e-6);
    assertEquals(5000, both.covariance().eastVariance(), 1e-9);
    double[] swapped = LocalPlane.toPlane(HERE, b.combinedWith(a).position());
    assertEquals(500, swapped[0], 1e-4);
    assertEquals(1000.0 * 1000 / 20000, a.disagreementWith(b), 1e-6);
  }

  @Test
  void anExactPositionWins() {
    EstimatedPosition vague = EstimatedPosition.of(HERE, Distance.ofMetres(100));
    Position known = LocalPlane.fromPlane(HERE, 30, 40);
    EstimatedPosition both = vague.combinedWith(EstimatedPosition.exactly(known));
    double[] at = LocalPlane.toPlane(known, both.position());
    assertEquals(0.0, Math.hypot(at[0], at[1]), 1e-6);
    assertEquals(Covariance.ZERO, both.covariance());
    EstimatedPosition exact = EstimatedPosition.exactly(HERE);
    assertEquals(HERE, exact.combinedWith(vague).position());
    double[] taken =
        LocalPlane.toPlane(known, exact.combinedWith(EstimatedPosition.exactly(known)).position());
    assertEquals(0.0, Math.hypot(taken[0], taken[1]), 1e-6);
    assertEquals(
        Double.POSITIVE_INFINITY, exact.disagreementWith(EstimatedPosition.exactly(known)));
    assertEquals(0.0, exact.disagreementWith(exact));
  }

  @Test
  void lineLikeUncertaintiesCombineToAPoint() {
    Distance wide = Distance.ofMetres(500);
    EstimatedPosition northSouth =
        new EstimatedPosition(
            HERE, Covariance.ofAxes(TrueBearing.ofDegrees(0), wide, Distance.ZERO));
    EstimatedPosition eastWest =
        new EstimatedPosition(
            LocalPlane.fromPlane(HERE, 50, 70),
            Covariance.ofAxes(TrueBearing.ofDegrees(90), wide, Distance.ZERO));
    double[] at = LocalPlane.toPlane(HERE, northSouth.combinedWith(eastWest).position());
    assertEquals(0, at[0], 1e-6);
    assertEquals(70, at[1], 1e-6);
  }

  @Test
  void impossibleCovariancesAreRefusedByName() {
    assertEquals(
        "covariance of east and north must be within ±2.0 square metres for these variances, but"
            + " was 3.0",
        assertThrows(IllegalArgumentException.class, () -> new Covariance(1, 4, 3)).getMessage());
    assertEquals(
        "chance must be in [0, 1), but was 1.0",
        assertThrows(IllegalArgumentException.class, () -> Covariance.ZERO.ellipse(1.0))
            .getMessage());
    assertEquals(0.0, Covariance.ZERO.ellipse(0.95).semiMajorAxis().metres());
  }

  @Test
  void theEllipseReadsAsASentence() {
    Covariance c =
        Covariance.ofAxes(
            TrueBearing.ofDegrees(62), Distance.ofMetres(300), Distance.ofMetres(100));
    assertEquals("95.0 % ellipse, 734 m by 245 m, longest toward 062°", c.ellipse(0.95).toString());
  }

  @Provide
  Arbitrary<Double> angles() {
    return Arbitraries.doubles().between(0, 359.99).ofScale(9);
  }

  @Provide
  Arbitrary<Double> sigmas() {
    return Arbitraries.doubles().between(0.01, 5000).ofScale(6);
  }

  @Provide
  Arbitrary<Covariance> covariances() {
    return Combinators.combine(angles(), sigmas(), sigmas())
        .as(
            (angle, a, b) ->
                Covariance.ofAxes(
                    TrueBearing.ofDegrees(angle), Distance.ofMetres(a), Distance.ofMetres(b)));
  }
}
