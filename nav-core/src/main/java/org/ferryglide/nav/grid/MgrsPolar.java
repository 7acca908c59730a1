package org.ferryglide.nav.grid;

import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;

/** The letters of {@link Mgrs} in the polar regions, on the universal polar stereographic grid. */
final class MgrsPolar {
  private MgrsPolar() {}

  /** South-west, south-east, north-west, north-east half. */
  private static final String HALVES = "ABYZ";

  /** Letters of the columns, from the western edge of each half. */
  private static final String[] COLUMNS = {"JKLPQRSTUXYZ", "ABCFGHJKLPQR", "RSTUXYZ", "ABCFGHJ"};

  private static final int[] WEST_METRES = {800_000, 2_000_000, 1_300_000, 2_000_000};
  private static final String[] ROWS = {"ABCDEFGHJKLMNPQRSTUVWXYZ", "ABCDEFGHJKLMNP"};
  private static final int[] SOUTH_METRES = {800_000, 1_300_000};
  private static final int POLE_METRES = 2_000_000;

  static String reference(Position position, GridPrecision precision) {
    int pole = position.latitudeDegrees() > 0.0 ? 1 : 0;
    double[] plane = new double[4];
    grid(pole).forward(position.latitudeDegrees(), position.longitudeDegrees(), plane, 0);
    int east = Figures.wholeMetres(plane[0]);
    int north = Figures.wholeMetres(plane[1]);
    int half = 2 * pole + (east < POLE_METRES ? 0 : 1);
    StringBuilder text = new StringBuilder(13);
    text.append(HALVES.charAt(half));
    text.append(COLUMNS[half].charAt((east - WEST_METRES[half]) / Mgrs.SQUARE_METRES));
    text.append(ROWS[pole].charAt((north - SOUTH_METRES[pole]) / Mgrs.SQUARE_METRES));
    Figures.append(east, north, precision, "", text);
    return text.toString();
  }

  private static MapGrid grid(int pole) {
    return pole == 1 ? StandardGrids.UPS_NORTH : StandardGrids.UPS_SOUTH;
  }

  static GridSquare parse(String text, int from) {
    int half =
        Mgrs.letter(
            text, from, HALVES, "a reference starts with its zone, 1 to 60, or with A, B, Y or Z");
    int pole = half / 2;
    int columnAt = Figures.skipSpaces(text, from + 1);
    int column =
        Mgrs.letter(
            text,
            columnAt,
            COLUMNS[half],
            "the column letters of " + HALVES.charAt(half) + " are " + COLUMNS[half]);
    int rowAt = Figures.skipSpaces(text, columnAt + 1);
    int row =
        Mgrs.letter(
            text,
            rowAt,
            ROWS[pole],
            "the row letters of " + HALVES.charAt(half) + " are " + ROWS[pole]);
    Figures figures = Figures.read(text, rowAt + 1);
    double west = WEST_METRES[half] + column * Mgrs.SQUARE_METRES + figures.eastMetres();
    double south = SOUTH_METRES[pole] + row * Mgrs.SQUARE_METRES + figures.northMetres();
    return new GridSquare(
        grid(pole),
        west,
        south,
        figures.precision(),
        edgeNotes(pole, west, south, figures.precision()));
  }

  private static Note[] edgeNotes(int pole, double west, double south, GridPrecision precision) {
    double side = precision.sideMetres();
    if (isPolar(pole, west + side / 2.0, south + side / 2.0)) {
      return new Note[0];
    }
    // the pole is inside a circle, so the point of the square nearest to it decides
    boolean any =
        isPolar(
            pole,
            Math.max(west, Math.min(POLE_METRES, west + side)),
            Math.max(south, Math.min(POLE_METRES, south + side)));
    return new Note[] {Mgrs.beyond(any, "the polar grid")};
  }

  private static boolean isPolar(int pole, double easting, double northing) {
    double[] out = new double[4];
    grid(pole).reverse(easting, northing, out, 0);
    return pole == 1 ? out[0] >= UtmZone.NORTH_LIMIT_DEGREES : out[0] < UtmZone.SOUTH_LIMIT_DEGREES;
  }
}
