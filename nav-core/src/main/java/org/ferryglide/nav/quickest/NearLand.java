package org.ferryglide.nav.quickest;

/** Which nodes of a grid are so near land that a move from them may meet it. */
final class NearLand {
  private NearLand() {}

  /** Marks the nodes within so many squares of the land's edges. */
  static boolean[] of(SearchGrid grid, Obstacles land, int squares) {
    boolean[] near = new boolean[grid.nodes()];
    boolean[] onEdge = new boolean[grid.nodes()];
    double[] edges = land.edges();
    for (int i = 0; i < edges.length; i += 4) {
      mark(grid, near, onEdge, edges, i, squares);
    }
    return near;
  }

  private static void mark(
      SearchGrid grid, boolean[] near, boolean[] onEdge, double[] edges, int i, int squares) {
    double along0 = grid.plane.along(edges[i], edges[i + 1]) / grid.spacing;
    double right0 = grid.plane.right(edges[i], edges[i + 1]) / grid.spacing;
    double along1 = grid.plane.along(edges[i + 2], edges[i + 3]) / grid.spacing;
    double right1 = grid.plane.right(edges[i + 2], edges[i + 3]) / grid.spacing;
    double length = Math.hypot(along1 - along0, right1 - right0);
    int steps = (int) Math.min(1e5, Math.ceil(length) + 1);
    for (int k = 0; k <= steps; k++) {
      double share = (double) k / steps;
      double column = Math.rint(along0 + share * (along1 - along0));
      double row = Math.rint(right0 + share * (right1 - right0));
      int here = grid.nearest(column * grid.spacing, row * grid.spacing);
      if (here >= 0 && onEdge[here]) {
        continue;
      }
      if (here >= 0) {
        onEdge[here] = true;
      }
      grid.mark(near, column * grid.spacing, row * grid.spacing, squares + 1);
    }
  }
}
