package org.ferryglide.tide.folder;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.tide.stream.StreamTable;

/** Judges where the stations of stream tables lie beside the legs that use them. */
final class StationJudgement {
  private final List<PassageFolder.WayPoint> wayPoints;
  private final List<StreamTable> streams;
  private final Distance reach;

  /** Legs that look wrong themselves, so that no station can be blamed for them. */
  private final Set<String> doubtedLegs;

  StationJudgement(
      List<PassageFolder.WayPoint> wayPoints,
      List<StreamTable> streams,
      Distance reach,
      Set<String> doubtedLegs) {
    this.wayPoints = wayPoints;
    this.streams = streams;
    this.reach = reach;
    this.doubtedLegs = doubtedLegs;
  }

  /** Stations that serve no leg, then legs that no station serves well. */
  List<Note> notes() {
    List<Note> notes = new ArrayList<>();
    for (StreamTable stream : streams) {
      Position place = stream.position();
      double nearest = toNearestLeg(place);
      if (nearest > reach.metres()) {
        Note advice = advice(place);
        notes.add(
            Note.warning(
                    "station.unused",
                    "Station "
                        + stream.station()
                        + " lies "
                        + miles(nearest)
                        + " from the nearest leg, beyond the reach of "
                        + reach.inNauticalMiles(1)
                        + ", and is not used. "
                        + advice.text())
                .with("station", stream.station())
                .with("distanceMetres", Math.rint(nearest))
                .with("reachNauticalMiles", reach.nauticalMiles())
                .with("advice", advice));
      }
    }
    for (int i = 0; i + 1 < wayPoints.size(); i++) {
      RhumbLeg leg = RhumbLeg.between(wayPoints.get(i).position(), wayPoints.get(i + 1).position());
      if (!doubtedLegs.contains(Integer.toString(i + 1))) {
        judge(i + 1, leg.pointAt(leg.length().times(0.5)), notes);
      }
    }
    return notes;
  }

  private void judge(int leg, Position middle, List<Note> notes) {
    StreamTable nearest = streams.get(0);
    for (StreamTable stream : streams) {
      if (metres(middle, stream.position()) < metres(middle, nearest.position())) {
        nearest = stream;
      }
    }
    double distance = metres(middle, nearest.position());
    String text =
        "The nearest stream station to the middle of leg "
            + leg
            + ", "
            + nearest.station()
            + ", lies "
            + miles(distance)
            + " away, ";
    if (distance > reach.metres()) {
      notes.add(
          note(
              Note.warning(
                  "station.beyond-reach",
                  text
                      + "beyond its reach of "
                      + reach.inNauticalMiles(1)
                      + ": the stream there is not known."),
              leg,
              nearest,
              distance));
    } else if (distance > 0.5 * reach.metres()) {
      notes.add(
          note(
              Note.caution(
                  "station.far",
                  text + "more than half its reach: the stream there may be another."),
              leg,
              nearest,
              distance));
    }
  }

  private Note note(Note bare, int leg, StreamTable station, double distance) {
    return bare.with("leg", Integer.toString(leg))
        .with("reachNauticalMiles", reach.nauticalMiles())
        .with("station", station.station())
        .with("distanceMetres", Math.rint(distance));
  }

  /** What to check in a position that is far from every leg. */
  private Note advice(Position place) {
    for (Turned turned : Turned.of(place)) {
      if (toNearestLeg(turned.position()) <= reach.metres()) {
        return Note.information(
                "station.check-letters", "Check its position: " + turned.advice().text())
            .with("turned", turned.advice());
      }
    }
    return Note.information("station.leave-out", "Check its position, or leave it out.");
  }

  private double toNearestLeg(Position place) {
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i + 1 < wayPoints.size(); i++) {
      RhumbLeg leg = RhumbLeg.between(wayPoints.get(i).position(), wayPoints.get(i + 1).position());
      nearest = Math.min(nearest, metres(place, leg.closestTo(place).position()));
    }
    return nearest;
  }

  private static double metres(Position one, Position other) {
    return GeodesicLeg.between(one, other).length().metres();
  }

  private static String miles(double metres) {
    return Distance.ofMetres(metres).inNauticalMiles(1);
  }
}
