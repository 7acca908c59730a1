package org.ferryglide.tide.height;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.basics.EpochSeconds;

/** High and low waters in order of time, and where among them a time falls. */
final class WatersInOrder implements Serializable {
  private static final long serialVersionUID = 1L;

  /** A little more than a lunar day; no tide turns as seldom as that. */
  private static final Duration LONGEST_INTERVAL = Duration.ofHours(25);

  private final TideEvent[] events;

  /** Times and heights again, as the kernels take them. */
  private final double[] seconds;

  private final double[] heights;

  private WatersInOrder(TideEvent[] events) {
    this.events = events;
    this.seconds = new double[events.length];
    this.heights = new double[events.length];
    for (int i = 0; i < events.length; i++) {
      seconds[i] = EpochSeconds.of(events[i].time());
      heights[i] = events[i].height().metres();
    }
  }

  /** Refuses what {@link TideTable#of} refuses of waters. */
  static WatersInOrder of(List<TideEvent> events) {
    if (events.size() < 2) {
      throw new IllegalArgumentException(
          "a tide table must have at least 2 waters, but had " + events.size());
    }
    TideEvent[] copy = events.toArray(new TideEvent[0]);
    for (int i = 1; i < copy.length; i++) {
      Optional<WaterFault> fault =
          WaterFault.between(copy[i - 1], copy[i], LONGEST_INTERVAL, ZoneOffset.UTC);
      if (fault.isPresent()) {
        throw new IllegalArgumentException("water " + (i + 1) + ": " + fault.get().text());
      }
    }
    return new WatersInOrder(copy);
  }

  int count() {
    return events.length;
  }

  List<TideEvent> events() {
    return Collections.unmodifiableList(Arrays.asList(events)); // never written to
  }

  TideEvent event(int index) {
    return events[index];
  }

  /** The water at an index; empty where there is none. */
  Optional<TideEvent> at(int index) {
    return index >= 0 && index < events.length ? Optional.of(events[index]) : Optional.empty();
  }

  List<TideEvent> ofKind(TideEvent.Kind kind) {
    List<TideEvent> found = new ArrayList<>();
    for (TideEvent event : events) {
      if (event.kind() == kind) {
        found.add(event);
      }
    }
    return List.copyOf(found);
  }

  /** Index of the first water strictly later, the number of waters if there is none. */
  int indexAfter(Instant instant) {
    int low = 0;
    int high = events.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (events[middle].time().isAfter(instant)) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  /** Which interval holds a time: -1 for a time outside the waters or NaN. */
  int segmentAt(double epochSeconds) {
    int last = seconds.length - 1;
    if (!(epochSeconds >= seconds[0] && epochSeconds <= seconds[last])) { // NaN fails
      return -1;
    }
    int found = Arrays.binarySearch(seconds, epochSeconds);
    return found >= 0 ? Math.min(found, last - 1) : -found - 2;
  }

  /** Time of a water, seconds since 1970. */
  double seconds(int index) {
    return seconds[index];
  }

  /** Height of a water, metres. */
  double height(int index) {
    return heights[index];
  }

  /** Rise before a high water, metres; before the first one its fall. */
  double rise(int i) {
    return heights[i] - heights[i > 0 ? i - 1 : i + 1];
  }

  /** Fall after a high water, metres; after the last one its rise. */
  double fall(int i) {
    return heights[i] - heights[i < heights.length - 1 ? i + 1 : i - 1];
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof WatersInOrder that && Arrays.equals(events, that.events);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(events);
  }
}
