package org.ferryglide.examples;

import java.io.PrintStream;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.ferryglide.nav.bearing.MagneticBearing;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.position.AngleForm;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.CurrentTriangle;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.OffLine;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.tide.height.TableCurve;
import org.ferryglide.tide.height.TideEvent;
import org.ferryglide.tide.height.TideTable;
import org.ferryglide.tide.stream.HourlyStream;
import org.ferryglide.tide.stream.StreamHour;

/** Prints a laid-off passage as plain text; times late, speeds slow, never to the second. */
final class PassagePrinter {
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("yyyy-MM-dd", Locale.ROOT);
  private static final Duration HALF_HOUR = Duration.ofMinutes(30);
  private static final Duration TOO_LATE_TO_CHANGE = Duration.ofMinutes(5);

  private final PrintStream out;
  private final ZoneOffset offset;

  PassagePrinter(PrintStream out, ZoneOffset offset) {
    this.out = out;
    this.offset = offset;
  }

  void print(Scenario scenario, List<LaidOffLeg> legs) {
    out.println(scenario.name());
    out.println(
        DAY.format(scenario.start())
            + ", leaving at "
            + CLOCK.format(scenario.start())
            + ", paddling at "
            + scenario.speed().inKnots(1)
            + "; clock times are UTC"
            + offset);
    out.println("printed rose " + scenario.rose().printed());
    out.println("each leg starts when the one before it arrives with one heading held");
    Set<String> notes = new LinkedHashSet<>();
    for (int i = 0; i < legs.size(); i++) {
      printLeg(i + 1, legs.size(), legs.get(i), Craft.ofSpeed(scenario.speed()));
      String leg = "leg " + (i + 1) + ": ";
      // what steering says is of one leg; the rose and the tables speak for all
      legs.get(i)
          .notes()
          .forEach(note -> notes.add((note.code().startsWith("steer.") ? leg : "") + line(note)));
    }
    printLanding(scenario, legs.get(legs.size() - 1), notes);
    out.println();
    out.println("Notes");
    notes.forEach(note -> out.println("  " + note));
    printCautions();
  }

  private void printLeg(int number, int count, LaidOffLeg leg, Craft craft) {
    TrueBearing course = leg.leg().initialCourse();
    out.println();
    out.println(
        "Leg " + number + " of " + count + ": " + leg.from().name() + " to " + leg.to().name());
    row("from", leg.from().position().text(AngleForm.DEGREES_MINUTES, 1));
    row("to", leg.to().position().text(AngleForm.DEGREES_MINUTES, 1));
    row(
        "course",
        course.threeDigits()
            + " true, "
            + course.nearestPoint(16).pointName()
            + "; "
            + leg.leg().length().inNauticalMiles(1)
            + " ("
            + leg.leg().length().inKilometres(1)
            + ")");
    row(
        "magnetic",
        magnetic(course, leg.roseVariation())
            + " by the printed rose ("
            + leg.roseVariation().degreesAndMinutes()
            + "), "
            + magnetic(course, leg.modelVariation())
            + " by "
            + leg.modelName()
            + " ("
            + leg.modelVariation().degreesAndMinutes()
            + ")");
    row(
        "back bearing",
        "look back along "
            + course.reciprocal().threeDigits()
            + " true, "
            + magnetic(course.reciprocal(), leg.roseVariation())
            + " magnetic, "
            + course.reciprocal().nearestPoint(16).pointName());
    if (leg.departure().isEmpty()) {
      row("to steer", "not worked out: the leg before it is not possible");
      return;
    }
    Instant departure = leg.departure().get();
    printStream(leg, departure);
    leg.oneHeading().ifPresent(outcome -> printOutcome("one heading", leg, outcome, craft));
    leg.trackHeld().ifPresent(outcome -> printOutcome("track held", leg, outcome, craft));
  }

