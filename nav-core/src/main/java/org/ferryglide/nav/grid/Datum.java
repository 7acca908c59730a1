package org.ferryglide.nav.grid;

import java.io.Serializable;
import java.util.List;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.note.Arguments;
import org.ferryglide.nav.note.Note;

/**
 * What a map's latitudes and longitudes are measured on: an ellipsoid, how it lies to WGS84, and
 * how well that is known.
 *
 * <pre>{@code
 * Datum old =
 *     Datum.of(
 *         "Old survey",
 *         Ellipsoid.AIRY_1830,
 *         HelmertShift.fromWgs84(-446.448, 125.157, -542.060, -0.1502, -0.2470, -0.8421, 20.4894),
 *         5.0);
 * old.notes(); // shifted by seven parameters only: good to about 5 m
 * }</pre>
 */
public final class Datum implements Serializable {
  private static final long serialVersionUID = 1L;

  /** The datum of satellite receivers and of every {@link org.ferryglide.nav.position.Position}. */
  public static final Datum WGS84 = of("WGS84", Ellipsoid.WGS84, HelmertShift.NONE, 0.0);

  /**
   * The European datum of 1989, taken as WGS84. Europe drifts by 2.5 cm a year against the world's
   * frame, so the two differ by about a metre by now.
   */
  public static final Datum ETRS89 = of("ETRS89", Ellipsoid.GRS80, HelmertShift.NONE, 1.0);

  /**
   * The datum of the British National Grid, by the seven parameters of the Ordnance Survey (A guide
   * to coordinate systems in Great Britain), whose stated error is up to 3.5 m at 95 %.
   */
  public static final Datum OSGB36 =
      of(
          "OSGB36",
          Ellipsoid.AIRY_1830,
          HelmertShift.fromWgs84(-446.448, 125.157, -542.060, -0.1502, -0.2470, -0.8421, 20.4894),
          5.0);

  /** The datum of the Irish Grid, by the seven parameters of EPSG transformation 1641. */
  public static final Datum TM75 =
      of(
          "TM75",
          Ellipsoid.AIRY_MODIFIED_1849,
          HelmertShift.toWgs84(482.5, -130.6, 564.6, -1.042, -0.214, -0.631, 8.15),
          5.0);

  private final String name;
  private final Ellipsoid ellipsoid;
  private final HelmertShift shift;
  private final double accuracyMetres;

  private Datum(String name, Ellipsoid ellipsoid, HelmertShift shift, double accuracyMetres) {
    this.name = name;
    this.ellipsoid = ellipsoid;
    this.shift = shift;
    this.accuracyMetres = accuracyMetres;
  }

  /**
   * Describes a datum.
   *
   * @param name what the map calls it, not empty
   * @param ellipsoid the figure of the earth it uses
   * @param shift how it lies to WGS84
   * @param accuracyMetres how good positions are after the shift, metres, at least 0; 0 if the
   *     datum is WGS84 itself
   * @return the datum
   * @throws IllegalArgumentException if the name is empty or the accuracy is NaN, infinite or
   *     negative
   */
  public static Datum of(
      String name, Ellipsoid ellipsoid, HelmertShift shift, double accuracyMetres) {
    if (name.isEmpty()) {
      throw new IllegalArgumentException("name of a datum must not be empty");
    }
    return new Datum(
        name, ellipsoid, shift, Arguments.notNegative(accuracyMetres, "accuracy", "metres"));
  }

  /**
   * What the map calls it.
   *
   * @return the name
   */
  public String name() {
    return name;
  }

  /**
   * The figure of the earth it uses.
   *
   * @return the ellipsoid
   */
  public Ellipsoid ellipsoid() {
    return ellipsoid;
  }

  /**
   * How it lies to WGS84.
   *
   * @return the shift
   */
  public HelmertShift shift() {
    return shift;
  }

  /**
   * How good positions are after the shift.
   *
   * @return metres, 0 for WGS84 itself
   */
  public double accuracyMetres() {
    return accuracyMetres;
  }

  /**
   * What a reader of positions on this datum should be told.
   *
   * @return {@code grid.helmert-only} if positions are shifted, {@code grid.taken-as-wgs84} if they
   *     are not though the datum is another; empty for WGS84
   */
  public List<Note> notes() {
    if (!shift.isNone()) {
      return List.of(
          Note.caution(
                  "grid.helmert-only",
                  "Shifted between WGS84 and "
                      + name
                      + " by seven parameters only: good to about "
                      + plain(accuracyMetres)
                      + " m. Surveyors use the national grid-shift file.")
              .with("accuracyMetres", accuracyMetres));
    }
    if (accuracyMetres > 0.0) {
      return List.of(
          Note.information(
                  "grid.taken-as-wgs84",
                  name + " is taken as WGS84; they agree to about " + plain(accuracyMetres) + " m.")
              .with("accuracyMetres", accuracyMetres));
    }
    return List.of();
  }

  private static String plain(double metres) {
    return metres == Math.rint(metres) ? Long.toString((long) metres) : Double.toString(metres);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Datum that
        && name.equals(that.name)
        && ellipsoid.equals(that.ellipsoid)
        && shift.equals(that.shift)
        && accuracyMetres == that.accuracyMetres;
  }

  @Override
  public int hashCode() {
    return name.hashCode() + 31 * shift.hashCode();
  }

  /** The name. */
  @Override
  public String toString() {
    return name;
  }
}
