package org.ferryglide.nav.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ferryglide.nav.position.Position;
import org.ferryglide.testing.Seeds;

class MgrsProperties {
  @Provide
  Arbitrary<Position> places() {
    Arbitrary<Double> latitudes =
        Arbitraries.oneOf(
            Arbitraries.integers().between(-11, 11).map(band -> 8.0 * band),
            Arbitraries.of(84.0, 90.0, -90.0, Math.nextDown(84.0), Math.nextDown(-80.0), -0.0),
            Arbitraries.doubles().between(-90.0, 90.0).ofScale(10));
    Arbitrary<Double> longitudes =
        Arbitraries.oneOf(
            Arbitraries.integers().between(-60, 60).map(third -> 3.0 * third),
            Arbitraries.doubles().between(-180.0, 180.0).ofScale(10));
    return Combinators.combine(latitudes, longitudes).as(Position::ofDegrees);
  }

  @Property(seed = Seeds.SEED, tries = 2000)
  void coarserReferencesAreTheBeginningsOfFinerOnes(@ForAll("places") Position place) {
    String finest = Mgrs.reference(place, GridPrecision.METRE);
    int letters = finest.length() - 10;
    for (GridPrecision precision : GridPrecision.values()) {
      int digits = precision.figures() / 2;
      assertEquals(
          finest.substring(0, letters + digits)
              + finest.substring(letters + 5, letters + 5 + digits),
          Mgrs.reference(place, precision));
    }
  }

  @Property(seed = Seeds.SEED, tries = 2000)
  void theCentreOfASquareIsReferredToByItsReferenceUnlessItSaysOtherwise(
      @ForAll("places") Position place, @ForAll GridPrecision precision) {
    String reference = Mgrs.reference(place, precision);
    GridSquare square = Mgrs.parse(reference);
    boolean beyond =
        square.notes().stream().anyMatch(note -> note.code().equals("mgrs.cut-by-zone"))
            || square.notes().stream().anyMatch(note -> note.code().equals("mgrs.beyond-zone"));
    boolean back = reference.equals(Mgrs.reference(square.centre().position(), precision));
    assertEquals(!beyond, back, reference);
  }

  @Property(seed = Seeds.SEED, tries = 1000)
  void theCornerOfAWholeSquareLiesInIt(
      @ForAll("places") Position place, @ForAll GridPrecision precision) {
    String reference = Mgrs.reference(place, precision);
    GridSquare square = Mgrs.parse(reference);
    Position corner = square.southWestCorner().position();
    MapGrid around = StandardGrids.universal(corner);
    if (around.equals(square.grid())) {
      String again = Mgrs.reference(corner, precision);
      int squareLetters = reference.length() - precision.figures() - 2;
      assertEquals(
          reference.substring(squareLetters), again.substring(squareLetters), "but for the band");
    }
  }

  @Property(seed = Seeds.SEED, tries = 1000)
  void aPlaceIsNoFartherThanHalfADiagonalFromTheCentre(
      @ForAll("places") Position place, @ForAll GridPrecision precision) {
    GridSquare square = Mgrs.parse(Mgrs.reference(place, precision));
    GridPoint point = square.grid().at(place);
    double east = point.easting().metres() - square.centre().easting().metres();
    double north = point.northing().metres() - square.centre().northing().metres();
    double half = precision.sideMetres() / 2.0 + 1e-7;
    assertTrue(Math.abs(east) <= half && Math.abs(north) <= half, east + " " + north);
  }
}
