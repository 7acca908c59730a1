package org.ferryglide.nav.passage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.sky.SunThreshold;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.timing.Condition;
import org.ferryglide.nav.timing.Verdict;

/** Everything a passage is checked for, in the order of the report. */
final class Checks {
  private final List<Condition> conditions;
  private final List<Note> notChecked;

  private final Candidates candidates;

  private Checks(List<Condition> conditions, List<Note> notChecked, Candidates candidates) {
    this.candidates = candidates;
    this.conditions = Collections.unmodifiableList(conditions);
    this.notChecked = Collections.unmodifiableList(notChecked);
  }

  static Checks of(Passage passage) {
    List<Condition> list = new ArrayList<>();
    List<Note> open = new ArrayList<>();
    SunThreshold light = passage.limits().light().orElse(null);
    if (light != null) {
      list.add(new DaylightCheck(passage, light));
    } else {
      open.add(Findings.OPEN_DAYLIGHT);
    }
    list.add(new ShareCheck(passage));
    if (passage.limits().has(PassageLimits.RESERVE)) {
      list.add(new ReserveCheck(passage));
    }
    list.addAll(WaterChecks.of(passage));
    addLandings(passage, list);
    List<DangerCheck> dangers = new ArrayList<>();
    if (passage.dangers().isPresent()) {
      passage.dangers().get().forEach(danger -> dangers.add(new DangerCheck(passage, danger)));
      list.addAll(dangers);
      if (!dangers.isEmpty()) {
        list.add(new DriftCheck(passage, dangers));
      }
    } else {
      open.add(Findings.OPEN_DANGERS);
    }
    if (passage.shores().isPresent()) {
      list.add(new ShoreCheck(passage, passage.shores().get()));
      list.add(new OpenWaterCheck(passage, passage.shores().get()));
    } else if (passage.dangers().isPresent()) {
      open.add(Findings.OPEN_LAND_DOWN_WIND);
    }
    if (passage.limits().has(PassageLimits.TIME_TO_LANDING)) {
      list.add(new ReachCheck(passage));
    }
    if (passage.lanes().isPresent()) {
      passage.lanes().get().forEach(lane -> list.add(new LaneCheck(passage, lane)));
    } else {
      open.add(Findings.OPEN_LANES);
    }
    if (passage.limits().has(PassageLimits.TIME_AFLOAT)) {
      list.add(new TimeAfloatCheck(passage));
    }
    list.add(new SourceChecks.Tables(passage));
    if (passage.variation().isPresent()) {
      list.add(new SourceChecks.Variation(passage));
    } else {
      open.add(Findings.OPEN_VARIATION);
    }
    addOpenWater(passage, open);
    list.addAll(passage.conditions());
    Candidates shared = new Candidates(passage);
    for (Condition condition : list) {
      if (condition instanceof PassageCheck own) {
        own.share(shared);
      }
    }
    return new Checks(list, open, shared);
  }

  /** What of stream, wind, swell and landings has no limit, or nothing to be held against one. */
  private static void addOpenWater(Passage passage, List<Note> open) {
    PassageLimits limits = passage.limits();
    if (!limits.has(PassageLimits.STREAM)) {
      open.add(Findings.OPEN_STREAM);
    }
    boolean wind = passage.wind().isPresent();
    if (!wind || !limits.has(PassageLimits.WIND)) {
      open.add(Findings.OPEN_WIND);
    }
    boolean anyOpen =
        Stream.concat(passage.wayPoints().stream(), passage.refuges().stream())
            .anyMatch(place -> place.landing().map(Landing::hasOpenSector).orElse(false));
    if (anyOpen && (!wind || !limits.has(PassageLimits.ONSHORE_WIND))) {
      open.add(Findings.OPEN_ONSHORE_WIND);
    }
    if (anyOpen && !passage.swellFrom().isPresent()) {
      open.add(Findings.OPEN_SWELL);
    }
    Set<String> without = new LinkedHashSet<>();
    for (int i = 0; i < passage.wayPoints().size(); i++) {
      WayPoint place = passage.wayPoints().get(i);
      if (isUsed(passage, i) && !place.landing().isPresent()) {
        without.add(place.name());
      }
    }
    without.forEach(name -> open.add(Findings.at("open.landing", "landing at ", name)));
  }

  /** Whether the party launches or lands at a way point. */
  private static boolean isUsed(Passage passage, int wayPoint) {
    return PartPassages.isAshore(passage, wayPoint) || wayPoint == passage.wayPoints().size() - 1;
  }

  private static void addLandings(Passage passage, List<Condition> list) {
    for (int i = 0; i < passage.wayPoints().size(); i++) {
      WayPoint place = passage.wayPoints().get(i);
      if (isUsed(passage, i) && place.landing().isPresent()) {
        list.add(new LandingCheck(passage, i, place.landing().get()));
      }
    }
  }

  /** The workspace of the thread that asks. */
  WorkRoom room() {
    return candidates.room();
  }

  List<Condition> conditions() {
    return conditions;
  }

  /** What nobody looked at, for the line at the top of everything printed. */
  List<Note> notChecked() {
    return notChecked;
  }

  List<Verdict> check(Candidate candidate) {
    List<Verdict> verdicts = new ArrayList<>(conditions.size());
    for (Condition condition : conditions) {
      verdicts.add(candidate.against(condition));
    }
    return verdicts;
  }

  /** Not more than the usual share of the paddling speed against what sets across. */
  private static final class ShareCheck extends PassageCheck {
    ShareCheck(Passage passage) {
      super(
          Note.information("check.share", "share of the speed spent against the stream across"),
          passage);
    }

    @Override
    Verdict check(Candidate candidate) {
      SteeredLeg worst = candidate.route.legs().get(0);
      for (SteeredLeg leg : candidate.route.legs()) {
        worst = leg.crossStreamShare() > worst.crossStreamShare() ? leg : worst;
      }
      PassageLimits limits = passage().limits();
      return Verdict.of(
              about(),
              100.0 * worst.crossStreamShare(),
              "per cent",
              100.0 * limits.warning(PassageLimits.CROSS_STREAM_SHARE),
              100.0 * limits.stop(PassageLimits.CROSS_STREAM_SHARE))
          .at(worst.departure())
          .at(worst.leg().start());
    }
  }

  /** Index of the worst verdict: the not checked first, then the least margin. */
  static OptionalInt worst(List<Verdict> verdicts) {
    int worst = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < verdicts.size(); i++) {
      double margin = verdicts.get(i).margin().orElse(Double.NEGATIVE_INFINITY);
      if (margin < least) {
        least = margin;
        worst = i;
      }
    }
    return worst < 0 ? OptionalInt.empty() : OptionalInt.of(worst);
  }
}
