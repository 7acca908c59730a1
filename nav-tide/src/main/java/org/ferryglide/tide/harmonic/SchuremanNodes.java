package org.ferryglide.tide.harmonic;

import java.util.List;

/**
 * Node factors after Schureman, Manual of Harmonic Analysis and Prediction of Tides, Special
 * Publication 98 (1940, reprinted 1958), every figure held against the yearly tables named below.
 *
 * <p>The mean longitude of the node gives the tilt I of the moon's orbit to the equator and the two
 * angles ν and ξ; all factors follow from these, M1 and L2 from the moon's perigee as well. They
 * agree with the yearly figures of the US National Ocean Service for 1980 to 2026, printed to 0.001
 * and 0.1°, within 0.0015 (OO1 within 0.005) and 0.13°.
 */
final class SchuremanNodes extends NodalScheme {

  private static final long serialVersionUID = 1L;

  static final SchuremanNodes INSTANCE = new SchuremanNodes();

  /** Obliquity of the ecliptic for 1 January 1900, 23° 27′ 8.26″, radians. */
  private static final double OBLIQUITY = Math.toRadians(23.0 + 27.0 / 60.0 + 8.26 / 3600.0);

  /** Inclination of the moon's orbit to the ecliptic, 5° 8′ 43.35″, radians. */
  private static final double INCLINATION = Math.toRadians(5.0 + 8.0 / 60.0 + 43.35 / 3600.0);

  private SchuremanNodes() {}

  private Object readResolve() {
    return INSTANCE;
  }

  @Override
  public String name() {
    return "Schureman";
  }

  @Override
  MeanLongitudes meanLongitudes() {
    return MeanLongitudes.SCHUREMAN;
  }

  @Override
  public List<Constituent> constituents() {
    return Constituents.STANDARD_37;
  }

  @Override
  public boolean knows(Constituent constituent) {
    return constituent.family() != NodeFamily.NOT_LISTED
        && constituent.parts().stream().allMatch(part -> knows(part.constituent()));
  }

  @Override
  public void corrections(double epochSeconds, List<Constituent> constituents, double[] out) {
    double[] angles = new double[MeanLongitudes.COUNT];
    MeanLongitudes.SCHUREMAN.at(epochSeconds, angles, 0);
    Orbit orbit = new Orbit(angles);
    CompoundNodes.write(
        constituents,
        (constituent, to, offset) -> {
          if (constituent.family() == NodeFamily.NOT_LISTED) {
            throw CompoundNodes.unknown(constituent, this);
          }
          to[offset] = orbit.factor(constituent.family());
          to[offset + 1] = Math.toDegrees(orbit.angle(constituent.family()));
        },
        out);
  }

  /** The moon's orbit at an instant, as the formulas take it; radians. */
  private static final class Orbit {
    private final double tilt;
    private final double nu;
    private final double xi;
    private final double perigee;
    private final double sinTilt;
    private final double sinTwiceTilt;
    private final double cosHalf;
    private final double sinHalf;
    private final double tanHalfSquared;

    Orbit(double[] angles) {
      double node = -Math.toRadians(angles[MeanLongitudes.N_PRIME]);
      tilt =
          Math.acos(
              Math.cos(OBLIQUITY) * Math.cos(INCLINATION)
                  - Math.sin(OBLIQUITY) * Math.sin(INCLINATION) * Math.cos(node));
      double sinNode = Math.sin(0.5 * node);
      double cosNode = Math.cos(0.5 * node);
      double half = 0.5 * (OBLIQUITY - INCLINATION);
      double otherHalf = 0.5 * (OBLIQUITY + INCLINATION);
      double sum = 2.0 * Math.atan2(Math.cos(half) * sinNode, Math.cos(otherHalf) * cosNode);
      double difference = 2.0 * Math.atan2(Math.sin(half) * sinNode, Math.sin(otherHalf) * cosNode);
      nu = 0.5 * (sum - difference);
      xi = Math.IEEEremainder(node - 0.5 * (sum + difference), 2.0 * Math.PI);
      perigee = Math.toRadians(angles[MeanLongitudes.P]) - xi;
      sinTilt = Math.sin(tilt);
      sinTwiceTilt = Math.sin(2.0 * tilt);
      cosHalf = Math.cos(0.5 * tilt);
      sinHalf = Math.sin(0.5 * tilt);
      tanHalfSquared = (sinHalf / cosHalf) * (sinHalf / cosHalf);
    }

    double factor(NodeFamily family) {
      return switch (family) {
        case MM -> (2.0 / 3.0 - sinTilt * sinTilt) / 0.5021;
        case MF -> sinTilt * sinTilt / 0.1578;
        case O1 -> sinTilt * cosHalf * cosHalf / 0.3800;
        case M1 -> factor(NodeFamily.O1) * Math.sqrt(2.310 + 1.435 * Math.cos(2.0 * perigee));
        case J1 -> sinTwiceTilt / 0.7214;
        case OO1 -> sinTilt * sinHalf * sinHalf / 0.0164;
        case K1 ->
            Math.sqrt(
                0.8965 * sinTwiceTilt * sinTwiceTilt
                    + 0.6001 * sinTwiceTilt * Math.cos(nu)
                    + 0.1006);
        case M2 -> cosHalf * cosHalf * cosHalf * cosHalf / 0.9154;
        case L2 ->
            factor(NodeFamily.M2)
                * Math.sqrt(
                    1.0
                        - 12.0 * tanHalfSquared * Math.cos(2.0 * perigee)
                        + 36.0 * tanHalfSquared * tanHalfSquared);
        case K2 -> {
          double squared = sinTilt * sinTilt;
          yield Math.sqrt(
              19.0444 * squared * squared + 2.7702 * squared * Math.cos(2.0 * nu) + 0.0981);
        }
        case M3 -> cosHalf * cosHalf * cosHalf * cosHalf * cosHalf * cosHalf / 0.8758;
        case NONE, NOT_LISTED -> 1.0;
      };
    }

    double angle(NodeFamily family) {
      return switch (family) {
        case MF -> -2.0 * xi;
        case O1 -> 2.0 * xi - nu;
        case M1 -> xi - nu + Math.atan2(0.483 * Math.sin(perigee), Math.cos(perigee));
        case J1 -> -nu;
        case OO1 -> -2.0 * xi - nu;
        case K1 -> -Math.atan2(sinTwiceTilt * Math.sin(nu), sinTwiceTilt * Math.cos(nu) + 0.3347);
        case M2 -> 2.0 * (xi - nu);
        case L2 ->
            2.0 * (xi - nu)
                - Math.atan2(
                    Math.sin(2.0 * perigee),
                    1.0 / (6.0 * tanHalfSquared) - Math.cos(2.0 * perigee));
        case K2 -> {
          double squared = sinTilt * sinTilt;
          yield -Math.atan2(squared * Math.sin(2.0 * nu), squared * Math.cos(2.0 * nu) + 0.0727);
        }
        case M3 -> 3.0 * (xi - nu);
        case MM, NONE, NOT_LISTED -> 0.0;
      };
    }
  }
}
