package org.ferryglide.nav.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import org.ferryglide.nav.note.TextFormatException;

/** How distances and speeds are written and read. */
final class MeasureText {
  private static final String DISTANCE_UNITS =
      "the unit must be m, km, NM (nautical miles), cables or statute miles";
  private static final String SPEED_UNITS = "the unit must be kn, km/h or m/s";

  private MeasureText() {}

  static String rounded(double value, int decimals) {
    if (decimals < 0 || decimals > 9) {
      throw new IllegalArgumentException("decimals must be in [0, 9], but was " + decimals);
    }
    BigDecimal shown = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return shown.toPlainString();
  }

  static double parseDistance(String text) {
    int unitAt = unitIndex(text);
    double number = number(text, unitAt, true);
    String unit = text.substring(unitAt).trim();
    // the case of M, NM and nm matters; that of words does not
    String spelled = unit.length() > 2 ? unit.toLowerCase(Locale.ROOT) : unit;
    return switch (spelled) {
      case "m", "metres" -> number;
      case "km", "kilometres" -> number * 1000.0;
      case "NM", "nautical mile", "nautical miles" -> number * Distance.METRES_PER_NAUTICAL_MILE;
      case "cable", "cables" -> number * Distance.METRES_PER_CABLE;
      case "statute mile", "statute miles" -> number * Distance.METRES_PER_STATUTE_MILE;
      case "mile", "miles" ->
          throw new TextFormatException(
              "say which miles: NM (nautical miles) or statute miles", text, unitAt);
      case "nm" ->
          throw new TextFormatException(
              "nautical miles are written NM; nm means nanometres", text, unitAt);
      default -> throw new TextFormatException(DISTANCE_UNITS, text, unitAt);
    };
  }

  static double parseSpeed(String text) {
    int unitAt = unitIndex(text);
    double number = number(text, unitAt, false);
    return switch (text.substring(unitAt).trim()) {
      case "kn", "knot", "knots" -> number * Speed.METRES_PER_SECOND_PER_KNOT;
      case "km/h" -> number / 3.6;
      case "m/s" -> number;
      default -> throw new TextFormatException(SPEED_UNITS, text, unitAt);
    };
  }

  static Velocity parseVelocity(String text) {
    String east = " m/s east, ";
    String north = " m/s north";
    int middle = text.indexOf(east);
    if (middle < 0) {
      throw new TextFormatException(
          "a velocity is written as in 1.0 m/s east, -0.5 m/s north", text, 0);
    }
    int rest = middle + east.length();
    if (!text.endsWith(north) || text.length() - north.length() < rest) {
      throw new TextFormatException("the north part must end with m/s north", text, rest);
    }
    return new Velocity(part(text, 0, middle), part(text, rest, text.length() - north.length()));
  }

  private static double part(String text, int from, int to) {
    try {
      double value = Double.parseDouble(text.substring(from, to));
      if (Math.abs(value) <= Double.MAX_VALUE) {
        return value;
      }
    } catch (NumberFormatException e) {
      // refused below, with its place
    }
    throw new TextFormatException("a finite decimal number must stand here", text, from);
  }

  /** Where the number ends and the unit begins. */
  private static int unitIndex(String text) {
    int i = 0;
    while (i < text.length() && isNumberPart(text, i)) {
      i++;
    }
    while (i < text.length() && text.charAt(i) == ' ') {
      i++;
    }
    return i;
  }

  private static boolean isNumberPart(String text, int i) {
    char c = text.charAt(i);
    return (c >= '0' && c <= '9') || c == '.' || c == '-' || c == '+' || c == 'E';
  }

  private static double number(String text, int unitAt, boolean signed) {
    String digits = text.substring(0, unitAt).trim();
    double value;
    try {
      value = Double.parseDouble(digits);
    } catch (NumberFormatException e) {
      int index = digits.isEmpty() && unitAt < text.length() ? unitAt : 0;
      throw new TextFormatException("a decimal number must come first", text, index);
    }
    if (!signed && value < 0.0) {
      throw new TextFormatException("a speed must not be negative", text, 0);
    }
    if (Double.isInfinite(value)) {
      throw new TextFormatException("the number is too large", text, 0);
    }
    return value;
  }
}
