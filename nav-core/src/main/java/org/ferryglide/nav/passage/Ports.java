package org.ferryglide.nav.passage;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** The ports whose levels the parts of a passage ask for. */
final class Ports {
  private Ports() {}

  static Set<String> askedFor(
      List<WayPoint> wayPoints, List<WayPoint> refuges, @Nullable List<Danger> dangers) {
    Set<String> ports = new TreeSet<>();
    wayPoints.forEach(place -> add(ports, place));
    refuges.forEach(place -> add(ports, place));
    if (dangers != null) {
      for (Danger danger : dangers) {
        for (Closing closing : danger.closings()) {
          closing.port().ifPresent(ports::add);
        }
      }
    }
    return ports;
  }

  private static void add(Set<String> ports, WayPoint place) {
    place.landing().flatMap(Landing::port).ifPresent(ports::add);
    place.markPort().ifPresent(ports::add);
    place.aimedOffFor().flatMap(WayPoint::markPort).ifPresent(ports::add);
    place.stop().flatMap(Stop::port).ifPresent(ports::add);
  }
}
