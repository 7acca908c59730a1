package org.ferryglide.nav.water;

import static org.ferryglide.testing.Refusal.message;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;

class WaterTest {
  private static final Position PLACE = Position.ofDegrees(50, -5);
  private static final Instant TIME = Instant.parse("2026-06-01T09:30:00.25Z");

  @Test
  void aSteadyStreamIsTheSameEverywhereAndAlways() {
    StreamField field = StreamField.steady(Velocity.ofEastAndNorth(1, -2));
    assertEquals(Optional.of(Velocity.ofEastAndNorth(1, -2)), field.at(PLACE, TIME));
    assertTrue(field.isUniform());
    assertEquals(Double.POSITIVE_INFINITY, field.nextBreakAfter(0));
    double[] out = new double[3];
    assertTrue(field.sample(0, 0, 0, out, 1));
    assertEquals(1.0, out[1]);
    assertEquals(-2.0, out[2]);
    assertFalse(field.sample(Double.NaN, 0, 0, out, 1));
  }

  @Test
  void aFieldWithoutDataIsEmptyAndNotSlack() {
    StreamField nowhere = (latitude, longitude, seconds, out, offset) -> false;
    assertEquals(Optional.empty(), nowhere.at(PLACE, TIME));
    assertEquals(Optional.of(Velocity.STILL), StreamField.slack().at(PLACE, TIME));
    assertEquals(Optional.empty(), nowhere.maxRate());
    assertFalse(nowhere.isUniform());
    assertEquals(Explanation.NONE, nowhere.explain(PLACE, TIME));
  }

  @Test
  void instantsAndSecondsGoBackAndForth() {
    assertEquals(1780306200.25, EpochSeconds.of(TIME));
    assertEquals(TIME, EpochSeconds.toInstant(EpochSeconds.of(TIME)));
    assertEquals(Instant.EPOCH.minusMillis(1500), EpochSeconds.toInstant(-1.5));
    assertThrows(IllegalArgumentException.class, () -> EpochSeconds.toInstant(Double.NaN));
  }

  @Test
  void aFieldOfOnesOwnTellsNothingThatItDoesNotKnow() {
    StreamField nowhere = (latitude, longitude, seconds, out, offset) -> false;
    assertEquals(Double.NEGATIVE_INFINITY, nowhere.startSeconds());
    assertEquals(Double.POSITIVE_INFINITY, nowhere.endSeconds());
    assertEquals(Double.POSITIVE_INFINITY, nowhere.nextBreakAfter(0));
    assertEquals(Optional.empty(), nowhere.span());
    assertEquals(Optional.empty(), nowhere.position());
    assertEquals("a source without a name", nowhere.source());
  }

  @Test
  void aFieldThatKnowsBothEndsTellsItsSpan() {
    WaterLevel level = new Rising();
    assertEquals(
        Optional.of(TimeSpan.of(Instant.EPOCH, Instant.EPOCH.plusSeconds(3600))), level.span());
    assertEquals(Explanation.NONE, level.explain(PLACE, TIME));
    assertEquals(Double.POSITIVE_INFINITY, level.greatestSlopeMetresPerSecond(0, 1));
  }

  /** A stream that has data for a stretch of time. */
  private record Spell(String source, double startSeconds, double endSeconds, double east)
      implements StreamField {
    @Override
    public boolean sample(
        double latitude, double longitude, double seconds, double[] out, int offset) {
      if (!(seconds >= startSeconds && seconds <= endSeconds)) {
        return false;
      }
      out[offset] = east * seconds;
      out[offset + 1] = latitude;
      return true;
    }
  }

