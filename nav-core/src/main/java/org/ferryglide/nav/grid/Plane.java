package org.ferryglide.nav.grid;

import java.io.Serializable;
import java.util.Objects;

/** A projection with its datum and false origin: WGS84 degrees in, metres of the map out. */
sealed interface Plane extends Serializable {

  /** See {@link MapGrid#forward(double, double, double[], int)}. */
  void forward(double latitudeDegrees, double longitudeDegrees, double[] out, int offset);

  /** See {@link MapGrid#reverse(double, double, double[], int)}. */
  void reverse(double eastingMetres, double northingMetres, double[] out, int offset);

  /** How far the figures lie from where the projection is at its best, metres. */
  double metresFromCentre(double eastingMetres, double northingMetres);

  /** What that is measured from, and the greatest distance at which the figures are good. */
  String centre();

  /** Beyond this {@link #metresFromCentre} the figures are not to be trusted. */
  double greatestMetresFromCentre();

  /** A longitude, or a difference of two, brought into [-180, 180). */
  static double aroundTheWorld(double degrees) {
    if (degrees >= 180.0) {
      return degrees < 540.0 ? degrees - 360.0 : far(degrees);
    }
    if (degrees < -180.0) {
      return degrees >= -540.0 ? degrees + 360.0 : far(degrees);
    }
    return degrees;
  }

  private static double far(double degrees) {
    double reduced = Math.IEEEremainder(degrees, 360.0);
    return reduced == 180.0 ? -180.0 : reduced;
  }

  /** Along a meridian. */
  final class Meridian implements Plane {
    private static final long serialVersionUID = 1L;

    private final TransverseMercator projection;
    private final ShiftedFrame frame;
    private final double originLatitude;
    private final double centralMeridian;
    private final double centralScale;
    private final double falseEasting;
    private final double falseNorthing;

    /** Northing of the equator on the central meridian. */
    private final double equatorNorthing;

    Meridian(
        Datum datum,
        TransverseMercator projection,
        double originLatitude,
        double centralMeridian,
        double centralScale,
        double falseEasting,
        double falseNorthing) {
      this.projection = projection;
      this.originLatitude = originLatitude;
      this.centralMeridian = centralMeridian;
      this.centralScale = centralScale;
      this.falseEasting = falseEasting;
      this.falseNorthing = falseNorthing;
      frame = new ShiftedFrame(datum.ellipsoid(), datum.shift(), centralMeridian);
      double[] origin = new double[4];
      projection.forward(originLatitude, 0.0, origin, 0);
      equatorNorthing = falseNorthing - origin[1];
    }

    @Override
    public void forward(double latitude, double longitude, double[] out, int offset) {
      double lambda = aroundTheWorld(longitude - centralMeridian);
      if (frame.isNone()) {
        projection.forward(latitude, lambda, out, offset);
      } else {
        frame.project(latitude, lambda, projection, out, offset);
      }
      out[offset] += falseEasting;
      out[offset + 1] += equatorNorthing;
    }

    @Override
    public void reverse(double easting, double northing, double[] out, int offset) {
      projection.unproject(easting - falseEasting, northing - equatorNorthing, frame, out, offset);
      out[offset + 1] = aroundTheWorld(out[offset + 1] + centralMeridian);
    }

    @Override
    public double metresFromCentre(double easting, double northing) {
      double fromMeridian = Math.abs(easting - falseEasting) / centralScale;
      double beyondPole = Math.abs(northing - equatorNorthing) / centralScale - 10.1e6;
      return Math.max(fromMeridian, beyondPole);
    }

    @Override
    public String centre() {
      return "3900 km of the central meridian";
    }

    @Override
    public double greatestMetresFromCentre() {
      return 3.9e6;
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Meridian that
          && originLatitude == that.originLatitude
          && centralMeridian == that.centralMeridian
          && centralScale == that.centralScale
          && falseEasting == that.falseEasting
          && falseNorthing == that.falseNorthing;
    }

    @Override
    public int hashCode() {
      return Objects.hash(originLatitude, centralMeridian, falseEasting, falseNorthing);
    }
  }

  /** About a pole, on WGS84, with the pole at 2000 km east and north. */
  final class Pole implements Plane {
    private static final long serialVersionUID = 1L;
    private static final double FALSE_ORIGIN = 2e6;

    private final PolarStereographic projection;
    private final boolean north;

    Pole(PolarStereographic projection, boolean north) {
      this.projection = projection;
      this.north = north;
    }

    @Override
    public void forward(double latitude, double longitude, double[] out, int offset) {
      projection.forward(latitude, aroundTheWorld(longitude), out, offset);
      out[offset] += FALSE_ORIGIN;
      out[offset + 1] += FALSE_ORIGIN;
    }

    @Override
    public void reverse(double easting, double northing, double[] out, int offset) {
      projection.reverse(easting - FALSE_ORIGIN, northing - FALSE_ORIGIN, out, offset);
      out[offset + 1] = aroundTheWorld(out[offset + 1]);
    }

    @Override
    public double metresFromCentre(double easting, double northing) {
      return Math.hypot(easting - FALSE_ORIGIN, northing - FALSE_ORIGIN);
    }

    @Override
    public String centre() {
      return "3900 km of the pole";
    }

    @Override
    public double greatestMetresFromCentre() {
      return 3.9e6;
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Pole that && north == that.north;
    }

    @Override
    public int hashCode() {
      return Boolean.hashCode(north);
    }
  }
}
