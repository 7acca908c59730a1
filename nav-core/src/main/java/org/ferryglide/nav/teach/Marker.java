package org.ferryglide.nav.teach;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Finds what explains a learner's figures. */
final class Marker {
  /** A slip that moves an answer by less has no effect on it. */
  static final double NO_EFFECT = 1e-9;

  /** Pairs are offered only where they explain at most this share of arbitrary answers. */
  private static final double PAIRS_EXPLAIN = 0.05;

  private final List<Line> lines;
  private final List<SlipRule> slips;

  Marker(List<Line> lines, List<SlipRule> slips) {
    this.lines = lines;
    this.slips = slips;
  }

  Marking marked(double[] written) {
    int last = lines.size() - 1;
    double right = worked(none(), List.of()).last();
    boolean isRight = fits(last, written[last], right);
    double[] carried = none();
    List<SlipRule> made = new ArrayList<>();
    List<Explanation> found = new ArrayList<>();
    double chance = 0.0;
    List<String> unexplained = new ArrayList<>();
    for (int i = 0; i <= last; i++) {
      if (Double.isNaN(written[i])) {
        continue;
      }
      if (!follows(i, written[i], carried, made)) {
        Search search = new Search(i, written[i], carried, made);
        found.addAll(search.explanations());
        chance = Math.max(chance, search.chance);
        if (search.candidates.isEmpty()) {
          unexplained.add(lines.get(i).name());
        }
        made.addAll(search.first());
      }
      carried[i] = written[i];
    }
    return new Marking(isRight, right, found, unexplained, chance);
  }

  /** Whether a figure follows from those written before it, with the slips found or without. */
  private boolean follows(int i, double value, double[] carried, List<SlipRule> made) {
    return fits(i, value, worked(carried, made).value(i))
        || fits(i, value, worked(carried, List.of()).value(i));
  }

  private boolean fits(int i, double value, double expected) {
    Quantity quantity = lines.get(i).quantity();
    return Math.abs(quantity.difference(value, expected)) <= quantity.tolerance();
  }

  private Chain worked(double[] carried, List<SlipRule> made) {
    return Chain.worked(lines, false, carried, made);
  }

  private double[] none() {
    double[] none = new double[lines.size()];
    Arrays.fill(none, Double.NaN);
    return none;
  }

  /** What explains one figure, given those written before it. */
  private final class Search {
    private final List<Candidate> candidates = new ArrayList<>();
    final double chance;
    private final int line;
    private final double value;
    private final double[] carried;
    private final double right;

    Search(int line, double value, double[] carried, List<SlipRule> made) {
      this.line = line;
      this.value = value;
      this.carried = carried;
      this.right = worked(carried, made).value(line);
      List<SlipRule> possible = new ArrayList<>();
      Bands single = new Bands(lines.get(line).quantity(), right);
      for (SlipRule slip : slips) {
        if (consider(List.of(slip), single)) {
          possible.add(slip);
        }
      }
      double share = single.share();
      if (candidates.isEmpty()) {
        share += pairs(possible, single);
      }
      chance = Math.min(1.0, share);
      sort();
    }

    private double pairs(List<SlipRule> possible, Bands single) {
      Bands pairs = new Bands(lines.get(line).quantity(), right);
      pairs.without(single);
      for (int i = 0; i < possible.size(); i++) {
        for (int j = i + 1; j < possible.size(); j++) {
          if (!possible.get(i).slip().figure().equals(possible.get(j).slip().figure())) {
            consider(List.of(possible.get(i), possible.get(j)), pairs);
          }
        }
      }
      double share = pairs.share();
      if (share > PAIRS_EXPLAIN) {
        candidates.clear();
        return 0.0;
      }
      return share;
    }

    /** Whether the slips have an effect here; keeps them if they lead to the value. */
    private boolean consider(List<SlipRule> made, Bands bands) {
      double reached = worked(carried, made).value(line);
      Quantity quantity = lines.get(line).quantity();
      if (!(Math.abs(quantity.difference(reached, right)) > NO_EFFECT)) {
        return false;
      }
      bands.add(reached);
      if (fits(line, value, reached)) {
        List<Slip> named = new ArrayList<>();
        for (SlipRule slip : made) {
          named.add(slip.slip());
        }
        candidates.add(
            new Candidate(new Explanation(lines.get(line).name(), named, reached), made));
      }
      return true;
    }

    /** Likeliest first; of equally likely ones the nearer. */
    private void sort() {
      Quantity quantity = lines.get(line).quantity();
      candidates.sort(
          Comparator.<Candidate>comparingDouble(it -> -it.explanation.likelihood())
              .thenComparingDouble(
                  it -> Math.abs(quantity.difference(it.explanation.value(), value))));
    }

    List<Explanation> explanations() {
      List<Explanation> explanations = new ArrayList<>();
      candidates.forEach(candidate -> explanations.add(candidate.explanation));
      return explanations;
    }

    /** The slips of the likeliest explanation, which later figures may show again. */
    List<SlipRule> first() {
      return candidates.isEmpty() ? List.of() : candidates.get(0).made;
    }
  }

  /** An explanation and the slips that make it. */
  private record Candidate(Explanation explanation, List<SlipRule> made) {}
}
