package org.ferryglide.tide.stream;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.tide.height.TideTable;

/**
 * What a pilot book says of the stream at a place: when it turns about high water at a port, where
 * it goes then, and its spring rate.
 *
 * <pre>{@code
 * PilotRemarks remarks =
 *     PilotRemarks.of(
 *         "Tarn Head",
 *         position,
 *         StandardPort.aboutHighWater("Port Ennor", 2.3, 4.9),
 *         List.of(
 *             PilotTurn.begins("-0430", TrueBearing.ofDegrees(180), Speed.ofKnots(2.5)),
 *             PilotTurn.begins("+0145", TrueBearing.ofDegrees(0), Speed.ofKnots(3))));
 * PilotStream stream = remarks.boundTo(tidesAtPortEnnor);
 * }</pre>
 */
public final class PilotRemarks implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String station;
  private final Position position;
  private final StandardPort standardPort;
  private final PilotTurn[] turns;
  private final Note[] notes;

  private PilotRemarks(
      String station,
      Position position,
      StandardPort standardPort,
      PilotTurn[] turns,
      Note[] notes) {
    this.notes = notes;
    this.station = station;
    this.position = position;
    this.standardPort = standardPort;
    this.turns = turns;
  }

  /**
   * Gathers the remarks on one place.
   *
   * @param station what notes shall call the place, not empty
   * @param position where the remarks hold
   * @param standardPort the port they refer to, with its mean ranges
   * @param turns the turns of one tide in any order, at least two, no time twice
   * @return the remarks
   * @throws IllegalArgumentException if the name is empty, there are fewer than two turns, or two
   *     at the same time
   */
  public static PilotRemarks of(
      String station, Position position, StandardPort standardPort, List<PilotTurn> turns) {
    if (station.isEmpty()) {
      throw new IllegalArgumentException("name of the place of pilot remarks must not be empty");
    }
    if (turns.size() < 2) {
      throw new IllegalArgumentException(
          "pilot remarks on " + station + " must have at least 2 turns, but had " + turns.size());
    }
    List<PilotTurn> sorted = new ArrayList<>(turns);
    sorted.sort(Comparator.comparing(PilotTurn::afterWater));
    for (int i = 1; i < sorted.size(); i++) {
      if (sorted.get(i).afterWater().equals(sorted.get(i - 1).afterWater())) {
        throw new IllegalArgumentException(
            "pilot remarks on "
                + station
                + " must not have two turns at "
                + sorted.get(i).afterWater());
      }
    }
    List<Note> notes = new ArrayList<>();
    for (StreamTableDoubts.Doubt doubt : StreamTableDoubts.ofPilot(sorted)) {
      String where =
          station + (doubt.row() < 0 ? "" : ", turn at " + sorted.get(doubt.row()).afterWater());
      notes.add(
          doubt
              .judgement()
              .note(where + ": " + doubt.text() + " Compare the pilot book.")
              .with("station", station));
    }
    return new PilotRemarks(
        station,
        position,
        standardPort,
        sorted.toArray(new PilotTurn[0]),
        notes.toArray(new Note[0]));
  }

  /**
   * Lays the remarks along the tides of their port.
   *
   * @param tides the tide table of {@link #standardPort}
   * @return the stream as a function of time, each tide with its own range, sine between turns
   * @throws IllegalArgumentException if {@code tides} is another port's, or its tides follow each
   *     other so fast that one tide's last turn comes after the next one's first
   */
  public PilotStream boundTo(TideTable tides) {
    return PilotStream.of(this, tides);
  }

  /**
   * What notes call the place.
   *
   * @return the name, not empty
   */
  public String station() {
    return station;
  }

  /**
   * Where the remarks hold.
   *
   * @return the position
   */
  public Position position() {
    return position;
  }

  /**
   * The port the remarks refer to.
   *
   * @return the port with its mean ranges
   */
  public StandardPort standardPort() {
    return standardPort;
  }

  /**
   * The turns of one tide.
   *
   * @return unmodifiable list, earliest first
   */
  public List<PilotTurn> turns() {
    return List.of(turns);
  }

  /**
   * What looks wrong in the remarks: a neap rate above its spring rate, a rate beyond nearly all
   * known, streams that all set the same way. Every stream made of them carries these notes.
   *
   * @return unmodifiable list; each note has its threshold and where that is from
   */
  public List<Note> notes() {
    return List.of(notes);
  }

  /** Place and port. */
  @Override
  public String toString() {
    return "pilot remarks on " + station + " at " + position + " about " + standardPort;
  }
}
