package org.ferryglide.tide.folder;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.position.Position;

/**
 * A position with one of its letters, or both, read the other way.
 *
 * @param position the position so read
 * @param advice what to check
 */
record Turned(Position position, String advice) {

  /** The three other readings of a position's letters, those that differ from it. */
  static List<Turned> of(Position place) {
    double latitude = place.latitudeDegrees();
    double longitude = place.longitudeDegrees();
    String northSouth = latitude >= 0.0 ? "S for N" : "N for S";
    String eastWest = longitude >= 0.0 ? "W for E" : "E for W";
    List<Turned> all = new ArrayList<>();
    if (longitude != 0.0) {
      all.add(
          new Turned(
              Position.ofDegrees(latitude, -longitude),
              "it would fit with " + eastWest + " in its longitude."));
    }
    if (latitude != 0.0) {
      all.add(
          new Turned(
              Position.ofDegrees(-latitude, longitude),
              "it would fit with " + northSouth + " in its latitude."));
      all.add(
          new Turned(
              Position.ofDegrees(-latitude, -longitude),
              "it would fit with " + northSouth + " and " + eastWest + "."));
    }
    return all;
  }
}
