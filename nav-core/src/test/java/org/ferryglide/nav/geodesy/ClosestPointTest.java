package org.ferryglide.nav.geodesy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.ClosestPoint.Place;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;

class ClosestPointTest {
  private static final double A_MICROMETRE = 1e-6;

  private final RhumbLeg leg =
      RhumbLeg.from(
          Position.ofDegrees(55, -5), TrueBearing.ofDegrees(60), Distance.ofKilometres(10));

  @Test
  void aRockToStarboardIsPositiveAndAbeam() {
    ClosestPoint rock = leg.closestTo(off(leg, 4000, 90, 250));
    assertEquals(250, rock.crossTrack().metres(), A_MICROMETRE);
    assertEquals(4000, rock.alongTrack().metres(), A_MICROMETRE);
    assertEquals(Place.ABEAM, rock.place());
    assertEquals(150, rock.bearing().degrees(), 1e-6);
    assertEquals(leg.course(), rock.course());
    assertTrue(leg.abeamOf(off(leg, 4000, 90, 250)).isPresent());
  }

  @Test
  void aRockToPortIsNegative() {
    ClosestPoint rock = leg.closestTo(off(leg, 4000, -90, 250));
    assertEquals(-250, rock.crossTrack().metres(), A_MICROMETRE);
    assertEquals(Distance.ofMetres(250).metres(), rock.distance().metres(), A_MICROMETRE);
  }

  @Test
  void beyondAnEndTheEndIsClosestAndNothingIsAbeam() {
    Position beyond = leg.pointAt(Distance.ofMetres(10_500));
    ClosestPoint end = leg.closestTo(beyond);
    assertEquals(leg.end(), end.position());
    assertEquals(Place.END, end.place());
    assertEquals(500, end.distance().metres(), 1e-3); // the rhumb line is the longer way
    assertTrue(leg.abeamOf(beyond).isEmpty());
    Position before = leg.pointAt(Distance.ofMetres(-500));
    assertEquals(Place.START, leg.closestTo(before).place());
    assertEquals(Distance.ZERO, leg.closestTo(before).alongTrack());
  }

  @Test
  void theEndlessLineGoesOnWhereTheLegEnds() {
    Position beyond = off(leg, 12_000, 90, 100);
    ClosestPoint point = leg.line().closestTo(beyond);
    assertEquals(Place.ABEAM, point.place());
    assertEquals(12_000, point.alongTrack().metres(), A_MICROMETRE);
    assertEquals(100, point.crossTrack().metres(), A_MICROMETRE);
    ClosestPoint astern = leg.line().closestTo(off(leg, -7000, -90, 100));
    assertEquals(-7000, astern.alongTrack().metres(), A_MICROMETRE);
    assertEquals(-100, astern.crossTrack().metres(), A_MICROMETRE);
  }

  @Test
  void aPointOfTheLegIsNotOff() {
    ClosestPoint on = leg.closestTo(leg.pointAt(Distance.ofMetres(1234)));
    assertEquals(0.0, on.crossTrack().metres(), A_MICROMETRE);
    assertEquals(1234, on.alongTrack().metres(), A_MICROMETRE);
    for (Position end : new Position[] {leg.start(), leg.end()}) {
      ClosestPoint there = leg.closestTo(end);
      assertEquals(0.0, there.distance().metres(), A_MICROMETRE);
      assertEquals(Place.ABEAM, there.place());
    }
  }

  @Test
  void aLegWithoutLengthIsAPoint() {
    RhumbLeg point = RhumbLeg.between(leg.start(), leg.start());
    ClosestPoint closest = point.closestTo(leg.end());
    assertEquals(leg.start(), closest.position());
    assertEquals(10_000, closest.distance().metres(), 1e-2);
  }

  /** Over the pole: the geodesic of the date line and the one of Greenwich are one line. */
  @Test
  void aLineOverThePoleIsFollowedBeyondIt() {
    Line overThePole = Line.geodesic(Position.ofDegrees(80, 0), TrueBearing.ofDegrees(0));
    ClosestPoint beyond = overThePole.closestTo(Position.ofDegrees(85, 180));
    assertEquals(0.0, beyond.distance().metres(), A_MICROMETRE);
    double toPole = new GeodesicFrom(80).metresTo(90);
    double backDown = new GeodesicFrom(85).metresTo(90);
    assertEquals(toPole + backDown, beyond.alongTrack().metres(), A_MICROMETRE);
  }

  private record GeodesicFrom(double lat) {
    double metresTo(double other) {
      return Places.metres(Position.ofDegrees(lat, 0), other, 0);
    }
  }

  @Test
  void aRhumbLineEndsAtThePole() {
    Line north = Line.rhumb(Position.ofDegrees(80, 0), TrueBearing.ofDegrees(0));
    ClosestPoint closest = north.closestTo(Position.ofDegrees(85, 180));
    assertEquals(90.0, closest.position().latitudeDegrees(), 1e-10);
    assertEquals(Place.END, closest.place());
  }

