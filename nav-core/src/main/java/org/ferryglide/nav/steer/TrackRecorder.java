package org.ferryglide.nav.steer;

import java.util.Arrays;

/** Collects the pieces of a ground track while a craft is followed. Not thread-safe. */
final class TrackRecorder {
  /** Numbers kept for a piece: its start, the rates at both ends, and the heading at its start. */
  static final int WIDTH = 8;

  private double[] rows = {}; // many a craft is followed for its arrival alone
  private int count;

  void clear() {
    count = 0;
  }

  /** When the last piece starts. */
  double lastTime() {
    return rows[(count - 1) * WIDTH];
  }

  /** The heading of the last piece. */
  double heading() {
    return rows[(count - 1) * WIDTH + 7];
  }

  /** Adds a piece from a time and place, with rates in degrees a second at both its ends. */
  void add(
      double time,
      double latitude,
      double longitude,
      double fromLatitudeRate,
      double fromLongitudeRate,
      double toLatitudeRate,
      double toLongitudeRate,
      double headingDegrees) {
    if ((count + 1) * WIDTH > rows.length) {
      rows = Arrays.copyOf(rows, Math.max(4 * WIDTH, 2 * rows.length));
    }
    int at = count++ * WIDTH;
    rows[at] = time;
    rows[at + 1] = latitude;
    rows[at + 2] = longitude;
    rows[at + 3] = fromLatitudeRate;
    rows[at + 4] = fromLongitudeRate;
    rows[at + 5] = toLatitudeRate;
    rows[at + 6] = toLongitudeRate;
    rows[at + 7] = headingDegrees;
  }

  /** Adds all pieces of another recorder. */
  void append(TrackRecorder other) {
    int length = (count + other.count) * WIDTH;
    if (length > rows.length) {
      rows = Arrays.copyOf(rows, 2 * length);
    }
    System.arraycopy(other.rows, 0, rows, count * WIDTH, other.count * WIDTH);
    count += other.count;
  }

  /** Adds all pieces of a track. */
  void append(GroundTrack track) {
    int length = track.pieces() * WIDTH;
    if (count * WIDTH + length > rows.length) {
      rows = Arrays.copyOf(rows, 2 * (count * WIDTH + length));
    }
    track.copyPieces(rows, count * WIDTH);
    count += track.pieces();
  }

  /** Adds all pieces of a track, its longitudes shifted by whole turns. */
  void append(GroundTrack track, double longitudeShift) {
    int from = count;
    append(track);
    for (int i = from; i < count; i++) {
      rows[i * WIDTH + 2] += longitudeShift;
    }
  }

  /** The track that ends where another does. */
  GroundTrack finishAt(GroundTrack other) {
    int end = other.pieces();
    double[] place = new double[2];
    other.place(other.endSeconds(), place);
    return finish(other.endSeconds(), place[0], place[1], other.headingOf(end));
  }

  /** The track that ends at a time and place on a heading. */
  GroundTrack finish(double time, double latitude, double longitude, double headingDegrees) {
    double[] all = Arrays.copyOf(rows, (count + 1) * WIDTH);
    int at = count * WIDTH;
    all[at] = time;
    all[at + 1] = latitude;
    all[at + 2] = longitude;
    Arrays.fill(all, at + 3, at + 7, 0.0);
    all[at + 7] = headingDegrees;
    return new GroundTrack(all);
  }
}
