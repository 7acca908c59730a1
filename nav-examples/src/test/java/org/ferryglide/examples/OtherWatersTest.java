package org.ferryglide.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import org.ferryglide.examples.page.Labels;
import org.ferryglide.tide.folder.PassageFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The main job in other waters beside a computation of its own: plane trigonometry and a table read
 * by hand, with nothing of the library in it. Places are invented.
 */
class OtherWatersTest {
  /** Legs of 3 miles on a plane with the length of a minute at the middle latitude. */
  private static final double COURSE_DEGREES = 0.3;

  private static final double LENGTH_MILES = 0.02;

  /** Set and rate by straight lines between hours against the small steps below. */
  private static final double HEADING_DEGREES = 0.7;

  private static final double MINUTES = 1.0;

  /** Set and rates at springs by hour after high water, from -6. */
  private static final double[][] HOURS = {
    {20, 0.4},
    {25, 1.0},
    {30, 1.6},
    {30, 2.0},
    {30, 1.8},
    {28, 1.1},
    {60, 0.3},
    {200, 0.6},
    {208, 1.4},
    {210, 2.0},
    {210, 1.9},
    {205, 1.2},
    {190, 0.4}
  };

  @TempDir Path folder;

  /** One leg, one station in its middle, high water two hours after the start. */
  private LaidOffPassage passage(double lat1, double lon1, double lat2, double lon2, String rose)
      throws IOException {
    OffsetDateTime start = OffsetDateTime.parse("2026-02-10T10:00+00:00");
    StringBuilder streams =
        new StringBuilder(
            "station,latitude,longitude,port,neap_range_m,spring_range_m,hour,set_deg,"
                + "spring_rate_kn,neap_rate_kn\n");
    double middle = Math.abs(lon2 - lon1) > 180 ? 180.0 : (lon1 + lon2) / 2.0;
    for (int hour = -6; hour <= 6; hour++) {
      double[] row = HOURS[hour + 6];
      String place = (lat1 + lat2) / 2.0 + "," + middle + ",Port,1.5,3.0,";
      streams.append("Middle," + (hour == -6 ? place : ",,,,,") + hour + ",");
      streams.append(row[0] + "," + row[1] + "," + row[1] / 2.0 + "\n");
    }
    StringBuilder tides = new StringBuilder("port,datum,time,height_m,kind\n");
    for (int i = -4; i <= 4; i++) {
      OffsetDateTime time = start.plusHours(2).plusMinutes(372L * i);
      tides.append(i == -4 ? "Port,chart datum," : ",,");
      tides.append(time + (i % 2 == 0 ? ",3.5,high\n" : ",0.5,low\n"));
    }
    Files.createDirectories(folder.resolve("tides"));
    Files.writeString(folder.resolve("tides/port.csv"), tides);
    Files.writeString(folder.resolve("streams.csv"), streams);
    Files.writeString(
        folder.resolve("waypoints.csv"),
        "name,position\nOut," + text(lat1, lon1) + "\nOver," + text(lat2, lon2) + "\n");
    Files.writeString(
        folder.resolve("passage.csv"),
        "item,value\nname,Elsewhere\nstart,"
            + start
            + "\npaddling speed,3.6 kn\nprinted rose,\""
            + rose
            + "\"\nlanding port,Port\n");
    Files.writeString(folder.resolve("limits.csv"), "item,value\nlight,any\n");
    return LaidOffPassage.of(PassageFolder.read(folder));
  }

  private static String text(double latitude, double longitude) {
    return Math.abs(latitude)
        + "°"
        + (latitude < 0 ? "S " : "N ")
        + Math.abs(longitude)
        + "°"
        + (longitude < 0 ? "W" : "E");
  }

  /** East and north in knots, hours after high water: a straight line between the table's rows. */
  private static double[] stream(double hours) {
    int below = (int) Math.floor(hours);
    double share = hours - below;
    double[] flow = new double[2];
    for (int i = 0; i < 2; i++) {
      double[] row = HOURS[Math.min(12, below + i + 6)];
      double weight = i == 0 ? 1.0 - share : share;
      flow[0] += weight * row[1] * Math.sin(Math.toRadians(row[0]));
      flow[1] += weight * row[1] * Math.cos(Math.toRadians(row[0]));
    }
    return flow;
  }

