package org.ferryglide.tide.stream;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.tide.sheet.Plausibility;
import org.ferryglide.tide.sheet.TideJudgements;
import org.ferryglide.tide.stream.CurrentEvent.Kind;
import org.ferryglide.tide.stream.StreamTableDoubts.Doubt;

/** What looks wrong in the maxima of a published current table. */
final class CurrentTableDoubts {
  /** Fewer maxima say little of where flood and ebb set. */
  private static final int FEWEST_MAXIMA = 4;

  private CurrentTableDoubts() {}

  /** Doubts by the index of the event. */
  static List<Doubt> of(CurrentEvent[] events) {
    List<Doubt> doubts = new ArrayList<>();
    List<Integer> maxima = new ArrayList<>();
    for (Kind kind : List.of(Kind.FLOOD, Kind.EBB)) {
      List<Integer> ofKind = new ArrayList<>();
      for (int i = 0; i < events.length; i++) {
        if (events[i].kind() == kind) {
          ofKind.add(i);
        }
      }
      judgeKind(events, ofKind, doubts);
      maxima.addAll(ofKind);
    }
    if (maxima.size() >= FEWEST_MAXIMA
        && Plausibility.neverTurns(sets(events, maxima), knots(events, maxima))) {
      doubts.add(StreamTableDoubts.neverTurns());
    }
    return doubts;
  }

  private static void judgeKind(CurrentEvent[] events, List<Integer> ofKind, List<Doubt> doubts) {
    double[] knots = knots(events, ofKind);
    double[] sets = sets(events, ofKind);
    for (int i = 0; i < knots.length; i++) {
      int event = ofKind.get(i);
      if (Plausibility.maximumIsFar(knots, i)) {
        doubts.add(new Doubt(event, TideJudgements.RATE_FAR, StreamTableDoubts.rateFar(knots[i])));
      }
      if (knots[i] > TideJudgements.RATE_BEYOND_KNOWN.threshold()) {
        doubts.add(StreamTableDoubts.beyondKnown(event, knots[i]));
      }
      if (Plausibility.setIsTurnedForAnHour(sets, knots, i)) {
        doubts.add(
            new Doubt(
                event,
                TideJudgements.SET_TURNED_FOR_AN_HOUR,
                StreamTableDoubts.setTurned(events[event].set())));
      }
    }
  }

  private static double[] knots(CurrentEvent[] events, List<Integer> which) {
    return which.stream().mapToDouble(i -> events[i].rate().knots()).toArray();
  }

  private static double[] sets(CurrentEvent[] events, List<Integer> which) {
    return which.stream().mapToDouble(i -> events[i].set().degrees()).toArray();
  }
}
