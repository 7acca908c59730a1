package org.ferryglide.tide.folder;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.ferryglide.nav.magnetic.CompassRose;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.tide.height.TideTable;
import org.ferryglide.tide.sheet.Sheet;
import org.ferryglide.tide.stream.StreamTable;

/** Writes the files that every folder holds. */
final class FolderWriter {
  private FolderWriter() {}

  static Map<String, String> texts(
      String name,
      OffsetDateTime start,
      Speed paddling,
      CompassRose rose,
      List<PassageFolder.WayPoint> wayPoints,
      List<TideTable> tides,
      List<StreamTable> streams) {
    Map<String, String> texts = new LinkedHashMap<>();
    String landing = tides.isEmpty() ? "" : tides.get(tides.size() - 1).port();
    texts.put("passage.csv", new PassageSheet(name, start, paddling, rose, landing).text());
    StringBuilder places = new StringBuilder("name,position\n");
    for (PassageFolder.WayPoint place : wayPoints) {
      places
          .append(Sheet.field("name of a way point", place.name()))
          .append(',')
          .append(Sheet.field("position", place.position().toString()))
          .append('\n');
    }
    texts.put("waypoints.csv", places.toString());
    try {
      StringBuilder rows = new StringBuilder();
      StreamTable.writeAll(streams, rows);
      texts.put("streams.csv", rows.toString());
      for (TideTable tide : tides) {
        StringBuilder waters = new StringBuilder();
        tide.write(waters);
        texts.put(FolderFiles.TIDES + "/" + fileName(tide.port(), texts), waters.toString());
      }
    } catch (IOException e) {
      throw new UncheckedIOException("to memory", e); // there is no disk to fail
    }
    return texts;
  }

  /** Small letters and digits of a port's name, so that every disk takes them. */
  private static String fileName(String port, Map<String, String> taken) {
    String plain = port.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    String name = plain + ".csv";
    for (int i = 2; taken.containsKey(FolderFiles.TIDES + "/" + name); i++) {
      name = plain + "-" + i + ".csv";
    }
    return name;
  }
}
