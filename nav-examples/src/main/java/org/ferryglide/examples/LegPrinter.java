package org.ferryglide.examples;

import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.note.Severity;
import org.ferryglide.nav.position.AngleForm;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.CurrentTriangle;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.Reason;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.tide.folder.PassageFolder;
import org.ferryglide.tide.stream.HourlyStream;

/** Prints one leg; what is wrong with a figure stands beneath it. */
final class LegPrinter {
  /** Nearer to the line than this is on it. */
  private static final double LEAST_STRAYING_METRES = 1e-3;

  private static final Duration HALF_HOUR = Duration.ofMinutes(30);
  private static final Duration TOO_LATE_TO_CHANGE = Duration.ofMinutes(5);

  /** Places along a leg at which the nearest station is asked for. */
  private static final int LOOKS = 20;

  private final Page page;
  private final LaidOffPassage passage;
  private final PassageFolder folder;
  private final String shareWords;

  LegPrinter(Page page, LaidOffPassage passage, String shareWords) {
    this.page = page;
    this.passage = passage;
    this.folder = passage.folder();
    this.shareWords = shareWords;
  }

  void print(LaidOffLeg leg) {
    TrueBearing course = leg.leg().initialCourse();
    page.line();
    page.line(
        page.say(
            "text.leg",
            "number",
            Integer.toString(leg.number()),
            "count",
            Integer.toString(passage.legs().size()),
            "from",
            leg.from().name(),
            "to",
            leg.to().name()));
    page.row("text.from", leg.from().position().text(AngleForm.DEGREES_MINUTES, 1));
    page.row("text.to", leg.to().position().text(AngleForm.DEGREES_MINUTES, 1));
    Distance length = leg.leg().length();
    page.row(
        "leg.course",
        page.say(
            "text.course",
            "course",
            course.threeDigits(),
            "point",
            page.point(course),
            "miles",
            page.nauticalMiles(length),
            "kilometres",
            page.kilometres(length)));
    doubts(leg, "leg.");
    page.row("text.magnetic", magnetic(leg, course));
    doubts(leg, "rose.", "magnetic.");
    page.row(
        "text.back-bearing",
        page.say(
            "text.look-back",
            "bearing",
            page.trueAndMagnetic(course.reciprocal(), leg.roseVariation()),
            "point",
            page.point(course.reciprocal())));
    if (leg.departure().isEmpty()) {
      page.row("text.to-steer", page.say("text.no-departure"));
      return;
    }
    printStreams(leg, leg.departure().get());
    doubts(leg, "station.", "stream.", "tide.");
    leg.constantHeading().ifPresent(outcome -> printOutcome("text.constant-heading", leg, outcome));
    leg.trackHeld().ifPresent(outcome -> printOutcome("text.track-held", leg, outcome));
    leg.asChosen().ifPresent(outcome -> printOutcome("text.as-chosen", leg, outcome));
    doubts(leg, "steer.");
  }

  /** The course by the compass, by the chart's rose and by the model. */
  private String magnetic(LaidOffLeg leg, TrueBearing course) {
    String model =
        leg.modelVariation()
            .map(
                variation ->
                    page.say(
                        "text.by-model",
                        "course",
                        course.toMagnetic(variation).threeDigits(),
                        "model",
                        leg.modelName(),
                        "variation",
                        variation.degreesAndMinutes()))
            .orElseGet(() -> page.say("text.no-compass", "model", leg.modelName()));
    return page.say(
        "text.by-rose",
        "course",
        course.toMagnetic(leg.roseVariation()).threeDigits(),
        "variation",
        leg.roseVariation().degreesAndMinutes(),
        "model",
        model);
  }

  /** The notes that make a figure less certain than it looks. */
  private void doubts(LaidOffLeg leg, String... codes) {
    Set<String> printed = new HashSet<>();
    for (Note note : leg.notes()) {
      for (String code : codes) {
        if (note.severity() != Severity.INFORMATION
            && note.code().startsWith(code)
            && printed.add(note.text())) {
          page.row(note);
        }
      }
    }
  }

