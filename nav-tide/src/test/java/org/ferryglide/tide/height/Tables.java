package org.ferryglide.tide.height;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.water.Found;

/** Tables for tests; times count from {@link #MIDNIGHT}. */
final class Tables {
  static final Instant MIDNIGHT = Instant.parse("2026-06-01T00:00:00Z");

  private Tables() {}

  /** Hours and heights in turn; the kinds follow from the first two heights. */
  static TideTable ofHours(String port, double... hoursAndHeights) {
    List<TideEvent> events = new ArrayList<>();
    boolean high = hoursAndHeights[1] > hoursAndHeights[3];
    for (int i = 0; i < hoursAndHeights.length; i += 2) {
      events.add(
          new TideEvent(
              atHour(hoursAndHeights[i]),
              Distance.ofMetres(hoursAndHeights[i + 1]),
              high ? TideEvent.Kind.HIGH : TideEvent.Kind.LOW));
      high = !high;
    }
    return TideTable.of(port, "chart datum", events);
  }

  static Instant atHour(double hours) {
    return MIDNIGHT.plusMillis(Math.round(hours * 3.6e6));
  }

  /** Every passing of a level, either way. */
  static Found<TideCrossing> crossings(TideCurve curve, double level, Instant from, Instant to) {
    Distance height = Distance.ofMetres(level);
    Found<Instant> rising = curve.timesRisingTo(height, from, to);
    List<TideCrossing> crossings = new ArrayList<>();
    rising.forEach(time -> crossings.add(new TideCrossing(time, true)));
    curve
        .timesFallingTo(height, from, to)
        .forEach(time -> crossings.add(new TideCrossing(time, false)));
    crossings.sort(Comparator.comparing(TideCrossing::time));
    return Found.of(crossings, rising.asked(), rising.seen(), rising.notes());
  }

  /** One curve of every kind. */
  static List<TableCurve> curvesThrough(TideTable table) {
    NormalisedCurve springs =
        NormalisedCurve.ofEvenSteps(
            new double[] {0, 0.22, 0.62, 0.93, 1}, new double[] {1, 0.96, 0.70, 0.24, 0});
    NormalisedCurve neaps =
        NormalisedCurve.of(
            new double[] {0, 0.3, 1}, new double[] {0, 0.2, 1},
            new double[] {0, 0.6, 1}, new double[] {1, 0.5, 0});
    return List.of(
        TableCurve.twelfths(table),
        TableCurve.twelfthsByTheHour(table),
        TableCurve.cosine(table),
        TableCurve.smooth(table),
        TableCurve.normalised(table, springs),
        TableCurve.normalised(
            table, springs, neaps, new MeanRanges(Distance.ofMetres(4.0), Distance.ofMetres(2.0))));
  }

  /** Tables of 2 to 12 waters, 20 minutes to 17 hours apart, ranges from 0.1 to 9 m. */
  static Arbitrary<TideTable> any() {
    Arbitrary<double[]> step =
        Combinators.combine(
                Arbitraries.doubles().between(0.34, 17.0).ofScale(6),
                Arbitraries.doubles().between(0.1, 9.0).ofScale(6))
            .as((hours, metres) -> new double[] {hours, metres});
    return Combinators.combine(step.list().ofMinSize(1).ofMaxSize(11), Arbitraries.of(true, false))
        .as(Tables::fromSteps);
  }

  private static TideTable fromSteps(List<double[]> steps, boolean risingFirst) {
    double[] values = new double[2 * steps.size() + 2];
    values[1] = 3.0;
    double sign = risingFirst ? 1.0 : -1.0;
    for (int i = 0; i < steps.size(); i++) {
      values[2 * i + 2] = values[2 * i] + steps.get(i)[0];
      values[2 * i + 3] = values[2 * i + 1] + sign * steps.get(i)[1];
      sign = -sign;
    }
    return ofHours("Skarra", values);
  }
}
