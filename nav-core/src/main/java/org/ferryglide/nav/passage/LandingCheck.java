package org.ferryglide.nav.passage;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.WaterLevel;
import org.ferryglide.nav.water.WindField;
import org.jspecify.annotations.Nullable;

/** Water enough and beach left where the party lands or launches, and no swell running onto it. */
final class LandingCheck extends PassageCheck {
  /** Common practice, no source: wind and air pressure move a level by some decimetres. */
  static final double LEVEL_WARNING_METRES = 0.3;

  /** Levels and winds move little in a minute. */
  private static final double LOOK_SECONDS = 60.0;

  private final int wayPoint;
  private final WayPoint place;
  private final Landing landing;

  LandingCheck(Passage passage, int wayPoint, Landing landing) {
    this(passage, passage.wayPoints().get(wayPoint), wayPoint, landing);
  }

  private LandingCheck(Passage passage, WayPoint place, int wayPoint, Landing landing) {
    super(Findings.at("check.landing", "landing at ", place.name()), passage);
    this.wayPoint = wayPoint;
    this.place = place;
    this.landing = landing;
  }

  /** For {@link #usable} alone: a landing that need not be on the way. */
  static LandingCheck beside(Passage passage, WayPoint place, Landing landing) {
    return new LandingCheck(passage, place, 0, landing);
  }

  WayPoint place() {
    return place;
  }

  @Override
  Verdict check(Candidate candidate) {
    SteeredRoute route = candidate.route;
    List<Verdict> verdicts = new ArrayList<>();
    if (wayPoint > 0) {
      double arrival = EpochSeconds.of(route.legs().get(wayPoint - 1).arrival());
      verdicts.add(
          usable(candidate.passage, arrival, arrival + Seconds.of(passage().party().landing())));
    }
    if (wayPoint < route.legs().size()) {
      double departure = EpochSeconds.of(route.legs().get(wayPoint).departure());
      verdicts.add(
          usable(
              candidate.passage, departure - Seconds.of(passage().party().launching()), departure));
    }
    return Failing.worst(verdicts);
  }

  /** Whether the landing can be used from one time until another; the worst that is found. */
  Verdict usable(double from, double until) {
    return usable(passage(), from, until);
  }

  /** The same in the wind of one draw. */
  Verdict usable(Passage world, double from, double until) {
    List<Verdict> verdicts = new ArrayList<>();
    TrueBearing swell = passage().swellFrom().orElse(null);
    if (swell != null && landing.isOpenTo(swell)) {
      verdicts.add(
          placed(
              Verdict.stopped(
                  about(),
                  Note.information(
                          "why.open-to-swell",
                          "it lies open to the swell from " + swell.threeDigits())
                      .with("swell", swell.threeDigits())),
              from));
    }
    verdicts.add(levels(from, until));
    boolean asked = landing.hasOpenSector() && passage().limits().has(PassageLimits.ONSHORE_WIND);
    int looks = asked ? looks(from, until) : -1;
    for (int i = 0; i <= looks; i++) {
      double time = Math.min(until, from + i * LOOK_SECONDS);
      Verdict wind = onshoreWind(world, time);
      if (wind != null) {
        verdicts.add(placed(wind, time));
      }
    }
    return Failing.worst(verdicts);
  }

  private static int looks(double from, double until) {
    return (int) Math.ceil((until - from) / LOOK_SECONDS);
  }

  private Verdict placed(Verdict verdict, double time) {
    return verdict.at(EpochSeconds.toInstant(time)).at(place.position());
  }

  private Note anyLevel() {
    return landing.hasOpenSector() && !passage().limits().has(PassageLimits.ONSHORE_WIND)
        ? Findings.ANY_LEVEL_OPEN
        : Findings.ANY_LEVEL;
  }

  private Verdict levels(double from, double until) {
    WaterLevel level = landing.port().map(passage()::level).orElse(null);
    if (level == null) {
      return placed(Verdict.within(about(), anyLevel()), from);
    }
    double worst = Double.POSITIVE_INFINITY;
    double when = from;
    double unknown = Double.NaN;
    for (int i = 0; i <= looks(from, until); i++) {
      double time = Math.min(until, from + i * LOOK_SECONDS);
      double margin = landing.marginMetres(level.heightMetres(time));
      if (!Double.isFinite(margin)) {
        unknown = time;
      } else if (margin < worst) {
        worst = margin;
        when = time;
      }
    }
    if (!Double.isNaN(unknown) && !(worst < 0.0)) {
      return placed(Verdict.notChecked(about(), Findings.NO_HEIGHT), unknown);
    }
    return placed(
        Verdict.of(about(), worst, "metres within its levels", LEVEL_WARNING_METRES, 0.0), when);
  }

  /** The wind onto the landing against its limits, or null if none blows onto it. */
  private @Nullable Verdict onshoreWind(Passage world, double time) {
    WindField wind = world.wind().orElse(null);
    double[] room = new double[2];
    Position there = place.position();
    if (wind == null
        || !wind.sample(there.latitudeDegrees(), there.longitudeDegrees(), time, room, 0)) {
      return Verdict.notChecked(about(), Findings.NO_WIND);
    }
    double speed = Math.hypot(room[0], room[1]);
    TrueBearing from = TrueBearing.ofDegrees(Math.toDegrees(Math.atan2(-room[0], -room[1])));
    if (speed == 0.0 || !landing.isOpenTo(from)) {
      return null;
    }
    PassageLimits limits = passage().limits();
    return Verdict.of(
        about(),
        WaterChecks.knots(speed),
        "knots of wind onto it",
        WaterChecks.knots(limits.warning(PassageLimits.ONSHORE_WIND)),
        WaterChecks.knots(limits.stop(PassageLimits.ONSHORE_WIND)));
  }
}
