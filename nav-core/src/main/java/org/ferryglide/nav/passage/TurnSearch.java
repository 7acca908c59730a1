package org.ferryglide.nav.passage;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.timing.Condition;
import org.ferryglide.nav.timing.DepartureSearch;
import org.ferryglide.nav.water.Found;
import org.ferryglide.nav.water.Window;
import org.jspecify.annotations.Nullable;

/** Searches the times of one way point after the other, the last first. */
final class TurnSearch {
  private static final Duration PAST_AN_EDGE = Duration.ofSeconds(1);

  private final TimedPlan plan;
  private final Passage passage;
  private final Instant until;
  private final Duration step;

  TurnSearch(TimedPlan plan, Instant until, Duration step) {
    this.plan = plan;
    this.passage = plan.passage();
    this.until = until;
    this.step = step;
  }

  /** One for each way point but the last, in order. */
  List<TurnTimes> turns() {
    List<List<Passage>> parts = new ArrayList<>();
    List<Found<Window>> on = goingOn(parts);
    List<TurnTimes> turns = new ArrayList<>();
    for (int wayPoint = 0; wayPoint < on.size(); wayPoint++) {
      Found<Window> goingOn = on.get(wayPoint);
      Map<TimeSpan, Note> notOn = outside(parts.get(wayPoint), goingOn);
      Passage back = wayPoint == 0 ? null : back(wayPoint);
      Found<Window> home = home(wayPoint, back);
      turns.add(
          new TurnTimes(
              passage.wayPoints().get(wayPoint),
              plan.route().leavingAt(wayPoint),
              goingOn,
              notOn,
              home,
              back == null ? Map.of() : outside(List.of(back), home)));
    }
    return turns;
  }

  /** When the party may go on, for each way point but the last, in order. */
  List<Found<Window>> goingOn() {
    return goingOn(new ArrayList<>());
  }

  /**
   * The same.
   *
   * @param parts receives what was searched: the rest of the passage, first as it is, since what
   *     fails here tells more than that something fails further on
   */
  private List<Found<Window>> goingOn(List<List<Passage>> parts) {
    List<Found<Window>> all = new ArrayList<>();
    Found<Window> next = null;
    for (int wayPoint = passage.legs().size() - 1; wayPoint >= 0; wayPoint--) {
      Passage alone = onward(wayPoint);
      Passage onward =
          next == null ? alone : alone.toBuilder().condition(new NextInTime(alone, next)).build();
      next = windows(onward, from(wayPoint));
      all.add(0, next);
      parts.add(0, List.of(alone, onward));
    }
    return all;
  }

  /** When home can be made from a way point; from the start, which is home, the whole time. */
  Found<Window> home(int wayPoint) {
    return home(wayPoint, wayPoint == 0 ? null : back(wayPoint));
  }

  private Found<Window> home(int wayPoint, @Nullable Passage back) {
    Instant from = from(wayPoint);
    if (back == null) {
      TimeSpan whole = TimeSpan.of(from, last(from));
      return Found.of(List.of(new Window(whole, true, true)), whole, List.of(whole), List.of());
    }
    return windows(back, firstHome(wayPoint, from));
  }

  /** The planned time at a way point, to the second after it. */
  private Instant from(int wayPoint) {
    return EpochSeconds.toInstant(Math.ceil(EpochSeconds.of(plan.route().leavingAt(wayPoint))));
  }

  private Instant last(Instant from) {
    return until.isBefore(from) ? from : until;
  }

  /** One who has landed may launch at once for home; else home begins where going on does. */
  private Instant firstHome(int wayPoint, Instant goingOn) {
    if (!PartPassages.isAshore(passage, wayPoint)) {
      return goingOn;
    }
    Party party = passage.party();
    Instant arrival = plan.route().legs().get(wayPoint - 1).arrival();
    double afloat =
        EpochSeconds.of(arrival) + Seconds.of(party.landing()) + Seconds.of(party.launching());
    return EpochSeconds.toInstant(Math.ceil(afloat));
  }

  private Passage onward(int wayPoint) {
    Passage bare = PartPassages.onward(passage, wayPoint);
    PassageBuilder builder = bare.toBuilder();
    List<SteeredLeg> wayOut = plan.route().legs().subList(0, wayPoint);
    for (Condition own : passage.conditions()) {
      builder.condition(AfterWayOut.whole(own, wayOut));
    }
    return PartPassages.withSlower(withTimeAfloat(builder, bare, wayPoint).build());
  }

  private Passage back(int wayPoint) {
    Passage bare = PartPassages.home(passage, wayPoint);
    return PartPassages.withSlower(withTimeAfloat(bare.toBuilder(), bare, wayPoint).build());
  }

  /** Time in the boat before the way point counts too, unless it is a stop. */
  private PassageBuilder withTimeAfloat(PassageBuilder builder, Passage part, int wayPoint) {
    int ashore = wayPoint;
    while (!PartPassages.isAshore(passage, ashore)) {
      ashore--;
    }
    return ashore == wayPoint || !passage.limits().has(PassageLimits.TIME_AFLOAT)
        ? builder
        : builder.condition(
            AfterWayOut.timeAfloat(part, EpochSeconds.of(plan.route().leavingAt(ashore))));
  }

  private Found<Window> windows(Passage part, Instant from) {
    return DepartureSearch.of(PassageSolver.lean(part))
        .withStep(step)
        .withCondition(new InTurn(part))
        .between(from, last(from))
        .windows();
  }

  /** The spans between the windows, each with what fails a second after it begins. */
  private static Map<TimeSpan, Note> outside(List<Passage> parts, Found<Window> windows) {
    Map<TimeSpan, Note> outside = new LinkedHashMap<>();
    Instant begin = windows.asked().from();
    Instant look = begin;
    for (Window window : windows) {
      if (begin.isBefore(window.from())) {
        put(outside, parts, TimeSpan.of(begin, window.from()), look);
      }
      begin = window.until();
      look = begin.plus(PAST_AN_EDGE);
    }
    if (begin.isBefore(windows.asked().until()) || windows.isEmpty()) {
      put(outside, parts, TimeSpan.of(begin, windows.asked().until()), look);
    }
    return outside;
  }

  private static void put(
      Map<TimeSpan, Note> outside, List<Passage> parts, TimeSpan span, Instant look) {
    Optional<Note> why = why(parts, look.isAfter(span.until()) ? span.until() : look);
    if (!why.isPresent()) { // the edge lies just there
      why = why(parts, span.from().plus(span.duration().dividedBy(2)));
    }
    outside.put(span, why.orElse(Findings.EDGE));
  }

  private static Optional<Note> why(List<Passage> parts, Instant time) {
    for (Passage part : parts) {
      Optional<Note> why =
          Failing.of(WhenToGo.search(part, time, time, PAST_AN_EDGE).choices().get(0));
      if (why.isPresent()) {
        return why;
      }
    }
    return Optional.empty();
  }
}
