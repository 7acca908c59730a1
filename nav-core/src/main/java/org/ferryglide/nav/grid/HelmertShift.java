package org.ferryglide.nav.grid;

import java.io.Serializable;
import java.util.Arrays;
import org.ferryglide.nav.basics.Arguments;

/**
 * A shift between WGS84 and another datum by seven parameters: the earth's centre moved, the axes
 * turned a little, the scale stretched a little.
 *
 * <pre>{@code
 * HelmertShift shift =
 *     HelmertShift.fromWgs84(-446.448, 125.157, -542.060, -0.1502, -0.2470, -0.8421, 20.4894);
 * double[] xyz = new double[3];
 * shift.fromWgs84(3790644.900, -110149.210, 5111482.970, xyz, 0);
 * }</pre>
 *
 * <p>Rotations follow the position-vector convention (EPSG method 9606, and the common "towgs84"
 * list): a positive one turns the point, not the axes, anticlockwise as seen from the end of the
 * axis. Parameters published in the coordinate-frame convention (EPSG 9607) have the other sign.
 * The way back is the true inverse of the matrix, so that there and back close to a nanometre;
 * reversing the signs of the parameters instead, as is often done, leaves a millimetre.
 *
 * <p>A shift of seven parameters cannot follow the distortions of an old survey; how good it is
 * belongs to the {@link Datum}.
 *
 * @see <a href="https://www.iogp.org/bookstore/product/epsg-geodetic-parameter-dataset/">IOGP
 *     Guidance Note 7-2, section 4.3.3, position vector transformation</a>
 */
