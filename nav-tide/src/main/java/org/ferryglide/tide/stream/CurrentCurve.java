package org.ferryglide.tide.stream;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.water.Explanation;

/**
 * The current between the slacks and maxima of a table, or of a rule of thumb about two slacks and
 * one maximum.
 *
 * <p>Between slack and maximum the direction is the maximum's and the rate follows a {@link
 * FlowShape}, from slack to maximum and from maximum to slack each over its own time, so that
 * unequal halves are no trouble. Before the first and after the last line of a table there are no
 * data, nor between two lines more than nine hours apart, where lines seem to be missing.
 *
 * <pre>{@code
 * CurrentCurve flood =
 *     CurrentCurve.ofRule(
 *         FlowShape.FIFTY_NINETY, slackBefore, strongest, slackAfter, set, Speed.ofKnots(1.9));
 * }</pre>
 */
final class CurrentCurve extends SlackCurve {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final FlowShape shape;
  private final Note[] doubts;

  private CurrentCurve(
      String name, CurrentEvent[] events, FlowShape shape, boolean rule, Note[] doubts) {
    super(breaks(events, shape, rule));
    this.doubts = doubts;
    this.name = name;
    this.shape = shape;
  }

  private static SlackToMaximum breaks(CurrentEvent[] events, FlowShape shape, boolean rule) {
    SlackToMaximum.Builder builder = new SlackToMaximum.Builder();
    builder.startAt(EpochSeconds.of(events[0].time()));
    int rough = rule || shape != FlowShape.SINE ? StreamFlags.ROUGH_RULE : 0;
    for (int i = 1; i < events.length; i++) {
      if (!rule && CurrentTable.isHole(events[i - 1], events[i])) {
        builder.startAt(EpochSeconds.of(events[i].time()));
        continue;
      }
      boolean fromSlack = events[i - 1].kind() == CurrentEvent.Kind.SLACK;
      CurrentEvent maximum = events[fromSlack ? i : i - 1];
      Velocity flow = Velocity.ofSetAndRate(maximum.set(), maximum.rate());
      builder.add(
          EpochSeconds.of(events[i].time()),
          flow.eastMetresPerSecond(),
          flow.northMetresPerSecond(),
          fromSlack,
          rough | StreamFlags.BETWEEN_SLACKS);
    }
    return builder.build(shape);
  }

  static CurrentCurve of(CurrentTable table, FlowShape shape) {
    return new CurrentCurve(
        table.station(),
        table.events().toArray(new CurrentEvent[0]),
        shape,
        false,
        table.notes().toArray(new Note[0]));
  }

  /** A rule of thumb about two slacks and the maximum between them. */
  static CurrentCurve ofRule(
      FlowShape shape,
      Instant slackBefore,
      Instant strongest,
      Instant slackAfter,
      TrueBearing set,
      Speed maximum) {
    if (!slackBefore.isBefore(strongest) || !strongest.isBefore(slackAfter)) {
      throw new IllegalArgumentException(
          "times of slack, maximum and slack must be in order, but were "
              + slackBefore
              + ", "
              + strongest
              + ", "
              + slackAfter);
    }
    CurrentEvent[] events = {
      CurrentEvent.slack(slackBefore),
      CurrentEvent.flood(strongest, set, maximum),
      CurrentEvent.slack(slackAfter)
    };
    return new CurrentCurve("rule of thumb", events, shape, true, new Note[0]);
  }

  @Override
  public String source() {
    return name;
  }

  @Override
  public Explanation explain(Instant instant) {
    int flags = breaks.flagsAt(EpochSeconds.of(instant));
    if ((flags & PiecewiseStream.GAP) != 0) {
      return StreamFlags.noData("The current of " + name + " is not known at this time.");
    }
    List<Note> notes = new ArrayList<>(List.of(doubts));
    for (Note note : StreamFlags.notes(flags)) {
      notes.add(note.with("station", name));
    }
    return new Explanation(List.of(new Explanation.Source(name, 1.0)), notes);
  }

  /** The name and the shape. */
  @Override
  public String toString() {
    return name + ", " + shape;
  }
}
