package org.ferryglide.nav.bearing;

import java.util.Locale;
import org.ferryglide.nav.note.TextFormatException;

/**
 * The thirty-two named points of the compass, 11.25° apart.
 *
 * <p>Saying a bearing's point aloud is the cheapest guard against reading the rose the wrong way
 * round: a leg to an island in the east that comes out as west is noticed at once.
 *
 * <pre>{@code
 * CompassPoint.nearest(231.0, 8).pointName(); // southwest
 * CompassPoint.parse("NNE").degrees(); // 22.5
 * }</pre>
 */
@SuppressWarnings("EnumOrdinal") // the points are declared in the order of the rose
public enum CompassPoint {
  /** North, 0°. */
  NORTH("north"),
  /** North by east, 11.25°. */
  NORTH_BY_EAST("north by east"),
  /** North-northeast, 22.5°. */
  NORTH_NORTHEAST("north-northeast"),
  /** Northeast by north, 33.75°. */
  NORTHEAST_BY_NORTH("northeast by north"),
  /** Northeast, 45°. */
  NORTHEAST("northeast"),
  /** Northeast by east, 56.25°. */
  NORTHEAST_BY_EAST("northeast by east"),
  /** East-northeast, 67.5°. */
  EAST_NORTHEAST("east-northeast"),
  /** East by north, 78.75°. */
  EAST_BY_NORTH("east by north"),
  /** East, 90°. */
  EAST("east"),
  /** East by south, 101.25°. */
  EAST_BY_SOUTH("east by south"),
  /** East-southeast, 112.5°. */
  EAST_SOUTHEAST("east-southeast"),
  /** Southeast by east, 123.75°. */
  SOUTHEAST_BY_EAST("southeast by east"),
  /** Southeast, 135°. */
  SOUTHEAST("southeast"),
  /** Southeast by south, 146.25°. */
  SOUTHEAST_BY_SOUTH("southeast by south"),
  /** South-southeast, 157.5°. */
  SOUTH_SOUTHEAST("south-southeast"),
  /** South by east, 168.75°. */
  SOUTH_BY_EAST("south by east"),
  /** South, 180°. */
  SOUTH("south"),
  /** South by west, 191.25°. */
  SOUTH_BY_WEST("south by west"),
  /** South-southwest, 202.5°. */
  SOUTH_SOUTHWEST("south-southwest"),
  /** Southwest by south, 213.75°. */
  SOUTHWEST_BY_SOUTH("southwest by south"),
  /** Southwest, 225°. */
  SOUTHWEST("southwest"),
  /** Southwest by west, 236.25°. */
  SOUTHWEST_BY_WEST("southwest by west"),
  /** West-southwest, 247.5°. */
  WEST_SOUTHWEST("west-southwest"),
  /** West by south, 258.75°. */
  WEST_BY_SOUTH("west by south"),
  /** West, 270°. */
  WEST("west"),
  /** West by north, 281.25°. */
  WEST_BY_NORTH("west by north"),
  /** West-northwest, 292.5°. */
  WEST_NORTHWEST("west-northwest"),
  /** Northwest by west, 303.75°. */
  NORTHWEST_BY_WEST("northwest by west"),
  /** Northwest, 315°. */
  NORTHWEST("northwest"),
  /** Northwest by north, 326.25°. */
  NORTHWEST_BY_NORTH("northwest by north"),
  /** North-northwest, 337.5°. */
  NORTH_NORTHWEST("north-northwest"),
  /** North by west, 348.75°. */
  NORTH_BY_WEST("north by west");

  private static final int POINTS = 32;

  private final String pointName;

  CompassPoint(String pointName) {
    this.pointName = pointName;
  }

  /**
   * The point as it is spoken.
   *
   * @return for example {@code north by east}
   */
  public String pointName() {
    return pointName;
  }

  /**
   * The point as it is written short.
   *
   * @return for example {@code NbE}, {@code NNE}, {@code NEbN} or {@code NE}
   */
  public String abbreviation() {
    return pointName
        .replace("north", "N")
        .replace("south", "S")
        .replace("east", "E")
        .replace("west", "W")
        .replace("by", "b")
        .replace(" ", "")
        .replace("-", "");
  }

  /** The name in words, as {@link #pointName}; {@link #name} has the constant's. */
  @Override
  public String toString() {
    return pointName;
  }

  /**
   * Reads a point by its name or its abbreviation, in letters of either case, with or without
   * spaces and hyphens: {@code southwest by west}, {@code South West}, {@code SWbW}, {@code SW by
   * W}, {@code ssw}.
   *
   * @param text the point
   * @return the point
   * @throws TextFormatException if it is none of the thirty-two
   */
  public static CompassPoint parse(String text) {
    String bare = text.toLowerCase(Locale.ROOT).replaceAll("[\\s-]", "");
    String shorter =
        bare.replace("north", "n")
            .replace("south", "s")
            .replace("east", "e")
            .replace("west", "w")
            .replace("by", "b");
    for (CompassPoint point : values()) {
      if (point.abbreviation().toLowerCase(Locale.ROOT).equals(shorter)) {
        return point;
      }
    }
    throw new TextFormatException(
        "a compass point must be one of the thirty-two, as in north, NNE or southwest by west",
        text,
        0);
  }

  /**
   * The direction of the point from whichever north is meant.
   *
   * @return degrees, a multiple of 11.25 in [0, 360)
   */
  public double degrees() {
    return ordinal() * (360.0 / POINTS);
  }

  /**
   * The point on the other side of the rose.
   *
   * @return the point 180° away
   */
  public CompassPoint opposite() {
    return at(ordinal() + POINTS / 2);
  }

  /**
   * The named point nearest to a direction.
   *
   * @param degrees the direction, degrees, any finite value
   * @param pointsInCircle how many points to choose among: 4, 8, 16 or 32
   * @return the nearest point; halfway between two, the one further clockwise
   * @throws IllegalArgumentException if {@code degrees} is not finite or {@code pointsInCircle} is
   *     not 4, 8, 16 or 32
   */
  public static CompassPoint nearest(double degrees, int pointsInCircle) {
    if (pointsInCircle != 4
        && pointsInCircle != 8
        && pointsInCircle != 16
        && pointsInCircle != POINTS) {
      throw new IllegalArgumentException(
          "number of points must be 4, 8, 16 or 32, but was " + pointsInCircle);
    }
    double steps = BearingText.reducedFinite(degrees) * pointsInCircle / 360.0;
    return at((int) Math.floor(steps + 0.5) * (POINTS / pointsInCircle));
  }

  private static CompassPoint at(int index) {
    return values()[index % POINTS];
  }
}
