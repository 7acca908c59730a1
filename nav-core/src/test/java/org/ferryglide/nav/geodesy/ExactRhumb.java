package org.ferryglide.nav.geodesy;

import static org.ferryglide.nav.geodesy.BigMath.DIGITS;
import static org.ferryglide.nav.geodesy.BigMath.RADIANS_IN_DEGREE;

import java.math.BigDecimal;

/**
 * Rhumb lines to 50 digits, straight from their definition, as a check on {@link RhumbLines}.
 *
 * <p>Meridian distance is the integral of a(1 - e²)(1 - e² sin²φ)^(-3/2) by Gauss-Legendre
 * quadrature with 48 nodes over each radian; isometric latitude is atanh(sin φ) - e atanh(e sin φ).
 * Neither shares a formula with the kernel. All arithmetic carries 80 digits, so that what the
 * subtraction of nearly equal isometric latitudes takes away leaves 50.
 */
final class ExactRhumb {
  private static final int NODES = 48;
  private static final BigDecimal[][] RULE = gaussLegendre(NODES);

  /** The same figure of the earth for the kernel. */
  final Ellipsoid figure;

  private final BigDecimal a;
  private final BigDecimal e2;

  /** Both figures as decimal text, so that nothing is rounded: "298.257223563". */
  ExactRhumb(String semiMajorAxisMetres, String inverseFlattening) {
    figure =
        Ellipsoid.ofInverseFlattening(
            Double.parseDouble(semiMajorAxisMetres), Double.parseDouble(inverseFlattening));
    a = new BigDecimal(semiMajorAxisMetres);
    BigDecimal f = BigDecimal.ONE.divide(new BigDecimal(inverseFlattening), DIGITS);
    e2 = f.multiply(BigDecimal.valueOf(2).subtract(f), DIGITS);
  }

  static ExactRhumb wgs84() {
    return new ExactRhumb("6378137", "298.257223563");
  }

  /** Course in degrees and length in metres; the doubles are taken as exact. */
  BigDecimal[] inverse(double lat1, double lon1, double lat2, double lon2) {
    BigDecimal dlon = new BigDecimal(lon2).subtract(new BigDecimal(lon1));
    while (dlon.compareTo(BigDecimal.valueOf(180)) > 0) {
      dlon = dlon.subtract(BigDecimal.valueOf(360));
    }
    while (dlon.compareTo(BigDecimal.valueOf(-180)) <= 0) {
      dlon = dlon.add(BigDecimal.valueOf(360));
    }
    BigDecimal lambda = radians(dlon);
    BigDecimal phi1 = radians(new BigDecimal(lat1));
    BigDecimal phi2 = radians(new BigDecimal(lat2));
    if (lat1 == lat2) {
      BigDecimal course = BigDecimal.valueOf(dlon.signum() > 0 ? 90 : dlon.signum() < 0 ? 270 : 0);
      return new BigDecimal[] {course, parallelRadius(phi1).multiply(lambda.abs(), DIGITS)};
    }
    BigDecimal north = meridian(phi1, phi2);
    boolean pole = Math.abs(lat1) == 90.0 || Math.abs(lat2) == 90.0;
    if (pole || lambda.signum() == 0) {
      return new BigDecimal[] {BigDecimal.valueOf(north.signum() > 0 ? 0 : 180), north.abs()};
    }
    BigDecimal dpsi = isometric(phi2).subtract(isometric(phi1));
    BigDecimal course = degrees(BigMath.atan2(lambda, dpsi));
    if (course.signum() < 0) {
      course = course.add(BigDecimal.valueOf(360));
    }
    BigDecimal ratio = lambda.divide(dpsi, DIGITS);
    BigDecimal secant = BigDecimal.ONE.add(ratio.multiply(ratio, DIGITS)).sqrt(DIGITS);
    return new BigDecimal[] {course, north.abs().multiply(secant, DIGITS)};
  }

  /** Latitude and longitude in degrees, the longitude not reduced. */
  BigDecimal[] direct(double lat, double lon, double courseDegrees, double metres) {
    BigDecimal course = radians(new BigDecimal(courseDegrees));
    BigDecimal length = new BigDecimal(metres);
    BigDecimal phi1 = radians(new BigDecimal(lat));
    BigDecimal lambda1 = new BigDecimal(lon);
    boolean alongParallel = courseDegrees == 90.0 || courseDegrees == 270.0;
    if (alongParallel) {
      BigDecimal dlon = degrees(length.divide(parallelRadius(phi1), DIGITS));
      return new BigDecimal[] {
        new BigDecimal(lat), courseDegrees == 90.0 ? lambda1.add(dlon) : lambda1.subtract(dlon)
      };
    }
    BigDecimal north = length.multiply(BigMath.cos(course), DIGITS);
    BigDecimal phi2 = phi1.add(north.divide(a, DIGITS), DIGITS);
    BigDecimal off = north.subtract(meridian(phi1, phi2));
    for (int i = 0; i < 7; i++) { // Newton's method doubles the figures each time
      BigDecimal step = off.divide(meridianRadius(phi2), DIGITS);
      BigDecimal next = phi2.add(step, DIGITS);
      off = off.subtract(meridian(phi2, next));
      phi2 = next;
    }
    boolean alongMeridian = courseDegrees == 0.0 || courseDegrees == 180.0;
    if (alongMeridian) {
      return new BigDecimal[] {degrees(phi2), lambda1};
    }
    BigDecimal dpsi = isometric(phi2).subtract(isometric(phi1));
    BigDecimal tangent = BigMath.sin(course).divide(BigMath.cos(course), DIGITS);
    return new BigDecimal[] {
      degrees(phi2), lambda1.add(degrees(dpsi.multiply(tangent, DIGITS)), DIGITS)
    };
  }

