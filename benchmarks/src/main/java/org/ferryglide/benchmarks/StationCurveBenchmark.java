package org.ferryglide.benchmarks;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.tide.height.MeanRanges;
import org.ferryglide.tide.height.TideEvent;
import org.ferryglide.tide.height.TideTable;
import org.ferryglide.tide.stream.Shoreline;
import org.ferryglide.tide.stream.StandardPort;
import org.ferryglide.tide.stream.StationField;
import org.ferryglide.tide.stream.StreamHour;
import org.ferryglide.tide.stream.StreamStation;
import org.ferryglide.tide.stream.StreamTable;
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

/**
 * How does one look at a stream between stations grow with the coast's points and with the number
 * of stations? The coast is one coast, surveyed ever more finely; the cost should hardly grow with
 * it.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class StationCurveBenchmark extends InFixedHeap {
  private static final int LOOKS = 4096; // a power of two

  /** Points of the coast; 0 for none. */
  @Param({"0", "400"})
  public int coastPoints = 400;

  /** Stations, all within reach of every look. */
  @Param({"1", "10", "40"})
  public int stationCount = 10;

  /** Looks in one call. */
  @Param({"1", "100", "10000"})
  public int evaluations = 1;

  private StationField field;
  private final double[] times = new double[LOOKS];
  private final double[] latitudes = new double[LOOKS];
  private final double[] longitudes = new double[LOOKS];
  private final double[] out = new double[2];
  private int look;

  /** Stations on both sides of a winding coast, and looks on both sides. */
  @Setup
  public void prepare() {
    List<TideEvent> events = new ArrayList<>();
    Instant high = Instant.parse("2026-01-01T03:00:00Z");
    for (int i = 0; i < 60; i++) {
      events.add(TideEvent.low(high.minusSeconds(22_350), Distance.ofMetres(1)));
      events.add(TideEvent.high(high, Distance.ofMetres(5)));
      high = high.plusSeconds(44_714);
    }
    TideTable tides = TideTable.of("Port Ennor", "chart datum", events);
    SplittableRandom random = new SplittableRandom(3);
    List<StreamStation> stations = new ArrayList<>();
    for (int s = 0; s < stationCount; s++) {
      stations.add(
          table(s, 50.0 + 0.2 * random.nextDouble(), -5.3 + 0.3 * random.nextDouble())
              .boundTo(tides)
              .asStation());
    }
    field = StationField.inverseDistance(stations, Distance.ofNauticalMiles(25));
    if (coastPoints > 0) {
      List<Position> coast = new ArrayList<>();
      for (int i = 0; i <= coastPoints; i++) {
        double part = (double) i / coastPoints;
        double bays = 0.02 * Math.sin(16 * Math.PI * part);
        double inlets = i % 2 * 0.2 / coastPoints; // as wide as the points lie apart
        coast.add(Position.ofDegrees(50.0 + 0.2 * part, -5.15 + bays + inlets));
      }
      field = field.withShores(Shoreline.of(List.of(coast)));
    }
    double first = EpochSeconds.of(events.get(4).time());
    for (int i = 0; i < LOOKS; i++) {
      times[i] = first + random.nextDouble() * 20 * 86_400.0;
      latitudes[i] = 50.0 + 0.2 * random.nextDouble();
      longitudes[i] = -5.3 + 0.3 * random.nextDouble();
    }
  }

  private static StreamTable table(int station, double latitude, double longitude) {
    List<StreamHour> hours = new ArrayList<>();
    for (int h = -6; h <= 6; h++) {
      double rate = Math.abs(3 * Math.sin((h + 0.3) * Math.PI / 6.2));
      hours.add(
          new StreamHour(
              h,
              TrueBearing.ofDegrees(h < 0 ? 60 : 240),
              Speed.ofKnots(rate),
              Speed.ofKnots(rate / 2)));
    }
    return StreamTable.of(
        "station " + station,
        Position.ofDegrees(latitude, longitude),
        StandardPort.aboutHighWater(
            "Port Ennor", new MeanRanges(Distance.ofMetres(5.4), Distance.ofMetres(2.4))),
        hours);
  }

  /** So many looks at the stream. */
  @Benchmark
  public double looksBehindShores() {
    double sum = 0.0;
    for (int i = 0; i < evaluations; i++) {
      sum += lookBehindShores();
    }
    return sum;
  }

  /** One look at the stream. */
  public double lookBehindShores() {
    look = (look + 1) & (LOOKS - 1);
    return field.sample(latitudes[look], longitudes[look], times[look], out, 0)
        ? out[0] + out[1]
        : 0.0;
  }
}
