package org.ferryglide.nav.quickest;

import java.util.ArrayList;
import java.util.List;

/**
 * The ways that a front found from start to goal: the earliest, and those that lead elsewhere and
 * take little longer.
 *
 * <p>A second front, run backward from the goal, tells for each node how long the best way through
 * it takes.
 */
final class Ways {
  /** Ways through a node are looked at that take longer than the earliest by this share at most. */
  private static final double LONGER_SHARE = 0.10;

  /** Nodes so near a way that is held already are not looked at, as a share of the leg. */
  private static final double NEAR_SHARE = 0.06;

  private Ways() {}

  /** The ways, the earliest first. */
  static List<Way> of(
      NodeSpeeds speeds,
      Front forward,
      CraftMotion motion,
      Waters waters,
      double departure,
      int most) {
    SearchGrid grid = speeds.grid;
    List<Way> ways = new ArrayList<>();
    int goalLabel = forward.goalLabel();
    int[] best = forward.nodesTo(goalLabel);
    ways.add(Way.of(grid, best, forward.notBefore(goalLabel)));
    if (most == 1) {
      return ways;
    }
    double time = forward.goalTime();
    Front back = new Front(speeds, motion, waters, departure, time);
    back.keepWithin(forward, (1.0 + LONGER_SHARE) * time);
    back.spread((1.0 + LONGER_SHARE) * time, false);
    boolean[] near = new boolean[grid.nodes()];
    int reach = (int) Math.ceil(NEAR_SHARE * grid.plane.length / grid.spacing);
    mark(grid, near, best, reach);
    while (ways.size() < most) {
      int through = -1;
      double least = (1.0 + LONGER_SHARE) * time;
      for (int node = 0; node < near.length; node++) {
        double takes = forward.firstReached(node) + back.firstReached(node);
        if (!near[node] && takes < least) {
          least = takes;
          through = node;
        }
      }
      if (through < 0) {
        return ways;
      }
      int[] to = forward.nodesTo(forward.firstLabel(through));
      int[] from = back.nodesTo(back.firstLabel(through));
      int[] all = new int[to.length + from.length - 1];
      System.arraycopy(to, 0, all, 0, to.length);
      System.arraycopy(from, 1, all, to.length, from.length - 1);
      mark(grid, near, all, reach);
      ways.add(Way.of(grid, all, waits(forward, through, time - back.firstReached(through), all)));
    }
    return ways;
  }

  /**
   * When each node of a way is left at the earliest. Where the best way waits the way back is that
   * of a clock that ends on its arrival: whoever is early at the node between waits there for it.
   */
  private static double[] waits(Front forward, int through, double leaves, int[] all) {
    double[] waits = new double[all.length];
    if (forward.waited()) {
      double[] to = forward.notBefore(forward.firstLabel(through));
      System.arraycopy(to, 0, waits, 0, to.length);
      waits[to.length - 1] = Math.max(waits[to.length - 1], leaves);
    }
    return waits;
  }

  private static void mark(SearchGrid grid, boolean[] near, int[] nodes, int reach) {
    for (int node : nodes) {
      grid.mark(near, grid.along(node), grid.right(node), reach);
    }
  }
}
