package org.ferryglide.nav.passage;

import java.util.List;
import org.ferryglide.nav.position.Position;

/**
 * Legs with the track held, by vectors at one second on a sphere of one minute a nautical mile, in
 * a stream that runs north at a rate by time alone. Shares no code with the solver.
 */
final class SlowWay {
  private static final double METRES_PER_DEGREE = 60.0 * 1852.0;

  /** The rate of the stream to the north, metres a second; NaN where it is not known. */
  interface North {
    double at(double seconds);
  }

  private SlowWay() {}

  /** Arrival at the last place, seconds; NaN if some part cannot be held. */
  static double arrival(List<Position> places, double speed, North stream, double departure) {
    double time = departure;
    for (int i = 1; i < places.size(); i++) {
      time = leg(places.get(i - 1), places.get(i), speed, stream, time);
    }
    return time;
  }

  private static double leg(
      Position from, Position to, double speed, North stream, double departure) {
    double middle = Math.toRadians(0.5 * (from.latitudeDegrees() + to.latitudeDegrees()));
    double north = (to.latitudeDegrees() - from.latitudeDegrees()) * METRES_PER_DEGREE;
    double east =
        (to.longitudeDegrees() - from.longitudeDegrees()) * METRES_PER_DEGREE * Math.cos(middle);
    double length = Math.hypot(east, north);
    double made = 0.0;
    double time = departure;
    while (made < length) {
      double rate = stream.at(time + 0.5);
      double along = rate * north / length;
      double across = rate * east / length;
      double over = along + Math.sqrt(speed * speed - across * across);
      if (!(over > 0.0) || time - departure > 86400.0) {
        return Double.NaN;
      }
      made += over;
      time += 1.0;
    }
    return time;
  }
}
