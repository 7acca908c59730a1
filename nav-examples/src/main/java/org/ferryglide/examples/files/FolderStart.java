package org.ferryglide.examples.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ferryglide.nav.position.AngleForm;

/**
 * The beginning of a passage's folder, its missing items marked so that nobody takes a guess for a
 * figure.
 *
 * <pre>{@code
 * FolderStart.of(GpxFile.read(file).routes().get(0)).write(folder);
 * }</pre>
 */
public final class FolderStart {
  private final Map<String, String> texts = new LinkedHashMap<>();

  private FolderStart(String name, String wayPoints) {
    texts.put(
        "passage.csv",
        "# MISSING: fill in start (as 2026-06-14T11:40+01:00), paddling speed (as 3.5 kn), printed"
            + " rose\n"
            + "# (as 8°50'W 2019 (8'E)) and landing port (its table stands in the folder tides).\n"
            + "item,value\n"
            + ("name," + SafeCsv.field(name) + "\n")
            + "start,\npaddling speed,\nprinted rose,\nlanding port,\n");
    texts.put("waypoints.csv", wayPoints);
    texts.put(
        "streams.csv",
        """
        # MISSING: hourly streams of every station, hours about high water of a port in tides.
        # Latitude and longitude are decimal degrees, south and west below zero; set is true. Rows for
        # hours -6 to 6; from the second row of a station on, latitude to ranges may stay empty, as in
        # Some Sound,46.198,-26.255,Some Harbour,2.4,5.0,-6,015,0.4,0.2
        # Some Sound,,,,,,-5,008,1.1,0.5
        station,latitude,longitude,port,neap_range_m,spring_range_m,hour,set_deg,spring_rate_kn,neap_rate_kn
        """);
    texts.put(
        "tides/port.csv",
        """
        # MISSING: high and low waters of a port; a file for each port, the day before and the day
        # after among them. Times carry their offset; port and datum may stay empty from the second
        # row on, as in
        # Some Harbour,chart datum,2026-06-14T07:12+01:00,4.6,high
        # ,,2026-06-14T13:25+01:00,0.9,low
        port,datum,time,height_m,kind
        """);
  }

  /**
   * A folder in which everything is still missing.
   *
   * @return its beginning
   */
  public static FolderStart empty() {
    return new FolderStart(
        "",
        """
        # MISSING: a row for each way point, in order, as in
        # Some Slip,46°10.0'N 026°20.0'W
        # Some Point,46-11.8N 26-17.6W
        name,position
        """);
  }

  /**
   * A folder with the way points of a route.
   *
   * @param route at least two points
   * @return its beginning; points without a name, or with one that was there before, get a number
   * @throws IllegalArgumentException if the route has less than two points
   */
  public static FolderStart of(GpxContent.Line route) {
    if (route.points().size() < 2) {
      throw new IllegalArgumentException(
          "a route needs at least two points, but has " + route.points().size());
    }
    StringBuilder rows = new StringBuilder("name,position\n");
    Set<String> names = new HashSet<>();
    int number = 0;
    for (GpxContent.Point point : route.points()) {
      number++;
      String name = point.name().trim();
      if (name.isEmpty() || !names.add(name)) {
        name = (name.isEmpty() ? "Way point" : name) + " " + number;
        names.add(name);
      }
      rows.append(SafeCsv.field(name))
          .append(',')
          .append(point.position().text(AngleForm.DEGREES_MINUTES, 4))
          .append('\n');
    }
    return new FolderStart(route.name(), rows.toString());
  }

  /**
   * The files.
   *
   * @return texts by name, unmodifiable
   */
  public Map<String, String> texts() {
    return Collections.unmodifiableMap(texts);
  }

  /**
   * Files in which something is missing.
   *
   * @return their names
   */
  public List<String> missing() {
    return texts.entrySet().stream()
        .filter(file -> file.getValue().contains("MISSING"))
        .map(Map.Entry::getKey)
        .toList();
  }

  /**
   * Writes the files.
   *
   * @param folder a folder that is not yet there
   * @throws FileAlreadyExistsException if it is there: nobody's folder is written over
   * @throws IOException if it cannot be written
   */
  public void write(Path folder) throws IOException {
    if (Files.exists(folder)) {
      throw new FileAlreadyExistsException(folder.toString(), null, "is there already");
    }
    Files.createDirectories(folder.resolve("tides"));
    for (Map.Entry<String, String> file : texts.entrySet()) {
      Files.write(folder.resolve(file.getKey()), file.getValue().getBytes(StandardCharsets.UTF_8));
    }
  }
}
