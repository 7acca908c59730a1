package org.ferryglide.nav.measure;

import java.io.Serializable;
import java.time.Instant;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Words;

/**
 * The units in which distances, speeds and heights are printed: nautical miles, knots and metres
 * unless others are chosen. They change what is printed, never what is worked out.
 *
 * <pre>{@code
 * Units units = Units.parse("km km/h ft");
 * units.distance(9260.0); // 9.26, kilometres
 * units.speedSymbol(); // km/h
 * }</pre>
 *
 * @param distanceSymbol NM, km or mi (statute miles)
 * @param speedSymbol kn, km/h, mph or m/s
 * @param heightSymbol m or ft, for heights, depths and distances too short for the other
 * @see <a href="https://www.bipm.org/en/publications/si-brochure">SI Brochure, 8th edition, table
 *     8: nautical mile and knot; the yard of 0.9144 m and with it foot and statute mile are those
 *     of the agreement of 1959</a>
 */
public record Units(String distanceSymbol, String speedSymbol, String heightSymbol)
    implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final Map<String, Double> METRES =
      inOrder(
          "NM",
          Distance.METRES_PER_NAUTICAL_MILE,
          "km",
          1000.0,
          "mi",
          Distance.METRES_PER_STATUTE_MILE);

  private static final double HOUR = 3600.0;

  private static final Map<String, Double> METRES_A_SECOND =
      inOrder(
          "kn",
          Speed.METRES_PER_SECOND_PER_KNOT,
          "km/h",
          1000.0 / HOUR,
          "mph",
          Distance.METRES_PER_STATUTE_MILE / HOUR,
          "m/s",
          1.0);

  private static final Map<String, Double> METRES_HIGH =
      inOrder("m", 1.0, "ft", Distance.METRES_PER_FOOT);

  /** Nautical miles, knots and metres. */
  public static final Units NAUTICAL = new Units("NM", "kn", "m");

  /**
   * Takes three symbols; {@link #parse} needs only those that differ from {@link #NAUTICAL}.
   *
   * @param distanceSymbol NM, km or mi
   * @param speedSymbol kn, km/h, mph or m/s
   * @param heightSymbol m or ft
   * @throws IllegalArgumentException if a symbol is none of them
   */
  public Units {
    refuseUnknown(METRES, "distance", distanceSymbol);
    refuseUnknown(METRES_A_SECOND, "speed", speedSymbol);
    refuseUnknown(METRES_HIGH, "height", heightSymbol);
  }

  private static Map<String, Double> inOrder(Object... pairs) {
    Map<String, Double> map = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      map.put((String) pairs[i], (Double) pairs[i + 1]);
    }
    return map;
  }

  private static void refuseUnknown(Map<String, Double> known, String what, String symbol) {
    if (!known.containsKey(symbol)) {
      throw new IllegalArgumentException(
          "unit of " + what + " must be one of " + known.keySet() + ", but was " + symbol);
    }
  }

  /**
   * Reads the symbols that are to differ from nautical miles, knots and metres.
   *
   * @param text symbols in any order, separated by spaces or commas; no more than one for each of
   *     distance, speed and height
   * @return the units
   * @throws IllegalArgumentException if a symbol is not known, or there are two for one thing
   */
  public static Units parse(String text) {
    String[] chosen = new String[3];
    List<Map<String, Double>> kinds = Arrays.asList(METRES, METRES_A_SECOND, METRES_HIGH);
    for (String word : text.trim().split("[ ,]+", -1)) {
      if (!take(kinds, chosen, word)) {
        throw new IllegalArgumentException(
            "units must be one of "
                + METRES.keySet()
                + ", one of "
                + METRES_A_SECOND.keySet()
                + " and one of "
                + METRES_HIGH.keySet()
                + ", or some of these, but were "
                + text);
      }
    }
    return new Units(
        chosen[0] == null ? NAUTICAL.distanceSymbol : chosen[0],
        chosen[1] == null ? NAUTICAL.speedSymbol : chosen[1],
        chosen[2] == null ? NAUTICAL.heightSymbol : chosen[2]);
  }

  /** Takes a symbol for its kind; false if it is not known or its kind has one. */
  private static boolean take(List<Map<String, Double>> kinds, String[] chosen, String word) {
    for (int i = 0; i < chosen.length; i++) {
      for (String symbol : kinds.get(i).keySet()) {
        if (isSame(symbol, word) && chosen[i] == null) {
          chosen[i] = symbol;
          return true;
        }
      }
    }
    return false;
  }

  /** No two symbols differ by their case alone. */
  private static boolean isSame(String symbol, String word) {
    return symbol.toLowerCase(Locale.ROOT).equals(word.toLowerCase(Locale.ROOT));
  }

  /**
   * A distance in its unit.
   *
   * @param metres the distance, metres; NaN gives NaN
   * @return the same in {@link #distanceSymbol}
   */
  public double distance(double metres) {
    return metres / unit(METRES, distanceSymbol);
  }

  /**
   * A speed in its unit.
   *
   * @param metresPerSecond the speed, metres a second; NaN gives NaN
   * @return the same in {@link #speedSymbol}
   */
  public double speed(double metresPerSecond) {
    return metresPerSecond / unit(METRES_A_SECOND, speedSymbol);
  }

  /**
   * A height or short distance in its unit.
   *
   * @param metres the height, metres; NaN gives NaN
   * @return the same in {@link #heightSymbol}
   */
  public double height(double metres) {
    return metres / unit(METRES_HIGH, heightSymbol);
  }

  private static double unit(Map<String, Double> known, String symbol) {
    Double one = known.get(symbol);
    return one == null ? Double.NaN : one;
  }

  /**
   * How the data of notes are printed in these units, for {@link Words#say(Note, BiFunction)}. A
   * figure whose name ends in {@code Knots}, {@code MetresPerSecond}, {@code Metres} or {@code
   * NauticalMiles} is printed in the unit chosen, with its symbol; one that ends in {@code Time},
   * by the clock; one that begins with {@code spoken}, digit by digit. The figure of a finding is
   * rounded to its worse side, its limits to the other.
   *
   * @param words symbols under {@code unit.}, spoken figures under {@code figure.}
   * @param clock how a time is printed
   * @return what is printed for a datum of a note by its name; null if the note has no such datum
   */
  public BiFunction<Note, String, String> printing(Words words, Function<Instant, String> clock) {
    PrintedData data = new PrintedData(this, words, clock);
    return data::printed;
  }

  /** The symbols, as {@link #parse} reads them. */
  @Override
  public String toString() {
    return distanceSymbol + " " + speedSymbol + " " + heightSymbol;
  }
}
