package org.ferryglide.nav.steer;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.AngleForm;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.StreamField;

/** The notes of a steered leg. */
final class Notes {
  /** The stream is asked to explain itself at most this many times along a leg. */
  private static final int MOST_QUESTIONS = 13;

  private static final double HOUR = 3600.0;

  /** Passing the end of a leg by less is not worth a note, metres. */
  private static final double PASSED_METRES = 100.0;

  private Notes() {}

  /** The same notes and one more, unless it is among them; most legs have none and make no list. */
  static List<Note> with(List<Note> notes, Note note) {
    if (notes.contains(note)) {
      return notes;
    }
    List<Note> more = notes.isEmpty() ? new ArrayList<>() : notes;
    more.add(note);
    return more;
  }

  /** What is to be said of what the path asks of the craft. */
  static List<Note> ofDemand(PathDemand demand, SteeringLimits limits) {
    List<Note> notes = List.of();
    if (demand.crossShare() > limits.warnAbove()) {
      notes =
          with(
              notes,
              Note.warning(
                      "steer.little-reserve",
                      "The stream across takes "
                          + Math.round(demand.crossShare() * 100.0)
                          + " % of the craft's speed; little is left if it runs harder than"
                          + " foreseen.")
                  .with("crossStreamShare", demand.crossShare()));
    }
    if (demand.streamShare() > 1.0) {
      notes =
          with(
              notes,
              Note.caution(
                      "steer.stream-outruns-craft",
                      "The stream runs at up to "
                          + (long) Math.ceil(demand.streamShare() * 100.0 - 1e-6)
                          + " % of the craft's speed, at "
                          + EpochSeconds.toInstant(demand.streamTime())
                              .truncatedTo(ChronoUnit.SECONDS)
                          + "; it cannot be stemmed there and then.")
                  .with("streamShare", demand.streamShare())
                  .with("atTime", EpochSeconds.toInstant(demand.streamTime()).toString()));
    }
    return notes;
  }

  /** Where a quickest path meets its greatest stream, which is where the sea is worst. */
  static Note greatestStream(GroundTrack track, PathDemand demand, StreamField stream) {
    Instant when = EpochSeconds.toInstant(demand.streamTime());
    Position where = track.positionAt(demand.streamTime());
    Velocity set = stream.at(where, when).orElse(Velocity.STILL);
    return Note.information(
            "steer.greatest-stream",
            "The quickest path meets its greatest stream, "
                + set.rate().inKnots(1)
                + ", at "
                + when.truncatedTo(ChronoUnit.SECONDS)
                + " near "
                + where.text(AngleForm.DEGREES_MINUTES, 1)
                + "; there the sea is likely to be worst.")
        .with("rateMetresPerSecond", set.rate().metresPerSecond())
        .with("atTime", when.toString());
  }

  /** That the path passes the end of the leg and is brought back to it. */
  private static Optional<Note> passedEnd(GroundTrack track, LegFrame frame) {
    double farthest = 0.0;
    for (int point = 0; point <= track.segments(); point++) {
      if (frame.mayBeBeyondEnd(track.latitudeOf(point), track.longitudeOf(point))) {
        double along = frame.along(track.latitudeOf(point), track.longitudeOf(point));
        farthest = Math.max(farthest, along - frame.length);
      }
    }
    if (farthest < PASSED_METRES) {
      return Optional.empty();
    }
    return Optional.of(
        Note.caution(
                "steer.passes-end",
                "The path goes "
                    + Distance.ofMetres(farthest).inNauticalMiles(1)
                    + " beyond the end of the leg and is brought back to it by the stream.")
            .with("beyondMetres", farthest));
  }

  /** That the wind is stronger than the craft's tables of it. */
  private static Optional<Note> windBeyondTable(GroundTrack track, CourseToSteer options) {
    WindResponse response = options.craft().windResponse();
    if (response.isNone()) {
      return Optional.empty();
    }
    for (TrackPoint point : track.points()) {
      Velocity wind = options.wind().at(point.position(), point.time()).orElse(Velocity.STILL);
      Velocity stream = options.stream().at(point.position(), point.time()).orElse(Velocity.STILL);
      Speed overWater = wind.minus(stream).rate();
      if (!response.reaches(overWater.metresPerSecond())) {
        return Optional.of(
            Note.warning(
                    "steer.wind-beyond-table",
                    "A wind of "
                        + overWater.inKnots(0)
                        + " over the water is stronger than the craft's wind table goes; leeway and"
                        + " speed are guesses.")
                .with("windMetresPerSecond", overWater.metresPerSecond()));
      }
    }
    return Optional.empty();
  }

  /** The same notes with what the stream has to say of itself along the path, each once. */
  static List<Note> ofPath(
      List<Note> first, GroundTrack track, LegFrame frame, CourseToSteer options) {
    List<Note> notes = first;
    double start = track.startSeconds();
    double duration = track.endSeconds() - start;
    double step = Math.max(HOUR, duration / (MOST_QUESTIONS - 2));
    for (int i = 0; i * step < duration; i++) {
      notes = ofStream(notes, track, start + i * step, options);
    }
    notes = ofStream(notes, track, track.endSeconds(), options);
    Optional<Note> passed = passedEnd(track, frame);
    if (passed.isPresent()) {
      notes = with(notes, passed.get());
    }
    Optional<Note> beyond = windBeyondTable(track, options);
    return beyond.isPresent() ? with(notes, beyond.get()) : notes;
  }

  private static List<Note> ofStream(
      List<Note> first, GroundTrack track, double time, CourseToSteer options) {
    List<Note> said =
        options.stream().explain(track.positionAt(time), EpochSeconds.toInstant(time)).notes();
    List<Note> notes = first;
    for (int i = 0; i < said.size(); i++) {
      notes = with(notes, said.get(i));
    }
    return notes;
  }
}
