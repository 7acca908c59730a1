package org.ferryglide.nav.position;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ferryglide.nav.note.TextFormatException;
import org.ferryglide.nav.reading.AngleReader;

/** How positions are written for people and read from what people write. */
final class PositionText {
  /** As in 50d06m18s N: an s after minutes marked m, before the letter of the hemisphere. */
  private static final Pattern SECONDS_BY_LETTER =
      Pattern.compile("[dD°] ?[0-9]{1,2} ?[mM] ?[0-9]{1,2}(?:\\.[0-9]{0,20})? ?(s) ?[NnSsEeWw]");

  /** Decimal degrees of a text no longer than this need no other form. */
  private static final int SHORT = 20;

  /** Charts and pilots give no more decimals of a minute or a second. */
  private static final int MOST_CHART_DECIMALS = 3;

  private PositionText() {}

  static String text(Position position, AngleForm form, int decimals) {
    PrintedAngle latitude = new PrintedAngle(position.latitudeDegrees(), form, decimals);
    PrintedAngle longitude = new PrintedAngle(position.longitudeDegrees(), form, decimals);
    return latitude.join(form, 2, "°", "'", "\"")
        + (latitude.negative() ? "S " : "N ")
        + longitude.join(form, 3, "°", "'", "\"")
        + (longitude.negative() ? "W" : "E");
  }

  /** Decimal degrees, unless a form of charts says the same in a shorter text. */
  static String withoutLoss(Position position) {
    String degrees = degrees(position);
    if (degrees.length() <= SHORT) {
      return degrees;
    }
    for (AngleForm form :
        new AngleForm[] {AngleForm.DEGREES_MINUTES, AngleForm.DEGREES_MINUTES_SECONDS}) {
      for (int decimals = 0; decimals <= MOST_CHART_DECIMALS; decimals++) {
        String charted = text(position, form, decimals);
        if (charted.length() < degrees.length() && parse(charted).equals(position)) {
          return charted;
        }
      }
    }
    return degrees;
  }

  private static String degrees(Position position) {
    return Math.abs(position.latitudeDegrees())
        + (position.latitudeDegrees() < 0.0 ? "°S " : "°N ")
        + Math.abs(position.longitudeDegrees())
        + (position.longitudeDegrees() < 0.0 ? "°W" : "°E");
  }

  static Position parse(String text) {
    if (Iso6709.looksLike(text)) {
      return Iso6709.parse(text);
    }
    if (UnmarkedPosition.looksLike(text)) {
      return UnmarkedPosition.parse(text);
    }
    String plain = plainMarks(text);
    try {
      return read(plain);
    } catch (TextFormatException refusal) {
      if (plain.equals(text)) {
        throw refusal;
      }
      throw new TextFormatException(refusal.reason(), text, refusal.index());
    }
  }

  /**
   * Rare spaces and marks as their plain equivalents, character by character, so that places stay.
   */
  private static String plainMarks(String text) {
    StringBuilder plain = new StringBuilder(text);
    for (int i = 0; i < plain.length(); i++) {
      char c = plain.charAt(i);
      if (c >= '\u2000' && c <= '\u200a') { // thin, hair and other printers' spaces
        plain.setCharAt(i, ' ');
      } else if (c == '\u00b4' || c == '\u02b9' || c == '\u02ca') { // acute accents and primes
        plain.setCharAt(i, '\'');
      } else if (c == '\u02ba') {
        plain.setCharAt(i, '"');
      }
    }
    Matcher letters = SECONDS_BY_LETTER.matcher(plain);
    while (letters.find()) {
      plain.setCharAt(letters.start(1), '"');
    }
    return plain.toString();
  }

  private static Position read(String text) {
    AngleReader reader = new AngleReader(text);
    Part first = Part.read(reader, "latitude");
    final boolean hyphens =
        text.indexOf('-', first.start + 1) >= 0
            && text.indexOf('-', first.start + 1) < reader.index();
    final boolean glued = reader.index() > 0 && Character.isDigit(text.charAt(reader.index() - 1));
    boolean separated = reader.skip(",;");
    if (reader.atEnd()) {
      throw reader.refuse("a second part must follow, longitude after latitude");
    }
    Part second = Part.read(reader, "longitude");
    if (hyphens && glued && second.signed && !separated) {
      throw new TextFormatException(
          "after hyphens between figures a minus must have a space or a comma before it, or letters"
              + " must say which side is meant",
          text,
          second.start);
    }
    reader.expectEnd("nothing may follow the second part");
    if (first.axis == 0 && second.axis == 0 && !separated && !second.signed) {
      throw new TextFormatException(
          "parts without letters must be separated by a comma", text, second.start);
    }
    refuseHalfLettered(first, second, text);
    refuseHalfLettered(second, first, text);
    boolean swapped = first.axis == Part.LONGITUDE || second.axis == Part.LATITUDE;
    Part latitude = swapped ? second : first;
    Part longitude = swapped ? first : second;
    if (latitude.axis == Part.LONGITUDE || longitude.axis == Part.LATITUDE) {
      throw new TextFormatException(
          "one part must be north or south and the other east or west", text, second.start);
    }
    checkRange(latitude, 90, "latitude", text);
    checkRange(longitude, 180, "longitude", text);
    return Position.ofDegrees(latitude.degrees, longitude.degrees);
  }

  /** A letter forgotten in one part would turn west into east, so it is not taken for a plus. */
  private static void refuseHalfLettered(Part part, Part other, String text) {
    if (part.axis == 0 && !part.signed && other.axis != 0) {
      throw new TextFormatException(
          other.axis == Part.LATITUDE
              ? "the longitude must have a letter, E or W, as the latitude has one"
              : "the latitude must have a letter, N or S, as the longitude has one",
          text,
          part.start);
    }
  }

  private static void checkRange(Part part, int limit, String name, String text) {
    if (!(Math.abs(part.degrees) <= limit)) {
      throw new TextFormatException(
          name + " must be in [-" + limit + ", " + limit + "] degrees, but was " + part.degrees,
          text,
          part.start);
    }
  }

  /** One of the two parts, with what its letter or sign says. */
  private static final class Part {
    static final int LATITUDE = 1;
    static final int LONGITUDE = 2;

    final double degrees;
    final int axis;
    final boolean signed;
    final int start;

    private Part(double degrees, int axis, boolean signed, int start) {
      this.degrees = degrees;
      this.axis = axis;
      this.signed = signed;
      this.start = start;
    }

    static Part read(AngleReader reader, String name) {
      final int start = reader.index();
      int side = reader.sign();
      final boolean signed = side != 0;
      int axis = 0;
      if (!signed) {
        side = reader.hemisphere('N', 'S');
        axis = side != 0 ? LATITUDE : 0;
        if (side == 0) {
          side = reader.hemisphere('E', 'W');
          axis = side != 0 ? LONGITUDE : 0;
        }
      }
      double degrees = reader.angle(axis == 0 ? name : axis == LATITUDE ? "latitude" : "longitude");
      if (side == 0) {
        side = reader.hemisphere('N', 'S');
        axis = side != 0 ? LATITUDE : 0;
        if (side == 0) {
          side = reader.hemisphere('E', 'W');
          axis = side != 0 ? LONGITUDE : 0;
        }
      }
      return new Part(side < 0 ? -degrees : degrees, axis, signed, start);
    }
  }
}
