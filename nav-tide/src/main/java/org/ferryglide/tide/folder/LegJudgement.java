package org.ferryglide.tide.folder;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Severity;
import org.ferryglide.nav.position.AngleForm;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reading.Judgement;

/** Judges way points and legs: what no paddler paddles names the way point that looks wrong. */
final class LegJudgement {
  /** Longer than any leg between landings or marks that a kayak covers in a day. */
  static final Judgement TOO_LONG =
      new Judgement(
          "leg.too-long", Severity.WARNING, 40.0, "nautical miles", "common practice, no source");

  /** So much longer than the middle one of a passage's legs is doubted. */
  static final Judgement LONG_BESIDE_THE_OTHERS =
      new Judgement(
          "leg.long-beside-others", Severity.CAUTION, 6.0, "times", "common practice, no source");

  /** Nearer than this two way points look like one. */
  static final Judgement SHORT =
      new Judgement("leg.short", Severity.CAUTION, 50.0, "metres", "common practice, no source");

  /** Legs up to this are never doubted beside the others: common practice, no source. */
  private static final Distance SHORT_ENOUGH = Distance.ofNauticalMiles(10.0);

  private static final double LONGEST_METRES =
      Distance.ofNauticalMiles(TOO_LONG.threshold()).metres();

  private final List<PassageFolder.WayPoint> wayPoints;
  private final List<Position> stations;
  private final double[] lengths;

  /** Legs between way points; the stations of the stream tables show where the passage is. */
  LegJudgement(List<PassageFolder.WayPoint> wayPoints, List<Position> stations) {
    this.wayPoints = wayPoints;
    this.stations = stations;
    this.lengths = new double[wayPoints.size() - 1];
    for (int i = 0; i < lengths.length; i++) {
      lengths[i] = metres(position(i), position(i + 1));
    }
  }

  /** What looks wrong, each with the number of its leg and, if one is to blame, its way point. */
  List<Note> notes() {
    List<Note> notes = new ArrayList<>();
    double[] sorted = lengths.clone();
    Arrays.sort(sorted);
    double middle = sorted[(sorted.length - 1) / 2];
    for (int i = 0; i < lengths.length; i++) {
      if (lengths[i] > LONGEST_METRES) {
        notes.add(tooLong(i));
      } else if (lengths[i] > SHORT_ENOUGH.metres()
          && lengths[i] > LONG_BESIDE_THE_OTHERS.threshold() * middle) {
        notes.add(longBesideTheOthers(i, middle));
      } else if (lengths[i] < SHORT.threshold()) {
        notes.add(
            named(
                    SHORT.note(
                        leg(i)
                            + " is only "
                            + Math.rint(lengths[i] * 10.0) / 10.0
                            + " m long: are both ends right?",
                        lengths[i]),
                    i)
                .with("lengthMetres", lengths[i]));
      }
    }
    return notes;
  }

  private Note tooLong(int i) {
    String text =
        leg(i) + " is " + miles(lengths[i]) + " long, farther than a kayak goes in a day. ";
    Optional<Suspect> suspect = suspect(i);
    Note check =
        suspect
            .map(Suspect::check)
            .orElseGet(
                () ->
                    Note.information(
                        "leg.check-both",
                        "Check the positions of " + name(i) + " and " + name(i + 1) + "."));
    Note note =
        named(TOO_LONG.note(text + check.text(), Distance.ofMetres(lengths[i]).nauticalMiles()), i)
            .with("lengthMetres", Math.rint(lengths[i]))
            .with("check", check);
    return suspect
        .map(one -> note.with("wayPoint", Integer.toString(one.wayPoint + 1)))
        .orElse(note);
  }

  private Note longBesideTheOthers(int i, double middle) {
    int wayPoint = endToCheck(i, middle);
    String text =
        leg(i)
            + " is "
            + miles(lengths[i])
            + " long where the passage's legs are mostly about "
            + miles(middle)
            + ": check the position of "
            + name(wayPoint)
            + ".";
    return named(LONG_BESIDE_THE_OTHERS.note(text), i)
        .with("wayPoint", Integer.toString(wayPoint + 1))
        .with("wayPointName", name(wayPoint))
        .with("lengthMetres", Math.rint(lengths[i]))
        .with("middleMetres", Math.rint(middle));
  }

  private Note named(Note note, int i) {
    return note.with("leg", Integer.toString(i + 1))
        .with("fromName", name(i))
        .with("toName", name(i + 1));
  }

  /** Both legs of a misplaced way point are long; at an end of the passage it has only one. */
  private int endToCheck(int i, double middle) {
    boolean nextIsLong =
        i + 1 < lengths.length && lengths[i + 1] > LONG_BESIDE_THE_OTHERS.threshold() * middle;
    boolean isLast = i + 1 == lengths.length;
    boolean lastIsLong = i > 0 && lengths[i - 1] > LONG_BESIDE_THE_OTHERS.threshold() * middle;
    return nextIsLong || (isLast && !lastIsLong) ? i + 1 : i;
  }

  /** A way point that would fit with a letter changed, and what to do about it. */
  private record Suspect(int wayPoint, Note check) {}

  /**
   * The end of a leg that lies well beside its neighbours, and nearest to the stream stations, once
   * the letters of its latitude or longitude are changed.
   */
  private Optional<Suspect> suspect(int leg) {
    double least = Double.POSITIVE_INFINITY;
    Suspect best = null;
    for (int wayPoint = leg; wayPoint <= leg + 1; wayPoint++) {
      for (Turned turned : Turned.of(position(wayPoint))) {
        double longest = 0.0;
        double sum = 0.0;
        for (int other = wayPoint - 1; other <= wayPoint + 1; other += 2) {
          if (other >= 0 && other < wayPoints.size()) {
            double length = metres(turned.position(), position(other));
            longest = Math.max(longest, length);
            sum += length;
          }
        }
        sum += nearestStation(turned.position());
        if (longest <= LONGEST_METRES && sum < least) {
          least = sum;
          best = new Suspect(wayPoint, looksWrong(wayPoint, turned));
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private Note looksWrong(int wayPoint, Turned turned) {
    String position = position(wayPoint).text(AngleForm.DEGREES_MINUTES, 1);
    return Note.information(
            "leg.check-letters",
            "Way point "
                + name(wayPoint)
                + ", "
                + position
                + ", looks wrong: "
                + turned.advice().text())
        .with("wayPointName", name(wayPoint))
        .with("position", position)
        .with("turned", turned.advice());
  }

  private double nearestStation(Position place) {
    double nearest = Double.POSITIVE_INFINITY;
    for (Position station : stations) {
      nearest = Math.min(nearest, metres(place, station));
    }
    return stations.isEmpty() ? 0.0 : nearest;
  }

  private Position position(int wayPoint) {
    return wayPoints.get(wayPoint).position();
  }

  private String name(int wayPoint) {
    return wayPoints.get(wayPoint).name();
  }

  private String leg(int i) {
    return "Leg " + (i + 1) + ", " + name(i) + " to " + name(i + 1) + ",";
  }

  private static double metres(Position one, Position other) {
    return GeodesicLeg.between(one, other).length().metres();
  }

  private static String miles(double metres) {
    return Distance.ofMetres(metres).inNauticalMiles(1);
  }
}