  @Test
  void theDateLineMakesNoSeam() {
    RhumbLeg over =
        RhumbLeg.between(Position.ofDegrees(-17, 179.95), Position.ofDegrees(-16.95, -179.9));
    Position rock = off(over, 9000, -90, 400);
    ClosestPoint closest = over.closestTo(rock);
    assertEquals(9000, closest.alongTrack().metres(), A_MICROMETRE);
    assertEquals(-400, closest.crossTrack().metres(), A_MICROMETRE);
  }

  @Test
  void onALongSpiralTheNearestTurnIsFound() {
    Line spiral = Line.rhumb(Position.ofDegrees(0, 0), TrueBearing.ofDegrees(88));
    double[] point = new double[3];
    spiral.pointAt(19_000e3, point, 0);
    Position near =
        GeodesicLeg.from(
                new Position(point[0], point[1]),
                TrueBearing.ofDegrees(178),
                Distance.ofKilometres(20))
            .end();
    ClosestPoint closest = spiral.closestTo(near);
    assertEquals(19_000e3, closest.alongTrack().metres(), A_MICROMETRE);
    assertEquals(20_000, closest.crossTrack().metres(), A_MICROMETRE);
  }

  /** Four kilometres short of the pole the line still turns away from a position far off. */
  @Test
  void theLastTurnBeforeThePoleIsFound() {
    Line line = Line.rhumb(Position.ofDegrees(63, 165), TrueBearing.ofDegrees(335));
    Position far = Position.ofDegrees(49, 141);
    double closest = Double.POSITIVE_INFINITY;
    double[] point = new double[3];
    for (int i = 0; i <= 100_000; i++) {
      line.pointAt(line.farthestAstern().metres() + i * 0.1, point, 0);
      closest = Math.min(closest, Places.metres(far, point[0], point[1]));
    }
    double found = line.closestTo(far).distance().metres();
    assertTrue(found <= closest + A_MICROMETRE, found + " above " + closest);
  }

  /** A position so far to one side of a point of the leg. */
  private static Position off(RhumbLeg leg, double along, double turn, double metres) {
    Position from = leg.pointAt(Distance.ofMetres(along));
    return GeodesicLeg.from(from, leg.course().turnedBy(turn), Distance.ofMetres(metres)).end();
  }

  /** Two hollows 700 km apart, both at a quarter of the earth; the nearer one is the shallower. */
  @Test
  void theDeeperOfTwoHollowsIsFound() {
    Line line =
        Line.geodesic(
            Position.ofDegrees(5.309364041962027, -8.156368127192138),
            TrueBearing.ofDegrees(128.0348875829354));
    Position far = Position.ofDegrees(-51.47033106686027, -90);
    ClosestPoint closest = line.closestTo(far);
    assertClosest(line, -20_000_000, 20_000_000, far, closest);
  }

  /** Beyond 18 000 km the slope no longer tells which end is nearer. */
  @Test
  void nearlyOppositePositionsHaveTheNearerEnd() {
    Random random = new Random(20261126);
    for (int i = 0; i < 60; i++) {
      Position start =
          Position.ofDegrees(120 * random.nextDouble() - 60, 359 * random.nextDouble() - 180);
      TrueBearing course = TrueBearing.ofDegrees(360 * random.nextDouble());
      Distance length = Distance.ofKilometres(10 + 500 * random.nextDouble());
      Position opposite =
          GeodesicLeg.from(
                  Position.ofDegrees(
                      -start.latitudeDegrees(),
                      Degrees.longitude(start.longitudeDegrees() + 180.0)),
                  TrueBearing.ofDegrees(360 * random.nextDouble()),
                  Distance.ofKilometres(1500 * random.nextDouble()))
              .end();
      for (Leg leg :
          new Leg[] {
            RhumbLeg.from(start, course, length), GeodesicLeg.from(start, course, length)
          }) {
        assertClosest(leg.line(), 0.0, leg.length().metres(), opposite, leg.closestTo(opposite));
      }
    }
  }

  /** The equator is as far from the pole everywhere: any point will do, but it takes an answer. */
  @Test
  void theEquatorIsAQuarterMeridianFromThePole() {
    Line equator = Line.geodesic(Position.ofDegrees(0, 20), TrueBearing.ofDegrees(90));
    ClosestPoint closest = equator.closestTo(Position.ofDegrees(90, 0));
    assertEquals(
        Ellipsoid.WGS84.quarterMeridianMetres(), closest.distance().metres(), A_MICROMETRE);
  }

  /** The slow and obvious way. */
  private static void assertClosest(
      Line line, double from, double to, Position position, ClosestPoint closest) {
    double[] point = new double[3];
    for (int i = 0; i <= 1000; i++) {
      line.pointAt(from + (to - from) * i / 1000, point, 0);
      double there = Places.metres(position, point[0], point[1]);
      assertTrue(closest.distance().metres() <= there + A_MICROMETRE, () -> line + " " + position);
    }
  }
}
