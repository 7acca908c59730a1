package org.ferryglide.nav.geodesy;

import static org.ferryglide.testing.Refusal.message;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;

class CoastStretchTest {
  private final Position landing = Position.ofDegrees(55, -5);
  private final Position point = Position.ofDegrees(55.02, -4.98);
  private final Position beach = Position.ofDegrees(55.01, -4.93);
  private final CoastStretch shore = CoastStretch.along(landing, point, beach);

  @Test
  void itsLengthIsTheSumOfItsSegments() {
    double sum =
        RhumbLeg.between(landing, point).length().metres()
            + RhumbLeg.between(point, beach).length().metres();
    assertEquals(sum, shore.length().metres());
    assertEquals(2, shore.legs().size());
    assertEquals(landing, shore.start());
    assertEquals(beach, shore.end());
    assertTrue(shore.length().compareTo(shore.direct().length()) > 0);
  }

  @Test
  void itsHoursAreItsLengthOverTheSpeedRoundedLater() {
    CoastStretch threeMiles =
        CoastStretch.along(
            landing,
            RhumbLeg.from(landing, TrueBearing.ofDegrees(0), Distance.ofNauticalMiles(3)).end());
    assertEquals(Duration.ofHours(1), threeMiles.timeAt(Speed.ofKnots(3.0000001)));
    assertEquals(Duration.ofHours(1).plusSeconds(1), threeMiles.timeAt(Speed.ofKnots(2.9999999)));
  }

  @Test
  void pointsAlongGoRoundTheCorners() {
    Distance first = shore.legs().get(0).length();
    assertEquals(landing, shore.pointAt(Distance.ZERO));
    assertEquals(point, shore.pointAt(first));
    assertEquals(beach, shore.pointAt(shore.length()));
    Position beyond = shore.pointAt(first.plus(Distance.ofMetres(500)));
    assertEquals(500, Places.metres(point, beyond), 1e-3);
    assertEquals(
        "distance along must be in [0, " + shore.length().metres() + "] metres, but was -1.0",
        message(() -> shore.pointAt(Distance.ofMetres(-1))));
  }

  @Test
  void theOtherWayItIsAsLong() {
    CoastStretch back = shore.reverse();
    assertEquals(shore.length().metres(), back.length().metres(), 1e-9);
    assertEquals(beach, back.start());
    assertEquals(landing, back.end());
  }

  @Test
  void onePointIsNoStretch() {
    assertEquals(
        "a coast stretch needs at least two points, but was given 1",
        message(() -> CoastStretch.along(List.of(landing))));
  }

  @Test
  void aMileAtAKnotTakesAnHourAndNotASecondMore() {
    Position beach = Position.ofDegrees(50, -5);
    for (int course = 0; course < 360; course++) {
      for (int miles = 1; miles <= 12; miles++) {
        RhumbLeg leg =
            RhumbLeg.from(beach, TrueBearing.ofDegrees(course), Distance.ofNauticalMiles(miles));
        Duration time = CoastStretch.along(leg.start(), leg.end()).timeAt(Speed.ofKnots(1));
        assertEquals(Duration.ofHours(miles), time, () -> leg.toString());
      }
    }
  }

  @Test
  void noSpeedIsRefused() {
    assertEquals(
        "speed must be a finite number of metres a second above 0, but was 0.0",
        message(() -> shore.timeAt(Speed.ZERO)));
    assertEquals(
        "speed must be enough to arrive within 30 million years, but was 1.0E-100 m/s",
        message(() -> shore.timeAt(Speed.ofMetresPerSecond(1e-100))));
  }
}
