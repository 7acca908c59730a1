package org.ferryglide.benchmarks;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.StreamField;

/** Invented waters in which quickest paths are measured. */
final class QuickestPathWaters {
  private static final Position SHORE = Position.ofDegrees(46.0, -26.0);

  /** Seconds for a radian of the tide. */
  private static final double TIDE = 7115.0;

  private QuickestPathWaters() {}

  /** A leg due north from the shore. */
  static Leg leg(double nauticalMiles) {
    return RhumbLeg.from(SHORE, TrueBearing.ofDegrees(0), Distance.ofNauticalMiles(nauticalMiles));
  }

  /** An eastgoing parabola across the channel, its strength a sine of the tide's rhythm. */
  static StreamField tidalChannel(Leg leg, double peakMetresPerSecond) {
    double south = leg.start().latitudeDegrees();
    double width = leg.end().latitudeDegrees() - south;
    return (latitude, longitude, seconds, out, offset) -> {
      double across = (latitude - south) / width;
      double shape = Math.max(0.0, 4.0 * across * (1.0 - across));
      out[offset] = peakMetresPerSecond * shape * Math.sin(seconds / TIDE);
      out[offset + 1] = 0.0;
      return true;
    };
  }

  /** Streams of up to 2.6 kn that differ over a few miles and turn with the tide. */
  static StreamField tidalWaters(Position origin) {
    return (latitude, longitude, seconds, out, offset) -> {
      double north = 60.0 * (latitude - origin.latitudeDegrees()); // nautical miles
      double east = 41.7 * (longitude - origin.longitudeDegrees());
      double along = Math.sin(seconds / TIDE) * Math.cos(east / 2.7);
      out[offset] = 0.5 * Math.cos(seconds / TIDE + 0.7) * Math.cos(north / 3.2);
      out[offset + 1] = 0.9 * along * (1.0 + 0.4 * Math.sin(north / 2.2));
      return true;
    };
  }

  /** Three jagged islands on the way, of so many corners together. */
  static List<List<Position>> islands(Leg leg, int corners) {
    List<List<Position>> islands = new ArrayList<>();
    double length = leg.length().metres();
    for (int k = 0; k < 3; k++) {
      Position middle =
          GeodesicLeg.from(
                  leg.start(),
                  TrueBearing.ofDegrees(k == 1 ? 356.0 : 4.0),
                  Distance.ofMetres(length * (0.25 + 0.25 * k)))
              .end();
      islands.add(island(middle, 0.09 * length, corners / 3 + (k < corners % 3 ? 1 : 0), k));
    }
    return islands;
  }

  private static List<Position> island(Position middle, double metres, int corners, int number) {
    List<Position> island = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double angle = 2.0 * Math.PI * i / corners;
      double bays = 0.0;
      for (int wave = 2; wave < 40; wave += 3) {
        bays += Math.cos(wave * angle + 1.3 * wave * (number + 1)) / (1.0 + wave);
      }
      double radius = metres * (1.0 + 0.35 * bays);
      island.add(
          GeodesicLeg.from(
                  middle, TrueBearing.ofDegrees(Math.toDegrees(angle)), Distance.ofMetres(radius))
              .end());
    }
    return island;
  }
}
