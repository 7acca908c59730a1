package org.ferryglide.tide.stream;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Collectors;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.Window;
import org.junit.jupiter.api.Test;

class CurrentTableTest {
  private static final TrueBearing FLOOD = TrueBearing.ofDegrees(195);
  private static final TrueBearing EBB = TrueBearing.ofDegrees(15);
  private static final Position PLACE = Position.ofDegrees(41, -71);
  private static final double HALF_A_PRINTED_TENTH = 0.05;

  private static Instant at(String time) {
    return Instant.parse("2026-06-01T" + time + ":00Z");
  }

  /** The reference station of the Navy's example, with an ebb made up to go on with. */
  private static final CurrentTable REFERENCE =
      CurrentTable.of(
          "reference",
          PLACE,
          List.of(
              CurrentEvent.slack(at("10:12")),
              CurrentEvent.flood(at("12:46"), FLOOD, Speed.ofKnots(0.6)),
              CurrentEvent.slack(at("16:00")),
              CurrentEvent.ebb(at("19:00"), EBB, Speed.ofKnots(1.0)),
              CurrentEvent.slack(at("22:30"))));

  @Test
  void navyExampleOfASubordinateStation() {
    // Source: US Navy NAVEDTRA 14220, p. 7-22, public domain: reference slack 1012, maximum flood
    // 1246 of 0.6 kn; differences -0h41 and -0h47, ratio 1.1, flood 195; wanted 1100. Printed:
    // slack 0931, maximum 1159 of 0.66 kn, 0.5 kn setting 195 at 1100
    CurrentTable local =
        SubordinateCurrent.at("local", PLACE, FLOOD, EBB)
            .withTimeDifferences(
                Duration.ofMinutes(-41),
                Duration.ofMinutes(-47),
                Duration.ofMinutes(-30),
                Duration.ofMinutes(-20))
            .withRatios(1.1, 0.8)
            .from(REFERENCE);
    assertEquals(at("09:31"), local.events().get(0).time());
    assertEquals(at("11:59"), local.events().get(1).time());
    assertEquals(0.66, local.events().get(1).rate().knots(), 1e-12);
    assertEquals(0.5, local.asCurve().at(at("11:00")).get().rate().knots(), HALF_A_PRINTED_TENTH);
    assertEquals(195, local.asCurve().at(at("11:00")).get().set().degrees(), 1e-9);
    // the other two differences and the other ratio
    assertEquals(at("15:30"), local.events().get(2).time());
    assertEquals(at("18:40"), local.events().get(3).time());
    assertEquals(0.8, local.events().get(3).rate().knots(), 1e-12);
    // the last slack leads to a flood
    assertEquals(at("21:49"), local.events().get(4).time());
  }

  private static String daysOfMaxima(int days, String odd) {
    StringBuilder text = new StringBuilder("station,latitude,longitude,time,kind,set_deg,rate_kn");
    for (int i = 0; i < 4 * days; i++) {
      String time = at("03:00").plus(Duration.ofMinutes(372L * i)).toString();
      boolean flood = i % 2 == 0;
      String line =
          time.replace("Z", "+00:00")
              + (flood ? ",flood,195," : ",ebb,15,")
              + (i % 4 == 0 ? "2.1" : i % 4 == 2 ? "0.7" : "1.8"); // unequal floods
      String slack = at("06:06").plus(Duration.ofMinutes(372L * i)).toString() + ",slack,,";
      String head = i == 0 ? "\nNarrows,41,-71," : "\n,,,";
      text.append(head).append(i == 8 && !odd.isEmpty() ? odd.replace("TIME", time) : line);
      text.append("\n,,,").append(slack.replace("Z,", "+00:00,"));
    }
    return text.toString();
  }

  private static List<String> doubts(String text) throws IOException {
    return CurrentTable.read("narrows.csv", new StringReader(text)).notes().stream()
        .map(note -> note.code() + " line " + note.data().get("line"))
        .collect(Collectors.toList());
  }

