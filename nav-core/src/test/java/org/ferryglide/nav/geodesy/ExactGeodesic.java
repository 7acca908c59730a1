package org.ferryglide.nav.geodesy;

import static org.ferryglide.nav.geodesy.BigMath.DIGITS;
import static org.ferryglide.nav.geodesy.BigMath.RADIANS_IN_DEGREE;

import java.math.BigDecimal;

/**
 * Short geodesics to 30 digits, straight from the defining integrals, as a check on {@link
 * ShortGeodesics}.
 *
 * <p>Length and longitude are the integrals of Karney (2013), eqs. 7 and 8, in the second
 * eccentricity, by Gauss-Legendre quadrature with 14 nodes; the longitude on the sphere by simple
 * iteration until 45 digits stand. The courses come from spherical triangles by their sines and
 * cosines. All arithmetic carries 80 digits.
 */
final class ExactGeodesic {
  private static final int NODES = 14;
  private static final BigDecimal[][] RULE = ExactRhumb.gaussLegendre(NODES);
  private static final BigDecimal ONE = BigDecimal.ONE;
  private static final BigDecimal TWO = BigDecimal.valueOf(2);
  private static final BigDecimal SETTLED = new BigDecimal("1e-45");

  /** The same figure of the earth for the kernel. */
  final Ellipsoid figure;

  private final BigDecimal b;
  private final BigDecimal f;
  private final BigDecimal secondEccentricity2;

  /** Both figures as decimal text, so that nothing is rounded. */
  ExactGeodesic(String semiMajorAxisMetres, String inverseFlattening) {
    figure =
        Ellipsoid.ofInverseFlattening(
            Double.parseDouble(semiMajorAxisMetres), Double.parseDouble(inverseFlattening));
    f = ONE.divide(new BigDecimal(inverseFlattening), DIGITS);
    BigDecimal ratio = ONE.subtract(f);
    b = new BigDecimal(semiMajorAxisMetres).multiply(ratio, DIGITS);
    secondEccentricity2 = times(f, TWO.subtract(f)).divide(times(ratio, ratio), DIGITS);
  }

  /** Course at both ends, degrees, and length, metres; the doubles are taken as exact. */
  BigDecimal[] inverse(double lat1, double lon1, double lat2, double lon2) {
    BigDecimal dlon = new BigDecimal(lon2).subtract(new BigDecimal(lon1));
    if (dlon.abs().compareTo(BigDecimal.valueOf(180)) > 0) {
      dlon = dlon.subtract(BigDecimal.valueOf(360L * dlon.signum()));
    }
    BigDecimal lambda = dlon.multiply(RADIANS_IN_DEGREE, DIGITS);
    BigDecimal[] from = reduced(lat1);
    BigDecimal[] to = reduced(lat2);
    BigDecimal slope = ONE.subtract(times(f, times(from[1], to[1]))); // nearly that of λ by ω
    BigDecimal omega = lambda;
    BigDecimal[] line;
    BigDecimal off;
    do {
      line = onSphere(from, to, omega);
      off = lambda.subtract(omega.subtract(times(f, times(line[0], line[1]))));
      omega = omega.add(off.divide(slope, DIGITS), DIGITS);
    } while (off.abs().compareTo(SETTLED) > 0);
    return new BigDecimal[] {course(line[3], line[4]), course(line[5], line[6]), times(b, line[2])};
  }

  /** Sine and cosine of the reduced latitude. */
  private BigDecimal[] reduced(double latDegrees) {
    BigDecimal phi = new BigDecimal(latDegrees).multiply(RADIANS_IN_DEGREE, DIGITS);
    return unit(times(ONE.subtract(f), BigMath.sin(phi)), BigMath.cos(phi));
  }

  /**
   * The great circle whose difference of longitude is given: sin α₀, integral of the longitude,
   * integral of the length, and sine and cosine of the course at the start and at the end, these
   * not of unit size.
   */
  private BigDecimal[] onSphere(BigDecimal[] from, BigDecimal[] to, BigDecimal omega) {
    BigDecimal sinOmega = BigMath.sin(omega);
    BigDecimal cosOmega = BigMath.cos(omega);
    BigDecimal east1 = times(to[1], sinOmega);
    BigDecimal north1 = times(from[1], to[0]).subtract(times(from[0], times(to[1], cosOmega)));
    BigDecimal east2 = times(from[1], sinOmega);
    BigDecimal north2 = times(from[1], times(to[0], cosOmega)).subtract(times(from[0], to[1]));
    BigDecimal[] start = unit(east1, north1);
    BigDecimal sinArc = times(east1, east1).add(times(north1, north1)).sqrt(DIGITS);
    BigDecimal cosArc = times(from[0], to[0]).add(times(from[1], times(to[1], cosOmega)));
    BigDecimal halfArc = BigMath.atan2(sinArc, cosArc).divide(TWO, DIGITS);
    BigDecimal climb = times(from[1], start[1]);
    BigDecimal longitude = BigDecimal.ZERO;
    BigDecimal length = BigDecimal.ZERO;
    for (int i = 0; i < NODES; i++) {
      BigDecimal along = times(halfArc, ONE.add(RULE[0][i]));
      BigDecimal sine = times(from[0], BigMath.cos(along)).add(times(climb, BigMath.sin(along)));
      BigDecimal root = ONE.add(times(secondEccentricity2, times(sine, sine))).sqrt(DIGITS);
      BigDecimal share = TWO.subtract(f).divide(ONE.add(times(ONE.subtract(f), root)), DIGITS);
      longitude = longitude.add(times(RULE[1][i], share), DIGITS);
      length = length.add(times(RULE[1][i], root), DIGITS);
    }
    return new BigDecimal[] {
      times(from[1], start[0]),
      times(longitude, halfArc),
      times(length, halfArc),
      east1,
      north1,
      east2,
      north2
    };
  }

  private static BigDecimal[] unit(BigDecimal y, BigDecimal x) {
    BigDecimal size = times(y, y).add(times(x, x)).sqrt(DIGITS);
    return new BigDecimal[] {y.divide(size, DIGITS), x.divide(size, DIGITS)};
  }

  private static BigDecimal course(BigDecimal east, BigDecimal north) {
    BigDecimal degrees = BigMath.atan2(east, north).divide(RADIANS_IN_DEGREE, DIGITS);
    return degrees.signum() < 0 ? degrees.add(BigDecimal.valueOf(360)) : degrees;
  }

  private static BigDecimal times(BigDecimal x, BigDecimal y) {
    return x.multiply(y, DIGITS);
  }
}
