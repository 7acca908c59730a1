package org.ferryglide.nav.quickest;

import java.util.ArrayList;
import java.util.List;

/**
 * The ways that a front of arrival times finds between start and goal, before anything is refined,
 * in an area that is widened until it holds them. Not thread-safe.
 */
final class RoughWays {
  /** Squares between start and goal, and beyond and beside them as shares of these. */
  private static final double[][] GRIDS = {
    {64, 0.35, 0.6}, {44, 0.9, 1.2}, {30, 2.0, 2.4}, {18, 4.5, 5.0}, {10, 10.0, 10.0}
  };

  /** In wind a move costs more to time, so that the grid is coarser. */
  private static final double IN_WIND = 0.75;

  /**
   * The flow of a node is asked for so often while still water is crossed, between two bounds; more
   * often did no better, see the front's labels.
   */
  private static final int LOOKS = 24;

  private static final double SHORTEST_BETWEEN_SECONDS = 60.0;
  private static final double LONGEST_BETWEEN_SECONDS = 900.0;

  /** How many squares a move of the front goes at most. */
  private static final int MOVE_SQUARES = 4;

  /** A way nearer the rim than this may be better beyond it, squares. */
  private static final int RIM = 3;

  private static final int MOST_WAYS = 5;

  private final CraftMotion motion;
  private final Waters waters;
  private final CourseSpeed speeds;
  private final SearchPlane plane;
  private final double departure;

  /** How far from a rough way a settled one is looked for among land, metres. */
  private double rimMetres;

  RoughWays(
      CraftMotion motion, Waters waters, CourseSpeed speeds, SearchPlane plane, double departure) {
    this.motion = motion;
    this.waters = waters;
    this.speeds = speeds;
    this.plane = plane;
    this.departure = departure;
  }

  /** Two squares of the grid that found the ways, metres. */
  double rimMetres() {
    return rimMetres;
  }

  /**
   * The ways.
   *
   * @param horizon no front is followed longer, seconds
   * @param finer by how much the grids are finer than they need be at first
   */
  List<Way> within(double horizon, int finer) {
    double still = plane.length / motion.calmSpeed();
    double between =
        Math.max(SHORTEST_BETWEEN_SECONDS, Math.min(LONGEST_BETWEEN_SECONDS, still / LOOKS));
    List<Way> held = new ArrayList<>();
    double heldTime = Double.POSITIVE_INFINITY;
    for (double[] size : GRIDS) {
      int parts = (int) Math.round(finer * (motion.isWindless() ? size[0] : IN_WIND * size[0]));
      SearchGrid grid =
          new SearchGrid(
              plane, parts, (int) Math.ceil(size[1] * parts), (int) Math.ceil(size[2] * parts));
      Moves moves = new Moves(grid, MOVE_SQUARES);
      NodeSpeeds nodes = new NodeSpeeds(motion, speeds, grid, moves, departure, between, finer > 1);
      rimMetres = 2.0 * grid.spacing;
      Front front = new Front(nodes, motion, waters, departure, Double.NaN);
      front.spread(Math.min(horizon, 1.03 * heldTime), true);
      if (!front.reachedGoal()) {
        continue;
      }
      held.addAll(Ways.of(nodes, front, motion, waters, departure, MOST_WAYS));
      heldTime = Math.min(heldTime, front.goalTime());
      int rim = Integer.MAX_VALUE;
      for (int node : front.nodesTo(front.goalLabel())) {
        rim = Math.min(rim, grid.fromRim(node));
      }
      if (rim >= RIM) {
        break;
      }
    }
    return held;
  }
}
