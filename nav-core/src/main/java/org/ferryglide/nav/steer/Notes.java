package org.ferryglide.nav.steer;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.water.FlowExplanation;

/** The notes of a steered leg. */
final class Notes {
  /** The stream is asked to explain itself at most this many times along a leg. */
  private static final int MOST_QUESTIONS = 13;

  private static final double HOUR = 3600.0;

  private Notes() {}

  /** What is to be said of the share of speed spent across. */
  static List<Note> ofShare(double share, SteeringLimits limits) {
    if (!(share > limits.warnAbove())) {
      return List.of();
    }
    long percent = Math.round(share * 100.0);
    return List.of(
        Note.warning(
                "steer.little-reserve",
                "The stream across takes "
                    + percent
                    + " % of the craft's speed; little is left if it runs harder than foreseen.")
            .with("crossStreamShare", share));
  }

  /** The same leg with what the stream has to say of itself along it. */
  static SteeredLeg added(SteeredLeg steered, CourseToSteer options) {
    Set<Note> notes = new LinkedHashSet<>(steered.notes());
    double duration = steered.groundTrack().endSeconds() - steered.groundTrack().startSeconds();
    double step = Math.max(HOUR, duration / (MOST_QUESTIONS - 2));
    for (TrackPoint point : steered.groundTrack().pointsEvery(step)) {
      FlowExplanation explanation = options.stream().explain(point.position(), point.time());
      notes.addAll(explanation.notes());
    }
    return steered.withNotes(Collections.unmodifiableList(new ArrayList<>(notes)));
  }
}
