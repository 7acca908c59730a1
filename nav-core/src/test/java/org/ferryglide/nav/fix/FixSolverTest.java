package org.ferryglide.nav.fix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.ferryglide.nav.bearing.CompassBearing;
import org.ferryglide.nav.bearing.Deviation;
import org.ferryglide.nav.bearing.MagneticBearing;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.Covariance;
import org.ferryglide.nav.reckon.EstimatedPosition;
import org.junit.jupiter.api.Test;

class FixSolverTest {
  /** How near exact lines must lead. */
  private static final double ONE_MILLIMETRE = 0.001;

  /** What an independent least-squares answer may differ by; the worst of 80 differs by 4 µm. */
  private static final double HUNDREDTH_OF_A_MILLIMETRE = 1e-5;

  private static final Position HERE = Position.ofDegrees(56.3, -6.2);

  private static Position off(Position from, double bearing, double nauticalMiles) {
    return GeodesicLeg.from(
            from, TrueBearing.ofDegrees(bearing), Distance.ofNauticalMiles(nauticalMiles))
        .end();
  }

  private static TrueBearing toward(Position from, Position mark) {
    return GeodesicLeg.between(from, mark).initialCourse();
  }

  private static double metres(Position a, Position b) {
    return GeodesicLeg.between(a, b).length().metres();
  }

  private static BearingLine exactBearing(Position from, double bearing, double miles) {
    Position mark = off(from, bearing, miles);
    return BearingLine.of("mark " + Math.round(bearing), mark, toward(from, mark), 3.0);
  }

  private static BearingLine sharpBearing(Position from, double bearing, double miles) {
    Position mark = off(from, bearing, miles);
    return BearingLine.of("mark " + Math.round(bearing), mark, toward(from, mark), 0.3);
  }

  @Test
  void exactBearingsReturnTheTruePlaceAnywhere() {
    Random random = new Random(1);
    for (int i = 0; i < 300; i++) {
      Position truth =
          Position.ofDegrees(random.nextDouble() * 150 - 75, random.nextDouble() * 360 - 180);
      double first = random.nextDouble() * 360;
      List<PositionLine> lines = new ArrayList<>();
      for (int k = 0; k < 2 + random.nextInt(3); k++) {
        lines.add(exactBearing(truth, first + k * 65, 0.2 + 20 * random.nextDouble()));
      }
      Fix fix = FixSolver.standard().solve(lines).orElseThrow();
      assertEquals(0.0, metres(truth, fix.position()), ONE_MILLIMETRE);
      assertTrue(fix.cutDegrees() > 64.0);
    }
  }

  @Test
  void exactLinesOfEveryKindReturnTheTruePlace() {
    Random random = new Random(2);
    for (int i = 0; i < 200; i++) {
      Position truth =
          Position.ofDegrees(random.nextDouble() * 150 - 75, random.nextDouble() * 360 - 180);
      double angle = random.nextDouble() * 360;
      Position front = off(truth, angle, 1.5);
      Position rear = off(truth, angle, 4.0);
      Position circle = off(truth, angle + 100, 3.0);
      Position onLine = off(truth, angle + 40, 2.0);
      TrueBearing run = TrueBearing.ofDegrees(angle + 10);
      Position then = RhumbLeg.from(truth, run.reciprocal(), Distance.ofNauticalMiles(5)).end();
      List<PositionLine> kinds =
          List.of(
              TransitLine.of("transit", front, rear),
              DistanceCircle.of(
                  "off", circle, Distance.ofMetres(metres(truth, circle)), Distance.ofMetres(50)),
              StraightLine.through("line", onLine, truth, Distance.ofMetres(20)),
              TransferredLine.between(
                  exactBearing(then, angle + 200, 3.0),
                  then,
                  truth,
                  Covariance.ofCircle(Distance.ofMetres(100))),
              exactBearing(truth, angle + 70, 6.0));
      Position rough = off(truth, random.nextDouble() * 360, 0.2);
      for (int a = 0; a < kinds.size(); a++) {
        for (int b = a + 1; b < kinds.size(); b++) {
          List<PositionLine> two = List.of(kinds.get(a), kinds.get(b));
          Outcome<Fix, NoFix> outcome = FixSolver.standard().withNear(rough).solve(two);
          assertTrue(outcome.isSolved(), () -> two + " " + outcome);
          assertEquals(
              0.0,
              metres(truth, outcome.orElseThrow().position()),
              ONE_MILLIMETRE,
              () -> two.toString());
        }
      }
      Fix all = FixSolver.standard().solve(kinds).orElseThrow();
      assertEquals(0.0, metres(truth, all.position()), ONE_MILLIMETRE);
      assertEquals(1.0, all.agreement(), 1e-6);
    }
  }

