package org.ferryglide.examples.batch;

import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.grid.GridPrecision;
import org.ferryglide.tide.harmonic.HarmonicTide;
import org.jspecify.annotations.Nullable;

/**
 * How a batch is run.
 *
 * <pre>{@code
 * BatchOptions options = BatchOptions.standard().withFullPrecision(true).withThreads(4);
 * }</pre>
 */
public final class BatchOptions {
  private static final int MOST_THREADS = 1024;

  private static final BatchOptions STANDARD = new BatchOptions();

  private boolean reverse;
  private boolean alongGeodesic;
  private boolean fullPrecision;
  private boolean stopAtRefusal;
  private int threads = Runtime.getRuntime().availableProcessors();
  private String prefix = "";
  private Ellipsoid ellipsoid = Ellipsoid.WGS84;
  private GridPrecision precision = GridPrecision.METRE;
  private double chance = 0.95;
  private @Nullable HarmonicTide tide;

  private BatchOptions() {}

  private BatchOptions copy() {
    BatchOptions copy = new BatchOptions();
    copy.reverse = reverse;
    copy.alongGeodesic = alongGeodesic;
    copy.fullPrecision = fullPrecision;
    copy.stopAtRefusal = stopAtRefusal;
    copy.threads = threads;
    copy.prefix = prefix;
    copy.ellipsoid = ellipsoid;
    copy.precision = precision;
    copy.chance = chance;
    copy.tide = tide;
    return copy;
  }

  /**
   * Forward, WGS84, rounded, every processor, all rows.
   *
   * @return the options
   */
  public static BatchOptions standard() {
    return STANDARD;
  }

  /**
   * From the grid to the position, for the operations of grids.
   *
   * @param value whether to go the other way
   * @return options with everything else the same
   */
  public BatchOptions withReverse(boolean value) {
    BatchOptions copy = copy();
    copy.reverse = value;
    return copy;
  }

  /**
   * Cross-track distances from the geodesic in place of the rhumb line.
   *
   * @param value whether the line is a geodesic
   * @return options with everything else the same
   */
  public BatchOptions withGeodesicLine(boolean value) {
    BatchOptions copy = copy();
    copy.alongGeodesic = value;
    return copy;
  }

  /**
   * Figures that read back to the same double, in place of rounded ones.
   *
   * @param value whether to write every digit
   * @return options with everything else the same
   */
  public BatchOptions withFullPrecision(boolean value) {
    BatchOptions copy = copy();
    copy.fullPrecision = value;
    return copy;
  }

  /**
   * Ends at the first refused row, which is not written, nor any after it.
   *
   * @param value whether to stop
   * @return options with everything else the same
   */
  public BatchOptions withStopAtRefusal(boolean value) {
    BatchOptions copy = copy();
    copy.stopAtRefusal = value;
    return copy;
  }

  /**
   * How many threads work; what is written does not depend on it.
   *
   * @param count threads, in [1, 1024]
   * @return options with everything else the same
   * @throws IllegalArgumentException if {@code count} is out of range
   */
  public BatchOptions withThreads(int count) {
    if (count < 1 || count > MOST_THREADS) {
      throw new IllegalArgumentException(
          "threads must be in [1, " + MOST_THREADS + "], but were " + count);
    }
    BatchOptions copy = copy();
    copy.threads = count;
    return copy;
  }

  /**
   * Text before the name of each column added, where a file has one of that name already.
   *
   * @param text letters, digits, {@code _} and {@code -}, possibly none
   * @return options with everything else the same
   * @throws IllegalArgumentException if the text holds anything else
   */
  public BatchOptions withPrefix(String text) {
    if (!text.matches("[A-Za-z0-9_-]*")) {
      throw new IllegalArgumentException(
          "a prefix must consist of letters, digits, _ and -, but was \"" + text + "\"");
    }
    BatchOptions copy = copy();
    copy.prefix = text;
    return copy;
  }

  /**
   * The figure of the earth for rhumb lines, geodesics and their comparison.
   *
   * @param figure the ellipsoid or sphere
   * @return options with everything else the same
   */
  public BatchOptions withEllipsoid(Ellipsoid figure) {
    BatchOptions copy = copy();
    copy.ellipsoid = Objects.requireNonNull(figure, "figure");
    return copy;
  }

  /**
   * How fine the references of {@code mgrs} are.
   *
   * @param value the side of the square; a metre by default
   * @return options with everything else the same
   */
  public BatchOptions withPrecision(GridPrecision value) {
    BatchOptions copy = copy();
    copy.precision = Objects.requireNonNull(value, "value");
    return copy;
  }

  /**
   * The chance with which the ellipse of a fix holds the true position.
   *
   * @param value in (0, 1); 0.95 by default
   * @return options with everything else the same
   * @throws IllegalArgumentException if {@code value} is out of range
   */
  public BatchOptions withChance(double value) {
    if (!(value > 0.0 && value < 1.0)) { // written so that NaN fails
      throw new IllegalArgumentException("chance must be in (0, 1), but was " + value);
    }
    BatchOptions copy = copy();
    copy.chance = value;
    return copy;
  }

  /**
   * The tide whose heights are wanted.
   *
   * @param value the tide
   * @return options with everything else the same
   */
  public BatchOptions withTide(HarmonicTide value) {
    BatchOptions copy = copy();
    copy.tide = Objects.requireNonNull(value, "value");
    return copy;
  }

  boolean isReverse() {
    return reverse;
  }

  boolean isAlongGeodesic() {
    return alongGeodesic;
  }

  boolean isFullPrecision() {
    return fullPrecision;
  }

  boolean isStopAtRefusal() {
    return stopAtRefusal;
  }

  int threads() {
    return threads;
  }

  String prefix() {
    return prefix;
  }

  Ellipsoid ellipsoid() {
    return ellipsoid;
  }

  GridPrecision precision() {
    return precision;
  }

  double chance() {
    return chance;
  }

  Optional<HarmonicTide> tide() {
    return Optional.ofNullable(tide);
  }
}
