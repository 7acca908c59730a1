package org.ferryglide.nav.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;

/** Questions about a stream whose answers are known in closed form. */
class LocalStreamTest {
  /** Starts and ends are found to half a second. */
  private static final double SECONDS = 0.5;

  private static final Position PLACE = Position.ofDegrees(50, -5);
  private static final Instant START = Instant.parse("2026-06-01T00:00:00Z");
  private static final double START_SECONDS = EpochSeconds.of(START);

  /** Half a tide of this stream, seconds. */
  private static final double HALF = 6 * 3600;

  /** Runs along 030° and back as a sine of 2 m/s, first turn at the start of the day. */
  private static boolean reversing(double seconds, double[] out, int offset) {
    double along = 2.0 * Math.sin(Math.PI * (seconds - START_SECONDS) / HALF);
    out[offset] = along * Math.sin(Math.toRadians(30));
    out[offset + 1] = along * Math.cos(Math.toRadians(30));
    return true;
  }

  private static final LocalStream SOUND =
      LocalStream.of((lat, lon, t, out, offset) -> reversing(t, out, offset), PLACE);

  private static Instant hour(double hours) {
    return START.plusMillis(Math.round(hours * 3600e3));
  }

  private static void assertTime(Instant expected, Instant actual) {
    assertEquals(0.0, Duration.between(expected, actual).toMillis() / 1000.0, SECONDS);
  }

  /** Northward of a channel that runs north and south the east part says nothing. */
  @Test
  void helpIsMeasuredAlongTheTrackInBothParts() {
    for (double track : new double[] {0, 30, 75, 119}) {
      Found<Window> help =
          SOUND.helpingWindows(TrueBearing.ofDegrees(track), Speed.ZERO, hour(0), hour(11.9));
      assertEquals(1, help.items().size());
      assertTime(hour(0), help.items().get(0).from());
      assertTime(hour(6), help.items().get(0).until());
      Found<Window> back =
          SOUND.helpingWindows(TrueBearing.ofDegrees(track + 180), Speed.ZERO, hour(0), hour(11.9));
      assertTime(hour(6), back.items().get(0).from());
    }
    // 2 m/s along 030° gives 2 cos 30° northward, 2 cos 60° eastward
    double half = Math.asin(0.5) / Math.PI * 6.0;
    Found<Window> north =
        SOUND.helpingWindows(
            TrueBearing.ofDegrees(0),
            Speed.ofMetresPerSecond(Math.cos(Math.toRadians(30))),
            hour(0),
            hour(12));
    assertTime(hour(half), north.items().get(0).from());
    assertTime(hour(6 - half), north.items().get(0).until());
  }

  @Test
  void slackWatersAreTheTurnsOfAReversingStream() {
    Found<StreamMoment> slack = SOUND.slackWaters(hour(-1), hour(13));
    Found<StreamTurn> turns = SOUND.turns(hour(-1), hour(13));
    assertEquals(3, slack.items().size());
    for (int i = 0; i < 3; i++) {
      assertTime(hour(6 * i), slack.items().get(i).time());
      assertTime(hour(6 * i), turns.items().get(i).time());
      assertEquals(0.0, slack.items().get(i).stream().rate().metresPerSecond(), 1e-3);
      assertEquals(i % 2 == 0 ? 30 : 210, turns.items().get(i).setAfter().degrees(), 1e-6);
    }
    assertTrue(slack.isWhole());
    assertEquals(List.of(TimeSpan.of(hour(-1), hour(13))), slack.seen());
  }

  @Test
  void slackWindowsAreWhereTheSineIsSmall() {
    Found<Window> windows = SOUND.slackWindows(Speed.ofMetresPerSecond(1), hour(3), hour(9));
    double half = Math.asin(0.5) / Math.PI * 6.0;
    assertEquals(1, windows.items().size());
    assertTime(hour(6 - half), windows.items().get(0).from());
    assertTime(hour(6 + half), windows.items().get(0).until());
  }

  @Test
  void theStrongestIsHalfwayBetweenTurns() {
    StreamMoment strongest = SOUND.strongest(hour(1), hour(5)).first().get();
    assertTime(hour(3), strongest.time());
    assertEquals(2.0, strongest.stream().rate().metresPerSecond(), 1e-9);
  }

  @Test
  void aHoleInTheDataPartsWhatWasSeen() {
    LocalStream holed =
        LocalStream.of(
            (lat, lon, t, out, offset) ->
                !(t > EpochSeconds.of(hour(2)) && t < EpochSeconds.of(hour(4)))
                    && reversing(t, out, offset),
            PLACE);
    Found<Window> helping =
        holed.helpingWindows(TrueBearing.ofDegrees(30), Speed.ZERO, hour(1), hour(5));
    assertEquals(2, helping.items().size());
    assertTrue(helping.items().get(0).openBefore() && helping.items().get(0).openAfter());
    assertTime(hour(2), helping.items().get(0).until());
    assertTime(hour(4), helping.items().get(1).from());
    assertEquals(1, helping.unseen().size());
    assertTime(hour(2), helping.unseen().get(0).from());
    assertTime(hour(4), helping.unseen().get(0).until());
    assertEquals(Found.Stopped.AT_END, helping.stopped());
  }

  @Test
  void timesWithoutWindAreNotSeen() {
    Velocity fresh = Velocity.ofWind(TrueBearing.ofDegrees(30), Speed.ofKnots(15));
    WindField untilTwo =
        (lat, lon, t, out, offset) -> {
          if (t > EpochSeconds.of(hour(2))) {
            return false;
          }
          out[offset] = fresh.eastMetresPerSecond();
          out[offset + 1] = fresh.northMetresPerSecond();
          return true;
        };
    WindAgainstStream rough =
        new WindAgainstStream(Speed.ofKnots(10), Speed.ofMetresPerSecond(1), 10);
    Found<Window> windows = SOUND.windAgainstStream(untilTwo, rough, hour(0), hour(12));
    assertEquals(1, windows.items().size());
    assertTime(hour(Math.asin(0.5) / Math.PI * 6.0), windows.items().get(0).from());
    assertTime(hour(2), windows.items().get(0).until());
    assertTrue(windows.items().get(0).openAfter());
    assertTime(hour(2), windows.seen().get(0).until());
    assertEquals(Found.Stopped.NO_DATA, windows.stopped());
    assertFalse(windows.isWhole());
  }
}
