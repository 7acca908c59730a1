package org.ferryglide.nav.steer;

import java.util.List;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Note;
import org.jspecify.annotations.Nullable;

/**
 * What comes of following a craft: the track to the end, or why, where and when it does not get
 * there.
 *
 * @param track the track; null if the end is not reached
 * @param failure why not; null if it is reached
 * @param notes what the reader should know of the track
 */
record Followed(@Nullable GroundTrack track, @Nullable NotPossible failure, List<Note> notes) {

  static Followed reached(GroundTrack track) {
    return new Followed(track, null, List.of());
  }

  static Followed failed(NotPossible failure) {
    return new Followed(null, failure, List.of());
  }

  /** With the speed that is lacking there and then, metres a second; NaN if that is not it. */
  static Followed failed(
      Reason reason, double time, double latitude, double longitude, double shortBy) {
    NotPossible why =
        NotPossible.because(reason)
            .at(Earth.position(latitude, longitude), EpochSeconds.toInstant(time));
    return failed(
        Double.isNaN(shortBy) ? why : why.by(Speed.ofMetresPerSecond(Math.max(0.0, shortBy))));
  }

  boolean isReached() {
    return track != null;
  }

  /** The arrival, seconds since 1970; infinite if the end is not reached. */
  double arrival() {
    return track == null ? Double.POSITIVE_INFINITY : track.endSeconds();
  }

  /** The same with one more thing to know. */
  Followed with(Note note) {
    return new Followed(track, failure, List.of(note));
  }
}
