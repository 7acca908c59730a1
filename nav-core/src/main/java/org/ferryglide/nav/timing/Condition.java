package org.ferryglide.nav.timing;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.steer.TrackPoint;
import org.ferryglide.nav.water.ChartedDepth;
import org.ferryglide.nav.water.Found;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WaterLevel;
import org.ferryglide.nav.water.Window;

/**
 * Something a passage must satisfy: a figure with a limit that warns and a limit that stops.
 *
 * <p>A condition answers with a {@link Verdict}, so that the reader sees how close it is and what
 * was not checked. A condition of one's own is a figure with its two limits, or a class that
 * answers as it likes:
 *
 * <pre>{@code
 * Condition daylight =
 *     Condition.during("daylight", List.of(TimeSpan.of(sunrise, sunset)), Duration.ofHours(1));
 * Condition bar = Condition.depthAtLeast("the bar", 2, level, depth, Distance.ofMetres(1), Distance.ofMetres(0.5));
 * Condition shortEnough = Condition.of("length", "hours", 6, 8, p -> p.duration().toMinutes() / 60.0);
 * }</pre>
 */
public interface Condition {

  /**
   * What is asked for, in a few words.
   *
   * @return the name, for example {@code daylight}
   */
  String name();

  /**
   * What is asked for, under a code that a translation knows.
   *
   * @return words whose text is {@link #name}; {@code condition.own} unless the condition has a
   *     code
   */
  default Note about() {
    return own(name());
  }

  /**
   * A name of the caller's own, which no translation knows.
   *
   * @param name what is asked for, in a few words
   * @return {@code condition.own} with the name
   */
  static Note own(String name) {
    Objects.requireNonNull(name, "name");
    return Note.information("condition.own", name.isEmpty() ? "-" : name).with("name", name);
  }

  /**
   * Checks a passage against the condition.
   *
   * @param passage the passage
   * @return within, warned, stopped or not checked
   */
  Verdict check(SteeredRoute passage);

  /**
   * A condition of the caller's own.
   *
   * @param name what is asked for, in a few words
   * @param unit unit of figure and limits, in the plural
   * @param warn the limit that warns
   * @param stop the limit that stops: below {@code warn} for a figure that should be large, above
   *     it for one that should be small
   * @param figure the figure of a passage; NaN if it is not known, which counts as not checked
   * @return the condition
   * @throws IllegalArgumentException if the limits are not finite, or equal
   */
  static Condition of(
      String name, String unit, double warn, double stop, ToDoubleFunction<SteeredRoute> figure) {
    Objects.requireNonNull(figure, "figure");
    return NamedCondition.of(own(name), unit, warn, stop, figure);
  }

  /**
   * Arriving by a time.
   *
   * @param warnAfter an arrival after this warns
   * @param latest the latest arrival, after {@code warnAfter}
   * @return a condition whose figure is the minutes left before the latest arrival
   * @throws IllegalArgumentException if {@code latest} is not after {@code warnAfter}
   */
  static Condition arriveBy(Instant warnAfter, Instant latest) {
    Note about =
        Note.information("condition.arriving-by", "arriving by " + latest)
            .with("latestTime", latest.toString());
    double end = EpochSeconds.of(latest);
    double warn = (end - EpochSeconds.of(warnAfter)) / 60.0;
    Arguments.positive(warn, "time from the warning to the latest arrival", "minutes");
    return new NamedCondition(
        about,
        passage ->
            Verdict.of(
                    about, (end - passage.arrivalSeconds()) / 60.0, "minutes to spare", warn, 0.0)
                .at(passage.arrival())
                .at(passage.route().end()));
  }

  /**
   * The whole passage within one of several spans, as with daylight or a forecast.
   *
   * @param name what the spans are
   * @param spans the spans, all there are
   * @param warnBelow a passage with less than this to spare at either end warns, above zero
   * @return a condition whose figure is the minutes to spare: by how much the passage could be
   *     earlier and later
   * @throws IllegalArgumentException if {@code warnBelow} is not above zero
   */
  static Condition during(String name, List<TimeSpan> spans, Duration warnBelow) {
    return new DuringSpans(name, spans, List.of(), warnBelow);
  }

  /**
   * The whole passage within one window of a search, as a tide or a stream gives them.
   *
   * @param name what the windows are
   * @param windows the windows found; a passage outside them all that leaves the time they were
   *     searched in is not checked
   * @param warnBelow a passage with less than this to spare at either end warns, above zero
   * @return a condition whose figure is the minutes to spare
   * @throws IllegalArgumentException if {@code warnBelow} is not above zero
   */
  static Condition during(String name, Found<Window> windows, Duration warnBelow) {
    List<TimeSpan> spans = new ArrayList<>();
    windows.forEach(window -> spans.add(window.span()));
    List<TimeSpan> unseen = new ArrayList<>(windows.unseen());
    unseen.add(TimeSpan.of(Instant.MIN, windows.asked().from()));
    unseen.add(TimeSpan.of(windows.asked().until(), Instant.MAX));
    return new DuringSpans(name, spans, unseen, warnBelow);
  }

