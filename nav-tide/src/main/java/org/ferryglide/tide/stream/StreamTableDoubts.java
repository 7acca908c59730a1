package org.ferryglide.tide.stream;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.reading.Judgement;
import org.ferryglide.tide.sheet.Plausibility;
import org.ferryglide.tide.sheet.TideJudgements;

/** What looks wrong in the rows of an hourly stream table. */
final class StreamTableDoubts {

  /**
   * A row, or a whole table, that looks wrong.
   *
   * @param row index of the row; -1 for the table as a whole
   * @param judgement why
   * @param text one sentence
   */
  record Doubt(int row, Judgement judgement, String text) {}

  private StreamTableDoubts() {}

  /** Doubts about rows in order of their hours. */
  static List<Doubt> of(List<StreamHour> rows) {
    double[] spring = rows.stream().mapToDouble(row -> row.springRate().knots()).toArray();
    double[] neap = rows.stream().mapToDouble(row -> row.neapRate().knots()).toArray();
    double[] sets = rows.stream().mapToDouble(row -> row.set().degrees()).toArray();
    List<Doubt> doubts = new ArrayList<>();
    boolean swapped = areSwapped(rows);
    if (swapped) {
      doubts.add(
          new Doubt(
              -1,
              TideJudgements.RATES_SWAPPED,
              "in most rows the neap rate is above the spring rate, as if the two columns were"
                  + " exchanged."));
    }
    boolean wholeTide = rows.size() >= StreamTable.COMPLETE_ROWS;
    if (wholeTide && Plausibility.neverTurns(sets, spring)) {
      doubts.add(
          new Doubt(-1, TideJudgements.NEVER_TURNS, "the ebb sets as the flood does in all rows."));
    }
    for (int i = 0; i < spring.length; i++) {
      if (!swapped && neap[i] > spring[i]) {
        doubts.add(neapAboveSpring(i, neap[i], spring[i]));
      }
      if (Plausibility.rateIsFar(spring, i) || Plausibility.rateIsFar(neap, i)) {
        doubts.add(
            new Doubt(
                i,
                TideJudgements.RATE_FAR,
                "the rate of " + kn(spring[i]) + " is far above the hours beside it."));
      }
      if (Math.max(spring[i], neap[i]) > TideJudgements.RATE_BEYOND_KNOWN.threshold()) {
        doubts.add(beyondKnown(i, Math.max(spring[i], neap[i])));
      }
      if (Plausibility.setIsTurnedForAnHour(sets, spring, i)) {
        doubts.add(
            new Doubt(
                i,
                TideJudgements.SET_TURNED_FOR_AN_HOUR,
                "the set of "
                    + rows.get(i).set().threeDigits()
                    + " is turned round from the hours before and after."));
      }
    }
    return doubts;
  }

  /** Doubts about the ranges of the port that a table counts from. */
  static List<Doubt> ofRanges(StandardPort port) {
    return Plausibility.neapRangeIsSmall(port.neapRangeMetres(), port.springRangeMetres())
        ? List.of(
            new Doubt(
                -1,
                TideJudgements.NEAP_RANGE_SMALL,
                "the neap range of "
                    + port.neapRangeMetres()
                    + " m is very small beside the spring range of "
                    + port.springRangeMetres()
                    + " m."))
        : List.of();
  }

  /** Doubts about a pilot's turns in order of their times. */
  static List<Doubt> ofPilot(List<PilotTurn> turns) {
    double[] spring = turns.stream().mapToDouble(turn -> turn.springRate().knots()).toArray();
    double[] sets = turns.stream().mapToDouble(turn -> turn.set().degrees()).toArray();
    List<Doubt> doubts = new ArrayList<>();
    if (Plausibility.neverTurns(sets, spring)) {
      doubts.add(
          new Doubt(-1, TideJudgements.NEVER_TURNS, "the streams of all turns set the same way."));
    }
    for (int i = 0; i < spring.length; i++) {
      double neap = turns.get(i).neapRate().map(Speed::knots).orElse(0.0);
      if (neap > spring[i]) {
        doubts.add(neapAboveSpring(i, neap, spring[i]));
      }
      if (Math.max(spring[i], neap) > TideJudgements.RATE_BEYOND_KNOWN.threshold()) {
        doubts.add(beyondKnown(i, Math.max(spring[i], neap)));
      }
    }
    return doubts;
  }

  private static Doubt neapAboveSpring(int row, double neap, double spring) {
    return new Doubt(
        row,
        TideJudgements.NEAP_ABOVE_SPRING,
        "the neap rate of " + kn(neap) + " is above the spring rate of " + kn(spring) + ".");
  }

  static Doubt beyondKnown(int row, double knots) {
    return new Doubt(
        row,
        TideJudgements.RATE_BEYOND_KNOWN,
        "a rate of " + kn(knots) + " is faster than nearly all streams known.");
  }

  /** Whether the rates stand in each other's places. */
  static boolean areSwapped(List<StreamHour> rows) {
    return Plausibility.shareOfNeapAboveSpring(
            rows.stream().mapToDouble(row -> row.springRate().knots()).toArray(),
            rows.stream().mapToDouble(row -> row.neapRate().knots()).toArray())
        > TideJudgements.RATES_SWAPPED.threshold();
  }

  static String kn(double knots) {
    return Math.rint(knots * 100.0) / 100.0 + " kn";
  }
}
