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
import org.ferryglide.nav.geodesy.ClosestPoint.Place;
import org.ferryglide.nav.geodesy.Places.KayakLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.ferryglide.testing.Seeds;

@Domain(Places.class)
@Domain(DomainContext.Global.class)
class ClosestPointProperties {
  private static final double A_MICROMETRE = 1e-6;

  @Property(seed = Seeds.SEED, tries = 200)
  void noPointOfTheLegIsCloser(
      @ForAll KayakLeg kayak,
      @ForAll @DoubleRange(min = 0, max = 359) @Scale(9) double bearing,
      @ForAll @DoubleRange(min = 0, max = 60_000) @Scale(6) double metres,
      @ForAll @DoubleRange(min = 0, max = 1) @Scale(9) double part) {
    for (Leg leg : legs(kayak)) {
      Position position =
          GeodesicLeg.from(leg.start(), new TrueBearing(bearing), Distance.ofMetres(metres)).end();
      ClosestPoint closest = leg.closestTo(position);
      Position random = leg.pointAt(leg.length().times(part));
      assertTrue(closest.distance().metres() <= Places.metres(random, position) + A_MICROMETRE);
      assertEquals(
          closest.distance().metres(), Places.metres(closest.position(), position), A_MICROMETRE);
    }
  }

  /** Against the slow and obvious way, from pole to pole. */
  @Property(seed = Seeds.SEED, tries = 25)
  void noPointOfAnEndlessLineIsCloser(
      @ForAll Position origin,
      @ForAll Position position,
      @ForAll @DoubleRange(min = 0, max = 359) @Scale(9) double course) {
    boolean atPole = Math.abs(origin.latitudeDegrees()) == 90;
    TrueBearing bearing = new TrueBearing(atPole ? (course < 180 ? 0 : 180) : course);
    for (Line line : new Line[] {Line.rhumb(origin, bearing), Line.geodesic(origin, bearing)}) {
      double closest = line.closestTo(position).distance().metres();
      double astern = line.farthestAstern().metres();
      double step = (line.farthestAhead().metres() - astern) / 500;
      double[] point = new double[3];
      for (int i = 0; i <= 500; i++) {
        line.pointAt(astern + i * step, point, 0);
        double there = Places.metres(position, point[0], point[1]);
        assertTrue(closest <= there + A_MICROMETRE);
      }
    }
  }

  @Property(seed = Seeds.SEED, tries = 200)
  void theFootIsGoodToAMicrometre(
      @ForAll KayakLeg kayak,
      @ForAll @DoubleRange(min = 0, max = 1) @Scale(9) double part,
      @ForAll @DoubleRange(min = 1e-3, max = 20_000) @Scale(6) double off,
      @ForAll boolean toStarboard) {
    double metres = toStarboard ? off : -off;
    for (Leg leg : legs(kayak)) {
      Distance along = leg.length().times(part);
      TrueBearing abeam = leg.courseAt(along).turnedBy(90);
      Position position =
          Line.geodesic(leg.pointAt(along), abeam).pointAt(Distance.ofMetres(metres));
      ClosestPoint closest = leg.closestTo(position);
      assertEquals(along.metres(), closest.alongTrack().metres(), A_MICROMETRE);
      assertEquals(metres, closest.crossTrack().metres(), A_MICROMETRE);
    }
  }

  @Property(seed = Seeds.SEED, tries = 200)
  void theOtherWayRoundTheSignChanges(
      @ForAll KayakLeg kayak,
      @ForAll @DoubleRange(min = 0.01, max = 0.99) @Scale(9) double part,
      @ForAll @DoubleRange(min = 1, max = 20_000) @Scale(6) double metres,
      @ForAll boolean toStarboard) {
    for (Leg leg : legs(kayak)) {
      Distance along = leg.length().times(part);
      TrueBearing abeam = leg.courseAt(along).turnedBy(toStarboard ? 90 : -90);
      Position position =
          Line.geodesic(leg.pointAt(along), abeam).pointAt(Distance.ofMetres(metres));
      ClosestPoint closest = leg.closestTo(position);
      assertEquals(Place.ABEAM, closest.place());
      assertEquals(toStarboard, closest.crossTrack().metres() > 0.0);
      ClosestPoint back = leg.reverse().closestTo(position);
      assertEquals(-closest.crossTrack().metres(), back.crossTrack().metres(), A_MICROMETRE);
      assertEquals(
          leg.length().metres() - closest.alongTrack().metres(),
          back.alongTrack().metres(),
          2 * A_MICROMETRE);
    }
  }

  private static Leg[] legs(KayakLeg kayak) {
    return new Leg[] {
      RhumbLeg.from(kayak.start(), kayak.course(), kayak.length()),
      GeodesicLeg.from(kayak.start(), kayak.course(), kayak.length())
    };
  }
}
