package org.ferryglide.nav.passage;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WaterLevel;

/** The kinds of stop, and when each of them ends. */
sealed interface Stops extends Stop {

  /** A stop as this package knows it: {@link Stop} admits no others. */
  static Stops of(Stop stop) {
    return (Stops) stop;
  }

  /**
   * When the party is under way again, seconds, the launching over; NaN if a level or stream is not
   * known, positive infinity if the stop has no end by the latest time.
   */
  double end(Landed landed);

  /** Whether it lasts until something happens. */
  default boolean waits() {
    return true;
  }

  /**
   * A party that has landed.
   *
   * @param passage its passage
   * @param place where it is
   * @param stream the stream there
   * @param time when it landed, seconds
   */
  record Landed(Passage passage, Position place, StreamField stream, double time) {

    /** When a party that launches at once is under way again, seconds. */
    private double earliest() {
      return after(0.0);
    }

    /** When a party that launches after some seconds ashore is under way again. */
    private double after(double secondsAshore) {
      return time + secondsAshore + Seconds.of(passage.party().launching());
    }

    /** The latest time to which a wait is followed, seconds. */
    private double latest() {
      return after(Seconds.of(passage.longestDuration()));
    }

    private double within(double end) {
      return end <= latest() ? end : Double.POSITIVE_INFINITY;
    }
  }

  record Ashore(Duration stay) implements Stops {
    private static final long serialVersionUID = 1L;

    @Override
    public Note about() {
      return Note.information("stop.ashore", stay.toMinutes() + " min ashore")
          .with("ashoreMinutes", (double) stay.toMinutes());
    }

    @Override
    public Optional<Duration> length() {
      return Optional.of(stay);
    }

    @Override
    public double end(Landed landed) {
      return landed.within(landed.after(Seconds.of(stay)));
    }

    @Override
    public boolean waits() {
      return false;
    }
  }

  record UntilTime(Instant afloat) implements Stops {
    private static final long serialVersionUID = 1L;

    @Override
    public Note about() {
      return Note.information("stop.until", "ashore, under way again at " + afloat)
          .with("untilTime", afloat.toString());
    }

    @Override
    public Optional<Instant> time() {
      return Optional.of(afloat);
    }

    @Override
    public double end(Landed landed) {
      return landed.within(Math.max(landed.earliest(), EpochSeconds.of(afloat)));
    }
  }

  record UntilLevel(String portName, double metres, boolean atLeast) implements Stops {
    private static final long serialVersionUID = 1L;

    @Override
    public Note about() {
      String words =
          "ashore, under way again with "
              + (atLeast ? "at least " : "at most ")
              + metres
              + " m at ";
      return Note.information("stop.level-at-" + (atLeast ? "least" : "most"), words + portName)
          .with("levelMetres", metres)
          .with("port", portName);
    }

    @Override
    public double end(Landed landed) {
      WaterLevel level = landed.passage.level(portName);
      double sign = atLeast ? 1.0 : -1.0;
      return Waits.firstAtLeastZero(
          at -> {
            double above = level.heightMetres(at) - metres;
            return Double.isFinite(above) ? sign * above : Double.NaN;
          },
          landed.earliest(),
          landed.latest());
    }

    @Override
    public Optional<String> port() {
      return Optional.of(portName);
    }

    @Override
    public Optional<Distance> leastLevel() {
      return atLeast ? Optional.of(Distance.ofMetres(metres)) : Optional.empty();
    }

    @Override
    public Optional<Distance> greatestLevel() {
      return atLeast ? Optional.empty() : Optional.of(Distance.ofMetres(metres));
    }
  }

  record UntilStream(Speed rate) implements Stops {
    private static final long serialVersionUID = 1L;

    @Override
    public Note about() {
      String words = "ashore, under way again when the stream is at most " + rate.inKnots(1);
      return Note.information("stop.stream", words).with("rateKnots", rate.knots());
    }

    @Override
    public Optional<Speed> slackRate() {
      return Optional.of(rate);
    }

    @Override
    public double end(Landed landed) {
      double most = rate.metresPerSecond();
      double latitude = landed.place.latitudeDegrees();
      double longitude = landed.place.longitudeDegrees();
      double[] eastNorth = new double[2];
      return Waits.firstAtLeastZero(
          at ->
              landed.stream.sample(latitude, longitude, at, eastNorth, 0)
                  ? most - Math.hypot(eastNorth[0], eastNorth[1])
                  : Double.NaN,
          landed.earliest(),
          landed.latest());
    }
  }
}