public final class HelmertShift implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Where the shifts write metres along the axis to longitude 0, after the offset. */
  public static final int X = 0;

  /** Where the shifts write metres along the axis to longitude 90° E, after the offset. */
  public static final int Y = 1;

  /** Where the shifts write metres along the axis to the north pole, after the offset. */
  public static final int Z = 2;

  /** No shift at all. */
  public static final HelmertShift NONE = fromWgs84(0, 0, 0, 0, 0, 0, 0);

  private static final double RADIANS_PER_ARC_SECOND = Math.PI / (180.0 * 3600.0);

  /** As published: three shifts, three rotations, scale. */
  private final double[] published;

  private final boolean publishedFromWgs84;

  /** Row by row, from WGS84 to the datum. */
  private final double[] matrix;

  private final double[] translation;

  /** Row by row, from the datum to WGS84. */
  private final double[] inverse;

  private HelmertShift(double[] published, boolean publishedFromWgs84) {
    this.published = published;
    this.publishedFromWgs84 = publishedFromWgs84;
    double[] there = matrix(published);
    double[] back = inverse(there);
    double[] shift = {published[0], published[1], published[2]};
    if (publishedFromWgs84) {
      matrix = there;
      inverse = back;
      translation = shift;
    } else {
      matrix = back;
      inverse = there;
      translation = new double[3];
      for (int i = 0; i < 3; i++) {
        translation[i] =
            -(back[3 * i] * shift[0] + back[3 * i + 1] * shift[1] + back[3 * i + 2] * shift[2]);
      }
    }
  }

  /**
   * Takes parameters published for the way from WGS84 to the datum.
   *
   * @param xMetres shift along the axis to longitude 0, metres
   * @param yMetres shift along the axis to longitude 90° E, metres
   * @param zMetres shift along the axis to the north pole, metres
   * @param xArcSeconds rotation about the first axis, seconds of arc, position-vector convention
   * @param yArcSeconds rotation about the second axis, seconds of arc
   * @param zArcSeconds rotation about the third axis, seconds of arc
   * @param partsPerMillion stretch, parts per million
   * @return the shift
   * @throws IllegalArgumentException if a parameter is NaN or infinite, or so large (1000 km, 3600
   *     seconds of arc, 1 %) that it cannot be meant
   */
  public static HelmertShift fromWgs84(
      double xMetres,
      double yMetres,
      double zMetres,
      double xArcSeconds,
      double yArcSeconds,
      double zArcSeconds,
      double partsPerMillion) {
    return of(
        true, xMetres, yMetres, zMetres, xArcSeconds, yArcSeconds, zArcSeconds, partsPerMillion);
  }

  /**
   * Takes parameters published for the way from the datum to WGS84.
   *
   * @param xMetres shift along the axis to longitude 0, metres
   * @param yMetres shift along the axis to longitude 90° E, metres
   * @param zMetres shift along the axis to the north pole, metres
   * @param xArcSeconds rotation about the first axis, seconds of arc, position-vector convention
   * @param yArcSeconds rotation about the second axis, seconds of arc
   * @param zArcSeconds rotation about the third axis, seconds of arc
   * @param partsPerMillion stretch, parts per million
   * @return the shift
   * @throws IllegalArgumentException if a parameter is NaN or infinite, or so large (1000 km, 3600
   *     seconds of arc, 1 %) that it cannot be meant
   */
  public static HelmertShift toWgs84(
      double xMetres,
      double yMetres,
      double zMetres,
      double xArcSeconds,
      double yArcSeconds,
      double zArcSeconds,
      double partsPerMillion) {
    return of(
        false, xMetres, yMetres, zMetres, xArcSeconds, yArcSeconds, zArcSeconds, partsPerMillion);
  }

  private static HelmertShift of(
      boolean fromWgs84, double x, double y, double z, double rx, double ry, double rz, double m) {
    double[] published = {
      Arguments.within(x, -1e6, 1e6, "shift", "metres"),
      Arguments.within(y, -1e6, 1e6, "shift", "metres"),
      Arguments.within(z, -1e6, 1e6, "shift", "metres"),
      Arguments.within(rx, -3600.0, 3600.0, "rotation", "seconds of arc"),
      Arguments.within(ry, -3600.0, 3600.0, "rotation", "seconds of arc"),
      Arguments.within(rz, -3600.0, 3600.0, "rotation", "seconds of arc"),
      Arguments.within(m, -1e4, 1e4, "stretch", "parts per million")
    };
    return new HelmertShift(published, fromWgs84);
  }

  private static double[] matrix(double[] p) {
    double m = 1.0 + p[6] * 1e-6;
    double rx = p[3] * RADIANS_PER_ARC_SECOND * m;
    double ry = p[4] * RADIANS_PER_ARC_SECOND * m;
    double rz = p[5] * RADIANS_PER_ARC_SECOND * m;
    return new double[] {m, -rz, ry, rz, m, -rx, -ry, rx, m};
  }

  /** By cofactors; the matrix is all but the unit matrix, so nothing is lost. */
  private static double[] inverse(double[] m) {
    double[] inverse = new double[9];
    for (int row = 0; row < 3; row++) {
      for (int column = 0; column < 3; column++) {
        int r1 = (column + 1) % 3;
        int r2 = (column + 2) % 3;
        int c1 = (row + 1) % 3;
        int c2 = (row + 2) % 3;
        inverse[3 * row + column] =
            m[3 * r1 + c1] * m[3 * r2 + c2] - m[3 * r1 + c2] * m[3 * r2 + c1];
      }
    }
    double determinant = m[0] * inverse[0] + m[1] * inverse[3] + m[2] * inverse[6];
    for (int i = 0; i < 9; i++) {
      inverse[i] /= determinant;
    }
    return inverse;
  }

  /**
   * Whether the two datums are one.
   *
   * @return true if all seven parameters are zero
   */
  public boolean isNone() {
    for (double parameter : published) {
      if (parameter != 0.0) {
        return false;
      }
    }
    return true;
  }

  /**
   * From WGS84 to the datum, earth-centred coordinates.
   *
   * @param x metres along the axis to longitude 0; NaN gives NaN
   * @param y metres along the axis to longitude 90° E
   * @param z metres along the axis to the north pole
   * @param out receives metres at {@link #X}, {@link #Y} and {@link #Z} after the offset
   * @param offset index in {@code out} of x
   */
  public void fromWgs84(double x, double y, double z, double[] out, int offset) {
    for (int i = 0; i < 3; i++) {
      out[offset + i] =
          matrix[3 * i] * x + matrix[3 * i + 1] * y + matrix[3 * i + 2] * z + translation[i];
    }
  }

  /**
   * From the datum to WGS84, earth-centred coordinates: undoes {@link #fromWgs84(double, double,
   * double, double[], int)}.
   *
   * @param x metres along the axis to longitude 0; NaN gives NaN
   * @param y metres along the axis to longitude 90° E
   * @param z metres along the axis to the north pole
   * @param out receives metres at {@link #X}, {@link #Y} and {@link #Z} after the offset
   * @param offset index in {@code out} of x
   */
  public void toWgs84(double x, double y, double z, double[] out, int offset) {
    double dx = x - translation[X];
    double dy = y - translation[Y];
    double dz = z - translation[Z];
    for (int i = 0; i < 3; i++) {
      out[offset + i] = inverse[3 * i] * dx + inverse[3 * i + 1] * dy + inverse[3 * i + 2] * dz;
    }
  }

  /** The matrix from WGS84, row by row, for axes turned so that the first points at a meridian. */
  double[] matrixAbout(double longitudeDegrees) {
    return turned(matrix, longitudeDegrees);
  }

  /** The matrix to WGS84, row by row, for axes turned so that the first points at a meridian. */
  double[] inverseAbout(double longitudeDegrees) {
    return turned(inverse, longitudeDegrees);
  }

  /** The shift of the centre, for axes turned so that the first points at a meridian. */
  double[] translationAbout(double longitudeDegrees) {
    double sin = Math.sin(Math.toRadians(longitudeDegrees));
    double cos = Math.cos(Math.toRadians(longitudeDegrees));
    return new double[] {
      translation[0] * cos + translation[1] * sin,
      translation[1] * cos - translation[0] * sin,
      translation[2]
    };
  }

  private static double[] turned(double[] m, double longitudeDegrees) {
    double sin = Math.sin(Math.toRadians(longitudeDegrees));
    double cos = Math.cos(Math.toRadians(longitudeDegrees));
    double[] turn = {cos, sin, 0.0, -sin, cos, 0.0, 0.0, 0.0, 1.0};
    double[] turnBack = {cos, -sin, 0.0, sin, cos, 0.0, 0.0, 0.0, 1.0};
    return product(product(turn, m), turnBack);
  }

  private static double[] product(double[] a, double[] b) {
    double[] product = new double[9];
    for (int row = 0; row < 3; row++) {
      for (int column = 0; column < 3; column++) {
        for (int k = 0; k < 3; k++) {
          product[3 * row + column] += a[3 * row + k] * b[3 * k + column];
        }
      }
    }
    return product;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof HelmertShift that
        && publishedFromWgs84 == that.publishedFromWgs84
        && Arrays.equals(published, that.published);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(published);
  }

  /** The parameters as published, with their direction. */
  @Override
  public String toString() {
    return (publishedFromWgs84 ? "from WGS84 " : "to WGS84 ") + Arrays.toString(published);
  }
}
