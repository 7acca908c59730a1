package org.ferryglide.nav.passage;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.timing.Verdict;

/** Whether the way crosses the shore as drawn, beside its landings. */
final class ShoreCheck extends PassageCheck {
  /** A way point ashore may lie behind the line by so much. Common practice, no source. */
  static final double ENDS_METRES = 50.0;

  private final List<Outline> shores;

  ShoreCheck(Passage passage, List<List<Position>> lines) {
    super(Note.information("check.shore", "shore as drawn"), passage);
    shores = outlines(lines);
  }

  @Override
  Verdict check(Candidate candidate) {
    int first = 0;
    for (int look = 1; look < candidate.size; look++) {
      if (candidate.leg[look] != candidate.leg[look - 1]) {
        first = look;
      } else if (isCrossed(candidate, look, first)) {
        return at(
            Verdict.stopped(
                about(), Note.information("why.crosses-shore", "the way crosses its line")),
            candidate,
            look);
      }
    }
    return Verdict.within(
        about(), Note.information("why.crosses-no-shore", "the way crosses no line of it"));
  }

  /** Whether the straight way of some metres between two places crosses a shore, ends left out. */
  static boolean isBetween(List<Outline> shores, Position from, Position to, double metres) {
    for (Outline shore : shores) {
      double part =
          shore.crossed(
              from.latitudeDegrees(),
              from.longitudeDegrees(),
              to.latitudeDegrees(),
              to.longitudeDegrees(),
              at -> Math.min(at, 1.0 - at) * metres > ENDS_METRES);
      if (!Double.isNaN(part)) {
        return true;
      }
    }
    return false;
  }

  /** Lines of a shore on their planes. */
  static List<Outline> outlines(List<List<Position>> lines) {
    List<Outline> shores = new ArrayList<>();
    for (List<Position> line : lines) {
      shores.add(Outline.line(line, "a shore"));
    }
    return shores;
  }

  private boolean isCrossed(Candidate candidate, int look, int first) {
    int last = candidate.lastLookOf(candidate.leg[look]);
    for (Outline shore : shores) {
      double part =
          shore.crossed(
              candidate.latitude[look - 1],
              candidate.longitude[look - 1],
              candidate.latitude[look],
              candidate.longitude[look],
              at -> isOff(candidate, look, at, first) && isOff(candidate, look, at, last));
      if (!Double.isNaN(part)) {
        return true;
      }
    }
    return false;
  }

  /** Whether a part of the way to a look is far enough from an end of its leg. */
  private static boolean isOff(Candidate candidate, int look, double part, int end) {
    double latitude =
        candidate.latitude[look - 1]
            + part * (candidate.latitude[look] - candidate.latitude[look - 1]);
    double longitude =
        candidate.longitude[look - 1]
            + part * PlaneMetres.turned(candidate.longitude[look] - candidate.longitude[look - 1]);
    double north = (latitude - candidate.latitude[end]) * PlaneMetres.north(latitude);
    double east =
        PlaneMetres.turned(longitude - candidate.longitude[end]) * PlaneMetres.east(latitude);
    return PlaneMetres.length(east, north) > ENDS_METRES;
  }
}
