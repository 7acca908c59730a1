package org.ferryglide.examples.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DaylightVerbTest {
  private static final Pattern SUN =
      Pattern.compile("\"daylight\" *: *\\{[^}]*\"until\" *: *\"([^\"]+)\"");
  private static final Pattern LEFT = Pattern.compile("\"daylightLeftMinutes\" *: *(-?[0-9.]+)");

  /** The clock goes back on 25 October 2026 and forward on 29 March at 01:00 UTC. */
  @ParameterizedTest
  @CsvSource({
    "2026-10-24,12:00", "2026-10-25,12:00", "2026-10-25,05:30",
    "2026-03-28,12:00", "2026-03-29,12:00", "2026-03-29,05:30"
  })
  void daylightLeftIsTimeThatPassesOnDaysWhenTheClockIsChanged(String day, String depart) {
    Ran ran =
        Ran.line(
            "daylight 51.5,0.0 "
                + day
                + " --zone Europe/London --under-way 120 --working --json --depart "
                + depart);
    assertEquals(0, ran.status(), ran.err());
    Instant sunset = Instant.parse(found(SUN, ran.out()));
    Instant landing =
        LocalDateTime.parse(day + "T" + depart)
            .atZone(ZoneId.of("Europe/London"))
            .toInstant()
            .plusSeconds(7200);
    assertEquals(
        Duration.between(landing, sunset).toMinutes(),
        Double.parseDouble(found(LEFT, ran.out())),
        ran.out());
  }

  /** The dark hours before sunrise are no daylight left. */
  @ParameterizedTest
  @CsvSource({"2026-10-25,00:30,185,02:35", "2026-03-29,00:30,120,03:30"})
  void aLandingBeforeSunriseHasNoDaylightLeft(
      String day, String depart, int minutes, String landing) {
    String line =
        "daylight 51.5,0.0 "
            + day
            + " --zone Europe/London --depart "
            + depart
            + " --under-way "
            + minutes;
    Ran ran = Ran.line(line);
    assertEquals(0, ran.status(), ran.err());
    assertTrue(
        ran.out().contains("landing before sunrise, at " + day + " " + landing), () -> ran.out());
    Ran json = Ran.line(line + " --json");
    assertFalse(LEFT.matcher(json.out()).find(), () -> json.out());
    AnswerSchemas.keeps("daylight", json.out());
  }

  @Test
  void inThePolarNightTheSunDoesNotRise() {
    Ran ran = Ran.line("daylight 75.0,20.0 2026-12-21 --depart 12:00 --under-way 60");
    assertTrue(ran.out().contains("the sun does not rise on this day"), () -> ran.out());
  }

  /** Of the clock that people read. */
  @ParameterizedTest
  @CsvSource({"2026-10-25,16:", "2026-03-29,19:"})
  void theWorkingTellsSunsetByTheClockThatIsShownThen(String day, String hour) {
    Ran ran =
        Ran.line(
            "daylight 51.5,0.0 "
                + day
                + " --zone Europe/London --depart 12:00 --under-way 120 --working");
    assertEquals(0, ran.status(), ran.err());
    assertTrue(Pattern.compile("Sunset +" + hour).matcher(ran.out()).find(), () -> ran.out());
  }

  private static String found(Pattern pattern, String text) {
    Matcher matcher = pattern.matcher(text);
    assertTrue(matcher.find(), text);
    return matcher.group(1);
  }
}
