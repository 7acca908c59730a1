package org.ferryglide.tide.stream;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.InputProblem;
import org.ferryglide.testing.Seeds;

/** A sheet with a hole or an insertion is read or refused by its lines, and nothing else. */
class DamagedSheetsProperties {
  private static final String GRID =
      """
      time,latitude,longitude,set_deg,rate_kn
      2026-06-01T09:00Z,50.0,-5.0,90,1.0
      2026-06-01T09:00Z,50.1,-5.0,90,1.0
      2026-06-01T09:00Z,50.0,-5.1,90,1.0
      2026-06-01T10:00Z,50.1,-5.1,90,1.0
      """;

  private static final String CURRENT =
      """
      station,latitude,longitude,time,kind,set_deg,rate_kn
      Tarn Gut,50.0,-5.0,2026-06-01T09:00Z,slack,,
      ,,,2026-06-01T12:00Z,flood,90,1.5
      ,,,2026-06-01T15:10Z,slack,,
      ,,,2026-06-01T18:00Z,ebb,270,1.2
      """;

  private static final String SHORE =
      """
      line,latitude,longitude
      isle,50.0,-5.0
      isle,50.1,-5.0
      skerry,50.2,-5.1
      skerry,50.3,-5.1
      """;

  private interface Reading {
    void of(StringReader text) throws IOException;
  }

  @Provide
  Arbitrary<String> insertions() {
    return Arbitraries.of(
        "", ",", "\"", "\n", "\r", ";", "-", "0", "9", "+", "+9999999", "e9", "180", "NaN", "é");
  }

  private static void readOrRefused(String text, int at, int cut, String put, Reading reading)
      throws IOException {
    int from = at % text.length();
    String damaged =
        text.substring(0, from) + put + text.substring(Math.min(text.length(), from + cut));
    try {
      reading.of(new StringReader(damaged));
    } catch (InputFormatException refusal) {
      assertFalse(refusal.problems().isEmpty());
      for (InputProblem problem : refusal.problems()) {
        assertTrue(problem.line() <= damaged.split("\r\n|\r|\n", -1).length, problem::toString);
      }
    }
  }

  @Property(seed = Seeds.SEED, tries = 2000)
  void everySheetOfThisRoom(
      @ForAll("places") int at, @ForAll("cuts") int cut, @ForAll("insertions") String put)
      throws IOException {
    readOrRefused(GRID, at, cut, put, text -> GriddedStream.read("damaged.csv", text));
    readOrRefused(CURRENT, at, cut, put, text -> CurrentTable.read("damaged.csv", text));
    readOrRefused(SHORE, at, cut, put, text -> Shoreline.read("damaged.csv", text));
    readOrRefused(hourly(), at, cut, put, text -> StreamTable.readAll("damaged.csv", text));
  }

  @Provide
  Arbitrary<Integer> places() {
    return Arbitraries.integers().between(0, 2000);
  }

  @Provide
  Arbitrary<Integer> cuts() {
    return Arbitraries.integers().between(0, 12);
  }

  private static String hourly() {
    StringBuilder sheet =
        new StringBuilder(
            "station,latitude,longitude,port,neap_range_m,spring_range_m,hour,set_deg,"
                + "spring_rate_kn,neap_rate_kn\n");
    for (int hour = -6; hour <= 6; hour++) {
      sheet.append("Skarra Sound,50.11,-5.52,Port Ennor,2.3,4.9,").append(hour);
      sheet.append(",245,0.8,0.4\n");
    }
    return sheet.toString();
  }
}
