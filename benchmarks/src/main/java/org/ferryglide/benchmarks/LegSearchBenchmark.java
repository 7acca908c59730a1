package org.ferryglide.benchmarks;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import net.sf.geographiclib.GeodesicMask;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.ClosestPoint;
import org.ferryglide.nav.geodesy.Crossings;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.geodesy.LegComparison;
import org.ferryglide.nav.geodesy.Line;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * How many geodesics, GeographicLib-Java's, does a closest point, a crossing or a comparison cost?
 *
 * <p>Each call takes the next of 1024 legs of 1 to 20 km between 35 and 70 degrees of latitude,
 * rhumb lines and geodesics by turns, with a rock up to 20 km off. Of the pairs of legs in {@code
 * crossingOfLegs} about half cross and half part plainly, at 20° or more; in {@code
 * crossingOfLegsAlmostParallel} one pair in six lies within a degree of parallel.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class LegSearchBenchmark extends InFixedHeap {
  private static final int LEGS = 1024;

  /** What two solutions of a foot or a crossing may differ by: a micrometre is promised. */
  private static final double AGREEMENT_METRES = 1e-6;

  private final Position[] start = new Position[LEGS];
  private final Position[] end = new Position[LEGS];
  private final Position[] rock = new Position[LEGS];
  private final Leg[] leg = new Leg[LEGS];
  private final Line[] line = new Line[LEGS];
  private final Leg[] other = new Leg[LEGS];
  private final Leg[] almostParallel = new Leg[LEGS];
  private int next;

  /** Draws the legs; feet and crossings must lie where they were laid off. */
  @Setup
  public void drawLegs() {
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < LEGS; i++) {
      start[i] = Position.ofDegrees(35 + 35 * random.nextDouble(), 360 * random.nextDouble() - 180);
      double course = 360 * random.nextDouble();
      double metres = 1000 + 19_000 * random.nextDouble();
      leg[i] = leg(random.nextBoolean(), start[i], course, metres);
      end[i] = leg[i].end();
      line[i] = leg[i].line();
      Position foot = leg[i].pointAt(Distance.ofMetres(metres * random.nextDouble()));
      double off = 20_000 * random.nextDouble() * random.nextDouble();
      double abeam = leg[i].closestTo(foot).course().degrees() + 90;
      rock[i] = GeodesicLeg.from(foot, TrueBearing.ofDegrees(abeam), Distance.ofMetres(off)).end();
      agree(leg[i].closestTo(rock[i]).distance().metres() - off);
      agree(line[i].closestTo(rock[i]).distance().metres() - off);
      double angle = 20 + 140 * random.nextDouble();
      boolean crosses = random.nextBoolean();
      boolean rhumb = random.nextBoolean();
      other[i] = across(rhumb, foot, course + angle, crosses);
      int found = leg[i].crossings(other[i]).points().size();
      if (crosses) {
        agree(1 - found);
        agree(
            GeodesicLeg.between(foot, leg[i].crossings(other[i]).points().get(0).position())
                .length()
                .metres());
      }
      almostParallel[i] =
          i % 6 == 0
              ? across(rhumb, foot, course + 2 * random.nextDouble() - 1, crosses)
              : other[i];
    }
  }

  private static Leg leg(boolean rhumb, Position from, double course, double metres) {
    TrueBearing bearing = TrueBearing.ofDegrees(course);
    Distance length = Distance.ofMetres(metres);
    return rhumb ? RhumbLeg.from(from, bearing, length) : GeodesicLeg.from(from, bearing, length);
  }

  /** A leg of 8 km whose middle is a point, or that ends two kilometres short of it. */
  private static Leg across(boolean rhumb, Position point, double course, boolean crosses) {
    Leg back = leg(rhumb, point, course + 180, crosses ? 4000 : 10_000);
    return leg(rhumb, back.end(), back.finalCourse().degrees() + 180, 8000);
  }

  private static void agree(double difference) {
    if (!(Math.abs(difference) <= AGREEMENT_METRES)) {
      throw new IllegalStateException("two solutions differ by " + difference + " m");
    }
  }

  private int next() {
    next = (next + 1) & (LEGS - 1);
    return next;
  }

  /** One geodesic, the yardstick. */
  @Benchmark
  public GeodesicData peerGeodesicInverse() {
    int i = next();
    return Geodesic.WGS84.Inverse(
        start[i].latitudeDegrees(),
        start[i].longitudeDegrees(),
        end[i].latitudeDegrees(),
        end[i].longitudeDegrees(),
        GeodesicMask.DISTANCE | GeodesicMask.AZIMUTH);
  }

  /** The closest point of a leg. */
  @Benchmark
  public ClosestPoint closestPointOfLeg() {
    int i = next();
    return leg[i].closestTo(rock[i]);
  }

  /** The closest point of the line without ends. */
  @Benchmark
  public ClosestPoint closestPointOfLine() {
    int i = next();
    return line[i].closestTo(rock[i]);
  }

  /** The crossing of two legs. */
  @Benchmark
  public Crossings crossingOfLegs() {
    int i = next();
    return leg[i].crossings(other[i]);
  }

  /** The same with one pair in six almost parallel. */
  @Benchmark
  public Crossings crossingOfLegsAlmostParallel() {
    int i = next();
    return leg[i].crossings(almostParallel[i]);
  }

  /** Rhumb line against geodesic, with the greatest separation. */
  @Benchmark
  public Distance comparison() {
    int i = next();
    return LegComparison.between(start[i], end[i]).greatestSeparation();
  }
}
