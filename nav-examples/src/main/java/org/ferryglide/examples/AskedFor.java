package org.ferryglide.examples;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.passage.WhenToGo;
import org.ferryglide.nav.sky.SunThreshold;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.nav.timing.Condition;
import org.ferryglide.nav.timing.DepartureSearch;
import org.ferryglide.nav.timing.Departures;
import org.ferryglide.nav.timing.PassageTiming;
import org.ferryglide.tide.folder.FolderLimits;
import org.ferryglide.tide.folder.PassageFolder;
import org.ferryglide.tide.stream.HourlyStream;

/** What the party asks of its passage, and when and how fast that could be had. */
final class AskedFor {
  private static final Duration STEP = Duration.ofMinutes(10);

  /** Further ahead nobody plans one passage. */
  private static final Duration FURTHEST = Duration.ofDays(14);

  private static final int FASTEST_TENTHS = 200;

  /** From this share of the strongest stream on it warns. */
  private static final double WARNS_FROM = 0.8;

  private final Page page;
  private final LaidOffPassage passage;
  private final PassageFolder folder;

  /** With the track held, since where no heading holds many are tried before it is said. */
  private final CourseToSteer solver;

  private final FolderLimits limits;
  private final Instant start;
  private final Instant until;
  private final List<TimeSpan> light;

  /** The passage where its legs and stops are not all alike, which a route cannot tell. */
  private final Optional<AskedOfStops> stops;

  AskedFor(LaidOffPassage passage, Page page) {
    this.page = page;
    this.passage = passage;
    this.folder = passage.folder();
    this.solver = passage.solver().withStrategy(Strategy.trackHeld());
    this.limits = folder.limits();
    this.start = folder.start().toInstant();
    Instant end = start;
    for (HourlyStream stream : folder.streams()) {
      end = stream.tides().end().isAfter(end) ? stream.tides().end() : end;
    }
    Instant furthest = start.plus(FURTHEST);
    this.until = end.isAfter(furthest) ? furthest : end;
    this.light = limits.light().map(this::lightAtBothEnds).orElse(List.of());
    this.stops = AskedOfStops.of(folder, timeConditions());
  }

  private List<TimeSpan> lightAtBothEnds(SunThreshold threshold) {
    LocalDate first = folder.start().toLocalDate();
    LocalDate last = until.atOffset(folder.start().getOffset()).toLocalDate().plusDays(1);
    int end = folder.wayPoints().size() - 1;
    List<TimeSpan> both = new ArrayList<>();
    for (TimeSpan here :
        Light.spans(
            threshold,
            folder.wayPoints().get(0).position(),
            first,
            last,
            folder.start().getOffset())) {
      for (TimeSpan there :
          Light.spans(
              threshold,
              folder.wayPoints().get(end).position(),
              first,
              last,
              folder.start().getOffset())) {
        Instant from = here.from().isAfter(there.from()) ? here.from() : there.from();
        Instant to = here.until().isBefore(there.until()) ? here.until() : there.until();
        if (from.isBefore(to)) {
          both.add(TimeSpan.of(from, to));
        }
      }
    }
    return both;
  }

  /** The limits in words, for the head of the page. */
  String words() {
    List<String> words = new ArrayList<>();
    words.add(limits.light().map(this::lightName).orElseGet(() -> page.say("text.any-light")));
    limits
        .latestArrival()
        .map(OffsetDateTime::toInstant)
        .ifPresent(time -> words.add(landedBy(time)));
    limits
        .strongestStream()
        .ifPresent(most -> words.add(page.say("text.no-stream-above", "speed", page.knots(most))));
    words.add(shareWords());
    words.add(page.say("text.reach", "reach", page.nauticalMiles(limits.reach())));
    return String.join("; ", words);
  }

  String shareWords() {
    return page.say(
        "text.share", "share", Long.toString(Math.round(limits.crossStreamShare() * 100.0)));
  }

  private String lightName(SunThreshold threshold) {
    return page.say(
        threshold == SunThreshold.SUNRISE_AND_SUNSET ? "text.sun" : "text.civil-twilight");
  }

  private String landedBy(Instant latest) {
    return page.say("text.landed-by", "time", page.dateAndClock(latest));
  }

  private List<Condition> conditions() {
    List<Condition> all = timeConditions();
    limits
        .strongestStream()
        .ifPresent(
            most ->
                all.add(
                    Condition.streamAtMost(
                        passage.solver().stream(), most.times(WARNS_FROM), most)));
    return all;
  }

  private List<Condition> timeConditions() {
    List<Condition> all = new ArrayList<>();
    limits
        .light()
        .ifPresent(
            threshold ->
                all.add(Condition.during(lightName(threshold), light, Duration.ofHours(1))));
    limits
        .latestArrival()
        .map(OffsetDateTime::toInstant)
        .ifPresent(
            latest ->
                all.add(
                    Condition.of(
                        landedBy(latest),
                        "minutes to spare",
                        30.0,
                        0.0,
                        route -> Duration.between(route.arrival(), latest).toMillis() / 60_000.0)));
    return all;
  }

  /** The limits that the passage as planned does not keep; none if it cannot be steered at all. */
  List<String> brokenAsPlanned() {
    if (stops.isPresent()) {
      return stops.get().leaving(start).map(this::broken).orElse(List.of());
    }
    return solver.solve(passage.route(), start).solved().map(this::broken).orElse(List.of());
  }

