package org.ferryglide.benchmarks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/**
 * Measures how costs grow and writes {@code curves.csv}, which {@code CostPictures} of nav-examples
 * draws.
 *
 * <p>{@code CostCurves FOLDER [CURVE ...]}: departures by legs, samples by constituents, looks at a
 * stream by stations, looks by points of the coast, comparisons of legs by cores, quickest paths by
 * miles and by corners of the coast. Times are those of {@link BenchmarkTable}.
 */
public final class CostCurves {
  private CostCurves() {}

  /** One family of curves: a benchmark, what grows along the axis, and what tells the curves. */
  private record Curve(
      String name,
      String benchmark,
      String axis,
      List<String> values,
      String series,
      List<String> of) {}

  private static final List<Curve> CURVES =
      List.of(
          new Curve(
              "departures",
              "DepartureCurveBenchmark.search",
              "departures",
              List.of("12", "144", "2016"),
              "legs",
              List.of("1", "4", "16")),
          new Curve(
              "samples",
              "SampleCurveBenchmark.fill",
              "samples",
              List.of("10", "100", "1000", "10000", "100000"),
              "constituents",
              List.of("4", "12", "37")),
          new Curve(
              "stations",
              "StationCurveBenchmark.looksBehindShores",
              "evaluations",
              List.of("1", "100", "10000"),
              "stationCount",
              List.of("1", "10", "40")),
          new Curve(
              "coast",
              "StationCurveBenchmark.looksBehindShores",
              "coastPoints",
              List.of("0", "10", "100", "400", "1000", "4000", "10000"),
              "stationCount",
              List.of("10", "40")),
          new Curve(
              "legs",
              "CoreCurveBenchmark.compareOnCores",
              "legs",
              List.of("1000", "10000", "100000", "400000"),
              "cores",
              cores()),
          new Curve(
              "quickest-by-miles",
              "QuickestPathCurveBenchmark.quickestPath",
              "miles",
              List.of("3", "5", "10", "20", "40"),
              "corners",
              List.of("0", "1000")),
          new Curve(
              "quickest-by-corners",
              "QuickestPathCurveBenchmark.quickestPath",
              "corners",
              List.of("0", "30", "100", "300", "1000", "3000"),
              "miles",
              List.of("10")));

  private static final String HEADING = "curve,series,of,axis,value,ns,ns_each";

  /** Where the compilers take long: quickest paths, and calls of which one works all legs. */
  private static boolean isWarmedLong(Curve curve) {
    return curve.name().startsWith("quickest") || curve.series().equals("cores");
  }

  private static List<String> cores() {
    List<String> cores = new ArrayList<>();
    for (int n = 1; n <= Runtime.getRuntime().availableProcessors(); n *= 2) {
      cores.add("" + n);
    }
    return cores;
  }

  /**
   * Measures and writes. What the folder holds of curves that are not wanted this time stays.
   *
   * @param arguments the folder to write into, and the names of the curves if not all are wanted
   * @throws IOException if a file cannot be written
   */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length == 0) {
      System.err.println("CostCurves FOLDER [CURVE ...]");
      System.exit(2);
    }
    Path folder = Files.createDirectories(Path.of(arguments[0]));
    List<String> wanted = List.of(arguments).subList(1, arguments.length);
    List<String> names = CURVES.stream().map(Curve::name).toList();
    for (String name : wanted) {
      if (!names.contains(name)) {
        System.err.println("Curves are " + names + ", but one was " + name);
        System.exit(2);
      }
    }
    Path file = folder.resolve("curves.csv");
    List<String> before =
        Files.exists(file) ? Files.readAllLines(file, StandardCharsets.UTF_8) : List.of();
    StringBuilder csv = new StringBuilder(HEADING).append('\n');
    for (Curve curve : CURVES) {
      if (!wanted.isEmpty() && !wanted.contains(curve.name())) { // what was measured before stays
        before.stream()
            .filter(row -> row.startsWith(curve.name() + ","))
            .forEach(row -> csv.append(row).append('\n'));
        continue;
      }
      try {
        for (String[] row : measure(curve)) {
          csv.append(String.join(",", row)).append('\n');
        }
      } catch (RunnerException e) {
        System.err.println("A benchmark failed: " + e.getMessage());
        System.exit(1);
      }
    }
    Files.writeString(file, csv, StandardCharsets.UTF_8);
    System.out.print(csv);
  }

  /** Rows of the table, by series and then along the axis. */
  private static List<String[]> measure(Curve curve) throws RunnerException {
    TimeValue iteration = TimeValue.milliseconds(20);
    ChainedOptionsBuilder options =
        new OptionsBuilder()
            .include("\\." + curve.benchmark().replace(".", "\\.") + "$")
            .shouldFailOnError(true)
            .addProfiler(ProcessorTime.class)
            .warmupIterations(isWarmedLong(curve) ? 40 : 5)
            .warmupTime(TimeValue.milliseconds(100))
            .measurementIterations(BenchmarkTable.ITERATIONS / 2)
            .measurementTime(iteration)
            .param(curve.axis(), curve.values().toArray(String[]::new))
            .param(curve.series(), curve.of().toArray(String[]::new));
    if (curve.name().equals("stations")) {
      options = options.param("coastPoints", "400");
    } else if (curve.name().equals("coast")) {
      options = options.param("evaluations", "1");
    }
    TreeMap<Double, String[]> rows = new TreeMap<>();
    for (RunResult run : new Runner(options.build()).run()) {
      String series = run.getParams().getParam(curve.series());
      String value = run.getParams().getParam(curve.axis());
      double ns =
          BenchmarkTable.times(run).getPercentile(BenchmarkTable.FASTEST_PERCENT)
              * BenchmarkTable.scale(run);
      double each = ns / Math.max(1.0, curve.name().equals("coast") ? 1.0 : parse(value));
      rows.put(
          1e9 * parse(series) + parse(value),
          new String[] {
            curve.name(),
            curve.series(),
            series,
            curve.axis(),
            value,
            String.format(Locale.ROOT, "%.1f", ns),
            String.format(Locale.ROOT, "%.2f", each)
          });
    }
    return new ArrayList<>(rows.values());
  }

  private static double parse(String number) {
    return Double.parseDouble(number);
  }
}