  /**
   * Enough water at a way point when it is passed.
   *
   * @param place what the way point is called
   * @param wayPoint number of the way point: 0 for the start, the number of legs for the end
   * @param level the height of the water there
   * @param charted the charted depth there, of the same datum
   * @param warnBelow a depth of water below this warns
   * @param leastDepth least depth of water wanted, at least 0 and below the depth that warns
   * @return a condition whose figure is the depth of water in metres; not checked outside the
   *     tide's data or where the passage has no such way point
   * @throws IllegalArgumentException if a depth is negative or out of order, the way point
   *     negative, or the datums differ
   */
  static Condition depthAtLeast(
      String place,
      int wayPoint,
      WaterLevel level,
      ChartedDepth charted,
      Distance warnBelow,
      Distance leastDepth) {
    charted.requireSameDatum(level);
    double least = Arguments.notNegative(leastDepth.metres(), "least depth", "metres");
    double warns = warnBelow.metres();
    Arguments.positive(warns - least, "step from the least depth to the warning", "metres");
    if (wayPoint < 0) {
      throw new IllegalArgumentException("way point must be at least 0, but was " + wayPoint);
    }
    Note about = Note.information("condition.depth", "depth at " + place).with("place", place);
    return new NamedCondition(
        about,
        passage -> {
          if (wayPoint > passage.legs().size()) {
            return Verdict.notChecked(
                about,
                Note.information("why.no-way-point", "the passage has no way point " + wayPoint)
                    .with("number", wayPoint));
          }
          Instant time = passage.timeAt(wayPoint);
          Position there =
              wayPoint == 0
                  ? passage.route().start()
                  : passage.legs().get(wayPoint - 1).leg().end();
          double height = level.heightMetres(EpochSeconds.of(time));
          Verdict verdict =
              !Double.isFinite(height)
                  ? Verdict.notChecked(
                      about, Note.information("why.no-height", "no height of tide is known then"))
                  : Verdict.of(
                      about,
                      charted.depth(Distance.ofMetres(height)).metres(),
                      "metres",
                      warns,
                      least);
          return verdict.at(time).at(there);
        });
  }

  /**
   * No stream faster than a limit anywhere along the path, looked at every two minutes.
   *
   * @param stream the stream
   * @param warnAbove a faster stream warns
   * @param most a faster stream stops, above {@code warnAbove}
   * @return a condition whose figure is the fastest stream met, in knots; not checked where the
   *     stream is not known
   * @throws IllegalArgumentException if {@code most} is not above {@code warnAbove}
   */
  static Condition streamAtMost(StreamField stream, Speed warnAbove, Speed most) {
    Note about =
        Note.information("condition.stream-at-most", "stream at most " + most.inKnots(1))
            .with("mostKnots", most.knots());
    Arguments.positive(
        most.knots() - warnAbove.knots(), "step from the warning to the fastest stream", "knots");
    return new NamedCondition(
        about,
        passage -> {
          double fastest = -1.0;
          TrackPoint worst = null;
          for (SteeredLeg leg : passage.legs()) {
            for (TrackPoint point : leg.groundTrack().pointsEvery(120.0)) {
              Velocity here = stream.at(point.position(), point.time()).orElse(null);
              if (here == null) {
                return Verdict.notChecked(
                        about,
                        Note.information("why.no-stream", "no stream is known there and then"))
                    .at(point.time())
                    .at(point.position());
              }
              double rate = here.rate().knots();
              if (rate > fastest) {
                fastest = rate;
                worst = point;
              }
            }
          }
          Verdict verdict = Verdict.of(about, fastest, "knots", warnAbove.knots(), most.knots());
          return worst == null ? verdict : verdict.at(worst.time()).at(worst.position());
        });
  }

  /**
   * At least so much reserve of speed on every leg.
   *
   * @param warnBelow less reserve warns
   * @param least less reserve stops, below {@code warnBelow}
   * @return a condition whose figure is the least reserve in knots
   * @throws IllegalArgumentException if {@code least} is not below {@code warnBelow}
   */
  static Condition reserveAtLeast(Speed warnBelow, Speed least) {
    Arguments.positive(
        warnBelow.knots() - least.knots(), "step from the least reserve to the warning", "knots");
    return NamedCondition.of(
        Note.information("condition.reserve", "reserve of " + least.inKnots(1))
            .with("leastKnots", least.knots()),
        "knots",
        warnBelow.knots(),
        least.knots(),
        passage -> passage.reserve().knots());
  }
}