  private void printStreams(LaidOffLeg leg, Instant departure) {
    Map<HourlyStream, Distance> nearest = nearestAlong(leg);
    String label = "text.stream";
    for (Map.Entry<HourlyStream, Distance> entry : nearest.entrySet()) {
      HourlyStream stream = entry.getKey();
      page.row(
          label,
          page.say(
              StreamHours.aboutHigh(stream)
                  ? "text.station-about-high-water"
                  : "text.station-about-low-water",
              "station",
              stream.table().station(),
              "distance",
              page.nauticalMiles(entry.getValue()),
              "port",
              stream.tides().port()));
      printHours(stream, departure, leg.arrival().orElse(departure.plus(Duration.ofHours(1))));
      label = "";
    }
    if (nearest.isEmpty()) {
      page.row(
          label, page.say("text.no-station", "reach", page.nauticalMiles(folder.limits().reach())));
    }
  }

  /** The stations that speak along a leg, in the order in which they do. */
  private Map<HourlyStream, Distance> nearestAlong(LaidOffLeg leg) {
    Map<HourlyStream, Distance> found = new LinkedHashMap<>();
    Position middle = leg.leg().pointAt(leg.leg().length().times(0.5));
    for (int i = 0; i <= LOOKS; i++) {
      Position place = leg.leg().pointAt(leg.leg().length().times((double) i / LOOKS));
      nearest(place)
          .ifPresent(
              stream -> found.putIfAbsent(stream, distance(middle, stream.table().position())));
    }
    return found;
  }

  private Optional<HourlyStream> nearest(Position place) {
    return folder.streams().stream()
        .filter(
            stream ->
                distance(place, stream.table().position()).compareTo(folder.limits().reach()) <= 0)
        .min(
            (one, other) ->
                distance(place, one.table().position())
                    .compareTo(distance(place, other.table().position())));
  }

  private static Distance distance(Position one, Position other) {
    return GeodesicLeg.between(one, other).length();
  }

  /** The table's hours from the one before a leg's start to the one after its end. */
  private void printHours(HourlyStream stream, Instant departure, Instant until) {
    NavigableMap<Instant, String> hours = StreamHours.about(stream, departure, until, page);
    Instant before = hours.floorKey(departure);
    Instant after = hours.ceilingKey(until);
    if (before == null || after == null) {
      page.row(
          "", page.say("text.no-data-for", "time", page.clock(before == null ? departure : until)));
    }
    Instant from = before == null ? departure : before;
    Instant to = after == null ? until : after;
    if (!from.isAfter(to)) {
      hours
          .subMap(from, true, to, true)
          .forEach(
              (time, hour) ->
                  page.row(
                      "",
                      page.clock(time)
                          + "  "
                          + hour
                          + "  "
                          + stream
                              .at(time)
                              .map(page::setAndRate)
                              .orElseGet(() -> page.say("text.no-data"))));
    }
  }

  private void printOutcome(
      String strategy, LaidOffLeg leg, Outcome<SteeredLeg, NotPossible> outcome) {
    outcome.solved().ifPresent(steered -> printSolved(strategy, leg, steered));
    outcome.why().ifPresent(why -> page.row(strategy, words(why)));
  }

  private void printSolved(String strategy, LaidOffLeg leg, SteeredLeg steered) {
    page.row(
        strategy,
        page.say(
            "text.steer",
            "heading",
            steered.strategy().equals(Strategy.trackHeld())
                ? headingsHeld(leg, steered)
                : page.trueAndMagnetic(steered.courseToSteer(), leg.roseVariation())));
    Instant eta = Page.up(steered.arrival());
    page.row(
        "",
        page.say(
            "text.made-good",
            "speed",
            page.knots(steered.speedMadeGood()),
            "time",
            page.hoursAndMinutes(Duration.between(Page.up(steered.departure()), eta)),
            "eta",
            page.clock(eta),
            "light",
            Light.at(leg.to().position(), steered.arrival(), page)));
    page.row("", straying(steered));
  }

  private String straying(SteeredLeg steered) {
    Distance off = steered.greatestCrossTrack();
    if (off.magnitude().metres() < LEAST_STRAYING_METRES) {
      return page.say("text.on-the-line");
    }
    return page.say(
        off.metres() < 0.0 ? "text.strays-left" : "text.strays-right",
        "distance",
        Math.ceil(off.magnitude().nauticalMiles() * 100.0) / 100.0 + " " + page.say("unit.NM"),
        "time",
        page.clock(steered.groundTrack().timeOfGreatestCrossTrack(steered.leg())));
  }

