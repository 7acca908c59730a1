package org.ferryglide.examples.study;

/**
 * The errors that are compared, each as metres off the rhumb line at the worst place of a leg.
 *
 * <pre>{@code
 * ErrorKind.GEODESIC.words(); // "the geodesic in place of the rhumb line"
 * }</pre>
 */
public enum ErrorKind {
  /** Greatest distance between rhumb line and geodesic, on WGS84. */
  GEODESIC(0, "geodesic", "the geodesic in place of the rhumb line"),
  /** Course and length worked on a sphere of the earth's mean radius. */
  SPHERE(1, "sphere", "course and length worked on a sphere"),
  /** Course and length from minutes of latitude and middle latitude, on a plane. */
  PLANE(2, "plane", "course and length worked on a plane, a mile to a minute"),
  /** The straight line of a land map in place of the rhumb line. */
  MAP_LINE(3, "map_line", "a straight line on a UTM map"),
  /** An edge of 400 mm that misses each mark by 0.5 mm, one standard deviation, on 1:75 000. */
  STRAIGHT_EDGE(
      4, "straight_edge", "a straight edge on a chart of 1:75 000, one standard deviation"),
  /** A rose printed ten years ago, read as if of today: 2016 for 2026, by the built-in models. */
  OLD_ROSE(5, "old_rose", "a rose ten years old, its yearly change forgotten"),
  /** A compass one degree off. */
  COMPASS(6, "compass_1_deg", "a compass one degree off"),
  /** A heading five degrees off, as a paddler may hold it in a sea; common practice, no source. */
  STEERING(7, "steering_5_deg", "a heading five degrees off");

  private final int index;
  private final String column;
  private final String words;

  ErrorKind(int index, String column, String words) {
    this.index = index;
    this.column = column;
    this.words = words;
  }

  /** Its place among the errors of a leg. */
  int index() {
    return index;
  }

  /**
   * What columns and files call it.
   *
   * @return lower-case letters, digits and {@code _}
   */
  public String column() {
    return column;
  }

  /** What stands beside its curve: the column's name without its joints. */
  String label() {
    return column.replace("_deg", "°").replace('_', ' ').replace(" °", "°");
  }

  /**
   * What people call it.
   *
   * @return a few words
   */
  public String words() {
    return words;
  }
}
