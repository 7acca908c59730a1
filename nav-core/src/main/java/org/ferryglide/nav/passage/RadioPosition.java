package org.ferryglide.nav.passage;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;

/**
 * Where a party is, in the words that are spoken: a true bearing from a mark to the party and a
 * distance in miles, figure by figure (IMO resolution A.918(22), Standard Marine Communication
 * Phrases: bearings in the 360 degrees notation from true north, those of the position FROM the
 * mark; decimals spoken).
 */
final class RadioPosition {
  private static final String[] FIGURES = {
    "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"
  };

  /** Nearer than this the bearing of a mark tells nothing. */
  private static final long LEAST_TENTHS = 1;

  private RadioPosition() {}

  /** From the nearest mark: a way point or refuge with something to see, or any if none has. */
  static Note from(Passage passage, Position party) {
    List<WayPoint> marks = marks(passage);
    WayPoint nearest = marks.get(0);
    double least = Double.POSITIVE_INFINITY;
    for (WayPoint mark : marks) {
      double here = GeodesicLeg.between(mark.position(), party).length().metres();
      if (here < least) {
        least = here;
        nearest = mark;
      }
    }
    return from(nearest, party);
  }

  static Note from(WayPoint mark, Position party) {
    GeodesicLeg leg = GeodesicLeg.between(mark.position(), party);
    long tenths = Math.round(leg.length().nauticalMiles() * 10.0);
    if (tenths < LEAST_TENTHS) {
      return Note.information("radio.at", "at " + mark.name()).with("mark", mark.name());
    }
    String bearing = leg.initialCourse().threeDigits().substring(0, 3);
    String miles = Long.toString(tenths / 10);
    String tenth = Long.toString(tenths % 10);
    String words =
        spoken(bearing)
            + " degrees true from "
            + mark.name()
            + ", "
            + spoken(miles)
            + " decimal "
            + spoken(tenth)
            + " miles";
    return Note.information("radio.from", words)
        .with("spokenBearing", bearing)
        .with("mark", mark.name())
        .with("spokenMiles", miles)
        .with("spokenTenth", tenth);
  }

  private static List<WayPoint> marks(Passage passage) {
    List<WayPoint> all = new ArrayList<>(passage.wayPoints());
    all.addAll(passage.refuges());
    List<WayPoint> seen = new ArrayList<>();
    for (WayPoint place : all) {
      if (!place.toSee().isEmpty()) {
        seen.add(place);
      }
    }
    return seen.isEmpty() ? all : seen;
  }

  /** Figures one by one; what is no figure is left out. */
  private static String spoken(String figures) {
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < figures.length(); i++) {
      int figure = figures.charAt(i) - '0';
      if (figure >= 0 && figure <= 9) {
        words.append(words.length() == 0 ? "" : " ").append(FIGURES[figure]);
      }
    }
    return words.toString();
  }
}
