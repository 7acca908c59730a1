package org.ferryglide.examples.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.xml.XMLConstants;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.SchemaFactory;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.position.Position;
import org.ferryglide.tide.folder.PassageFolder;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** GPX 1.1 goes out by the rules and comes in after a strict look. */
class GpxFileTest {
  private static final String HEAD =
      "<gpx version=\"1.1\" creator=\"t\" xmlns=\"http://www.topografix.com/GPX/1/1\">";

  private static GpxContent read(String text) {
    return GpxFile.read("t.gpx", text.getBytes(StandardCharsets.UTF_8));
  }

  private static GpxContent sample() {
    GpxContent.Point slip =
        new GpxContent.Point("Slip & <quay> \"ö\"", Position.ofDegrees(46.16666667, -180.0), null);
    GpxContent.Point rock =
        new GpxContent.Point(
            "", Position.ofDegrees(-90.0, 0.0), Instant.parse("2026-06-14T10:40:00Z"));
    return new GpxContent(
        List.of(slip),
        List.of(new GpxContent.Line("way", List.of(slip, rock))),
        List.of(new GpxContent.Line("track", List.of(rock, slip, rock))));
  }

  /** The schema holds the specification's rules, set down anew; see its head. */
  private static void keepsToTheRules(String gpx) throws Exception {
    SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI)
        .newSchema(
            Path.of("src/test/resources/org/ferryglide/examples/files/gpx-rules.xsd").toFile())
        .newValidator()
        .validate(new StreamSource(new StringReader(gpx)));
  }

  @Test
  void whatIsWrittenIsReadBack() throws Exception {
    String text = GpxFile.text("All", sample());
    keepsToTheRules(text);
    assertEquals(sample(), read(text));
  }

  @Test
  void aPassageKeepsItsWayPointsToAMillimetre() throws Exception {
    PassageFolder folder = PassageFolder.read(Path.of("scenarios/ollen-skerries"));
    String text = GpxFile.route(folder.name(), folder.wayPoints());
    keepsToTheRules(text);
    List<GpxContent.Point> points = read(text).routes().get(0).points();
    assertEquals(folder.wayPoints().size(), points.size());
    for (int at = 0; at < points.size(); at++) {
      assertEquals(folder.wayPoints().get(at).name(), points.get(at).name());
      assertEquals(
          folder.wayPoints().get(at).position().latitudeDegrees(),
          points.get(at).position().latitudeDegrees(),
          0.5e-8);
    }
    assertTrue(text.contains("headings to steer, times, streams and tides are not in this file"));
    assertEquals(text.strip(), Files.readString(Path.of("scenarios/ollen-skerries.gpx")).strip());
  }

  @Test
  void aPlanIsATrackForEachLegFromEndToEnd() throws Exception {
    PassageFolder folder = PassageFolder.read(Path.of("scenarios/ollen-skerries"));
    TimedPlan plan =
        TimedPlan.of(folder.passage(), folder.start().toInstant()).solved().orElseThrow();
    String text = GpxFile.planned(folder.name(), folder.wayPoints(), plan);
    keepsToTheRules(text);
    GpxContent content = read(text);
    assertEquals(plan.legs().size(), content.tracks().size());
    for (int leg = 0; leg < plan.legs().size(); leg++) {
      List<GpxContent.Point> path = content.tracks().get(leg).points();
      assertTrue(path.size() > 1, path.toString());
      isAt(folder.wayPoints().get(leg).position(), path.get(0).position(), 1e-8); // a millimetre
      isAt(
          folder.wayPoints().get(leg + 1).position(),
          path.get(path.size() - 1).position(),
          ENDS_DEGREES);
      assertTrue(path.stream().allMatch(it -> it.time().isEmpty()));
    }
  }

  /** A tenth of a metre: the search for a heading ends no nearer. */
  private static final double ENDS_DEGREES = 1e-6;

  private static void isAt(Position expected, Position actual, double degrees) {
    assertEquals(expected.latitudeDegrees(), actual.latitudeDegrees(), degrees);
    assertEquals(expected.longitudeDegrees(), actual.longitudeDegrees(), degrees);
  }

  @Test
  void theSameBytesComeOutInEveryLocale() {
    String here = GpxFile.text("All", sample());
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertEquals(here, GpxFile.text("All", sample()));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void encodingsAreReadAsDeclared() {
    String body = HEAD + "<wpt lat=\"1\" lon=\"2\"><name>Fjörð</name></wpt></gpx>";
    for (String name : List.of("ISO-8859-1", "UTF-16", "UTF-8")) {
      byte[] bytes =
          ("<?xml version=\"1.0\" encoding=\"" + name + "\"?>" + body)
              .getBytes(Charset.forName(name));
      assertEquals("Fjörð", GpxFile.read("t.gpx", bytes).wayPoints().get(0).name(), name);
    }
    byte[] marked = ("\uFEFF" + body).getBytes(StandardCharsets.UTF_8);
    assertEquals("Fjörð", GpxFile.read("t.gpx", marked).wayPoints().get(0).name());
  }

  @Test
  void controlCharactersInANameAreRefused() {
    GpxContent.Point bad = new GpxContent.Point("a\u0001", Position.ofDegrees(1, 2), null);
    assertThrows(
        IllegalArgumentException.class,
        () -> GpxFile.text("All", new GpxContent(List.of(bad), List.of(), List.of())));
  }

  @Test
  void unknownPartsWithinExtensionsAreLeftAlone() {
    GpxContent content =
        read(
            HEAD
                + "<wpt lat=\"1\" lon=\"2\"><extensions><x xmlns=\"urn:x\"><time>noon</time></x>"
                + "</extensions></wpt></gpx>");
    assertEquals(1, content.wayPoints().size());
  }

  private static String point(String attributes, String within) {
    return HEAD + "\n<rte>\n<rtept " + attributes + ">" + within + "</rtept>\n</rte>\n</gpx>";
  }

  @TestFactory
  Stream<DynamicTest> badFilesAreRefusedWithTheirLine() {
    List<String[]> cases = new ArrayList<>();
    cases.add(new String[] {point("lat=\"91\" lon=\"0\"", ""), "line 3", "[-90, 90]"});
    cases.add(new String[] {point("lat=\"0\" lon=\"180\"", ""), "line 3", "[-180, 180)"});
    cases.add(new String[] {point("lat=\"50,5\" lon=\"0\"", ""), "line 3", "but was \"50,5\""});
    cases.add(new String[] {point("lon=\"0\"", ""), "line 3", "lat is missing"});
    cases.add(new String[] {point("lat=\"NaN\" lon=\"0\"", ""), "line 3", "decimal number"});
    cases.add(new String[] {point("lat=\"0x1p1\" lon=\"0\"", ""), "line 3", "decimal number"});
    cases.add(new String[] {point("lat=\"1e1\" lon=\"0\"", ""), "line 3", "decimal number"});
    cases.add(new String[] {point("lat=\"\" lon=\"0\"", ""), "line 3", "decimal number"});
    cases.add(
        new String[] {
          point("lat=\"1\" lon=\"2\"", "<time>2026-06-14T10:40:00</time>"), "line 3", "its zone"
        });
    cases.add(
        new String[] {point("lat=\"1\" lon=\"2\"", "<time>noon</time>"), "line 3", "its zone"});
    cases.add(
        new String[] {
          "<!DOCTYPE gpx [<!ENTITY e SYSTEM \"file:///etc/passwd\">]>" + HEAD + "</gpx>",
          "line 1",
          "no document type"
        });
    cases.add(
        new String[] {
          "<!DOCTYPE g [<!ENTITY a \"aa\"><!ENTITY b \"&a;&a;\">]>" + HEAD + "&b;</gpx>",
          "line 1",
          "no document type"
        });
    cases.add(new String[] {"", "line 1", "not sound XML"});
    cases.add(new String[] {"lat,lon\n1,2\n", "line 1", "not sound XML"});
    cases.add(new String[] {HEAD + "\n<wpt lat=\"1\" lon=\"2\">", "line 2", "not sound XML"});
    cases.add(new String[] {"<gpx version=\"1.1\"></gpx>", "line 1", "must begin with <gpx"});
    cases.add(
        new String[] {HEAD.replace("1.1\" c", "1.0\" c") + "</gpx>", "line 1", "must be \"1.1\""});
    cases.add(new String[] {HEAD.replace("creator=\"t\"", "") + "</gpx>", "line 1", "a creator"});
    cases.add(new String[] {HEAD + "<a>".repeat(70), "line 1", "elements deep"});
    cases.add(new String[] {HEAD + "<boat/></gpx>", "t.gpx", "is not GPX 1.1"});
    return cases.stream()
        .map(
            it ->
                DynamicTest.dynamicTest(
                    it[2] + ": " + it[0].substring(Math.max(0, it[0].length() - 40)).strip(),
                    () -> {
                      String message =
                          assertThrows(InputFormatException.class, () -> read(it[0])).getMessage();
                      assertTrue(message.contains(it[1]), message);
                      assertTrue(message.contains(it[2]), message);
                    }));
  }

  @Test
  void aBrokenEncodingIsRefused() {
    byte[] bytes =
        (HEAD + "<wpt lat=\"1\" lon=\"2\"><name>x</name></wpt></gpx>")
            .getBytes(StandardCharsets.UTF_8);
    bytes[HEAD.length() + 31] = (byte) 0xFF;
    assertThrows(InputFormatException.class, () -> GpxFile.read("t.gpx", bytes));
  }

  @Test
  void sizesAreBounded() {
    String many = HEAD + "<wpt lat=\"1\" lon=\"2\"/>".repeat(GpxGate.MOST_POINTS + 1) + "</gpx>";
    String message = assertThrows(InputFormatException.class, () -> read(many)).getMessage();
    assertTrue(message.contains("at most 500000 points"), message);
    byte[] huge = new byte[GpxGate.MOST_BYTES + 1];
    String told =
        assertThrows(InputFormatException.class, () -> GpxFile.read("t.gpx", huge)).getMessage();
    assertTrue(told.contains("at most 64000000 bytes"), told);
  }
}
