package org.ferryglide.tide.stream;

import java.util.function.IntFunction;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.tide.sheet.Plausibility;
import org.ferryglide.tide.sheet.Sheet;
import org.ferryglide.tide.sheet.TideJudgements;

/** Judges each cell of a gridded sheet along its times. */
final class GridDoubts {
  private static final double HOUR_SECONDS = 3600.0;

  private GridDoubts() {}

  /**
   * Doubts rows of one place.
   *
   * @param times of the grid, seconds
   * @param east parts of the place at those times, metres a second; NaN where missing
   * @param north the same to the north
   * @param rows the row of a time
   */
  static void judge(double[] times, double[] east, double[] north, IntFunction<Sheet.Row> rows) {
    double[] knots = new double[times.length];
    double[] sets = new double[times.length];
    for (int t = 0; t < times.length; t++) {
      boolean known = !Double.isNaN(east[t]);
      Velocity flow = known ? Velocity.ofEastAndNorth(east[t], north[t]) : Velocity.STILL;
      knots[t] = known ? flow.rate().knots() : Double.NaN;
      sets[t] = flow.set().degrees();
    }
    for (int t = 0; t < times.length; t++) {
      if (knots[t] > TideJudgements.RATE_BEYOND_KNOWN.threshold()) {
        StreamTableDoubts.Doubt doubt = StreamTableDoubts.beyondKnown(t, knots[t]);
        rows.apply(t).doubt("time", doubt.judgement(), doubt.what());
      }
      if (!isByTheHour(times, t)) {
        continue; // between longer steps a stream may well come and go
      }
      if (Plausibility.rateIsFar(knots, t)) {
        rows.apply(t).doubt("time", TideJudgements.RATE_FAR, StreamTableDoubts.rateFar(knots[t]));
      }
      if (Plausibility.setIsTurnedForAnHour(sets, knots, t)) {
        rows.apply(t)
            .doubt(
                "time",
                TideJudgements.SET_TURNED_FOR_AN_HOUR,
                StreamTableDoubts.setTurned(TrueBearing.ofDegrees(sets[t])));
      }
    }
  }

  private static boolean isByTheHour(double[] times, int t) {
    return t > 0
        && t + 1 < times.length
        && times[t] - times[t - 1] <= HOUR_SECONDS
        && times[t + 1] - times[t] <= HOUR_SECONDS;
  }
}
