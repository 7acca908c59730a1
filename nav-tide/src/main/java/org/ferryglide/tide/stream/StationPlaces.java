package org.ferryglide.tide.stream;

import java.io.Serializable;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.jspecify.annotations.Nullable;

/** Stations, how far they are, and whether land lies between. */
final class StationPlaces implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final double RADIANS = Math.PI / 180.0;

  /** A shore of so few segments is tried whole. */
  private static final int FEW_SEGMENTS = 8;

  private final StreamStation[] stations;
  private final Shoreline shores;

  private final double[] latitudes;
  private final double[] longitudes;

  /** The shores as each station sees them, made when first asked for. */
  private transient volatile ShoreSectors @Nullable [] sectors;

  /** The segments of each station's curve if all change at the same times; empty otherwise. */
  private final PiecewiseStream[] inStep;

  /** Metres in a degree of latitude at each station. */
  private final double[] northScales;

  /** Metres in a degree of longitude at each station. */
  private final double[] eastScales;

  StationPlaces(List<StreamStation> stations, Shoreline shores) {
    if (stations.isEmpty()) {
      throw new IllegalArgumentException("a field between stations must have at least one station");
    }
    Set<Object> seen = new HashSet<>();
    for (StreamStation station : stations) {
      if (!seen.add(station.name())) {
        throw new IllegalArgumentException("stream station " + station.name() + " is given twice");
      }
      if (!seen.add(station.position())) {
        throw new IllegalArgumentException(
            "stream station " + station.name() + " stands at the same place as another");
      }
    }
    this.stations = stations.toArray(new StreamStation[0]);
    this.shores = shores;
    this.inStep = inStep(stations);
    int count = stations.size();
    this.latitudes = new double[count];
    this.longitudes = new double[count];
    this.northScales = new double[count];
    this.eastScales = new double[count];
    for (int i = 0; i < count; i++) {
      latitudes[i] = this.stations[i].position().latitudeDegrees();
      longitudes[i] = this.stations[i].position().longitudeDegrees();
      northScales[i] = RADIANS * Ellipsoid.WGS84.meridianRadiusMetres(latitudes[i]);
      eastScales[i] = eastScale(latitudes[i]);
    }
  }

  /** Hourly streams about one port need only one search for the hour. */
  private static PiecewiseStream[] inStep(List<StreamStation> stations) {
    PiecewiseStream[] segments = new PiecewiseStream[stations.size()];
    for (int i = 0; i < segments.length; i++) {
      if (!(stations.get(i).curve() instanceof HourlyStream hourly)
          || (i > 0 && !hourly.breaks().breaksWith(segments[0]))) {
        return new PiecewiseStream[0];
      }
      segments[i] = i == 0 ? hourly.breaks() : hourly.breaks().onBreaksOf(segments[0]);
    }
    return segments;
  }

  /** What {@link #sample} wants to know of a time once for all stations. */
  int segmentOf(double t) {
    return inStep.length == 0 ? 0 : inStep[0].segmentOf(t);
  }

  /** The stream at a station; {@code segment} from {@link #segmentOf} the same time. */
  boolean sample(int i, int segment, double t, double[] out, int offset) {
    return inStep.length == 0
        ? stations[i].curve().sample(t, out, offset)
        : inStep[i].sampleIn(segment, t, out, offset);
  }

  StationPlaces withShores(Shoreline others) {
    return new StationPlaces(List.of(stations), others);
  }

  int count() {
    return stations.length;
  }

  StreamStation station(int i) {
    return stations[i];
  }

  StreamCurve curve(int i) {
    return stations[i].curve();
  }

  double latitude(int i) {
    return latitudes[i];
  }

  double longitude(int i) {
    return longitudes[i];
  }

  /** Metres in a degree of longitude. */
  static double eastScale(double latitudeDegrees) {
    return RADIANS
        * Ellipsoid.WGS84.parallelRadiusMetresAtSine(Math.sin(latitudeDegrees * RADIANS));
  }

  /**
   * Square of the distance from a station, square metres: on a plane whose degree of longitude is
   * the mean of those at both ends.
   *
   * @param eastScale {@link #eastScale} of the latitude
   */
  double squaredDistance(int i, double latitude, double longitude, double eastScale) {
    double difference = longitude - longitudes[i];
    if (!(Math.abs(difference) <= 180.0)) {
      difference = Angles.shortWay(difference);
    }
    double east = difference * 0.5 * (eastScale + eastScales[i]);
    double north = (latitude - latitudes[i]) * northScales[i];
    return east * east + north * north;
  }

  boolean isCutOff(int i, double latitude, double longitude) {
    if (shores.segmentCount() <= FEW_SEGMENTS) {
      return shores.separates(latitude, longitude, latitudes[i], longitudes[i]);
    }
    return sectors()[i].separates(latitude, longitude, longitudes[i]);
  }

  private ShoreSectors[] sectors() {
    ShoreSectors[] made = sectors;
    if (made == null) {
      made = new ShoreSectors[count()];
      for (int i = 0; i < made.length; i++) {
        made[i] = new ShoreSectors(shores, latitudes[i], longitudes[i]);
      }
      sectors = made;
    }
    return made;
  }
}
