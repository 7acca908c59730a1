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

@Domain(Places.class)
@Domain(DomainContext.Global.class)
class CrossingsProperties {

  @Property(tries = 150)
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

  @Property(tries = 150)
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

  private static Leg leg(boolean rhumb, Position start, TrueBearing course, Distance length) {
    return rhumb ? RhumbLeg.from(start, course, length) : GeodesicLeg.from(start, course, length);
  }
}
