package org.ferryglide.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The shipped scenario worked out once more from its files alone: a reader of comma-separated
 * values, stream tables, tides, vectors at one second and the sun, all of them written here and
 * sharing no code with the library, to the figures that the main job prints.
 */
class ScenarioByVectorsTest {
  private static final Path FOLDER = Path.of("scenarios", "ollen-skerries");
  private static final double KNOT = 1852.0 / 3600.0;
  private static final double A = 6378137.0; // WGS84, NIMA TR8350.2 (2000), table 3.1
  private static final double E2 = 0.00669437999014;

  /** The files are read in whole minutes and tenths; sums of seconds are out by less. */
  private static final double HALF_A_MINUTE = 30.5;

  private static List<String[]> stations;
  private static List<String[]> wayPoints;
  private static String printed;
  private static double start;
  private static double high;
  private static double range;
  private static double reach;

  /** Legs as sailed with a constant heading. */
  private static final List<Sailed> LEGS = new ArrayList<>();

  /** One leg: times in seconds, angles in degrees, metres. */
  private static final class Sailed {
    double departure;
    double arrival;
    double heading;
    double course;
    double length;
    double strays;
    double straysAt;
    double heldArrival;
    double leastHeld = 360.0;
    double mostHeld;
  }

  // ---- reading

  private static List<String[]> rows(String file) throws IOException {
    List<String[]> rows = new ArrayList<>();
    for (String line : Files.readAllLines(FOLDER.resolve(file))) {
      if (!line.startsWith("#") && !line.trim().isEmpty()) {
        List<String> cells = new ArrayList<>();
        Matcher cell = Pattern.compile("\\G(?:\"([^\"]*)\"|([^,]*))(?:,|$)").matcher(line);
        while (cells.size() < 40 && cell.find() && (cell.end() > cell.start() || cells.isEmpty())) {
          cells.add(cell.group(1) != null ? cell.group(1) : cell.group(2));
        }
        rows.add(cells.toArray(new String[0]));
      }
    }
    rows.remove(0);
    return rows;
  }

  private static String item(String file, String name) throws IOException {
    return rows(file).stream().filter(row -> row[0].equals(name)).findFirst().orElseThrow()[1];
  }

  private static double number(String text) {
    Matcher number = Pattern.compile("-?[0-9.]+").matcher(text);
    assertTrue(number.find(), text);
    return Double.parseDouble(number.group());
  }

  /** Degrees, north and east positive. */
  private static double[] position(String text) {
    Matcher parts =
        Pattern.compile("(\\d+)°([0-9.]+)'([NS]) (\\d+)°([0-9.]+)'([EW])").matcher(text);
    assertTrue(parts.matches(), text);
    double lat = Double.parseDouble(parts.group(1)) + Double.parseDouble(parts.group(2)) / 60.0;
    double lon = Double.parseDouble(parts.group(4)) + Double.parseDouble(parts.group(5)) / 60.0;
    return new double[] {
      parts.group(3).equals("N") ? lat : -lat, parts.group(6).equals("E") ? lon : -lon
    };
  }

  private static double seconds(String time) {
    return OffsetDateTime.parse(time).toEpochSecond();
  }

  // ---- the earth

  private static double metresNorth(double lat) {
    double w = 1.0 - E2 * Math.pow(Math.sin(Math.toRadians(lat)), 2);
    return A * (1.0 - E2) / Math.pow(w, 1.5) * Math.PI / 180.0;
  }

  private static double metresEast(double lat) {
    double w = 1.0 - E2 * Math.pow(Math.sin(Math.toRadians(lat)), 2);
    return A / Math.sqrt(w) * Math.cos(Math.toRadians(lat)) * Math.PI / 180.0;
  }

  private static double north(double[] from, double[] to) {
    return (to[0] - from[0]) * metresNorth(0.5 * (from[0] + to[0]));
  }

  private static double east(double[] from, double[] to) {
    return (to[1] - from[1]) * metresEast(0.5 * (from[0] + to[0]));
  }

  // ---- the stream

