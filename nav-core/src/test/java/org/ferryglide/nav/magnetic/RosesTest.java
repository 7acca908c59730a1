package org.ferryglide.nav.magnetic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Severity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.testing.Rows;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What surrounds a single rose: age, several on one chart, comparison, working, rounding. */
class RosesTest {
  private static final LocalDate DATE = LocalDate.of(2026, 1, 1);
  private static final CompassRose ROSE = CompassRose.parse("4°15'W 2019 (8'E)");

  @ParameterizedTest(name = "a rose of {0}")
  @CsvSource({
    "2026,,",
    "2022,,",
    "2021,INFORMATION,'The rose is 5 years old; carried forward, it may be off by 0.3°.'",
    "2016,CAUTION,'The rose is 10 years old; carried forward, it may be off by 0.7°.'",
    "1996,WARNING,'The rose is 30 years old; carried forward, it may be off by 3.0°. Use a newer"
        + " chart or a model.'",
    "2027,CAUTION,'The rose is of 2027, later than the date; it was carried back.'",
  })
  void ageIsNotedWithTheErrorToExpect(int year, Severity severity, String text) {
    CompassRose rose = new CompassRose(ROSE.variation(), year, ROSE.annualChange());
    List<Note> notes = rose.notesAt(DATE);
    assertEquals(severity == null ? 0 : 1, notes.size());
    if (severity != null) {
      assertEquals(severity, notes.get(0).severity());
      assertEquals(text, notes.get(0).text());
      assertEquals(year > 2026 ? "rose.later" : "rose.old", notes.get(0).code());
    }
  }

  @Test
  void expectedErrorRunsThroughTheMeasuredFigures() {
    assertEquals(0.0, ROSE.expectedErrorDegrees(LocalDate.of(2019, 1, 1)));
    assertEquals(0.21, ROSE.expectedErrorDegrees(LocalDate.of(2024, 1, 1)), 1e-12);
    assertEquals(1.57, ROSE.expectedErrorDegrees(LocalDate.of(2039, 1, 1)), 1e-12);
    assertEquals(4.35, ROSE.expectedErrorDegrees(LocalDate.of(2059, 1, 1)), 1e-12);
    assertEquals(0.21, ROSE.expectedErrorDegrees(LocalDate.of(2014, 1, 1)), 1e-12);
    Position high = Position.ofDegrees(60, 5);
    assertEquals(1.13, ROSE.expectedErrorDegrees(LocalDate.of(2029, 1, 1), high), 1e-12);
    assertEquals(0.61, ROSE.expectedErrorDegrees(LocalDate.of(2029, 1, 1), WEST.position()), 1e-12);
  }

  /** Coasts of north-west Europe, the Atlantic and the Pacific, north and south. */
  private static final double[][] COASTS = {
    {48.5, -5},
    {50, -5.5},
    {53, -10},
    {57, -7.5},
    {60, 5},
    {62, 5},
    {70, 24},
    {64, -22},
    {44.5, -63},
    {49, -125},
    {-36, 174},
    {37, -123},
    {58, -134},
    {-42, 147},
    {56, 11}
  };

  /** The measurement behind the figures: roses made from IGRF-14, carried to 2026, WMM2025. */
  @ParameterizedTest
  @CsvSource({"2021, 0.1", "2016, 0.6", "2006, 1.3", "1996, 2.9"})
  void expectedErrorCoversTwiceTheRootMeanSquareOfFifteenCoasts(int year, double expected)
      throws IOException {
    MagneticModel igrf =
        MagneticModel.readShc("igrf", new StringReader(Rows.text(RosesTest.class, "igrf14.shc")));
    double squares = 0.0;
    for (double[] coast : COASTS) {
      Position place = Position.ofDegrees(coast[0], coast[1]);
      double now = MagneticModel.wmm2025().at(DATE).variation(place).degreesEast();
      for (int changeOf : new int[] {year - 5, year}) { // the five years before, and after
        CompassRose rose =
            new CompassRose(
                igrf.atDecimalYear(year).variation(place),
                year,
                igrf.atDecimalYear(changeOf).annualChange(place));
        double off = rose.variationInYear(2026).degreesEast() - now;
        squares += off * off / (2.0 * COASTS.length);
      }
    }
    double measured = 2.0 * Math.sqrt(squares);
    assertEquals(expected, measured, 0.05); // the figures are given to a tenth of a degree
    CompassRose rose = new CompassRose(ROSE.variation(), year, ROSE.annualChange());
    double stated = 0.0; // four of the fifteen lie at 60° and more
    for (double[] coast : COASTS) {
      double error = rose.expectedErrorDegrees(DATE, Position.ofDegrees(coast[0], coast[1]));
      stated += error * error / COASTS.length;
    }
    assertTrue(measured <= Math.sqrt(stated), measured + " against " + Math.sqrt(stated));
  }

