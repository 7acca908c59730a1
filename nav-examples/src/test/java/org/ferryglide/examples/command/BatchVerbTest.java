package org.ferryglide.examples.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The verbs for computing by the million, as a shell meets them. */
class BatchVerbTest {
  @TempDir Path folder;

  private Path legs;

  private record Run(int status, String out, String err) {}

  private static Run run(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int status = Ferryglide.run(args, new PrintWriter(out), new PrintWriter(err));
    return new Run(status, out.toString(), err.toString());
  }

  @BeforeEach
  void writeLegs() throws IOException {
    legs = folder.resolve("legs.csv");
    Files.writeString(legs, "note,lat1,lon1,lat2,lon2\nYtre Åholm,0,0,90,0\n");
  }

  @Test
  void rowsGoToAFile() throws IOException {
    Path out = folder.resolve("laid-off.csv");
    Run run = run("batch", "rhumb-inverse", legs.toString(), "--out", out.toString());
    assertEquals(0, run.status(), run.err());
    assertEquals(
        "note,lat1,lon1,lat2,lon2,course_deg,distance_m\n"
            + "Ytre Åholm,0,0,90,0,0.000000,10001965.7293\n",
        Files.readString(out));
    assertTrue(run.out().startsWith("1 row, 0 refused"), run.out());
    assertEquals("", run.err());
  }

  @Test
  void rowsGoToStandardOutput() {
    Run run = run("batch", "geodesic-inverse", legs.toString(), "--full-precision");
    assertEquals(0, run.status(), run.err());
    String row = run.out().split("\n")[1];
    assertTrue(row.startsWith("Ytre Åholm,0,0,90,0,0.0,0.0,"), row);
    String metres = row.substring(row.lastIndexOf(',') + 1);
    // the quarter meridian as GeographicLib's test suite has it, printed to a millimetre
    assertEquals(10001965.729, Double.parseDouble(metres), 5e-4);
    assertTrue(metres.length() > 16, metres);
  }

  @Test
  void statusesAreThoseOfABatch() throws IOException {
    Files.writeString(legs, "lat1,lon1,lat2,lon2\n0,0,90,0\n91,0,0,0\n");
    Run refused = run("batch", "rhumb-inverse", legs.toString());
    assertEquals(2, refused.status());
    assertTrue(refused.err().startsWith("legs.csv, line 3, column 1: lat1 must be a number"));
    assertEquals(2, run("batch", "rhumb-inverse", folder.resolve("no.csv").toString()).status());
    assertEquals(2, run("batch", "rhumb", legs.toString()).status());
    assertEquals(2, run("batch", "variation", legs.toString()).status());
    assertEquals(2, run("batch", "tide-height", legs.toString()).status());
    assertEquals(2, run("batch", "rhumb-inverse", legs.toString(), "--ellipsoid", "x").status());
    assertEquals(2, run("batch", "rhumb-inverse", legs.toString(), "--json").status());
  }

  @Test
  void anotherEllipsoidIsAPairOfNumbers() {
    Run sphere = run("batch", "rhumb-inverse", legs.toString(), "--ellipsoid", "6371000,0");
    assertTrue(sphere.out().contains(",10007543.3980\n"), sphere.out()); // a quarter of 2 pi R
  }

  @Test
  void theStudyWritesItsReport() throws IOException {
    Run run = run("study", folder.toString(), "--legs", "200");
    assertEquals(0, run.status(), run.err());
    assertTrue(
        Files.readString(folder.resolve("report.md")).contains("200 legs drawn from seed 1"));
    assertEquals(2, run("study", folder.toString(), "--legs", "3").status());
  }
}
