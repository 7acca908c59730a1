package org.ferryglide.nav.steer;

import org.ferryglide.nav.basics.Top;

/** Where a track is farthest off the line of a leg, the first of several that are equal. */
final class FarthestOff {
  /** How finely a segment is searched for its greatest distance off a line. */
  private static final int PARTS = 8;

  private FarthestOff() {}

  /** Seconds since 1970 of the greatest cross-track distance. */
  static double time(GroundTrack track, LegFrame frame) {
    double[] place = new double[2];
    track.placeAt(0, 0.0, place);
    double bestTime = track.startSeconds();
    double best = frame.crossTrackMetres(place[0], place[1]);
    double bestStep = 0.0;
    for (int segment = 0; segment < track.segments(); segment++) {
      double from = track.timeOf(segment);
      double step = (track.timeOf(segment + 1) - from) / PARTS;
      for (int i = 1; i <= PARTS; i++) {
        double time = from + i * step;
        track.place(time, place);
        double off = frame.crossTrackMetres(place[0], place[1]);
        if (Math.abs(off) > Math.abs(best)) {
          best = off;
          bestTime = time;
          bestStep = step;
        }
      }
    }
    double sign = Math.signum(best);
    double top =
        Top.of(
            time -> {
              track.place(time, place);
              return sign * frame.crossTrackMetres(place[0], place[1]);
            },
            Math.max(track.startSeconds(), bestTime - bestStep),
            Math.min(track.endSeconds(), bestTime + bestStep),
            1.0);
    track.place(top, place);
    double refined = frame.crossTrackMetres(place[0], place[1]);
    return Math.abs(refined) > Math.abs(best) ? top : bestTime;
  }
}
