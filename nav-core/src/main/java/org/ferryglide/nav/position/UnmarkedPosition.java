package org.ferryglide.nav.position;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ferryglide.nav.note.TextFormatException;
import org.jspecify.annotations.Nullable;

/**
 * Positions whose figures stand without marks: {@code 5006.3,N,00532.1,W} as receivers send them,
 * {@code 5006.3N 00532.1W} as pilots print them, and two numbers separated by a comma.
 *
 * <p>The width of the figures tells how they are split, as in ISO 6709, whose reader does the rest.
 */
final class UnmarkedPosition {
  private static final Pattern LETTERED =
      Pattern.compile(
          " ?([0-9]{4}|[0-9]{6})(\\.[0-9]{0,20})? ?,? ?([NS])"
              + " ?[,;]? ?([0-9]{5}|[0-9]{7})(\\.[0-9]{0,20})? ?,? ?([EW]) ?");

  private static final Pattern TWO_NUMBERS =
      Pattern.compile("([0-9]{1,2}(?:\\.[0-9]{0,20})?),([0-9]{1,3}(?:\\.[0-9]{0,20})?)");

  private UnmarkedPosition() {}

  static boolean looksLike(String text) {
    return lettered(text).matches() || TWO_NUMBERS.matcher(text).matches();
  }

  private static Matcher lettered(String text) {
    return LETTERED.matcher(text.toUpperCase(Locale.ROOT));
  }

  static Position parse(String text) {
    Matcher numbers = TWO_NUMBERS.matcher(text);
    if (numbers.matches()) {
      double latitude = Double.parseDouble(numbers.group(1));
      double longitude = Double.parseDouble(numbers.group(2));
      check(latitude, 90, "latitude", text, 0);
      check(longitude, 180, "longitude", text, numbers.start(2));
      return Position.ofDegrees(latitude, longitude);
    }
    Matcher parts = lettered(text);
    if (!parts.matches()) {
      throw new IllegalArgumentException("not an unmarked position: " + text);
    }
    String latitude = parts.group(1) + orEmpty(parts.group(2));
    String longitude = parts.group(4) + orEmpty(parts.group(5));
    String iso =
        (parts.group(3).equals("N") ? "+" : "-")
            + latitude
            + (parts.group(6).equals("E") ? "+" : "-")
            + longitude
            + "/";
    try {
      return Iso6709.parse(iso);
    } catch (TextFormatException refusal) {
      boolean inLatitude = refusal.index() <= latitude.length();
      int start = inLatitude ? parts.start(1) : parts.start(4);
      int before = inLatitude ? 1 : latitude.length() + 2;
      throw new TextFormatException(
          refusal.reason(), text, start + Math.max(0, refusal.index() - before));
    }
  }

  private static String orEmpty(@Nullable String group) {
    return group == null ? "" : group;
  }

  private static void check(double degrees, int limit, String name, String text, int start) {
    if (!(degrees <= limit)) {
      throw new TextFormatException(
          name + " must be in [-" + limit + ", " + limit + "] degrees, but was " + degrees,
          text,
          start);
    }
  }
}
