package org.ferryglide.nav.passage;

import java.time.Duration;
import java.time.Instant;
import org.ferryglide.nav.measure.Speed;

/** The kinds of stop. */
final class Stops {
  private Stops() {}

  record Ashore(Duration length) implements Stop {
    private static final long serialVersionUID = 1L;

    @Override
    public String words() {
      return length.toMinutes() + " min ashore";
    }
  }

  record UntilTime(Instant time) implements Stop {
    private static final long serialVersionUID = 1L;

    @Override
    public String words() {
      return "ashore until " + time;
    }
  }

  record UntilLevel(String port, double metres, boolean atLeast) implements Stop {
    private static final long serialVersionUID = 1L;

    @Override
    public String words() {
      return "ashore until " + (atLeast ? "at least " : "at most ") + metres + " m at " + port;
    }
  }

  record UntilStream(Speed rate) implements Stop {
    private static final long serialVersionUID = 1L;

    @Override
    public String words() {
      return "ashore until the stream is at most " + rate.inKnots(1);
    }
  }
}
