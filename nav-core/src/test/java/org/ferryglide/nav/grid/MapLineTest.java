package org.ferryglide.nav.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;

class MapLineTest {
  private static final MapGrid UTM = MapGrid.utm(UtmZone.of(30, Hemisphere.NORTH));
  private static final Position LANDING = Position.ofDegrees(50.105, -5.535);
  private static final Position ISLAND = Position.ofDegrees(50.2, -5.43);

  /**
   * Ordnance Survey, A guide to coordinate systems in Great Britain, annexe: (t - T) is (2 y₁ + y₂)
   * (N₁ - N₂) / 6R² radians in the first order, y from the central meridian.
   */
  @Test
  void arcToChordFollowsTheUsualApproximation() {
    double radius = 6.38e6;
    double threePercentOfIt = 0.03; // the approximation leaves out convergence of higher order
    for (MapGrid grid : new MapGrid[] {UTM, StandardGrids.BRITISH_NATIONAL_GRID}) {
      double falseEasting = grid.equals(UTM) ? 500000.0 : 400000.0;
      for (double north = -0.8; north <= 0.8; north += 0.32) {
        MapLine line = MapLine.between(LANDING, Position.ofDegrees(50.105 + north, -5.1), grid);
        double y1 = line.start().easting().metres() - falseEasting;
        double y2 = line.end().easting().metres() - falseEasting;
        double south = line.start().northing().metres() - line.end().northing().metres();
        double start = Math.toDegrees((2.0 * y1 + y2) * south / (6.0 * radius * radius));
        double end = -Math.toDegrees((2.0 * y2 + y1) * south / (6.0 * radius * radius));
        // t - T turns from geodesic to chord, the answer from chord to geodesic
        assertEquals(-start, line.arcToChordDegreesAtStart(), Math.abs(start) * threePercentOfIt);
        assertEquals(-end, line.arcToChordDegreesAtEnd(), Math.abs(end) * threePercentOfIt);
      }
    }
  }

  /** Half-convergency of the meridians: a rhumb line leaves the great circle by ½ Δλ sin φ. */
  @Test
  void theRhumbLineLeavesTheGeodesicByHalfTheConvergencyOfTheMeridians() {
    MapLine line = MapLine.between(LANDING, ISLAND, UTM);
    double half = 0.5 * 0.105 * Math.sin(Math.toRadians(50.1525));
    assertEquals(half, line.rhumbDegreesAtStart() - line.arcToChordDegreesAtStart(), half * 0.01);
    assertEquals(-half, line.rhumbDegreesAtEnd() - line.arcToChordDegreesAtEnd(), half * 0.01);
  }

  /** The arc of a shallow curve that leaves its chord by a: a L / 4 at the middle. */
  @Test
  void theRhumbLineStraysMostNearTheMiddle() {
    MapLine line = MapLine.between(LANDING, ISLAND, UTM);
    MapLine.Separation most = line.greatestSeparationOfRhumb();
    double angle = Math.toRadians(line.rhumbDegreesAtStart());
    double expected = angle * line.rhumb().length().metres() / 4.0;
    assertEquals(expected, most.distance().metres(), expected * 0.01);
    Position middle = line.rhumb().pointAt(line.rhumb().length().times(0.5));
    double degreesNearTheMiddle = 0.001;
    assertEquals(middle.latitudeDegrees(), most.where().latitudeDegrees(), degreesNearTheMiddle);
    assertTrue(most.distance().metres() > 0.0, "right of the line: poleward is left going east");
  }

  @Test
  void theGeodesicIsHollowTowardsTheCentralMeridian() {
    // west of the central meridian and northbound, the geodesic bends out to the west, the left
    MapLine line = MapLine.between(LANDING, Position.ofDegrees(50.6, -5.5), UTM);
    assertTrue(line.greatestSeparationOfGeodesic().distance().metres() < 0.0);
    MapLine mirrored =
        MapLine.between(Position.ofDegrees(50.105, -0.465), Position.ofDegrees(50.6, -0.5), UTM);
    assertEquals(
        -line.greatestSeparationOfGeodesic().distance().metres(),
        mirrored.greatestSeparationOfGeodesic().distance().metres(),
        1e-6);
  }

  @Test
  void lengthOnTheMapOverMeanScaleIsTheLengthOnTheGround() {
    for (Position end : new Position[] {ISLAND, Position.ofDegrees(50.5, -4.0)}) {
      MapLine line = MapLine.between(LANDING, end, UTM);
      double ground = line.geodesic().length().metres();
      double partsOfAThousandMillion = 1e-9; // Simpson's rule, and the geodesic's own bend
      assertEquals(
          1.0,
          line.lengthOnMap().metres() / line.meanScale() / ground,
          20 * partsOfAThousandMillion);
    }
  }

  @Test
  void courseChangesAlongTheLineByTheConvergence() {
    MapLine line = MapLine.between(LANDING, ISLAND, UTM);
    double change = line.trueCourseAtStart().turnDegreesTo(line.trueCourseAtEnd());
    double convergence =
        line.end().convergence().degreesEast() - line.start().convergence().degreesEast();
    assertEquals(convergence, change, 1e-12);
    assertEquals("UTM 30N", line.gridBearing().grid());
    assertEquals(37.2870, line.gridBearing().degrees(), 0.0001, "regression value");
  }

  @Test
  void theLineBackIsTheSameLine() {
    MapLine line = MapLine.between(LANDING, ISLAND, UTM);
    MapLine back = MapLine.between(ISLAND, LANDING, UTM);
    assertEquals(line.arcToChordDegreesAtStart(), back.arcToChordDegreesAtEnd(), 1e-9);
    assertEquals(
        line.greatestSeparationOfRhumb().distance().metres(),
        -back.greatestSeparationOfRhumb().distance().metres(),
        1e-6);
    assertEquals(line.lengthOnMap().metres(), back.lengthOnMap().metres(), 1e-9);
  }

  @Test
  void aLineNeedsTwoPlaces() {
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> MapLine.between(LANDING, LANDING, UTM));
    assertEquals(
        "start and end of a line must differ, but both were " + LANDING, refusal.getMessage());
  }

  @Test
  void aTinyLineHasATinySeparation() {
    MapLine line = MapLine.between(LANDING, Position.ofDegrees(50.105001, -5.535), UTM);
    assertEquals(0.0, line.greatestSeparationOfRhumb().distance().metres(), 1e-7);
    assertEquals(Distance.ofMetres(0.111).metres(), line.lengthOnMap().metres(), 0.001);
  }

  @Test
  void linesOfTheSamePointsAndGridAreEqual() {
    MapLine line = MapLine.between(LANDING, ISLAND, UTM);
    assertEquals(line, MapLine.between(LANDING, ISLAND, UTM));
    assertEquals(line.hashCode(), MapLine.between(LANDING, ISLAND, UTM).hashCode());
    assertNotEquals(line, MapLine.between(ISLAND, LANDING, UTM));
    assertNotEquals(line, MapLine.between(LANDING, Position.ofDegrees(50.6, -5.5), UTM));
  }
}
