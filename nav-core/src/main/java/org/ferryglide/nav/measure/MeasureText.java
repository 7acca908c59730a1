package org.ferryglide.nav.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.note.TextFormatException;

/** How distances and speeds are written and read. */
final class MeasureText {
  private static final String DISTANCE_UNITS =
      "the unit must be m, km, NM (nautical miles), cables, statute miles, feet or fathoms";
  private static final String SPEED_UNITS = "the unit must be kn, km/h, m/s or mph";

  /** A text no longer than this is short enough whatever the unit. */
  private static final int SHORT = 9;

  /** Significant digits after which a double has no more to tell. */
  private static final int MOST_DIGITS = 17;

  private MeasureText() {}

  static Duration duration(double seconds, Distance distance, Speed speed) {
    if (!(Math.abs(seconds) < Long.MAX_VALUE)) { // written so that NaN fails
      throw new IllegalArgumentException(
          "speed must be high enough for the time over "
              + distance
              + " to be a Duration, but was "
              + speed);
    }
    return Seconds.toDuration(seconds);
  }

  static String rounded(double value, int decimals) {
    if (decimals < 0 || decimals > 9) {
      throw new IllegalArgumentException("decimals must be in [0, 9], but was " + decimals);
    }
    BigDecimal shown = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return shown.toPlainString();
  }

  /** The decimal of fewest digits that gives a value back; empty if none does. */
  static String fewestDigits(double approximately, double value, DoubleUnaryOperator toValue) {
    if (Double.isInfinite(approximately)) { // the largest doubles are too large for smaller units
      return "";
    }
    for (int digits = 1; digits <= MOST_DIGITS; digits++) {
      double rounded =
          new BigDecimal(approximately)
              .round(new MathContext(digits, RoundingMode.HALF_EVEN))
              .doubleValue();
      if (toValue.applyAsDouble(rounded) == value) {
        return Double.toString(rounded);
      }
    }
    return "";
  }

  /**
   * Metres, unless nautical miles, or kilometres where they are no whole metres, say the same in a
   * short text.
   */
  static String distance(double metres) {
    String plain = metres + " m";
    if (plain.length() <= SHORT) {
      return plain;
    }
    String miles =
        fewestDigits(
            metres / Distance.METRES_PER_NAUTICAL_MILE,
            metres,
            x -> x * Distance.METRES_PER_NAUTICAL_MILE);
    String shorter = shorter(plain, miles, " NM");
    if (shorter.length() <= SHORT || metres == Math.rint(metres)) {
      return shorter;
    }
    String kilometres = fewestDigits(metres / 1000.0, metres, x -> x * 1000.0);
    return shorter(shorter, kilometres, " km");
  }

  /** A text, or a number with its unit where there is one and that is shorter. */
  private static String shorter(String text, String number, String unit) {
    return number.isEmpty() || number.length() + unit.length() >= text.length()
        ? text
        : number + unit;
  }

  /** Knots, unless metres a second or kilometres an hour are shorter. */
  static String speed(double metresPerSecond) {
    String knots =
        fewestDigits(
            metresPerSecond / Speed.METRES_PER_SECOND_PER_KNOT,
            metresPerSecond,
            x -> x * Speed.METRES_PER_SECOND_PER_KNOT);
    String plain = metresPerSecond + " m/s";
    String shorter = knots.isEmpty() || knots.length() + 3 > plain.length() ? plain : knots + " kn";
    if (shorter.length() <= SHORT) {
      return shorter;
    }
    String kilometres = fewestDigits(metresPerSecond * 3.6, metresPerSecond, x -> x / 3.6);
    return shorter(shorter, kilometres, " km/h");
  }

  /** Set and rate to a thousandth where they give the very parts, else the parts. */
  static String velocity(Velocity velocity) {
    double set = Math.rint(velocity.set().degrees() * 1000.0) / 1000.0 % 360.0;
    double rate = Math.rint(velocity.rate().knots() * 1000.0) / 1000.0;
    if (Velocity.ofSetAndRate(TrueBearing.ofDegrees(set), Speed.ofKnots(rate)).equals(velocity)) {
      String zeros = set < 10.0 ? "00" : set < 100.0 ? "0" : "";
      return zeros + Arguments.plain(set) + "° " + rate + " kn";
    }
    return velocity.eastMetresPerSecond()
        + " m/s east, "
        + velocity.northMetresPerSecond()
        + " m/s north";
  }