  @Test
  void whatLooksWrongInATableIsDoubtedByItsLineAndToldWithTheCurrent() throws IOException {
    assertEquals(List.of(), doubts(daysOfMaxima(4, "")));
    assertEquals(
        List.of("stream.doubt.rate line 18"),
        doubts(daysOfMaxima(4, "TIME,flood,195,21").replace("21\n", "12\n")));
    assertEquals(
        List.of("stream.doubt.rate line 18", "stream.doubt.fastest line 18"),
        doubts(daysOfMaxima(4, "TIME,flood,195,21")));
    assertEquals(List.of("stream.doubt.set line 18"), doubts(daysOfMaxima(4, "TIME,flood,15,2.1")));
    assertEquals(
        List.of("stream.doubt.never-turns line null"),
        doubts(daysOfMaxima(4, "").replace("ebb,15", "ebb,195")));
    CurrentTable odd =
        CurrentTable.read("narrows.csv", new StringReader(daysOfMaxima(4, "TIME,flood,195,21")));
    for (CurrentTable table :
        List.of(odd, SubordinateCurrent.at("local", PLACE, FLOOD, EBB).from(odd))) {
      List<String> told =
          table.asCurve(FlowShape.SINE).explain(at("04:00")).notes().stream()
              .map(Note::code)
              .collect(Collectors.toList());
      assertTrue(told.contains("stream.doubt.rate"), told::toString);
    }
  }

  /** Half past with the next clock's offset: an hour early, in the right order all the same. */
  @Test
  void aLineWithAnotherOffsetIsRefused() {
    String time = at("03:00").plus(Duration.ofMinutes(372L * 8)).toString();
    String odd = time.replace("Z", "+01:00") + ",flood,195,2.1";
    String message = message(() -> doubts(daysOfMaxima(4, odd)));
    assertTrue(message.contains("narrows.csv, line 18"), message);
    assertTrue(message.contains("offset from UTC must be that of the rows around it"), message);
  }

  @Test
  void differencesThatSwapLinesAreRefused() {
    SubordinateCurrent odd =
        SubordinateCurrent.at("odd", PLACE, FLOOD, EBB)
            .withTimeDifferences(Duration.ofHours(3), Duration.ZERO, Duration.ZERO, Duration.ZERO);
    assertEquals(
        "current table odd: times must ascend, but 2026-06-01T12:46:00Z follows"
            + " 2026-06-01T13:12:00Z",
        message(() -> odd.from(REFERENCE)));
    assertEquals(
        "flood ratio must be a finite number of times the reference's rate, at least 0, but was"
            + " -1.0",
        message(() -> odd.withRatios(-1, 1)));
  }

  @Test
  void bookExampleOfThe5090Rule() {
    // Source: a navigation handbook's example for 20 September 2008: slack 0632, maximum flood 0919
    // of 1.9 kn, slack 1306. It prints 1.0 kn at 0728, 1.8 at 0824, 1.9 at 0919, 1.8 at 1035, 1.0
    // at 1151, 0 at 1306. Its 1.8 is a slip: 0.9 x 1.9 = 1.71.
    StreamCurve flood =
        CurrentCurve.ofRule(
            FlowShape.FIFTY_NINETY,
            at("06:32"),
            at("09:19"),
            at("13:06"),
            FLOOD,
            Speed.ofKnots(1.9));
    String[] times = {"06:32", "07:28", "08:24", "09:19", "10:35", "11:51", "13:06"};
    double[] printed = {0, 1.0, 1.8, 1.9, 1.8, 1.0, 0};
    double[] byArithmetic = {0, 0.95, 1.71, 1.9, 1.71, 0.95, 0};
    for (int i = 0; i < times.length; i++) {
      double rate = flood.at(at(times[i])).get().rate().knots();
      // printed times are whole minutes, and a minute is worth 0.017 kn at most
      assertEquals(byArithmetic[i], rate, 0.017);
      boolean slip = printed[i] == 1.8;
      assertEquals(printed[i], rate, slip ? 0.1 : HALF_A_PRINTED_TENTH + 0.017);
    }
    assertFalse(flood.at(at("06:31")).isPresent());
    assertFalse(flood.at(at("13:07")).isPresent());
  }

