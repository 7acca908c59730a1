package org.ferryglide.examples.spark;

import org.ferryglide.nav.magnetic.MagneticModel;
import org.ferryglide.nav.magnetic.MagneticSnapshot;
import org.jspecify.annotations.Nullable;

/**
 * The variation by WMM2025, for rows many of which have one date: the field of the date asked last
 * is kept. Threads may share it; each part of a job has a copy of its own anyway.
 */
final class DatedVariation implements NavigationFunctions.OfFour {
  private static final long serialVersionUID = 1L;

  private transient volatile @Nullable Dated last;

  /** The field of a date. */
  private record Dated(double year, MagneticSnapshot snapshot) {}

  @Override
  public double of(double year, double lat, double lon, double height) {
    double[] field = new double[MagneticSnapshot.ELEMENTS];
    at(year).elements(lat, lon, height, field, 0);
    return field[MagneticSnapshot.DECLINATION];
  }

  /** The field of a date, the same object as before if it is the same date. */
  MagneticSnapshot at(double year) {
    Dated dated = last;
    if (dated == null || dated.year != year) {
      dated = new Dated(year, MagneticModel.wmm2025().atDecimalYear(year));
      last = dated;
    }
    return dated.snapshot;
  }
}
