package org.ferryglide.nav.position;

import org.ferryglide.nav.note.TextFormatException;

/** The standard form of ISO 6709: signs and digits only, width telling how the angle is split. */
final class Iso6709 {
  private final String text;
  private int place;

  private Iso6709(String text) {
    this.text = text;
  }

  static String text(Position position, AngleForm form, int decimals) {
    PrintedAngle latitude = new PrintedAngle(position.latitudeDegrees(), form, decimals);
    PrintedAngle longitude = new PrintedAngle(position.longitudeDegrees(), form, decimals);
    return (latitude.negative() ? "-" : "+")
        + latitude.join(form, 2, "", "", "")
        + (longitude.negative() ? "-" : "+")
        + longitude.join(form, 3, "", "", "")
        + "/";
  }

  /** A sign, digits and a fraction, and then at once another sign or the end. */
  static boolean looksLike(String text) {
    return text.matches("[+-][0-9]+(\\.[0-9]*)?[+-].*") || text.matches("[+-].*/");
  }

  static Position parse(String text) {
    Iso6709 reader = new Iso6709(text);
    double latitude = reader.angle(2, 90, "latitude");
    double longitude = reader.angle(3, 180, "longitude");
    if (reader.place < text.length() && text.charAt(reader.place) == '/') {
      reader.place++;
    }
    if (reader.place < text.length()) {
      throw reader.refuse("only a solidus may follow the longitude; heights are not kept");
    }
    return Position.ofDegrees(latitude, longitude);
  }

  private TextFormatException refuse(String reason) {
    return new TextFormatException(reason, text, place);
  }

  private double angle(int degreeWidth, int limit, String name) {
    if (place >= text.length() || (text.charAt(place) != '+' && text.charAt(place) != '-')) {
      throw refuse(name + " must start with + or -");
    }
    final int start = place;
    final boolean negative = text.charAt(place) == '-';
    place++;
    final int digits = place;
    skipDigits();
    final int width = place - digits;
    if (width != degreeWidth && width != degreeWidth + 2 && width != degreeWidth + 4) {
      place = digits;
      throw refuse(
          name
              + " must have "
              + degreeWidth
              + ", "
              + (degreeWidth + 2)
              + " or "
              + (degreeWidth + 4)
              + " digits before its fraction, but had "
              + width);
    }
    if (place < text.length() && text.charAt(place) == '.') {
      place++;
      int fraction = place;
      skipDigits();
      if (place == fraction) {
        throw refuse("digits must follow the decimal point");
      }
    }
    double degrees = combine(digits, width, degreeWidth);
    if (!(degrees <= limit)) {
      place = start;
      throw refuse(
          name
              + " must be in [-"
              + limit
              + ", "
              + limit
              + "] degrees, but was "
              + (negative ? -degrees : degrees));
    }
    return negative ? -degrees : degrees;
  }

  private double combine(int from, int width, int degreeWidth) {
    if (width == degreeWidth) {
      return Double.parseDouble(text.substring(from, place));
    }
    double degrees = Double.parseDouble(text.substring(from, from + degreeWidth));
    int minutesAt = from + degreeWidth;
    if (width == degreeWidth + 2) {
      return degrees + below60("minutes", minutesAt, place) / 60.0;
    }
    double minutes = below60("minutes", minutesAt, minutesAt + 2);
    return degrees + (minutes * 60.0 + below60("seconds", minutesAt + 2, place)) / 3600.0;
  }

  private double below60(String part, int from, int to) {
    double value = Double.parseDouble(text.substring(from, to));
    if (!(value < 60.0)) {
      place = from;
      throw refuse(part + " must be in [0, 60), but were " + text.substring(from, to));
    }
    return value;
  }

  private void skipDigits() {
    while (place < text.length() && text.charAt(place) >= '0' && text.charAt(place) <= '9') {
      place++;
    }
  }
}