  /** A station's rows, hour by hour about high water: set, spring and neap rate. */
  private static double[] flow(String name, double time) {
    List<String[]> rows =
        stations.stream().filter(row -> row[0].equals(name)).collect(Collectors.toList());
    double hour = (time - high) / 3600.0;
    int before = (int) Math.floor(hour);
    double part = hour - before;
    double[] sum = new double[2];
    for (int i = 0; i < 2; i++) {
      String[] row = rows.get(before + i + 6);
      assertEquals(before + i, number(row[6]));
      double rate = rate(rows.get(0), row) * KNOT;
      double set = Math.toRadians(number(row[7]));
      double weight = i == 0 ? 1.0 - part : part;
      sum[0] += weight * rate * Math.sin(set);
      sum[1] += weight * rate * Math.cos(set);
    }
    return sum;
  }

  /** Between neaps and springs by the range of the day. */
  private static double rate(String[] first, String[] row) {
    double neap = number(first[4]);
    double spring = number(first[5]);
    return number(row[9]) + (number(row[8]) - number(row[9])) * (range - neap) / (spring - neap);
  }

  /** That of the nearest station, which must be within reach. */
  private static double[] stream(double[] place, double time) {
    double nearest = reach;
    double[] flow = {Double.NaN, Double.NaN};
    for (String[] row : stations) {
      if (!row[1].isEmpty()) {
        double[] there = {number(row[1]), number(row[2])};
        double away = Math.hypot(east(place, there), north(place, there));
        if (away < nearest) {
          nearest = away;
          flow = flow(row[0], time);
        }
      }
    }
    return flow;
  }

  // ---- the legs

