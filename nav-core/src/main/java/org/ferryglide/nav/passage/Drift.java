package org.ferryglide.nav.passage;

import java.io.Serializable;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.EpochSeconds;

/**
 * Where the party would lie after 10, 20 and 30 minutes without paddling: a rescue takes about ten
 * minutes, a bad one thirty (common practice, no source).
 *
 * <pre>{@code
 * for (Drift drift : plan.drifts()) {
 *   System.out.println(drift.time() + " " + drift.from() + " would lie at " + drift.places());
 * }
 * }</pre>
 *
 * <p>It drifts with the stream, and before the wind as far as the craft's answer to the wind says.
 */
public final class Drift implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final double STEP_SECONDS = 60.0;
  private static final int TOLD_MINUTES = 10;

  private final Instant time;
  private final Position from;
  private final List<Position> places;

  private Drift(Instant time, Position from, List<Position> places) {
    this.time = time;
    this.from = from;
    this.places = places;
  }

  static List<Drift> of(Candidate candidate) {
    List<Drift> drifts = new ArrayList<>();
    for (int look = 0; look < candidate.size; look++) {
      if (DriftCheck.isAsked(candidate, look)) {
        drifts.add(of(candidate, look));
      }
    }
    return Collections.unmodifiableList(drifts);
  }

  static Drift of(Candidate candidate, int look) {
    double[] place = {candidate.latitude[look], candidate.longitude[look]};
    Position from = position(place);
    List<Position> places = new ArrayList<>();
    for (int minute = 1; minute <= DriftCheck.WARNING_MINUTES; minute++) {
      double time = candidate.time[look] + (minute - 1) * STEP_SECONDS;
      if (!DriftCheck.drift(
          candidate.passage, candidate.streamOf(candidate.leg[look]), time, STEP_SECONDS, place)) {
        break;
      }
      if (minute % TOLD_MINUTES == 0) {
        places.add(position(place));
      }
    }
    return new Drift(
        EpochSeconds.toInstant(candidate.time[look]), from, Collections.unmodifiableList(places));
  }

  private static Position position(double[] place) {
    return Position.ofDegrees(place[0], Candidate.longitude(place[1]));
  }

  /**
   * When the party stops paddling.
   *
   * @return the time
   */
  public Instant time() {
    return time;
  }

  /**
   * Where the party is then.
   *
   * @return the place
   */
  public Position from() {
    return from;
  }

  /**
   * Where it would lie later.
   *
   * @return the places after 10, 20 and 30 minutes; fewer where stream or wind are not known;
   *     unmodifiable
   */
  public List<Position> places() {
    return places;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Drift that
        && time.equals(that.time)
        && from.equals(that.from)
        && places.equals(that.places);
  }

  @Override
  public int hashCode() {
    return 31 * time.hashCode() + places.hashCode();
  }

  @Override
  public String toString() {
    return "drifting from " + time + ", " + from + " by " + places;
  }
}
