package org.ferryglide.nav.teach;

import java.util.List;
import java.util.function.IntConsumer;
import org.ferryglide.nav.basics.Angles;

/** One run through the lines of a problem: exact or rounded, with or without slips. */
final class Chain implements Figures {
  private final List<Line> lines;
  private final double[] values;
  private final boolean byHand;
  private int known;
  private IntConsumer reads = index -> {};

  private Chain(List<Line> lines, boolean byHand) {
    this.lines = lines;
    this.values = new double[lines.size()];
    this.byHand = byHand;
  }

  /**
   * Works all lines.
   *
   * @param lines the lines in order
   * @param byHand whether every line is rounded before the next one uses it
   * @param written what a learner wrote for each line, NaN where nothing; it is carried on
   * @param slips the slips made on the way
   */
  static Chain worked(List<Line> lines, boolean byHand, double[] written, List<SlipRule> slips) {
    Chain chain = new Chain(lines, byHand);
    for (int i = 0; i < lines.size(); i++) {
      chain.work(i, slips);
      if (written.length > 0 && !Double.isNaN(written[i])) {
        chain.values[i] = written[i];
      }
    }
    return chain;
  }

  /** The values of the lines that one line reads, in the order it reads them. */
  void reading(int index, IntConsumer each) {
    reads = each;
    known = index;
    lines.get(index).rule().from(this);
    reads = read -> {};
  }

  private void work(int i, List<SlipRule> slips) {
    known = i;
    Line line = lines.get(i);
    values[i] = inForm(line, line.rule().from(this));
    known = i + 1; // a slip may start from what the line should be
    for (SlipRule slip : slips) {
      if (slip.slip().figure().equals(line.name())) {
        values[i] = inForm(line, slip.rule().from(this));
      }
    }
  }

  /** What is infinite, as where lines do not cut, is no figure. */
  private double inForm(Line line, double value) {
    if (Double.isInfinite(value)) {
      return Double.NaN;
    }
    double rounded = byHand ? line.quantity().rounded(value) : value;
    return line.quantity().isBearing() ? Angles.reduced(rounded) : rounded;
  }

  double value(int index) {
    return values[index];
  }

  double last() {
    return values[values.length - 1];
  }

  @Override
  public double of(String name) {
    for (int i = known - 1; i >= 0; i--) {
      if (lines.get(i).name().equals(name)) {
        reads.accept(i);
        return values[i];
      }
    }
    throw new IllegalArgumentException("no earlier figure is named \"" + name + "\"");
  }
}
