package org.ferryglide.nav.water;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;

class AdjustedStreamTest {
  private static final Position PLACE = Position.ofDegrees(50, -5);
  private static final Instant NOON = Instant.parse("2026-06-01T12:00:00Z");

  /** Tells in its notes and its rate for which time it was asked. */
  private static final class Telling implements StreamField {
    private static final long serialVersionUID = 1L;

    @Override
    public boolean sample(
        double latitudeDegrees,
        double longitudeDegrees,
        double epochSeconds,
        double[] eastNorth,
        int offset) {
      eastNorth[offset] = epochSeconds - EpochSeconds.of(NOON);
      eastNorth[offset + 1] = 0.0;
      return epochSeconds <= endSeconds();
    }

    @Override
    public double endSeconds() {
      return EpochSeconds.of(NOON.plusSeconds(3600));
    }

    @Override
    public String source() {
      return "Skarra Sound";
    }

    @Override
    public Optional<Position> position() {
      return Optional.of(PLACE);
    }

    @Override
    public Explanation explain(Position position, Instant instant) {
      return new Explanation(List.of(), List.of(Note.information("asked", instant.toString())));
    }
  }

  private static final AdjustedStream LATE =
      AdjustedStream.of(new Telling(), -2, Duration.ofMinutes(20));

  @Test
  void theExplanationIsOfTheTimeThatIsAsked() {
    Explanation explanation = LATE.explain(PLACE, NOON);
    assertEquals("2026-06-01T11:40:00Z", explanation.notes().get(0).text());
    assertEquals("stream.adjusted", explanation.notes().get(1).code());
    assertEquals(2400.0, LATE.at(PLACE, NOON).get().eastMetresPerSecond());
  }

  @Test
  void whatTheStreamTellsOfItselfMovesAlong() {
    assertEquals(EpochSeconds.of(NOON.plusSeconds(4800)), LATE.endSeconds());
    assertEquals(Double.NEGATIVE_INFINITY, LATE.startSeconds());
    assertEquals("Skarra Sound", LATE.source());
    assertEquals(Optional.of(PLACE), LATE.position());
  }

  @Test
  void manyAtOnceAreTheSameAsOneByOne() {
    double[] many = new double[5];
    LATE.sampleEvenly(50, -5, EpochSeconds.of(NOON), 60, 2, many, 1);
    assertArrayEquals(new double[] {0, 2400, -0.0, 2280, -0.0}, many);
  }
}