  @BeforeAll
  static void workOut() throws IOException {
    stations = rows("streams.csv");
    wayPoints = rows("waypoints.csv");
    start = seconds(item("passage.csv", "start"));
    reach = 1852.0 * number(item("limits.csv", "reach of stations"));
    double speed = KNOT * number(item("passage.csv", "paddling speed"));
    tide();
    double time = start;
    for (int i = 1; i < wayPoints.size(); i++) {
      Sailed leg = new Sailed();
      double[] from = position(wayPoints.get(i - 1)[1]);
      double[] to = position(wayPoints.get(i)[1]);
      leg.departure = time;
      leg.length = Math.hypot(north(from, to), east(from, to));
      leg.course = degrees(Math.atan2(east(from, to), north(from, to)));
      double low = leg.course - 60.0;
      double up = leg.course + 60.0;
      while (up - low > 1e-6) { // to the right of the line: steer less
        double middle = 0.5 * (low + up);
        if (sail(leg, from, to, speed, middle) > 0.0) {
          up = middle;
        } else {
          low = middle;
        }
      }
      sail(leg, from, to, speed, low);
      leg.heading = degrees(Math.toRadians(low));
      hold(leg, from, to, speed);
      time = leg.arrival;
      LEGS.add(leg);
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintStream to = new PrintStream(out, true, StandardCharsets.UTF_8);
    assertEquals(0, LayOff.run(new String[] {FOLDER.toString()}, to, to));
    printed = out.toString(StandardCharsets.UTF_8);
  }

  /** The high water nearest to the passage at the standard port, and the range about it. */
  private static void tide() throws IOException {
    List<String[]> waters = rows("tides/orrin-quay.csv");
    double best = Double.POSITIVE_INFINITY;
    for (int i = 1; i + 1 < waters.size(); i++) {
      double away = Math.abs(seconds(waters.get(i)[2]) - start - 3600.0);
      if (waters.get(i)[4].equals("high") && away < best) {
        best = away;
        high = seconds(waters.get(i)[2]);
        double height = number(waters.get(i)[3]);
        range = height - 0.5 * (number(waters.get(i - 1)[3]) + number(waters.get(i + 1)[3]));
      }
    }
  }

  private static double degrees(double radians) {
    return (Math.toDegrees(radians) + 360.0) % 360.0;
  }

  /** Metres to the right of the line where a heading is abreast of the end. */
  private static double sail(Sailed leg, double[] from, double[] to, double speed, double heading) {
    double[] place = from.clone();
    double sine = Math.sin(Math.toRadians(leg.course));
    double cosine = Math.cos(Math.toRadians(leg.course));
    double time = leg.departure;
    leg.strays = 0.0;
    while (true) {
      double[] set = stream(place, time + 0.5);
      double e = speed * Math.sin(Math.toRadians(heading)) + set[0];
      double n = speed * Math.cos(Math.toRadians(heading)) + set[1];
      double left = east(place, to) * sine + north(place, to) * cosine;
      double right = east(from, place) * cosine - north(from, place) * sine;
      if (Math.abs(right) > Math.abs(leg.strays)) {
        leg.strays = right;
        leg.straysAt = time;
      }
      double made = e * sine + n * cosine;
      if (left <= made) {
        leg.arrival = time + left / made;
        return right + (e * cosine - n * sine) * left / made;
      }
      place[0] += n / metresNorth(place[0]);
      place[1] += e / metresEast(place[0]);
      time += 1.0;
    }
  }

  private static void hold(Sailed leg, double[] from, double[] to, double speed) {
    double sine = Math.sin(Math.toRadians(leg.course));
    double cosine = Math.cos(Math.toRadians(leg.course));
    double done = 0.0;
    double time = leg.departure;
    while (done < leg.length) {
      double part = done / leg.length;
      double[] place = {from[0] + part * (to[0] - from[0]), from[1] + part * (to[1] - from[1])};
      double[] set = stream(place, time + 0.5);
      double across = set[0] * cosine - set[1] * sine;
      double along = set[0] * sine + set[1] * cosine;
      double bow = leg.course - Math.toDegrees(Math.asin(across / speed));
      leg.leastHeld = Math.min(leg.leastHeld, bow);
      leg.mostHeld = Math.max(leg.mostHeld, bow);
      done += along + Math.sqrt(speed * speed - across * across);
      time += 1.0;
    }
    leg.heldArrival = time;
  }

  // ---- what is printed

  /** What follows a label in the part of a leg; the parts of one strategy begin with its name. */
  private static String part(int leg, String from, String until) {
    int begin = printed.indexOf("Leg " + (leg + 1) + " of");
    int at = printed.indexOf(from, begin);
    assertTrue(begin >= 0 && at >= 0, from);
    return printed.substring(at, printed.indexOf(until, at + 1));
  }

  private static String found(String text, String pattern) {
    Matcher found = Pattern.compile(pattern).matcher(text);
    assertTrue(found.find(), () -> pattern + " in " + text);
    return found.group(1);
  }

  private static String three(double degrees) {
    return String.format(Locale.ROOT, "%03d", Math.round(degrees) % 360);
  }

  /** Seconds of a printed clock time of the day, by the zone of the scenario. */
  private static double clock(String time) {
    return seconds("2026-06-14T" + time + "+01:00");
  }

  @Test
  void coursesAndBackBearingsAreThoseOfTheFiles() throws IOException {
    // a rose is carried forward from the beginning of its year
    String rose = item("passage.csv", "printed rose");
    Matcher parts = Pattern.compile("(\\d+)°(\\d+)'W (\\d+) \\((\\d+)'E\\)").matcher(rose);
    assertTrue(parts.matches(), rose);
    double years = 2026.0 + (31 + 28 + 31 + 30 + 31 + 13.5) / 365.0 - number(parts.group(3));
    double west = number(parts.group(1)) + (number(parts.group(2)) - 8.0 * years) / 60.0;
    assertEquals("8", parts.group(4));
    for (int i = 0; i < LEGS.size(); i++) {
      Sailed leg = LEGS.get(i);
      String words = part(i, "  course", "  stream");
      assertEquals(three(leg.course), found(words, "course +(\\d{3})° true"));
      assertEquals(
          String.format(Locale.ROOT, "%.1f", leg.length / 1852.0), found(words, "; ([0-9.]+) NM"));
      assertEquals(three(leg.course + west), found(words, "magnetic +(\\d{3})° by the printed"));
      assertEquals(three(leg.course + 180.0), found(words, "along (\\d{3})° true"));
      assertEquals(three(leg.course + 180.0 + west), found(words, "true, (\\d{3})° magnetic"));
      assertEquals(
          (int) west + "°" + Math.round(60.0 * (west % 1.0)),
          found(words, "\\((\\d+°\\d+)'W\\), "));
      String steered = part(i, "  constant heading", "  track held");
      assertEquals(three(leg.heading), found(steered, "steer (\\d{3})° true"));
      assertEquals(three(leg.heading + west), found(steered, "true, (\\d{3})° magnetic"));
    }
  }

  @Test
  void timesAndSpeedsAreThoseOfVectorsAtOneSecond() {
    for (int i = 0; i < LEGS.size(); i++) {
      Sailed leg = LEGS.get(i);
      String steered = part(i, "  constant heading", "  track held");
      double minutes = Math.ceil(leg.arrival / 60.0) - Math.ceil(leg.departure / 60.0);
      // times on the way are rounded up: nobody is promised to be there sooner
      assertEquals(minutes, number(found(steered, "(\\d+) min, ETA")));
      assertEquals(leg.arrival + 30.0, clock(found(steered, "ETA (\\d\\d:\\d\\d)")), HALF_A_MINUTE);
      assertEquals(
          leg.length / (leg.arrival - leg.departure) / KNOT,
          number(found(steered, "([0-9.]+) kn made good")),
          0.05);
      assertEquals(
          String.format(Locale.ROOT, "%.2f", Math.ceil(Math.abs(leg.strays) / 18.52) / 100.0),
          found(steered, "strays ([0-9.]+) NM"));
      assertEquals(leg.strays > 0.0 ? "right" : "left", found(steered, "to the (\\w+) of"));
      // the top is flat: where it lies is known less well than how high it is
      assertEquals(leg.straysAt, clock(found(steered, "most at (\\d\\d:\\d\\d)")), 90.0);
      String held = part(i, "  track held", "stays");
      assertEquals(
          leg.heldArrival + 30.0, clock(found(held, "ETA (\\d\\d:\\d\\d)")), HALF_A_MINUTE);
      List<String> bows =
          Pattern.compile("(\\d{3})° true").matcher(held).results().map(it -> it.group(1)).toList();
      assertFalse(bows.isEmpty(), held);
      for (String bow : bows) {
        assertTrue(number(bow) >= leg.leastHeld - 0.5 && number(bow) <= leg.mostHeld + 0.5, held);
      }
    }
  }

  @Test
  void streamsAreThoseOfTheTable() {
    Pattern row = Pattern.compile("(\\d\\d:\\d\\d)  HW([-+]?\\d*) +(\\d{3})° ([0-9.]+) kn");
    for (int i = 0; i < LEGS.size(); i++) {
      String name = "";
      int rows = 0;
      for (String line : part(i, "  stream", "  constant heading").split("\n", -1)) {
        Matcher station =
            Pattern.compile("(Hesk Sound|Tarn Channel), [0-9.]+ NM from the m").matcher(line);
        name = station.find() ? station.group(1) : name;
        Matcher told = row.matcher(line);
        if (told.find()) {
          double hour = told.group(2).isEmpty() ? 0.0 : number(told.group(2));
          assertEquals(high + 3600.0 * hour, clock(told.group(1)));
          double[] flow = flow(name, high + 3600.0 * hour);
          assertEquals(three(degrees(Math.atan2(flow[0], flow[1]))), told.group(3));
          assertEquals(Math.hypot(flow[0], flow[1]) / KNOT, number(told.group(4)), 0.0501);
          rows++;
        }
      }
      assertTrue(rows >= 3, "rows of leg " + (i + 1));
    }
  }

  @Test
  void theHeightAtTheLandingIsThatOfTheTides() throws IOException {
    double arrival = LEGS.get(3).arrival;
    List<String[]> waters = rows("tides/dunlathe.csv");
    int next = 0;
    while (seconds(waters.get(next)[2]) < arrival) {
      next++;
    }
    double low = number(waters.get(next - 1)[3]);
    double top = number(waters.get(next)[3]);
    double begin = seconds(waters.get(next - 1)[2]);
    double part = (arrival - begin) / (seconds(waters.get(next)[2]) - begin);
    double cosine = low + (top - low) * 0.5 * (1.0 - Math.cos(Math.PI * part));
    double[] twelfths = {0, 1, 3, 6, 9, 11, 12};
    int sixth = (int) (6.0 * part);
    double rule =
        low
            + (top - low)
                / 12.0
                * (twelfths[sixth]
                    + (6.0 * part - sixth) * (twelfths[sixth + 1] - twelfths[sixth]));
    String landing = printed.substring(printed.indexOf("Landing at Dunlathe Landing"));
    // heights are rounded down, never more water than there is; a range up
    assertEquals(down(cosine), found(landing, "height +([0-9.]+) m above"));
    assertEquals(down(rule), found(landing, "([0-9.]+) m by the rule of twelfths"));
    double after = number(waters.get(next + 1)[3]);
    double about = top - 0.5 * (low + after);
    assertEquals(
        String.format(Locale.ROOT, "%.1f", Math.ceil(10.0 * about - 1e-9) / 10.0),
        found(landing, "range +([0-9.]+) m"));
    assertEquals(arrival + 30.0, clock(found(landing, "about (\\d\\d:\\d\\d)")), HALF_A_MINUTE);
  }

  private static String down(double metres) {
    return String.format(Locale.ROOT, "%.1f", Math.floor(10.0 * metres) / 10.0);
  }

  @Test
  void theSunSetsByThePublishedFormula() {
    for (int i = 0; i < LEGS.size(); i++) {
      double[] place = position(wayPoints.get(i + 1)[1]);
      double time = LEGS.get(i).arrival;
      while (altitude(place, time) > -50.0 / 60.0) { // upper limb and usual refraction, ibid.
        time += 1.0;
      }
      double told =
          clock(found(part(i, "  constant heading", "  track held"), "sunset (\\d\\d:\\d\\d)"));
      // whole minutes down, of what SunDay promises within 21 seconds; the formula is out by 7 here
      assertEquals(time - 30.0, told, 30.0 + 21.0 + 7.0);
    }
  }

  /** The sun's altitude: The Astronomical Almanac 2010, pages C5 and B8, within 0.01 degree. */
  private static double altitude(double[] place, double time) {
    double n = time / 86400.0 - 10_957.5;
    double anomaly = Math.toRadians(357.528 + 0.9856003 * n);
    double ecliptic =
        Math.toRadians(
            280.460 + 0.9856474 * n + 1.915 * Math.sin(anomaly) + 0.020 * Math.sin(2.0 * anomaly));
    double obliquity = Math.toRadians(23.439 - 0.0000004 * n);
    double ascension = Math.atan2(Math.cos(obliquity) * Math.sin(ecliptic), Math.cos(ecliptic));
    double declination = Math.asin(Math.sin(obliquity) * Math.sin(ecliptic));
    double hour = Math.toRadians(280.46062 + 360.985647366 * n + place[1]) - ascension;
    double phi = Math.toRadians(place[0]);
    return Math.toDegrees(
        Math.asin(
            Math.sin(phi) * Math.sin(declination)
                + Math.cos(phi) * Math.cos(declination) * Math.cos(hour)));
  }

  @Test
  void theStrongestStreamIsThatOfVectors() throws IOException {
    String[] error = rows("margins.csv").get(rows("margins.csv").size() - 1);
    assertEquals("error of the rate", error[0]);
    double strongest = 0.0;
    double when = 0.0;
    double share = 0.0;
    double speed = KNOT * number(item("passage.csv", "paddling speed"));
    for (int i = 0; i < LEGS.size(); i++) {
      Sailed leg = LEGS.get(i);
      double[] place = position(wayPoints.get(i)[1]);
      for (double time = leg.departure; time < leg.arrival; time += 1.0) {
        double[] set = stream(place, time);
        double e = speed * Math.sin(Math.toRadians(leg.heading)) + set[0];
        double n = speed * Math.cos(Math.toRadians(leg.heading)) + set[1];
        double rate = Math.hypot(set[0], set[1]);
        when = rate > strongest ? time : when;
        strongest = Math.max(strongest, rate);
        double across = Math.abs(set[0] * n - set[1] * e) / Math.hypot(e, n);
        share = Math.max(share, across / speed);
        place[0] += n / metresNorth(place[0]);
        place[1] += e / metresEast(place[0]);
      }
    }
    String checks = printed.substring(printed.indexOf("Checks of the passage"));
    strongest *= (1.0 + number(error[2]) / 100.0) / KNOT;
    // rounded up
    assertEquals(
        String.format(Locale.ROOT, "%.1f", Math.ceil(10.0 * strongest) / 10.0),
        found(checks, "stream: ([0-9.]+) kn, beyond"));
    assertEquals(when, clock(found(checks, "stream: [^\\n]* at (\\d\\d:\\d\\d)")), 60.0);
    assertEquals(100.0 * share, number(found(checks, "across: ([0-9.]+) per cent")), 0.1);
  }
}
