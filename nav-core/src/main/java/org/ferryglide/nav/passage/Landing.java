package org.ferryglide.nav.passage;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.jspecify.annotations.Nullable;

/**
 * When a landing works: the levels between which there is water enough and beach left, and the
 * sector from which wind and swell run straight onto it.
 *
 * <pre>{@code
 * Landing cove =
 *     Landing.between("Orrin Quay", Distance.ofMetres(0.8), Distance.ofMetres(4.6))
 *         .withOpenSector(TrueBearing.ofDegrees(200), TrueBearing.ofDegrees(290));
 * cove.isOpenTo(TrueBearing.ofDegrees(240)); // true: a wind FROM 240° blows onto it
 * }</pre>
 */
public final class Landing implements Serializable {
  private static final long serialVersionUID = 1L;

  private final @Nullable String port;
  private final double lowestMetres;
  private final double highestMetres;
  private final @Nullable TrueBearing openFrom;
  private final @Nullable TrueBearing openUntil;

  private Landing(
      @Nullable String port,
      double lowestMetres,
      double highestMetres,
      @Nullable TrueBearing openFrom,
      @Nullable TrueBearing openUntil) {
    this.port = port;
    this.lowestMetres = lowestMetres;
    this.highestMetres = highestMetres;
    this.openFrom = openFrom;
    this.openUntil = openUntil;
  }

  /**
   * A landing that works at every level.
   *
   * @return the landing
   */
  public static Landing atAnyLevel() {
    return new Landing(null, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, null, null);
  }

  /**
   * A landing that works between two levels.
   *
   * @param port the level to look at, by its name in the passage
   * @param lowest the lowest height at which it works, above the level's datum
   * @param highest the highest, not below the lowest
   * @return the landing
   * @throws IllegalArgumentException if the name is empty or the heights are the wrong way round
   */
  public static Landing between(String port, Distance lowest, Distance highest) {
    if (highest.compareTo(lowest) < 0) {
      throw new IllegalArgumentException(
          "highest level must be at least the lowest of "
              + lowest.metres()
              + " metres, but was "
              + highest.metres());
    }
    return new Landing(
        Names.checked(port, "name of a port"), lowest.metres(), highest.metres(), null, null);
  }

  /**
   * The same landing with the sector it lies open to.
   *
   * @param from one edge of the sector, as a direction from the landing outward
   * @param until the other edge, clockwise from the first
   * @return the changed landing
   */
  public Landing withOpenSector(TrueBearing from, TrueBearing until) {
    return new Landing(
        port,
        lowestMetres,
        highestMetres,
        Objects.requireNonNull(from, "from"),
        Objects.requireNonNull(until, "until"));
  }

  /**
   * The level to look at.
   *
   * @return its name in the passage; empty if the landing works at every level
   */
  public Optional<String> port() {
    return Optional.ofNullable(port);
  }

  /**
   * The lowest level at which it works.
   *
   * @return height above the datum; empty if none is too low
   */
  public Optional<Distance> lowest() {
    return known(lowestMetres);
  }

  /**
   * The highest level at which it works.
   *
   * @return height above the datum; empty if none is too high
   */
  public Optional<Distance> highest() {
    return known(highestMetres);
  }

  private static Optional<Distance> known(double metres) {
    return Double.isFinite(metres) ? Optional.of(Distance.ofMetres(metres)) : Optional.empty();
  }

  /**
   * By how much the water is within the levels.
   *
   * @param height height of the water above the datum
   * @return distance to the nearer of the two levels, negative outside them; empty if the landing
   *     works at every level
   */
  public Optional<Distance> margin(Distance height) {
    return known(marginMetres(height.metres()));
  }

  /** The same in metres: infinite if it works at every level, NaN if the height is. */
  double marginMetres(double heightMetres) {
    return Math.min(heightMetres - lowestMetres, highestMetres - heightMetres);
  }

  /** Metres above the datum; negative infinity if none is too low. */
  double lowestMetres() {
    return lowestMetres;
  }

  /** Metres above the datum; infinity if none is too high. */
  double highestMetres() {
    return highestMetres;
  }

  /**
   * Whether a wind or swell runs onto the landing.
   *
   * @param comingFrom where it comes from
   * @return true if that lies in the open sector, its edges included
   */
  public boolean isOpenTo(TrueBearing comingFrom) {
    if (openFrom == null || openUntil == null) {
      return false;
    }
    double width = clockwise(openFrom, openUntil);
    return clockwise(openFrom, comingFrom) <= width;
  }

  /**
   * Whether it is stated to which side the landing lies open.
   *
   * @return false if nothing is known of it
   */
  public boolean hasOpenSector() {
    return openFrom != null;
  }

  /**
   * One edge of the open sector.
   *
   * @return the direction from the landing outward; empty if none is stated
   */
  public Optional<TrueBearing> openFrom() {
    return Optional.ofNullable(openFrom);
  }

  /**
   * The other edge of the open sector, clockwise from the first.
   *
   * @return the direction from the landing outward; empty if none is stated
   */
  public Optional<TrueBearing> openUntil() {
    return Optional.ofNullable(openUntil);
  }

  private static double clockwise(TrueBearing from, TrueBearing to) {
    double turn = (to.degrees() - from.degrees()) % 360.0;
    return turn < 0.0 ? turn + 360.0 : turn;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Landing that
        && Objects.equals(port, that.port)
        && lowestMetres == that.lowestMetres
        && highestMetres == that.highestMetres
        && Objects.equals(openFrom, that.openFrom)
        && Objects.equals(openUntil, that.openUntil);
  }

  @Override
  public int hashCode() {
    return Objects.hash(port, lowestMetres, highestMetres, openFrom, openUntil);
  }

  @Override
  public String toString() {
    String levels =
        port == null
            ? "landing at any level"
            : "landing between " + lowestMetres + " and " + highestMetres + " m at " + port;
    return openFrom == null
        ? levels
        : levels + ", open from " + openFrom + " clockwise to " + openUntil;
  }
}
