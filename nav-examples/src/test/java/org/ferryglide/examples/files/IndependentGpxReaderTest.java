package org.ferryglide.examples.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.xml.parsers.DocumentBuilderFactory;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.tide.folder.PassageFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/**
 * GPX files as gpxpy reads them, which shares no code with ours: Debian's package python3-gpxpy,
 * 1.5.0. Where it is missing the test is skipped.
 */
class IndependentGpxReaderTest {
  private static final String PYTHON = "/usr/bin/python3";

  private static final String SCRIPT =
      """
      import sys, gpxpy
      g = gpxpy.parse(open(sys.argv[1], encoding='utf-8'))
      for r in g.routes:
          for p in r.points:
              print('route', r.name, p.name, repr(p.latitude), repr(p.longitude), p.time, sep='|')
      for t in g.tracks:
          for s in t.segments:
              for p in s.points:
                  print('track', t.name, p.name, repr(p.latitude), repr(p.longitude), p.time, sep='|')
      """;

  @TempDir private Path temporary;

  private List<String> lines(String... arguments) throws Exception {
    List<String> command = new ArrayList<>(List.of(PYTHON, "-X", "utf8", "-c"));
    command.addAll(List.of(arguments));
    Path out = temporary.resolve("out");
    try {
      Process process =
          new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(out.toFile())
              .start();
      assertTrue(process.waitFor(60, TimeUnit.SECONDS), "it did not end");
      boolean isThere = process.exitValue() == 0 || arguments.length > 1;
      assumeTrue(isThere, "no gpxpy");
      assertEquals(0, process.exitValue(), () -> "see " + out);
    } catch (IOException e) {
      assumeTrue(false, "no Python: " + e.getMessage());
    }
    return Files.readAllLines(out, StandardCharsets.UTF_8);
  }

  @Test
  void anotherReaderSeesTheRouteAndTheTrackAsTheyArePlanned() throws Exception {
    lines("import gpxpy"); // or skip
    PassageFolder folder = PassageFolder.read(Path.of("scenarios", "ollen-skerries"));
    TimedPlan plan =
        TimedPlan.of(folder.passage(), folder.start().toInstant()).solved().orElseThrow();
    String text = GpxFile.planned("Round & back, Fjörð", folder.wayPoints(), plan);
    Path file = Files.writeString(temporary.resolve("plan.gpx"), text);
    List<String> expected = new ArrayList<>();
    folder
        .wayPoints()
        .forEach(
            it ->
                expected.add(
                    "route|Round & back, Fjörð|"
                        + it.name()
                        + "|"
                        + rounded(it.position().latitudeDegrees())
                        + "|"
                        + rounded(it.position().longitudeDegrees())
                        + "|None"));
    expected.addAll(trackPoints(text));
    assertTrue(expected.size() > 20, "points: " + expected.size());
    assertEquals(expected, lines(SCRIPT, file.toString()));
  }

  /** As a parser of XML has them in the file. */
  private static List<String> trackPoints(String gpx) throws Exception {
    List<String> points = new ArrayList<>();
    NodeList tracks =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(gpx)))
            .getElementsByTagName("trk");
    for (int i = 0; i < tracks.getLength(); i++) {
      Element track = (Element) tracks.item(i);
      String name = track.getElementsByTagName("name").item(0).getTextContent();
      NodeList all = track.getElementsByTagName("trkpt");
      for (int at = 0; at < all.getLength(); at++) {
        Element point = (Element) all.item(at);
        points.add(
            "track|"
                + name
                + "|None|"
                + Double.parseDouble(point.getAttribute("lat"))
                + "|"
                + Double.parseDouble(point.getAttribute("lon"))
                + "|None");
      }
    }
    return points;
  }

  private static double rounded(double degrees) {
    return Math.rint(degrees * 1e8) / 1e8;
  }
}
