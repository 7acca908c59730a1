package org.ferryglide.examples.study;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.ferryglide.examples.svg.Raster;
import org.ferryglide.examples.svg.Svg;

/**
 * Draws how costs grow, from the {@code curves.csv} that the benchmarks' {@code CostCurves} writes:
 * a picture for each curve, as SVG and PNG, beside it.
 *
 * <pre>{@code
 * CostPictures.draw(Path.of("benchmarks/target/curves"));
 * }</pre>
 */
public final class CostPictures {
  private static final String HEADING = "curve,series,of,axis,value,ns,ns_each";
  private static final double PIXELS_A_UNIT = 2.0;

  /** Noughts that a figure beside the axis may have. */
  private static final int LONGEST_FIGURE = 6;

  /** Each a thousand of the one before. */
  private static final List<String> UNITS =
      List.of("nanoseconds", "microseconds", "milliseconds", "seconds");

  private CostPictures() {}

  /**
   * Draws.
   *
   * @param arguments the folder that holds the file
   * @throws IOException if a file cannot be read or written
   */
  public static void main(String[] arguments) throws IOException {
    if (arguments.length != 1) {
      System.err.println("CostPictures FOLDER");
      System.exit(2);
    }
    draw(Path.of(arguments[0]));
  }

  /**
   * Draws every curve of a folder's {@code curves.csv} into the folder.
   *
   * @param folder the folder
   * @throws IOException if a file cannot be read or written
   * @throws IllegalArgumentException if the file has another heading
   */
  public static void draw(Path folder) throws IOException {
    List<String> lines = Files.readAllLines(folder.resolve("curves.csv"), StandardCharsets.UTF_8);
    if (lines.isEmpty() || !lines.get(0).equals(HEADING)) {
      throw new IllegalArgumentException("curves.csv must begin with " + HEADING);
    }
    Map<String, List<String[]>> curves = new LinkedHashMap<>();
    for (String line : lines.subList(1, lines.size())) {
      String[] row = line.split(",", -1);
      curves.computeIfAbsent(row[0], name -> new ArrayList<>()).add(row);
    }
    for (Map.Entry<String, List<String[]>> curve : curves.entrySet()) {
      Svg picture = picture(curve.getKey(), curve.getValue());
      Files.writeString(
          folder.resolve(picture.name() + ".svg"), picture.file(), StandardCharsets.UTF_8);
      Files.write(folder.resolve(picture.name() + ".png"), Raster.png(picture, PIXELS_A_UNIT));
    }
  }

  private static Svg picture(String name, List<String[]> rows) {
    Map<String, List<double[]>> series = new LinkedHashMap<>();
    double[] along = {Double.POSITIVE_INFINITY, 0.0};
    double[] up = {Double.POSITIVE_INFINITY, 0.0};
    for (String[] row : rows) {
      double[] place = {Math.max(1.0, Double.parseDouble(row[4])), Double.parseDouble(row[5])};
      series.computeIfAbsent(counted(row[2], row[1]), key -> new ArrayList<>()).add(place);
      widen(along, place[0]);
      widen(up, place[1]);
    }
    int first = (int) Math.floor(Math.log10(along[0]));
    int last = Math.max(first + 1, (int) Math.ceil(Math.log10(along[1])));
    double[] marks = new double[last - first + 1];
    for (int i = 0; i < marks.length; i++) {
      marks[i] = Math.pow(10.0, first + i);
    }
    int lowest = (int) Math.floor(Math.log10(up[0]));
    String axis = words(rows.get(0)[3]);
    int highest = Math.max(lowest + 1, (int) Math.ceil(Math.log10(up[1])));
    // so that no figure beside the axis is wider than the room for it
    int unit =
        Math.min(UNITS.size() - 1, Math.max(0, Math.max(lowest, highest - LONGEST_FIGURE + 2)) / 3);
    double inUnit = Math.pow(1000.0, -unit);
    String title = "Cost by " + axis + " and " + words(rows.get(0)[1]) + ", " + UNITS.get(unit);
    LogPlot plot =
        new LogPlot(
            name,
            title,
            title + "; the figures stand in curves.csv in nanoseconds; 0 stands at 1.",
            axis,
            marks,
            mark -> LogPlot.powerOfTen((int) Math.round(Math.log10(mark))),
            lowest - 3 * unit,
            highest - 3 * unit);
    series.forEach(
        (words, places) -> {
          places.forEach(place -> place[1] *= inUnit);
          plot.with(words, places);
        });
    return plot.drawn();
  }

  /** So many of something, such as "1 leg" or "40 stations". */
  private static String counted(String number, String parameter) {
    String words = words(parameter);
    boolean one = number.equals("1") && words.endsWith("s");
    return number + " " + (one ? words.substring(0, words.length() - 1) : words);
  }

  /** A parameter's name as words, such as "coast points". */
  private static String words(String parameter) {
    if (parameter.equals("stationCount")) {
      return "stations";
    }
    return parameter.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
  }

  private static void widen(double[] range, double value) {
    range[0] = Math.min(range[0], value);
    range[1] = Math.max(range[1], value);
  }
}
