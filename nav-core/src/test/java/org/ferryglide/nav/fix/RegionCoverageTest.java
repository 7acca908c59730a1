package org.ferryglide.nav.fix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;

/**
 * The region holds what it says. The table of 100 000 draws a cell is region_coverage.csv; this has
 * fewer, with a fixed seed.
 */
class RegionCoverageTest {
  private static final int DRAWS = 4000;

  /** Three times the noise of so many draws, and the half per cent that is promised. */
  private static final double NOISE = 3 * Math.sqrt(0.95 * 0.05 / DRAWS) + 0.005;

  @Test
  void atAGoodCutItHoldsNinetyFiveOfAHundred() {
    for (double cut : new double[] {35, 60, 90}) {
      for (int count = 2; count <= 3; count++) {
        RegionCoverage.Cell cell = RegionCoverage.bearings(count, cut, 3, DRAWS, 11);
        assertEquals(DRAWS, cell.fixes(), DRAWS / 100, "cut " + cut);
        assertEquals(0.95, cell.held(), NOISE, "cut " + cut);
      }
    }
  }

  @Test
  void atAPoorCutItHoldsNoLess() {
    double[][] cutAndSigma = {{15, 3}, {20, 3}, {20, 5}, {30, 5}};
    for (double[] c : cutAndSigma) {
      RegionCoverage.Cell cell = RegionCoverage.bearings(2, c[0], c[1], DRAWS, 12);
      assertTrue(cell.held() > 0.95 - NOISE, c[0] + " " + cell);
      assertTrue(cell.ellipse() < cell.region(), "the ellipse is too small: " + cell);
    }
  }

  /**
   * Where cuts are seen that may as well be smaller ones widened by an error, the region holds more
   * than it says; how much more is stated, and is no reason to hold less.
   */
  @Test
  void betweenPoorAndGoodCutsItHoldsMoreByWhatIsStated() {
    double[][] cutSigmaHeld = {{30, 3, 0.961}, {30, 5, 0.975}, {45, 5, 0.965}};
    for (double[] c : cutSigmaHeld) {
      RegionCoverage.Cell cell = RegionCoverage.bearings(2, c[0], c[1], DRAWS, 14);
      assertEquals(c[2], cell.held(), 3 * Math.sqrt(c[2] * (1 - c[2]) / DRAWS), cell.toString());
    }
  }

  @Test
  void linesThatMayBeParallelSeldomMisleadAnybody() {
    RegionCoverage.Cell cell = RegionCoverage.bearings(2, 5, 5, DRAWS, 13);
    assertTrue(cell.fixes() < DRAWS / 20, cell.toString());
    assertTrue(cell.missedOfAll() < 0.01, cell.toString());
  }

  @Test
  void twoBearingsThatBarelyCrossHaveNoFix() {
    Position here = Position.ofDegrees(56.2, -5.8);
    NoFix why =
        FixSolver.standard()
            .solve(List.of(bearing(here, 40, 4), bearing(here, 50, 4)))
            .why()
            .orElseThrow();
    assertEquals(NoFix.Reason.UNBOUNDED, why.reason());
    assertEquals(
        "the position lines are so nearly parallel, for their uncertainty, that they may meet"
            + " anywhere along them",
        why.message());
  }

  /** At a right angle the region is the ellipse: same area, same reach. */
  @Test
  void theOutlineOfAGoodCutIsTheEllipse() {
    Position here = Position.ofDegrees(56.2, -5.8);
    Fix fix =
        FixSolver.standard()
            .solve(List.of(bearing(here, 40, 1), bearing(here, 130, 1)))
            .orElseThrow();
    FixRegion region = fix.region();
    double a = fix.covariance().ellipse(0.95).semiMajorAxis().metres();
    double b = fix.covariance().ellipse(0.95).semiMinorAxis().metres();
    assertEquals(1.0, region.areaSquareMetres() / (Math.PI * a * b), 0.01);
    assertEquals(1.0, region.reach().metres() / a, 0.05);
    assertEquals(72, region.outline().size());
    assertTrue(region.contains(here));
    for (Position corner : region.outline()) {
      GeodesicLeg out = GeodesicLeg.between(fix.position(), corner);
      assertTrue(region.contains(out.pointAt(out.length().times(0.99))));
      assertFalse(
          region.contains(
              GeodesicLeg.from(fix.position(), out.initialCourse(), out.length().times(1.01))
                  .end()));
    }
    assertTrue(
        region.toString().startsWith("region that holds the true position in 95 of 100 cases"));
  }

  /** The other place of two circles is not of the region about the one. */
  @Test
  void theOtherPlaceIsNotOfTheRegion() {
    Position a = Position.ofDegrees(56.2, -5.8);
    Position b = GeodesicLeg.from(a, TrueBearing.ofDegrees(90), Distance.ofNauticalMiles(3)).end();
    List<PositionLine> circles =
        List.of(
            DistanceCircle.of("a", a, Distance.ofNauticalMiles(2), Distance.ofMetres(100)),
            DistanceCircle.of("b", b, Distance.ofNauticalMiles(2), Distance.ofMetres(100)));
    List<Fix> both = FixSolver.standard().places(circles);
    assertEquals(2, both.size());
    assertTrue(both.get(0).region().contains(both.get(0).position()));
    assertFalse(both.get(0).region().contains(both.get(1).position()));
    assertFalse(both.get(1).region().contains(both.get(0).position()));
  }

  private static BearingLine bearing(Position here, double azimuth, double sigma) {
    Position mark =
        GeodesicLeg.from(here, TrueBearing.ofDegrees(azimuth), Distance.ofNauticalMiles(2)).end();
    return BearingLine.of("m", mark, TrueBearing.ofDegrees(azimuth), sigma);
  }
}