  private List<String> broken(SteeredRoute route) {
    return conditions().stream()
        .filter(condition -> !condition.check(route).holds())
        .map(condition -> page.findings().say(condition.about()))
        .toList();
  }

  private List<String> broken(TimedPlan plan) {
    return AskedOfStops.broken(plan).stream().map(page.findings()::say).toList();
  }

  /** The next departure that keeps every limit, or the next at all with the limits it breaks. */
  String nextDeparture() {
    if (!start.isBefore(until)) {
      return page.say("text.tables-end");
    }
    if (stops.isPresent()) {
      return nextDeparture(stops.get());
    }
    DepartureSearch search = DepartureSearch.of(solver, passage.route()).withStep(STEP);
    for (Condition condition : conditions()) {
      search = search.withCondition(condition);
    }
    Departures departures = search.between(start, until);
    Optional<SteeredRoute> fit =
        departures.windows().items().stream()
            .map(window -> Page.up(window.from()))
            .map(time -> solver.solve(passage.route(), time).solved())
            .flatMap(Optional::stream)
            .filter(route -> broken(route).isEmpty())
            .findFirst();
    if (fit.isPresent()) {
      return next(fit.get());
    }
    return departures.all().stream()
        .map(departure -> departure.outcome().solved())
        .flatMap(Optional::stream)
        .findFirst()
        .map(route -> next(route, broken(route)))
        .orElseGet(this::none);
  }

  private String nextDeparture(AskedOfStops way) {
    WhenToGo departures = way.departures(start, until, STEP);
    Optional<TimedPlan> fit =
        departures.windows().items().stream()
            .map(window -> Page.up(window.from()))
            .map(way::leaving)
            .flatMap(Optional::stream)
            .filter(plan -> broken(plan).isEmpty())
            .findFirst();
    if (fit.isPresent()) {
      return next(fit.get().route());
    }
    return departures.choices().stream()
        .filter(departure -> departure.outcome().isSolved())
        .findFirst()
        .flatMap(departure -> way.leaving(departure.time()))
        .map(plan -> next(plan.route(), broken(plan)))
        .orElseGet(this::none);
  }

  private String next(SteeredRoute route) {
    return page.say(
        "text.next",
        "departure",
        page.dateAndClock(route.departure()),
        "arrival",
        page.dateAndClock(Page.up(route.arrival())));
  }

  private String next(SteeredRoute route, List<String> broken) {
    return page.say(
        "text.next-but",
        "departure",
        page.dateAndClock(route.departure()),
        "arrival",
        page.dateAndClock(Page.up(route.arrival())),
        "limits",
        nor(broken));
  }

  private String nor(List<String> limits) {
    return limits.stream()
        .reduce((first, next) -> page.say("text.nor", "limits", first, "limit", next))
        .orElse("");
  }

  private String none() {
    return page.say("text.none-up-to", "time", page.dateAndClock(until));
  }

  /** The speed that would do from the planned start, with the reserve the limits ask for. */
  String speedThatWouldDo() {
    Instant latest = start.plus(CourseToSteer.USUAL_LONGEST_DURATION);
    for (TimeSpan span : light) {
      if (!start.isBefore(span.from()) && start.isBefore(span.until())) {
        latest = span.until();
      }
    }
    Optional<Instant> landed = limits.latestArrival().map(OffsetDateTime::toInstant);
    if (landed.isPresent() && landed.get().isBefore(latest) && landed.get().isAfter(start)) {
      latest = landed.get();
    }
    OptionalInt tenths = stops.isPresent() ? tenthsThatDo(stops.get(), latest) : tenths(latest);
    if (tenths.isEmpty()) {
      return page.say("text.no-speed", "speed", page.knots(Speed.ofKnots(FASTEST_TENTHS / 10.0)));
    }
    double knots = tenths.getAsInt() / 10.0;
    double more = Math.ceil((knots - folder.speed().knots()) * 10.0 - 1e-6);
    return page.say(
        "text.speed-that-would-do",
        "speed",
        page.knots(Speed.ofKnots(knots)),
        "more",
        page.unit(more / 10.0 + " kn"),
        "share",
        shareWords(),
        "but",
        brokenAt(Speed.ofKnots(knots)));
  }

  private OptionalInt tenths(Instant latest) {
    return PassageTiming.of(solver, passage.route())
        .leastSpeed(start, latest)
        .match(
            speed -> OptionalInt.of((int) Math.ceil(speed.knots() * 10.0 - 1e-9)),
            why -> OptionalInt.empty());
  }

  /** The first tenth of a knot from below that is there in time, with the share asked for. */
  private OptionalInt tenthsThatDo(AskedOfStops way, Instant latest) {
    double share = limits.crossStreamShare();
    return IntStream.rangeClosed(1, FASTEST_TENTHS)
        .filter(
            tenths ->
                way.atSpeed(Speed.ofKnots(tenths / 10.0))
                    .leaving(start)
                    .filter(plan -> !plan.arrival().isAfter(latest))
                    .filter(plan -> plan.route().crossStreamShare() <= share)
                    .isPresent())
        .findFirst();
  }

  private String brokenAt(Speed speed) {
    List<String> names =
        stops.isPresent()
            ? stops.get().atSpeed(speed).leaving(start).map(this::broken).orElse(List.of())
            : solver
                .withCraft(solver.craft().withSpeed(speed))
                .solve(passage.route(), start)
                .solved()
                .map(this::broken)
                .orElse(List.of());
    return names.isEmpty() ? "" : page.say("text.but-not", "limits", nor(names));
  }
}
