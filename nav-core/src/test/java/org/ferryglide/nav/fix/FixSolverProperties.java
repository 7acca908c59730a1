package org.ferryglide.nav.fix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.Covariance;
import org.ferryglide.testing.Seeds;

/** Laws that hold for every fix. */
class FixSolverProperties {
  /** Two solutions of mirrored or turned problems differ by rounding only, metres. */
  private static final double ROUNDING_METRES = 1e-5;

  /** Bearings of marks about a place, each with a normal error of a degree or so. */
  private static List<BearingLine> bearings(Position truth, long seed, int count) {
    Random random = new Random(seed);
    double first = random.nextDouble() * 360;
    List<BearingLine> lines = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Position mark =
          GeodesicLeg.from(
                  truth,
                  TrueBearing.ofDegrees(first + 70 * i),
                  Distance.ofNauticalMiles(0.5 + 8 * random.nextDouble()))
              .end();
      TrueBearing exact = GeodesicLeg.between(truth, mark).initialCourse();
      lines.add(
          BearingLine.of(
              "mark", mark, exact.turnedBy(1.5 * random.nextGaussian()), 1 + random.nextInt(4)));
    }
    return lines;
  }

  private static Fix solve(List<BearingLine> lines) {
    return FixSolver.standard().solve(lines).orElseThrow();
  }

  @Property(seed = Seeds.SEED, tries = 200)
  void anotherBearingNeverEnlargesTheEllipse(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @DoubleRange(min = -70, max = 70) double latitude,
      @ForAll @DoubleRange(min = 0, max = 359) double direction) {
    List<BearingLine> all = bearings(Position.ofDegrees(latitude, 5), seed, 4);
    Position truth = Position.ofDegrees(latitude, 5);
    List<BearingLine> exact = new ArrayList<>();
    for (BearingLine line : all) { // exact ones, so that both fixes are at the same place
      exact.add(
          BearingLine.of(
              "mark",
              line.mark(),
              GeodesicLeg.between(truth, line.mark()).initialCourse(),
              line.standardDeviationDegrees()));
    }
    TrueBearing toward = TrueBearing.ofDegrees(direction);
    double last = Double.POSITIVE_INFINITY;
    for (int n = 2; n <= 4; n++) {
      double sigma =
          solve(exact.subList(0, n)).covariance().standardDeviationAlong(toward).metres();
      assertTrue(sigma <= last * (1 + 1e-9));
      last = sigma;
    }
  }

  /** The earth is round: the same marks further east give the same fix further east. */
  @Property(seed = Seeds.SEED, tries = 200)
  void aFixTurnsWithTheEarth(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @DoubleRange(min = -70, max = 70) double latitude,
      @ForAll @DoubleRange(min = -180, max = 180) double turn) {
    List<BearingLine> lines = bearings(Position.ofDegrees(latitude, 0), seed, 3);
    List<BearingLine> turned = new ArrayList<>();
    for (BearingLine line : lines) {
      turned.add(line.toMark("mark", turned(line.mark(), turn)));
    }
    Fix here = solve(lines);
    Fix there = solve(turned);
    assertSame(turned(here.position(), turn), there.position());
    assertEquals(1.0, there.covariance().eastVariance() / here.covariance().eastVariance(), 1e-6);
  }

  /** Seen in a mirror along the equator, everything is the same but for north and south. */
  @Property(seed = Seeds.SEED, tries = 200)
  void aFixIsMirroredWithItsMarks(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
      @ForAll @DoubleRange(min = -70, max = 70) double latitude) {
    List<BearingLine> lines = bearings(Position.ofDegrees(latitude, 5), seed, 3);
    List<BearingLine> mirrored = new ArrayList<>();
    for (BearingLine line : lines) {
      mirrored.add(
          BearingLine.of(
              "mark",
              mirrored(line.mark()),
              TrueBearing.ofDegrees(180 - line.bearing().degrees()),
              line.standardDeviationDegrees()));
    }
    Fix here = solve(lines);
    Fix there = solve(mirrored);
    assertSame(mirrored(here.position()), there.position());
    Covariance a = here.covariance();
    Covariance b = there.covariance();
    double rounding = 1e-6 * (a.eastVariance() + a.northVariance());
    assertEquals(a.northVariance(), b.northVariance(), rounding);
    assertEquals(-a.eastNorthCovariance(), b.eastNorthCovariance(), rounding);
    assertEquals(here.agreement(), there.agreement(), 1e-6);
  }

  private static Position mirrored(Position position) {
    return Position.ofDegrees(-position.latitudeDegrees(), position.longitudeDegrees());
  }

  private static Position turned(Position position, double degrees) {
    return Position.ofDegrees(
        position.latitudeDegrees(), Math.IEEEremainder(position.longitudeDegrees() + degrees, 360));
  }

  private static void assertSame(Position expected, Position found) {
    assertEquals(0.0, GeodesicLeg.between(expected, found).length().metres(), ROUNDING_METRES);
  }
}
