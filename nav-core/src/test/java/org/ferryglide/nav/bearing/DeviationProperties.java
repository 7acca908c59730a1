package org.ferryglide.nav.bearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ferryglide.testing.Seeds;

class DeviationProperties {
  /** What the solver promises, with the rounding of a sum near 360. */
  private static final double SOLVED_DEGREES = 1e-11;

  @Property(seed = Seeds.SEED, tries = 300)
  void magneticToCompassAndBackIsTheSameHeading(
      @ForAll("tables") DeviationTable table, @ForAll("angles") double magnetic) {
    MagneticBearing start = MagneticBearing.ofDegrees(magnetic);
    CompassBearing compass = table.toCompass(start);
    assertEquals(0.0, start.turnDegreesTo(table.toMagnetic(compass)), SOLVED_DEGREES);
    assertEquals(
        table.deviationOn(compass).degreesEast(),
        table.deviationOn(start).degreesEast(),
        SOLVED_DEGREES);
  }

  @Property(seed = Seeds.SEED, tries = 300)
  void compassToMagneticAndBackIsTheSameHeading(
      @ForAll("tables") DeviationTable table, @ForAll("angles") double compass) {
    CompassBearing start = CompassBearing.ofDegrees(compass);
    double error = start.turnDegreesTo(table.toCompass(table.toMagnetic(start)));
    assertEquals(0.0, error, SOLVED_DEGREES / (1.0 - table.steepestFall()));
  }

  @Property(seed = Seeds.SEED, tries = 100)
  void theCurveAndItsSlopeRunOnThroughNorthAndEveryHeading(
      @ForAll("tables") DeviationTable table, @ForAll("angles") double near) {
    double tiny = 1e-7;
    for (double heading : new double[] {0.0, near, Math.rint(near / 45.0) * 45.0}) {
      double before = table.deviationDegreesEast(heading - tiny);
      double at = table.deviationDegreesEast(heading);
      double after = table.deviationDegreesEast(heading + tiny);
      assertEquals(at, before, 1e-6);
      assertEquals(at - before, after - at, 1e-11);
    }
  }

  @Property(seed = Seeds.SEED, tries = 100)
  void noFallIsSteeperThanTheTableSays(@ForAll("tables") DeviationTable table) {
    double step = 0.5;
    for (double heading = 0.0; heading < 360.0; heading += step) {
      double fall =
          (table.deviationDegreesEast(heading) - table.deviationDegreesEast(heading + step)) / step;
      assertTrue(fall <= table.steepestFall() + 1e-9);
    }
  }

  @Property(seed = Seeds.SEED, tries = 200)
  void aSwingWithoutErrorsGivesBackItsCoefficients(
      @ForAll("coefficients") DeviationCoefficients truth, @ForAll("starts") double start) {
    List<HeadingDeviation> sights = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      double heading = start + i * 45.0 + (i % 3) * 4.0;
      sights.add(
          new HeadingDeviation(
              CompassBearing.ofDegrees(heading),
              Deviation.ofDegreesEast(truth.degreesEast(heading))));
    }
    SwingFit fit = SwingFit.of(sights);
    assertEquals(truth.a(), fit.coefficients().a(), 1e-10);
    assertEquals(truth.b(), fit.coefficients().b(), 1e-10);
    assertEquals(truth.c(), fit.coefficients().c(), 1e-10);
    assertEquals(truth.d(), fit.coefficients().d(), 1e-10);
    assertEquals(truth.e(), fit.coefficients().e(), 1e-10);
    assertEquals(SwingVerdict.GOOD, fit.verdict());
    assertEquals(0.0, fit.scatterDegrees(), 1e-10);
  }

  /** The normal equations: what is left over has no part in any of the five shapes. */
  @Property(seed = Seeds.SEED, tries = 100)
  void residualsAreAtRightAnglesToEveryShape(
      @ForAll("coefficients") DeviationCoefficients truth, @ForAll("noise") List<Double> noise) {
    List<HeadingDeviation> sights = new ArrayList<>();
    for (int i = 0; i < noise.size(); i++) {
      double heading = i * 360.0 / noise.size() + noise.get(i);
      sights.add(
          new HeadingDeviation(
              CompassBearing.ofDegrees(heading),
              Deviation.ofDegreesEast(truth.degreesEast(heading) + noise.get(i))));
    }
    SwingFit fit = SwingFit.of(sights);
    double[] sums = new double[5];
    for (int i = 0; i < sights.size(); i++) {
      double heading = Math.toRadians(sights.get(i).heading().degrees());
      double residual = fit.residualDegrees().get(i);
      sums[0] += residual;
      sums[1] += residual * Math.sin(heading);
      sums[2] += residual * Math.cos(heading);
      sums[3] += residual * Math.sin(2 * heading);
      sums[4] += residual * Math.cos(2 * heading);
    }
    for (double sum : sums) {
      assertEquals(0.0, sum, 1e-9);
    }
  }

  @Provide
  Arbitrary<DeviationTable> tables() {
    Arbitrary<DeviationTable> lines =
        Arbitraries.doubles()
            .between(-8.0, 8.0)
            .ofScale(6)
            .list()
            .ofSize(8)
            .map(
                deviations -> {
                  List<HeadingDeviation> entries = new ArrayList<>();
                  for (int i = 0; i < deviations.size(); i++) {
                    entries.add(
                        new HeadingDeviation(
                            CompassBearing.ofDegrees(i * 45.0),
                            Deviation.ofDegreesEast(deviations.get(i))));
                  }
                  return DeviationTable.through(entries);
                });
    return Arbitraries.oneOf(lines, coefficients().map(DeviationTable::of));
  }

  @Provide
  Arbitrary<DeviationCoefficients> coefficients() {
    Arbitrary<Double> small = Arbitraries.doubles().between(-6.0, 6.0).ofScale(6);
    return Combinators.combine(small, small, small, small, small).as(DeviationCoefficients::new);
  }

  @Provide
  Arbitrary<Double> angles() {
    return Arbitraries.oneOf(
        Arbitraries.of(0.0, Math.nextDown(360.0), 180.0, 1e-300),
        Arbitraries.doubles().between(0.0, 359.999).ofScale(9));
  }

  @Provide
  Arbitrary<Double> starts() {
    return Arbitraries.doubles().between(0.0, 45.0).ofScale(6);
  }

  @Provide
  Arbitrary<List<Double>> noise() {
    return Arbitraries.doubles().between(-3.0, 3.0).ofScale(6).list().ofMinSize(7).ofMaxSize(16);
  }
}
