package org.ferryglide.tide.height;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalTime;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ferryglide.testing.Seeds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClockDifferencesTest {
  /** A training port on its standard port; common practice, no source. */
  private static final ClockDifferences TRAINING_HIGH =
      ClockDifferences.of(LocalTime.of(0, 0), 35).and(LocalTime.of(6, 0), 23);

  private static final ClockDifferences TRAINING_LOW =
      ClockDifferences.of(LocalTime.of(5, 0), 47).and(LocalTime.of(11, 0), 4);

  @Test
  void highWaterAtThree() {
    assertEquals(29.0, TRAINING_HIGH.minutesAt(LocalTime.of(3, 0)), 1e-9); // prints +0029
    assertEquals(24.266667, TRAINING_HIGH.minutesAt(LocalTime.of(6, 38)), 5e-7);
  }

  @Test
  void aHarbourWithDifferencesOfFiftyOneAndFortyFour() {
    // common practice, no source: 1846 between 1500 and 2100 is +47
    ClockDifferences harbour =
        ClockDifferences.of(LocalTime.of(15, 0), 51).and(LocalTime.of(21, 0), 44);
    double minutes = harbour.minutesAt(LocalTime.of(18, 46));
    assertEquals(46.605556, minutes, 5e-7);
    assertEquals(47, Math.round(minutes));
  }

  @Test
  void differencesOfOppositeSignsAreInterpolatedThroughZero() {
    // half way from +15 at 0000 to -10 at 0600: 2.5 minutes after
    ClockDifferences differences =
        ClockDifferences.of(LocalTime.of(0, 0), 15).and(LocalTime.of(6, 0), -10);
    assertEquals(2.5, differences.minutesAt(LocalTime.of(3, 0)), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    "00:00, 35",
    "12:00, 35",
    "06:00, 23",
    "18:00, 23",
    "09:00, 29",
    "15:00, 29",
    "21:00, 29",
    "01:00, 33",
    "11:00, 33",
    "23:00, 33"
  })
  void theClockGoesRoundInTwelveHours(LocalTime time, double minutes) {
    assertEquals(minutes, TRAINING_HIGH.minutesAt(time), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    "05:00, 47",
    "17:00, 47",
    "11:00, 4",
    "23:00, 4",
    "08:00, 25.5",
    "02:00, 25.5",
    "00:00, 11.166667",
    "12:00, 11.166667"
  })
  void timesBeforeTheFirstPrintedOneAreBetweenTheLastAndTheFirst(LocalTime time, double minutes) {
    assertEquals(minutes, TRAINING_LOW.minutesAt(time), 5e-7);
  }

  @Test
  void unequalSpansAreEachStraight() {
    // printed for 1000/2200 and 0500/1700: five hours one way round and seven the other (common
    // practice, no source)
    ClockDifferences unequal =
        ClockDifferences.of(LocalTime.of(10, 0), 10).and(LocalTime.of(5, 0), 0);
    assertEquals(5.0, unequal.minutesAt(LocalTime.of(7, 30)), 1e-9);
    assertEquals(5.0, unequal.minutesAt(LocalTime.of(13, 30)), 1e-9);
    assertEquals(5.0, unequal.minutesAt(LocalTime.of(1, 30)), 1e-9);
  }

  @Test
  void oneDifferenceIsTheSameAllDay() {
    ClockDifferences always = ClockDifferences.always(-18);
    assertEquals(-18.0, always.minutesAt(LocalTime.MIDNIGHT));
    assertEquals(-18.0, always.minutesAt(LocalTime.of(17, 23, 5)));
    assertEquals(-18.0, always.minutesAt(LocalTime.MAX));
  }

  /** Tables print 0000 and 1200 together, and 0600 and 1800. */
  @Test
  void theSameDifferenceMayBeGivenAgainTwelveHoursLater() {
    ClockDifferences again =
        TRAINING_HIGH.and(LocalTime.of(12, 0), 35).and(LocalTime.of(18, 0), 23);
    for (int hour = 0; hour < 24; hour++) {
      assertEquals(
          TRAINING_HIGH.minutesAt(LocalTime.of(hour, 0)), again.minutesAt(LocalTime.of(hour, 0)));
    }
  }

  @Test
  void oneClockTimeHasOneDifference() {
    assertEquals(
        "there must be one difference for a clock time and that twelve hours from it, but for 18:00"
            + " there were 23.0 and 24.0 minutes",
        assertThrows(
                IllegalArgumentException.class, () -> TRAINING_HIGH.and(LocalTime.of(18, 0), 24))
            .getMessage());
    assertEquals(
        "time difference must be in [-720, 720] minutes, but was NaN",
        assertThrows(IllegalArgumentException.class, () -> ClockDifferences.always(Double.NaN))
            .getMessage());
  }

  @Provide
  Arbitrary<LocalTime> times() {
    return Arbitraries.integers().between(0, 86_399).map(LocalTime::ofSecondOfDay);
  }

  @Property(seed = Seeds.SEED)
  void theDifferenceLiesBetweenThePrintedOnesAndNeverJumps(@ForAll("times") LocalTime time) {
    ClockDifferences three = TRAINING_LOW.and(LocalTime.of(20, 15), -13);
    double minutes = three.minutesAt(time);
    assertTrue(minutes >= -13.0 && minutes <= 47.0);
    assertEquals(minutes, three.minutesAt(time.plusHours(12)), 1e-9);
    // the steepest line: 17 minutes between 2015 and 2300, and 34 between 1700 and 2015… 60 in 195
    assertEquals(minutes, three.minutesAt(time.plusSeconds(1)), 60.0 / 195.0 / 60.0 + 1e-9);
  }
}