  /**
   * The heading that holds the line, anew every half hour and where another station speaks: it
   * changes all the time, and nobody steers finer.
   */
  private String headingsHeld(LaidOffLeg leg, SteeredLeg steered) {
    String all = "";
    String last = "";
    Instant departure = steered.departure();
    Instant lastChange = steered.arrival().minus(TOO_LATE_TO_CHANGE);
    for (Instant time = departure;
        time.equals(departure) || time.isBefore(lastChange);
        time = nextLook(steered, time)) {
      Instant now = time;
      Position place = steered.groundTrack().at(now);
      Optional<String> heading =
          heading(leg, steered, place, now)
              .map(bearing -> page.trueAndMagnetic(bearing, leg.roseVariation()));
      if (heading.isPresent() && !heading.get().equals(last)) {
        last = heading.get();
        String from = page.clock(Page.up(now));
        all =
            all.isEmpty()
                ? last
                : page.say("text.then", "headings", all, "heading", last, "time", from);
      }
    }
    return all;
  }

  /** What holds the line there and then; in wind as it was steered, its leeway counted. */
  private static Optional<TrueBearing> heading(
      LaidOffLeg leg, SteeredLeg steered, Position place, Instant now) {
    if (!leg.solver().craft().windResponse().isNone()) {
      double[] steer = new double[3];
      steered.groundTrack().at(now.toEpochMilli() / 1000.0, steer, 0);
      return Optional.of(TrueBearing.ofDegrees(steer[2]));
    }
    return leg.solver().stream()
        .at(place, now)
        .flatMap(
            stream ->
                CurrentTriangle.solve(leg.leg().course(), leg.solver().craft(), stream).solved())
        .map(CurrentTriangle::courseToSteer);
  }

  /** Half an hour on, or less if another station is the nearest before that. */
  private Instant nextLook(SteeredLeg steered, Instant from) {
    Optional<HourlyStream> here = nearest(steered.groundTrack().at(from));
    for (Instant time = from.plusSeconds(60);
        time.isBefore(steered.arrival()) && time.isBefore(from.plus(HALF_HOUR));
        time = time.plusSeconds(60)) {
      if (!nearest(steered.groundTrack().at(time)).equals(here)) {
        return time;
      }
    }
    return from.plus(HALF_HOUR);
  }

  /** The finding with its time by the passage's own clock, and with what the tables cover. */
  private String words(NotPossible why) {
    String when = page.findings().at(why.when());
    String where =
        why.where()
            .map(place -> page.say("card.near", "place", place.text(AngleForm.DEGREES_MINUTES, 1)))
            .orElse("");
    if (why.reason() == Reason.NO_DATA) {
      return page.say("text.no-stream", "when", when, "where", where, "given", given(why));
    }
    return page.say(
        "text.not-possible",
        "reason",
        page.findings().sayPart(why.note(), "reason"),
        "share",
        why.reason() == Reason.NO_RESERVE ? page.say("text.which-is", "share", shareWords) : "",
        "lacking",
        why.shortBy().map(this::lacking).orElse(""),
        "when",
        when,
        "where",
        where);
  }

  private String lacking(Speed speed) {
    double knots = Math.max(0.1, Math.ceil(speed.knots() * 10.0 - 1e-9) / 10.0);
    return page.say("text.lacking", "speed", page.knots(Speed.ofKnots(knots)));
  }

  /** For when the tables of the place are given. */
  private String given(NotPossible why) {
    Optional<HourlyStream> stream = why.where().flatMap(this::nearest);
    if (stream.isEmpty()) {
      return page.say(
          "text.no-station-within", "reach", page.nauticalMiles(folder.limits().reach()));
    }
    return page.say(
        "text.tides-given",
        "port",
        stream.get().tides().port(),
        "from",
        page.dateAndClock(stream.get().tides().start()),
        "until",
        page.dateAndClock(stream.get().tides().end()));
  }
}
