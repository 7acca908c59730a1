package org.ferryglide.nav.passage;

import java.time.Duration;
import java.time.Instant;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Note;

/** The kinds of stop. */
final class Stops {
  private Stops() {}

  record Ashore(Duration length) implements Stop {
    private static final long serialVersionUID = 1L;

    @Override
    public Note about() {
      return Note.information("stop.ashore", length.toMinutes() + " min ashore")
          .with("ashoreMinutes", (double) length.toMinutes());
    }
  }

  record UntilTime(Instant time) implements Stop {
    private static final long serialVersionUID = 1L;

    @Override
    public Note about() {
      return Note.information("stop.until", "ashore until " + time)
          .with("untilTime", time.toString());
    }
  }

  record UntilLevel(String port, double metres, boolean atLeast) implements Stop {
    private static final long serialVersionUID = 1L;

    @Override
    public Note about() {
      String words = "ashore until " + (atLeast ? "at least " : "at most ") + metres + " m at ";
      return Note.information("stop.level-at-" + (atLeast ? "least" : "most"), words + port)
          .with("levelMetres", metres)
          .with("port", port);
    }
  }

  record UntilStream(Speed rate) implements Stop {
    private static final long serialVersionUID = 1L;

    @Override
    public Note about() {
      String words = "ashore until the stream is at most " + rate.inKnots(1);
      return Note.information("stop.stream", words).with("rateKnots", rate.knots());
    }
  }
}
