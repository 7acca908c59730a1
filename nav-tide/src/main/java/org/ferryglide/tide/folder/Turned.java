package org.ferryglide.tide.folder;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;

/**
 * A position with one of its letters, or both, read the other way.
 *
 * @param position the position so read
 * @param advice what to check
 */
record Turned(Position position, Note advice) {

  /** The three other readings of a position's letters, those that differ from it. */
  static List<Turned> of(Position place) {
    double latitude = place.latitudeDegrees();
    double longitude = place.longitudeDegrees();
    String north = latitude >= 0.0 ? "N" : "S";
    String south = latitude >= 0.0 ? "S" : "N";
    String east = longitude >= 0.0 ? "E" : "W";
    String west = longitude >= 0.0 ? "W" : "E";
    List<Turned> all = new ArrayList<>();
    if (longitude != 0.0) {
      all.add(
          new Turned(
              Position.ofDegrees(latitude, -longitude),
              advice("turned.longitude", west + " for " + east + " in its longitude.")
                  .with("west", west)
                  .with("east", east)));
    }
    if (latitude != 0.0) {
      all.add(
          new Turned(
              Position.ofDegrees(-latitude, longitude),
              advice("turned.latitude", south + " for " + north + " in its latitude.")
                  .with("south", south)
                  .with("north", north)));
      all.add(
          new Turned(
              Position.ofDegrees(-latitude, -longitude),
              advice("turned.both", south + " for " + north + " and " + west + " for " + east + ".")
                  .with("south", south)
                  .with("north", north)
                  .with("west", west)
                  .with("east", east)));
    }
    return all;
  }

  private static Note advice(String code, String letters) {
    return Note.information(code, "it would fit with " + letters);
  }
}
