package org.ferryglide.examples.study;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.sf.geographiclib.Geodesic;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.geodesy.LegComparisons;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The study beside closed forms, published tables and itself run again. */
class LegStudyTest {
  /** What each of both lengths is promised to. */
  private static final double THIRTY_NANOMETRES = 30e-9;

  /**
   * By what share a length on a sphere is off: Tobler's figure, and Earle's, both as quoted by
   * Tseng, Guo and Liu (2013), J. Marine Science and Technology 21(3), 287.
   */
  private static final double TOBLER = 0.0027;

  private static final double EARLE = 0.005;

  /**
   * The quotation tells neither the sphere nor the lines. Over the lines of this study spheres in
   * use, of 6367 to 6378 km, are off by 0.21 to 0.25 % on average; a quarter leaves room for other
   * lines.
   */
  private static final double A_QUARTER = 0.25;

  /**
   * The same legs by two published tools: RhumbSolve and GeodSolve of GeographicLib 2.1.2, each
   * printed to a micrometre; courses to 1e-11 of a degree.
   */
  @Test
  void differencesOfPublishedLegsComeOut() throws IOException {
    List<String[]> rhumb = table("rhumbsolve.csv");
    Map<String, String[]> geodesics = new HashMap<>();
    for (String[] row : table("geodsolve.csv")) {
      geodesics.put(ends(row), row);
    }
    int compared = 0;
    double[] out = new double[LegComparisons.WIDTH];
    for (String[] row : rhumb) {
      String[] geodesic = geodesics.get(ends(row));
      if (geodesic == null) {
        continue;
      }
      compared++;
      LegComparisons.compare(
          Ellipsoid.WGS84, number(row, 0), number(row, 1), number(row, 2), number(row, 3), out, 0);
      double excess = number(row, 5) - number(geodesic, 6);
      assertEquals(excess, out[LegComparisons.EXCESS], 1e-6 + THIRTY_NANOMETRES);
      double turn = Math.IEEEremainder(number(row, 4) - number(geodesic, 4), 360.0);
      double across = Math.toDegrees(THIRTY_NANOMETRES / number(row, 5));
      assertEquals(turn, out[LegComparisons.INITIAL_COURSE_DIFFERENCE], 2e-11 + across);
    }
    assertTrue(compared > 10, "compared " + compared);
  }

  private static String ends(String[] row) {
    return String.join(",", row[0], row[1], row[2], row[3]);
  }

  private static double number(String[] row, int column) {
    return Double.parseDouble(row[column].trim());
  }

  private static List<String[]> table(String file) throws IOException {
    Path path = Path.of("..", "nav-core", "src", "test", "resources", "org", "ferryglide", "nav");
    return Files.readAllLines(path.resolve("geodesy").resolve(file)).stream()
        .filter(line -> !line.isEmpty() && !line.startsWith("#"))
        .map(line -> line.split(",", -1))
        .toList();
  }

  /**
   * To first order k L² / 8 and k² L³ / 24; the next terms are a share (L tan(lat) / R)² of them.
   */
  @Test
  void differencesFollowTheirClosedForms() {
    StudyFigures figures = LegStudy.ofSeed(2).withLegs(2000).work();
    double next = Math.pow(20e3 * Math.tan(Math.toRadians(60)) / 6.36e6, 2);
    assertTrue(figures.separationOff().count() > 100);
    assertTrue(figures.separationOff().greatest() < next);
    double bend = Math.tan(Math.toRadians(60)) / 6.36e6;
    double excess = bend * bend * 8e12 / 24.0;
    assertTrue(figures.excessOff().greatest() < next * excess + THIRTY_NANOMETRES);
  }

  /** A degree is 1.745 % of the leg across, by the chord. */
  @Test
  void aCompassErrorIsItsChord() {
    double[] leg = {57.0, -6.0, 57.1, -5.8};
    LegErrors errors = new LegErrors();
    double[] out = new double[ErrorKind.values().length];
    errors.work(leg, true, out);
    double metres = errors.metres();
    assertEquals(metres * 0.017453, out[ErrorKind.COMPASS.index()], 1e-6 * metres);
    assertEquals(metres * 0.087239, out[ErrorKind.STEERING.index()], 1e-6 * metres);
    // 0.5 mm at each end, over the shorter of leg and edge: sqrt(2) 0.5 / 218 at 1:75 000
    double edge = metres * Math.sqrt(2.0) * 0.5 / Math.min(400.0, metres / 75.0);
    assertEquals(edge, out[ErrorKind.STRAIGHT_EDGE.index()], 1e-3 * edge);
    assertTrue(out[ErrorKind.MAP_LINE.index()] < out[ErrorKind.GEODESIC.index()] * 3.0);
  }

  /** The sphere's own error: a meridian's degree at the equator is 0.67 % shorter than its mean. */
  @Test
  void theSphereIsOffByTheFlattening() {
    double[] leg = {-0.5, 20.0, 0.5, 20.0};
    LegErrors errors = new LegErrors();
    double[] out = new double[ErrorKind.values().length];
    errors.work(leg, false, out);
    double sphere = Math.toRadians(LegErrors.MEAN_RADIUS_METRES);
    double peer = sphere - Geodesic.WGS84.Inverse(-0.5, 20.0, 0.5, 20.0).s12;
    assertEquals(peer, out[ErrorKind.SPHERE.index()], 1e-6);
    assertEquals(0.0, out[ErrorKind.GEODESIC.index()], THIRTY_NANOMETRES); // along a meridian
    assertTrue(Double.isNaN(out[ErrorKind.MAP_LINE.index()]));
  }

