package org.ferryglide.nav.quickest;

/**
 * A square grid over the plane of a search. Start and goal are nodes; a node's number is its column
 * times the rows and its row.
 */
final class SearchGrid {
  final SearchPlane plane;

  /** Metres between nodes. */
  final double spacing;

  /** Nodes along the line and across it. */
  final int columns;

  final int rows;
  final int start;
  final int goal;

  private final int firstColumn;
  private final int middleRow;

  /**
   * Lays the grid.
   *
   * @param parts squares between start and goal
   * @param aheadAndAstern squares beyond start and goal
   * @param aside squares on either side of the line
   */
  SearchGrid(SearchPlane plane, int parts, int aheadAndAstern, int aside) {
    this.plane = plane;
    spacing = plane.length / parts;
    columns = parts + 2 * aheadAndAstern + 1;
    rows = 2 * aside + 1;
    firstColumn = aheadAndAstern;
    middleRow = aside;
    start = aheadAndAstern * rows + aside;
    goal = (aheadAndAstern + parts) * rows + aside;
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

  double latitude(int node) {
    return plane.latitude(along(node), right(node));
  }

  double longitude(int node) {
    return plane.longitude(along(node), right(node));
  }

  /** How many squares a node is from the rim. */
  int fromRim(int node) {
    int column = node / rows;
    int row = node % rows;
    return Math.min(Math.min(column, columns - 1 - column), Math.min(row, rows - 1 - row));
  }

  /** Marks the nodes within so many squares, either way, of the one nearest to a place. */
  void mark(boolean[] marked, double along, double right, int squares) {
    long column = Math.round(along / spacing) + firstColumn;
    long row = Math.round(right / spacing) + middleRow;
    int lastColumn = (int) Math.min(columns - 1, column + squares);
    int lastRow = (int) Math.min(rows - 1, row + squares);
    for (int c = (int) Math.max(0, column - squares); c <= lastColumn; c++) {
      for (int r = (int) Math.max(0, row - squares); r <= lastRow; r++) {
        marked[c * rows + r] = true;
      }
    }
  }

  /** The node nearest to a place of the plane; -1 off the grid. */
  int nearest(double along, double right) {
    long column = Math.round(along / spacing) + firstColumn;
    long row = Math.round(right / spacing) + middleRow;
    return column < 0 || column >= columns || row < 0 || row >= rows
        ? -1
        : (int) (column * rows + row);
  }
}
