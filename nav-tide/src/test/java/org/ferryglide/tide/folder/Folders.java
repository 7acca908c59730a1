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

  /** The sound folder with every file that a folder may leave out. */
  static Map<String, String> whole() {
    Map<String, String> files = sound();
    files.put("limits.csv", "# as usual\nitem,value\nlight,daylight\nreach of stations,6 NM\n");
    files.put(
        "places.csv",
        "place,to_see,mark_height_m,landing,lowest_m,highest_m,open_from_deg,open_until_deg,stop\n"
            + "Marrow Slip,,,any level,,,,,\n"
            + "Hesk Point,white beacon,14,,,,,,20 min\n"
            + "Quill Island,,,Orrin Quay,0.4,4.6,200,290,\n");
    files.put(
        "legs.csv",
        "leg,strategy,speed_kn,rests,stream,line\n"
            + "1,track held,3.2,,,\n"
            + "2,,,none,015° 0.4 kn,geodesic\n");
    files.put(
        "party.csv",
        "item,value\nslower speed,2.9 kn\nrest each hour,8 min\nlaunching,15 min\n"
            + "landing,10 min\nload,loaded\ndrift at rest,3 %\neye height,0.8 m\n"
            + "clock,Atlantic/Azores\nvisibility,5 NM\nswell from,310°\n");
    files.put(
        "margins.csv",
        "item,warning,stop\nstream,2 kn,3 kn\nwind,12 kn,18 kn\n"
            + "wind against stream,8 kn,14 kn\nleast stream that counts,,0.5 kn\n"
            + "reserve,1 kn,0.5 kn\nonshore wind,10 kn,16 kn\ndaylight left,2 h,30 min\n"
            + "time afloat,4 h,6 h 30 min\ntime to landing,1 h,2 h\nlane angle,20°,45°\n"
            + "error of the rate,,30 %\n");
    files.put(
        "dangers.csv",
        "name,position,keep_off_m,port,closed_hours,closed_above_stream_kn,closed_above_wind_kn,"
            + "closed_below_m,closed_above_m\n"
            + "Fang Rock,46°10.3'N 026°15.4'W,150,,,,,,\n"
            + "Hesk Race,46°11.4'N 026°17.4'W,100,Orrin Quay,HW-2..HW+1,2.2,16,0.2,6\n"
            + "Hesk Race,46°11.6'N 026°16.4'W,,,,,,,\n"
            + "Hesk Race,46°11.1'N 026°16.6'W,100,,,,,,\n");
    files.put(
        "lanes.csv",
        "name,position,width_m\nTarn fairway,46°13.9'N 026°14.0'W,400\n"
            + "Tarn fairway,46°12.7'N 026°10.5'W,\n");
    files.put(
        "coast.csv",
        "name,position\nOllen shore,46°16.0'N 026°20.0'W\nOllen shore,46°15.5'N 026°15.0'W\n"
            + "Vard,46°15.0'N 026°12.0'W\nVard,46°15.2'N 026°11.0'W\n");
    files.put(
        "obstacles.csv",
        "name,position\nGull Skerry,46°11.1'N 026°18.6'W\n"
            + "Gull Skerry,46°11.2'N 026°18.4'W\nGull Skerry,46°11.0'N 026°18.4'W\n");
    files.put(
        "errors.csv",
        "source,constant,independent\ncompass reading,1.5°,2°\nspeed,4 %,5 %\n"
            + "drawn anew every,30 min,\n");
    files.put("refuges.csv", "place,position,landing\nSel Sand,46°11.3'N 026°13.8'W,any level\n");
    files.put("deviation.csv", "compass_heading,deviation\n000,2°E\n090,3°W\n180,2°W\n270,3°E\n");
    files.put(
        "wind.csv",
        "place,position,time,from_deg,speed_kn\n"
            + "Ollen,46°11.0'N 026°19.0'W,2026-06-14T06:00+01:00,250,8\n"
            + "Ollen,,2026-06-14T12:00+01:00,250,8\n"
            + "Ollen,,2026-06-14T18:00+01:00,250,8\n"
            + "Ollen,,2026-06-15T00:00+01:00,250,8\n");
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