  @Test
  void theSameSeedGivesTheSameFiles(@TempDir Path folder) throws IOException {
    LegStudy.ofSeed(3).withLegs(300).writeTo(folder.resolve("a"));
    LegStudy.ofSeed(3).withLegs(300).writeTo(folder.resolve("b"));
    List<String> names =
        List.of(
            "report.md",
            "errors.csv",
            "differences.csv",
            "errors-by-length.svg",
            "errors-by-length.png",
            "geodesic-by-latitude.svg",
            "geodesic-by-course.svg",
            "plane-by-latitude.png");
    for (String name : names) {
      assertArrayEquals(
          Files.readAllBytes(folder.resolve("a").resolve(name)),
          Files.readAllBytes(folder.resolve("b").resolve(name)),
          name);
    }
    assertFalse(
        Files.readString(folder.resolve("a").resolve("errors.csv"))
            .equals(StudyTables.errors(LegStudy.ofSeed(4).withLegs(300).work())));
    assertTrue(Files.readString(folder.resolve("a").resolve("report.md")).startsWith("# Errors"));
  }

  /** Every figure of the report stands in the run: its table's cells are the tallies' means. */
  @Test
  void theReportTellsTheRun() {
    StudyFigures figures = LegStudy.ofSeed(5).withLegs(500).work();
    String report = StudyReport.text(5, figures);
    for (int length = 0; length < StudyFigures.LENGTHS.length; length++) {
      for (ErrorKind kind : new ErrorKind[] {ErrorKind.GEODESIC, ErrorKind.COMPASS}) {
        String cell = StudyReport.digits(figures.at(kind, length).mean());
        assertTrue(report.contains("| " + cell + " |"), cell);
      }
    }
    // the closed forms on the sphere: k L² / 8 and k² L³ / 24 with k = tan(60°) / R
    double bend = Math.tan(Math.toRadians(60.0)) / LegErrors.MEAN_RADIUS_METRES;
    String separation = StudyReport.digits(bend * 4e8 / 8.0);
    String excess = StudyReport.digits(1e3 * bend * bend * 8e12 / 24.0);
    assertTrue(
        report
            .lines()
            .anyMatch(
                row ->
                    row.startsWith("| 60 | 90 | ")
                        && row.contains("(" + excess + ")")
                        && row.contains("(" + separation + ")")),
        excess + " and " + separation);
  }

  @Test
  void figuresOfTheLiteratureComeOut() {
    for (PublishedFigures.Figure figure : PublishedFigures.all()) {
      assertEquals(figure.published(), figure.here(), figure.tolerance(), figure.what());
    }
    StudyFigures figures = LegStudy.ofSeed(6).withLegs(2000).work();
    assertEquals(TOBLER, figures.sphereShare().mean(), A_QUARTER * TOBLER);
    assertEquals(EARLE, figures.sphereShare().greatest(), A_QUARTER * EARLE);
    assertFalse(StudyReport.text(6, figures).contains("not met"));
  }

  /**
   * By what share a sphere is off, by Euler's theorem: a short line that goes dn north and de east
   * spans dn / M and de / N, with both radii in their closed form. The mean of as many lines drawn
   * at random is off by its standard error; none is off by more than a meridian at the equator.
   */
  @Test
  void theSphereIsOffByEulersTheorem() {
    double e2 = 0.00669437999014; // NIMA TR8350.2 (2000), table 3.3
    double sum = 0.0;
    double squares = 0.0;
    int steps = 400;
    for (int i = 0; i < steps; i++) {
      double sine = Math.sin(Math.toRadians(DrawnLegs.GREATEST_LATITUDE * (i + 0.5) / steps));
      double w = Math.sqrt(1.0 - e2 * sine * sine);
      double overN = w / 6378137.0;
      double overM = overN * w * w / (1.0 - e2);
      for (int j = 0; j < steps; j++) {
        double course = 0.5 * Math.PI * (j + 0.5) / steps;
        double arc = Math.hypot(Math.cos(course) * overM, Math.sin(course) * overN);
        double share = Math.abs(LegErrors.MEAN_RADIUS_METRES * arc - 1.0);
        sum += share;
        squares += share * share;
      }
    }
    double mean = sum / (steps * steps);
    double deviation = Math.sqrt(squares / (steps * steps) - mean * mean);
    int legs = 4000;
    StudyFigures figures = LegStudy.ofSeed(6).withLegs(legs).work();
    double fourStandardErrors = 4.0 * deviation / Math.sqrt(legs);
    assertEquals(mean, figures.sphereShare().mean(), fourStandardErrors);
    double meridian = LegErrors.MEAN_RADIUS_METRES / (6378137.0 * (1.0 - e2)) - 1.0;
    assertTrue(figures.sphereShare().greatest() <= meridian + 1e-9);
    assertTrue(figures.sphereShare().greatest() > 0.98 * meridian);
  }

  @Test
  void legsAreDrawnByTheirNumberAlone() {
    double[] legs = new double[3 * DrawnLegs.WIDTH];
    DrawnLegs drawn = new DrawnLegs(9);
    drawn.draw(2, legs, 8);
    drawn.draw(0, legs, 0);
    double[] again = new double[DrawnLegs.WIDTH];
    new DrawnLegs(9).draw(2, again, 0);
    assertEquals(again[3], legs[11]);
    assertTrue(Math.abs(legs[0]) <= DrawnLegs.GREATEST_LATITUDE);
  }
}
