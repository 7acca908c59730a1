package org.ferryglide.nav.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ferryglide.nav.bearing.BearingWorking;
import org.ferryglide.nav.bearing.GridBearing;
import org.ferryglide.nav.bearing.MagneticBearing;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.position.Position;
import org.ferryglide.testing.Seeds;
import org.junit.jupiter.api.Test;

class MapBearingsTest {
  /** A few roundings of an angle below 512. */
  private static final double ROUNDING_DEGREES = 4.0 * Math.ulp(256.0);

  /** A unit of the thirteenth decimal printed, and a rounding. */
  private static final double PRINTED_DEGREES = 2e-13;

  private static final Position PLACE = Position.ofDegrees(50.105, -5.535);
  private static final MapGrid GRID = MapGrid.utm(UtmZone.of(30, Hemisphere.NORTH));
  private static final MapBearings HERE = MapBearings.at(PLACE, GRID, Variation.ofDegreesWest(1.4));

  /** Worked by hand from the convergence that GeoConvert 2.1.2 prints there (-c -p 9). */
  @Test
  void oneCallLeadsFromAnyNorthToAnyOther() {
    double convergence = -1.9454320130521;
    GridBearing onMap = GridBearing.ofDegrees(91.0, "UTM 30N");
    assertEquals(91.0 + convergence, HERE.toTrue(onMap).degrees(), PRINTED_DEGREES);
    assertEquals(91.0 + convergence + 1.4, HERE.toMagnetic(onMap).degrees(), PRINTED_DEGREES);
    MagneticBearing taken = MagneticBearing.ofDegrees(270.0);
    assertEquals(268.6, HERE.toTrue(taken).degrees(), ROUNDING_DEGREES);
    assertEquals(268.6 - convergence, HERE.toGrid(taken).degrees(), PRINTED_DEGREES);
    TrueBearing onChart = TrueBearing.ofDegrees(0.0);
    assertEquals(-convergence, HERE.toGrid(onChart).degrees(), PRINTED_DEGREES);
    assertEquals(1.4, HERE.toMagnetic(onChart).degrees(), ROUNDING_DEGREES);
  }

  @Test
  void bearingsOfOnePlaceGridAndVariationAreEqual() {
    MapBearings same = MapBearings.at(PLACE, GRID, Variation.ofDegreesWest(1.4));
    assertEquals(HERE, same);
    assertEquals(HERE.hashCode(), same.hashCode());
    assertNotEquals(HERE, MapBearings.at(PLACE, GRID, Variation.ofDegreesWest(1.5)));
    assertNotEquals(
        HERE, MapBearings.at(Position.ofDegrees(50.1, -5.5), GRID, Variation.ofDegreesWest(1.4)));
  }

  /**
   * Source: US Army, Soldier's Manual of Common Tasks, convert azimuths (AG-1): a grid-magnetic
   * angle of 9° east, 190° magnetic; 199° grid.
   */
  @Test
  void aPublishedMagneticAzimuthBecomesItsGridAzimuth() {
    MapBearings here = withGridMagneticAngle(9.0);
    GridBearing onMap = here.toGrid(MagneticBearing.ofDegrees(190.0));
    double halfADegree = 0.5;
    assertEquals(199.0, onMap.degrees(), halfADegree);
    assertEquals(190.0, here.toMagnetic(onMap).degrees(), halfADegree);
  }

  @Test
  void theGridMagneticAngleIsVariationLessConvergence() {
    assertEquals(-1.4 + 1.9454320130521, HERE.gridMagneticDegreesEast(), PRINTED_DEGREES);
    assertEquals("grid to magnetic: take off 0.5°", HERE.instruction());
  }

  @Test
  void instructionsSayWhichWay() {
    assertEquals("grid to magnetic: add 3.5°", withGridMagneticAngle(-3.46).instruction());
    assertEquals("grid to magnetic: take off 12.0°", withGridMagneticAngle(11.96).instruction());
    assertEquals("grid to magnetic: nothing to add", withGridMagneticAngle(0.04).instruction());
    assertEquals("grid to magnetic: nothing to add", withGridMagneticAngle(-0.0).instruction());
  }

  private static MapBearings withGridMagneticAngle(double degreesEast) {
    double variation = degreesEast + HERE.convergence().degreesEast();
    return MapBearings.at(PLACE, GRID, Variation.ofDegreesEast(variation));
  }

  @Test
  void theAngleGoesTheShortWayRound() {
    Position nearThePole = Position.ofDegrees(89.0, 170.0); // where grid north lies 170° east
    MapBearings here =
        MapBearings.at(nearThePole, MapGrid.universalPolarNorth(), Variation.ofDegreesEast(-170.0));
    assertEquals(170.0, here.convergence().degreesEast(), PRINTED_DEGREES);
    assertEquals(20.0, here.gridMagneticDegreesEast(), PRINTED_DEGREES);
  }

  @Test
  void bearingsOfAnotherGridAreRefused() {
    GridBearing other = GridBearing.ofDegrees(91.0, "UTM 31N");
    IllegalArgumentException refusal =
        assertThrows(IllegalArgumentException.class, () -> HERE.toMagnetic(other));
    assertEquals(
        "both must be of the same grid, but were of \"UTM 30N\" and \"UTM 31N\"",
        refusal.getMessage());
    assertThrows(IllegalArgumentException.class, () -> HERE.toTrue(other));
  }

  @Test
  void theWorkingIsThatOfTheSameConversion() {
    BearingWorking whole = BearingWorking.inWholeDegrees();
    GridBearing onMap = GridBearing.ofDegrees(91.0, "UTM 30N");
    assertEquals(
        HERE.toMagnetic(onMap).degrees(),
        HERE.workingToMagnetic(onMap, whole).result().exact(),
        ROUNDING_DEGREES);
    MagneticBearing taken = MagneticBearing.ofDegrees(270.0);
    assertEquals(
        HERE.toGrid(taken).degrees(),
        HERE.workingToGrid(taken, whole).result().exact(),
        ROUNDING_DEGREES);
  }

  @Test
  void notesAreThoseOfTheGrid() {
    MapBearings british =
        MapBearings.at(PLACE, StandardGrids.BRITISH_NATIONAL_GRID, Variation.ZERO);
    assertEquals("grid.helmert-only", british.notes().get(0).code());
    assertEquals(PLACE, british.point().position());
    assertEquals(Variation.ZERO, british.variation());
    assertEquals(StandardGrids.BRITISH_NATIONAL_GRID, british.grid());
  }

  @Provide
  Arbitrary<Double> degrees() {
    return Arbitraries.doubles().between(0.0, 359.999999).ofScale(9);
  }

  @Property(seed = Seeds.SEED, tries = 500)
  void everyWayRoundClosesAndAgrees(@ForAll("degrees") double degrees) {
    GridBearing onMap = GridBearing.ofDegrees(degrees, GRID.name());
    assertEquals(0.0, onMap.turnDegreesTo(HERE.toGrid(HERE.toMagnetic(onMap))), ROUNDING_DEGREES);
    assertEquals(0.0, onMap.turnDegreesTo(HERE.toGrid(HERE.toTrue(onMap))), ROUNDING_DEGREES);
    MagneticBearing throughTrue = HERE.toMagnetic(HERE.toTrue(onMap));
    assertEquals(0.0, throughTrue.turnDegreesTo(HERE.toMagnetic(onMap)), ROUNDING_DEGREES);
  }
}
