package org.ferryglide.nav.grid;

import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.TextFormatException;
import org.ferryglide.nav.position.Position;

/**
 * References of the military grid reference system, the lettering of the universal grids that
 * rescue services and many receivers use.
 *
 * <pre>{@code
 * Position landing = Position.ofDegrees(50.105, -5.535);
 * String reference = Mgrs.reference(landing, GridPrecision.TEN_METRES); // zone, band, letters, 8 figures
 * GridSquare square = Mgrs.parse(reference);
 * square.southWestCorner(); // what the figures say
 * square.centre().position(); // the best guess at the place
 * }</pre>
 *
 * <p>A reference names a square, never a point: figures are truncated, so that the same place at
 * less precision keeps its first figures. The zone is written with two figures. Letters are those
 * of WGS84 (scheme AA of the standard); old datums had another row scheme, which is not read.
 *
 * <p>Row letters repeat every 2000 km; the latitude band says which of them is meant, and a
 * reference whose row does not meet its band is refused. Squares at the edge of a zone are cut by
 * it: their corner or their centre may lie in the neighbouring zone, which {@link
 * GridSquare#notes()} says.
 *
 * @see <a href="https://earth-info.nga.mil/php/download.php?file=coord-grids">NGA.SIG.0012 (2014),
 *     The Universal Grids and the Military Grid Reference System</a>
 */
public final class Mgrs {
  private Mgrs() {}

  static final int SQUARE_METRES = 100_000;
  private static final String BANDS = "CDEFGHJKLMNPQRSTUVWX";
  private static final int FIRST_NORTHERN_BAND = 10;
  private static final String[] COLUMNS = {"ABCDEFGH", "JKLMNPQR", "STUVWXYZ"};
  private static final String ROWS = "ABCDEFGHJKLMNPQRSTUV";

  /** South of the equator, rows stay below this: the equator itself is counted to the north. */
  private static final int SOUTHERN_END_METRES = 10_000_000;

  /**
   * The reference of the square that a place lies in.
   *
   * @param position where
   * @param precision how fine
   * @return for example {@code 38SMB4484}; in the polar regions {@code ZAH0000}, without a zone
   */
  public static String reference(Position position, GridPrecision precision) {
    if (UtmZone.number(position.latitudeDegrees(), position.longitudeDegrees()) == 0) {
      return MgrsPolar.reference(position, precision);
    }
    return reference(UtmZone.containing(position), position, precision);
  }

  /**
   * The reference of a place in the zone of the map at hand, which may be a neighbour's.
   *
   * @param zone the zone to use
   * @param position where, latitude in [-80, 84)
   * @param precision how fine
   * @return for example {@code 38SMB4484}
   * @throws IllegalArgumentException if the place lies in the polar regions or in the other half of
   *     the earth, or so far from the zone that no letter is left (400 km from its middle)
   */
  public static String reference(UtmZone zone, Position position, GridPrecision precision) {
    double latitude = position.latitudeDegrees();
    if (UtmZone.number(latitude, 0.0) == 0 || (latitude >= 0.0) != zone.isNorth()) {
      throw new IllegalArgumentException(
          "position must lie in the half of zone " + zone + ", but was " + position);
    }
    double[] plane = new double[4];
    MapGrid.utm(zone).forward(latitude, position.longitudeDegrees(), plane, 0);
    int column =
        plane[0] > 0.0 && plane[0] < 1e6 ? Figures.wholeMetres(plane[0]) / SQUARE_METRES : 0;
    if (column < 1 || column > 8) {
      throw new IllegalArgumentException(
          "position must lie within 400 km of the middle of zone "
              + zone
              + ", but was "
              + position);
    }
    int east = Figures.wholeMetres(plane[0]);
    int north = Figures.wholeMetres(plane[1]);
    if (!zone.isNorth() && north >= SOUTHERN_END_METRES) {
      north = SOUTHERN_END_METRES - 1;
    }
    north = Math.max(0, north);
    StringBuilder text = new StringBuilder(15);
    text.append((char) ('0' + zone.number() / 10)).append((char) ('0' + zone.number() % 10));
    text.append(band(latitude));
    text.append(COLUMNS[(zone.number() - 1) % 3].charAt(column - 1));
    text.append(ROWS.charAt((north / SQUARE_METRES + rowShift(zone.number())) % ROWS.length()));
    Figures.append(east, north, precision, "", text);
    return text.toString();
  }

  /** Even zones begin their rows at F. */
  private static int rowShift(int zone) {
    return zone % 2 == 0 ? 5 : 0;
  }

  /** Letter of the latitude band: 8° each from 80° S, the last 12°. */
  private static char band(double latitudeDegrees) {
    int index = (int) Math.floor(latitudeDegrees / 8.0) + FIRST_NORTHERN_BAND;
    return BANDS.charAt(Math.max(0, Math.min(BANDS.length() - 1, index)));
  }

