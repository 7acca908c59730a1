package org.ferryglide.nav.magnetic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.testing.Seeds;

class LegVariationTest {
  private static final MagneticSnapshot SNAPSHOT =
      MagneticModel.wmm2025().at(LocalDate.of(2026, 6, 1));

  /** Half a metre along a leg, at no more than a degree in ten kilometres. */
  private static final double FOUND_DEGREES = 1e-4;

  @Example
  void aShortLegHasOneVariation() {
    Leg leg =
        RhumbLeg.from(
            Position.ofDegrees(57, -7), TrueBearing.ofDegrees(80), Distance.ofNauticalMiles(5));
    LegVariation along = LegVariation.of(SNAPSHOT, leg);
    assertEquals(SNAPSHOT.variation(leg.start()), along.start());
    assertEquals(SNAPSHOT.variation(leg.end()), along.end());
    assertEquals(
        (along.start().degreesEast() + along.end().degreesEast()) / 2.0,
        along.middle().degreesEast(),
        1e-3);
    assertTrue(along.changes().isEmpty());
    assertTrue(along.notes().isEmpty());
    assertEquals(leg, along.leg());
  }

  @Property(seed = Seeds.SEED, tries = 30)
  void eachPlaceIsAnotherHalfDegreeFromTheStart(
      @ForAll @DoubleRange(min = -65, max = 65) @Scale(4) double latitude,
      @ForAll @DoubleRange(min = -180, max = 179) @Scale(4) double longitude,
      @ForAll @DoubleRange(min = 0, max = 359) @Scale(4) double course) {
    Leg leg =
        GeodesicLeg.from(
            Position.ofDegrees(latitude, longitude),
            TrueBearing.ofDegrees(course),
            Distance.ofKilometres(400));
    LegVariation along = LegVariation.of(SNAPSHOT, leg);
    double last = 0.0;
    for (LegVariation.Change change : along.changes()) {
      double halves =
          2.0
              * Math.IEEEremainder(
                  change.variation().degreesEast() - along.start().degreesEast(), 360.0);
      assertEquals(Math.rint(halves), halves, FOUND_DEGREES);
      assertTrue(Math.abs(halves) > 0.4);
      assertTrue(change.fromStart().metres() > last);
      last = change.fromStart().metres();
      assertEquals(leg.pointAt(change.fromStart()), change.place());
    }
    double total = Math.abs(along.changeDegreesEast());
    assertTrue(along.changes().size() >= (int) (2.0 * total));
    assertEquals(
        0.0,
        Math.IEEEremainder(
            along.changeDegreesEast() - along.end().degreesEast() + along.start().degreesEast(),
            360.0),
        1e-9);
  }

  @Example
  void alongLegIsNotedWithItsFirstHalfDegree() {
    Leg leg = RhumbLeg.between(Position.ofDegrees(57, -7), Position.ofDegrees(57, 5));
    LegVariation along = LegVariation.of(SNAPSHOT, leg);
    assertTrue(along.changes().size() >= 6, along.changes().toString());
    assertEquals("variation.changes", along.notes().get(0).code());
    // against the slow way: a walk of 100 m steps
    double start = along.start().degreesEast();
    double walked = 0.0;
    while (Math.abs(
            SNAPSHOT.variation(leg.pointAt(Distance.ofMetres(walked))).degreesEast() - start)
        < 0.5) {
      walked += 100.0;
    }
    assertEquals(walked, along.changes().get(0).fromStart().metres(), 100.0);
  }

  @Example
  void roundAMagneticPoleTheChangeIsKeptWhole() {
    // the leg passes between the dip pole and the geographic pole, where variation runs through 180
    Leg leg = RhumbLeg.between(Position.ofDegrees(87.5, 60), Position.ofDegrees(87.5, -160));
    LegVariation along = LegVariation.of(SNAPSHOT, leg);
    assertTrue(Math.abs(along.changeDegreesEast()) > 90.0);
    assertTrue(
        along.notes().stream()
            .anyMatch(
                n ->
                    n.code().equals("magnetic.blackout-zone")
                        || n.code().equals("magnetic.caution-zone")));
  }

  @Example
  void aLegOfNoLengthHasNoChange() {
    Position here = Position.ofDegrees(57, -7);
    LegVariation along = LegVariation.of(SNAPSHOT, RhumbLeg.between(here, here));
    assertEquals(0.0, along.changeDegreesEast());
    assertTrue(along.changes().isEmpty());
  }

  private static List<String> zones(Leg leg) {
    return LegVariation.of(SNAPSHOT, leg).notes().stream()
        .map(Note::code)
        .filter(code -> code.endsWith("zone"))
        .toList();
  }

  /** Both ends usable, the south dip pole of 2026 between them: once no word. */
  @Example
  void aLegAcrossTheDipPoleIsWarnedOfThoughItsEndsAreUsable() {
    Position north = Position.ofDegrees(-52, 133);
    Position south = Position.ofDegrees(-77, 140);
    assertEquals(CompassZone.USABLE, SNAPSHOT.field(north).zone());
    assertEquals(CompassZone.USABLE, SNAPSHOT.field(south).zone());
    assertEquals(List.of("magnetic.blackout-zone"), zones(GeodesicLeg.between(north, south)));
  }

  @Example
  void aLegThatEndsOrStartsInAWeakFieldSaysSo() {
    Position strong = Position.ofDegrees(57, -7);
    Position weak = Position.ofDegrees(74.7, -95);
    assertEquals(CompassZone.CAUTION, SNAPSHOT.field(weak).zone());
    assertEquals(List.of("magnetic.caution-zone"), zones(GeodesicLeg.between(strong, weak)));
    assertEquals(List.of("magnetic.caution-zone"), zones(GeodesicLeg.between(weak, strong)));
    Position nearby = Position.ofDegrees(74.6, -95);
    assertEquals(List.of("magnetic.caution-zone"), zones(GeodesicLeg.between(nearby, weak)));
  }

  /** The field is weak at the last place alone, the one the paddler means to land at. */
  @Example
  void aLegWhoseEndAloneIsInAWeakFieldSaysSo() {
    double usable = 57;
    double weak = 74.7;
    while (weak - usable > 1e-5) {
      double middle = 0.5 * (usable + weak);
      boolean isUsable =
          SNAPSHOT.field(Position.ofDegrees(middle, -95)).zone() == CompassZone.USABLE;
      usable = isUsable ? middle : usable;
      weak = isUsable ? weak : middle;
    }
    Position end = Position.ofDegrees(weak, -95);
    Leg leg = RhumbLeg.between(Position.ofDegrees(weak - 0.01, -95), end);
    Position shortOfTheEnd = leg.pointAt(Distance.ofMetres(leg.length().metres() - 10));
    assertEquals(CompassZone.USABLE, SNAPSHOT.field(shortOfTheEnd).zone());
    assertEquals(List.of("magnetic.caution-zone"), zones(leg));
  }
}
