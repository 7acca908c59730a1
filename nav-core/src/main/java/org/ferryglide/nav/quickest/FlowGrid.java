package org.ferryglide.nav.quickest;

import java.util.Arrays;

/**
 * Stream and wind at the nodes of a square grid over the plane of a search, in layers of time that
 * are filled as they are asked for. Start and goal are nodes. Not thread-safe.
 */
final class FlowGrid {
  /** Nodes each way at which it is looked whether the flow changes with time. */
  private static final int PROBES = 9;

  /** When it is looked, hours: a tide has turned in them. */
  private static final double[] PROBE_HOURS = {0.0, 0.5, 1.2, 2.0, 3.1, 4.5, 6.0, 9.0, 15.0};

  private static final float UNASKED = Float.NaN;
  private static final float UNKNOWN = Float.POSITIVE_INFINITY;

  final SearchPlane plane;

  /** Metres between nodes. */
  final double spacing;

  /**
   * Nodes along the line and across it; a node's number is its column times the rows and its row.
   */
  final int columns;

  final int rows;
  final int start;
  final int goal;

  /** Seconds between layers. */
  final double layerSeconds;

  /** Whether the flow was the same at all times wherever it was looked at. */
  final boolean steady;

  private final CraftMotion motion;
  private final double departure;
  private final int width;
  private final int firstColumn;
  private final int middleRow;
  private final float[][] layers;
  private final double[] flow = new double[CraftMotion.FLOW];

  /**
   * Lays the grid.
   *
   * @param parts squares between start and goal
   * @param aheadAndAstern squares beyond start and goal
   * @param aside squares on either side of the line
   * @param horizon until when it may be asked, seconds since the departure
   */
  FlowGrid(
      CraftMotion motion,
      SearchPlane plane,
      double departure,
      int parts,
      int aheadAndAstern,
      int aside,
      double layerSeconds,
      double horizon) {
    this.motion = motion;
    this.plane = plane;
    this.departure = departure;
    this.layerSeconds = layerSeconds;
    spacing = plane.length / parts;
    columns = parts + 2 * aheadAndAstern + 1;
    rows = 2 * aside + 1;
    firstColumn = aheadAndAstern;
    middleRow = aside;
    start = aheadAndAstern * rows + aside;
    goal = (aheadAndAstern + parts) * rows + aside;
    width = motion.isWindless() ? 2 : CraftMotion.FLOW;
    layers = new float[(int) (horizon / layerSeconds) + 2][];
    boolean still = true;
    float[] first = new float[width];
    for (int i = 0; i < PROBES; i++) {
      for (int j = 0; j < PROBES; j++) {
        int node = (columns - 1) * i / (PROBES - 1) * rows + (rows - 1) * j / (PROBES - 1);
        boolean known = false;
        for (double hours : PROBE_HOURS) {
          int layer = layerOf(3600.0 * hours);
          float[] held = layer(layer);
          int at = at(held, node, layer);
          if (held[at] == UNKNOWN) {
            continue;
          }
          for (int w = 0; w < width; w++) {
            still &= !known || first[w] == held[at + w];
            first[w] = held[at + w];
          }
          known = true;
        }
      }
    }
    steady = still;
  }

  int nodes() {
    return columns * rows;
  }

  double along(int node) {
    return (node / rows - firstColumn) * spacing;
  }

  double right(int node) {
    return (node % rows - middleRow) * spacing;
  }

  /** How many squares a node is from the rim. */
  int fromRim(int node) {
    int column = node / rows;
    int row = node % rows;
    return Math.min(Math.min(column, columns - 1 - column), Math.min(row, rows - 1 - row));
  }

  /** The node nearest to a place of the plane; -1 off the grid. */
  int nearest(double along, double right) {
    long column = Math.round(along / spacing) + firstColumn;
    long row = Math.round(right / spacing) + middleRow;
    return column < 0 || column >= columns || row < 0 || row >= rows
        ? -1
        : (int) (column * rows + row);
  }

  int layerOf(double seconds) {
    return (int) Math.max(0, Math.min(layers.length - 1, Math.round(seconds / layerSeconds)));
  }

  /** The numbers of a layer, to be read where {@link #at} says. */
  float[] layer(int layer) {
    float[] held = layers[layer];
    if (held == null) {
      held = new float[nodes() * width];
      Arrays.fill(held, UNASKED);
      layers[layer] = held;
    }
    return held;
  }

  /**
   * Where in a layer the stream of a node stands, east and north, and after it, in wind, that of
   * the wind over the water.
   */
  int at(float[] held, int node, int layer) {
    int at = node * width;
    if (Float.isNaN(held[at])) {
      fill(held, at, node, layer);
    }
    return at;
  }

  static boolean isUnknown(float[] held, int at) {
    return held[at] == UNKNOWN;
  }

  private void fill(float[] held, int at, int node, int layer) {
    double along = along(node);
    double right = right(node);
    boolean known =
        motion.flow(
            plane.latitude(along, right),
            plane.longitude(along, right),
            departure + layer * layerSeconds,
            flow);
    held[at] = known ? (float) flow[0] : UNKNOWN;
    for (int i = 1; i < width; i++) {
      held[at + i] = (float) flow[i];
    }
  }
}