  private static final PlacedRose WEST =
      new PlacedRose(Position.ofDegrees(57.0, -8.0), CompassRose.parse("4°00'W 2026 (8'E)"));
  private static final PlacedRose EAST =
      new PlacedRose(Position.ofDegrees(57.0, -6.0), CompassRose.parse("3°00'W 2026 (10'E)"));
  private static final PlacedRose NORTH =
      new PlacedRose(Position.ofDegrees(59.0, -8.0), CompassRose.parse("5°00'W 2006 (10'E)"));

  @Test
  void twoRosesAreWeighedByThePlaceBetweenThem() {
    ChartRoses roses = ChartRoses.of(List.of(WEST, EAST));
    assertEquals(2, roses.roses().size());
    RoseReading middle = roses.between(Position.ofDegrees(57.0, -7.0), DATE);
    assertEquals(-3.5, middle.variation().degreesEast(), 1e-6);
    assertEquals(9.0, middle.annualChange().minutesEast(), 1e-4);
    assertEquals(0.5, middle.weight(1), 1e-6);
    RoseReading quarter = roses.between(Position.ofDegrees(57.0, -7.5), DATE);
    assertEquals(-3.75, quarter.variation().degreesEast(), 2e-4); // the line is a geodesic
    assertEquals(List.of(WEST.position(), EAST.position()), List.copyOf(quarter.roses().keySet()));
    assertEquals(1.0, quarter.weight(0) + quarter.weight(1));
    assertEquals("rose.weighted", quarter.notes().get(0).code());
    assertEquals(
        "Interpolated between two roses, of which the nearer counts 75 % and the other 25 %.",
        quarter.notes().get(0).text());
  }

  @Test
  void atARoseAndBeyondItThatRoseAloneCounts() {
    ChartRoses roses = ChartRoses.of(List.of(WEST, EAST));
    assertEquals(WEST.rose().variation(), roses.between(WEST.position(), DATE).variation());
    assertEquals(
        EAST.rose().variation(), roses.between(Position.ofDegrees(57.0, -4.0), DATE).variation());
  }

  /** Near a magnetic pole 179° W and 179° E are neighbours, and their middle is 180°, not 0°. */
  @Test
  void rosesOnBothSidesOf180DegreesAreWeighedTheShortWay() {
    PlacedRose west =
        new PlacedRose(Position.ofDegrees(80.0, -110.0), CompassRose.parse("179°W 2026 (nil)"));
    PlacedRose east =
        new PlacedRose(Position.ofDegrees(80.0, -100.0), CompassRose.parse("178°E 2026 (nil)"));
    ChartRoses roses = ChartRoses.of(List.of(west, east));
    assertEquals(
        179.5,
        roses.between(Position.ofDegrees(80.0, -105.0), DATE).variation().degreesEast(),
        1e-6);
  }

  @Test
  void theNearestRoseIsTakenAsItIsWithItsAge() {
    ChartRoses roses = ChartRoses.of(List.of(WEST, EAST, NORTH));
    RoseReading reading = roses.nearest(Position.ofDegrees(58.9, -7.9), DATE);
    assertEquals(Map.of(NORTH.position(), NORTH.rose()), reading.roses());
    assertEquals(Variation.parse("1°40'W").degreesEast(), reading.variation().degreesEast(), 1e-12);
    assertEquals(List.of("rose.old"), reading.notes().stream().map(Note::code).toList());
    ChartRoses single = ChartRoses.of(List.of(NORTH));
    assertEquals(
        single.nearest(WEST.position(), DATE).variation(),
        single.between(WEST.position(), DATE).variation());
  }

  @Test
  void rosesThatCannotBeToldApartAreRefused() {
    assertEquals(
        "a chart's roses must be at least one",
        assertThrows(IllegalArgumentException.class, () -> ChartRoses.of(List.of())).getMessage());
    assertThrows(
        IllegalArgumentException.class,
        () -> ChartRoses.of(List.of(WEST, new PlacedRose(WEST.position(), EAST.rose()))));
  }

