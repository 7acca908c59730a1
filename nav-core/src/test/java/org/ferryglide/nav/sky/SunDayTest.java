package org.ferryglide.nav.sky;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class SunDayTest {
  /** A minute of rounding, to the safe side only. */
  private static final long ROUNDING_SECONDS = 60;

  /** What the class states. */
  private static final long BELOW_62_DEGREES_SECONDS = 25;

  /** Four minutes where the sun grazes. */
  private static final long NEARER_THE_POLES_SECONDS = 240;

  private static final Position ARCTIC = Position.ofDegrees(70.0, -5.5);

  @ParameterizedTest
  @CsvFileSource(resources = "sun_crossings.csv")
  void crossingsAgreeWithAnIndependentEphemeris(
      double latitude,
      double longitude,
      LocalDate date,
      SunThreshold threshold,
      String rise,
      String set) {
    Daylight found =
        SunDay.of(date, ZoneOffset.UTC, Position.ofDegrees(latitude, longitude)).at(threshold);
    assertEquals(rise.equals("up"), found.isUpAllDay());
    assertEquals(rise.equals("down"), found.isDownAllDay());
    long seconds = Math.abs(latitude) < 62 ? BELOW_62_DEGREES_SECONDS : NEARER_THE_POLES_SECONDS;
    assertSame(rise, found, true, seconds);
    assertSame(set, found, false, seconds);
  }

  private static void assertSame(String expected, Daylight found, boolean rising, long seconds) {
    Optional<Instant> first =
        found.crossings().stream()
            .filter(crossing -> crossing.rising() == rising)
            .map(SunCrossing::time)
            .findFirst();
    assertEquals(expected.endsWith("Z"), first.isPresent(), () -> expected + " but " + found);
    first.ifPresent(
        time -> {
          long late = Duration.between(Instant.parse(expected), time).toSeconds();
          long lessLight = rising ? late : -late;
          assertTrue(
              lessLight >= -seconds && lessLight <= ROUNDING_SECONDS + seconds,
              () -> expected + " late by " + late + " s in " + found);
        });
  }

  @Test
  void alwaysUpAndAlwaysDownAreToldApart() {
    SunDay midsummer = SunDay.of(LocalDate.of(2026, 6, 21), ZoneOffset.UTC, ARCTIC);
    assertTrue(midsummer.daylight().isUpAllDay());
    assertTrue(midsummer.nauticalTwilight().isUpAllDay());
    SunDay midwinter = SunDay.of(LocalDate.of(2026, 12, 21), ZoneOffset.UTC, ARCTIC);
    assertTrue(midwinter.daylight().isDownAllDay());
    assertFalse(midwinter.civilTwilight().isDownAllDay());
    assertFalse(midwinter.civilTwilight().isUpAllDay());
    assertEquals(Optional.empty(), midwinter.daylight().rise());
    assertEquals(Optional.empty(), midwinter.daylight().set());
  }

  @Test
  void aDayCanHaveOneCrossingOnly() {
    Daylight lastSunrise = SunDay.of(LocalDate.of(2026, 5, 16), ZoneOffset.UTC, ARCTIC).daylight();
    assertFalse(lastSunrise.isUpAllDay());
    assertFalse(lastSunrise.isDownAllDay());
    assertTrue(lastSunrise.rise().isPresent());
    assertEquals(Optional.empty(), lastSunrise.set());
  }

  @Test
  void aDayCanHaveTwoSunsets() {
    LocalDate date = LocalDate.of(2026, 6, 1);
    int found = 0;
    for (int i = 0; i < 60; i++) {
      Daylight day =
          SunDay.of(date.plusDays(i), ZoneOffset.UTC, Position.ofDegrees(65.7, -5.5)).daylight();
      long sets = day.crossings().stream().filter(crossing -> !crossing.rising()).count();
      if (sets == 2) {
        found++;
        assertTrue(day.set().orElseThrow().isAfter(day.rise().orElseThrow()));
      }
    }
    assertTrue(found >= 1, "near the arctic circle the sun sets twice on some calendar day");
  }

  @Test
  void theDayIsTheCallersCalendarDay() {
    Position place = Position.ofDegrees(20.0, 150.0);
    ZoneId zone = ZoneId.of("Pacific/Guam"); // ten hours ahead of UTC
    LocalDate date = LocalDate.of(2026, 3, 1);
    Instant rise = SunDay.of(date, zone, place).daylight().rise().orElseThrow();
    assertEquals(date, rise.atZone(zone).toLocalDate());
    assertEquals(date.minusDays(1), rise.atZone(ZoneOffset.UTC).toLocalDate());
  }

  @Test
  void everyCrossingOfAYearIsFoundOnceWhateverTheLengthOfTheDays() {
    ZoneId zone = ZoneId.of("Europe/London"); // with days of 23 and 25 hours
    Position place = Position.ofDegrees(56.2, -6.4);
    int rises = 0;
    for (LocalDate date = LocalDate.of(2026, 1, 1);
        date.getYear() == 2026;
        date = date.plusDays(1)) {
      Daylight day = SunDay.of(date, zone, place).daylight();
      assertEquals(2, day.crossings().size());
      rises += day.rise().isPresent() ? 1 : 0;
    }
    assertEquals(365, rises);
  }

  @Test
  void timesAreWholeMinutesAndThresholdsAreNested() {
    SunDay day =
        SunDay.of(LocalDate.of(2026, 9, 1), ZoneOffset.UTC, Position.ofDegrees(50.1, -5.5));
    for (SunThreshold threshold : SunThreshold.values()) {
      for (SunCrossing crossing : day.at(threshold).crossings()) {
        assertEquals(0, crossing.time().getEpochSecond() % 60);
      }
    }
    assertTrue(
        day.nauticalTwilight()
            .rise()
            .orElseThrow()
            .isBefore(day.civilTwilight().rise().orElseThrow()));
    assertTrue(
        day.civilTwilight().rise().orElseThrow().isBefore(day.daylight().rise().orElseThrow()));
    assertTrue(
        day.daylight().set().orElseThrow().isBefore(day.civilTwilight().set().orElseThrow()));
  }

  @Test
  void bothPolesHaveAnAnswer() {
    LocalDate june = LocalDate.of(2026, 6, 1);
    assertTrue(SunDay.of(june, ZoneOffset.UTC, Position.ofDegrees(90, 0)).daylight().isUpAllDay());
    assertTrue(
        SunDay.of(june, ZoneOffset.UTC, Position.ofDegrees(-90, 0))
            .nauticalTwilight()
            .isDownAllDay());
  }

  @Test
  void aSunThatRisesTwiceIsRefused() {
    Instant six = Instant.parse("2026-09-01T06:00:00Z");
    List<SunCrossing> rise = List.of(new SunCrossing(six, true));
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class,
            () -> new Daylight(SunThreshold.CIVIL_TWILIGHT, true, rise));
    assertEquals("the sun is up before 2026-09-01T06:00:00Z already", refusal.getMessage());
  }

  @Test
  void theSunIsUpFromItsRiseUntilItSets() {
    Instant six = Instant.parse("2026-09-01T06:00:00Z");
    Instant seven = Instant.parse("2026-09-01T07:00:00Z");
    Daylight light =
        new Daylight(
            SunThreshold.CIVIL_TWILIGHT,
            false,
            List.of(new SunCrossing(six, true), new SunCrossing(seven, false)));
    assertFalse(light.isUpAt(six.minusSeconds(1)));
    assertTrue(light.isUpAt(six));
    assertTrue(light.isUpAt(seven.minusSeconds(1)));
    assertFalse(light.isUpAt(seven));
  }

  @Test
  void equalDaysAreEqualAndSurviveSerialization() throws Exception {
    SunDay day = SunDay.of(LocalDate.of(2026, 9, 1), ZoneOffset.UTC, ARCTIC);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(day);
    }
    Object read = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray())).readObject();
    assertEquals(day, read);
    assertEquals(day.hashCode(), read.hashCode());
    assertEquals(day.daylight(), ((SunDay) read).daylight());
  }

  /** 66°S 175°W 2026-12-13 had rises at 11:38 and 11:39; 21 such days in 184 263 at 55 to 85°. */
  @Test
  void aGrazingSunIsNotCountedTwice() {
    for (int south = 64; south <= 68; south++) {
      Position place = Position.ofDegrees(-south, -175.0);
      for (int i = 0; i < 60; i++) {
        LocalDate date = LocalDate.of(2026, 11, 15).plusDays(i);
        List<SunCrossing> crossings = SunDay.of(date, ZoneOffset.UTC, place).daylight().crossings();
        for (int k = 1; k < crossings.size(); k++) {
          assertTrue(
              crossings.get(k).rising() != crossings.get(k - 1).rising(), date + " " + crossings);
        }
      }
    }
  }

  /** The latitude is halved onto the place where the light ends its yearly absence. */
  @Test
  void aLightOfLessThanAMinuteIsNoLight() {
    LocalDate date = LocalDate.of(2026, 11, 25);
    Position edge = Position.ofDegrees(70.03536, 0.0); // up for less than a minute
    Daylight brief = SunDay.of(date, ZoneOffset.UTC, edge).daylight();
    assertFalse(brief.upAtStart());
    assertFalse(brief.isUpAt(Instant.parse("2026-11-25T03:00:00Z")));
    for (SunThreshold threshold : SunThreshold.values()) {
      double light = 60.0;
      double dark = 89.0;
      for (int i = 0; i < 60; i++) {
        double middle = 0.5 * (light + dark);
        Position place = Position.ofDegrees(middle, 0.0);
        Daylight day = SunDay.of(date, ZoneOffset.UTC, place).at(threshold);
        assertFalse(day.upAtStart(), threshold + " at " + middle);
        assertFalse(day.isUpAt(Instant.parse("2026-11-25T00:30:00Z")));
        if (day.isDownAllDay()) {
          dark = middle;
        } else {
          light = middle;
        }
      }
    }
  }

  @Test
  void aDateThatAZoneSkippedIsRefused() {
    ZoneId apia = ZoneId.of("Pacific/Apia");
    Position samoa = Position.ofDegrees(-13.8, -171.8);
    assertEquals(
        "date must exist in Pacific/Apia, but 2011-12-30 was skipped",
        assertThrows(
                DateTimeException.class, () -> SunDay.of(LocalDate.of(2011, 12, 30), apia, samoa))
            .getMessage());
    Daylight next = SunDay.of(LocalDate.of(2011, 12, 31), apia, samoa).daylight();
    assertTrue(next.rise().isPresent() && next.set().isPresent());
  }

  @Test
  void yearsTheSeriesWereNotMadeForAreRefused() {
    for (LocalDate date :
        List.of(LocalDate.MIN, LocalDate.MAX, LocalDate.of(1500, 1, 1), LocalDate.of(3000, 1, 1))) {
      assertEquals(
          "date must be in the years 1900 to 2100, but was " + date,
          assertThrows(
                  IllegalArgumentException.class, () -> SunDay.of(date, ZoneOffset.UTC, ARCTIC))
              .getMessage());
    }
  }

  /**
   * Source: E. G. Draper, Lectures in Navigation (1918, US Naval Auxiliary Reserve; Project
   * Gutenberg 27642): sun at 40°10'N 74°00'W on 15 March 1919 at 22:04:32 UT, from azimuth tables
   * to ten minutes of arc: 258.5°, tolerance 0.3°.
   */
  @Test
  void thePublishedAzimuthOfTheSunComesOut() {
    Position place = Position.parse("40°10.0'N 74°00.0'W");
    TrueBearing azimuth = Sun.azimuth(Instant.parse("1919-03-15T22:04:32Z"), place);
    assertEquals(258.5, azimuth.degrees(), 0.3);
    assertTrue(Sun.altitudeDegrees(Instant.parse("1919-03-15T22:04:32Z"), place) > 0.0);
    assertThrows(IllegalArgumentException.class, () -> Sun.azimuth(Instant.MIN, place));
  }
}
