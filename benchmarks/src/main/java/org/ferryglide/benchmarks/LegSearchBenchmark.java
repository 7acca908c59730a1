package org.ferryglide.benchmarks;

import java.util.concurrent.TimeUnit;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import net.sf.geographiclib.GeodesicMask;
import org.ferryglide.nav.geodesy.ClosestPoint;
import org.ferryglide.nav.geodesy.Crossings;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.geodesy.LegComparison;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.position.Position;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How many geodesics, GeographicLib-Java's, does a closest point, a crossing or a comparison cost?
 * Almost all of their time goes there.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class LegSearchBenchmark {
  private Position start = Position.ofDegrees(55.0, -5.0);
  private Position end = Position.ofDegrees(55.06, -4.8);
  private Position rock = Position.ofDegrees(55.02, -4.85);
  private RhumbLeg leg = RhumbLeg.between(start, end);
  private GeodesicLeg other =
      GeodesicLeg.between(Position.ofDegrees(55.05, -4.95), Position.ofDegrees(55.0, -4.85));

  /** One geodesic, the yardstick. */
  @Benchmark
  public GeodesicData peerGeodesicInverse() {
    return Geodesic.WGS84.Inverse(
        start.latitudeDegrees(),
        start.longitudeDegrees(),
        rock.latitudeDegrees(),
        rock.longitudeDegrees(),
        GeodesicMask.DISTANCE | GeodesicMask.AZIMUTH);
  }

  /** The closest point of a leg. */
  @Benchmark
  public ClosestPoint closestPointOfLeg() {
    return leg.closestTo(rock);
  }

  /** The closest point of the line without ends. */
  @Benchmark
  public ClosestPoint closestPointOfLine() {
    return leg.line().closestTo(rock);
  }

  /** The crossing of two legs. */
  @Benchmark
  public Crossings crossingOfLegs() {
    return leg.crossings(other);
  }

  /** Rhumb line against geodesic. */
  @Benchmark
  public LegComparison comparison() {
    return LegComparison.between(start, end);
  }
}
