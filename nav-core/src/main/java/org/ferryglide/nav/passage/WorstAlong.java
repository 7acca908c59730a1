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
    double top = most;
    int before = look - 1;
    int after = look + 1;
    if (!isSmooth() || before < 0 || after >= candidate.size) {
      return mirrored ? -top : top;
    }
    double longer =
        Math.max(
            candidate.time[look] - candidate.time[before],
            candidate.time[after] - candidate.time[look]);
    while (before > 0 && candidate.time[look] - candidate.time[before] < EVEN * longer) {
      before--;
    }
    while (after < candidate.size - 1
        && candidate.time[after] - candidate.time[look] < EVEN * longer) {
      after++;
    }
    if (candidate.leg[before] == candidate.leg[after] && !candidate.isDrawnAnew(before, after)) {
      double sinceBefore = candidate.time[look] - candidate.time[before];
      double untilAfter = candidate.time[after] - candidate.time[look];
      double rise = (most - badness(candidate, before)) / sinceBefore;
      double fall = (most - badness(candidate, after)) / untilAfter;
      double bend = (rise + fall) / (sinceBefore + untilAfter);
      // only a smooth top: a figure left out beside it has no slope
      if (bend > 0.0 && bend < Double.POSITIVE_INFINITY) {
        double slope = (rise * untilAfter - fall * sinceBefore) / (sinceBefore + untilAfter);
        top = most + slope * slope / (4.0 * bend);
      }
    }
    return mirrored ? -top : top;
  }
}