  private static void compare(
      LaidOffPassage passage, double lat1, double lon1, double lat2, double lon2) {
    double meanLatitude = Math.toRadians((lat1 + lat2) / 2.0);
    // metres in a degree on WGS84: NGA.STND.0036, the two radii of curvature at the mean latitude
    double a = 6378137.0;
    double e2 = 6.69437999014e-3;
    double w = 1.0 - e2 * Math.pow(Math.sin(meanLatitude), 2);
    double north = Math.toRadians(lat2 - lat1) * a * (1 - e2) / Math.pow(w, 1.5) / 1852.0;
    double turn = Math.IEEEremainder(lon2 - lon1, 360.0);
    double east = Math.toRadians(turn) * a / Math.sqrt(w) * Math.cos(meanLatitude) / 1852.0;
    double length = Math.hypot(east, north);
    double course = (Math.toDegrees(Math.atan2(east, north)) + 360.0) % 360.0;
    LaidOffLeg leg = passage.legs().get(0);
    assertEquals(course, leg.leg().initialCourse().degrees(), COURSE_DEGREES);
    assertEquals(length, leg.leg().length().nauticalMiles(), LENGTH_MILES);

    double bestHeading = Double.NaN;
    double bestMiss = Double.POSITIVE_INFINITY;
    double bestHours = Double.NaN;
    for (double heading = course - 60; heading < course + 60; heading += 0.05) {
      double x = 0;
      double y = 0;
      double step = 1.0 / 720.0;
      for (double time = 0; time < 4.0; time += step) {
        double[] flow = stream(time - 2.0);
        x += step * (flow[0] + 3.6 * Math.sin(Math.toRadians(heading)));
        y += step * (flow[1] + 3.6 * Math.cos(Math.toRadians(heading)));
        double miss = Math.hypot(x - east, y - north);
        if (miss < bestMiss) {
          bestMiss = miss;
          bestHeading = heading;
          bestHours = time + step;
        }
      }
    }
    var steered = leg.constantHeading().flatMap(outcome -> outcome.solved()).orElseThrow();
    double off = Math.IEEEremainder(steered.courseToSteer().degrees() - bestHeading, 360.0);
    assertEquals(0.0, off, HEADING_DEGREES);
    Instant start = passage.folder().start().toInstant();
    double minutes = Duration.between(start, steered.arrival()).toSeconds() / 60.0;
    assertEquals(bestHours * 60.0, minutes, MINUTES);
  }

  @Test
  void fortyThreeSouthWithEasterlyVariation() throws IOException {
    LaidOffPassage passage = passage(-43.50, 147.20, -43.47, 147.26, "15°30'E 2020 (2'E)");
    compare(passage, -43.50, 147.20, -43.47, 147.26);
    String page = PassagePrinter.print(passage, Labels.english());
    assertTrue(page.contains("clock times are UTC\n"), page);
    LaidOffLeg leg = passage.legs().get(0);
    double magnetic =
        leg.constantHeading().flatMap(one -> one.solved()).orElseThrow().courseToSteer().degrees()
            - 15.7;
    String digits = Long.toString(1000 + Math.round(magnetic)).substring(1);
    assertTrue(page.contains(digits + "° magnetic"), "east is least: " + digits + " in " + page);
  }

  @Test
  void acrossTheAntimeridian() throws IOException {
    LaidOffPassage passage = passage(-17.02, 179.97, -17.00, -179.97, "12°30'E 2020 (2'E)");
    compare(passage, -17.02, 179.97, -17.00, -179.97);
  }

  @Test
  void sixtyEightNorth() throws IOException {
    LaidOffPassage passage = passage(68.00, 12.00, 68.03, 12.10, "6°00'E 2020 (14'E)");
    compare(passage, 68.00, 12.00, 68.03, 12.10);
  }
}