  /**
   * The table's hours that the leg meets, from the one before its start to the one after its end.
   */
  private void printStream(LaidOffLeg leg, Instant departure) {
    HourlyStream stream = leg.stream();
    row(
        "stream",
        stream.table().station()
            + ", "
            + leg.streamDistance().inNauticalMiles(1)
            + " from the middle of the leg; hours about "
            + (aboutHigh(stream) ? "high" : "low")
            + " water at "
            + stream.tides().port());
    Instant until = leg.arrival().orElse(departure.plus(Duration.ofHours(1)));
    NavigableMap<Instant, String> hours = tableHours(stream, departure, until);
    Instant before = hours.floorKey(departure);
    Instant after = hours.ceilingKey(until);
    if (before == null || after == null) {
      row("", "no data for " + clock(before == null ? departure : until));
    }
    Instant from = before == null ? departure : before;
    Instant to = after == null ? until : after;
    if (!from.isAfter(to)) {
      hours
          .subMap(from, true, to, true)
          .forEach(
              (time, hour) ->
                  row(
                      "",
                      clock(time)
                          + "  "
                          + hour
                          + "  "
                          + stream.at(time).map(Velocity::setAndRate).orElse("no data")));
    }
  }

  private static boolean aboutHigh(HourlyStream stream) {
    return stream.table().standardPort().about() == TideEvent.Kind.HIGH;
  }

  /** The table's hours within three hours of a stretch of time, each counted from its own water. */
  private static NavigableMap<Instant, String> tableHours(
      HourlyStream stream, Instant from, Instant to) {
    List<TideEvent> waters =
        aboutHigh(stream) ? stream.tides().highWaters() : stream.tides().lowWaters();
    String mark = stream.table().standardPort().mark();
    NavigableMap<Instant, String> hours = new TreeMap<>();
    for (int i = 0; i < waters.size(); i++) {
      for (StreamHour row : stream.table().hours()) {
        Instant time = waters.get(i).time().plus(Duration.ofHours(row.hour()));
        boolean near =
            !time.isBefore(from.minus(Duration.ofHours(3)))
                && !time.isAfter(to.plus(Duration.ofHours(3)));
        if (near
            && !isNearer(waters, i - 1, time, waters.get(i))
            && !isNearer(waters, i + 1, time, waters.get(i))) {
          hours.put(time, mark + (row.hour() == 0 ? "  " : row.label(mark)));
        }
      }
    }
    return hours;
  }

  private static boolean isNearer(
      List<TideEvent> waters, int other, Instant time, TideEvent water) {
    return other >= 0
        && other < waters.size()
        && Duration.between(waters.get(other).time(), time)
                .abs()
                .compareTo(Duration.between(water.time(), time).abs())
            < 0;
  }

  private void printOutcome(
      String strategy, LaidOffLeg leg, Outcome<SteeredLeg, NotPossible> outcome, Craft craft) {
    Optional<SteeredLeg> solved = outcome.solved();
    if (solved.isPresent()) {
      printSolved(strategy, leg, solved.get(), craft);
    }
    outcome.why().ifPresent(reason -> printNotPossible(strategy, reason));
  }

  private void printSolved(String strategy, LaidOffLeg leg, SteeredLeg steered, Craft craft) {
    Variation variation = leg.roseVariation();
    if (steered.strategy().equals(Strategy.trackHeld())) {
      row(strategy, headingsHeld(leg, steered, craft));
    } else {
      row(strategy, "steer " + trueAndMagnetic(steered.courseToSteer(), variation));
    }
    row(
        "",
        Math.floor(steered.speedMadeGood().knots() * 10.0) / 10.0
            + " kn made good, "
            + minutesUp(steered.duration())
            + " min, ETA "
            + clock(up(steered.arrival())));
    OffLine off = steered.greatestOffLine();
    if (off.side() == OffLine.Side.NEITHER) {
      row("", "stays on the line");
    } else {
      row(
          "",
          "strays "
              + Math.ceil(off.distance().magnitude().nauticalMiles() * 100.0) / 100.0
              + " NM to the "
              + off.side()
              + " of the line, most at "
              + clock(off.time()));
    }
  }

  /**
   * The heading that holds the line, anew every half hour, each from the stream of its moment: it
   * changes all the time, and nobody steers finer.
   */
  private String headingsHeld(LaidOffLeg leg, SteeredLeg steered, Craft craft) {
    List<String> changes = new ArrayList<>();
    String last = "";
    Instant lastChange = steered.arrival().minus(TOO_LATE_TO_CHANGE);
    Instant departure = steered.departure();
    for (Instant time = departure;
        time.equals(departure) || time.isBefore(lastChange);
        time = time.plus(HALF_HOUR)) {
      Optional<CurrentTriangle> triangle =
          leg.stream()
              .at(time)
              .flatMap(
                  stream ->
                      CurrentTriangle.solve(leg.leg().initialCourse(), craft, stream).solved());
      if (triangle.isEmpty()) {
        continue;
      }
      String heading = trueAndMagnetic(triangle.get().courseToSteer(), leg.roseVariation());
      if (!heading.equals(last)) {
        changes.add(changes.isEmpty() ? heading : heading + " from " + clock(up(time)));
      }
      last = heading;
    }
    return "steer " + String.join(", then ", changes);
  }

