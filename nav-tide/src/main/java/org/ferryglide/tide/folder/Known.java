package org.ferryglide.tide.folder;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.tide.height.TideTable;
import org.ferryglide.tide.sheet.Sheet;

/**
 * What the other files of a folder have told, for a file that refers to them. Where one of them was
 * refused, nothing is said of what it may have held.
 *
 * @param places names of the way points in order; empty if their file was refused
 * @param ports every port that a file of tides is about
 * @param portUnknown whether a refused file of tides may be about any port
 * @param tides the tables that could be read
 * @param stations names of the stream tables; empty if their file was refused
 * @param speed the paddling speed; empty if its file was refused
 */
record Known(
    List<String> places,
    Set<String> ports,
    boolean portUnknown,
    Map<String, TideTable> tides,
    Set<String> stations,
    Optional<Speed> speed) {

  /** A name that must be one of several, if those are known. */
  private static void require(
      Sheet.Row row, String heading, String name, String what, Collection<String> names) {
    if (!names.isEmpty() && !names.contains(name)) {
      row.problem(
          heading,
          "must be one of the "
              + what
              + ", "
              + new TreeSet<>(names)
              + ", but was "
              + name
              + NearName.question(name, names));
    }
  }

  void requirePlace(Sheet.Row row, String heading) {
    require(row, heading, row.text(heading), "way points", places);
  }

  void requireStation(Sheet.Row row, String heading, String name) {
    require(row, heading, name, "stations of stream tables", stations);
  }

  void requirePort(Sheet.Row row, String heading, String name) {
    if (!portUnknown) {
      require(row, heading, name, "ports with a tide table", ports);
    }
  }
}
