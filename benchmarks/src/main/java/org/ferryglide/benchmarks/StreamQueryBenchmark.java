package org.ferryglide.benchmarks;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.Found;
import org.ferryglide.nav.water.LocalStream;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.StreamTurn;
import org.ferryglide.nav.water.WindAgainstStream;
import org.ferryglide.nav.water.WindField;
import org.ferryglide.nav.water.Window;
import org.ferryglide.tide.harmonic.Constituent;
import org.ferryglide.tide.harmonic.Constituents;
import org.ferryglide.tide.harmonic.HarmonicConstant;
import org.ferryglide.tide.harmonic.HarmonicConstants;
import org.ferryglide.tide.harmonic.NodalConvention;
import org.ferryglide.tide.harmonic.NodalScheme;
import org.ferryglide.tide.height.MeanRanges;
import org.ferryglide.tide.height.TideEvent;
import org.ferryglide.tide.height.TideTable;
import org.ferryglide.tide.stream.HarmonicStream;
import org.ferryglide.tide.stream.StandardPort;
import org.ferryglide.tide.stream.StreamHour;
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
 * How long does a month of questions at one-minute resolution take, of an hourly table and of a
 * harmonic stream with 37 constituents?
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class StreamQueryBenchmark extends InFixedHeap {
  private static final Position PLACE = Position.ofDegrees(50.1, -5.2);

  /** Which stream is asked. */
  @Param({"hourly", "harmonic"})
  public String kind = "hourly";

  private LocalStream here = LocalStream.of(hourly(), PLACE);
  private Instant from = Instant.parse("2026-06-01T00:00:00Z");
  private Instant to = Instant.parse("2026-07-01T00:00:00Z");

  /** Makes the stream. */
  @Setup
  public void prepare() {
    here = LocalStream.of(kind.equals("hourly") ? hourly() : harmonic(), PLACE);
  }

  private static StreamField hourly() {
    List<TideEvent> events = new ArrayList<>();
    Instant high = Instant.parse("2026-05-30T03:00:00Z");
    for (int i = 0; i < 70; i++) {
      double half = 2.0 + 0.8 * Math.cos(2 * Math.PI * i / 28.5);
      events.add(TideEvent.low(high.minusSeconds(22_350), Distance.ofMetres(3 - half)));
      events.add(TideEvent.high(high, Distance.ofMetres(3 + half)));
      high = high.plusSeconds(44_714);
    }
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
            "Skarra Sound",
            PLACE,
            StandardPort.aboutHighWater(
                "Port Ennor", new MeanRanges(Distance.ofMetres(5.4), Distance.ofMetres(2.4))),
            hours)
        .boundTo(TideTable.of("Port Ennor", "chart datum", events));
  }

  private static StreamField harmonic() {
    List<HarmonicConstant> constants = new ArrayList<>();
    for (Constituent constituent : Constituents.STANDARD_37) {
      constants.add(new HarmonicConstant(constituent, 0.5 / (1 + constants.size()), 77.0));
    }
    return HarmonicStream.alongAxis(
        "Tarn Gut",
        TrueBearing.ofDegrees(62),
        HarmonicConstants.of(NodalScheme.schureman(), 0.02, constants),
        NodalConvention.MID_YEAR);
  }

  /** Slack windows of a month. */
  @Benchmark
  public Found<Window> slackWindows() {
    return here.slackWindows(Speed.ofKnots(0.5), from, to);
  }

  /** Turns of a month. */
  @Benchmark
  public Found<StreamTurn> turns() {
    return here.turns(from, to);
  }

  /** Hours of wind against stream in a month. */
  @Benchmark
  public Found<Window> windAgainstStream() {
    return here.windAgainstStream(
        WindField.steady(Velocity.ofWind(TrueBearing.ofDegrees(60), Speed.ofKnots(15))),
        new WindAgainstStream(Speed.ofKnots(10), Speed.ofKnots(1.5), 45),
        from,
        to);
  }
}