  static double parseDistance(String text) {
    int unitAt = unitIndex(text);
    double number = number(text, unitAt, true);
    String unit = text.substring(unitAt, end(text));
    // the case of M, NM and nm matters; that of words does not
    String spelled = unit.length() > 2 ? unit.toLowerCase(Locale.ROOT) : unit;
    return switch (spelled) {
      case "m", "metres" -> number;
      case "km", "kilometres" -> number * 1000.0;
      case "NM", "nautical mile", "nautical miles" -> number * Distance.METRES_PER_NAUTICAL_MILE;
      case "cable", "cables" -> number * Distance.METRES_PER_CABLE;
      case "statute mile", "statute miles" -> number * Distance.METRES_PER_STATUTE_MILE;
      case "ft", "foot", "feet" -> number * Distance.METRES_PER_FOOT;
      case "fathom", "fathoms" -> number * Distance.METRES_PER_FATHOM;
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
    return switch (text.substring(unitAt, end(text)).toLowerCase(Locale.ROOT)) {
      case "kn", "kt", "kts", "knot", "knots" -> number * Speed.METRES_PER_SECOND_PER_KNOT;
      case "km/h" -> number / 3.6;
      case "m/s" -> number;
      case "mph" -> number * Distance.METRES_PER_STATUTE_MILE / 3600.0;
      default -> throw new TextFormatException(SPEED_UNITS, text, unitAt);
    };
  }

  static Velocity parseVelocity(String text) {
    int mark = text.indexOf('°');
    if (mark >= 0) {
      return setAndRate(text, mark);
    }
    String east = " m/s east, ";
    String north = " m/s north";
    int middle = text.indexOf(east);
    if (middle < 0) {
      throw new TextFormatException(
          "a velocity is written as in 090° 2.0 kn, or 1.0 m/s east, -0.5 m/s north", text, 0);
    }
    int rest = middle + east.length();
    if (!text.endsWith(north) || text.length() - north.length() < rest) {
      throw new TextFormatException("the north part must end with m/s north", text, rest);
    }
    return new Velocity(part(text, 0, middle), part(text, rest, text.length() - north.length()));
  }

  private static Velocity setAndRate(String text, int mark) {
    TrueBearing set = TrueBearing.parse(text.substring(0, mark + 1));
    int rest = mark + 1;
    if (text.startsWith("T", rest)) {
      rest++;
    }
    try {
      return Velocity.ofSetAndRate(set, Speed.parse(text.substring(rest)));
    } catch (TextFormatException e) {
      throw new TextFormatException(
          "the rate with its unit must follow the set, as in 090° 2.0 kn", text, rest + e.index());
    }
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
    int i = start(text);
    while (i < text.length() && isNumberPart(text, i)) {
      i++;
    }
    while (i < text.length() && isSpace(text.charAt(i))) {
      i++;
    }
    return i;
  }

  private static int start(String text) {
    int i = 0;
    while (i < text.length() && isSpace(text.charAt(i))) {
      i++;
    }
    return i;
  }

  private static int end(String text) {
    int i = text.length();
    while (i > 0 && isSpace(text.charAt(i - 1))) {
      i--;
    }
    return i;
  }

  private static boolean isSpace(char c) {
    return c == ' ' || c == '\t' || c == '\u00a0' || c == '\u202f';
  }

  private static boolean isNumberPart(String text, int i) {
    char c = text.charAt(i);
    return (c >= '0' && c <= '9') || c == '.' || c == '-' || c == '+' || c == 'E';
  }

  private static double number(String text, int unitAt, boolean signed) {
    int from = start(text);
    int to = unitAt;
    while (to > from && isSpace(text.charAt(to - 1))) {
      to--;
    }
    String digits = text.substring(from, to);
    double value;
    try {
      value = Double.parseDouble(digits);
    } catch (NumberFormatException e) {
      int index = digits.isEmpty() && unitAt < text.length() ? unitAt : from;
      throw new TextFormatException("a decimal number must come first", text, index);
    }
    if (!signed && value < 0.0) {
      throw new TextFormatException("a speed must not be negative", text, from);
    }
    if (Double.isInfinite(value)) {
      throw new TextFormatException("the number is too large", text, from);
    }
    return value;
  }
}