  /** Meridian distance by quadrature, metres, north positive. */
  BigDecimal meridian(BigDecimal phi1, BigDecimal phi2) {
    BigDecimal span = phi2.subtract(phi1);
    int panels = 1 + span.abs().intValue();
    BigDecimal half = span.divide(BigDecimal.valueOf(2L * panels), DIGITS);
    BigDecimal sum = BigDecimal.ZERO;
    for (int panel = 0; panel < panels; panel++) {
      BigDecimal middle = phi1.add(half.multiply(BigDecimal.valueOf(2L * panel + 1)));
      for (int i = 0; i < NODES; i++) {
        BigDecimal phi = middle.add(half.multiply(RULE[0][i], DIGITS));
        sum = sum.add(RULE[1][i].multiply(meridianRadius(phi), DIGITS), DIGITS);
      }
    }
    return sum.multiply(half, DIGITS);
  }

  BigDecimal isometric(BigDecimal phi) {
    BigDecimal sine = BigMath.sin(phi);
    BigDecimal whole =
        BigMath.log(BigDecimal.ONE.add(sine).divide(BigDecimal.ONE.subtract(sine), DIGITS))
            .divide(BigDecimal.valueOf(2), DIGITS);
    // e atanh(e s) as a series in e squared, which also serves a body longer than wide.
    BigDecimal z = e2.multiply(sine, DIGITS).multiply(sine, DIGITS);
    BigDecimal power = e2.multiply(sine, DIGITS);
    for (int k = 1; power.abs().compareTo(new BigDecimal("1e-82")) > 0; k += 2) {
      whole = whole.subtract(power.divide(BigDecimal.valueOf(k), DIGITS), DIGITS);
      power = power.multiply(z, DIGITS);
    }
    return whole;
  }

  private BigDecimal meridianRadius(BigDecimal phi) {
    BigDecimal w2 = w2(phi);
    return a.multiply(BigDecimal.ONE.subtract(e2), DIGITS)
        .divide(w2.multiply(w2.sqrt(DIGITS), DIGITS), DIGITS);
  }

  private BigDecimal parallelRadius(BigDecimal phi) {
    return a.multiply(BigMath.cos(phi), DIGITS).divide(w2(phi).sqrt(DIGITS), DIGITS);
  }

  private BigDecimal w2(BigDecimal phi) {
    BigDecimal sine = BigMath.sin(phi);
    return BigDecimal.ONE.subtract(e2.multiply(sine.multiply(sine, DIGITS), DIGITS));
  }

  private static BigDecimal radians(BigDecimal degrees) {
    return degrees.multiply(RADIANS_IN_DEGREE, DIGITS);
  }

  private static BigDecimal degrees(BigDecimal radians) {
    return radians.divide(RADIANS_IN_DEGREE, DIGITS);
  }

  /** Nodes and weights on [-1, 1]: the zeros of the Legendre polynomial, by Newton's method. */
  static BigDecimal[][] gaussLegendre(int nodes) {
    BigDecimal[][] rule = new BigDecimal[2][nodes];
    BigDecimal n = BigDecimal.valueOf(nodes);
    for (int i = 0; i < nodes; i++) {
      BigDecimal x = new BigDecimal(Math.cos(Math.PI * (i + 0.75) / (nodes + 0.5)));
      BigDecimal slope = BigDecimal.ONE;
      for (int step = 0; step < 8; step++) {
        BigDecimal before = BigDecimal.ONE;
        BigDecimal value = x;
        for (int k = 2; k <= nodes; k++) {
          BigDecimal next =
              x.multiply(value, DIGITS)
                  .multiply(BigDecimal.valueOf(2L * k - 1))
                  .subtract(before.multiply(BigDecimal.valueOf(k - 1L)))
                  .divide(BigDecimal.valueOf(k), DIGITS);
          before = value;
          value = next;
        }
        BigDecimal oneLessSquare = BigDecimal.ONE.subtract(x.multiply(x, DIGITS));
        slope =
            n.multiply(before.subtract(x.multiply(value, DIGITS)), DIGITS)
                .divide(oneLessSquare, DIGITS);
        x = x.subtract(value.divide(slope, DIGITS), DIGITS);
      }
      rule[0][i] = x;
      BigDecimal oneLessSquare = BigDecimal.ONE.subtract(x.multiply(x, DIGITS));
      rule[1][i] =
          BigDecimal.valueOf(2)
              .divide(oneLessSquare.multiply(slope.multiply(slope, DIGITS), DIGITS), DIGITS);
    }
    return rule;
  }
}
