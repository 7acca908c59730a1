package org.ferryglide.nav.teach;

import java.util.ArrayList;
import java.util.Arrays;
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
        if (found.isEmpty()) {
          found.addAll(search.explanations);
          chance = search.chance;
        }
        if (search.explanations.isEmpty()) {
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
    final List<Explanation> explanations = new ArrayList<>();
    final double chance;
    private final int line;
    private final double value;
    private final double[] carried;
    private final double right;
    private final List<List<SlipRule>> matching = new ArrayList<>();

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
      if (explanations.isEmpty()) {
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
        explanations.clear();
        matching.clear();
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
        explanations.add(new Explanation(lines.get(line).name(), named, reached));
        matching.add(made);
      }
      return true;
    }

    /** Likeliest first; of equally likely ones the nearer. */
    private void sort() {
      Quantity quantity = lines.get(line).quantity();
      explanations.sort(
          (a, b) -> {
            int byLikelihood = Double.compare(b.likelihood(), a.likelihood());
            return byLikelihood != 0
                ? byLikelihood
                : Double.compare(
                    Math.abs(quantity.difference(a.value(), value)),
                    Math.abs(quantity.difference(b.value(), value)));
          });
    }

    /** The slips of the likeliest explanation, which later figures may show again. */
    List<SlipRule> first() {
      if (explanations.isEmpty()) {
        return List.of();
      }
      List<Slip> likeliest = explanations.get(0).slips();
      for (List<SlipRule> made : matching) {
        List<Slip> named = new ArrayList<>();
        made.forEach(slip -> named.add(slip.slip()));
        if (named.equals(likeliest)) {
          return made;
        }
      }
      return List.of();
    }
  }
}