  @Test
  void noisyFixesEqualAnIndependentLeastSquaresAnswer() throws IOException {
    List<String> bearings = lines("noisy_bearings.csv");
    for (String answer : lines("noisy_fixes.csv")) {
      String[] expected = answer.split(",", -1);
      List<PositionLine> observed = new ArrayList<>();
      for (String bearing : bearings) {
        String[] parts = bearing.split(",", -1);
        if (parts[0].equals(expected[0])) {
          observed.add(
              BearingLine.of(
                  "m",
                  Position.ofDegrees(Double.parseDouble(parts[1]), Double.parseDouble(parts[2])),
                  TrueBearing.ofDegrees(Double.parseDouble(parts[3])),
                  Double.parseDouble(parts[4])));
        }
      }
      Position place =
          Position.ofDegrees(Double.parseDouble(expected[1]), Double.parseDouble(expected[2]));
      Fix fix = FixSolver.standard().solve(observed).orElseThrow();
      assertEquals(
          0.0,
          metres(place, fix.position()),
          HUNDREDTH_OF_A_MILLIMETRE,
          () -> "case " + expected[0]);
    }
  }

  private static List<String> lines(String name) throws IOException {
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(
                Objects.requireNonNull(FixSolverTest.class.getResourceAsStream(name)),
                StandardCharsets.UTF_8))) {
      return reader.lines().filter(line -> !line.startsWith("#")).toList();
    }
  }

  /**
   * The first-order covariance from derivatives taken by moving the observer a metre either way.
   */
  @Test
  void covarianceEqualsFiniteDifferences() {
    Random random = new Random(3);
    for (int i = 0; i < 100; i++) {
      Position truth =
          Position.ofDegrees(random.nextDouble() * 140 - 70, random.nextDouble() * 360 - 180);
      List<PositionLine> observed = new ArrayList<>();
      double first = random.nextDouble() * 360;
      for (int k = 0; k < 3; k++) {
        BearingLine exact = exactBearing(truth, first + k * 70, 0.5 + 12 * random.nextDouble());
        observed.add(exact.turnedBy(2.0 * random.nextGaussian()));
      }
      Fix fix = FixSolver.standard().solve(observed).orElseThrow();
      double nee = 0;
      double nnn = 0;
      double nen = 0;
      for (PositionLine line : observed) {
        BearingLine bearing = (BearingLine) line;
        double east =
            (toward(off(fix.position(), 90, 1 / 1852.0), bearing.mark()).degrees()
                    - toward(off(fix.position(), 270, 1 / 1852.0), bearing.mark()).degrees())
                / 2;
        double north =
            (toward(off(fix.position(), 0, 1 / 1852.0), bearing.mark()).degrees()
                    - toward(off(fix.position(), 180, 1 / 1852.0), bearing.mark()).degrees())
                / 2;
        nee += east * east / 9;
        nnn += north * north / 9;
        nen += east * north / 9;
      }
      double determinant = nee * nnn - nen * nen;
      double scale = (nnn + nee) / determinant;
      double oneInAThousand = 0.001;
      assertEquals(nnn / determinant, fix.covariance().eastVariance(), oneInAThousand * scale);
      assertEquals(nee / determinant, fix.covariance().northVariance(), oneInAThousand * scale);
      assertEquals(
          -nen / determinant, fix.covariance().eastNorthCovariance(), oneInAThousand * scale);
    }
  }

  /**
   * Source: two-bearing error formula, sigma √(d1² + d2²) / sin(cut); 2 NM off, 3 degrees. A tenth
   * of that here, since 3 degrees at a cut of 10 leave no bounded region.
   */
  @Test
  void twoBearingsHaveTheErrorOfTheFormula() {
    double[][] cutAndMiles = {{90, 0.148}, {30, 0.296}, {10, 0.853}};
    for (double[] expected : cutAndMiles) {
      Fix fix =
          FixSolver.standard()
              .solve(
                  List.of(sharpBearing(HERE, 40, 2.0), sharpBearing(HERE, 40 + expected[0], 2.0)))
              .orElseThrow();
      double halfAPrintedThousandth = 0.0005;
      double turnOfTrueNorth = 0.003 * expected[1]; // left out of the formula
      assertEquals(
          expected[1],
          10.0 * fix.covariance().rootMeanSquare().nauticalMiles(),
          halfAPrintedThousandth + turnOfTrueNorth);
    }
  }

  @Test
  void poorCutsAreFlagged() {
    Fix poor =
        FixSolver.standard()
            .solve(List.of(exactBearing(HERE, 10, 2.0), exactBearing(HERE, 32, 3.0)))
            .orElseThrow();
    assertEquals(List.of("fix.poor-cut"), poor.notes().stream().map(Note::code).toList());
    Fix good =
        FixSolver.standard()
            .solve(List.of(exactBearing(HERE, 10, 2.0), exactBearing(HERE, 75, 3.0)))
            .orElseThrow();
    assertEquals(List.of(), good.notes());
    assertTrue(good.cockedHat().isEmpty());
  }

  @Test
  void compassBearingsAreTurnedByDeviationAndVariation() {
    Variation variation = Variation.ofDegreesWest(4);
    Deviation deviation = Deviation.ofDegreesEast(2);
    BearingLine line =
        BearingLine.ofCompass("a", HERE, CompassBearing.ofDegrees(50), deviation, variation, 3);
    assertEquals(48.0, line.bearing().degrees(), 1e-12);
    assertEquals(
        line, BearingLine.ofMagnetic("a", HERE, MagneticBearing.ofDegrees(52), variation, 3));
    assertEquals(variation, line.variation().orElseThrow());
  }

  @Test
  void parallelLinesAreAnAnswer() {
    Position ahead = off(HERE, 90, 2);
    Position behindIt = off(ahead, toward(HERE, ahead).degrees(), 3);
    Outcome<Fix, NoFix> outcome =
        FixSolver.standard()
            .solve(
                List.of(
                    BearingLine.of("near", ahead, TrueBearing.ofDegrees(90), 3),
                    BearingLine.of("far", behindIt, TrueBearing.ofDegrees(90), 3)));
    assertEquals(NoFix.Reason.PARALLEL, outcome.why().orElseThrow().reason());
  }

  @Test
  void bearingsThatMeetAsternNameTheCulprit() {
    BearingLine reversed = exactBearing(HERE, 100, 3).turnedBy(180);
    Outcome<Fix, NoFix> outcome =
        FixSolver.standard().solve(List.of(exactBearing(HERE, 20, 2), reversed));
    assertEquals(NoFix.Reason.MEET_ASTERN, outcome.why().orElseThrow().reason());
    assertEquals(
        "the bearings meet only where that of mark 100 points away from its mark; was it read at"
            + " the wrong end?",
        outcome.why().orElseThrow().message());
  }

  @Test
  void circlesThatDoNotMeetHaveNoFix() {
    Position a = off(HERE, 0, 4);
    Outcome<Fix, NoFix> outcome =
        FixSolver.standard()
            .withNear(off(HERE, 100, 0.3))
            .solve(
                List.of(
                    DistanceCircle.of("a", a, Distance.ofNauticalMiles(1), Distance.ofMetres(50)),
                    DistanceCircle.of(
                        "b", HERE, Distance.ofNauticalMiles(2), Distance.ofMetres(50))));
    assertTrue(outcome.solved().isEmpty(), outcome.toString());
  }

  @Test
  void twoDistancesNeedARoughPositionAndThenSaySo() {
    Position a = off(HERE, 45, 2);
    Position b = off(HERE, 135, 2);
    List<PositionLine> circles =
        List.of(
            DistanceCircle.of("a", a, Distance.ofMetres(metres(HERE, a)), Distance.ofMetres(50)),
            DistanceCircle.of("b", b, Distance.ofMetres(metres(HERE, b)), Distance.ofMetres(50)));
    assertEquals(
        NoFix.Reason.NO_ROUGH_POSITION,
        FixSolver.standard().solve(circles).why().orElseThrow().reason());
    Fix west = FixSolver.standard().withNear(off(HERE, 300, 0.5)).solve(circles).orElseThrow();
    assertEquals(0.0, metres(HERE, west.position()), ONE_MILLIMETRE);
    assertEquals("fix.two-places", west.notes().get(0).code());
    Fix east = FixSolver.standard().withNear(off(HERE, 90, 3)).solve(circles).orElseThrow();
    assertEquals(2 * Math.sqrt(2), metres(HERE, east.position()) / 1852, 0.001);
  }

  @Test
  void aBearingAndADistanceOfOneMarkNeedNoRoughPosition() {
    Position mark = off(HERE, 210, 1.3);
    Fix fix =
        FixSolver.standard()
            .solve(
                List.of(
                    BearingLine.of("m", mark, toward(HERE, mark), 2),
                    DistanceCircle.of(
                        "m", mark, Distance.ofMetres(metres(HERE, mark)), Distance.ofCables(1))))
            .orElseThrow();
    assertEquals(0.0, metres(HERE, fix.position()), ONE_MILLIMETRE);
    assertEquals(90.0, fix.cutDegrees(), 0.1);
    assertEquals(List.of(), fix.notes());
  }

  @Test
  void oneLineAloneIsNoFixButImprovesAReckonedPosition() {
    List<PositionLine> one = List.of(exactBearing(HERE, 0, 2));
    assertEquals(
        NoFix.Reason.TOO_FEW_LINES, FixSolver.standard().solve(one).why().orElseThrow().reason());
    EstimatedPosition reckoned = EstimatedPosition.of(off(HERE, 90, 0.5), Distance.ofMetres(800));
    Fix fix = FixSolver.standard().withPrior(reckoned).solve(one).orElseThrow();
    assertTrue(metres(HERE, fix.position()) < 100);
    assertEquals(
        800, fix.covariance().standardDeviationAlong(TrueBearing.ofDegrees(0)).metres(), 5);
    assertTrue(fix.covariance().standardDeviationAlong(TrueBearing.ofDegrees(90)).metres() < 200);
  }

  @Test
  void aPriorThatAdmitsNoErrorIsRefused() {
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class,
            () -> FixSolver.standard().withPrior(EstimatedPosition.exactly(HERE)));
    assertTrue(
        String.valueOf(refusal.getMessage())
            .startsWith("reckoned position must be uncertain in every direction"));
  }

  @Test
  void badValuesAreRefusedByName() {
    assertEquals(
        "standard deviation must be a finite number of degrees above 0, but was 0.0",
        assertThrows(
                IllegalArgumentException.class,
                () -> BearingLine.of("m", HERE, TrueBearing.ofDegrees(0), 0.0))
            .getMessage());
    assertEquals(
        "a fix needs at least one position line",
        assertThrows(IllegalArgumentException.class, () -> FixSolver.standard().solve(List.of()))
            .getMessage());
  }
}
