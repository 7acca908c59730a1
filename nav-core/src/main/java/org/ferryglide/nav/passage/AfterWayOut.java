package org.ferryglide.nav.passage;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.timing.Condition;
import org.ferryglide.nav.timing.Verdict;

/** What depends on the way paddled before a way point is left, to be asked of what follows. */
final class AfterWayOut {
  private AfterWayOut() {}

  /** A condition of the program's own, which knows the whole passage only. */
  static Condition whole(Condition own, List<SteeredLeg> wayOut) {
    return new Condition() {
      @Override
      public String name() {
        return own.name();
      }

      @Override
      public Note about() {
        return own.about();
      }

      @Override
      public Verdict check(SteeredRoute route) {
        List<SteeredLeg> legs = new ArrayList<>(wayOut);
        legs.addAll(route.legs());
        return own.check(SteeredRoute.of(legs));
      }
    };
  }

  /**
   * The time afloat until the next stop, counted from the last one before the way point.
   *
   * @param part what follows
   * @param sinceSeconds when the party was last ashore
   */
  static Condition timeAfloat(Passage part, double sinceSeconds) {
    Note about = Note.information("check.time-afloat-since", "time afloat since the last stop");
    int ashore = 1;
    while (ashore < part.legs().size() && !part.wayPoints().get(ashore).stop().isPresent()) {
      ashore++;
    }
    int legs = ashore;
    return new Condition() {
      @Override
      public String name() {
        return about.text();
      }

      @Override
      public Note about() {
        return about;
      }

      @Override
      public Verdict check(SteeredRoute route) {
        double arrival = EpochSeconds.of(route.legs().get(legs - 1).arrival());
        return Verdict.of(
            about,
            (arrival - sinceSeconds) / 60.0,
            "minutes",
            part.limits().warning(PassageLimits.TIME_AFLOAT) / 60.0,
            part.limits().stop(PassageLimits.TIME_AFLOAT) / 60.0);
      }
    };
  }
}
