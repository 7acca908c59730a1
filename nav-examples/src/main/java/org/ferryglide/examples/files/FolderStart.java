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
        station,latitude,longitude,port,neap_range_m,spring_range_m,hour,set_deg,spring_rate_kn,neap_rate_kn
        """);
    texts.put(
        "tides/port.csv",
        """
        # MISSING: high and low waters of a port; a file for each port.
        port,datum,time,height_m,kind
        """);
  }

  /**
   * A folder in which everything is still missing.
   *
   * @return its beginning
   */
  public static FolderStart empty() {
    return new FolderStart("", "# MISSING: a row for each way point, in order.\nname,position\n");
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
