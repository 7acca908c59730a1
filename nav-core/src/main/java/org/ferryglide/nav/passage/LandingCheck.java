package org.ferryglide.nav.passage;

import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.EpochSeconds;
import org.ferryglide.nav.water.WaterLevel;
import org.ferryglide.nav.water.WindField;

/** Water enough and beach left where the party lands or launches, and no swell running onto it. */
final class LandingCheck extends PassageCheck {
  /** Common practice, no source: wind and air pressure move a level by some decimetres. */
  static final double LEVEL_WARNING_METRES = 0.3;

  private final int wayPoint;
  private final WayPoint place;
  private final Landing landing;

  LandingCheck(Passage passage, int wayPoint, Landing landing) {
    super("landing at " + passage.wayPoints().get(wayPoint).name(), passage);
    this.wayPoint = wayPoint;
    this.place = passage.wayPoints().get(wayPoint);
    this.landing = landing;
  }

  @Override
  Verdict check(Candidate candidate) {
    SteeredRoute route = candidate.route;
    boolean start = wayPoint == 0;
    double until = EpochSeconds.of(start ? route.departure() : arrival(route, wayPoint));
    double length =
        (start ? passage().party().launching() : passage().party().landing()).toMillis() / 1000.0;
    double from = start ? until - length : until;
    return usable(from, from + length);
  }

  private static java.time.Instant arrival(SteeredRoute route, int wayPoint) {
    SteeredLeg leg = route.legs().get(wayPoint - 1);
    return leg.arrival();
  }

  /** Whether the landing can be used from one time until another. */
  Verdict usable(double from, double until) {
    Verdict exposed = exposed(passage(), place, landing, from);
    if (exposed != null) {
      return exposed.at(EpochSeconds.toInstant(from)).at(place.position());
    }
    double worst = Double.POSITIVE_INFINITY;
    double when = from;
    WaterLevel level = landing.port().map(passage()::level).orElse(null);
    if (level == null) {
      return Verdict.of(name(), 1.0, "(at any level)", 0.5, 0.0)
          .at(EpochSeconds.toInstant(from))
          .at(place.position());
    }
    int looks = 1 + (int) Math.ceil((until - from) / Candidate.STEP_SECONDS);
    for (int i = 0; i <= looks; i++) {
      double time = Math.min(until, from + i * Candidate.STEP_SECONDS);
      double margin = landing.marginMetres(level.heightMetres(time));
      if (!(margin >= worst)) {
        worst = margin;
        when = time;
      }
      if (Double.isNaN(margin)) {
        return Verdict.notChecked(name(), "no height of tide is known then")
            .at(EpochSeconds.toInstant(time))
            .at(place.position());
      }
    }
    return Verdict.of(name(), worst, "metres within its levels", LEVEL_WARNING_METRES, 0.0)
        .at(EpochSeconds.toInstant(when))
        .at(place.position());
  }

  /** What lies against landing there, or null. */
  static org.ferryglide.nav.timing.@org.jspecify.annotations.Nullable Verdict exposed(
      Passage passage, WayPoint place, Landing landing, double time) {
    String name = "landing at " + place.name();
    TrueBearing swell = passage.swellFrom().orElse(null);
    if (swell != null && landing.isOpenTo(swell)) {
      return Verdict.stopped(name, "it lies open to the swell from " + swell.threeDigits());
    }
    PassageLimits limits = passage.limits();
    if (!landing.hasOpenSector() || !limits.hasOnshoreWind()) {
      return null;
    }
    WindField wind = passage.wind().orElse(null);
    double[] room = new double[2];
    if (wind == null
        || !wind.sample(
            place.position().latitudeDegrees(),
            place.position().longitudeDegrees(),
            time,
            room,
            0)) {
      return Verdict.notChecked(name, "no wind is known there and then");
    }
    double speed = Math.hypot(room[0], room[1]);
    TrueBearing from = TrueBearing.ofDegrees(Math.toDegrees(Math.atan2(-room[0], -room[1])));
    if (speed == 0.0 || !landing.isOpenTo(from)) {
      return null;
    }
    Verdict verdict =
        Verdict.of(
            name,
            speed / org.ferryglide.nav.measure.Speed.ofKnots(1.0).metresPerSecond(),
            "knots of wind onto it",
            limits.onshoreWindWarning()
                / org.ferryglide.nav.measure.Speed.ofKnots(1.0).metresPerSecond(),
            limits.onshoreWindStop()
                / org.ferryglide.nav.measure.Speed.ofKnots(1.0).metresPerSecond());
    return verdict.answer() == Verdict.Answer.WITHIN ? null : verdict;
  }
}
