package org.ferryglide.nav.passage;

import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.timing.Verdict;

/**
 * A figure looked at along the whole way, of which the worst counts. Between two looks a figure may
 * be a little worse than at either; a parabola through the worst look and its neighbours says by
 * how much.
 */
abstract class WorstAlong extends PassageCheck {
  /**
   * Looks count as even if the nearer neighbour is this part as far off as the other, or more: a
   * parabola through a look just before a jump would rise far above the figure.
   */
  private static final double EVEN = 0.75;

  private final String unit;
  private final double warn;
  private final double stop;
  private final Note missing;
  private final boolean mirrored;

  /**
   * A check.
   *
   * @param warn where a warning begins, as told
   * @param stop where the plan stops, as told; below {@code warn} where small figures are the worse
   * @param missing what is not known where the figure is NaN
   */
  WorstAlong(Note about, Passage passage, String unit, double warn, double stop, Note missing) {
    super(about, passage);
    this.unit = unit;
    this.warn = warn;
    this.stop = stop;
    this.missing = missing;
    this.mirrored = stop < warn;
  }

  /** The figure at a look, as told; NaN if not known; {@link #leftOut} if it has none. */
  abstract double figure(Candidate candidate, int look);

  /**
   * The next look that might be worse than what was found, or not known.
   *
   * @param worst the worst figure so far, as told
   */
  int next(Candidate candidate, int look, double worst) {
    return look + 1;
  }

  /** A figure that is reached somewhere on the way, as told; no more is known of it. */
  double reached(Candidate candidate) {
    return leftOut();
  }

  /** Whether the figure is smooth from look to look, so that its top may lie between two. */
  boolean isSmooth() {
    return true;
  }

  /** What a look answers that does not count. */
  final double leftOut() {
    return mirrored ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
  }

  /** The larger the worse. */
  private double badness(Candidate candidate, int look) {
    double figure = figure(candidate, look);
    return mirrored ? -figure : figure;
  }

  @Override
  final Verdict check(Candidate candidate) {
    int worst = -1;
    double most = Double.NEGATIVE_INFINITY;
    double reached = mirrored ? -reached(candidate) : reached(candidate);
    int unknown = -1;
    for (int i = 0; i < candidate.size; ) {
      double badness = badness(candidate, i);
      if (badness > most) {
        most = badness;
        worst = i;
      } else if (Double.isNaN(badness) && unknown < 0) {
        unknown = i;
      }
      double least = Math.max(most, reached);
      i = next(candidate, i, mirrored ? -least : least);
    }
    double figure = worst < 0 ? Double.NaN : between(candidate, worst, most);
    // what is known to be too much stops, whatever else is not known
    boolean stopped = mirrored ? figure < stop : figure > stop;
    if (unknown >= 0 && !stopped) {
      return at(Verdict.notChecked(about(), missing), candidate, unknown);
    }
    return worst < 0
        ? Verdict.within(about(), Findings.NEVER)
        : at(Verdict.of(about(), figure, unit, warn, stop), candidate, worst);
  }

  /** The figure at its worst, which may lie between two looks. */
  private double between(Candidate candidate, int look, double most) {
    double top = isSmooth() ? top(candidate, look, most) : most;
    return mirrored ? -top : top;
  }

  private double top(Candidate candidate, int look, double most) {
    if (look == 0 || look + 1 == candidate.size) {
      return most;
    }
    double longer =
        Math.max(
            candidate.time[look] - candidate.time[look - 1],
            candidate.time[look + 1] - candidate.time[look]);
    int before = next(candidate, look, -1, longer);
    int after = next(candidate, look, 1, longer);
    if (before < 0 || after < 0 || candidate.isDrawnAnew(before, after)) {
      return most;
    }
    double top = top(candidate, before, look, after);
    // beside a jump the parabola would rise far above the figure: where another through the looks
    // on the side of its top knows of none, there is none
    boolean isBefore = badness(candidate, before) > badness(candidate, after);
    int further = next(candidate, isBefore ? before : after, isBefore ? -1 : 1, longer);
    if (further >= 0) {
      top =
          Math.min(
              top,
              isBefore
                  ? top(candidate, further, before, look)
                  : top(candidate, look, after, further));
    }
    return Math.max(most, top);
  }

  /** The nearest look of the same leg that is about as far off as looks here are; -1 for none. */
  private static int next(Candidate candidate, int look, int step, double longer) {
    for (int i = look + step; i >= 0 && i < candidate.size; i += step) {
      if (candidate.leg[i] != candidate.leg[look]) {
        return -1;
      }
      if (Math.abs(candidate.time[i] - candidate.time[look]) >= EVEN * longer) {
        return i;
      }
    }
    return -1;
  }

  /** The top of the parabola through three looks, between the first and the last of them. */
  private double top(Candidate candidate, int first, int middle, int last) {
    double height = badness(candidate, middle);
    double sinceFirst = candidate.time[middle] - candidate.time[first];
    double untilLast = candidate.time[last] - candidate.time[middle];
    double rise = (height - badness(candidate, first)) / sinceFirst;
    double fall = (height - badness(candidate, last)) / untilLast;
    double bend = (rise + fall) / (sinceFirst + untilLast);
    // only a smooth top: a figure left out beside it has no slope
    if (!(bend > 0.0 && bend < Double.POSITIVE_INFINITY)) {
      return Double.NEGATIVE_INFINITY;
    }
    double slope = (rise * untilLast - fall * sinceFirst) / (sinceFirst + untilLast);
    double at = Math.max(-sinceFirst, Math.min(untilLast, 0.5 * slope / bend));
    return height + at * (slope - bend * at);
  }
}
