package org.ferryglide.examples.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Verbs whose answer is taught by hand show the working on request, as text and as JSON. */
class WorkingVerbsTest {
  private static final String TIDES = "scenarios/ollen-skerries/tides/";

  @ParameterizedTest
  @ValueSource(
      strings = {
        "leg \"46-10.0N 26-20.0W\" \"46-11.8N 26-17.6W\"",
        "leg \"46-10.0N 26-20.0W\" \"46-11.8N 26-17.6W\" --geodesic --date 2026-06-14",
        "bearing 047 --from true --to compass --variation 7W --deviation 3E",
        "height " + TIDES + "dunlathe.csv --at 2026-06-14T14:17+01:00",
        "stream scenarios/ollen-skerries/streams.csv \"46-12.0N 26-15.0W\" --tides "
            + TIDES
            + "orrin-quay.csv --at 2026-06-14T12:25+01:00",
        "steer \"46-11.8N 26-17.6W\" \"46-12.1N 26-13.0W\" --speed 3.5 --set 005 --rate 1.7",
        "fix scenarios/fix-in-fog.csv --variation 7.8W",
        "daylight \"46-11.8N 26-17.6W\" 2026-06-14 --depart 16:40 --under-way 185",
        "variation \"46-11.8N 26-17.6W\" 2026-06-14 --course 047",
        "variation \"46-11.8N 26-17.6W\" 2026-06-14 --course 047 --rose \"8°15'W 2014 (2'E)\"",
        "windows " + TIDES + "dunlathe.csv --drying 1.2 --depth 0.5",
        "exercises --seed 7 --count 2"
      })
  void theWorkingComesOnRequest(String line) {
    Ran without = Ran.line(line + " --json");
    assertEquals(0, without.status(), without.err());
    assertFalse(without.out().contains("\"steps\""), without.out());

    Ran text = Ran.line(line + " --working");
    assertEquals(0, text.status(), text.err());
    if (!line.startsWith("bearing")) { // whose working is older and has no words about the answer
      assertTrue(text.out().contains("In the head"), text.out());
      assertTrue(text.out().contains("Check"), text.out());
    }

    Ran json = Ran.line(line + " --working --json");
    assertEquals(0, json.status(), json.err());
    assertTrue(json.out().contains("\"steps\""), json.out());
    assertTrue(json.out().contains("\"byHand\""), json.out());
    AnswerSchemas.keeps(Ran.words(line).get(0), json.out());
  }

  @Test
  void whatIsNotDoneByHandSaysSo() {
    Ran far = Ran.line("leg \"46-10.0N 26-20.0W\" \"50-11.8N 36-17.6W\" --working");
    assertTrue(far.out().contains("none by hand"), far.out());
    Ran folder =
        Ran.line(
            "stream scenarios/ollen-skerries \"46-12.0N 26-15.0W\" --at 2026-06-14T12:25+01:00"
                + " --working");
    assertTrue(folder.out().contains("none by hand"), folder.out());
  }

  @Test
  void aMissingFigureIsRefused() {
    Ran course = Ran.line("variation \"46-11.8N 26-17.6W\" 2026-06-14 --working");
    assertEquals(Status.REFUSED.code(), course.status());
    assertTrue(course.err().contains("--course"), course.err());
    Ran depart = Ran.line("daylight \"46-11.8N 26-17.6W\" 2026-06-14 --working");
    assertEquals(Status.REFUSED.code(), depart.status());
    assertTrue(depart.err().contains("--depart"), depart.err());
    Ran tides =
        Ran.line(
            "stream scenarios/ollen-skerries/streams.csv \"46-12.0N 26-15.0W\" --tides "
                + TIDES
                + "dunlathe.csv --at 2026-06-14T12:25+01:00");
    assertEquals(Status.REFUSED.code(), tides.status(), tides.err());
  }
}
