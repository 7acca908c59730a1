package org.ferryglide.nav.sight;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;

/** Back bearings, clearing bearings and transits. */
class LineKeepingTest {
  private static final Position HERE = Position.ofDegrees(56.3, -6.2);

  private static Position off(Position from, double bearing, double metres) {
    double outward = metres < 0 ? bearing + 180 : bearing;
    return GeodesicLeg.from(
            from, TrueBearing.ofDegrees(outward), Distance.ofMetres(Math.abs(metres)))
        .end();
  }

  private static TrueBearing toward(Position from, Position mark) {
    return GeodesicLeg.between(from, mark).initialCourse();
  }

  @Test
  void theBackBearingTellsSideAndWayBack() {
    RhumbLeg leg = RhumbLeg.from(HERE, TrueBearing.ofDegrees(70), Distance.ofNauticalMiles(5));
    BackBearing line = BackBearing.of(leg, HERE);
    Distance run = Distance.ofNauticalMiles(2);
    assertEquals(250, line.expectedAt(run).degrees(), 0.1);
    for (double side : new double[] {-200, -30, 0, 50, 300}) {
      Position there = off(leg.pointAt(run), 160, side);
      BackBearing.Correction c = line.correction(run, toward(there, HERE), Distance.ofMetres(1000));
      assertEquals(side, c.crossTrack().metres(), 0.005 * Math.abs(side) + 0.01);
      assertEquals(-Math.toDegrees(Math.atan(side / 1000)), c.turnDegrees(), 0.1);
      assertEquals(70 + c.turnDegrees(), c.track().degrees(), 1e-9);
    }
  }

  @Test
  void aMarkBehindTheStartServesAsWell() {
    RhumbLeg leg = RhumbLeg.from(HERE, TrueBearing.ofDegrees(0), Distance.ofNauticalMiles(4));
    Position church = off(HERE, 185, 2000);
    BackBearing line = BackBearing.of(leg, church);
    Distance run = Distance.ofNauticalMiles(1);
    Position there = off(leg.pointAt(run), 90, 120);
    BackBearing.Correction c = line.correction(run, toward(there, church), Distance.ofMetres(900));
    assertEquals(120, c.crossTrack().metres(), 1);
    assertThrows(
        IllegalArgumentException.class,
        () -> line.correction(run, TrueBearing.ofDegrees(0), Distance.ZERO));
  }

  /** Source for marks 1.0 and 1.5 NM away and a quarter of a degree: 24 m, from the geometry. */
  @Test
  void aTransitOpensWhereTheGeometrySays() {
    Distance y =
        DistanceOff.ofOpenTransit(Distance.ofNauticalMiles(1), Distance.ofNauticalMiles(1.5), 0.25)
            .orElseThrow();
    assertEquals(24, y.metres(), 0.5);
    double open = Math.atan(y.metres() / 1852) - Math.atan(y.metres() / (1.5 * 1852));
    assertEquals(0.25, Math.toDegrees(open), 1e-9);
    assertTrue(
        DistanceOff.ofOpenTransit(Distance.ofMetres(1000), Distance.ofMetres(1010), 5).isEmpty());
    assertEquals(
        "opening must be in (0, 90) degrees, but was 0.0",
        assertThrows(
                IllegalArgumentException.class,
                () -> DistanceOff.ofOpenTransit(Distance.ofMetres(1), Distance.ofMetres(2), 0))
            .getMessage());
  }

  /** Walks round the danger: whoever obeys the rule is never inside the clearance. */
  @Test
  void obeyingAClearingBearingKeepsClear() {
    Position mark = off(HERE, 75, 3000);
    Distance clearance = Distance.ofMetres(200);
    for (ClearingBearing.Danger side : ClearingBearing.Danger.values()) {
      ClearingBearing clear = ClearingBearing.of(mark, HERE, clearance, side).orElseThrow();
      int inside = 0;
      for (double bearing = 0; bearing < 360; bearing += 3) {
        for (double metres = 0; metres < 199; metres += 20) {
          inside += clear.isClear(toward(off(HERE, bearing, metres), mark)) ? 1 : 0;
        }
      }
      assertEquals(0, inside);
      double across = side == ClearingBearing.Danger.TO_PORT ? 165 : -15;
      assertTrue(clear.isClear(toward(off(HERE, across, 270), mark)));
      assertFalse(clear.isClear(toward(off(HERE, across + 180, 270), mark)));
    }
  }

  @Test
  void theRuleIsRoundedToTheSafeSide() {
    Position mark = off(HERE, 75, 3000);
    Distance clearance = Distance.ofMetres(200); // 3.82° either side of 75°
    ClearingBearing less =
        ClearingBearing.of(mark, HERE, clearance, ClearingBearing.Danger.TO_STARBOARD)
            .orElseThrow();
    assertEquals("beacon not less than 079°T", less.asText("beacon"));
    ClearingBearing more =
        ClearingBearing.of(mark, HERE, clearance, ClearingBearing.Danger.TO_PORT).orElseThrow();
    assertEquals("beacon not more than 071°T", more.asText("beacon"));
    assertEquals(
        "beacon not more than 075°M", more.asMagneticText("beacon", Variation.ofDegreesWest(4.6)));
    assertEquals(
        "beacon not less than 084°M", less.asMagneticText("beacon", Variation.ofDegreesWest(4.6)));
    assertTrue(ClearingBearing.of(HERE, HERE, clearance, ClearingBearing.Danger.TO_PORT).isEmpty());
  }

  /** A bearing a right angle out or read at the wrong end would turn the craft the wrong way. */
  @Test
  void aBearingThatNobodyNearTheLineCouldSeeIsRefused() {
    RhumbLeg leg = RhumbLeg.from(HERE, TrueBearing.ofDegrees(0), Distance.ofNauticalMiles(4));
    BackBearing line = BackBearing.of(leg, HERE);
    Distance run = Distance.ofNauticalMiles(2);
    for (double observed : new double[] {0, 45, 89, 271, 300}) {
      IllegalArgumentException refused =
          assertThrows(
              IllegalArgumentException.class,
              () -> line.correction(run, TrueBearing.ofDegrees(observed), run));
      assertTrue(
          String.valueOf(refused.getMessage())
              .startsWith("observed bearing must be less than a right angle from the 180"));
    }
    assertEquals(
        run.metres(),
        line.correction(run, TrueBearing.ofDegrees(225), run).crossTrack().metres(),
        0.01);
    assertEquals(
        0.0, line.correction(Distance.ZERO, TrueBearing.ofDegrees(183), run).crossTrack().metres());
  }
}
