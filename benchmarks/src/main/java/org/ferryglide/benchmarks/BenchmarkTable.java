package org.ferryglide.benchmarks;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.NoBenchmarksException;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.util.Statistics;

/**
 * Runs all benchmarks, or a subset that takes about five minutes, and writes a table with their
 * ratios to peers in the same run and to the last release.
 *
 * <p>Each benchmark runs in {@value #ITERATIONS} iterations of 20 milliseconds, and its figure is
 * the one that a tenth of them beat: what other programs on the machine take away only ever makes
 * an iteration slower, so the fastest ones tell what the code costs. The median stands beside it,
 * to show how busy the machine was.
 *
 * <p>{@code BenchmarkTable all|short|NAME [--out FILE] [--baseline FILE]}, where NAME is part of
 * the names of those wanted, as a regular expression; their peers are measured with them. The table
 * goes to the standard output and, as CSV, to the file; {@code --baseline} writes a baseline as
 * well, in the form of {@code baseline.csv}. The status is 1 if an agreement check fails, which
 * each benchmark makes before it runs, or a ratio passes its guard.
 */
public final class BenchmarkTable {
  private static final String ALLOCATION = "gc.alloc.rate.norm";

  /** How many iterations are measured; of these, the share that may beat the figure. */
  static final int ITERATIONS = 40;

  static final double FASTEST_PERCENT = 10.0;

  // a benchmark of a whole passage takes seconds until all of it is compiled: one asked for by name
  // is given them, where all or many are run a small one gets what it needs
  private static final long NAMED_WARM_UP_MILLISECONDS = 1000;
  private static final long ALL_WARM_UP_MILLISECONDS = 200;
  private static final long SHORT_WARM_UP_MILLISECONDS = 100;

  private BenchmarkTable() {}

  /** One measured benchmark: nanoseconds and bytes an operation. */
  private record Figure(double nanoseconds, double median, double bytes, double byTheClock) {}

