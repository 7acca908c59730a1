package org.ferryglide.benchmarks;

import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.ferryglide.nav.grid.GridPoint;
import org.ferryglide.nav.grid.GridPrecision;
import org.ferryglide.nav.grid.Hemisphere;
import org.ferryglide.nav.grid.MapGrid;
import org.ferryglide.nav.grid.Mgrs;
import org.ferryglide.nav.grid.UtmZone;
import org.ferryglide.nav.position.Position;
import org.locationtech.proj4j.CRSFactory;
import org.locationtech.proj4j.CoordinateTransform;
import org.locationtech.proj4j.CoordinateTransformFactory;
import org.locationtech.proj4j.ProjCoordinate;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What does a position to or from a map grid cost, convergence and scale included, beside proj4j,
 * which gives neither?
 *
 * <p>UTM is the projection alone, the British grid has its datum shift as well. Both sides work on
 * the same 1024 positions, whose answers are compared first.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class MapGridBenchmark extends InFixedHeap {
  private static final int POINTS = 1024;

  /** Seven parameters as both sides take them, to WGS84. */
  private static final String BRITISH =
      "+proj=tmerc +lat_0=49 +lon_0=-2 +k=0.9996012717 +x_0=400000 +y_0=-100000 +ellps=airy"
          + " +towgs84=446.448,-125.157,542.060,0.1502,0.2470,0.8421,-20.4894 +units=m";

  private static final String WGS84 = "+proj=longlat +datum=WGS84 +no_defs";

  /** Which grid. */
  @Param({"utm", "british"})
  public String grid = "utm";

  private final double[] latitudes = new double[POINTS];
  private final double[] longitudes = new double[POINTS];
  private final double[] eastings = new double[POINTS];
  private final double[] northings = new double[POINTS];
  private final double[] out = new double[4];

  /** The same positions many times over, for the array forms. */
  private static final int ROWS = 64 * POINTS;

  private final double[][] rows = new double[4][ROWS];
  private final double[] rowsOut = new double[MapGrid.WIDTH * ROWS];
  private Position[] positions = new Position[0];
  private int next;

  private MapGrid ours = MapGrid.britishNationalGrid();
  private CoordinateTransform toGrid = transform(WGS84, WGS84);
  private CoordinateTransform fromGrid = toGrid;
  private final ProjCoordinate in = new ProjCoordinate();
  private final ProjCoordinate result = new ProjCoordinate();

  /** Draws the positions and makes sure that both sides agree on them. */
  @Setup
  public void agree() {
    boolean utm = grid.equals("utm");
    String plane = utm ? "+proj=utm +zone=30 +datum=WGS84 +units=m" : BRITISH;
    toGrid = transform(WGS84, plane);
    fromGrid = transform(plane, WGS84);
    ours = utm ? MapGrid.utm(UtmZone.of(30, Hemisphere.NORTH)) : MapGrid.britishNationalGrid();

    double metres = utm ? 1e-6 : 1e-2; // the peer turns the signs of the shift instead of inverting
    positions = new Position[POINTS];
    Random random = new Random(1);
    for (int i = 0; i < POINTS; i++) {
      latitudes[i] = 50.0 + 9.0 * random.nextDouble();
      longitudes[i] = -6.0 + 6.0 * random.nextDouble();
      positions[i] = Position.ofDegrees(latitudes[i], longitudes[i]);
      ours.forward(latitudes[i], longitudes[i], out, 0);
      eastings[i] = out[0];
      northings[i] = out[1];
      in.setValue(longitudes[i], latitudes[i]);
      toGrid.transform(in, result);
      check(Math.hypot(result.x - eastings[i], result.y - northings[i]), metres);
      in.setValue(eastings[i], northings[i]);
      fromGrid.transform(in, result);
      ours.reverse(eastings[i], northings[i], out, 0);
      check(Math.hypot(result.y - out[0], result.x - out[1]) * 111e3, metres);
    }
    for (int i = 0; i < ROWS; i++) {
      rows[0][i] = latitudes[i % POINTS];
      rows[1][i] = longitudes[i % POINTS];
      rows[2][i] = eastings[i % POINTS];
      rows[3][i] = northings[i % POINTS];
    }
    rowsAgree(forwardOfRow(), eastings, northings, 0.0);
    rowsAgree(forwardOfRowInParallel(), eastings, northings, 0.0);
    rowsAgree(reverseOfRow(), latitudes, longitudes, 1e-12); // degrees, a tenth of a micrometre
    rowsAgree(reverseOfRowInParallel(), latitudes, longitudes, 1e-12);
  }

  private static void rowsAgree(double[] found, double[] first, double[] second, double allowed) {
    for (int i = 0; i < ROWS; i++) {
      check(Math.abs(found[MapGrid.WIDTH * i] - first[i % POINTS]), allowed);
      check(Math.abs(found[MapGrid.WIDTH * i + 1] - second[i % POINTS]), allowed);
    }
  }

  private static CoordinateTransform transform(String from, String to) {
    CRSFactory factory = new CRSFactory();
    return new CoordinateTransformFactory()
        .createTransform(
            factory.createFromParameters("from", from), factory.createFromParameters("to", to));
  }

  private static void check(double difference, double allowed) {
    if (!(difference <= allowed)) {
      throw new IllegalStateException("the peers disagree by " + difference + " m");
    }
  }

  private int nextPoint() {
    next = (next + 1) & (POINTS - 1);
    return next;
  }

  /** Kernel: easting, northing, convergence and scale. */
  @Benchmark
  public double[] forward() {
    int i = nextPoint();
    ours.forward(latitudes[i], longitudes[i], out, 0);
    return out;
  }

  /** Kernel: latitude, longitude, convergence and scale. */
  @Benchmark
  public double[] reverse() {
    int i = nextPoint();
    ours.reverse(eastings[i], northings[i], out, 0);
    return out;
  }

  /** Surface twin of {@link #forward}. */
  @Benchmark
  public GridPoint forwardAsValue() {
    return ours.at(positions[nextPoint()]);
  }

  /** A reference of ten figures as text. */
  @Benchmark
  public String mgrs() {
    return Mgrs.reference(positions[nextPoint()], GridPrecision.METRE);
  }

  /** Peer: easting and northing. */
  @Benchmark
  public ProjCoordinate proj4jForward() {
    int i = nextPoint();
    in.setValue(longitudes[i], latitudes[i]);
    return toGrid.transform(in, result);
  }

  /** Peer: longitude and latitude. */
  @Benchmark
  public ProjCoordinate proj4jReverse() {
    int i = nextPoint();
    in.setValue(eastings[i], northings[i]);
    return fromGrid.transform(in, result);
  }

  /** {@link #forward}, a row of an array. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] forwardOfRow() {
    ours.forward(rows[0], rows[1], 0, ROWS, rowsOut, 0);
    return rowsOut;
  }

  /** {@link #reverse}, a row of an array. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] reverseOfRow() {
    ours.reverse(rows[2], rows[3], 0, ROWS, rowsOut, 0);
    return rowsOut;
  }

  /** {@link #forward}, a row when all processors share the work. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] forwardOfRowInParallel() {
    ours.forwardInParallel(rows[0], rows[1], 0, ROWS, rowsOut, 0);
    return rowsOut;
  }

  /** {@link #reverse}, likewise. */
  @Benchmark
  @OperationsPerInvocation(ROWS)
  public double[] reverseOfRowInParallel() {
    ours.reverseInParallel(rows[2], rows[3], 0, ROWS, rowsOut, 0);
    return rowsOut;
  }
}
