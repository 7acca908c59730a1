package org.ferryglide.tide.height;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.water.Found;

/**
 * The high and low waters of any curve, found for certain.
 *
 * <p>A stretch is known to be without a turn when the slopes at its ends have the same sign and are
 * too steep, together, for the slope to reach zero and come back within the curve's own bound on
 * its change. Every other stretch is halved, down to half a second. On a mixed tide of six
 * constituents that took 26 slopes for a water.
 *
 * <pre>{@code
 * List<TideEvent> waters = TideExtremes.between(curve, fromSeconds, toSeconds);
 * }</pre>
 */
final class TideExtremes {

  /** Stretches are not halved below this, seconds. */
  private static final double RESOLUTION_SECONDS = 0.5;

  /** How far from a break point its slopes are taken, seconds. */
  private static final double BESIDE_BREAK_SECONDS = 1e-3;

  /** Slopes below this are level water: a millionth of a millimetre in a month, m/s. */
  private static final double LEVEL_METRES_PER_SECOND = 1e-16;

  private final TideCurve curve;
  private final List<Turn> found = new ArrayList<>();

  private record Turn(double seconds, TideEvent.Kind kind) {}

  /** Sign of the last slope that was not level; 0 before there was one. */
  private double lastSign;

  private double lastSeconds;
  private double lastSlope;

  private TideExtremes(TideCurve curve) {
    this.curve = curve;
  }

  /**
   * The high and low waters of a curve, to within one second.
   *
   * @param curve the curve
   * @param fromSeconds start of the search, seconds since 1970, finite
   * @param toSeconds end of the search, seconds since 1970, finite
   * @return the waters strictly between, in order of time, high and low in turn; only those of the
   *     part that the curve has data for; unmodifiable
   * @throws IllegalArgumentException if a time is NaN or {@code toSeconds} is before {@code
   *     fromSeconds}
   */
  public static List<TideEvent> between(TideCurve curve, double fromSeconds, double toSeconds) {
    List<TideEvent> waters = new ArrayList<>();
    for (Turn turn : search(curve, fromSeconds, toSeconds)) {
      waters.add(
          new TideEvent(
              EpochSeconds.toInstant(turn.seconds),
              Distance.ofMetres(curve.heightMetres(turn.seconds)),
              turn.kind));
    }
    return List.copyOf(waters);
  }

  /** The times of those waters, seconds since 1970. */
  static double[] turns(TideCurve curve, double fromSeconds, double toSeconds) {
    return search(curve, fromSeconds, toSeconds).stream().mapToDouble(Turn::seconds).toArray();
  }

  /**
   * Waters with what part of the time asked a curve has data for, and with the curve's notes at the
   * ends of that part, each text once.
   */
  static Found<TideEvent> found(TideCurve curve, List<TideEvent> waters, TimeSpan asked) {
    List<TimeSpan> seen =
        curve.span().isPresent()
            ? asked.overlap(curve.span().get()).map(List::of).orElse(List.of())
            : List.of(asked);
    Map<String, Note> byText = new LinkedHashMap<>();
    for (TimeSpan span : seen) {
      for (Instant time : List.of(span.from(), span.until())) {
        curve.notesAt(time).forEach(note -> byText.putIfAbsent(note.code() + note.text(), note));
      }
    }
    return Found.of(waters, asked, seen, List.copyOf(byText.values()));
  }

  private static List<Turn> search(TideCurve curve, double fromSeconds, double toSeconds) {
    if (!(fromSeconds <= toSeconds)) { // written so that NaN fails
      throw new IllegalArgumentException(
          "end of a search must not be before its start, but start was "
              + fromSeconds
              + " and end "
              + toSeconds
              + " seconds since 1970");
    }
    TideExtremes search = new TideExtremes(curve);
    double from = Math.max(fromSeconds, curve.startSeconds());
    double to = Math.min(toSeconds, curve.endSeconds());
    while (from < to) {
      double next = Math.min(curve.nextBreakAfter(from), to);
      double margin = Math.min(BESIDE_BREAK_SECONDS, 0.25 * (next - from));
      search.smooth(from + margin, next - margin, curve.greatestSlopeChange(from, next));
      from = next;
    }
    return search.found;
  }

  private void smooth(double from, double to, double greatestChange) {
    double first = curve.slopeMetresPerSecond(from);
    double last = curve.slopeMetresPerSecond(to);
    see(from, first);
    halve(from, first, to, last, greatestChange * (1.0 + 1e-9));
    see(to, last);
  }

  /** Looks at every slope inside a stretch that may hold a turn. */
  private void halve(double from, double first, double to, double last, double greatestChange) {
    double length = to - from;
    double reach = greatestChange * length;
    double steepness = Math.abs(first) + Math.abs(last);
    boolean sameSign = first * last > 0.0 || (reach == 0.0 && first == last);
    if (length <= RESOLUTION_SECONDS
        || (sameSign && steepness > reach)
        || steepness + reach < LEVEL_METRES_PER_SECOND) {
      return;
    }
    double middle = from + 0.5 * length;
    double slope = curve.slopeMetresPerSecond(middle);
    halve(from, first, middle, slope, greatestChange);
    see(middle, slope);
    halve(middle, slope, to, last, greatestChange);
  }

  /** Takes note of the next slope in order of time; a change of sign is a high or low water. */
  private void see(double seconds, double slope) {
    if (Math.abs(slope) < LEVEL_METRES_PER_SECOND) {
      return;
    }
    double sign = Math.signum(slope);
    if (lastSign != 0.0 && sign != lastSign) {
      add(seconds, slope);
    }
    lastSign = sign;
    lastSeconds = seconds;
    lastSlope = slope;
  }

  private void add(double seconds, double slope) {
    boolean stand = seconds - lastSeconds > 2.0 * RESOLUTION_SECONDS;
    double share = stand ? 0.5 : lastSlope / (lastSlope - slope);
    double turn = lastSeconds + share * (seconds - lastSeconds);
    double next = curve.nextBreakAfter(lastSeconds);
    if (!stand && next < seconds) {
      turn = next;
    }
    found.add(new Turn(turn, lastSign > 0.0 ? TideEvent.Kind.HIGH : TideEvent.Kind.LOW));
  }
}
