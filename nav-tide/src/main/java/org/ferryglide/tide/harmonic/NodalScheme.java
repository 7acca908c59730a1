package org.ferryglide.tide.harmonic;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;

/**
 * How constituents grow, shrink and run early or late over the 18.6 years of the moon's node: which
 * names mean what, the series of mean longitudes, and the correction of each constituent.
 *
 * <p>A station's constants belong to the scheme they were found with; another scheme's prediction
 * from them is off by the difference of the two corrections. There are two; both are immutable.
 *
 * <pre>{@code
 * NodalScheme scheme = NodalScheme.schureman();
 * Constituent m2 = scheme.constituent("M2").get();
 * double[] factorAndAngle = new double[2];
 * scheme.corrections(epochSeconds, List.of(m2), factorAndAngle);
 * }</pre>
 */
public abstract class NodalScheme implements Serializable {

  private static final long serialVersionUID = 1L;

  NodalScheme() {}

  /**
   * What the scheme is called.
   *
   * @return the name, for messages and listings
   */
  public abstract String name();

  /** The series that V is computed from. */
  abstract MeanLongitudes meanLongitudes();

  /**
   * The angle V of a constituent at Greenwich, without nodal correction.
   *
   * @param constituent the constituent
   * @param epochSeconds seconds since 1970-01-01T00:00:00Z; NaN gives NaN
   * @return V, degrees, in [0, 360)
   */
  public final double argumentDegrees(Constituent constituent, double epochSeconds) {
    return constituent.argumentDegrees(meanLongitudes(), epochSeconds);
  }

  /**
   * The constituents that the scheme lists, the largest in the equilibrium tide first.
   *
   * @return unmodifiable list
   */
  public abstract List<Constituent> constituents();

  /**
   * What a name means in this scheme.
   *
   * @param name the name as printed, in either case; names in use for the same constituent are
   *     understood (LAM2 for LDA2, RHO for RHO1)
   * @return the constituent; empty if the scheme does not list it
   */
  public Optional<Constituent> constituent(String name) {
    return ConstituentNames.find(name, constituents());
  }

  /**
   * Whether the scheme has a correction for a constituent.
   *
   * @param constituent the constituent, listed or made by the caller
   * @return true if {@link #corrections} takes it
   */
  public abstract boolean knows(Constituent constituent);

  /**
   * The corrections of many constituents at an instant.
   *
   * @param epochSeconds seconds since 1970-01-01T00:00:00Z; NaN gives NaN
   * @param constituents the constituents, each of them known
   * @param out receives two numbers for each: the node factor f, and the nodal angle u in degrees
   * @throws IllegalArgumentException if a constituent is not known
   */
  public abstract void corrections(
      double epochSeconds, List<Constituent> constituents, double[] out);

  /**
   * The scheme of official US predictions.
   *
   * @return Schureman's node factors, with the 37 constituents of official predictions
   */
  public static NodalScheme schureman() {
    return SchuremanNodes.INSTANCE;
  }

  /**
   * Foreman's scheme, which corrects by satellites.
   *
   * @param latitudeDegrees latitude of the station, degrees north, in [-90, 90]; nearer than 5° to
   *     the equator it is taken as 5° of the same side, as Foreman does, and 0° as 5° north
   * @return the scheme
   * @throws IllegalArgumentException if the latitude is NaN or out of range
   */
  public static NodalScheme foreman(double latitudeDegrees) {
    return new ForemanNodes(latitudeDegrees);
  }
}
