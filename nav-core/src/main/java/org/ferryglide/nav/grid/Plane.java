package org.ferryglide.nav.grid;

import java.io.Serializable;
import java.util.Objects;

/** A projection with its datum and false origin: WGS84 degrees in, metres of the map out. */
final class Plane implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Beyond this {@link #metresFromCentre} the figures are not to be trusted. */
  static final double GREATEST_METRES_FROM_CENTRE = 3.9e6;

  private final Projector projection;
  private final ShiftedFrame frame;
  private final double originLatitude;
  private final double centralMeridian;
  private final double falseEasting;
  private final double falseNorthing;

  /** What to add to the northing of the projection. */
  private final double shiftNorthing;

  Plane(
      Datum datum,
      Projector projection,
      double originLatitude,
      double centralMeridian,
      double falseEasting,
      double falseNorthing) {
    this.projection = projection;
    this.originLatitude = originLatitude;
    this.centralMeridian = centralMeridian;
    this.falseEasting = falseEasting;
    this.falseNorthing = falseNorthing;
    frame = new ShiftedFrame(datum.ellipsoid(), datum.shift(), centralMeridian);
    double[] origin = new double[4];
    double phi = Math.toRadians(originLatitude);
    double cosPhi = TransverseMercator.cosineOfLatitude(originLatitude);
    projection.project(phi, Math.sin(phi), cosPhi, 0.0, 1.0, origin, 0);
    shiftNorthing = falseNorthing - origin[1];
  }

  /** See {@link MapGrid#forward(double, double, double[], int)}. */
  void forward(double latitude, double longitude, double[] out, int offset) {
    double lambda = aroundTheWorld(longitude - centralMeridian);
    frame.project(latitude, lambda, projection, out, offset);
    out[offset] += falseEasting;
    out[offset + 1] += shiftNorthing;
  }

  /** See {@link MapGrid#reverse(double, double, double[], int)}. */
  void reverse(double easting, double northing, double[] out, int offset) {
    projection.unproject(easting - falseEasting, northing - shiftNorthing, frame, out, offset);
    out[offset + 1] = aroundTheWorld(out[offset + 1] + centralMeridian);
  }

  /** How far the figures lie from where the projection is at its best, metres. */
  double metresFromCentre(double easting, double northing) {
    return projection.metresFromCentre(easting - falseEasting, northing - shiftNorthing);
  }

  /** What that is measured from. */
  String centre() {
    return projection.centre();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Plane that
        && originLatitude == that.originLatitude
        && centralMeridian == that.centralMeridian
        && falseEasting == that.falseEasting
        && falseNorthing == that.falseNorthing
        && projection.equals(that.projection);
  }

  @Override
  public int hashCode() {
    return Objects.hash(originLatitude, centralMeridian, falseEasting, falseNorthing);
  }

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
}
