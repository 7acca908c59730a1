package org.ferryglide.nav.passage;

import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.timing.Verdict;
import org.jspecify.annotations.Nullable;

/**
 * The path really swept over the ground, as wide as its 95 % error, against one danger at the times
 * it is closed.
 */
final class DangerCheck extends WorstAlong {
  /** Common practice, no source: nearer than this to what is to be kept off asks for a look. */
  static final double WARNING_METRES = 100.0;

  /** Looks between those that give a first figure. */
  private static final int FEW_LOOKS = 8;

  /** Of the way between two looks of a draw. */
  private static final int PARTS = 6;

  private final Danger danger;
  private final Outline outline;
  private final double middleLatitude;
  private final double middleLongitude;

  DangerCheck(Passage passage, Danger danger) {
    super(
        Findings.named("check.danger", danger.name()),
        passage,
        "metres clear of the distance to keep",
        WARNING_METRES,
        0.0,
        Note.information("why.not-known-closed", "it is not known whether it is closed then"));
    this.danger = danger;
    this.outline = Outline.of(danger.outline(), danger.name());
    this.middleLatitude = outline.middleLatitude();
    this.middleLongitude = outline.middleLongitude();
  }

  @Override
  double figure(Candidate candidate, int look) {
    double clear = swept(candidate, look) - candidate.errors().halfWidth95(look);
    if (clear >= WARNING_METRES) {
      return clear;
    }
    double closed = closedAt(candidate, look, 0.0, 1.0);
    if (closed > 0.0 && candidate.isDraw() && isClosedNowAndThen(candidate, look)) {
      return whereClosed(candidate, look);
    }
    return closed > 0.0 ? clear : closed == 0.0 ? leftOut() : Double.NaN;
  }

  /**
   * The same in parts of the way, of which those closed count: a draw is not to be on the safe side
   * by all the minutes between its looks.
   */
  private double whereClosed(Candidate candidate, int look) {
    double least = leftOut();
    for (int i = 0; i < PARTS; i++) {
      double from = (double) i / PARTS;
      double until = (i + 1.0) / PARTS;
      if (closedAt(candidate, look, from, until) == 1.0) {
        least = Math.min(least, swept(candidate, look, from, until));
      }
    }
    return least - candidate.errors().halfWidth95(look);
  }

  /** Where something else stops already, only whether this is worse still is looked for. */
  @Override
  @Nullable Verdict worseThan(Candidate candidate, double margin) {
    double enough = margin * WARNING_METRES;
    return margin < 0.0 && !isAnyBelow(candidate, enough) ? null : check(candidate);
  }

  private boolean isAnyBelow(Candidate candidate, double enough) {
    int look = 0;
    while (look < candidate.size && !(figure(candidate, look) < enough)) {
      look = nextBelow(candidate, look, enough);
    }
    return look < candidate.size;
  }

  /** Looks are left out from which the danger is too far away to be nearer than it was. */
  @Override
  int next(Candidate candidate, int look, double worst) {
    return nextBelow(candidate, look, Math.max(worst, WARNING_METRES));
  }

  /** The next look that may be clear by no more metres than some. */
  private int nextBelow(Candidate candidate, int look, double enough) {
    ErrorsAlong errors = candidate.errors();
    int from = look;
    double width = errors.halfWidth95(look); // from here on at most this and what it has grown by
    double clear = clearance(candidate.latitude[look], candidate.longitude[look]) - width;
    while (true) {
      int next = nextNear(candidate, from, clear - enough);
      if (next == candidate.size) {
        return next;
      }
      width += errors.growth(next) - errors.growth(from);
      if (!(swept(candidate, next) - width > enough)) { // true for NaN too
        return next;
      }
      from = next;
      clear = clearance(candidate.latitude[next], candidate.longitude[next]) - width;
    }
  }

  /** The next look before which no more metres were gone or grown than there are to spare. */
  private int nextNear(Candidate candidate, int look, double spare) {
    int next = look + 1;
    if (spare > 0.0) { // false for NaN too
      ErrorsAlong errors = candidate.errors();
      double north = candidate.goneLatitude[look];
      double east = candidate.goneLongitude[look];
      double grown = spare + errors.growth(look);
      while (next < candidate.size) {
        double rest = grown - errors.growth(next);
        if (!(rest > 0.0)
            || outline.square(
                    candidate.goneLatitude[next] - north, candidate.goneLongitude[next] - east)
                >= rest * rest) {
          break;
        }
        next++;
      }
    }
    return next;
  }

