package org.ferryglide.examples.page;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds room for words beside what they name, so that they neither meet nor leave the frame. Not
 * for several threads at a time.
 *
 * <pre>{@code
 * Places places = new Places(2, 2, 358, 198);
 * places.takeLine(10, 60, 90, 20);
 * double[] corner = places.beside(50, 40, Ink.width(words, Ink.SMALL), 11);
 * }</pre>
 */
public final class Places {
  private static final int DIRECTIONS = 16;
  private static final double[] DISTANCES = {5, 9, 15, 23, 33, 45};

  private final double left;
  private final double top;
  private final double right;
  private final double bottom;
  private final List<double[]> taken = new ArrayList<>();

  /**
   * A frame with nothing in it.
   *
   * @param left its left side
   * @param top its upper side
   * @param right its right side
   * @param bottom its lower side
   */
  public Places(double left, double top, double right, double bottom) {
    this.left = left;
    this.top = top;
    this.right = right;
    this.bottom = bottom;
  }

  /**
   * Keeps an area free.
   *
   * @param x of its left side
   * @param y of its upper side
   * @param wide how wide
   * @param high how high
   */
  public void take(double x, double y, double wide, double high) {
    taken.add(new double[] {x, y, x + wide, y + high});
  }

  /**
   * Keeps a line free, thinly.
   *
   * @param x1 from, to the right
   * @param y1 from, down
   * @param x2 to, to the right
   * @param y2 to, down
   */
  public void takeLine(double x1, double y1, double x2, double y2) {
    int steps = 1 + (int) (Math.hypot(x2 - x1, y2 - y1) / 5.0);
    for (int i = 0; i <= steps; i++) {
      double x = x1 + (x2 - x1) * i / steps;
      double y = y1 + (y2 - y1) * i / steps;
      take(x - 1.0, y - 1.0, 2.0, 2.0);
    }
  }

  /**
   * The best place for words near a point, which is taken then.
   *
   * @param x of the point
   * @param y of the point
   * @param wide how wide the words are
   * @param high how high
   * @return left and upper side
   */
  public double[] beside(double x, double y, double wide, double high) {
    double[] best = {x, y};
    double least = Double.POSITIVE_INFINITY;
    for (double distance : DISTANCES) {
      for (int i = 0; i < DIRECTIONS; i++) {
        double angle = 2.0 * Math.PI * i / DIRECTIONS;
        double cosine = Math.cos(angle);
        double sine = Math.sin(angle);
        double at = x + distance * cosine + 0.5 * wide * (cosine - 1.0);
        double up = y + distance * sine + 0.5 * high * (sine - 1.0);
        double cost = distance * 1.5 + cost(at, up, wide, high);
        if (cost < least) {
          least = cost;
          best = new double[] {at, up};
        }
      }
    }
    take(best[0], best[1], wide, high);
    return best;
  }

  private double cost(double x, double y, double wide, double high) {
    double cost = 0.0;
    for (double[] box : taken) {
      double across = Math.min(x + wide, box[2]) - Math.max(x, box[0]);
      double up = Math.min(y + high, box[3]) - Math.max(y, box[1]);
      if (across > 0.0 && up > 0.0) {
        cost += 10.0 + 2.0 * across * up;
      }
    }
    double outside =
        Math.max(0.0, left - x)
            + Math.max(0.0, x + wide - right)
            + Math.max(0.0, top - y)
            + Math.max(0.0, y + high - bottom);
    return cost + 200.0 * outside;
  }
}