  @Test
  void aSumOfStreamsTellsWhereAllHaveDataAndWhoSaysSo() {
    StreamField sum =
        StreamField.sum(
            List.of(
                new Spell("Tarn Gut", 0, 3600, 1e-3),
                new Spell("drift", -600, 1800, 2e-3),
                new Spell("drift", -900, 7200, 4e-3)));
    assertEquals(0.0, sum.startSeconds());
    assertEquals(1800.0, sum.endSeconds());
    assertEquals("Tarn Gut + drift", sum.source());
    double[] one = new double[2];
    double[] all = new double[10];
    sum.sampleEvenly(50, 0, -600, 600, 4, all, 1);
    assertTrue(Double.isNaN(all[1]) && Double.isNaN(all[2]));
    for (int i = 1; i < 4; i++) {
      assertTrue(sum.sample(50, 0, -600 + 600 * i, one, 0));
      assertEquals(one[0], all[1 + 2 * i]);
      assertEquals(one[1], all[2 + 2 * i]);
    }
    assertEquals(0.0, all[0]);
    assertEquals(0.0, all[9]);
  }

  @Test
  void manyAtOnceAreTheSameAsOneByOne() {
    double[] heights = new double[5];
    new Rising().heightsEvenly(-1800, 1800, 4, heights, 1);
    assertEquals(0.0, heights[0]);
    assertTrue(Double.isNaN(heights[1]));
    assertEquals(0.0, heights[2]);
    assertEquals(1800.0, heights[3]);
    assertEquals(3600.0, heights[4]);
    assertThrows(
        IndexOutOfBoundsException.class, () -> new Rising().heightsEvenly(0, 1, 4, heights, 2));

    StreamField eastInTheFirstHour =
        (latitude, longitude, seconds, out, offset) -> {
          if (!(seconds >= 0 && seconds <= 3600)) {
            return false;
          }
          out[offset] = seconds;
          out[offset + 1] = latitude;
          return true;
        };
    double[] eastNorth = new double[7];
    eastInTheFirstHour.sampleEvenly(50, -5, 1800, 1800, 3, eastNorth, 1);
    assertEquals(1800.0, eastNorth[1]);
    assertEquals(50.0, eastNorth[2]);
    assertEquals(3600.0, eastNorth[3]);
    assertTrue(Double.isNaN(eastNorth[5]) && Double.isNaN(eastNorth[6]));
    assertThrows(
        IndexOutOfBoundsException.class,
        () -> eastInTheFirstHour.sampleEvenly(50, -5, 0, 1, 3, eastNorth, 2));
  }

  @Test
  void aDepthOfOnesOwnIsAboveChartDatum() {
    DepthField slope = (latitude, longitude) -> 5.0 + 2000.0 * (56.3 - latitude);
    assertEquals("chart datum", slope.datum());
    assertEquals("a depth without a name", slope.source());
    assertEquals(5.0, slope.metresAt(56.3, -5.0));
  }

  /** Travel to other machines is what a batch engine asks of every part of a solver. */
  @Test
  void aFieldOfOnesOwnTravelsToOtherMachines() throws IOException, ClassNotFoundException {
    StreamField one =
        (latitude, longitude, seconds, out, offset) -> {
          out[offset] = 0.5;
          out[offset + 1] = 0.0;
          return true;
        };
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream stream = new ObjectOutputStream(bytes)) {
      stream.writeObject(one);
    }
    try (ObjectInputStream stream =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      StreamField read = (StreamField) stream.readObject();
      assertEquals(one.at(PLACE, TIME), read.at(PLACE, TIME));
    }
  }

  /** A metre a second for an hour. */
  private static final class Rising implements WaterLevel {
    private static final long serialVersionUID = 1L;

    @Override
    public double heightMetres(double epochSeconds) {
      return epochSeconds >= 0.0 && epochSeconds <= 3600.0 ? epochSeconds : Double.NaN;
    }

    @Override
    public String datum() {
      return "chart datum";
    }

    @Override
    public double startSeconds() {
      return 0.0;
    }

    @Override
    public double endSeconds() {
      return 3600.0;
    }
  }

  @Test
  void partsThatCannotBeAreRefused() {
    assertEquals(
        "weight of a source must be in [0, 1] of the answer, but was 1.1",
        message(() -> new Explanation.Source("Tarn Gut", 1.1)));
  }
}
