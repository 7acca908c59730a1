package org.ferryglide.tide.height;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TableCurveTest {
  private static final double METRES_PER_FOOT = 0.3048;
  private static final TideTable SEMIDIURNAL =
      Tables.ofHours("Skarra", 0, 1.0, 6.2, 5.0, 12.4, 1.2, 18.6, 4.8);

  private static double height(TideCurve curve, double hour) {
    return curve.heightAt(Tables.atHour(hour)).get().metres();
  }

  private static List<String> codes(TideCurve curve, double hour) {
    return curve.notesAt(Tables.atHour(hour)).stream().map(Note::code).toList();
  }

  /**
   * Source: Canadian Tide and Current Tables, example of Table 5 (height of tide at any time): low
   * water 2.2 ft at 0327, high water 11.4 ft at 1141; at 0700 the answer is 5.8 ft. The table takes
   * the duration to ten minutes and the range to a foot; the cosine gives 5.81 ft.
   */
  @Test
  void theCanadianExampleOfTheHeightAtAnyTimeIsMetToItsDigit() {
    TideTable table =
        Tables.ofHours(
            "Skarra", 3 + 27 / 60.0, 2.2 * METRES_PER_FOOT, 11 + 41 / 60.0, 11.4 * METRES_PER_FOOT);
    double halfAPrintedTenth = 0.05;
    assertEquals(5.8, height(TableCurve.cosine(table), 7.0) / METRES_PER_FOOT, halfAPrintedTenth);
  }

  @Test
  void canadianWorkedFormAtMontagueHarbour() {
    // Canadian Tide and Current Tables, Table 5 worked form (Montague Harbour, 1 October 2003,
    // times
    // as printed): low 0327 2.2 ft, high 1141 11.4 ft, wanted 0700; prints 5.8 ft
    TideTable table =
        TideTable.of(
            "Montague Harbour",
            "chart datum",
            List.of(
                TideEvent.low(
                    Instant.parse("2003-10-01T03:27:00Z"),
                    Distance.ofMetres(2.2 * METRES_PER_FOOT)),
                TideEvent.high(
                    Instant.parse("2003-10-01T11:41:00Z"),
                    Distance.ofMetres(11.4 * METRES_PER_FOOT))));
    double feet =
        TableCurve.cosine(table).heightAt(Instant.parse("2003-10-01T07:00:00Z")).get().metres()
            / METRES_PER_FOOT;
    assertEquals(5.8, feet, 0.05); // half a printed tenth
    assertEquals(5.813106, feet, 5e-7);
  }

  @ParameterizedTest
  @CsvSource({"0, 1.0", "1, 1.3", "2, 1.9", "3, 2.8", "4, 3.7", "5, 4.3", "6, 4.6"})
  void twelfthsOfASixHourRiseOfTwelveThirtiethsOfAMetre(int hour, double metres) {
    TideTable table = Tables.ofHours("Skarra", 0, 1.0, 6, 4.6);
    assertEquals(metres, height(TableCurve.twelfths(table), hour), 1e-9);
    assertEquals(metres, height(TableCurve.twelfthsByTheHour(table), hour), 1e-9);
  }

  @ParameterizedTest
  // 0.3 m is a twelfth; the rise takes 6 h 30 min, so the tide stands for the last half hour
  @CsvSource({"1, 0.3", "2.5, 1.35", "5, 3.3", "6, 3.6", "6.25, 3.6", "6.5, 3.6"})
  void byTheHourTheTideStandsAfterSixHours(double hour, double metres) {
    TideCurve curve = TableCurve.twelfthsByTheHour(Tables.ofHours("Skarra", 0, 0.0, 6.5, 3.6));
    assertEquals(metres, height(curve, hour), 1e-9);
  }

  @ParameterizedTest
  // the rise takes 5 h 30 min: after five hours a line runs straight to high water
  @CsvSource({"1, 0.3", "4, 2.7", "5, 3.3", "5.25, 3.45", "5.5, 3.6"})
  void byTheHourTheLastLineGoesStraightToAnEarlyWater(double hour, double metres) {
    TideCurve curve = TableCurve.twelfthsByTheHour(Tables.ofHours("Skarra", 0, 0.0, 5.5, 3.6));
    assertEquals(metres, height(curve, hour), 1e-9);
  }

  @Test
  void byTheHourAFewMinutesBeforeAWaterAreNotALineOfTheirOwn() {
    // 5 h 6 min: six minutes for the last twelfth would be a wall of water
    TideCurve curve = TableCurve.twelfthsByTheHour(Tables.ofHours("Skarra", 0, 0.0, 5.1, 3.6));
    assertEquals(2.7, height(curve, 4), 1e-9);
    assertEquals(3.15, height(curve, 4.55), 1e-9);
    TideCurve shortest = TableCurve.twelfthsByTheHour(Tables.ofHours("Skarra", 0, 0.0, 1.0, 3.6));
    assertEquals(1.8, height(shortest, 0.5), 1e-9);
  }

  @Test
  void theSmoothCurveIsNearlyTheCosineWhereRiseAndFallAreAlike() {
    TideTable table = Tables.ofHours("Skarra", 0, 1.0, 6, 5.0, 12, 1.0, 18, 5.0);
    for (double hour = 6; hour <= 12; hour += 0.1) {
      // a regression bound: the fifth degree with the cosine's curvature
      assertEquals(
          height(TableCurve.cosine(table), hour),
          height(TableCurve.smooth(table), hour),
          0.0005 * 4.0);
    }
  }

  @Test
  void outsideTheTableThereIsNoHeight() {
    for (TideCurve curve : Tables.curvesThrough(SEMIDIURNAL)) {
      assertEquals(Optional.empty(), curve.heightAt(Tables.atHour(-0.001)));
      assertEquals(Optional.empty(), curve.heightAt(Tables.atHour(18.601)));
      assertEquals(Double.NaN, curve.heightMetres(Double.NaN));
      assertEquals(Double.NaN, curve.heightMetres(Double.NEGATIVE_INFINITY));
      assertEquals(Double.NaN, curve.slopeMetresPerSecond(0.0));
      assertEquals(Double.NaN, curve.greatestSlopeChange(0.0, 1.0));
      assertEquals(List.of(), curve.notesAt(Tables.atHour(20)));
      assertTrue(curve.heightAt(Tables.atHour(0)).isPresent());
      assertTrue(curve.heightAt(Tables.atHour(18.6)).isPresent());
    }
  }

  @Test
  void theFirstBreakPointOfALaterTableIsItsStart() {
    TideCurve curve = TableCurve.cosine(SEMIDIURNAL);
    assertEquals(curve.startSeconds(), curve.nextBreakAfter(0.0));
    assertEquals(Double.POSITIVE_INFINITY, curve.nextBreakAfter(Double.NaN));
  }

  @Test
  void everyCurveSaysWhatItIsAndWhereItsHeightsBegin() {
    assertEquals("chart datum", TableCurve.cosine(SEMIDIURNAL).datum());
    assertEquals(SEMIDIURNAL, TableCurve.cosine(SEMIDIURNAL).table());
    assertEquals(
        "rule of twelfths through Skarra, 4 waters from 2026-06-01T00:00:00Z to"
            + " 2026-06-01T18:36:00Z",
        TableCurve.twelfths(SEMIDIURNAL).toString());
  }

  @Test
  void everyCurveSaysHowFarItIsFromTheOthers() {
    Note note = TableCurve.twelfths(SEMIDIURNAL).notesAt(Tables.atHour(3)).get(0);
    assertEquals("tide.twelfths", note.code());
    assertEquals(Severity.INFORMATION, note.severity());
    assertEquals(0.0, Double.parseDouble(note.data().get("fromTwelfthsMetres") + ""));
    // 2.56 % of four metres
    assertEquals(0.102, Double.parseDouble(note.data().get("fromCosineMetres") + ""), 0.001);
    assertEquals(List.of("tide.cosine"), codes(TableCurve.cosine(SEMIDIURNAL), 3));
    assertEquals(List.of("tide.smooth"), codes(TableCurve.smooth(SEMIDIURNAL), 3));
    assertEquals(
        List.of("tide.twelfths-by-the-hour"), codes(TableCurve.twelfthsByTheHour(SEMIDIURNAL), 3));
  }

  @ParameterizedTest
  @CsvSource({"4.6", "7.8", "12.4"})
  void twelfthsWarnWhereTheTideTurnsTooSoonOrTooLate(double interval) {
    TideTable table = Tables.ofHours("Lunna", 0, 1.0, interval, 2.0);
    for (TideCurve curve :
        List.of(TableCurve.twelfths(table), TableCurve.twelfthsByTheHour(table))) {
      Note warning = curve.notesAt(Tables.atHour(3)).get(1);
      assertEquals("tide.not-semidiurnal", warning.code());
      assertEquals(Severity.WARNING, warning.severity());
    }
    assertEquals(List.of("tide.cosine"), codes(TableCurve.cosine(table), 3));
  }

  @Test
  void twelfthsWarnWhereOneTideIsMuchSmallerThanTheNext() {
    // Seattle, 1 January 2015: heights of the official predictions, times to the quarter hour
    TideTable mixed = Tables.ofHours("Seattle", 3.75, 0.01, 11, 3.09, 15.75, 2.10, 21.25, 3.54);
    assertEquals(
        List.of("tide.twelfths", "tide.not-semidiurnal"), codes(TableCurve.twelfths(mixed), 12));
    assertEquals(List.of("tide.twelfths"), codes(TableCurve.twelfths(SEMIDIURNAL), 12));
  }

  @Test
  void theWatersOfACurveAreThoseOfItsTableTheFirstAndTheLastIncluded() {
    Instant before = Tables.atHour(-1);
    Instant after = Tables.atHour(30);
    for (TideCurve curve : Tables.curvesThrough(SEMIDIURNAL)) {
      assertEquals(SEMIDIURNAL.events(), curve.extremes(before, after).items(), curve::toString);
      assertEquals(
          SEMIDIURNAL.events().subList(1, 3),
          curve.extremes(Tables.atHour(0), Tables.atHour(18.6)).items(),
          curve::toString);
      assertEquals(
          Optional.of(SEMIDIURNAL.events().get(3)),
          curve.nextWater(Tables.atHour(13), TideEvent.Kind.HIGH));
      assertEquals(Optional.empty(), curve.nextWater(Tables.atHour(13), TideEvent.Kind.LOW));
      assertThrows(IllegalArgumentException.class, () -> curve.extremes(after, before));
    }
  }
}