  @Test
  void rulesAreMarkedAsRules() {
    for (FlowShape shape : FlowShape.values()) {
      StreamCurve rule =
          CurrentCurve.ofRule(
              shape, at("06:00"), at("09:00"), at("12:00"), FLOOD, Speed.ofKnots(2));
      assertTrue(codes(rule, at("07:00")).contains("stream.rough-rule"));
      assertEquals("rule of thumb", rule.explain(at("07:00")).sources().get(0).name());
    }
    assertEquals(List.of("stream.between-slacks"), codes(REFERENCE.asCurve(), at("11:00")));
    assertTrue(
        codes(REFERENCE.asCurve(FlowShape.THIRDS), at("11:00")).contains("stream.rough-rule"));
    assertEquals(List.of("stream.no-data"), codes(REFERENCE.asCurve(), at("23:00")));
    assertEquals(
        "times of slack, maximum and slack must be in order, but were 2026-06-01T06:00:00Z,"
            + " 2026-06-01T05:00:00Z, 2026-06-01T12:00:00Z",
        message(
            () ->
                CurrentCurve.ofRule(
                    FlowShape.SINE,
                    at("06:00"),
                    at("05:00"),
                    at("12:00"),
                    FLOOD,
                    Speed.ofKnots(2))));
  }

  private static List<String> codes(StreamCurve curve, Instant instant) {
    return curve.explain(instant).notes().stream().map(Note::code).collect(Collectors.toList());
  }

  @Test
  void theEbbGoesItsOwnWay() {
    StreamCurve curve = REFERENCE.asCurve();
    assertEquals(15, curve.at(at("17:00")).get().set().degrees(), 1e-9);
    assertEquals(1.0, curve.at(at("19:00")).get().rate().knots(), 1e-12);
    assertEquals(0.0, curve.at(at("16:00")).get().rate().knots());
    assertEquals(1.0, curve.maxRate().get().knots(), 1e-12);
    assertEquals(EpochSeconds.of(at("12:46")), curve.nextBreakAfter(EpochSeconds.of(at("10:12"))));
  }

  @Test
  void breakPointsOfA5090CurveAreItsCorners() {
    StreamCurve curve = REFERENCE.asCurve(FlowShape.FIFTY_NINETY);
    double slack = EpochSeconds.of(at("16:00"));
    assertEquals(slack + 3600, curve.nextBreakAfter(slack), 1e-6);
    assertEquals(slack + 7200, curve.nextBreakAfter(slack + 3600.1), 1e-6);
    assertEquals(slack + 3 * 3600, curve.nextBreakAfter(slack + 7201), 1e-6);
    // after the maximum the corners are counted back from the next slack
    assertEquals(slack + 3 * 3600 + 4200, curve.nextBreakAfter(slack + 3 * 3600), 1e-6);
  }

  @Test
  void slackWindowReckonsEachSideWithItsOwnMaximum() {
    CurrentEvent slack = REFERENCE.events().get(2);
    Window window = REFERENCE.slackWindow(slack, Speed.ofKnots(0.3));
    // before: 0.6 kn over 3 h 14 min, a third of the quarter; after: 1 kn over 3 h
    double before = 194.0 / 3;
    double after = 180 * Math.asin(0.3) / (Math.PI / 2);
    assertEquals(before + after, window.duration().toMillis() / 60e3, 1e-4);
    assertFalse(window.openBefore() || window.openAfter());
    Window wide = REFERENCE.slackWindow(slack, Speed.ofKnots(0.7));
    assertEquals(at("12:46"), wide.from());
    assertTrue(wide.openBefore());
    assertFalse(wide.openAfter());
    assertEquals(
        "must be a slack of table reference between two maxima, but was "
            + REFERENCE.events().get(0),
        message(() -> REFERENCE.slackWindow(REFERENCE.events().get(0), Speed.ofKnots(0.3))));
  }

