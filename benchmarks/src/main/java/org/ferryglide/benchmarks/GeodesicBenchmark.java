package org.ferryglide.benchmarks;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import net.sf.geographiclib.GeodesicMask;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.geodesy.Geodesics;
import org.ferryglide.nav.geodesy.LegComparisons;
import org.ferryglide.nav.geodesy.RhumbLines;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What do a short geodesic and a comparison with the rhumb line cost, one at a time and over
 * arrays, beside the geodesic of GeographicLib-Java on the same 1024 legs?
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class GeodesicBenchmark extends InFixedHeap {
  private static final int LEGS = 1024;

  /** Two solutions of 15 nanometres each. */
  private static final double AGREEMENT_METRES = 30e-9;

  private final double[] lat1 = new double[LEGS];
  private final double[] lon1 = new double[LEGS];
  private final double[] lat2 = new double[LEGS];
  private final double[] lon2 = new double[LEGS];
  private final double[] course = new double[LEGS];
  private final double[] metres = new double[LEGS];
  private final double[] out = new double[LegComparisons.WIDTH_WITH_SEPARATION * LEGS];

  /** The same legs many times over, for the array forms, whose room then costs little a row. */
  private static final int ROWS = 128 * LEGS;

  private final double[][] rows = new double[6][ROWS];
  private final double[] rowsOut = new double[LegComparisons.WIDTH_WITH_SEPARATION * ROWS];
  private int next;

  /** Draws legs of 1 to 20 km between 35 and 70 degrees of latitude; both solvers must agree. */
  @Setup
  public void drawLegs() {
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < LEGS; i++) {
      lat1[i] = 35 + 35 * random.nextDouble();
      lon1[i] = 360 * random.nextDouble() - 180;
      course[i] = 360 * random.nextDouble();
      metres[i] = 1000 + 19000 * random.nextDouble();
      GeodesicData end = Geodesic.WGS84.Direct(lat1[i], lon1[i], course[i], metres[i]);
      lat2[i] = end.lat2;
      lon2[i] = end.lon2;
      Geodesics.inverse(lat1[i], lon1[i], lat2[i], lon2[i], out, 0);
      agree(out[Geodesics.LENGTH] - metres[i]);
      agree(metres[i] * Math.toRadians(out[Geodesics.INITIAL_COURSE] - course[i]));
      Geodesics.direct(lat1[i], lon1[i], course[i], metres[i], out, 0);
      agree(6378137.0 * Math.toRadians(out[Geodesics.LATITUDE] - lat2[i]));
    }
    for (int i = 0; i < ROWS; i++) {
      rows[0][i] = lat1[i % LEGS];
      rows[1][i] = lon1[i % LEGS];
      rows[2][i] = lat2[i % LEGS];
      rows[3][i] = lon2[i % LEGS];
      rows[4][i] = course[i % LEGS];
      rows[5][i] = metres[i % LEGS];
    }
    rowsAgree();
    directRowsAgree(directOfRow(), true);
    directRowsAgree(rhumbDirectOfRow(), false);
  }

  /** Ends of rows and of single calls must agree. */
  private void directRowsAgree(double[] ends, boolean geodesic) {
    int width = geodesic ? Geodesics.WIDTH : RhumbLines.WIDTH;
    for (int i = 0; i < LEGS; i++) {
      if (geodesic) {
        Geodesics.direct(lat1[i], lon1[i], course[i], metres[i], out, 0);
      } else {
        RhumbLines.direct(lat1[i], lon1[i], course[i], metres[i], out, 0);
      }
      agree(6378137.0 * Math.toRadians(out[0] - ends[width * i]));
      agree(6378137.0 * Math.toRadians(Math.IEEEremainder(out[1] - ends[width * i + 1], 360.0)));
    }
  }

  /** Rows of arrays and single calls must agree. */
  private void rowsAgree() {
    comparisonOfRow();
    for (int i = 0; i < ROWS; i++) {
      LegComparisons.compare(
          Ellipsoid.WGS84, rows[0][i], rows[1][i], rows[2][i], rows[3][i], out, 0);
      for (int k : new int[] {LegComparisons.RHUMB_LENGTH, LegComparisons.GEODESIC_LENGTH}) {
        agree(out[k] - rowsOut[LegComparisons.WIDTH * i + k]);
      }
      for (int k : new int[] {LegComparisons.RHUMB_COURSE, LegComparisons.FINAL_COURSE}) {
        double turn = out[k] - rowsOut[LegComparisons.WIDTH * i + k];
        agree(metres[i % LEGS] * Math.toRadians(Math.IEEEremainder(turn, 360.0)));
      }
    }
  }

  private static void agree(double difference) {
    if (!(Math.abs(difference) <= AGREEMENT_METRES)) {
      throw new IllegalStateException("the solvers differ by " + difference + " m");
    }
  }

  private int next() {
    next = (next + 1) & (LEGS - 1);
    return next;
  }

  /** Length and both courses. */
  @Benchmark
  public double[] inverse() {
    int i = next();
    Geodesics.inverse(lat1[i], lon1[i], lat2[i], lon2[i], out, 0);
    return out;
  }

  /** The same, GeographicLib-Java. */
  @Benchmark
  public GeodesicData peerInverse() {
    int i = next();
    return Geodesic.WGS84.Inverse(
        lat1[i], lon1[i], lat2[i], lon2[i], GeodesicMask.DISTANCE | GeodesicMask.AZIMUTH);
  }

  /** Place and course of the end. */
  @Benchmark
  public double[] direct() {
    int i = next();
    Geodesics.direct(lat1[i], lon1[i], course[i], metres[i], out, 0);
    return out;
  }

  /** The same, GeographicLib-Java. */
  @Benchmark
  public GeodesicData peerDirect() {
    int i = next();
    return Geodesic.WGS84.Direct(
        lat1[i],
        lon1[i],
        course[i],
        metres[i],
        GeodesicMask.LATITUDE | GeodesicMask.LONGITUDE | GeodesicMask.AZIMUTH);
  }

  /** Length and both courses, a row of an array. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] inverseOfRow() {
    Geodesics.inverse(Ellipsoid.WGS84, rows[0], rows[1], rows[2], rows[3], 0, ROWS, rowsOut, 0);
    return rowsOut;
  }

  /** Course and length of the rhumb line, a row of an array. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] rhumbInverseOfRow() {
    RhumbLines.inverse(Ellipsoid.WGS84, rows[0], rows[1], rows[2], rows[3], 0, ROWS, rowsOut, 0);
    return rowsOut;
  }

  /** Rhumb line and geodesic without the separation, a row of an array. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] comparisonOfRow() {
    LegComparisons.compare(
        Ellipsoid.WGS84, rows[0], rows[1], rows[2], rows[3], 0, ROWS, rowsOut, 0);
    return rowsOut;
  }

  /** Rhumb line and geodesic, lengths and courses. */
  @Benchmark
  public double[] comparison() {
    int i = next();
    LegComparisons.compare(Ellipsoid.WGS84, lat1[i], lon1[i], lat2[i], lon2[i], out, 0);
    return out;
  }

  /** The same with the greatest separation. */
  @Benchmark
  public double[] comparisonWithSeparation() {
    int i = next();
    LegComparisons.compareWithSeparation(
        Ellipsoid.WGS84, lat1[i], lon1[i], lat2[i], lon2[i], out, 0);
    return out;
  }

  /** The same, a row of an array. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] comparisonWithSeparationOfRow() {
    LegComparisons.compareWithSeparation(
        Ellipsoid.WGS84, rows[0], rows[1], rows[2], rows[3], 0, ROWS, rowsOut, 0);
    return rowsOut;
  }

  /** The comparison without the separation, a row when all processors share the work. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] comparisonOfRowInParallel() {
    LegComparisons.compareInParallel(
        Ellipsoid.WGS84, rows[0], rows[1], rows[2], rows[3], 0, ROWS, rowsOut, 0);
    return rowsOut;
  }

  /** The comparison with the separation, likewise. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] comparisonWithSeparationOfRowInParallel() {
    LegComparisons.compareWithSeparationInParallel(
        Ellipsoid.WGS84, rows[0], rows[1], rows[2], rows[3], 0, ROWS, rowsOut, 0);
    return rowsOut;
  }

  /** The geodesic, likewise. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] inverseOfRowInParallel() {
    Geodesics.inverseInParallel(
        Ellipsoid.WGS84, rows[0], rows[1], rows[2], rows[3], 0, ROWS, rowsOut, 0);
    return rowsOut;
  }

  /** The rhumb line, likewise. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] rhumbInverseOfRowInParallel() {
    RhumbLines.inverseInParallel(
        Ellipsoid.WGS84, rows[0], rows[1], rows[2], rows[3], 0, ROWS, rowsOut, 0);
    return rowsOut;
  }

  /** Place and course of the end, a row of an array. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] directOfRow() {
    Geodesics.direct(Ellipsoid.WGS84, rows[0], rows[1], rows[4], rows[5], 0, ROWS, rowsOut, 0);
    return rowsOut;
  }

  /** The end of the rhumb line, a row of an array. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] rhumbDirectOfRow() {
    RhumbLines.direct(Ellipsoid.WGS84, rows[0], rows[1], rows[4], rows[5], 0, ROWS, rowsOut, 0);
    return rowsOut;
  }

  /** Place and course of the end, a row when all processors share the work. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] directOfRowInParallel() {
    Geodesics.directInParallel(
        Ellipsoid.WGS84, rows[0], rows[1], rows[4], rows[5], 0, ROWS, rowsOut, 0);
    return rowsOut;
  }

  /** The end of the rhumb line, likewise. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] rhumbDirectOfRowInParallel() {
    RhumbLines.directInParallel(
        Ellipsoid.WGS84, rows[0], rows[1], rows[4], rows[5], 0, ROWS, rowsOut, 0);
    return rowsOut;
  }
}
