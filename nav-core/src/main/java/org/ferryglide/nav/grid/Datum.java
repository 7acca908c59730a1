package org.ferryglide.nav.grid;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;

/**
 * What a map's latitudes and longitudes are measured on: an ellipsoid, its shift from WGS84, and
 * how well that is known.
 *
 * <pre>{@code
 * Datum old =
 *     Datum.of(
 *         "Old survey",
 *         Ellipsoid.AIRY_1830,
 *         HelmertShift.fromWgs84(-446.448, 125.157, -542.060, -0.1502, -0.2470, -0.8421, 20.4894),
 *         Distance.ofMetres(5.0));
 * old.notes(); // shifted by seven parameters only: good to about 5 m
 * }</pre>
 */
public final class Datum implements Serializable {
  private static final long serialVersionUID = 1L;

  /** The datum of satellite receivers and of every {@link org.ferryglide.nav.position.Position}. */
  public static final Datum WGS84 = of("WGS84", Ellipsoid.WGS84, HelmertShift.NONE, 0.0);

  /**
   * The European datum of 1989, taken as WGS84. Europe drifts by 2.5 cm a year in the global frame,
   * so the two differ by about a metre by now.
   */
  public static final Datum ETRS89 = of("ETRS89", Ellipsoid.GRS80, HelmertShift.NONE, 1.0);

  /**
   * The datum of the British National Grid, by the seven parameters of the Ordnance Survey (A guide
   * to coordinate systems in Great Britain), whose stated error is up to 3.5 m at 95 %; used within
   * the area of EPSG 4277.
   */
  public static final Datum OSGB36 =
      of(
              "OSGB36",
              Ellipsoid.AIRY_1830,
              HelmertShift.fromWgs84(
                  -446.448, 125.157, -542.060, -0.1502, -0.2470, -0.8421, 20.4894),
              5.0)
          .within(Position.ofDegrees(49.75, -9.01), Position.ofDegrees(61.01, 2.01));

  /**
   * The datum of the Irish Grid, by the seven parameters of EPSG transformation 1641; used within
   * the area of EPSG 4300.
   */
  public static final Datum TM75 =
      of(
              "TM75",
              Ellipsoid.AIRY_MODIFIED_1849,
              HelmertShift.toWgs84(482.5, -130.6, 564.6, -1.042, -0.214, -0.631, 8.15),
              5.0)
          .within(Position.ofDegrees(51.39, -10.56), Position.ofDegrees(55.43, -5.34));

  private final String name;
  private final Ellipsoid ellipsoid;
  private final HelmertShift shift;
  private final double accuracyMetres;
  private final Position southWest;
  private final double northDegrees;

  /** How far the area reaches east of its corner, degrees, 360 for the whole earth. */
  private final double widthDegrees;

  private Datum(
      String name,
      Ellipsoid ellipsoid,
      HelmertShift shift,
      double accuracyMetres,
      Position southWest,
      double northDegrees,
      double widthDegrees) {
    this.name = name;
    this.ellipsoid = ellipsoid;
    this.shift = shift;
    this.accuracyMetres = accuracyMetres;
    this.southWest = southWest;
    this.northDegrees = northDegrees;
    this.widthDegrees = widthDegrees;
  }

  /**
   * Describes a datum.
   *
   * @param name what the map calls it, not empty
   * @param ellipsoid the figure of the earth it uses
   * @param shift the way between WGS84 and this datum
   * @param accuracy how good positions are after the shift, at least 0; 0 if the datum is WGS84
   *     itself
   * @return the datum
   * @throws IllegalArgumentException if the name is empty or the accuracy is negative
   */
  public static Datum of(String name, Ellipsoid ellipsoid, HelmertShift shift, Distance accuracy) {
    return of(name, ellipsoid, shift, accuracy.metres());
  }

  private static Datum of(
      String name, Ellipsoid ellipsoid, HelmertShift shift, double accuracyMetres) {
    if (name.isEmpty()) {
      throw new IllegalArgumentException("name of a datum must not be empty");
    }
    return new Datum(
        name,
        ellipsoid,
        shift,
        Arguments.notNegative(accuracyMetres, "accuracy", "metres"),
        Position.ofDegrees(-90.0, -180.0),
        90.0,
        360.0);
  }

  /**
   * The same datum with the area for which its shift was fitted; it is the whole earth unless
   * given.
   *
   * @param southWestCorner corner of least latitude and, going east, of first longitude
   * @param northEastCorner corner of greatest latitude and of last longitude
   * @return a changed copy
   * @throws IllegalArgumentException if the first corner lies north of the other
   */
  public Datum within(Position southWestCorner, Position northEastCorner) {
    if (southWestCorner.latitudeDegrees() > northEastCorner.latitudeDegrees()) {
      throw new IllegalArgumentException(
          "the south-west corner must not lie north of the other, but they were "
              + southWestCorner
              + " and "
              + northEastCorner);
    }
    return new Datum(
        name,
        ellipsoid,
        shift,
        accuracyMetres,
        southWestCorner,
        northEastCorner.latitudeDegrees(),
        eastOf(southWestCorner, northEastCorner));
  }

  /**
   * Whether a place lies in the area for which the shift was fitted.
   *
   * @param position where
   * @return whether positions there are as good as {@link #accuracy} says
   */
  public boolean covers(Position position) {
    double latitude = position.latitudeDegrees();
    return latitude >= southWest.latitudeDegrees()
        && latitude <= northDegrees
        && eastOf(southWest, position) <= widthDegrees;
  }

  /** How far one longitude lies east of another, degrees, in [0, 360). */
  private static double eastOf(Position west, Position east) {
    return Angles.reduced(east.longitudeDegrees() - west.longitudeDegrees());
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
   * The shift between WGS84 and this datum.
   *
   * @return the shift
   */
  public HelmertShift shift() {
    return shift;
  }

  /**
   * How good positions are after the shift.
   *
   * @return at least 0; 0 if the datum is WGS84 itself
   */
  public Distance accuracy() {
    return Distance.ofMetres(accuracyMetres);
  }

  /**
   * What a reader of positions on this datum should know.
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
                      + Arguments.plain(accuracyMetres)
                      + " m. Surveyors use the national grid-shift file.")
              .with("accuracyMetres", accuracyMetres));
    }
    if (accuracyMetres > 0.0) {
      return List.of(
          Note.information(
                  "grid.taken-as-wgs84",
                  name
                      + " is taken as WGS84; they agree to about "
                      + Arguments.plain(accuracyMetres)
                      + " m.")
              .with("accuracyMetres", accuracyMetres));
    }
    return List.of();
  }

  /** Those of {@link #notes()}, and a caution where the shift was not fitted. */
  List<Note> notesAt(Position position) {
    if (covers(position)) {
      return notes();
    }
    List<Note> notes = new ArrayList<>(notes());
    notes.add(
        0,
        Note.caution(
            "grid.beyond-datum",
            name
                + " is not used here, and its shift was not fitted here: maps of another country"
                + " apply."));
    return List.copyOf(notes);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Datum that
        && name.equals(that.name)
        && ellipsoid.equals(that.ellipsoid)
        && shift.equals(that.shift)
        && accuracyMetres == that.accuracyMetres
        && southWest.equals(that.southWest)
        && northDegrees == that.northDegrees
        && widthDegrees == that.widthDegrees;
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
