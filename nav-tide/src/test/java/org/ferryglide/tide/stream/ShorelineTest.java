package org.ferryglide.tide.stream;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;

class ShorelineTest {
  private static Position at(double latitude, double longitude) {
    return Position.ofDegrees(latitude, longitude);
  }

  /** A spit from 50 N to 50.1 N along 5 W, with a corner at 50.05 N. */
  private static final Shoreline SPIT =
      Shoreline.of(List.of(List.of(at(50.0, -5.0), at(50.05, -5.0), at(50.1, -5.0))));

  @Test
  void aSightAcrossTheLineIsCut() {
    assertTrue(SPIT.separates(50.02, -5.1, 50.03, -4.9));
    assertTrue(SPIT.separates(50.03, -4.9, 50.02, -5.1));
  }

  @Test
  void aSightRoundTheEndIsFree() {
    assertFalse(SPIT.separates(50.11, -5.1, 50.11, -4.9));
    assertFalse(SPIT.separates(50.02, -5.1, 50.09, -5.01));
  }

  @Test
  void aSightThroughACornerIsCut() {
    assertTrue(SPIT.separates(50.05, -5.1, 50.05, -4.9));
  }

  @Test
  void aPlaceOnTheLineIsNotCutOffByIt() {
    assertFalse(SPIT.separates(50.02, -5.0, 50.03, -4.9));
    assertFalse(SPIT.separates(50.02, -5.0, 50.04, -5.0));
  }

  @Test
  void theAntimeridianIsNoBorder() {
    Shoreline reef = Shoreline.of(List.of(List.of(at(-17.0, 179.95), at(-17.0, -179.95))));
    assertTrue(reef.separates(-17.1, 179.99, -16.9, -179.98));
    assertTrue(reef.separates(-17.1, -180.0, -16.9, 180.0));
    assertFalse(reef.separates(-17.1, 179.99, -17.2, -179.98));
  }

  @Test
  void aClosedIslandHidesWhatLiesBehindItAndInside() {
    List<Position> points = new ArrayList<>();
    for (int i = 0; i <= 100; i++) {
      double angle = 2 * Math.PI * (i % 100) / 100;
      points.add(at(50.0 + 0.1 * Math.cos(angle), -5.0 + 0.1 * Math.sin(angle)));
    }
    Shoreline island = Shoreline.of(List.of(points));
    assertTrue(island.separates(50.0, -5.2, 50.0, -4.8));
    assertTrue(island.separates(50.0, -5.2, 50.0, -5.0));
    assertFalse(island.separates(50.2, -5.2, 50.2, -4.8));
  }

  @Test
  void nothingSeparatesWhereThereIsNoLineOrNoNumber() {
    assertFalse(Shoreline.none().separates(50.0, -5.2, 50.0, -4.8));
    assertFalse(SPIT.separates(Double.NaN, -5.2, 50.0, -4.8));
  }

  @Test
  void linesAreReadFromASheet() throws IOException {
    String sheet = "line,latitude,longitude\nspit,50.0,-5.0\nspit,50.1,-5.0\n";
    Shoreline read = Shoreline.read("coast.csv", new StringReader(sheet));
    assertTrue(read.separates(50.02, -5.1, 50.03, -4.9));
  }

  @Test
  void aLineOfOnePointIsRefusedByItsLine() {
    String sheet = "line,latitude,longitude\nspit,50.0,-5.0\nspit,50.1,-5.0\nrock,50.2,-5.0\n";
    assertEquals(
        "coast.csv, line 4, column 1: line: rock must have at least 2 points, but had 1",
        assertThrows(
                InputFormatException.class,
                () -> Shoreline.read("coast.csv", new StringReader(sheet)))
            .getMessage());
    assertEquals(
        "a line of a shoreline must have at least 2 points, but had 1",
        assertThrows(
                IllegalArgumentException.class, () -> Shoreline.of(List.of(List.of(at(50, -5)))))
            .getMessage());
  }
}
