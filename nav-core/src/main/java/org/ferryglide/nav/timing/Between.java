package org.ferryglide.nav.timing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Looks between the steps of a search for gaps in a window, and windows in a gap, that no step fell
 * on.
 *
 * <p>Where a quantity that decides turns between two steps, it may go on beyond the step's value by
 * about as much as it changes from step to step. So a turn is followed down only where that much
 * would carry it across the limit.
 */
final class Between {
  /** How often the place of a turn is halved: a step of ten minutes down to a third of a second. */
  private static final int HALVINGS = 11;

  /** Changes from step to step below this are rounding, in shares. */
  private static final double NOISE = 1e-6;

  private final DepartureSearch search;
  private final Departing own;

  Between(DepartureSearch search, Departing own) {
    this.search = search;
    this.own = own;
  }

  /** The same departures, with the ones found between them in their places. */
  List<Departure> withWhatLiesBetween(List<Departure> steps) {
    List<Departure> all = new ArrayList<>();
    int last = steps.size() - 1;
    for (int i = 0; i <= last; i++) {
      Departure before = steps.get(Math.max(0, i - 1));
      Departure here = steps.get(i);
      Departure after = steps.get(Math.min(last, i + 1));
      Departure found = turn(before, here, after);
      boolean earlier = found != null && found.seconds() < here.seconds();
      if (found != null && earlier) {
        all.add(found);
      }
      all.add(here);
      if (found != null && !earlier) {
        all.add(found);
      }
    }
    return all;
  }

  /** A departure near a turn at the middle one that is fit where the middle one is not, or not. */
  private @Nullable Departure turn(Departure before, Departure here, Departure after) {
    if (before.isFit() != here.isFit() || after.isFit() != here.isFit()) {
      return null; // an edge already lies between
    }
    if (here.isFit()) {
      Departure byMargin = followed(before, here, after, Departure::leastMargin, 0.0);
      return byMargin != null
          ? byMargin
          : followed(before, here, after, Between::shareLeft, Double.POSITIVE_INFINITY);
    }
    return followed(before, here, after, departure -> -departure.leastMargin(), 0.0);
  }

  /** What is left of the speed beside what is spent across the stream; NaN if not possible. */
  private static double shareLeft(Departure departure) {
    return 1.0 - departure.crossStreamShare();
  }

  /**
   * Follows a quantity that is least at the middle departure to where it is least, if it may fall
   * below zero there; the first departure on the way whose fitness is another than the middle
   * one's.
   */
  private @Nullable Departure followed(
      Departure before,
      Departure here,
      Departure after,
      ToDoubleFunction<Departure> quantity,
      double worthAbove) {
    double a = quantity.applyAsDouble(before);
    double b = quantity.applyAsDouble(here);
    double c = quantity.applyAsDouble(after);
    double change = Math.max(a - b, c - b);
    if (!(a >= b && c >= b && change > NOISE && (b < change || b < worthAbove))) {
      return null;
    }
    double low = before.seconds();
    double high = after.seconds();
    double best = here.seconds();
    double least = b;
    for (int i = 0; i < HALVINGS; i++) {
      double left = 0.5 * (low + best);
      double right = 0.5 * (best + high);
      Departure atLeft = search.attempt(own, left);
      if (atLeft.isFit() != here.isFit()) {
        return atLeft;
      }
      Departure atRight = search.attempt(own, right);
      if (atRight.isFit() != here.isFit()) {
        return atRight;
      }
      double toLeft = quantity.applyAsDouble(atLeft);
      double toRight = quantity.applyAsDouble(atRight);
      if (toLeft < least && toLeft <= toRight) {
        high = best;
        best = left;
        least = toLeft;
      } else if (toRight < least) {
        low = best;
        best = right;
        least = toRight;
      } else {
        low = left;
        high = right;
      }
    }
    return null;
  }
}
