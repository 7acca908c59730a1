package org.ferryglide.nav.geodesy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;

/** Points that divide a leg. */
final class LegParts {
  /** A remainder below this is rounding of the length, and its point would be the end again. */
  private static final double LEAST_STRETCH_METRES = 1e-6;

  private static final int MOST_PARTS = 1_000_000;

  private LegParts() {}

  /** What the text of a leg or line tells of its ellipsoid: nothing of WGS84. */
  static String named(Ellipsoid ellipsoid) {
    return ellipsoid.equals(Ellipsoid.WGS84) ? "" : ", on " + ellipsoid;
  }

  static List<Position> wayPoints(Leg leg, Distance spacing) {
    double metres = Arguments.positive(spacing.metres(), "spacing", "metres");
    double count = Math.ceil((leg.length().metres() - LEAST_STRETCH_METRES) / metres);
    if (!(count < MOST_PARTS)) {
      throw new IllegalArgumentException(
          "spacing must give at most a million points on " + leg.length() + ", but was " + spacing);
    }
    Line line = leg.line();
    List<Position> points = new ArrayList<>();
    points.add(leg.start());
    for (int i = 1; i < count; i++) {
      points.add(line.pointAt(Distance.ofMetres(i * metres)));
    }
    points.add(leg.end());
    return Collections.unmodifiableList(points);
  }

  static Position pointAtFraction(Leg leg, double fraction) {
    double part = Arguments.within(fraction, 0.0, 1.0, "fraction", "of the leg");
    return leg.pointAt(part == 1.0 ? leg.length() : leg.length().times(part));
  }

  /** Start, the points between, and end: one more than the parts. */
  static List<Position> ends(Leg leg, int parts) {
    if (parts < 1 || parts > MOST_PARTS) {
      throw new IllegalArgumentException(
          "number of parts must be in [1, 1000000], but was " + parts);
    }
    double metres = leg.length().metres();
    Line line = leg.line();
    List<Position> ends = new ArrayList<>(parts + 1);
    ends.add(leg.start());
    for (int i = 1; i < parts; i++) {
      ends.add(line.pointAt(Distance.ofMetres(metres * i / parts)));
    }
    ends.add(leg.end());
    return ends;
  }
}
