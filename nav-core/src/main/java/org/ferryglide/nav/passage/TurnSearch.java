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
    List<TurnTimes> turns = new ArrayList<>();
    Found<Window> next = null;
    for (int wayPoint = passage.legs().size() - 1; wayPoint >= 0; wayPoint--) {
      TurnTimes times = at(wayPoint, next);
      turns.add(0, times);
      next = times.goingOn();
    }
    return turns;
  }

  private TurnTimes at(int wayPoint, @Nullable Found<Window> next) {
    Instant planned = plan.route().leavingAt(wayPoint);
    Instant from = EpochSeconds.toInstant(Math.ceil(EpochSeconds.of(planned)));
    Passage alone = onward(wayPoint);
    Passage onward =
        next == null ? alone : alone.toBuilder().condition(new NextInTime(alone, next)).build();
    Found<Window> goingOn = windows(onward, from);
    // what fails here tells more than that something fails further on
    Map<TimeSpan, Note> notOn = outside(List.of(alone, onward), goingOn);
    if (wayPoint == 0) {
      TimeSpan whole = goingOn.asked();
      Found<Window> home =
          Found.of(List.of(new Window(whole, true, true)), whole, List.of(whole), List.of());
      return new TurnTimes(passage.wayPoints().get(0), planned, goingOn, notOn, home, Map.of());
    }
    Passage back = home(wayPoint);
    Found<Window> home = windows(back, firstHome(wayPoint, from));
    return new TurnTimes(
        passage.wayPoints().get(wayPoint),
        planned,
        goingOn,
        notOn,
        home,
        outside(List.of(back), home));
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

  private Passage home(int wayPoint) {
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
    Instant last = until.isBefore(from) ? from : until;
    return DepartureSearch.of(PassageSolver.lean(part))
        .withStep(step)
        .withCondition(new InTurn(part))
        .between(from, last)
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
