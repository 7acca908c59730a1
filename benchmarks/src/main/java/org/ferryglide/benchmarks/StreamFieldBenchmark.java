package org.ferryglide.benchmarks;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.tide.height.MeanRanges;
import org.ferryglide.tide.height.TideEvent;
import org.ferryglide.tide.height.TideTable;
import org.ferryglide.tide.stream.HourlyStream;
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
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What does one look at a stream cost: from a year's hourly table, between ten stations, and with a
 * coast of 400 lines?
 *
 * <p>Looks fall on random times of the year and random places. The peer, {@code tableByHand}, does
 * what the table says in the most obvious way: find the nearest high water, take the two rows,
 * scale them by the range, turn them into components and interpolate.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class StreamFieldBenchmark extends InFixedHeap {
  private static final int LOOKS = 4096; // a power of two

  private TideTable tides;
  private StreamTable table;
  private HourlyStream hourly;
  private StationField nearest;
  private StationField weighted;
  private StationField triangles;
  private StationField weightedBehindShores;
  private Position place;
  private final double[] times = new double[LOOKS];
  private final double[] latitudes = new double[LOOKS];
  private final double[] longitudes = new double[LOOKS];
  private final double[] out = new double[2];
  private int look;

  /** A year of tides, ten stations, a coast. */
  @Setup
  public void prepare() {
    List<TideEvent> events = new ArrayList<>();
    Instant high = Instant.parse("2026-01-01T03:00:00Z");
    for (int i = 0; i < 706; i++) {
      double half = 2.0 + 0.8 * Math.cos(2 * Math.PI * i / 28.5);
      events.add(TideEvent.low(high.minusSeconds(22_350), Distance.ofMetres(3 - half)));
      events.add(TideEvent.high(high, Distance.ofMetres(3 + half)));
      high = high.plusSeconds(44_714 + (i * 37 % 11 - 5) * 60L);
    }
    tides = TideTable.of("Port Ennor", "chart datum", events);
    List<StreamStation> stations = new ArrayList<>();
    for (int s = 0; s < 10; s++) {
      table = table(s);
      hourly = table.boundTo(tides);
      stations.add(hourly.asStation());
    }
    Distance reach = Distance.ofNauticalMiles(12);
    nearest = StationField.nearest(stations, reach);
    weighted = StationField.inverseDistance(stations, reach);
    triangles = StationField.triangles(stations, Distance.ofNauticalMiles(40));
    List<Position> coast = new ArrayList<>();
    for (int i = 0; i <= 400; i++) {
      coast.add(Position.ofDegrees(50.0 + 0.001 * i, -5.15 + 0.02 * Math.sin(i * 0.7)));
    }
    weightedBehindShores = weighted.withShores(Shoreline.of(List.of(coast)));
    place = Position.ofDegrees(50.1, -5.2);
    long random = 12345;
    double first = EpochSeconds.of(events.get(2).time());
    for (int i = 0; i < LOOKS; i++) {
      random = random * 6364136223846793005L + 1442695040888963407L;
      double a = (random >>> 33) / (double) (1L << 31);
      random = random * 6364136223846793005L + 1442695040888963407L;
      double b = (random >>> 33) / (double) (1L << 31);
      random = random * 6364136223846793005L + 1442695040888963407L;
      double c = (random >>> 33) / (double) (1L << 31);
      times[i] = first + a * 360 * 86_400.0;
      latitudes[i] = 50.0 + 0.2 * b;
      longitudes[i] = -5.3 + 0.3 * c;
    }
  }

  private static StreamTable table(int station) {
    List<StreamHour> hours = new ArrayList<>();
    for (int h = -6; h <= 6; h++) {
      double rate = Math.abs(3 * Math.sin((h + 0.3) * Math.PI / 6.2));
      hours.add(
          new StreamHour(
              h,
              TrueBearing.ofDegrees(h < 0 ? 60 + station : 240 + station),
              Speed.ofKnots(rate),
              Speed.ofKnots(rate / 2)));
    }
    return StreamTable.of(
        "station " + station,
        Position.ofDegrees(50.0 + 0.2 * (station * 7 % 10) / 9, -5.3 + 0.3 * station / 9),
        StandardPort.aboutHighWater(
            "Port Ennor", new MeanRanges(Distance.ofMetres(5.4), Distance.ofMetres(2.4))),
        hours);
  }

  private int next() {
    look = (look + 1) & (LOOKS - 1);
    return look;
  }

  /** An hourly table of a year. */
  @Benchmark
  public double hourlyTable() {
    return hourly.sample(times[next()], out, 0) ? out[0] + out[1] : 0.0;
  }

  /** The same as a value. */
  @Benchmark
  public Optional<Velocity> hourlyTableAsValue() {
    return hourly.at(place, EpochSeconds.toInstant(times[next()]));
  }

  /** The same in the most obvious way. */
  @Benchmark
  public double tableByHand() {
    Instant instant = EpochSeconds.toInstant(times[next()]);
    TideEvent highWater = tides.highWaterNearest(instant);
    double range = tides.range(highWater).metres();
    double hour = (EpochSeconds.of(instant) - EpochSeconds.of(highWater.time())) / 3600.0;
    int row = (int) Math.floor(Math.max(-6, Math.min(5.999, hour)));
    double share = hour - row;
    Velocity before = table.at(row, Distance.ofMetres(range));
    Velocity after = table.at(row + 1, Distance.ofMetres(range));
    Velocity flow = before.times(1 - share).plus(after.times(share));
    return flow.eastMetresPerSecond() + flow.northMetresPerSecond();
  }

  /** The nearest of ten stations. */
  @Benchmark
  public double nearestOfTen() {
    int i = next();
    return nearest.sample(latitudes[i], longitudes[i], times[i], out, 0) ? out[0] + out[1] : 0.0;
  }

  /** Ten stations by inverse distance. */
  @Benchmark
  public double weightedTen() {
    int i = next();
    return weighted.sample(latitudes[i], longitudes[i], times[i], out, 0) ? out[0] + out[1] : 0.0;
  }

  /** Triangles over ten stations. */
  @Benchmark
  public double trianglesOfTen() {
    int i = next();
    return triangles.sample(latitudes[i], longitudes[i], times[i], out, 0) ? out[0] + out[1] : 0.0;
  }

  /** Ten stations by inverse distance with a coast of 400 lines between. */
  @Benchmark
  public double weightedTenBehindShores() {
    int i = next();
    return weightedBehindShores.sample(latitudes[i], longitudes[i], times[i], out, 0)
        ? out[0] + out[1]
        : 0.0;
  }
}
