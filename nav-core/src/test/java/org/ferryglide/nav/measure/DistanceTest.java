package org.ferryglide.nav.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import org.ferryglide.nav.note.TextFormatException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DistanceTest {
  /** Source: SI Brochure, 8th edition, table 8: 1 nautical mile = 1852 m. */
  @Test
  void aNauticalMileIs1852Metres() {
    assertEquals(1852.0, Distance.ofNauticalMiles(1).metres());
    assertEquals(10.0, Distance.ofNauticalMiles(1).cables(), Math.ulp(10.0));
    assertEquals(Distance.ofNauticalMiles(1), Distance.ofCables(10));
  }

  /** Source: international yard and pound agreement, 1959: 1 mile = 1760 yd of 0.9144 m. */
  @Test
  void aStatuteMileIs1609Point344Metres() {
    assertEquals(1609.344, Distance.ofStatuteMiles(1).metres());
    assertEquals(1.0, Distance.ofStatuteMiles(1).statuteMiles());
  }

  @ParameterizedTest
  @CsvSource({
    "5.2 NM, 9630.4",
    "9.63 km, 9630",
    "250 m, 250",
    "3 cables, 555.6",
    "1 cable, 185.2",
    "2 nautical miles, 3704",
    "6 statute miles, 9656.064",
    "250m, 250",
    "-3.5 m, -3.5",
    "1 Statute Mile, 1609.344",
    "1.0E7 m, 10000000"
  })
  void aNumberWithItsUnitIsRead(String text, double metres) {
    assertEquals(metres, Distance.parse(text).metres(), Math.ulp(metres));
  }

  @ParameterizedTest
  @CsvSource({
    "5 miles, 2, 'say which miles: NM (nautical miles) or statute miles: at character 3 (''m'') of"
        + " \"5 miles\"'",
    "5 mile, 2, 'say which miles: NM (nautical miles) or statute miles: at character 3 (''m'') of"
        + " \"5 mile\"'",
    "5 nm, 2, 'nautical miles are written NM; nm means nanometres: at character 3 (''n'') of \"5"
        + " nm\"'",
    "5, 1, 'the unit must be m, km, NM (nautical miles), cables, statute miles, feet or fathoms: at"
        + " the end of \"5\"'",
    "5 M, 2, 'the unit must be m, km, NM (nautical miles), cables, statute miles, feet or fathoms:"
        + " at character 3 (''M'') of \"5 M\"'",
    "km, 0, 'a decimal number must come first: at character 1 (''k'') of \"km\"'",
    "'5,2 NM', 1, 'the unit must be m, km, NM (nautical miles), cables, statute miles, feet or"
        + " fathoms: at character 2 ('','') of \"5,2 NM\"'"
  })
  void aBareMileAndOtherRiddlesAreRefused(String text, int index, String message) {
    TextFormatException refusal =
        assertThrows(TextFormatException.class, () -> Distance.parse(text));
    assertEquals(message, refusal.getMessage());
    assertEquals(index, refusal.index());
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void whatIsNotFiniteIsRefused(double metres) {
    assertEquals(
        "distance must be a finite number of metres, but was " + metres,
        assertThrows(IllegalArgumentException.class, () -> Distance.ofMetres(metres)).getMessage());
  }

  @Test
  void whatBecomesInfiniteIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Distance.ofNauticalMiles(1e308));
    assertThrows(IllegalArgumentException.class, () -> Distance.ZERO.times(Double.NaN));
  }

  @Test
  void peopleSeeRoundedNauticalMiles() {
    assertEquals("5.2 NM", Distance.ofNauticalMiles(5.2).inNauticalMiles(1));
    assertEquals("9.6 km", Distance.ofNauticalMiles(5.2).inKilometres(1));
    assertEquals("5 NM", Distance.ofNauticalMiles(5.2).inNauticalMiles(0));
    assertThrows(IllegalArgumentException.class, () -> Distance.ZERO.inNauticalMiles(10));
  }

  @Test
  void distancesAddCompareAndLoseTheirSign() {
    Distance three = Distance.ofMetres(3);
    Distance five = Distance.ofMetres(5);
    assertEquals(Distance.ofMetres(8), three.plus(five));
    assertEquals(Distance.ofMetres(-2), three.minus(five));
    assertEquals(Distance.ofMetres(2), three.minus(five).magnitude());
    assertEquals(-1, three.compareTo(five));
    assertEquals(Distance.ZERO, Distance.ofMetres(-0.0));
  }

  /**
   * Source: TM 1-900, Mathematics for Air Crew Trainees (US War Department, 1942), statute to
   * nautical miles. Its nautical mile was the US one of 6080.20 ft (1853.248 m) until 1954: with it
   * the answers hold within half a printed tenth, with today's 1852 m they come out 0.14 and 2.4
   * higher, less than a part in 1400.
   */
  @ParameterizedTest
  @CsvSource({"230, 199.7", "4025, 3495.3"})
  void publishedStatuteMilesAreNauticalMiles(double statute, double answer) {
    double halfATenth = 0.05;
    double usFoot = 1200.0 / 3937.0;
    double metres = Distance.ofStatuteMiles(statute).metres();
    assertEquals(answer, metres / (6080.20 * usFoot), halfATenth);
    assertEquals(
        answer * 6080.20 * usFoot / 1852.0,
        Distance.ofStatuteMiles(statute).nauticalMiles(),
        halfATenth);
  }

  /**
   * Source: US Coast Guard deck examination question bank, problem DL-539: 132.2 statute miles from
   * 1227 to 0930 the next day; 6.3 miles an hour.
   */
  @Test
  void thePublishedSpeedOverADayComesOut() {
    Speed speed = Distance.ofStatuteMiles(132.2).dividedBy(Duration.parse("PT21H3M"));
    double milesAnHour = speed.metresPerSecond() * 3600.0 / Distance.METRES_PER_STATUTE_MILE;
    assertEquals(6.3, milesAnHour, 0.05);
  }

  @ParameterizedTest
  @CsvSource({"30 ft, 9.144", "30 feet, 9.144", "5 fathoms, 9.144", "' \u00a05\u202fNM', 9260"})
  void feetFathomsAndBlanksAreRead(String text, double metres) {
    assertEquals(metres, Distance.parse(text).metres(), 1e-12);
  }

  @Test
  void aDistancePrintsShort() {
    assertEquals("9630.4 m", Distance.ofNauticalMiles(5.2).toString());
    assertEquals("250.0 m", Distance.ofMetres(250).toString());
    for (int tenths = 0; tenths < 1000; tenths++) {
      Distance distance = Distance.ofNauticalMiles(tenths / 10.0);
      assertTrue(distance.toString().length() <= 10, distance.toString());
      assertEquals(distance, Distance.parse(distance.toString()));
    }
  }
}