  @Test
  void aRoseThatAgreesWithTheModelIsNoSurprise() {
    // WMM2025 gives about 2.7°W and 11' E a year at 57°N 7°W in 2026 (regression value)
    Position place = Position.ofDegrees(57.0, -7.0);
    Variation model = MagneticModel.wmm2025().at(DATE).variation(place);
    CompassRose rose = new CompassRose(model, 2026, AnnualChange.ofMinutesEast(10));
    RoseComparison comparison =
        RoseComparison.of(rose, MagneticModel.wmm2025(), place, DATE).orElseThrow();
    assertTrue(comparison.agrees());
    assertEquals(0.0, comparison.differenceDegreesEast(), 1e-12);
    assertEquals(model, comparison.modelVariation());
    assertEquals(model, comparison.roseVariation());
    assertEquals(AnnualChange.ofMinutesEast(10), comparison.roseChange());
    assertEquals(MagneticModel.wmm2025().at(DATE).annualChange(place), comparison.modelChange());
    assertTrue(comparison.notes().isEmpty());
    assertTrue(comparison.allowedDegrees() > 0.5 && comparison.allowedDegrees() < 1.0);
  }

  @Test
  void aMisreadLetterShowsAtOnce() {
    Position place = Position.ofDegrees(57.0, -7.0);
    CompassRose misread = CompassRose.parse("4°15'E 2019 (8'E)");
    RoseComparison comparison =
        RoseComparison.of(misread, MagneticModel.wmm2025(), place, DATE).orElseThrow();
    assertFalse(comparison.agrees());
    List<Note> notes = comparison.notes();
    assertEquals("rose.disagrees", notes.get(notes.size() - 1).code());
    assertTrue(comparison.toString().startsWith("rose 5°11'E (8'E), model "));
  }

  @Test
  void theWorkingIsThatOfALearner() {
    assertEquals(
        """
        Variation carried from 2019 to 2026
          Variation 2019  4°15'W  from the rose
          Annual change   8'E     from the rose
          Years           7       from 2019 to 2026
          Change          56'E    annual change times years
          Variation 2026  3°19'W  letters differ: take away\
        """,
        ROSE.workingInYear(2026).toString());
    assertEquals(
        "letters differ: take away, past zero, so the letter changes",
        CompassRose.parse("0°30'W 2020 (10'E)").workingInYear(2026).steps().get(4).rule());
    assertEquals(
        "0°30'E", CompassRose.parse("0°30'W 2020 (10'E)").workingInYear(2026).result().text());
    assertEquals(
        "same letters: add",
        CompassRose.parse("2°W 2020 (10'W)").workingInYear(2026).steps().get(4).rule());
    assertEquals(
        "nothing to add",
        CompassRose.parse("2°W 2020 (nil)").workingInYear(2026).steps().get(4).rule());
    assertEquals(
        CompassRose.parse("5°11'E 1995 (7.6'W)").variationInYear(2001).degreesEast(),
        CompassRose.parse("5°11'E 1995 (7.6'W)").workingInYear(2001).result().exact());
  }

  @Test
  void roundingForTheHelmSaysWhatItCosts() {
    HelmVariation helm = HelmVariation.of(Variation.parse("3°16'W"));
    assertEquals(Variation.ofDegreesWest(3), helm.rounded());
    assertEquals(-16.0 / 60.0, helm.leftOverDegreesEast(), 1e-12);
    assertEquals(
        1852.0 * Math.sin(Math.toRadians(16.0 / 60.0)),
        helm.crossTrack(Distance.ofNauticalMiles(1)).metres(),
        1e-9);
    assertEquals(
        "Steer with 3°W for 3°16'W: 9 m off the line in each nautical mile, less than a hand can"
            + " hold. Round once, at the end.",
        helm.note().text());
    assertTrue(
        HelmVariation.of(Variation.parse("3°28'W")).note().text().contains("4°W would serve"));
    assertEquals(Variation.ofDegreesEast(4), HelmVariation.of(Variation.parse("3°30'E")).rounded());
  }

  /** 7.6' for six years is 45.6', not six times 8'. */
  @Test
  void theWorkingKeepsTheTenthsThatAreKnown() {
    assertEquals(
        """
        Variation carried from 1995 to 2001
          Variation 1995  5°11'E  from the rose
          Annual change   7.6'W   from the rose
          Years           6       from 1995 to 2001
          Change          45.6'W  annual change times years
          Variation 2001  4°25'E  letters differ: take away\
        """,
        CompassRose.parse("5°11'E 1995 (7.6'W)")
            .workingInYear(2001)
            .toString()
            .split("\n  without", 2)[0]);
  }

