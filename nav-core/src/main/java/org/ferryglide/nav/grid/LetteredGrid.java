package org.ferryglide.nav.grid;

import org.ferryglide.nav.note.TextFormatException;
import org.ferryglide.nav.position.Position;

/**
 * Grid references of letters and figures, as British and Irish land maps print them.
 *
 * <pre>{@code
 * LetteredGrid.BRITISH.reference(landing, GridPrecision.HUNDRED_METRES); // SW 473 287
 * Position middle = LetteredGrid.BRITISH.parse("SW 473 287").centre().position();
 * LetteredGrid.IRISH.reference(pier, GridPrecision.KILOMETRE); // one letter: V 93 27
 * }</pre>
 *
 * <p>A letter names a square of a five by five block, A in the north-west, Z in the south-east,
 * without I. Irish maps use one letter for 100 km; British ones a letter for 500 km and another for
 * 100 km within it. The figures are truncated, never rounded: they are the south-west corner of a
 * square that holds the place.
 */
@SuppressWarnings(
    "ImmutableEnumChecker") // a MapGrid is immutable, but carries no annotation that says so
public enum LetteredGrid {
  /** Two letters, from 1000 km west and 500 km south of the false origin. */
  BRITISH(StandardGrids.BRITISH_NATIONAL_GRID, 2, -1_000_000, -500_000, LettersOfLand.BRITISH),
  /** One letter, from the false origin. */
  IRISH(StandardGrids.IRISH_GRID, 1, 0, 0, LettersOfLand.ALL);

  private static final String LETTERS = "ABCDEFGHJKLMNOPQRSTUVWXYZ";
  private static final int SQUARE_METRES = 100_000;

  private final MapGrid grid;
  private final int letters;

  /** Squares of 100 km along a side of the lettered block: 5 or 25. */
  private final int squares;

  private final int westMetres;
  private final int southMetres;

  /** The squares of which there are land maps, separated by spaces; empty for all. */
  private final String land;

  LetteredGrid(MapGrid grid, int letters, int westMetres, int southMetres, String land) {
    this.grid = grid;
    this.land = land;
    this.letters = letters;
    this.squares = letters == 1 ? 5 : 25;
    this.westMetres = westMetres;
    this.southMetres = southMetres;
  }

  /**
   * The grid that is lettered.
   *
   * @return the grid
   */
  public MapGrid grid() {
    return grid;
  }

  /**
   * The reference of the square that a place lies in, for somebody who looks it up on a land map of
   * the country.
   *
   * @param position where
   * @param precision how fine
   * @return for example {@code SW 473 287}
   * @throws IllegalArgumentException if the country has no land maps there: beyond the area of its
   *     datum, or in a square of 100 km without land of its own, as Dublin's on the British grid
   */
  public String reference(Position position, GridPrecision precision) {
    if (!grid.datum().covers(position)) {
      throw new IllegalArgumentException(
          "position must lie where maps of " + grid + " are used, but was " + position);
    }
    String text = reference(grid.at(position), precision);
    if (!land.isEmpty() && !land.contains(text.substring(0, letters))) {
      throw new IllegalArgumentException(
          "position must lie in a square that land maps of "
              + grid
              + " show, but was "
              + position
              + " in square "
              + text.substring(0, letters));
    }
    return text;
  }

  /**
   * The reference of the square that a point of the map lies in. A coordinate less than a ten
   * millionth of a metre below a whole unit, which is the rounding of a position, counts as that
   * unit. The point's {@link GridPoint#notes} say whether the grid is used there.
   *
   * @param point a point of this grid
   * @param precision how fine
   * @return for example {@code SW 473 287}
   * @throws IllegalArgumentException if the point lies beyond the lettered squares or is of another
   *     grid
   */
  public String reference(GridPoint point, GridPrecision precision) {
    if (!point.grid().equals(grid)) {
      throw new IllegalArgumentException(
          "point must be of " + grid + ", but was of " + point.grid());
    }
    int east = Figures.wholeMetres(point.easting().metres()) - westMetres;
    int north = Figures.wholeMetres(point.northing().metres()) - southMetres;
    int column = Math.floorDiv(east, SQUARE_METRES);
    int row = Math.floorDiv(north, SQUARE_METRES);
    if (column < 0 || row < 0 || column >= squares || row >= squares) {
      throw new IllegalArgumentException(
          "a point must lie in the lettered squares of " + grid + ", but was " + point);
    }
    StringBuilder text = new StringBuilder(14);
    if (letters == 2) {
      text.append(letter(column / 5, row / 5));
    }
    text.append(letter(column % 5, row % 5));
    if (precision.digits() > 0) {
      text.append(' ');
    }
    Figures.append(east, north, precision, " ", text);
    return text.toString();
  }

  private static char letter(int column, int row) {
    return LETTERS.charAt(5 * (4 - row) + column);
  }

  /**
   * Reads a reference: {@code SW 473 287}, {@code SW471273}, {@code sw 4 2}, {@code SW}.
   *
   * @param text the letters, of either case, then none to five figures of easting and as many of
   *     northing, together or apart
   * @return the square it names
   * @throws TextFormatException if the text is anything else
   */
  public GridSquare parse(String text) {
    int place = Figures.skipSpaces(text, 0);
    int column = 0;
    int row = 0;
    for (int i = 0; i < letters; i++) {
      int index = place < text.length() ? LETTERS.indexOf(upper(text.charAt(place))) : -1;
      if (index < 0) {
        throw new TextFormatException(
            letters == 1
                ? "a reference starts with a letter from A to Z without I"
                : "a reference starts with two letters from A to Z without I",
            text,
            place);
      }
      column = 5 * column + index % 5;
      row = 5 * row + 4 - index / 5;
      place++;
    }
    Figures figures = Figures.read(text, place);
    return new GridSquare(
        grid,
        westMetres + column * SQUARE_METRES + figures.eastMetres(),
        southMetres + row * SQUARE_METRES + figures.northMetres(),
        figures.precision());
  }

  private static char upper(char c) {
    return Character.toUpperCase(c);
  }

  /** A holder, since an enum's own constants come before its other fields. */
  private static final class LettersOfLand {
    static final String ALL = "";

    /**
     * The squares that hold land of Great Britain or Man, as the diagram of the National Grid on
     * Ordnance Survey's maps and web page (The National Grid) has them.
     */
    static final String BRITISH =
        "HP HT HU HW HX HY HZ NA NB NC ND NF NG NH NJ NK NL NM NN NO NR NS NT NU NW NX NY NZ OV SC"
            + " SD SE SH SJ SK SM SN SO SP SR SS ST SU SV SW SX SY SZ TA TF TG TL TM TQ TR TV";
  }
}
