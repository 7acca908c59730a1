package org.ferryglide.tide.stream;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.Explanation;
import org.ferryglide.tide.height.TideTable;

/**
 * Pilot remarks laid along the tides of their port: slack at every turn, between two turns a stream
 * that is strongest halfway.
 *
 * <p>The greatest rate lies on the line from neap to spring rate as for hourly tables. Where only a
 * spring rate is printed it is taken in proportion to the range (common practice, no source), with
 * a note. A stream longer than twelve hours is a hole in the tides and has no data. The shape
 * between turns is a guess in any case, and the notes say so.
 *
 * <pre>{@code
 * StreamCurve stream = remarks.withShape(FlowShape.FIFTY_NINETY).boundTo(tides);
 * }</pre>
 */
final class PilotStream extends SlackCurve {
  private static final long serialVersionUID = 1L;

  private static final double LONGEST_STREAM_SECONDS = 12.0 * 3600.0;

  private final PilotRemarks remarks;
  private final TideTable tides;
  private final FlowShape shape;
  private final TideRange range;

  private PilotStream(PilotRemarks remarks, TideTable tides, FlowShape shape, TideRange range) {
    super(breaks(remarks, ReferenceTides.of(tides, remarks.standardPort().about(), range), shape));
    this.remarks = remarks;
    this.tides = tides;
    this.shape = shape;
    this.range = range;
  }

  static PilotStream of(PilotRemarks remarks, TideTable tides, FlowShape shape, TideRange range) {
    remarks.standardPort().refuseOther(tides, "pilot remarks on " + remarks.station());
    return new PilotStream(remarks, tides, shape, range);
  }

  private static SlackToMaximum breaks(
      PilotRemarks remarks, ReferenceTides tides, FlowShape shape) {
    List<PilotTurn> turns = remarks.turns();
    SlackToMaximum.Builder builder = new SlackToMaximum.Builder();
    int count = tides.count() * turns.size();
    double[] times = new double[count];
    for (int k = 0; k < count; k++) {
      times[k] =
          tides.time(k / turns.size())
              + turns.get(k % turns.size()).afterWater().toMinutes() * 60.0;
      if (k > 0 && times[k] <= times[k - 1]) {
        throw new IllegalArgumentException(
            "the last turn of one tide must come before the first of the next, but at "
                + remarks.station()
                + " it comes "
                + Math.round((times[k - 1] - times[k]) / 60.0)
                + " minutes after it");
      }
    }
    for (int k = 0; k + 1 < count; k++) {
      int tide = k / turns.size();
      if (times[k + 1] - times[k] <= LONGEST_STREAM_SECONDS
          && !Double.isNaN(tides.rangeMetres(tide))) {
        addStream(
            builder,
            turns.get(k % turns.size()),
            remarks.standardPort(),
            tides.rangeMetres(tide),
            times[k],
            times[k + 1],
            tides.flags(tide));
      }
    }
    return builder.build(shape);
  }

  private static void addStream(
      SlackToMaximum.Builder builder,
      PilotTurn turn,
      StandardPort port,
      double rangeMetres,
      double from,
      double to,
      int tideFlags) {
    double spring = turn.springRate().metresPerSecond();
    boolean printed = turn.neapRate().isPresent();
    double neap =
        printed
            ? turn.neapRate().get().metresPerSecond()
            : spring * port.meanRanges().neap().metres() / port.meanRanges().spring().metres();
    double springFraction = port.meanRanges().springFraction(Distance.ofMetres(rangeMetres));
    double rate = StreamRates.atSpringFraction(neap, spring, springFraction);
    Velocity flow = Velocity.ofSetAndRate(turn.set(), Speed.ofMetresPerSecond(rate));
    int flags =
        tideFlags
            | StreamFlags.ROUGH_RULE
            | StreamFlags.ofSpringFraction(springFraction)
            | (printed ? 0 : StreamFlags.NEAP_ASSUMED);
    if (StreamRates.unfloored(neap, spring, springFraction) < 0.0) {
      flags |= StreamFlags.FLOORED;
    }
    double middle = from + (to - from) / 2.0;
    builder.startAt(from);
    builder.add(middle, flow.eastMetresPerSecond(), flow.northMetresPerSecond(), true, flags);
    builder.add(to, flow.eastMetresPerSecond(), flow.northMetresPerSecond(), false, flags);
  }

  @Override
  public String source() {
    return remarks.station();
  }

  @Override
  public Optional<Position> position() {
    return Optional.of(remarks.position());
  }

  @Override
  public Explanation explain(Instant instant) {
    int flags = breaks.flagsAt(EpochSeconds.of(instant));
    if ((flags & PiecewiseStream.GAP) != 0) {
      return StreamFlags.noData(
          "The tides of "
              + tides.port()
              + " give no turn of the stream on both sides of this time at "
              + remarks.station()
              + ".");
    }
    List<Note> notes = new ArrayList<>(remarks.notes());
    notes.addAll(tides.notes());
    for (Note note : StreamFlags.notes(flags)) {
      notes.add(note.with("station", remarks.station()).with("standardPort", tides.port()));
    }
    return new Explanation(List.of(new Explanation.Source(remarks.station(), 1.0)), notes);
  }

  /** The remarks and how they are used. */
  @Override
  public String toString() {
    return remarks + ", " + shape + ", " + range;
  }
}
