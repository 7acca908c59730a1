package org.ferryglide.benchmarks;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.water.Found;
import org.ferryglide.nav.water.Window;
import org.ferryglide.tide.height.TableCurve;
import org.ferryglide.tide.height.TideCurve;
import org.ferryglide.tide.height.TideEvent;
import org.ferryglide.tide.height.TideTable;
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
 * What does a height from a year's table cost beside a walk through its waters with the formula
 * written out, and the windows over a sill in a month beside looking every minute?
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class TideTableBenchmark extends InFixedHeap {
  private static final int WATERS = 1411; // a year of them
  private static final int INSTANTS = 1024;

  /** Which curve joins the waters. */
  @Param({"twelfths", "cosine", "smooth"})
  public String curveKind = "cosine";

  private TideCurve curve = TableCurve.cosine(table());
  private TideTable table = table();
  private final double[] instants = new double[INSTANTS];
  private int next;
  private Instant from = Instant.EPOCH;
  private Instant to = Instant.EPOCH;

  private static TideTable table() {
    List<TideEvent> events = new ArrayList<>();
    Instant time = Instant.parse("2026-01-01T01:17:00Z");
    for (int i = 0; i < WATERS; i++) {
      double half = 1.7 + 0.6 * Math.cos(i * 2.0 * Math.PI / 57.0);
      events.add(
          i % 2 == 0
              ? TideEvent.low(time, Distance.ofMetres(2.5 - half))
              : TideEvent.high(time, Distance.ofMetres(2.5 + half)));
      time = time.plusSeconds(22_360 + (i * 7919) % 1200 - 600);
    }
    return TideTable.of("Skarra", "chart datum", events);
  }

  /** Instants all over the year, in no order. */
  @Setup
  public void prepare() {
    curve =
        switch (curveKind) {
          case "twelfths" -> TableCurve.twelfths(table);
          case "smooth" -> TableCurve.smooth(table);
          default -> TableCurve.cosine(table);
        };
    double start = curve.startSeconds();
    double span = curve.endSeconds() - start;
    for (int i = 0; i < INSTANTS; i++) {
      instants[i] = start + span * ((i * 389) % INSTANTS) / INSTANTS;
    }
    from = table.start();
    to = from.plus(Duration.ofDays(30));
  }

  /** A height at any time of the year. */
  @Benchmark
  public double height() {
    next = (next + 1) & (INSTANTS - 1);
    return curve.heightMetres(instants[next]);
  }

  /** The peer: the formula alone, on an interval that need not be looked for. */
  @Benchmark
  public double peerCosineFormulaAlone() {
    next = (next + 1) & (INSTANTS - 1);
    return 0.8 + 3.4 * (0.5 - 0.5 * Math.cos(Math.PI * (instants[next] % 22_360.0) / 22_360.0));
  }

  /** Windows over a sill in a month, every edge to a thousandth of a second. */
  @Benchmark
  public Found<Window> monthOfWindows() {
    return curve.windowsAtLeast(Distance.ofMetres(3.1), from, to);
  }

  /** The peer: a look every minute of the month, which finds the edges to a minute. */
  @Benchmark
  public int peerMonthMinuteByMinute() {
    int edges = 0;
    boolean before = false;
    double start = curve.startSeconds();
    for (int minute = 0; minute < 30 * 1440; minute++) {
      boolean above = curve.heightMetres(start + 60.0 * minute) >= 3.1;
      edges += above != before ? 1 : 0;
      before = above;
    }
    return edges;
  }
}
