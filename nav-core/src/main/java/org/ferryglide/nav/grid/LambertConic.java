package org.ferryglide.nav.grid;

import java.io.Serializable;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.geodesy.Ellipsoid;

/**
 * The conformal conic projection of Lambert: a cone that cuts the ellipsoid along two parallels or
 * touches it along one, on which countries that stretch east and west draw their maps.
 *
 * <pre>{@code
 * LambertConic projection = LambertConic.of(Ellipsoid.GRS80, 49.0, 44.0);
 * double[] out = new double[4]; // easting, northing, convergence, scale
 * projection.forward(48.5, -8.0, out, 0);
 * projection.reverse(out[0], out[1], out, 0); // latitude, longitude, convergence, scale
 * }</pre>
 *
 * <p>At the pole that is the apex of the cone scale is infinite.
 *
 * <p>Eastings count from the central meridian, northings from the apex of the cone, negative in
 * front of a northern one; {@link MapGrid} adds the false origin. Longitudes are taken from the
 * central meridian. Convergence is longitude times the sine of the cone.
 *
 * <p>Accuracy: 10 nanometres there and back within 3000 km of the parallels, and within the
 * micrometre that PROJ 9.1.1 prints. (Parallels two degrees apart fix the cone to some 5e-15, which
 * far from the origin is 40 nanometres.) NaN in gives NaN out. Nothing is allocated. Immutable; two
 * of the same ellipsoid, parallels and scale are equal.
 *
 * @see <a href="https://doi.org/10.3133/pp1395">Snyder (1987), USGS PP 1395, eqs. 15-1 to 15-11,
 *     with the conformal latitude by series</a>
 */
final class LambertConic implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Cone cone;

  private LambertConic(Cone cone) {
    this.cone = cone;
  }

  /**
   * Prepares a cone that cuts the ellipsoid along two parallels, where its scale is 1.
   *
   * @param ellipsoid the figure of the earth
   * @param firstParallelDegrees latitude of one, degrees, in [-89, 89]
   * @param secondParallelDegrees latitude of the other, degrees, in [-89, 89]; the same for a cone
   *     that touches
   * @return the projection
   * @throws IllegalArgumentException if a latitude is NaN or out of range, or their mean lies
   *     within 1° of the equator
   */
  public static LambertConic of(
      Ellipsoid ellipsoid, double firstParallelDegrees, double secondParallelDegrees) {
    return checked(ellipsoid, firstParallelDegrees, secondParallelDegrees, 1.0);
  }

  /**
   * Prepares a cone about one parallel, with a scale on it.
   *
   * @param ellipsoid the figure of the earth
   * @param parallelDegrees latitude of the parallel, degrees, at least 1 from the equator, in [-89,
   *     89]
   * @param scale scale along it, above 0
   * @return the projection
   * @throws IllegalArgumentException if a value is NaN or out of range
   */
  public static LambertConic withScale(Ellipsoid ellipsoid, double parallelDegrees, double scale) {
    return checked(
        ellipsoid,
        parallelDegrees,
        parallelDegrees,
        Arguments.positive(scale, "scale on the parallel", "metres on the map a metre"));
  }

  private static LambertConic checked(
      Ellipsoid ellipsoid, double parallel1, double parallel2, double scale) {
    Arguments.within(parallel1, -89.0, 89.0, "latitude of a parallel", "degrees");
    Arguments.within(parallel2, -89.0, 89.0, "latitude of a parallel", "degrees");
    // a flatter cone is all but a cylinder, and its apex is lost in the distance
    if (Math.abs(parallel1 + parallel2) < 2.0) {
      throw new IllegalArgumentException(
          "the mean of the parallels must be at least 1 degree from the equator, but they were "
              + parallel1
              + " and "
              + parallel2);
    }
    return new LambertConic(Cone.ofParallels(ellipsoid, parallel1, parallel2, scale));
  }

  Cone cone() {
    return cone;
  }

  /**
   * From latitude and longitude to the plane.
   *
   * @param latitudeDegrees geographic latitude, degrees, in [-90, 90]; beyond gives NaN
   * @param eastOfCentralMeridianDegrees longitude less that of the central meridian, degrees, in
   *     [-180, 180]
   * @param out receives easting and northing, metres, convergence, degrees, positive when grid
   *     north lies east of true north, and scale, metres on the plane a metre on the ground
   * @param offset index in {@code out} of the easting
   */
  public void forward(
      double latitudeDegrees, double eastOfCentralMeridianDegrees, double[] out, int offset) {
    cone.plot(latitudeDegrees, eastOfCentralMeridianDegrees, out, offset);
  }

  /**
   * From the plane to latitude and longitude.
   *
   * @param eastingMetres metres east of the central meridian
   * @param northingMetres metres north of the apex, negative in front of a northern cone
   * @param out receives latitude and longitude from the central meridian, degrees, convergence,
   *     degrees, and scale
   * @param offset index in {@code out} of the latitude
   */
  public void reverse(double eastingMetres, double northingMetres, double[] out, int offset) {
    cone.unproject(eastingMetres, northingMetres, ShiftedFrame.NONE, out, offset);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof LambertConic that && cone.equals(that.cone);
  }

  @Override
  public int hashCode() {
    return cone.hashCode();
  }

  /** The sine of the cone, negative in the south. */
  @Override
  public String toString() {
    return cone.toString();
  }
}
