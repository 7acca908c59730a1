package org.ferryglide.tide.stream;

import java.io.Serializable;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.tide.height.TideTable;
import org.ferryglide.tide.sheet.TideJudgements;

/**
 * What a pilot book says of the stream at a place: when it turns about high water at a port, where
 * it goes then, and its spring rate.
 *
 * <pre>{@code
 * PilotRemarks remarks =
 *     PilotRemarks.of(
 *         "Tarn Head",
 *         position,
 *         StandardPort.aboutHighWater(
 *             "Port Ennor", new MeanRanges(Distance.ofMetres(4.9), Distance.ofMetres(2.3))),
 *         List.of(
 *             PilotTurn.begins("-0430", TrueBearing.ofDegrees(180), Speed.ofKnots(2.5)),
 *             PilotTurn.begins("+0145", TrueBearing.ofDegrees(0), Speed.ofKnots(3))));
 * StreamCurve stream = remarks.boundTo(tidesAtPortEnnor);
 * }</pre>
 */
public final class PilotRemarks implements Serializable {
  private static final Note COMPARE =
      Note.information("doubt.compare-pilot", "Compare the pilot book.");

  private static final long serialVersionUID = 1L;

  private final String station;
  private final Position position;
  private final StandardPort standardPort;
  private final PilotTurn[] turns;
  private final Note[] notes;
  private final FlowShape shape;
  private final TideRange range;

  private PilotRemarks(
      String station,
      Position position,
      StandardPort standardPort,
      PilotTurn[] turns,
      Note[] notes,
      FlowShape shape,
      TideRange range) {
    this.shape = shape;
    this.range = range;
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
      Note place =
          doubt.row() < 0
              ? StreamTableDoubts.place(station, null)
              : StreamTableDoubts.place(
                  station, "turn at", sorted.get(doubt.row()).afterWater().toString(), null);
      notes.add(TideJudgements.note(doubt.judgement(), place, doubt.what(), COMPARE));
    }
    return new PilotRemarks(
        station,
        position,
        standardPort,
        sorted.toArray(new PilotTurn[0]),
        notes.toArray(new Note[0]),
        FlowShape.SINE,
        TideRange.ofEachTide());
  }

  /**
   * The same remarks with another shape between turns; sine by default.
   *
   * @param newShape the shape
   * @return a changed copy
   */
  public PilotRemarks withShape(FlowShape newShape) {
    return new PilotRemarks(station, position, standardPort, turns, notes, newShape, range);
  }

  /**
   * The same stream with one range for all tides of a day, the mean of the ranges of those whose
   * high (or low) water falls on it, as hand work does it. By default each tide has its own range,
   * the mean of the rise before and the fall after its high water (for tables about low water, of
   * the fall before and the rise after it); where one of the two is less than half the other, as at
   * a double high water, the larger is taken, since the mean would make the stream too weak, and
   * the note {@code stream.unequal-range} says so.
   *
   * @param zone the zone whose midnight divides the days
   * @return a changed copy
   */
  public PilotRemarks withRangeOfTheDay(ZoneId zone) {
    return withRange(TideRange.ofTheDay(zone));
  }

  /**
   * The same stream with one range for all tides.
   *
   * @param range the range at the standard port, at least 0
   * @return a changed copy
   * @throws IllegalArgumentException if the range is negative
   */
  public PilotRemarks withRange(Distance range) {
    return withRange(TideRange.of(range));
  }

  private PilotRemarks withRange(TideRange choice) {
    return new PilotRemarks(station, position, standardPort, turns, notes, shape, choice);
  }

  /**
   * Lays the remarks along the tides of their port.
   *
   * @param tides the tide table of {@link #standardPort}
   * @return the stream as a function of time, for {@link StreamStation#of} with {@link #station}
   *     and {@link #position}
   * @throws IllegalArgumentException if {@code tides} is another port's, or its tides follow each
   *     other so fast that one tide's last turn comes after the next one's first
   */
  public StreamCurve boundTo(TideTable tides) {
    return PilotStream.of(this, tides, shape, range);
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

  @Override
  public boolean equals(Object other) {
    return other instanceof PilotRemarks that
        && station.equals(that.station)
        && position.equals(that.position)
        && standardPort.equals(that.standardPort)
        && Arrays.equals(turns, that.turns)
        && Arrays.equals(notes, that.notes)
        && shape.equals(that.shape)
        && range.equals(that.range);
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        station,
        position,
        standardPort,
        Arrays.hashCode(turns),
        Arrays.hashCode(notes),
        shape,
        range);
  }

  /** Place and port. */
  @Override
  public String toString() {
    return "pilot remarks on " + station + " at " + position + " about " + standardPort;
  }
}
