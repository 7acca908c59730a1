package org.ferryglide.nav.fix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;

/** The error that all bearings share, against a least-squares solution of Commons Math. */
class SharedErrorTest {
  private static final Position HERE = Position.ofDegrees(56.3, -6.2);

  /** A step east or north by which bearings are differenced, metres. */
  private static final double STEP = 1.0;

  /** Bearings are differenced over a step of a metre, of marks a mile off or more. */
  private static final double DIFFERENCED = 1e-3;

  private final Random random = new Random(41);

  @Test
  void itIsThatOfLeastSquaresAndSoIsItsOwnError() {
    for (int i = 0; i < 40; i++) {
      List<PositionLine> lines = lines(4 + random.nextInt(3), 360.0, 4.0 * random.nextGaussian());
      double[] expected = slow(lines);
      assertEquals(
          expected[0], found(lines, 0.0), DIFFERENCED * Math.max(1.0, Math.abs(expected[0])));
      double ratio = Math.abs(expected[0]) / expected[1];
      assertTrue(
          Double.isFinite(found(lines, ratio * (1.0 - DIFFERENCED))), () -> "below " + ratio);
      assertTrue(Double.isNaN(found(lines, ratio * (1.0 + DIFFERENCED))), () -> "above " + ratio);
    }
  }

  /** With marks close together hardly anything is known of it, yet it is told. */
  @Test
  void itIsToldWhereItIsPoorlyKnown() {
    for (int i = 0; i < 40; i++) {
      List<PositionLine> lines = lines(4, 25.0, 4.0);
      double[] expected = slow(lines);
      assertEquals(expected[0], found(lines, 0.0), DIFFERENCED * expected[1]);
    }
  }

  private List<PositionLine> lines(int count, double sector, double shared) {
    List<PositionLine> lines = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double azimuth = sector * (i + random.nextDouble()) / count;
      double miles = 1.5 + 3.0 * random.nextDouble();
      Position mark =
          GeodesicLeg.from(HERE, TrueBearing.ofDegrees(azimuth), Distance.ofNauticalMiles(miles))
              .end();
      double bearing = azimuth + shared + 0.1 * random.nextGaussian();
      lines.add(
          BearingLine.of(
              "mark", mark, TrueBearing.ofDegrees(bearing), 1.0 + 3.0 * random.nextDouble()));
    }
    return lines;
  }

  /** What the code answers, if it is more than so many standard deviations; NaN if it is not. */
  private static double found(List<PositionLine> lines, double standardDeviations) {
    LeastSquares squares = solved(lines);
    return SharedError.significant(
            squares.equations(), squares.equationsByThemselves(), standardDeviations)
        .orElse(Double.NaN);
  }

  private static LeastSquares solved(List<PositionLine> lines) {
    LeastSquares squares = new LeastSquares(lines, null);
    assertTrue(squares.solveFrom(HERE.latitudeDegrees(), HERE.longitudeDegrees()));
    return squares;
  }

  /**
   * The shared error and its standard deviation about the same place: bearings differenced, solved
   * by Commons Math.
   */
  private static double[] slow(List<PositionLine> lines) {
    LeastSquares squares = solved(lines);
    Position place = Position.ofDegrees(squares.lat(), squares.lon());
    RealMatrix design = new Array2DRowRealMatrix(lines.size(), 3);
    RealVector misfit = new ArrayRealVector(lines.size());
    Position east =
        GeodesicLeg.from(place, TrueBearing.ofDegrees(90), Distance.ofMetres(STEP)).end();
    Position north =
        GeodesicLeg.from(place, TrueBearing.ofDegrees(0), Distance.ofMetres(STEP)).end();
    for (int i = 0; i < lines.size(); i++) {
      BearingLine line = (BearingLine) lines.get(i);
      double sigma = line.standardDeviationDegrees();
      TrueBearing here = bearing(place, line);
      design.setEntry(i, 0, here.turnDegreesTo(bearing(east, line)) / STEP / sigma);
      design.setEntry(i, 1, here.turnDegreesTo(bearing(north, line)) / STEP / sigma);
      design.setEntry(i, 2, 1.0 / sigma);
      misfit.setEntry(i, here.turnDegreesTo(line.bearing()) / sigma);
    }
    RealVector solution = new QRDecomposition(design).getSolver().solve(misfit);
    RealMatrix covariance =
        new QRDecomposition(design.transpose().multiply(design), 0.0).getSolver().getInverse();
    return new double[] {solution.getEntry(2), Math.sqrt(covariance.getEntry(2, 2))};
  }

  private static TrueBearing bearing(Position from, BearingLine line) {
    return GeodesicLeg.between(from, line.mark()).initialCourse();
  }
}
