package org.ferryglide.nav.grid;

import java.io.Serializable;
import java.util.Objects;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.TextFormatException;
import org.ferryglide.nav.position.Position;

/**
 * A zone of the universal transverse Mercator grid: 6° of longitude, north or south of the equator.
 *
 * <pre>{@code
 * Position landing = Position.ofDegrees(50.105, -5.535);
 * GridPoint point = MapGrid.utm(UtmZone.containing(landing)).at(landing); // zone 30 north
 * MapGrid onTheMap = MapGrid.utm(UtmZone.parse("29N")); // the zone of the map at hand
 * GridPoint neighbour = onTheMap.at(landing);
 * }</pre>
 *
 * <p>Zone 1 begins at 180° W. Two exceptions are kept: in 56° to 64° N zone 32 reaches west to 3°
 * E, and in 72° to 84° N the zones 31, 33, 35 and 37 cover 0° to 42° E alone. A meridian between
 * two zones belongs to the eastern one, the equator to the north, 80° S to UTM and 84° N to UPS.
 *
 * <p>Central scale 0.9996, false easting 500 km, false northing 0 in the north and 10 000 km in the
 * south, on WGS84; EPSG 32601 to 32660 and 32701 to 32760.
 *
 * @param number zone, 1 to 60
 * @param hemisphere the half of the earth: northings count from the equator in the north, from 10
 *     000 km south of it in the south
 * @see <a href="https://earth-info.nga.mil/php/download.php?file=coord-grids">NGA.SIG.0012 (2014),
 *     The Universal Grids</a>
 */
public record UtmZone(int number, Hemisphere hemisphere) implements Serializable {
  private static final long serialVersionUID = 1L;

  /** From here northward UPS is used, degrees. */
  public static final double NORTH_LIMIT_DEGREES = 84.0;

  /** South of here UPS is used, degrees. */
  public static final double SOUTH_LIMIT_DEGREES = -80.0;

  /** All zones of the north, then all of the south; each is a few numbers. */
  private static final MapGrid[] GRIDS = grids();

  private static MapGrid[] grids() {
    TransverseMercator projection = TransverseMercator.of(Ellipsoid.WGS84, 0.9996);
    MapGrid[] grids = new MapGrid[120];
    for (int number = 1; number <= 60; number++) {
      for (int half = 0; half < 2; half++) {
        grids[60 * half + number - 1] =
            MapGrid.central(
                "UTM " + number + (half == 0 ? "N" : "S"),
                Datum.WGS84,
                projection,
                0.0,
                6.0 * number - 183.0,
                Distance.ofMetres(500000.0),
                Distance.ofMetres(half == 0 ? 0.0 : 1e7));
      }
    }
    return grids;
  }

  /**
   * Takes the parts; {@link #of} reads better.
   *
   * @param number zone, 1 to 60
   * @param hemisphere the half of the earth
   * @throws IllegalArgumentException if there is no such zone
   */
  public UtmZone {
    Objects.requireNonNull(hemisphere, "hemisphere");
    if (number < 1 || number > 60) {
      throw new IllegalArgumentException("UTM zone must be in [1, 60], but was " + number);
    }
  }

  /**
   * A zone by its number, whether or not a place lies in it.
   *
   * @param number zone, 1 to 60
   * @param hemisphere the half of the earth
   * @return the zone
   * @throws IllegalArgumentException if there is no such zone
   */
  public static UtmZone of(int number, Hemisphere hemisphere) {
    return new UtmZone(number, hemisphere);
  }

  /**
   * The zone that a place lies in, with the exceptions of Norway and Svalbard.
   *
   * @param position where, latitude in [-80, 84)
   * @return the zone
   * @throws IllegalArgumentException if the place lies in the polar regions, where there is no zone
   */
  public static UtmZone containing(Position position) {
    int number = number(position.latitudeDegrees(), position.longitudeDegrees());
    if (number == 0) {
      throw new IllegalArgumentException(
          "latitude must be in [-80, 84) degrees to lie in a UTM zone, but was "
              + position.latitudeDegrees());
    }
    return new UtmZone(number, Hemisphere.ofLatitude(position.latitudeDegrees()));
  }

  /**
   * The zone that a place lies in, on plain doubles.
   *
   * @param latitudeDegrees latitude, degrees
   * @param longitudeDegrees longitude, degrees, any turn of the circle
   * @return 1 to 60; 0 in the polar regions, for NaN and for infinities
   */
  public static int number(double latitudeDegrees, double longitudeDegrees) {
    if (!(latitudeDegrees >= SOUTH_LIMIT_DEGREES && latitudeDegrees < NORTH_LIMIT_DEGREES)
        || !(Math.abs(longitudeDegrees) <= Double.MAX_VALUE)) {
      return 0;
    }
    // whole degrees first: -1e-17 + 180 would round up into the next zone
    double turns = Math.floor(longitudeDegrees) % 360.0;
    int longitude = Math.floorMod((int) turns + 180, 360) - 180;
    if (latitudeDegrees >= 72.0 && longitude >= 0 && longitude < 42) {
      return longitude < 9 ? 31 : longitude < 21 ? 33 : longitude < 33 ? 35 : 37;
    }
    if (latitudeDegrees >= 56.0 && latitudeDegrees < 64.0 && longitude >= 3 && longitude < 12) {
      return 32;
    }
    return (longitude + 180) / 6 + 1;
  }

  /**
   * Reads {@code 30N}, {@code 30 N}, {@code UTM 30N}; N and S are the halves of the earth, not the
   * letters of latitude bands.
   *
   * @param text the number, then N or S, of either case
   * @return the zone
   * @throws TextFormatException if the text is anything else
   */
  public static UtmZone parse(String text) {
    int place = Figures.skipSpaces(text, text.regionMatches(true, 0, "UTM", 0, 3) ? 3 : 0);
    int start = place;
    int number = 0;
    while (place < text.length() && Figures.isDigit(text.charAt(place)) && place < start + 2) {
      number = 10 * number + (text.charAt(place++) - '0');
    }
    if (number < 1 || number > 60) {
      throw new TextFormatException("a UTM zone starts with its number, 1 to 60", text, start);
    }
    place = Figures.skipSpaces(text, place);
    char half = place < text.length() ? Character.toUpperCase(text.charAt(place)) : '\0';
    if (half != 'N' && half != 'S') {
      throw new TextFormatException("N (north) or S (south) must follow the zone", text, place);
    }
    if (place + 1 < text.length()) {
      throw new TextFormatException("nothing may follow N or S", text, place + 1);
    }
    return new UtmZone(number, half == 'N' ? Hemisphere.NORTH : Hemisphere.SOUTH);
  }

  /** The grid of this zone, for {@link MapGrid#utm}. */
  MapGrid grid() {
    return GRIDS[(isNorth() ? 0 : 60) + number - 1];
  }

  /**
   * The middle of the zone, where grid north is true north.
   *
   * @return longitude, degrees
   */
  public double centralMeridianDegrees() {
    return 6.0 * number - 183.0;
  }

  boolean isNorth() {
    return hemisphere == Hemisphere.NORTH;
  }

  /** Number and half: {@code 30N}. */
  @Override
  public String toString() {
    return number + (isNorth() ? "N" : "S");
  }
}
