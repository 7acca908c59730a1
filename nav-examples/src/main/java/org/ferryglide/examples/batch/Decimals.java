package org.ferryglide.examples.batch;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;

/**
 * Decimal numbers in bytes, read and written many times faster than by way of a {@code String}.
 *
 * <p>What is read is the double nearest to the figures, as {@link Double#parseDouble} finds it: up
 * to 15 or 16 figures are a whole number and a power of ten, both exact, and one division rounds
 * once; longer ones are left to {@code parseDouble}.
 */
final class Decimals {
  /** Whole numbers up to here are exact as doubles. */
  private static final long EXACT_WHOLE = 1L << 53;

  /** Beyond so many figures a long might overflow. */
  private static final int MOST_FIGURES = 18;

  /** Powers of ten that are exact as doubles. */
  private static final double[] TENS = new double[23];

  static {
    TENS[0] = 1.0;
    for (int i = 1; i < TENS.length; i++) {
      TENS[i] = 10.0 * TENS[i - 1]; // 5^22 still fits into 53 bits
    }
  }

  private Decimals() {}

  /** The number between two places; NaN if it is anything but a plain decimal number. */
  static double parse(byte[] text, int start, int end) {
    int from = start;
    int to = end;
    while (from < to && text[from] == ' ') {
      from++;
    }
    while (to > from && text[to - 1] == ' ') {
      to--;
    }
    int place = from;
    boolean negative = false;
    if (place < to && (text[place] == '-' || text[place] == '+')) {
      negative = text[place++] == '-';
    }
    long whole = 0;
    int figures = 0;
    int decimals = 0;
    boolean point = false;
    for (; place < to; place++) {
      int digit = text[place] - '0';
      if (digit >= 0 && digit <= 9) {
        figures++;
        whole = 10 * whole + digit; // may overflow; then there are too many figures below
        decimals += point ? 1 : 0;
      } else if (text[place] == '.' && !point) {
        point = true;
      } else {
        break;
      }
    }
    if (figures == 0) {
      return Double.NaN;
    }
    if (place < to && !isExponent(text, place, to)) {
      return Double.NaN;
    }
    if (place == to && figures <= MOST_FIGURES && whole <= EXACT_WHOLE && decimals < TENS.length) {
      double value = whole / TENS[decimals];
      return negative ? -value : value;
    }
    double value =
        Double.parseDouble(new String(text, from, to - from, StandardCharsets.ISO_8859_1));
    return Double.isInfinite(value) ? Double.NaN : value;
  }

  private static boolean isExponent(byte[] text, int from, int to) {
    if (text[from] != 'e' && text[from] != 'E') {
      return false;
    }
    int place = from + 1;
    if (place < to && (text[place] == '-' || text[place] == '+')) {
      place++;
    }
    int digits = place;
    while (place < to && text[place] >= '0' && text[place] <= '9') {
      place++;
    }
    return place == to && place > digits;
  }

  /**
   * Writes a number with a fixed number of decimals, rounded to the nearest; never {@code -0}.
   *
   * @return the place after what was written; at most 40 bytes are
   */
  static int write(double value, int decimals, byte[] out, int at) {
    double scaled = value * TENS[decimals];
    if (!(Math.abs(scaled) < EXACT_WHOLE)) {
      String text = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN).toString();
      return writeText(text.length() <= 40 ? text : Double.toString(value), out, at);
    }
    long whole = (long) Math.rint(scaled);
    int place = at;
    if (whole < 0) {
      out[place++] = '-';
      whole = -whole;
    }
    int figures = Math.max(decimals + 1, figures(whole));
    int end = place + figures + (decimals > 0 ? 1 : 0);
    int back = end;
    for (int i = 0; i < figures; i++) {
      if (i == decimals && decimals > 0) {
        out[--back] = '.';
      }
      long tenth = whole / 10;
      out[--back] = (byte) ('0' + (int) (whole - 10 * tenth));
      whole = tenth;
    }
    return end;
  }

  private static int figures(long whole) {
    int figures = 1;
    long bound = 10;
    while (whole >= bound) { // below 2^53, so that the bound cannot overflow
      figures++;
      bound *= 10;
    }
    return figures;
  }

  /** Writes text of plain ASCII. */
  static int writeText(String text, byte[] out, int at) {
    for (int i = 0; i < text.length(); i++) {
      out[at + i] = (byte) text.charAt(i);
    }
    return at + text.length();
  }
}
