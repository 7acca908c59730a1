package org.ferryglide.nav.passage;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.timing.Departure;
import org.ferryglide.nav.timing.Verdict;
import org.jspecify.annotations.Nullable;

/** Looks from places along a plan to all landings of its passage. */
final class LandingSearch {
  private static final double STEP_SECONDS = 300.0;
  private static final Note ABOUT = Note.information("check.time-to-landing", "time to a landing");

  private final Passage passage;
  private final List<WayPoint> landings;

  private LandingSearch(Passage passage, List<WayPoint> landings) {
    this.passage = passage;
    this.landings = landings;
  }

  static LandingSearch of(Passage passage) {
    Map<Position, WayPoint> places = new LinkedHashMap<>();
    for (WayPoint place : passage.wayPoints()) {
      if (place.landing().isPresent()) {
        places.putIfAbsent(place.position(), place);
      }
    }
    for (WayPoint place : passage.refuges()) {
      places.putIfAbsent(place.position(), place);
    }
    return new LandingSearch(passage, new ArrayList<>(places.values()));
  }

  List<LandingInReach> from(TimedPlan plan, Instant time) {
    List<LandingInReach> all = new ArrayList<>();
    Position here = at(plan.route(), time);
    for (WayPoint landing : landings) {
      all.add(look(here, landing, time));
    }
    all.sort(
        (a, b) ->
            a.isUsable() != b.isUsable()
                ? a.isUsable() ? -1 : 1
                : Double.compare(minutes(a), minutes(b)));
    return all;
  }

  private static Position at(SteeredRoute route, Instant time) {
    return time.isBefore(route.departure())
        ? route.route().start()
        : time.isAfter(route.arrival()) ? route.route().end() : route.at(time);
  }

  private static double minutes(LandingInReach landing) {
    return landing
        .slowerTime()
        .map(time -> Seconds.of(time) / 60.0)
        .orElse(Double.POSITIVE_INFINITY);
  }

  private LandingInReach look(Position here, WayPoint landing, Instant time) {
    Passage way = PartPassages.escape(passage, here, landing);
    Departure departure = WhenToGo.search(way, time, time, Duration.ofSeconds(1)).choices().get(0);
    SteeredRoute route = departure.outcome().solved().orElse(null);
    SteeredRoute slower = PassageSolver.lean(way.slower()).leaving(time).solved().orElse(null);
    Verdict against =
        departure.isFit()
            ? null
            : departure
                .outcome()
                .match(
                    solved -> Failing.worst(departure.verdicts()),
                    why ->
                        why.isDataMissing()
                            ? Verdict.notChecked(way(landing), why.note())
                            : Verdict.stopped(way(landing), why.note()));
    return new LandingInReach(
        landing,
        time,
        route == null ? null : route.legs().get(0).courseToSteer(),
        route == null ? null : route.arrival(),
        slower == null ? null : slower.arrival(),
        against);
  }

  private static Note way(WayPoint landing) {
    return Findings.at("check.way-to", "way to ", landing.name());
  }

  Verdict check(TimedPlan plan) {
    PassageLimits limits = passage.limits();
    if (!limits.has(PassageLimits.TIME_TO_LANDING)) {
      return Verdict.notChecked(ABOUT, Note.information("why.no-limit", "no limit was chosen"));
    }
    if (landings.isEmpty()) {
      return Verdict.notChecked(ABOUT, Findings.NO_LANDING);
    }
    Stretch stretch = new Stretch(limits.warning(PassageLimits.TIME_TO_LANDING) / 60.0);
    double end = plan.route().arrivalSeconds();
    double worst = Double.NEGATIVE_INFINITY;
    Instant when = plan.departure();
    Verdict unknown = null;
    for (double at = plan.route().departureSeconds(); ; at = Math.min(end, at + STEP_SECONDS)) {
      Instant time = EpochSeconds.toInstant(at);
      List<LandingInReach> all = from(plan, time);
      double least = all.get(0).isUsable() ? minutes(all.get(0)) : Double.POSITIVE_INFINITY;
      stretch.add(time, least);
      if (least > worst) {
        worst = least;
        when = time;
        unknown = least < Double.POSITIVE_INFINITY ? null : notChecked(all);
      }
      if (!(at < end)) {
        break;
      }
    }
    return verdict(limits, worst, stretch, unknown).at(when).at(at(plan.route(), when));
  }

  private static Verdict verdict(
      PassageLimits limits, double worst, Stretch stretch, @Nullable Verdict unknown) {
    if (worst == Double.POSITIVE_INFINITY) {
      return unknown == null
          ? Verdict.stopped(
              stretch.about(), Note.information("why.no-usable-landing", "no usable landing"))
          : Verdict.notChecked(stretch.about(), Findings.NO_LANDING_KNOWN);
    }
    return Verdict.of(
        stretch.about(),
        worst,
        "minutes for the slower party",
        limits.warning(PassageLimits.TIME_TO_LANDING) / 60.0,
        limits.stop(PassageLimits.TIME_TO_LANDING) / 60.0);
  }

  /** A landing that could not be checked, which may be usable. */
  private static @Nullable Verdict notChecked(List<LandingInReach> all) {
    for (LandingInReach landing : all) {
      Verdict against = landing.ruledOutBy().orElse(null);
      if (against != null && against.answer() == Verdict.Answer.NOT_CHECKED) {
        return against;
      }
    }
    return null;
  }

  /** The longest time with no usable landing within some minutes. */
  private static final class Stretch {
    private final double minutes;
    private @Nullable Instant begin;
    private @Nullable TimeSpan longest;

    Stretch(double minutes) {
      this.minutes = minutes;
    }

    void add(Instant time, double least) {
      if (least <= minutes) {
        begin = null;
        return;
      }
      Instant from = begin == null ? time : begin;
      begin = from;
      TimeSpan here = TimeSpan.of(from, time);
      if (longest == null || here.duration().compareTo(longest.duration()) > 0) {
        longest = here;
      }
    }

    Note about() {
      if (longest == null) {
        return ABOUT;
      }
      Instant from = longest.from().truncatedTo(ChronoUnit.MINUTES);
      Instant until = longest.until().truncatedTo(ChronoUnit.MINUTES);
      String words =
          ABOUT.text()
              + ", none within "
              + Math.round(minutes)
              + " minutes from "
              + from
              + " until "
              + until;
      return Note.information("check.time-to-landing-none", words)
          .with("withinMinutes", minutes)
          .with("fromTime", from.toString())
          .with("untilTime", until.toString());
    }
  }
}