  private static PlacedRose drawn(MagneticSnapshot model, double latitude, double longitude) {
    Position place = Position.ofDegrees(latitude, longitude);
    return new PlacedRose(
        place, new CompassRose(model.variation(place), 2026, model.annualChange(place)));
  }

  @Test
  void thePlaneThroughThreeRosesFollowsTheModelWithoutAJump() {
    MagneticSnapshot model = MagneticModel.wmm2025().at(DATE);
    SplittableRandom random = new SplittableRandom(5);
    double worst = 0.0;
    for (int i = 0; i < 300; i++) {
      double south = -60.0 + 118.0 * random.nextDouble();
      double west = -180.0 + 360.0 * random.nextDouble();
      Position corner = Position.ofDegrees(south, Angles.shortWay(west));
      if (model.field(corner).horizontalNanotesla() < 12_000.0) {
        continue; // where the variation itself runs wild no three roses can follow it
      }
      ChartRoses roses =
          ChartRoses.of(
              List.of(
                  drawn(model, south, Angles.shortWay(west)),
                  drawn(model, south + 0.3, Angles.shortWay(west + 3.0)),
                  drawn(model, south + 2.0, Angles.shortWay(west + 1.2))));
      double u = random.nextDouble();
      double v = random.nextDouble() * (1.0 - u);
      double latitude = south + 0.3 * u + 2.0 * v;
      double longitude = west + 3.0 * u + 1.2 * v;
      Position place = Position.ofDegrees(latitude, Angles.shortWay(longitude));
      double found = roses.between(place, DATE).variation().degreesEast();
      worst = Math.max(worst, Math.abs(found - model.variation(place).degreesEast()));
      Position beside = Position.ofDegrees(latitude, Angles.shortWay(longitude + 0.005));
      assertEquals(found, roses.between(beside, DATE).variation().degreesEast(), 0.02);
    }
    assertTrue(worst < 0.06, "" + worst);
    assertTrue(worst > 0.005, "" + worst);
  }

  /** Two nearest roses, chosen anew at each place, once made the variation jump by 0.6°. */
  @Test
  void amongManyRosesTheVariationRunsOn() {
    ChartRoses roses =
        ChartRoses.of(
            List.of(
                WEST,
                EAST,
                new PlacedRose(Position.ofDegrees(58, -7), CompassRose.parse("3°00'W 2026 (8'E)")),
                new PlacedRose(
                    Position.ofDegrees(56, -7), CompassRose.parse("5°00'W 2026 (8'E)"))));
    for (double latitude = 55.0; latitude < 59.0; latitude += 0.37) {
      double before = Double.NaN;
      for (double longitude = -11.0; longitude < -3.0; longitude += 0.005) {
        double here =
            roses.between(Position.ofDegrees(latitude, longitude), DATE).variation().degreesEast();
        if (!Double.isNaN(before)) {
          assertEquals(before, here, 0.02, latitude + " " + longitude);
        }
        before = here;
      }
    }
    RoseReading atWest = roses.between(WEST.position(), DATE);
    assertEquals(-4.0, atWest.variation().degreesEast(), 1e-9);
    double sum = 0.0;
    for (int i = 0; i < 4; i++) {
      sum += atWest.weight(i);
    }
    assertEquals(1.0, sum, 1e-12);
    assertEquals(WEST.position(), atWest.roses().keySet().iterator().next());
    RoseReading far = roses.between(Position.ofDegrees(57, 20), DATE);
    assertTrue(far.notes().stream().anyMatch(note -> note.code().equals("rose.beyond")));
    assertTrue(Math.abs(far.variation().degreesEast()) < 10.0);
  }

  @Test
  void aRoseOfDegreesAYearIsDoubtedAloud() {
    assertEquals(
        "rose.swift", CompassRose.parse("4°15'W 2019 (480'E)").notesAt(DATE).get(0).code());
    assertEquals(
        Severity.WARNING, CompassRose.parse("4°15'W 2019 (61'E)").notesAt(DATE).get(0).severity());
    assertTrue(CompassRose.parse("4°15'W 2026 (60'E)").notesAt(DATE).isEmpty());
  }

  @Test
  void besideAMagneticPoleThereIsNoComparison() {
    Position dipPole = Position.ofDegrees(-63.8, 135.1);
    assertEquals(CompassZone.BLACKOUT, MagneticModel.wmm2025().at(DATE).field(dipPole).zone());
    assertTrue(RoseComparison.of(ROSE, MagneticModel.wmm2025(), dipPole, DATE).isEmpty());
  }
}
