package org.ferryglide.benchmarks;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import net.sf.geographiclib.GeodesicLine;
import net.sf.geographiclib.GeodesicMask;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.Line;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.geodesy.RhumbLines;
import org.ferryglide.nav.position.Position;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.orekit.bodies.GeodeticPoint;
import org.orekit.bodies.LoxodromeArc;
import org.orekit.bodies.OneAxisEllipsoid;
import org.orekit.frames.FramesFactory;

/**
 * What does a rhumb line cost, beside the geodesic of GeographicLib-Java and the loxodrome of
 * Orekit on the same legs?
 *
 * <p>Each call takes the next of 1024 legs, so that the branches are those of real work.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class RhumbBenchmark extends InFixedHeap {
  private static final int LEGS = 1024;

  /** Legs of 1 to 20 km between 35 and 70 degrees of latitude, or between any two points. */
  @Param({"kayak", "world"})
  public String legs = "kayak";

  private final double[] lat1 = new double[LEGS];
  private final double[] lon1 = new double[LEGS];
  private final double[] lat2 = new double[LEGS];
  private final double[] lon2 = new double[LEGS];
  private final double[] course = new double[LEGS];
  private final double[] metres = new double[LEGS];
  private final double[] out = new double[2];
  private final double[] point = new double[3];
  private final Position[] from = new Position[LEGS];
  private final Position[] to = new Position[LEGS];
  private final Line[] rhumbLine = new Line[LEGS];
  private final GeodesicLine[] geodesicLine = new GeodesicLine[LEGS];
  private final GeodeticPoint[] start = new GeodeticPoint[LEGS];
  private final GeodeticPoint[] end = new GeodeticPoint[LEGS];
  private final OneAxisEllipsoid earth =
      new OneAxisEllipsoid(6378137.0, 1 / 298.257223563, FramesFactory.getGCRF());
  private int next;

  /** Draws the legs. */
  @Setup
  public void drawLegs() {
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < LEGS; i++) {
      lon1[i] = random.nextDouble() * 360 - 180;
      if (legs.equals("kayak")) {
        lat1[i] = 35 + 35 * random.nextDouble();
        course[i] = 360 * random.nextDouble();
        metres[i] = 1000 + 19000 * random.nextDouble();
        RhumbLines.direct(lat1[i], lon1[i], course[i], metres[i], out, 0);
        lat2[i] = out[0];
        lon2[i] = out[1];
      } else {
        lat1[i] = random.nextDouble() * 170 - 85;
        lat2[i] = random.nextDouble() * 170 - 85;
        lon2[i] = random.nextDouble() * 360 - 180;
        RhumbLines.inverse(lat1[i], lon1[i], lat2[i], lon2[i], out, 0);
        course[i] = out[0];
        metres[i] = out[1];
      }
      from[i] = Position.ofDegrees(lat1[i], lon1[i]);
      to[i] = Position.ofDegrees(lat2[i], lon2[i]);
      rhumbLine[i] = Line.rhumb(from[i], TrueBearing.ofDegrees(course[i]));
      geodesicLine[i] =
          Geodesic.WGS84.Line(
              lat1[i],
              lon1[i],
              course[i],
              GeodesicMask.LATITUDE
                  | GeodesicMask.LONGITUDE
                  | GeodesicMask.AZIMUTH
                  | GeodesicMask.DISTANCE_IN);
      start[i] = new GeodeticPoint(Math.toRadians(lat1[i]), Math.toRadians(lon1[i]), 0);
      end[i] = new GeodeticPoint(Math.toRadians(lat2[i]), Math.toRadians(lon2[i]), 0);
    }
  }

  private int next() {
    next = (next + 1) & (LEGS - 1);
    return next;
  }

  /** Course and length of a rhumb line. */
  @Benchmark
  public double[] rhumbInverse() {
    int i = next();
    RhumbLines.inverse(lat1[i], lon1[i], lat2[i], lon2[i], out, 0);
    return out;
  }

  /** End of a rhumb line. */
  @Benchmark
  public double[] rhumbDirect() {
    int i = next();
    RhumbLines.direct(lat1[i], lon1[i], course[i], metres[i], out, 0);
    return out;
  }

  /** The same as {@link #rhumbInverse} through the values at the surface. */
  @Benchmark
  public RhumbLeg rhumbLeg() {
    int i = next();
    return RhumbLeg.between(from[i], to[i]);
  }

  /** A point of a rhumb line prepared beforehand. */
  @Benchmark
  public double[] rhumbLinePoint() {
    int i = next();
    rhumbLine[i].pointAt(0.5 * metres[i], point, 0);
    return point;
  }

  /** A point of a geodesic prepared beforehand, GeographicLib-Java. */
  @Benchmark
  public GeodesicData peerGeodesicLinePoint() {
    int i = next();
    return geodesicLine[i].Position(
        0.5 * metres[i], GeodesicMask.LATITUDE | GeodesicMask.LONGITUDE | GeodesicMask.AZIMUTH);
  }

  /** Length and both azimuths of a geodesic, GeographicLib-Java. */
  @Benchmark
  public GeodesicData peerGeodesicInverse() {
    int i = next();
    return Geodesic.WGS84.Inverse(
        lat1[i], lon1[i], lat2[i], lon2[i], GeodesicMask.DISTANCE | GeodesicMask.AZIMUTH);
  }

  /** End of a geodesic, GeographicLib-Java. */
  @Benchmark
  public GeodesicData peerGeodesicDirect() {
    int i = next();
    return Geodesic.WGS84.Direct(
        lat1[i],
        lon1[i],
        course[i],
        metres[i],
        GeodesicMask.LATITUDE | GeodesicMask.LONGITUDE | GeodesicMask.AZIMUTH);
  }

  /** Azimuth and length of a loxodrome, Orekit. */
  @Benchmark
  public double peerLoxodromeInverse() {
    int i = next();
    LoxodromeArc arc = new LoxodromeArc(start[i], end[i], earth);
    return arc.getAzimuth() + arc.getDistance();
  }
}
