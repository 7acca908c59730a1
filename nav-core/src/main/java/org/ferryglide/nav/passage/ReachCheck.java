package org.ferryglide.nav.passage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.timing.Verdict;
import org.jspecify.annotations.Nullable;

/**
 * How long the slower party needs to the nearest landing that it can use, ahead, astern or beside
 * the way, with a heading solved for it; looked at every ten minutes. The straight line there
 * crosses no shore that was drawn, but may cross dangers and land that was not; {@link
 * LandingInReach} holds each way there against all checks, at a price that a search of departures
 * cannot pay.
 */
final class ReachCheck extends PassageCheck {
  private static final double LOOK_SECONDS = 600.0;

  private final Passage slow;
  private final List<LandingCheck> landings = new ArrayList<>();
  private final List<Outline> shores;

  ReachCheck(Passage passage) {
    super(Note.information("check.reach", "time to a usable landing"), passage);
    slow = passage.slower();
    shores = slow.shores().map(ShoreCheck::outlines).orElse(List.of());
    List<WayPoint> places = new ArrayList<>(slow.wayPoints());
    places.addAll(slow.refuges());
    for (WayPoint place : places) {
      place.landing().ifPresent(l -> landings.add(LandingCheck.beside(slow, place, l)));
    }
  }

  @Override
  Verdict check(Candidate candidate) {
    return Objects.requireNonNull(worseThan(candidate, Double.POSITIVE_INFINITY));
  }

  @Override
  @Nullable Verdict worseThan(Candidate candidate, double margin) {
    if (landings.isEmpty()) {
      return Verdict.notChecked(about(), Findings.NO_LANDING);
    }
    double warning = passage().limits().warning(PassageLimits.TIME_TO_LANDING);
    double stop = passage().limits().stop(PassageLimits.TIME_TO_LANDING);
    boolean isOnlyWorse = margin < Double.POSITIVE_INFINITY;
    // one that takes no longer has no less of a margin
    double least = isOnlyWorse ? stop - margin * (stop - warning) : -1.0;
    NearestLanding nearest = new NearestLanding(landings, candidate, slow, shores);
    int[] looks = looks(candidate);
    boolean[] isBeyond = new boolean[looks.length];
    double worst = Math.max(-1.0, least);
    int when = -1;
    int unknown = -1;
    for (int i : farthestFirst(looks, nearest)) {
      // a look that is neither the worst nor beyond the warning need not be known better
      double seconds = nearest.seconds(looks[i], isOnlyWorse ? worst : Math.min(worst, warning));
      unknown = Double.isNaN(seconds) ? Math.max(unknown, looks[i]) : unknown;
      isBeyond[i] = seconds > warning;
      if (seconds > worst || (seconds == worst && looks[i] < when)) {
        worst = seconds;
        when = looks[i];
      }
    }
    if (unknown >= 0 && !(when >= 0 && worst > stop)) {
      return at(Verdict.notChecked(about(), Findings.NO_LANDING_KNOWN), candidate, unknown);
    }
    if (when < 0) {
      return null;
    }
    if (Double.isInfinite(worst)) {
      return at(Verdict.stopped(about(), Findings.NONE_IN_REACH), candidate, when);
    }
    for (int i = 0; i < looks.length && isOnlyWorse; i++) {
      // its first landing was near enough for the worst, another may be for the warning
      isBeyond[i] = isBeyond[i] && nearest.seconds(looks[i], warning) > warning;
    }
    double longest = longest(candidate, looks, isBeyond);
    long beyond = Math.round(longest / 60.0);
    Note about =
        longest > 0.0
            ? Note.information(
                    "check.reach-beyond", name() + ", beyond the warning for " + beyond + " min")
                .with("beyondMinutes", (double) beyond)
            : about();
    return at(
        Verdict.of(
            about, worst / 60.0, "minutes for the slower party", warning / 60.0, stop / 60.0),
        candidate,
        when);
  }

  /** The looks every ten minutes, and the last. */
  private static int[] looks(Candidate candidate) {
    int[] looks = new int[candidate.size];
    int count = 0;
    double asked = Double.NEGATIVE_INFINITY;
    for (int look = 0; look < candidate.size; look++) {
      if (candidate.time[look] - asked >= LOOK_SECONDS || look + 1 == candidate.size) {
        asked = candidate.time[look];
        looks[count++] = look;
      }
    }
    return Arrays.copyOf(looks, count);
  }

  /** Indices of the looks, those farthest from a landing first: one of them is likely the worst. */
  private static int[] farthestFirst(int[] looks, NearestLanding nearest) {
    double[] keys = new double[looks.length];
    int[] order = new int[looks.length];
    for (int i = 0; i < looks.length; i++) {
      keys[i] = -nearest.squareFrom(looks[i]);
    }
    Sorted.ascending(keys, order);
    return order;
  }

  /** The longest time of looks in a row that lie beyond the warning, seconds. */
  private static double longest(Candidate candidate, int[] looks, boolean[] isBeyond) {
    double longest = 0.0;
    double since = Double.NaN;
    for (int i = 0; i < looks.length; i++) {
      double time = candidate.time[looks[i]];
      since = !isBeyond[i] ? Double.NaN : Double.isNaN(since) ? time : since;
      longest = isBeyond[i] ? Math.max(longest, time - since) : longest;
    }
    return longest;
  }
}
