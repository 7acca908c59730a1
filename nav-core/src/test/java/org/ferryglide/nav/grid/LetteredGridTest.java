package org.ferryglide.nav.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.ferryglide.nav.note.TextFormatException;
import org.ferryglide.nav.position.Position;
import org.ferryglide.testing.Seeds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LetteredGridTest {
  private static final MapGrid BRITISH = StandardGrids.BRITISH_NATIONAL_GRID;

  /** Ordnance Survey's worked example lies in square TG, as GeographicLib's OSGB example reads. */
  @Test
  void theOrdnanceSurveysExampleHasItsLetters() {
    GridPoint point = BRITISH.atMetres(651409.903, 313177.270);
    assertEquals("TG", ref(point, GridPrecision.HUNDRED_KILOMETRES));
    assertEquals("TG 5 1", ref(point, GridPrecision.TEN_KILOMETRES));
    assertEquals("TG 51 13", ref(point, GridPrecision.KILOMETRE));
    assertEquals("TG 514 131", ref(point, GridPrecision.HUNDRED_METRES));
    assertEquals("TG 5140 1317", ref(point, GridPrecision.TEN_METRES));
    assertEquals("TG 51409 13177", ref(point, GridPrecision.METRE));
  }

  private static String ref(GridPoint point, GridPrecision precision) {
    return LetteredGrid.BRITISH.reference(point, precision);
  }

  /**
   * The squares of the national grid by the kilometres of their corners: Ordnance Survey, A guide
   * to coordinate systems in Great Britain, and the diagram on every map.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "SV, 0, 0",
    "SW, 100, 0",
    "TQ, 500, 100",
    "TV, 500, 0",
    "SA, 0, 400",
    "SJ, 300, 300",
    "NT, 300, 600",
    "NN, 200, 700",
    "OV, 500, 500",
    "HP, 400, 1200",
    "HU, 400, 1100",
    "NA, 0, 900",
    "HL, 0, 1200",
    "JV, 500, 1000"
  })
  void britishLettersStandWhereTheyShould(String letters, int eastKilometres, int northKilometres) {
    GridSquare square = LetteredGrid.BRITISH.parse(letters);
    assertEquals(1000.0 * eastKilometres, square.southWestCorner().easting().metres());
    assertEquals(1000.0 * northKilometres, square.southWestCorner().northing().metres());
    assertEquals(letters, ref(square.southWestCorner(), GridPrecision.HUNDRED_KILOMETRES));
    assertEquals(letters, ref(square.centre(), GridPrecision.HUNDRED_KILOMETRES));
  }

  /** The five by five letters of the Irish Grid, as the maps' diagram has them. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "V, 0, 0",
    "Z, 400, 0",
    "A, 0, 400",
    "E, 400, 400",
    "N, 200, 200",
    "O, 300, 200",
    "J, 300, 300"
  })
  void irishLettersStandWhereTheyShould(String letter, int eastKilometres, int northKilometres) {
    GridSquare square = LetteredGrid.IRISH.parse(letter + " 12 34");
    assertEquals(1000.0 * eastKilometres + 12000.0, square.southWestCorner().easting().metres());
    assertEquals(1000.0 * northKilometres + 34000.0, square.southWestCorner().northing().metres());
    assertEquals(
        letter + " 12 34", LetteredGrid.IRISH.reference(square.centre(), GridPrecision.KILOMETRE));
  }

  @Test
  void everySquareOfTheLettersReadsAsItself() {
    for (char one = 'A'; one <= 'Z'; one++) {
      for (char two = 'A'; two <= 'Z'; two++) {
        if (one != 'I' && two != 'I') {
          String letters = "" + one + two;
          GridPoint centre = LetteredGrid.BRITISH.parse(letters).centre();
          assertEquals(letters, ref(centre, GridPrecision.HUNDRED_KILOMETRES));
        }
      }
    }
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "SW471273, SW 471 273", "sw 471 273, SW 471 273", "' SW 471273 ', SW 471 273",
    "SW4 2, SW 4 2", "SW, SW", "SW 47100 27300, SW 47100 27300"
  })
  void textIsReadInAnyOfItsForms(String text, String plain) {
    GridSquare square = LetteredGrid.BRITISH.parse(text);
    assertEquals(plain, ref(square.southWestCorner(), square.precision()));
  }

  @ParameterizedTest(name = "[{0}]")
  @CsvSource(
      delimiter = ';',
      value = {
        "''; 0; a reference starts with two letters from A to Z without I",
        "S; 1; a reference starts with two letters from A to Z without I",
        "SI 12; 1; a reference starts with two letters from A to Z without I",
        "1 12; 0; a reference starts with two letters from A to Z without I",
        "SW 12 3; 7; easting and northing must have the same number of figures",
        "SW 1; 4; easting and northing must have the same number of figures",
        "SW 12.3; 5; only figures may follow the letters",
        "SWX; 2; only figures may follow the letters",
        "SW 123456 789012; 14; at most ten figures may follow the letters",
      })
  void otherTextIsRefusedAtItsCharacter(String text, int index, String reason) {
    TextFormatException refusal =
        assertThrows(TextFormatException.class, () -> LetteredGrid.BRITISH.parse(text));
    String message = String.valueOf(refusal.getMessage());
    assertEquals(reason, message.substring(0, message.indexOf(": at ")));
    assertEquals(index, refusal.index());
  }

  @Test
  void oneLetterIsEnoughInIreland() {
    TextFormatException refusal =
        assertThrows(TextFormatException.class, () -> LetteredGrid.IRISH.parse("I 12"));
    assertEquals(
        "a reference starts with a letter from A to Z without I: at character 1 ('I') of \"I 12\"",
        refusal.getMessage());
  }

  @Test
  void placesBeyondTheLettersAreRefused() {
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class,
            () ->
                LetteredGrid.IRISH.reference(
                    StandardGrids.IRISH_GRID.atMetres(-1.0, 5.0), GridPrecision.METRE));
    assertEquals(
        "a point must lie in the lettered squares of Irish Grid, but was E -1.0 N 5.0 [Irish"
            + " Grid]",
        refusal.getMessage());
    assertThrows(
        IllegalArgumentException.class,
        () -> ref(BRITISH.at(Position.ofDegrees(50, 20)), GridPrecision.METRE));
    refusal =
        assertThrows(
            IllegalArgumentException.class,
            () ->
                LetteredGrid.IRISH.reference(BRITISH.atMetres(100000.0, 5.0), GridPrecision.METRE));
    assertEquals(
        "point must be of Irish Grid, but was of British National Grid", refusal.getMessage());
  }

  @Test
  void theEdgesWestAndSouthBelongToASquare() {
    GridSquare square = LetteredGrid.BRITISH.parse("SW 47 27");
    assertTrue(square.contains(square.southWestCorner()));
    assertTrue(square.contains(square.centre()));
    assertFalse(square.contains(BRITISH.atMetres(148000.0, 27500.0)));
    assertFalse(square.contains(BRITISH.atMetres(147500.0, 28000.0)));
    assertFalse(square.contains(BRITISH.atMetres(146999.999, 27500.0)));
    assertEquals("1000 m square from E 147000 N 27000 [British National Grid]", square.toString());
    assertEquals("grid.helmert-only", square.notes().get(0).code());
    assertThrows(
        IllegalArgumentException.class,
        () -> square.contains(StandardGrids.IRISH_GRID.atMetres(1.0, 1.0)));
  }

  @Property(seed = Seeds.SEED, tries = 500)
  void figuresAreThoseOfThePoint(
      @ForAll @IntRange(max = 699_999) int east, @ForAll @IntRange(max = 1_299_999) int north) {
    String text = ref(BRITISH.atMetres(east + 0.999, north + 0.999), GridPrecision.METRE);
    GridSquare square = LetteredGrid.BRITISH.parse(text);
    assertEquals(east, square.southWestCorner().easting().metres());
    assertEquals(north, square.southWestCorner().northing().metres());
    Position corner = square.southWestCorner().position();
    assertEquals(text, ref(BRITISH.at(corner), GridPrecision.METRE));
  }

  @Test
  void precisionsKnowTheirFiguresAndSides() {
    int side = 100_000;
    int figures = 0;
    for (GridPrecision precision : GridPrecision.values()) {
      assertEquals(side, precision.sideMetres());
      assertEquals(figures, precision.figures());
      side /= 10;
      figures += 2;
    }
  }

  /** Paris, Dublin, the Faroes, the sea west of Ireland: no British land map shows them. */
  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({"48.86, 2.35", "53.35, -6.26", "62.0, -6.8", "53.0, -11.0", "57.0, 1.9"})
  void britishReferencesEndWithBritain(double lat, double lon) {
    Position place = Position.ofDegrees(lat, lon);
    assertThrows(
        IllegalArgumentException.class,
        () -> LetteredGrid.BRITISH.reference(place, GridPrecision.HUNDRED_METRES));
  }

  @Test
  void irishReferencesEndWithIreland() {
    assertEquals(
        "position must lie where maps of Irish Grid are used, but was 53.3°N 4.6°W",
        assertThrows(
                IllegalArgumentException.class,
                () ->
                    LetteredGrid.IRISH.reference(
                        Position.ofDegrees(53.3, -4.6), GridPrecision.KILOMETRE))
            .getMessage());
    assertEquals(
        "O 15 34",
        LetteredGrid.IRISH.reference(Position.ofDegrees(53.35, -6.26), GridPrecision.KILOMETRE));
  }

  @Test
  void aPointWhereTheGridIsNotUsedSaysSo() {
    GridPoint paris = BRITISH.at(Position.ofDegrees(48.86, 2.35));
    assertEquals("grid.beyond-datum", paris.notes().get(0).code());
    assertEquals("grid.helmert-only", paris.notes().get(1).code());
    assertEquals(
        "grid.beyond-datum", LetteredGrid.BRITISH.parse("YH 158 866").notes().get(0).code());
    GridPoint home = BRITISH.at(Position.ofDegrees(50.105, -5.535));
    assertEquals("grid.helmert-only", home.notes().get(0).code());
  }
}
