package org.ferryglide.nav.passage;

import org.ferryglide.nav.geodesy.Ellipsoid;

/** Metres for a degree of latitude and of longitude, on WGS84. */
final class PlaneMetres {
  private PlaneMetres() {}

  static double north(double latitudeDegrees) {
    return Math.toRadians(Ellipsoid.WGS84.meridianRadiusMetres(latitudeDegrees));
  }

  static double east(double latitudeDegrees) {
    return Math.toRadians(
        Ellipsoid.WGS84.primeVerticalRadiusMetres(latitudeDegrees)
            * Math.cos(Math.toRadians(latitudeDegrees)));
  }
}
