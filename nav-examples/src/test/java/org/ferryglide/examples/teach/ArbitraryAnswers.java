package org.ferryglide.examples.teach;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.ferryglide.nav.teach.Explanation;
import org.ferryglide.nav.teach.Marking;
import org.ferryglide.nav.teach.Problem;
import org.ferryglide.nav.teach.Quantity;
import org.ferryglide.nav.teach.Slip;

/**
 * Marks answers that nobody's slip made, even over the span in which answers lie, and counts how
 * many are explained; beside it what the bands of one tolerance about every slip's answer cover,
 * and what the marking itself states.
 */
final class ArbitraryAnswers {
  /** What was counted of one kind of problem. */
  static final class Count {
    int wrong;
    int single;
    int pair;
    double predicted;

    /** Sum of the chances stated where a single slip explains. */
    double statedSingle;

    /** Sum of the chances that pairs explain what no single slip does, by what is stated. */
    double statedPair;

    /** The greatest share of arbitrary answers that pairs explain where one was offered. */
    double greatestPairShare;

    /** The greatest difference between two chances stated for single slips of one problem. */
    double statedUnlike;

    double share(int of) {
      return (double) of / wrong;
    }

    /**
     * Five standard deviations of a binomial share counted over the draws, and one draw for its
     * steps: passed by chance once in two million. Unlike chances of several problems spread less.
     */
    double noise(double share) {
      return 5.0 * Math.sqrt(share * (1.0 - share) / wrong) + 1.0 / wrong;
    }
  }

  private final Map<String, Count> kinds = new TreeMap<>();
  private final SeededRandom random;

  ArbitraryAnswers(long seed) {
    random = new SeededRandom(seed);
  }

  /** About that many answers, spread over all kinds; each problem takes a few. */
  ArbitraryAnswers drawn(int answers) {
    int each = 5;
    int done = 0;
    for (long seed = random.nextInt(1 << 20); done < answers; seed++) {
      for (Problem problem : DrawnProblems.of(seed)) {
        Count count =
            kinds.computeIfAbsent(problem.title().replaceAll("[0-9]+", "…"), k -> new Count());
        double covered = covered(problem);
        double stated = stated(problem);
        for (int i = 0; i < each; i++, done++) {
          double half = span(problem.quantity(problem.asked()), problem.answer());
          mark(problem, problem.answer() + random.nextDouble(-half, half), covered, stated, count);
        }
      }
    }
    return this;
  }

  private static void mark(
      Problem problem, double answer, double covered, double stated, Count count) {
    Marking marking = problem.mark(answer);
    if (marking.isRight()) {
      return;
    }
    count.wrong++;
    count.predicted += covered;
    count.statedSingle += stated;
    List<Explanation> found = marking.explanations();
    if (!found.isEmpty() && found.get(0).slips().size() == 1) {
      count.single++;
      count.statedUnlike = Math.max(count.statedUnlike, Math.abs(marking.chance() - stated));
      return;
    }
    // no single slip explains it, so the chance holds the pairs as well, if they are offered
    double pairs = marking.chance() - stated;
    count.statedPair += pairs / (1.0 - stated);
    if (!found.isEmpty()) {
      count.pair++;
      count.greatestPairShare = Math.max(count.greatestPairShare, pairs);
    }
  }

  /** The chance that the marking states with every answer a single slip explains. */
  private static double stated(Problem problem) {
    for (Slip slip : problem.slips()) {
      double reached = problem.answerAfter(slip);
      if (Double.isFinite(reached)) { // some slips leave a triangle that cannot be closed
        Marking marking = problem.mark(reached);
        if (!marking.isRight()) {
          return marking.chance();
        }
      }
    }
    return 0.0;
  }

  Map<String, Count> kinds() {
    return kinds;
  }

  Count all() {
    Count all = new Count();
    for (Count kind : kinds.values()) {
      all.wrong += kind.wrong;
      all.single += kind.single;
      all.pair += kind.pair;
      all.predicted += kind.predicted;
      all.statedSingle += kind.statedSingle;
      all.statedPair += kind.statedPair;
      all.greatestPairShare = Math.max(all.greatestPairShare, kind.greatestPairShare);
      all.statedUnlike = Math.max(all.statedUnlike, kind.statedUnlike);
    }
    return all;
  }

  /** The share of wrong answers within one tolerance of what some slip leads to. */
  private static double covered(Problem problem) {
    Quantity quantity = problem.quantity(problem.asked());
    double right = problem.answer();
    double tolerance = quantity.tolerance();
    double half = span(quantity, right);
    List<double[]> bands = new ArrayList<>();
    for (Slip slip : problem.slips()) {
      double off = quantity.difference(problem.answerAfter(slip), right);
      if (Math.abs(off) > tolerance) {
        for (int turn = quantity.isBearing() ? -1 : 0;
            turn <= (quantity.isBearing() ? 1 : 0);
            turn++) {
          bands.add(new double[] {off + 360.0 * turn - tolerance, off + 360.0 * turn + tolerance});
        }
      }
    }
    bands.sort(Comparator.comparingDouble(band -> band[0]));
    double covered = 0.0;
    double end = -half;
    for (double[] band : bands) {
      double from = Math.max(band[0], end);
      double to = Math.min(band[1], half);
      if (to > from) {
        covered += to - from - overlap(from, to, tolerance);
        end = to;
      }
    }
    return covered / (2.0 * half - 2.0 * tolerance);
  }

  /** What of a band would be right, not wrong. */
  private static double overlap(double from, double to, double tolerance) {
    return Math.max(0.0, Math.min(to, tolerance) - Math.max(from, -tolerance));
  }

  /** The spans that the marking takes arbitrary wrong answers from, written out again. */
  private static double span(Quantity quantity, double right) {
    return switch (quantity) {
      case CLOCK -> 360.0;
      case METRES -> 4.0;
      case MINUTES -> Math.max(120.0, Math.abs(right));
      case NAUTICAL_MILES -> Math.max(2.0, Math.abs(right));
      case KNOTS -> Math.max(3.0, Math.abs(right));
      default -> 180.0;
    };
  }

  /** The figures by kind. */
  public static void main(String[] arguments) {
    ArbitraryAnswers answers = new ArbitraryAnswers(1).drawn(Integer.parseInt(arguments[0]));
    for (Map.Entry<String, Count> kind : answers.kinds().entrySet()) {
      print(kind.getKey(), kind.getValue());
    }
    print("all", answers.all());
  }

  private static void print(String name, Count count) {
    System.out.printf(
        Locale.ROOT,
        "%-45s %7d wrong  single %.4f predicted %.4f stated %.4f  pairs %.4f stated %.4f"
            + " at most %.4f%n",
        name,
        count.wrong,
        count.share(count.single),
        count.predicted / count.wrong,
        count.statedSingle / count.wrong,
        count.share(count.pair),
        count.statedPair / count.wrong,
        count.greatestPairShare);
  }
}
