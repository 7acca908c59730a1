package org.ferryglide.nav.geodesy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.Crossings.Crossing;
import org.ferryglide.nav.geodesy.Places.KayakLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.ferryglide.testing.Seeds;

@Domain(Places.class)
@Domain(DomainContext.Global.class)
class CrossingsProperties {

  @Property(seed = Seeds.SEED, tries = 150)
  void legsDrawnThroughAPointCrossThere(
      @ForAll KayakLeg kayak,
      @ForAll @DoubleRange(min = 0.02, max = 0.98) @Scale(9) double part,
      @ForAll @DoubleRange(min = 5, max = 175) @Scale(9) double angle,
      @ForAll boolean rhumbFirst,
      @ForAll boolean rhumbSecond) {
    Leg first = leg(rhumbFirst, kayak.start(), kayak.course(), kayak.length());
    Distance along = first.length().times(part);
    Position point = first.pointAt(along);
    TrueBearing course = first.courseAt(along).turnedBy(angle);
    Distance half = Distance.ofMetres(3000);
    Position from = GeodesicLeg.from(point, course.reciprocal(), half).end();
    Leg second;
    if (rhumbSecond) {
      Position start = RhumbLeg.from(point, course.reciprocal(), half).end();
      second = RhumbLeg.from(start, course, half.times(2));
    } else {
      second =
          GeodesicLeg.from(from, GeodesicLeg.between(from, point).initialCourse(), half.times(2));
    }
    Crossings crossings = first.crossings(second);
    assertEquals(1, crossings.points().size());
    Crossing crossing = crossings.points().get(0);
    // A course in degrees turns a leg of 6 km by nanometres; the angle is 5 degrees at least.
    assertEquals(along.metres(), crossing.alongFirst().metres(), 1e-6);
    assertEquals(3000.0, crossing.alongSecond().metres(), 1e-6);
    assertTrue(Places.metres(point, crossing.position()) < 1e-6);
  }

  @Property(seed = Seeds.SEED, tries = 150)
  void bothOrdersFindTheSamePoints(
      @ForAll KayakLeg a, @ForAll @DoubleRange(min = 0, max = 359) @Scale(9) double course) {
    Leg first = leg(true, a.start(), a.course(), a.length());
    Position near = first.pointAt(first.length().times(0.4));
    Leg second = leg(false, near, new TrueBearing(course), a.length());
    Crossings one = first.crossings(second);
    Crossings other = second.crossings(first);
    assertEquals(one.runTogether(), other.runTogether());
    assertEquals(one.points().size(), other.points().size());
  }

  /** The independent way: straight lines on the chart, repeated every 360 degrees of longitude. */
  @Property(seed = Seeds.SEED, tries = 40)
  void rhumbLinesCrossAsOftenAsOnTheMercatorChart(
      @ForAll @DoubleRange(min = -70, max = 70) @Scale(9) double lat1,
      @ForAll @DoubleRange(min = -70, max = 70) @Scale(9) double lat2,
      @ForAll @DoubleRange(min = 0, max = 360) @Scale(9) double dlon,
      @ForAll @DoubleRange(min = 0.5, max = 179.5) @Scale(9) double course1Drawn,
      @ForAll @DoubleRange(min = 0.2, max = 178.8) @Scale(9) double courseApart,
      @ForAll @DoubleRange(min = 100, max = 15_000) @Scale(6) double kilometresDrawn) {
    double course1 = notEast(course1Drawn);
    double course2 = notEast(0.5 + (course1 - 0.5 + courseApart) % 179.0);
    double kilometres =
        Math.min(kilometresDrawn, kilometresToThePole(lat1, lat2, course1, course2));
    Line first = Line.rhumb(Position.ofDegrees(lat1, 0), new TrueBearing(course1));
    Line second =
        Line.rhumb(Position.ofDegrees(lat2, Degrees.longitude(dlon)), new TrueBearing(course2));
    Distance span = Distance.ofKilometres(kilometres);
    double[] reach1 = northings(first, span);
    double[] reach2 = northings(second, span);
    double north = isometric(lat2) - isometric(lat1);
    double sin1 = Math.sin(Math.toRadians(course1));
    double cos1 = Math.cos(Math.toRadians(course1));
    double sin2 = Math.sin(Math.toRadians(course2));
    double cos2 = Math.cos(Math.toRadians(course2));
    int expected = 0;
    for (int turns = -400; turns <= 400; turns++) {
      double east = Math.toRadians(dlon + 360.0 * turns);
      double sine = sin1 * cos2 - cos1 * sin2;
      double north1 = (east * cos2 - north * sin2) / sine * cos1;
      double north2 = (east * cos1 - north * sin1) / sine * cos2;
      if (within(north1, reach1) && within(north2, reach2)) {
        expected++;
      }
    }
    assertEquals(expected, first.crossings(second, span).points().size());
  }

  /** A course that is not due east, where the chart's formulas divide by nothing. */
  private static double notEast(double course) {
    return Math.abs(course - 90) > 0.1 ? course : course < 90 ? 89.85 : 90.15;
  }

  /** So far that neither line comes to 89.9 degrees; a degree has 110.5 km at least. */
  private static double kilometresToThePole(
      double lat1, double lat2, double course1, double course2) {
    double steeper =
        Math.max(
            Math.abs(Math.cos(Math.toRadians(course1))),
            Math.abs(Math.cos(Math.toRadians(course2))));
    return (89.9 - Math.max(Math.abs(lat1), Math.abs(lat2))) * 110.5 / steeper;
  }

  /** Isometric latitude at both ends of what is searched, from that of the origin. */
  private static double[] northings(Line line, Distance span) {
    double origin = isometric(line.origin().latitudeDegrees());
    double[] point = new double[3];
    line.pointAt(Math.max(-span.metres(), line.farthestAstern().metres()), point, 0);
    double astern = isometric(point[0]) - origin;
    line.pointAt(Math.min(span.metres(), line.farthestAhead().metres()), point, 0);
    return new double[] {astern, isometric(point[0]) - origin};
  }

  private static boolean within(double x, double[] ends) {
    return x >= Math.min(ends[0], ends[1]) && x <= Math.max(ends[0], ends[1]);
  }

  /** Snyder (1987), eq. 7-7. */
  private static double isometric(double latDegrees) {
    double sine = Math.sin(Math.toRadians(latDegrees));
    double e = Math.sqrt(Ellipsoid.WGS84.eccentricitySquared());
    return atanh(sine) - e * atanh(e * sine);
  }

  private static double atanh(double x) {
    return 0.5 * Math.log((1 + x) / (1 - x));
  }

  private static Leg leg(boolean rhumb, Position start, TrueBearing course, Distance length) {
    return rhumb ? RhumbLeg.from(start, course, length) : GeodesicLeg.from(start, course, length);
  }
}
