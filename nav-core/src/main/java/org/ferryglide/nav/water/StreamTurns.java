package org.ferryglide.nav.water;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.measure.Velocity;

/** Finds the turns of a stream and its least rates in a series of samples. */
final class StreamTurns {
  private final StreamSeries series;

  StreamTurns(StreamSeries series) {
    this.series = series;
  }

  /**
   * Turns: a spell of stream lasts until the stream runs more against than with its strongest
   * moment; between the strongest moments of two spells lies the turn.
   */
  List<StreamTurn> turns() {
    List<StreamTurn> turns = new ArrayList<>();
    int strongestBefore = -1;
    int strongest = -1;
    int firstOfSpell = 0;
    for (int i = 0; i <= series.count(); i++) {
      boolean data = i < series.count() && series.hasData(i);
      boolean turned = data && strongest >= 0 && along(strongest, i) < 0.0;
      if (!data || turned) {
        if (strongestBefore >= 0 && strongest >= 0) {
          turns.add(turn(strongestBefore, firstOfSpell, strongest));
        }
        strongestBefore = data ? strongest : -1;
        strongest = data ? i : -1;
        firstOfSpell = i;
      } else if (strongest < 0 || series.rateSquared(i) > series.rateSquared(strongest)) {
        strongest = i;
      }
    }
    return List.copyOf(turns);
  }

  private double along(int i, int j) {
    return series.east(i) * series.east(j) + series.north(i) * series.north(j);
  }

  private StreamTurn turn(int before, int firstAfter, int after) {
    int least = before;
    int last = before; // of a stretch of equally little stream
    for (int i = before; i <= after; i++) {
      double rate = series.rateSquared(i);
      if (rate < series.rateSquared(least)) {
        least = i;
        last = i;
      } else if (rate == series.rateSquared(least) && i == last + 1) {
        last = i;
      }
    }
    double time;
    if (last > least + 1) {
      boolean atAStroke = along(firstAfter - 1, firstAfter) < 0.0;
      time =
          atAStroke
              ? stroke(firstAfter, after)
              : series.time(least) + (series.time(last) - series.time(least)) / 2.0;
    } else {
      boolean apart = Math.abs(firstAfter - least) > 2;
      boolean atAStroke = apart && along(firstAfter - 1, firstAfter) < 0.0;
      time = atAStroke ? stroke(firstAfter, after) : series.extremeNear(least, -1.0);
    }
    return new StreamTurn(
        EpochSeconds.toInstant(time),
        series.moment(time).stream().rate(),
        flow(before).set(),
        flow(after).set());
  }

  /** When the stream comes to run more with the next spell than against it. */
  private double stroke(int firstAfter, int after) {
    double east = series.east(after);
    double north = series.north(after);
    return series.changeBefore((t, e, n) -> e * east + n * north > 0.0, firstAfter);
  }

  private Velocity flow(int i) {
    return Velocity.ofEastAndNorth(series.east(i), series.north(i));
  }

  /** Least rates between two greater ones; of a stretch of equal ones the middle. */
  List<StreamMoment> leastRates() {
    List<StreamMoment> moments = new ArrayList<>();
    int fallenTo = -1; // first of the stretch that the rate has fallen to
    for (int i = 1; i < series.count(); i++) {
      if (!series.hasData(i) || !series.hasData(i - 1)) {
        fallenTo = -1;
      } else if (series.rateSquared(i) < series.rateSquared(i - 1)) {
        fallenTo = i;
      } else if (series.rateSquared(i) > series.rateSquared(i - 1)) {
        if (fallenTo >= 0) {
          boolean stretch = i - 1 > fallenTo + 1;
          double time =
              stretch
                  ? (series.time(fallenTo) + series.time(i - 1)) / 2.0
                  : series.extremeNear(fallenTo, -1.0);
          moments.add(series.moment(time));
        }
        fallenTo = -1;
      }
    }
    return List.copyOf(moments);
  }
}
