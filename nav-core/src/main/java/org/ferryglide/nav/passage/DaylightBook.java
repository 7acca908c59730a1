package org.ferryglide.nav.passage;

import java.io.Serializable;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.sky.SunThreshold;

/**
 * The daylight of the places of a passage and of all that is made from it, each day worked out
 * once. It is a cache only: what it answers does not depend on what was asked before.
 */
final class DaylightBook implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Places beyond these are worked out anew, so that no book grows without end. */
  private static final int MOST_PLACES = 64;

  private final ConcurrentMap<Key, Daylights> places = new ConcurrentHashMap<>();

  private record Key(Position place, SunThreshold light) {}

  /** From sunrise to sunset. */
  Daylights at(Position place) {
    return at(place, SunThreshold.SUNRISE_AND_SUNSET);
  }

  Daylights at(Position place, SunThreshold light) {
    Key key = new Key(place, light);
    Daylights known = places.get(key);
    if (known != null) {
      return known;
    }
    Daylights fresh = new Daylights(place, light);
    if (places.size() < MOST_PLACES) {
      Daylights other = places.putIfAbsent(key, fresh);
      return other == null ? fresh : other;
    }
    return fresh;
  }

  /** Written without what it remembers. */
  private Object writeReplace() {
    return places.isEmpty() ? this : new DaylightBook();
  }
}