  /**
   * Runs them.
   *
   * @param arguments as the class comment has it
   * @throws IOException if a file cannot be read or written
   */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length == 0) {
      System.err.println("BenchmarkTable all|short|NAME [--out FILE] [--baseline FILE]");
      System.exit(2);
    }
    if (!arguments[0].equals("all") && !option(arguments, "--baseline").isEmpty()) {
      System.err.println(
          "A baseline is that of all benchmarks, but " + arguments[0] + " was asked");
      System.exit(2);
    }
    List<Peer> peers = Peer.readAll();
    Map<String, Figure> figures;
    try {
      figures = figures(new Runner(options(arguments[0], peers).build()).run());
    } catch (NoBenchmarksException e) {
      System.err.println("No benchmark is named like " + arguments[0]);
      System.exit(2);
      return;
    } catch (RunnerException e) {
      System.err.println("A benchmark or its agreement check failed: " + e.getMessage());
      System.exit(1);
      return;
    }
    List<String[]> rows = rows(figures, peers, Baseline.read());
    System.out.println();
    System.out.print(text(rows));
    String file = option(arguments, "--out");
    if (!file.isEmpty()) {
      Files.writeString(Path.of(file), csv(rows), StandardCharsets.UTF_8);
    }
    String baseline = option(arguments, "--baseline");
    if (!baseline.isEmpty()) {
      Files.writeString(Path.of(baseline), Baseline.csv(rows), StandardCharsets.UTF_8);
    }
    if (rows.stream().anyMatch(row -> row[row.length - 1].startsWith("above"))) {
      System.err.println("A ratio passed its guard: see the last column.");
      System.exit(1);
    }
  }

  /** What follows the name of an option, or empty. */
  private static String option(String[] arguments, String name) {
    for (int i = 1; i + 1 < arguments.length; i++) {
      if (arguments[i].equals(name)) {
        return arguments[i + 1];
      }
    }
    return "";
  }

  private static ChainedOptionsBuilder options(String which, List<Peer> peers) {
    boolean all = which.equals("all");
    long warmUp =
        all
            ? ALL_WARM_UP_MILLISECONDS
            : which.equals("short") ? SHORT_WARM_UP_MILLISECONDS : NAMED_WARM_UP_MILLISECONDS;
    ChainedOptionsBuilder options =
        new OptionsBuilder()
            .addProfiler(GCProfiler.class)
            .addProfiler(ProcessorTime.class)
            .shouldFailOnError(true)
            .warmupIterations(10)
            .warmupTime(TimeValue.milliseconds(warmUp))
            .measurementIterations(ITERATIONS)
            .measurementTime(TimeValue.milliseconds(20));
    if (!which.equals("short")) {
      for (Peer peer : peers) {
        if (!all && Pattern.compile(which).matcher(peer.benchmark()).find()) {
          options = options.include("\\." + peer.peer().replace(".", "\\.") + "$");
        }
      }
      options =
          options
              .include("org\\.ferryglide\\.benchmarks\\..*" + (all ? "" : which))
              .exclude("CurveBenchmark"); // see CostCurves
      return all // growth has a run of its own, and broken agreement no place here
          ? options.exclude("PassageGrowthBenchmark").exclude("BrokenAgreementBenchmark")
          : options;
    }
    for (Peer peer : peers) {
      if (peer.isShort()) {
        options = options.include("\\." + peer.benchmark().replace(".", "\\.") + "$");
      }
    }
    return options
        .param("legs", "kayak")
        .param("grid", "utm")
        .param("steps", "false")
        .param("curveKind", "cosine");
  }

  private static Map<String, Figure> figures(Collection<RunResult> results) {
    Map<String, Figure> figures = new TreeMap<>();
    for (RunResult result : results) {
      double bytes = Double.NaN;
      for (Map.Entry<String, ?> entry : result.getSecondaryResults().entrySet()) {
        if (entry.getKey().endsWith(ALLOCATION)) {
          bytes = ((Result<?>) entry.getValue()).getScore();
        }
      }
      double scale = scale(result);
      Statistics times = times(result);
      figures.put(
          name(result.getParams()),
          new Figure(
              scale * times.getPercentile(FASTEST_PERCENT),
              scale * times.getPercentile(50.0),
              bytes,
              unit(result)
                  * result.getPrimaryResult().getStatistics().getPercentile(FASTEST_PERCENT)));
    }
    return figures;
  }

  /** The processor times of the iterations; of a benchmark of several threads the clock's. */
  static Statistics times(RunResult result) {
    Optional<Result<?>> processor = processorTime(result);
    return processor.isPresent()
        ? processor.get().getStatistics()
        : result.getPrimaryResult().getStatistics();
  }

  /** Nanoseconds in the unit of those times. */
  static double scale(RunResult result) {
    return processorTime(result).isPresent() ? 1.0 : unit(result);
  }

  private static double unit(RunResult result) {
    String unit = result.getPrimaryResult().getScoreUnit();
    return unit.startsWith("ns") ? 1.0 : unit.startsWith("us") ? 1e3 : 1e6;
  }

  private static boolean isOfSeveralThreads(String benchmark) {
    return benchmark.matches(".*(InParallel|AllCores|OnCores)");
  }

  private static Optional<Result<?>> processorTime(RunResult result) {
    boolean ofSeveral = isOfSeveralThreads(result.getParams().getBenchmark());
    for (Map.Entry<String, ?> entry : result.getSecondaryResults().entrySet()) {
      if (!ofSeveral && entry.getKey().endsWith(ProcessorTime.LABEL)) {
        return Optional.of((Result<?>) entry.getValue());
      }
    }
    return Optional.empty();
  }

  private static String name(BenchmarkParams params) {
    String full = params.getBenchmark();
    StringBuilder name =
        new StringBuilder(full.substring(full.lastIndexOf('.', full.lastIndexOf('.') - 1) + 1));
    for (String key : params.getParamsKeys()) {
      name.append(' ').append(key).append('=').append(params.getParam(key));
    }
    return name.toString();
  }

  private static List<String[]> rows(
      Map<String, Figure> figures, List<Peer> peers, Map<String, Double> baseline) {
    List<String[]> rows = new ArrayList<>();
    rows.add(
        new String[] {
          "benchmark", "ns", "median_ns", "bytes", "peer", "ratio", "to_last_release", "guard"
        });
    figures.forEach(
        (name, figure) -> {
          int blank = name.indexOf(' ');
          String plain = blank < 0 ? name : name.substring(0, blank);
          String params = blank < 0 ? "" : name.substring(blank);
          Peer peer = Peer.of(plain, peers);
          Figure other = figures.get(peer.peer() + params);
          double ratio = Double.NaN;
          if (other != null) { // several threads are for the clock, and so is what they are beside
            ratio =
                isOfSeveralThreads(plain)
                    ? figure.byTheClock / other.byTheClock
                    : figure.nanoseconds / other.nanoseconds;
          }
          double before = baseline.getOrDefault(name, Double.NaN);
          rows.add(
              new String[] {
                name,
                digits(figure.nanoseconds),
                digits(figure.median),
                digits(figure.bytes < 0.5 ? 0.0 : figure.bytes),
                peer.peer(),
                digits(ratio),
                digits(ratio / before),
                ratio > peer.atMost() ? "above " + peer.atMost() : ""
              });
        });
    return rows;
  }

  /** Three significant digits, nothing for NaN. */
  private static String digits(double value) {
    if (Double.isNaN(value)) {
      return "";
    }
    return value == 0.0 ? "0" : new BigDecimal(value).round(new MathContext(3)).toPlainString();
  }

  private static String csv(List<String[]> rows) {
    StringBuilder csv = new StringBuilder();
    rows.forEach(row -> csv.append(String.join(",", row)).append('\n'));
    return csv.toString();
  }

  private static String text(List<String[]> rows) {
    int[] width = new int[rows.get(0).length];
    for (String[] row : rows) {
      for (int i = 0; i < width.length; i++) {
        width[i] = Math.max(width[i], row[i].length());
      }
    }
    StringBuilder text = new StringBuilder();
    for (String[] row : rows) {
      for (int i = 0; i < width.length; i++) {
        text.append(row[i]).append(" ".repeat(width[i] + 2 - row[i].length()));
      }
      text.append('\n');
    }
    return text.toString();
  }
}
