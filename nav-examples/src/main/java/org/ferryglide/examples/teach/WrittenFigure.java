package org.ferryglide.examples.teach;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.teach.Quantity;

/** A figure as a learner writes it: with the unit or letter of its quantity, or bare. */
final class WrittenFigure {
  private static final Pattern CLOCK = Pattern.compile("(\\d{1,2}):(\\d{2})");
  private static final Pattern HOURS =
      Pattern.compile("(-?)(?:(\\d{1,3})\\s*h)?\\s*(?:(\\d{1,4})\\s*(?:min)?)?");
  private static final Pattern NUMBER =
      Pattern.compile("([-+]?\\d{1,6}(?:\\.\\d{1,9})?)\\s*(?:°|'|NM|kn|m)?\\s*([TMGC]?)");

  private WrittenFigure() {}

  /**
   * Reads a figure.
   *
   * @throws IllegalArgumentException with what was given and what is allowed
   */
  static double read(Quantity quantity, String text) {
    String tidy = text.trim();
    return switch (quantity) {
      case CLOCK -> clock(tidy);
      case MINUTES -> minutes(tidy);
      case EAST_WEST -> east(tidy);
      default -> number(quantity, tidy);
    };
  }

  private static double clock(String text) {
    Matcher found = CLOCK.matcher(text);
    if (found.matches()) {
      int hour = Integer.parseInt(found.group(1));
      int minute = Integer.parseInt(found.group(2));
      if (hour < 24 && minute < 60) {
        return hour * 60.0 + minute;
      }
    }
    throw refused(text, "a time of day, as 14:05");
  }

  private static double minutes(String text) {
    Matcher found = HOURS.matcher(text);
    if (found.matches() && (found.group(2) != null || found.group(3) != null)) {
      double hours = found.group(2) == null ? 0.0 : Double.parseDouble(found.group(2));
      double rest = found.group(3) == null ? 0.0 : Double.parseDouble(found.group(3));
      return (found.group(1).isEmpty() ? 1.0 : -1.0) * (hours * 60.0 + rest);
    }
    throw refused(text, "a length of time, as 1 h 05 min or 65");
  }

  private static double east(String text) {
    String upper = text.toUpperCase(Locale.ROOT);
    if (upper.endsWith("E") || upper.endsWith("W")) {
      return Variation.parse(upper).degreesEast();
    }
    return number(Quantity.EAST_WEST, text);
  }

  private static double number(Quantity quantity, String text) {
    Matcher found = NUMBER.matcher(text);
    if (found.matches() && (quantity.isBearing() || found.group(2).isEmpty())) {
      double value = Double.parseDouble(found.group(1));
      if (!quantity.isBearing() || (value >= 0.0 && value <= 360.0)) {
        return value;
      }
    }
    throw refused(
        text,
        quantity.isBearing() ? "a bearing in 0 to 360, as 049" : "a number of " + quantity.unit());
  }

  private static IllegalArgumentException refused(String text, String allowed) {
    return new IllegalArgumentException("\"" + text + "\" is not " + allowed);
  }
}
