package org.ferryglide.nav.grid;

import java.io.Serializable;

/** A projection between angles on its ellipsoid and its plane, about its central meridian. */
abstract class Projector implements Serializable {
  private static final long serialVersionUID = 1L;

  Projector() {}

  /**
   * To the plane; angles in radians whose sines and cosines are known.
   *
   * @param phi latitude
   * @param sinPhi its sine
   * @param cosPhi its cosine, exactly 0 at a pole
   * @param sinLambda sine of the longitude from the central meridian
   * @param cosLambda cosine of the longitude from the central meridian
   * @param out receives easting, northing, metres, convergence, degrees, and scale
   * @param offset index in {@code out} of the easting
   */
  abstract void project(
      double phi,
      double sinPhi,
      double cosPhi,
      double sinLambda,
      double cosLambda,
      double[] out,
      int offset);

  /**
   * From the plane, then from the datum of the map to WGS84.
   *
   * @param eastingMetres metres east of the central meridian
   * @param northingMetres metres north of where the projection counts from
   * @param frame the datum shift, or {@link ShiftedFrame#NONE}
   * @param out receives latitude and longitude from the central meridian, convergence, degrees, and
   *     scale
   * @param offset index in {@code out} of the latitude
   */
  abstract void unproject(
      double eastingMetres, double northingMetres, ShiftedFrame frame, double[] out, int offset);

  /** How far a point of the plane lies from where the projection is at its best, metres. */
  abstract double metresFromCentre(double eastingMetres, double northingMetres);

  /** What that is measured from. */
  abstract String centre();
}
