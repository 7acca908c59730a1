package org.ferryglide.nav.passage;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import org.ferryglide.nav.magnetic.VariationSource;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Severity;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.steer.SteeringLimits;
import org.ferryglide.nav.timing.Condition;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.EpochSeconds;

/** Everything a passage is held against, in the order it is told. */
final class Checks {
  private final List<Condition> conditions;
  private final List<String> notChecked;

  private Checks(List<Condition> conditions, List<String> notChecked) {
    this.conditions = Collections.unmodifiableList(conditions);
    this.notChecked = Collections.unmodifiableList(notChecked);
  }

  static Checks of(Passage passage) {
    List<Condition> list = new ArrayList<>();
    List<String> open = new ArrayList<>();
    list.add(new DaylightCheck(passage));
    list.add(new ShareCheck(passage));
    if (passage.limits().hasReserve()) {
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
      open.add("dangers");
    }
    if (passage.lanes().isPresent()) {
      passage.lanes().get().forEach(lane -> list.add(new LaneCheck(passage, lane)));
    } else {
      open.add("lanes and fairways");
    }
    if (passage.limits().hasTimeAfloat()) {
      list.add(new TimeAfloatCheck(passage));
    }
    list.add(new TablesCheck(passage));
    if (passage.variation().isPresent()) {
      list.add(new VariationCheck(passage));
    } else {
      open.add("variation");
    }
    if (!passage.wind().isPresent()) {
      open.add("wind");
    }
    list.addAll(passage.conditions());
    Candidates shared = new Candidates(passage);
    for (Condition condition : list) {
      if (condition instanceof PassageCheck own) {
        own.share(shared);
      }
    }
    return new Checks(list, open);
  }

  private static void addLandings(Passage passage, List<Condition> list) {
    int last = passage.wayPoints().size() - 1;
    for (int i = 0; i <= last; i++) {
      WayPoint place = passage.wayPoints().get(i);
      boolean used = i == 0 || i == last || place.stop().isPresent();
      if (used && place.landing().isPresent()) {
        list.add(new LandingCheck(passage, i, place.landing().get()));
      }
    }
  }

  List<Condition> conditions() {
    return conditions;
  }

  /** What nobody looked at, for the line at the top of everything printed. */
  List<String> notChecked() {
    return notChecked;
  }

  List<Verdict> check(Candidate candidate) {
    List<Verdict> verdicts = new ArrayList<>(conditions.size());
    for (Condition condition : conditions) {
      verdicts.add(
          condition instanceof PassageCheck own
              ? own.check(candidate)
              : condition.check(candidate.route));
    }
    return verdicts;
  }

  /** Not more than the usual share of the paddling speed against what sets across. */
  private static final class ShareCheck extends PassageCheck {
    ShareCheck(Passage passage) {
      super("share of the speed spent against the stream across", passage);
    }

    @Override
    Verdict check(Candidate candidate) {
      SteeredLeg worst = candidate.route.legs().get(0);
      for (SteeredLeg leg : candidate.route.legs()) {
        worst = leg.crossStreamShare() > worst.crossStreamShare() ? leg : worst;
      }
      SteeringLimits usual = SteeringLimits.USUAL;
      return Verdict.of(
              name(),
              100.0 * worst.crossStreamShare(),
              "in the hundred",
              100.0 * usual.warnAbove(),
              100.0 * usual.refuseAbove())
          .at(worst.departure())
          .at(worst.leg().start());
    }
  }

  private static final class ReserveCheck extends PassageCheck {
    ReserveCheck(Passage passage) {
      super("reserve of speed", passage);
    }

    @Override
    Verdict check(Candidate candidate) {
      SteeredLeg worst = candidate.route.legs().get(0);
      for (SteeredLeg leg : candidate.route.legs()) {
        worst = leg.reserve().compareTo(worst.reserve()) < 0 ? leg : worst;
      }
      PassageLimits limits = passage().limits();
      return Verdict.of(
              name(),
              worst.reserve().knots(),
              "knots",
              WaterChecks.knots(limits.reserveWarning()),
              WaterChecks.knots(limits.reserveStop()))
          .at(worst.departure())
          .at(worst.leg().start());
    }
  }

  /** The longest time in the boat between two stops ashore, for the slower party. */
  private static final class TimeAfloatCheck extends PassageCheck {
    TimeAfloatCheck(Passage passage) {
      super("time afloat without a stop", passage);
    }

    @Override
    Verdict check(Candidate candidate) {
      return candidate
          .slower()
          .match(
              route -> {
                double longest = 0.0;
                double began = EpochSeconds.of(route.departure());
                for (int i = 0; i < route.legs().size(); i++) {
                  double arrival = EpochSeconds.of(route.legs().get(i).arrival());
                  longest = Math.max(longest, arrival - began);
                  if (i + 1 < route.legs().size()
                      && passage().wayPoints().get(i + 1).stop().isPresent()) {
                    began = EpochSeconds.of(route.legs().get(i + 1).departure());
                  }
                }
                PassageLimits limits = passage().limits();
                return Verdict.of(
                    name(),
                    longest / 60.0,
                    "minutes for the slower party",
                    limits.timeAfloatWarning() / 60.0,
                    limits.timeAfloatStop() / 60.0);
              },
              why ->
                  Verdict.notChecked(
                      name(), "the slower party does not get there: " + why.message()));
    }
  }

  /** What was doubted about the tables and places the passage was built from. */
  private static final class TablesCheck extends PassageCheck {
    TablesCheck(Passage passage) {
      super("tables and places", passage);
    }

    @Override
    Verdict check(Candidate candidate) {
      return byWorst(name(), passage().notes());
    }
  }

  /** A model in force, a compass that works there, a rose that is not too old. */
  private static final class VariationCheck extends PassageCheck {
    VariationCheck(Passage passage) {
      super("variation", passage);
    }

    @Override
    Verdict check(Candidate candidate) {
      LocalDate date = candidate.route.departure().atZone(ZoneOffset.UTC).toLocalDate();
      VariationSource source = passage().variation().orElseThrow(IllegalStateException::new);
      List<Note> notes = new ArrayList<>();
      for (WayPoint place : passage().wayPoints()) {
        notes.addAll(source.at(place.position(), date).notes());
      }
      return byWorst(name(), notes);
    }
  }

  private static Verdict byWorst(String name, List<Note> notes) {
    Note worst = null;
    for (Note note : notes) {
      if (worst == null || note.severity().compareTo(worst.severity()) > 0) {
        worst = note;
      }
    }
    if (worst == null || worst.severity() == Severity.INFORMATION) {
      return Verdict.within(name, "nothing doubted");
    }
    return worst.severity() == Severity.WARNING
        ? Verdict.stopped(name, worst.text())
        : Verdict.warned(name, worst.text());
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
