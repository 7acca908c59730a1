package org.ferryglide.nav.steer;

import java.util.Arrays;

/** Collects the segments of a ground track while a craft is followed. Not thread-safe. */
final class TrackRecorder {
  /**
   * Numbers kept for a segment: its start, the rates at both ends, and the heading at its start.
   */
  static final int WIDTH = 8;

  private static final double[] NONE = {};

  private double[] rows = NONE; // many a craft is followed for its arrival alone
  private int count;

  /** Segments of the last track and its end, for which room is made at once. */
  private int usual = 4;

  void clear() {
    count = 0;
  }

  /** Makes room for so many segments at once. */
  void ensureRoom(int segments) {
    if (segments * WIDTH > rows.length) {
      rows = Arrays.copyOf(rows, segments * WIDTH);
    }
  }

  /** When the last segment starts. */
  double lastTime() {
    return rows[(count - 1) * WIDTH];
  }

  /** The heading of the last segment. */
  double heading() {
    return rows[(count - 1) * WIDTH + 7];
  }

  /** Adds a segment from a time and place, with rates in degrees a second at both its ends. */
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
      ensureRoom(count == 0 ? usual : 2 * count);
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

  /** Makes room for so many segments more, and for as many again where there is none. */
  private void makeRoomFor(int more) {
    if ((count + more) * WIDTH > rows.length) {
      ensureRoom(2 * (count + more));
    }
  }

  /** Adds all segments of another recorder. */
  void append(TrackRecorder other) {
    makeRoomFor(other.count);
    System.arraycopy(other.rows, 0, rows, count * WIDTH, other.count * WIDTH);
    count += other.count;
  }

  /** Adds all segments of a track. */
  void append(GroundTrack track) {
    makeRoomFor(track.segments());
    track.copySegments(rows, count * WIDTH);
    count += track.segments();
  }

  /** Adds all segments of a track, its longitudes shifted by whole turns. */
  void append(GroundTrack track, double longitudeShift) {
    int from = count;
    append(track);
    for (int i = from; i < count; i++) {
      rows[i * WIDTH + 2] += longitudeShift;
    }
  }

  /** The track that ends where another does. */
  GroundTrack finishAt(GroundTrack other) {
    int end = other.segments();
    double[] place = new double[2];
    other.place(other.endSeconds(), place);
    return finish(other.endSeconds(), place[0], place[1], other.headingOf(end));
  }

  /** The track that ends at a time and place on a heading; the recorder is empty after it. */
  GroundTrack finish(double time, double latitude, double longitude, double headingDegrees) {
    int length = (count + 1) * WIDTH;
    double[] all = rows;
    if (rows.length >= length && rows.length <= length + WIDTH) {
      rows = NONE; // now the track's, with room for one segment to spare at most
    } else {
      all = Arrays.copyOf(rows, length);
    }
    end(all, time, latitude, longitude, headingDegrees);
    int segments = count;
    usual = count + 1;
    count = 0;
    return new GroundTrack(all, segments);
  }

  /** The same track in the recorder's own array: it stands until the recorder is used again. */
  GroundTrack passing(double time, double latitude, double longitude, double headingDegrees) {
    ensureRoom(count + 1);
    end(rows, time, latitude, longitude, headingDegrees);
    return new GroundTrack(rows, count);
  }

  private void end(
      double[] all, double time, double latitude, double longitude, double headingDegrees) {
    int at = count * WIDTH;
    all[at] = time;
    all[at + 1] = latitude;
    all[at + 2] = longitude;
    Arrays.fill(all, at + 3, at + 7, 0.0);
    all[at + 7] = headingDegrees;
  }
}
