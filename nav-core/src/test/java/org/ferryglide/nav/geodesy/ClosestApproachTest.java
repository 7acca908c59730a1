package org.ferryglide.nav.geodesy;

import static org.ferryglide.testing.Refusal.message;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.testing.Seeds;
import org.junit.jupiter.api.Test;

class ClosestApproachTest {
  private static final Position HERE = Position.ofDegrees(55, -5);
  private static final Duration AN_HOUR = Duration.ofHours(1);

  private final MovingVessel kayak =
      new MovingVessel(HERE, TrueBearing.ofDegrees(90), Speed.ofKnots(3));

  @Test
  void distancesAndBearingsGoByTheEllipsoidOfTheApproach() {
    Ellipsoid sphere = Ellipsoid.sphere(6_371_000.0);
    MovingVessel own = new MovingVessel(HERE, TrueBearing.ofDegrees(20), Speed.ofKnots(3));
    MovingVessel ship =
        new MovingVessel(
            RhumbLeg.from(HERE, TrueBearing.ofDegrees(80), Distance.ofNauticalMiles(6)).end(),
            TrueBearing.ofDegrees(270),
            Speed.ofKnots(12));
    ClosestApproach approach = ClosestApproach.between(sphere, own, ship, AN_HOUR);
    assertEquals(
        approach.distance().metres(), approach.distanceAfter(approach.time()).metres(), 1e-6);
    assertEquals(
        0.0, approach.bearing().turnDegreesTo(approach.bearingAfter(approach.time())), 1e-9);
  }

  @Test
  void aVesselOnAConstantBearingCollides() {
    // Both reach the point 1 NM east of the kayak after 20 minutes.
    Position meeting = RhumbLeg.from(HERE, kayak.track(), Distance.ofNauticalMiles(1)).end();
    TrueBearing south = TrueBearing.ofDegrees(180);
    Position ferryStart =
        RhumbLeg.from(meeting, TrueBearing.ofDegrees(0), Distance.ofNauticalMiles(5)).end();
    MovingVessel ferry = new MovingVessel(ferryStart, south, Speed.ofKnots(15));
    ClosestApproach approach = ClosestApproach.between(kayak, ferry, AN_HOUR);
    assertEquals(0.0, approach.distance().metres(), 1e-3);
    assertEquals(1200.0, approach.time().toNanos() * 1e-9, 1e-4);
    assertFalse(approach.isOpening());
    double now = approach.bearingAfter(Duration.ZERO).degrees();
    double later = approach.bearingAfter(Duration.ofMinutes(15)).degrees();
    assertEquals(now, later, 0.02); // the meridians close in a little
    // In sight at 2 miles: they close by sqrt(15² + 3²) knots, seen from the flat.
    double warning = approach.warning(Distance.ofNauticalMiles(2)).orElseThrow().toMillis() * 1e-3;
    assertEquals(2 / Math.hypot(15, 3) * 3600, warning, 1.0);
  }

  /** Source: elementary geometry, a relative motion of 15 knots past a point 0.6 miles off. */
  @Test
  void aVesselPassingAheadIsNeverCloserThanItsTrackIsFromAMark() {
    MovingVessel mark = MovingVessel.mark(HERE);
    Position abeam =
        RhumbLeg.from(HERE, TrueBearing.ofDegrees(0), Distance.ofNauticalMiles(0.6)).end();
    Position start =
        RhumbLeg.from(abeam, TrueBearing.ofDegrees(270), Distance.ofNauticalMiles(5)).end();
    MovingVessel ship = new MovingVessel(start, TrueBearing.ofDegrees(90), Speed.ofKnots(15));
    ClosestApproach approach = ClosestApproach.between(mark, ship, AN_HOUR);
    assertEquals(0.6, approach.distance().nauticalMiles(), 1e-6);
    assertEquals(1200.0, approach.time().toMillis() * 1e-3, 0.1);
    assertEquals(0.0, approach.bearing().turnDegreesTo(TrueBearing.ofDegrees(0)), 1e-6);
    assertEquals(HERE, approach.ownPosition());
    assertEquals(
        approach.distance().metres(), approach.distanceAfter(approach.time()).metres(), 1e-6);
    // In sight at 1 mile: sqrt(1 - 0.36) = 0.8 miles before, 192 seconds.
    Duration warning = approach.warning(Distance.ofNauticalMiles(1)).orElseThrow();
    assertEquals(192.0, warning.toMillis() * 1e-3, 0.5);
    assertTrue(approach.warning(Distance.ofNauticalMiles(0.5)).isEmpty());
    // In sight already: the time from now.
    assertEquals(approach.time(), approach.warning(Distance.ofNauticalMiles(10)).orElseThrow());
  }

  @Test
  void vesselsThatDrawApartAreClosestNow() {
    MovingVessel ship =
        new MovingVessel(
            Position.ofDegrees(55.02, -5), TrueBearing.ofDegrees(350), Speed.ofKnots(10));
    ClosestApproach approach = ClosestApproach.between(kayak, ship, AN_HOUR);
    assertTrue(approach.isOpening());
    assertEquals(Duration.ZERO, approach.time());
    assertEquals(ship.position(), approach.otherPosition());
  }