  /**
   * Reads a reference: {@code 38SMB4484}, {@code 38S MB 44 84}, {@code 4QFJ12345678}, {@code ZAH}.
   *
   * @param text zone and band, or the letter of a polar half; the two letters of the square of 100
   *     km; then none to five figures of easting and as many of northing, together or apart;
   *     letters of either case
   * @return the square it names
   * @throws TextFormatException if the text is anything else, or its row letter does not occur in
   *     its band
   */
  public static GridSquare parse(String text) {
    int place = Figures.skipSpaces(text, 0);
    if (place < text.length() && !Figures.isDigit(text.charAt(place))) {
      return MgrsPolar.parse(text, place);
    }
    int start = place;
    int zone = 0;
    while (place < text.length() && place < start + 2 && Figures.isDigit(text.charAt(place))) {
      zone = 10 * zone + (text.charAt(place++) - '0');
    }
    if (zone < 1 || zone > 60) {
      throw new TextFormatException(
          "a reference starts with its zone, 1 to 60, or with A, B, Y or Z", text, start);
    }
    place = Figures.skipSpaces(text, place);
    int band = letter(text, place, BANDS, "the latitude band, C to X without I and O, must follow");
    int columnAt = Figures.skipSpaces(text, place + 1);
    String columns = COLUMNS[(zone - 1) % 3];
    int column =
        letter(text, columnAt, columns, "the column letters of zone " + zone + " are " + columns);
    int rowAt = Figures.skipSpaces(text, columnAt + 1);
    int row = letter(text, rowAt, ROWS, "row letters are A to V without I and O");
    Figures figures = Figures.read(text, rowAt + 1);

    UtmZone utm =
        new UtmZone(zone, band >= FIRST_NORTHERN_BAND ? Hemisphere.NORTH : Hemisphere.SOUTH);
    int west = (column + 1) * SQUARE_METRES;
    int south = rowInBand(utm, band, west, Math.floorMod(row - rowShift(zone), ROWS.length()));
    if (south < 0) {
      throw new TextFormatException(
          "row "
              + ROWS.charAt(row)
              + " does not occur in column "
              + columns.charAt(column)
              + " of zone "
              + zone
              + " and band "
              + BANDS.charAt(band),
          text,
          rowAt);
    }
    double westMetres = west + figures.eastMetres();
    double southMetres = south + figures.northMetres();
    return new GridSquare(
        MapGrid.utm(utm),
        westMetres,
        southMetres,
        figures.precision(),
        edgeNotes(utm, BANDS.charAt(band), westMetres, southMetres, figures.precision()));
  }

  /** Index of a letter among those allowed. */
  static int letter(String text, int place, String allowed, String reason) {
    int index =
        place < text.length() ? allowed.indexOf(Character.toUpperCase(text.charAt(place))) : -1;
    if (index < 0) {
      throw new TextFormatException(reason, text, Math.min(place, text.length()));
    }
    return index;
  }

  /**
   * Which of the rows of one letter, 2000 km apart, has land in the band.
   *
   * @return northing of its southern edge, metres, or -1 if none
   */
  private static int rowInBand(UtmZone zone, int band, int west, int rowInCycle) {
    double bandSouth = southOfBand(band);
    double bandNorth = northOfBand(band);
    double[] out = new double[4];
    double near = Math.max(west, Math.min(500_000, west + SQUARE_METRES));
    double far = west < 500_000 ? west : west + SQUARE_METRES;
    for (int south = rowInCycle * SQUARE_METRES; south < 10e6; south += 20 * SQUARE_METRES) {
      // along a line of one northing the latitude shrinks away from the middle of the zone
      MapGrid.utm(zone).reverse(zone.isNorth() ? far : near, south, out, 0);
      double least = out[0];
      MapGrid.utm(zone).reverse(zone.isNorth() ? near : far, south + SQUARE_METRES, out, 0);
      double greatest = out[0];
      if (least < bandNorth && greatest > bandSouth) {
        return south;
      }
    }
    return -1;
  }

  private static double southOfBand(int band) {
    return -80.0 + 8.0 * band;
  }

  private static double northOfBand(int band) {
    return band == BANDS.length() - 1 ? UtmZone.NORTH_LIMIT_DEGREES : southOfBand(band) + 8.0;
  }

  private static Note[] edgeNotes(
      UtmZone zone, char band, double west, double south, GridPrecision precision) {
    double[] out = new double[4];
    double half = precision.sideMetres() / 2.0;
    boolean any = false;
    for (int i = 0; i < 9; i++) { // three by three points; the fifth is the centre
      int column = i % 3;
      int row = i / 3;
      MapGrid.utm(zone).reverse(west + column * half, south + row * half, out, 0);
      boolean inside = UtmZone.number(out[0], out[1]) == zone.number() && band(out[0]) == band;
      if (inside && i == 4) {
        return new Note[0];
      }
      any |= inside;
    }
    boolean cut = any || holdsTurningPoint(zone, BANDS.indexOf(band), west, south, 2.0 * half);
    return new Note[] {beyond(cut, "zone " + zone.number() + ", band " + band)};
  }

  /**
   * Whether a corner of the zone's part of the band lies in a square, or the place where a parallel
   * of the band bends: such a square can meet the zone in a sliver that holds none of the nine
   * points.
   */
  private static boolean holdsTurningPoint(
      UtmZone zone, int band, double west, double south, double side) {
    double inBand = southOfBand(band) + 4.0;
    double[] out = new double[4];
    for (int i = -3; i <= 3; i++) { // the widest zone reaches 9° from its middle
      double meridian = zone.centralMeridianDegrees() + 3.0 * i;
      if (UtmZone.number(inBand, meridian) == zone.number()
          || UtmZone.number(inBand, meridian - 1.0) == zone.number()) {
        for (double parallel : new double[] {southOfBand(band), northOfBand(band)}) {
          MapGrid.utm(zone).forward(parallel, meridian, out, 0);
          if (isIn(west, side, out[0]) && isIn(south, side, out[1])) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private static boolean isIn(double from, double side, double metres) {
    return metres >= from - Figures.ROUNDING_METRES
        && metres <= from + side + Figures.ROUNDING_METRES;
  }

  static Note beyond(boolean cut, String area) {
    return cut
        ? Note.information(
            "mgrs.cut-by-zone",
            "The square is cut by the edge of " + area + "; its centre lies beyond the edge.")
        : Note.caution(
            "mgrs.beyond-zone",
            "The square lies beyond " + area + ": check the letters of the reference.");
  }
}