  /** Where it is always closed, the nearest of some looks. */
  @Override
  double reached(Candidate candidate) {
    if (!danger.closings().isEmpty()) {
      return Double.POSITIVE_INFINITY;
    }
    int nearest = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int look = FEW_LOOKS; look < candidate.size; look += FEW_LOOKS) {
      double clear = clearance(candidate.latitude[look], candidate.longitude[look]);
      if (clear < least) {
        least = clear;
        nearest = look;
      }
    }
    double clear = least - candidate.errors().halfWidth95(nearest);
    return Double.isNaN(clear) ? Double.POSITIVE_INFINITY : clear;
  }

  private boolean isClosedNowAndThen(Candidate candidate, int look) {
    return !danger.closings().isEmpty() && isBetweenLooks(candidate, look);
  }

  private static boolean isBetweenLooks(Candidate candidate, int look) {
    return look > 0 && candidate.leg[look] == candidate.leg[look - 1];
  }

  /**
   * Closed for a part of the way from the look before if it is at either end of it, or by stated
   * times between.
   */
  private double closedAt(Candidate candidate, int look, double from, double until) {
    double now = candidate.time[look];
    if (!isBetweenLooks(candidate, look)) {
      return closed(candidate.passage, now, now);
    }
    double before = candidate.time[look - 1];
    double span = now - before;
    return closed(candidate.passage, before + from * span, before + until * span);
  }

  /** Metres outside the distance to keep, on the way from the look before. */
  private double swept(Candidate candidate, int look) {
    return isBetweenLooks(candidate, look)
        ? swept(candidate, look, 0.0, 1.0)
        : clearance(candidate.latitude[look], candidate.longitude[look]);
  }

  /** The same for a part of that way. */
  private double swept(Candidate candidate, int look, double from, double until) {
    double latitude = candidate.latitude[look - 1];
    double longitude = candidate.longitude[look - 1];
    double north = candidate.latitude[look] - latitude;
    double east = PlaneMetres.turned(candidate.longitude[look] - longitude);
    return clearance(
        latitude + from * north,
        longitude + from * east,
        latitude + until * north,
        longitude + until * east);
  }

  /** Metres outside the distance to keep, on the way between two places. */
  double clearance(double latitudeA, double longitudeA, double latitudeB, double longitudeB) {
    return outline.distance(latitudeA, longitudeA, latitudeB, longitudeB)
        - danger.keepOff().metres();
  }

  /** What lies between two looks is counted with the later: nothing is left to guess. */
  @Override
  boolean isSmooth() {
    return false;
  }

  /** Metres outside the distance to keep. */
  double clearance(double latitude, double longitude) {
    return outline.distance(latitude, longitude) - danger.keepOff().metres();
  }

  /**
   * The next look, up to the last of a leg and one more, at which less than so many metres have
   * been gone; the next of all where that is none, or NaN.
   */
  int nextWithin(Candidate candidate, int look, int last, double metres) {
    int next = look + 1;
    if (metres > 0.0) {
      double north = candidate.goneLatitude[look];
      double east = candidate.goneLongitude[look];
      while (next <= last
          && isFarther(
              metres, candidate.goneLatitude[next] - north, candidate.goneLongitude[next] - east)) {
        next++;
      }
    }
    return next;
  }

  /** Whether it stays out of reach after so many degrees gone from a place clear of it. */
  boolean isFarther(double clear, double goneLatitude, double goneLongitude) {
    return clear > 0.0 && outline.square(goneLatitude, goneLongitude) < clear * clear;
  }

  Danger danger() {
    return danger;
  }

  /**
   * 1 if it is closed at some time in a span, 0 if it is open, NaN if one of its closings cannot be
   * looked up.
   *
   * @param drawn whose water and wind count: the passage's own, or one draw of them
   */
  double closed(Passage drawn, double from, double until) {
    if (danger.closings().isEmpty()) {
      return 1.0;
    }
    Closing.Waters waters =
        new Closing.Waters(
            drawn, middleLatitude, middleLongitude, 1.0 + passage().limits().rateError());
    double answer = 0.0;
    for (Closing closing : danger.closings()) {
      double one = closing.closes(waters, from, until);
      if (one == 1.0) {
        return 1.0;
      }
      answer += one; // NaN stays
    }
    return answer;
  }
}