  /** The finding with its time by the passage's own clock. */
  private void printNotPossible(String strategy, NotPossible reason) {
    NotPossible bare = NotPossible.because(reason.reason());
    row(
        strategy,
        "NOT POSSIBLE: "
            + reason.shortBy().map(bare::by).orElse(bare).message()
            + reason.when().map(time -> ", at " + clock(time)).orElse("")
            + reason
                .where()
                .map(place -> ", near " + place.text(AngleForm.DEGREES_MINUTES, 1))
                .orElse(""));
  }

  private void printLanding(Scenario scenario, LaidOffLeg last, Set<String> notes) {
    out.println();
    Optional<Instant> arrival = last.arrival();
    TideTable table = scenario.tides().get(scenario.landingPort());
    if (arrival.isEmpty() || table == null) {
      out.println("Landing: not worked out, the passage is not possible as planned");
      return;
    }
    Instant time = arrival.get();
    TableCurve cosine = TableCurve.cosine(table);
    TableCurve twelfths = TableCurve.twelfths(table);
    out.println("Landing at " + last.to().name() + " about " + clock(up(time)));
    if (cosine.heightMetresAt(time).isEmpty()) {
      row("height", "the tide table of " + table.port() + " does not reach that time");
      return;
    }
    row(
        "height",
        metres(cosine.heightMetresAt(time).getAsDouble())
            + " above "
            + table.datum()
            + " by the cosine, "
            + metres(twelfths.heightMetresAt(time).getAsDouble())
            + " by the rule of twelfths, tide of "
            + table.port());
    table.lastUpTo(time).ifPresent(before -> row("", "after " + water(before)));
    table.firstAfter(time).ifPresent(after -> row("", "before " + water(after)));
    TideEvent highWater = table.highWaterNearest(time);
    row("range", metres(table.rangeMetres(highWater)) + " about the nearest high water");
    cosine.notesAt(time).forEach(note -> notes.add(line(note)));
  }

  private String water(TideEvent event) {
    return (event.isHigh() ? "high" : "low")
        + " water "
        + clock(event.time())
        + ", "
        + metres(event.heightMetres());
  }

  private void printCautions() {
    out.println();
    out.println("Cautions");
    for (String caution : CAUTIONS) {
      out.println("  " + caution);
    }
  }

  private static final List<String> CAUTIONS =
      List.of(
          "Official charts, tide tables, stream tables and forecasts come first, and the advice of"
              + " the",
          "coastguard; local rules and trained judgement decide. This is a sum, not a permission to"
              + " go.",
          "Tables predict; weather moves heights, times and rates. A stream between two stations is"
              + " a",
          "guess. Check dangers along the path that is really swept, not only along the line.",
          "Look at the sea before launching, and leave your plan and an overdue time ashore.");

  private void row(String label, String text) {
    StringBuilder line = new StringBuilder("  ").append(label);
    while (line.length() < 16) {
      line.append(' ');
    }
    out.println(line.append(text));
  }

  private static String line(Note note) {
    return note.severity().toString().toLowerCase(Locale.ROOT) + ": " + note.text();
  }

  private static String magnetic(TrueBearing bearing, Variation variation) {
    MagneticBearing magnetic = bearing.toMagnetic(variation);
    return magnetic.threeDigits();
  }

  private static String trueAndMagnetic(TrueBearing heading, Variation variation) {
    return heading.threeDigits() + " true, " + magnetic(heading, variation) + " magnetic";
  }

  private static String metres(double metres) {
    return Math.rint(metres * 10.0) / 10.0 + 0.0 + " m";
  }

  private static long minutesUp(Duration time) {
    return (time.toMillis() + 59_999) / 60_000;
  }

  /** Rounded later: an ETA that is too early is the dangerous one. */
  private static Instant up(Instant time) {
    Instant minute = time.truncatedTo(ChronoUnit.MINUTES);
    return minute.equals(time) ? time : minute.plus(1, ChronoUnit.MINUTES);
  }

  private String clock(Instant time) {
    return CLOCK.format(time.atOffset(offset));
  }
}