  @Test
  void aSheetIsReadAndItsFaultsAreListed() throws IOException {
    String headings = "station,latitude,longitude,time,kind,set_deg,rate_kn\n";
    CurrentTable read =
        read(
            headings
                + "Tarn Gut,41,-71,2026-06-01T10:12Z,slack,,\n"
                + ",,,2026-06-01T13:46+01:00,flood,195,0.6\n");
    assertEquals("Tarn Gut", read.station());
    assertEquals(PLACE, read.position());
    assertEquals(REFERENCE.events().subList(0, 2), read.events());
    assertEquals(
        "c.csv, line 2, column 7: rate_kn: must be empty for slack, but was \"0.4\"\n"
            + "c.csv, line 3, column 4: time: slack and maximum must come in turn, but SLACK at"
            + " 2026-06-01T10:12:00Z is followed by SLACK at 2026-06-01T11:00:00Z\n"
            + "c.csv, line 4, column 4: time: must be a date and time with its offset, such as"
            + " 2026-06-01T09:30Z or 2026-06-01T10:30+01:00, but was \"2026-06-01T12:00\"\n"
            + "c.csv, line 4, column 5: kind: must be slack, flood or ebb, but was \"fast\"\n"
            + "c.csv, line 5, column 6: set_deg: must be a number in [0.0, 360.0], but was \"\"",
        message(
            () ->
                read(
                    headings
                        + "Tarn Gut,41,-71,2026-06-01T10:12Z,slack,,0.4\n"
                        + ",,,2026-06-01T11:00Z,slack,,\n"
                        + ",,,2026-06-01T12:00,fast,,\n"
                        + ",,,2026-06-01T13:00Z,ebb,,1\n")));
    assertThrows(InputFormatException.class, () -> read(headings));
  }

  private static CurrentTable read(String text) throws IOException {
    return CurrentTable.read("c.csv", new StringReader(text));
  }

  @Test
  void badTablesAreRefused() {
    assertEquals(
        "current table a must have at least 2 lines, but had 1",
        message(() -> CurrentTable.of("a", PLACE, List.of(CurrentEvent.slack(at("10:00"))))));
    assertEquals(
        "slack water must have no rate, but was 1.0 m/s",
        message(
            () ->
                new CurrentEvent(
                    at("10:00"), CurrentEvent.Kind.SLACK, FLOOD, Speed.ofMetresPerSecond(1))));
  }

  private static String message(org.junit.jupiter.api.function.Executable call) {
    return String.valueOf(assertThrows(IllegalArgumentException.class, call).getMessage());
  }

  /** Between the slack at 0700 and the flood at 1624 an ebb and a slack are left out. */
  @Test
  void linesLeftOutAreNotBridged() {
    CurrentTable holed =
        CurrentTable.of(
            "holed",
            PLACE,
            List.of(
                CurrentEvent.slack(at("01:00")),
                CurrentEvent.flood(at("04:00"), FLOOD, Speed.ofKnots(0.6)),
                CurrentEvent.slack(at("07:00")),
                CurrentEvent.flood(at("16:24"), FLOOD, Speed.ofKnots(0.6)),
                CurrentEvent.slack(at("19:30"))));
    StreamCurve curve = holed.asCurve();
    assertTrue(curve.at(at("05:00")).isPresent());
    assertTrue(curve.at(at("07:00")).isPresent());
    assertFalse(curve.at(at("10:00")).isPresent());
    assertEquals("stream.no-data", curve.explain(at("10:00")).notes().get(0).code());
    assertEquals(0.6, curve.at(at("16:24")).get().rate().knots(), 1e-12);
    assertTrue(curve.at(at("18:00")).isPresent());
    assertTrue(
        message(() -> holed.slackWindow(holed.events().get(2), Speed.ofKnots(0.2)))
            .startsWith("must be a slack with a maximum within 9 hours on both sides, but lines"));
  }
}
