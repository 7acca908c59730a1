package org.ferryglide.tide.folder;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A small sound folder, kept in memory so that tests can damage it. Everything in it is invented.
 */
final class Folders {
  private Folders() {}

  /** The files of a sound folder by name: two legs, one station, one port. */
  static Map<String, String> sound() {
    Map<String, String> files = new LinkedHashMap<>();
    files.put(
        "passage.csv",
        """
        item,value
        name,Out and over
        start,2026-06-14T11:40+01:00
        paddling speed,3.5 kn
        printed rose,"8°50'W 2019 (8'E)"
        landing port,Orrin Quay
        """);
    files.put(
        "waypoints.csv",
        """
        name,position
        Marrow Slip,46°10.0'N 026°20.0'W
        Hesk Point,46°11.8'N 026°17.6'W
        Quill Island,46°12.1'N 026°13.0'W
        """);
    StringBuilder stream =
        new StringBuilder(
            "station,latitude,longitude,port,neap_range_m,spring_range_m,hour,set_deg,"
                + "spring_rate_kn,neap_rate_kn\n");
    double[] rates = {0.4, 1.1, 1.7, 2.1, 1.9, 1.2, 0.4, 0.6, 1.5, 2.2, 2.0, 1.3, 0.3};
    int[] sets = {15, 8, 6, 5, 5, 8, 40, 175, 186, 188, 187, 184, 180};
    for (int hour = -6; hour <= 6; hour++) {
      stream
          .append("Hesk Sound,")
          .append(hour == -6 ? "46.198,-26.255,Orrin Quay,2.4,5.0," : ",,,,,")
          .append(hour)
          .append(',')
          .append(sets[hour + 6])
          .append(',')
          .append(rates[hour + 6])
          .append(',')
          .append(rates[hour + 6] / 2.0)
          .append('\n');
    }
    files.put("streams.csv", stream.toString());
    files.put(
        "tides/orrin-quay.csv",
        """
        port,datum,time,height_m,kind
        Orrin Quay,chart datum,2026-06-14T04:34+01:00,5.2,high
        ,,2026-06-14T10:44+01:00,0.6,low
        ,,2026-06-14T16:53+01:00,5.3,high
        ,,2026-06-14T23:03+01:00,0.5,low
        ,,2026-06-15T05:12+01:00,5.3,high
        """);
    return files;
  }

  static void write(Path folder, Map<String, String> files) throws IOException {
    for (Map.Entry<String, String> file : files.entrySet()) {
      Path path = folder.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.write(path, file.getValue().getBytes(StandardCharsets.UTF_8));
    }
  }
}
