package org.ferryglide.tide.stream;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.reading.Judgement;
import org.ferryglide.tide.sheet.Plausibility;
import org.ferryglide.tide.sheet.TideJudgements;
import org.jspecify.annotations.Nullable;

/** What looks wrong in the rows of an hourly stream table. */
final class StreamTableDoubts {

  /**
   * A row, or a whole table, that looks wrong.
   *
   * @param row index of the row; -1 for the table as a whole
   * @param judgement why
   * @param what one sentence
   */
  record Doubt(int row, Judgement judgement, Note what) {
    /** With where it stands in front. */
    Note note(Note place) {
      return TideJudgements.note(judgement, place, what);
    }
  }

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
              Note.information(
                  "doubt.rates-swapped",
                  "in most rows the neap rate is above the spring rate, as if the two columns were"
                      + " exchanged.")));
    }
    boolean wholeTide = rows.size() >= StreamTable.COMPLETE_ROWS;
    if (wholeTide && Plausibility.neverTurns(sets, spring)) {
      doubts.add(neverTurns());
    }
    for (int i = 0; i < spring.length; i++) {
      if (!swapped && neap[i] > spring[i]) {
        doubts.add(neapAboveSpring(i, neap[i], spring[i]));
      }
      boolean springIsFar = Plausibility.rateIsFar(spring, i);
      if (springIsFar || Plausibility.rateIsFar(neap, i)) {
        doubts.add(
            new Doubt(i, TideJudgements.RATE_FAR, rateFar(springIsFar ? spring[i] : neap[i])));
      }
      if (Math.max(spring[i], neap[i]) > TideJudgements.RATE_BEYOND_KNOWN.threshold()) {
        doubts.add(beyondKnown(i, Math.max(spring[i], neap[i])));
      }
      if (Plausibility.setIsTurnedForAnHour(sets, spring, i)) {
        doubts.add(
            new Doubt(i, TideJudgements.SET_TURNED_FOR_AN_HOUR, setTurned(rows.get(i).set())));
      }
    }
    return doubts;
  }

  /** Doubts about the ranges of the port that a table counts from. */
  static List<Doubt> ofRanges(StandardPort port) {
    return Plausibility.neapRangeIsSmall(
            port.meanRanges().neap().metres(), port.meanRanges().spring().metres())
        ? List.of(
            new Doubt(
                -1,
                TideJudgements.NEAP_RANGE_SMALL,
                Note.information(
                        "doubt.neap-range",
                        "the neap range of "
                            + port.meanRanges().neap().metres()
                            + " m is very small beside the spring range of "
                            + port.meanRanges().spring().metres()
                            + " m.")
                    .with("neapRange", Double.toString(port.meanRanges().neap().metres()))
                    .with("springRange", Double.toString(port.meanRanges().spring().metres()))))
        : List.of();
  }

  /** Doubts about a pilot's turns in order of their times. */
  static List<Doubt> ofPilot(List<PilotTurn> turns) {
    double[] spring = turns.stream().mapToDouble(turn -> turn.springRate().knots()).toArray();
    double[] sets = turns.stream().mapToDouble(turn -> turn.set().degrees()).toArray();
    List<Doubt> doubts = new ArrayList<>();
    if (Plausibility.neverTurns(sets, spring)) {
      doubts.add(
          new Doubt(
              -1,
              TideJudgements.NEVER_TURNS,
              Note.information(
                  "doubt.turns-one-way", "the streams of all turns set the same way.")));
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
        Note.information(
                "doubt.neap-above-spring",
                "the neap rate of "
                    + rate(neap)
                    + " kn is above the spring rate of "
                    + rate(spring)
                    + " kn.")
            .with("neapRate", rate(neap))
            .with("springRate", rate(spring)));
  }

  /** A line of a file; the first is 1. */
  record Line(String file, int number) {
    /** The line of a number; null where there is none. */
    static @Nullable Line of(String file, @Nullable Integer number) {
      return number == null ? null : new Line(file, number);
    }
  }

  /**
   * Where a doubt about a whole table stands.
   *
   * @param line null where the table was read from no file
   */
  static Note place(String station, @Nullable Line line) {
    return note("doubt.station", station, station, line);
  }

  /**
   * Where a doubt about a row stands.
   *
   * @param kind what names the row, {@code hour}, {@code at} or {@code turn at}
   * @param row the row's hour or time
   * @param line null where the table was read from no file
   */
  static Note place(String station, String kind, String row, @Nullable Line line) {
    String code = "doubt.station-" + kind.replace(' ', '-');
    return note(code, station + ", " + kind + " " + row, station, line).with("row", row);
  }

  private static Note note(String code, String words, String station, @Nullable Line line) {
    Note place =
        line == null
            ? Note.information(code, words)
            : Note.information(code + "-line", line.file + ", line " + line.number + ", " + words)
                .with("file", line.file)
                .with("line", Integer.toString(line.number));
    return place.with("station", station);
  }

  static Doubt neverTurns() {
    return new Doubt(
        -1,
        TideJudgements.NEVER_TURNS,
        Note.information("doubt.never-turns", "the ebb sets as the flood does throughout."));
  }

  static Note rateFar(double knots) {
    return Note.information(
            "doubt.rate", "the rate of " + rate(knots) + " kn is far above those beside it.")
        .with("rate", rate(knots));
  }

  static Note setTurned(TrueBearing set) {
    return Note.information(
            "doubt.set",
            "the set of " + set.threeDigits() + " is turned round from those before and after it.")
        .with("set", set.threeDigits());
  }

  static Doubt beyondKnown(int row, double knots) {
    return new Doubt(
        row,
        TideJudgements.RATE_BEYOND_KNOWN,
        Note.information(
                "doubt.fastest",
                "a rate of " + rate(knots) + " kn is faster than nearly all streams known.")
            .with("rate", rate(knots)));
  }

  /** Whether the rates stand in each other's places. */
  static boolean areSwapped(List<StreamHour> rows) {
    return Plausibility.shareOfNeapAboveSpring(
            rows.stream().mapToDouble(row -> row.springRate().knots()).toArray(),
            rows.stream().mapToDouble(row -> row.neapRate().knots()).toArray())
        > TideJudgements.RATES_SWAPPED.threshold();
  }

  /** In knots, to a hundredth. */
  private static String rate(double knots) {
    return Double.toString(Math.rint(knots * 100.0) / 100.0);
  }
}
