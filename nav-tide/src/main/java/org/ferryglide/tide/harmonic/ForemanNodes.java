package org.ferryglide.tide.harmonic;

import java.util.List;
import org.ferryglide.nav.basics.Arguments;

/**
 * Nodal corrections after Foreman, Pacific Marine Science Report 77-10 (1977): the close satellites
 * of a main constituent, added as vectors.
 */
final class ForemanNodes extends NodalScheme {

  private static final long serialVersionUID = 1L;

  private static final double LEAST_LATITUDE_DEGREES = 5.0;

  private final double latitudeDegrees;

  /** What a satellite's share is multiplied by for its latitude rule. */
  private final double[] latitudeFactors;

  ForemanNodes(double latitudeDegrees) {
    this.latitudeDegrees =
        Arguments.within(latitudeDegrees, -90.0, 90.0, "latitude of a station", "degrees");
    double away = Math.max(Math.abs(latitudeDegrees), LEAST_LATITUDE_DEGREES);
    double sine = Math.sin(Math.toRadians(latitudeDegrees < 0.0 ? -away : away));
    this.latitudeFactors =
        new double[] {1.0, 0.36309 * (1.0 - 5.0 * sine * sine) / sine, 2.59808 * sine};
  }

  @Override
  public String name() {
    return "Foreman at latitude " + latitudeDegrees;
  }

  @Override
  MeanLongitudes meanLongitudes() {
    return MeanLongitudes.EXPLANATORY_SUPPLEMENT;
  }

  @Override
  public List<Constituent> constituents() {
    return Constituents.FOREMAN_69;
  }

  @Override
  public boolean knows(Constituent constituent) {
    return ForemanSatellites.knows(constituent)
        || (constituent.isCompound()
            && constituent.parts().stream().allMatch(part -> knows(part.constituent())));
  }

  @Override
  public void corrections(double epochSeconds, List<Constituent> constituents, double[] out) {
    double[] angles = new double[MeanLongitudes.COUNT];
    MeanLongitudes.EXPLANATORY_SUPPLEMENT.at(epochSeconds, angles, 0);
    CompoundNodes.write(
        constituents, (constituent, to, offset) -> write(constituent, angles, to, offset), out);
    for (int i = 0; i < constituents.size(); i++) {
      // a compound that Foreman lists as a constituent of its own, MSF, has his correction
      if (constituents.get(i).isCompound() && ForemanSatellites.knows(constituents.get(i))) {
        write(constituents.get(i), angles, out, 2 * i);
      }
    }
  }

  private void write(Constituent constituent, double[] angles, double[] out, int offset) {
    if (!ForemanSatellites.knows(constituent)) {
      throw CompoundNodes.unknown(constituent, this);
    }
    double real = 1.0;
    double imaginary = 0.0;
    for (ForemanSatellites.Satellite satellite : ForemanSatellites.of(constituent)) {
      double angle = satellite.angleRadians(angles);
      double share = satellite.share() * latitudeFactors[satellite.latitudeRule()];
      real += share * Math.cos(angle);
      imaginary += share * Math.sin(angle);
    }
    out[offset] = Math.hypot(real, imaginary);
    out[offset + 1] = Math.toDegrees(Math.atan2(imaginary, real));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ForemanNodes that && latitudeDegrees == that.latitudeDegrees;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(latitudeDegrees);
  }
}