  @Test
  void vesselsSideBySideStayAsTheyAre() {
    MovingVessel twin =
        new MovingVessel(Position.ofDegrees(55.01, -5), kayak.track(), kayak.speed());
    ClosestApproach approach = ClosestApproach.between(kayak, twin, AN_HOUR);
    assertEquals(1113.2, approach.distance().metres(), 1.0);
  }

  @Test
  void theHorizonEndsTheSearch() {
    MovingVessel far =
        new MovingVessel(
            RhumbLeg.from(HERE, TrueBearing.ofDegrees(90), Distance.ofNauticalMiles(100)).end(),
            TrueBearing.ofDegrees(270),
            Speed.ofKnots(10));
    ClosestApproach approach = ClosestApproach.between(kayak, far, AN_HOUR);
    assertEquals(AN_HOUR, approach.time());
    assertEquals(100 - 13, approach.distance().nauticalMiles(), 0.05);
  }

  @Test
  void aLegPassesAMarkAtItsTime() {
    RhumbLeg leg = RhumbLeg.from(HERE, TrueBearing.ofDegrees(0), Distance.ofNauticalMiles(6));
    Position buoy =
        GeodesicLeg.from(
                leg.pointAt(Distance.ofNauticalMiles(3)),
                TrueBearing.ofDegrees(90),
                Distance.ofMetres(300))
            .end();
    ClosestApproach.Passing passing = ClosestApproach.passing(leg, Speed.ofKnots(3), buoy);
    assertEquals(3600.0, passing.time().toMillis() * 1e-3, 1e-3);
    assertEquals(300.0, passing.closest().crossTrack().metres(), 1e-6);
  }

  @Test
  void aHorizonOutOfRangeIsRefused() {
    assertEquals(
        "horizon must be above 0 and at most 24 hours, but was PT25H",
        message(() -> ClosestApproach.between(kayak, kayak, Duration.ofHours(25))));
    assertEquals(
        "horizon must be above 0 and at most 24 hours, but was PT0S",
        message(() -> ClosestApproach.between(kayak, kayak, Duration.ZERO)));
    assertEquals(
        "speed must be a finite number of metres a second above 0, but was 0.0",
        message(
            () ->
                ClosestApproach.passing(
                    RhumbLeg.between(HERE, Position.ofDegrees(56, -5)), Speed.ZERO, HERE)));
  }

  /** No instant of a fine series is closer, whatever the two do. */
  @Property(seed = Seeds.SEED, tries = 100)
  void noOtherTimeIsCloser(
      @ForAll @DoubleRange(min = 0, max = 359) double course,
      @ForAll @DoubleRange(min = 0, max = 359) double bearing,
      @ForAll @DoubleRange(min = 0.1, max = 20) double miles,
      @ForAll @DoubleRange(min = 0, max = 25) double knots) {
    Position there =
        GeodesicLeg.from(HERE, new TrueBearing(bearing), Distance.ofNauticalMiles(miles)).end();
    MovingVessel ship = new MovingVessel(there, new TrueBearing(course), Speed.ofKnots(knots));
    ClosestApproach approach = ClosestApproach.between(kayak, ship, AN_HOUR);
    for (int minute = 0; minute <= 60; minute += 2) {
      double then = approach.distanceAfter(Duration.ofMinutes(minute)).metres();
      assertTrue(approach.distance().metres() <= then + 1e-6);
    }
  }

  @Test
  void timesBeyondAllBoundsAreRefused() {
    assertEquals(
        "horizon must be above 0 and at most 24 hours, but was PT2562047788015215H30M7S",
        message(() -> ClosestApproach.between(kayak, kayak, Duration.ofSeconds(Long.MAX_VALUE))));
    RhumbLeg leg = RhumbLeg.between(HERE, Position.ofDegrees(56, -5));
    assertEquals(
        "speed must be enough to pass the mark within 30 million years, but was 1.0E-18 m/s",
        message(
            () ->
                ClosestApproach.passing(
                    leg, Speed.ofMetresPerSecond(1e-18), Position.ofDegrees(56, -5))));
  }

  @Test
  void aVeryNearHorizonIsAHorizon() {
    MovingVessel ship =
        new MovingVessel(
            Position.ofDegrees(55.02, -5), TrueBearing.ofDegrees(180), Speed.ofKnots(10));
    ClosestApproach approach = ClosestApproach.between(kayak, ship, Duration.ofNanos(10));
    assertEquals(Duration.ofNanos(10), approach.time());
  }

  @Test
  @SuppressWarnings("NullAway") // as a caller in another language may
  void aVesselWithoutPartsIsRefused() {
    assertThrows(
        NullPointerException.class, () -> new MovingVessel(null, kayak.track(), kayak.speed()));
    assertThrows(NullPointerException.class, () -> new MovingVessel(HERE, null, kayak.speed()));
    assertThrows(NullPointerException.class, () -> new MovingVessel(HERE, kayak.track(), null));
  }

  @Test
  void aMarkPassedBeforeTheStartIsRefused() {
    RhumbLeg leg = RhumbLeg.between(Position.ofDegrees(50, 0), Position.ofDegrees(51, 0));
    ClosestPoint closest = leg.closestTo(Position.ofDegrees(50.5, 0.1));
    assertEquals(
        "time from the start of the leg must not be negative, but was PT-1S",
        message(() -> new ClosestApproach.Passing(closest, Duration.ofSeconds(-1))));
  }
}
