package org.ferryglide.nav.reading;

import org.ferryglide.nav.note.TextFormatException;

/**
 * Reads numbers and angle marks from a piece of text, character by character, so that a refusal can
 * point at the one that does not fit.
 *
 * <p>Both the typographic and the plain marks are read: {@code °} {@code º} {@code ˚} or the letter
 * d for degrees, {@code ′} {@code ’} {@code '} for minutes, {@code ″} {@code ”} {@code "} or two
 * minute marks for seconds. The decimal mark is a point, in every locale.
 *
 * <pre>{@code
 * AngleReader reader = new AngleReader("4°15'W");
 * double degrees = reader.angle("variation"); // 4.25
 * boolean west = reader.hemisphere('E', 'W') < 0;
 * reader.expectEnd("nothing may follow the hemisphere");
 * }</pre>
 *
 * <p>Holds its place in the text: one reader belongs to one thread.
 */
public final class AngleReader {
  private final String text;
  private int place;

  /**
   * Starts at the first character that is not a space.
   *
   * @param text the text to read
   */
  public AngleReader(String text) {
    this.text = text;
    skipSpaces();
  }

  /**
   * Where the next character to be read stands.
   *
   * @return index in the text, its length at the end
   */
  public int index() {
    return place;
  }

  /**
   * Whether everything but spaces has been read.
   *
   * @return true at the end
   */
  public boolean atEnd() {
    return place >= text.length();
  }

  /**
   * A refusal at the present place.
   *
   * @param reason what is wrong and what is allowed
   * @return the exception to throw
   */
  public TextFormatException refuse(String reason) {
    return new TextFormatException(reason, text, place);
  }

  private char next() {
    return atEnd() ? '\0' : text.charAt(place);
  }

  private void skipSpaces() {
    while (place < text.length()
        && (text.charAt(place) == ' '
            || text.charAt(place) == '\u00a0'
            || text.charAt(place) == '\u202f'
            || text.charAt(place) == '\t')) {
      place++;
    }
  }

  /**
   * Reads an unsigned decimal number, with an exponent only as {@link Double#toString} writes it.
   *
   * @param reason what to say if there is none
   * @return the number
   * @throws TextFormatException if the next character starts no number
   */
  public double number(String reason) {
    int start = place;
    int digits = 0;
    while (isDigit(next())) {
      place++;
      digits++;
    }
    if (next() == '.') {
      place++;
      while (isDigit(next())) {
        place++;
        digits++;
      }
    }
    if (digits == 0) {
      place = start;
      throw refuse(reason);
    }
    skipExponent();
    double value = Double.parseDouble(text.substring(start, place));
    boolean commaBeforeDigit =
        next() == ',' && place + 1 < text.length() && isDigit(text.charAt(place + 1));
    if (commaBeforeDigit && text.substring(start, place).indexOf('.') < 0) {
      throw refuse("the decimal mark must be a point");
    }
    skipSpaces();
    return value;
  }

  /** {@code 1.0E-5} is how Double prints a tiny number; the E of {@code 4.25E} is a hemisphere. */
  private void skipExponent() {
    if (next() != 'E' || place + 2 >= text.length() || text.charAt(place + 1) != '-') {
      return;
    }
    int end = place + 2;
    while (end < text.length() && isDigit(text.charAt(end))) {
      end++;
    }
    if (end > place + 2) {
      place = end;
    }
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  /**
   * Reads {@code +} or {@code -} (the minus sign proper as well) if there is one.
   *
   * @return -1 after a minus, 1 after a plus, 0 if there was neither
   */
  public int sign() {
    char c = next();
    if (c == '+') {
      place++;
      return 1;
    }
    if (c == '-' || c == '\u2212') {
      place++;
      return -1;
    }
    return 0;
  }

  /**
   * Reads a degree mark if there is one.
   *
   * @return whether there was one
   */
  public boolean skipDegreeMark() {
    return skipAny("°º˚dD");
  }

  private boolean skipMinuteMark() {
    if (isSecondMark()) {
      return false;
    }
    return skipAny("'′’mM");
  }

  private boolean isSecondMark() {
    char c = next();
    char after = place + 1 < text.length() ? text.charAt(place + 1) : '\0';
    return c == '"' || c == '″' || c == '”' || (isMinuteMark(c) && isMinuteMark(after));
  }

  private static boolean isMinuteMark(char c) {
    return c == '\'' || c == '′' || c == '’';
  }

  private boolean skipSecondMark() {
    if (!isSecondMark()) {
      return false;
    }
    place += isMinuteMark(next()) ? 2 : 1;
    skipSpaces();
    return true;
  }

  private boolean skipAny(String marks) {
    if (!atEnd() && marks.indexOf(next()) >= 0) {
      place++;
      skipSpaces();
      return true;
    }
    return false;
  }

  /**
   * Reads an unsigned angle as degrees, as degrees and minutes, or as degrees, minutes and seconds;
   * marks may be left out if spaces, colons or hyphens part the figures.
   *
   * @param name what is read, for the message
   * @return degrees
   * @throws TextFormatException if there is no angle, if minutes or seconds reach 60, or if a part
   *     follows one that has decimals
   */
  public double angle(String name) {
    int start = place;
    double degrees = number(name + " starts with its degrees");
    boolean whole = wholeSince(start);
    skipDegreeMark();
    skipPartMark();
    if (!isDigit(next())) {
      return degrees;
    }
    if (!whole) {
      throw refuse("no minutes may follow degrees that have decimals");
    }
    start = place;
    double minutes = below60("minutes");
    whole = wholeSince(start);
    skipMinuteMark();
    skipPartMark();
    if (!isDigit(next())) {
      return degrees + minutes / 60.0;
    }
    if (!whole) {
      throw refuse("no seconds may follow minutes that have decimals");
    }
    double seconds = below60("seconds");
    skipSecondMark();
    // one division, so that a whole number of tenths of a second is read as near as a double allows
    return degrees + (minutes * 60.0 + seconds) / 3600.0;
  }

  /** Whether a number of minutes, and no degrees before it, stands here: {@code 15'}. */
  public boolean atLoneMinutes() {
    int i = place;
    while (i < text.length() && (isDigit(text.charAt(i)) || text.charAt(i) == '.')) {
      i++;
    }
    return i > place
        && i < text.length()
        && isMinuteMark(text.charAt(i))
        && !(i + 1 < text.length() && isMinuteMark(text.charAt(i + 1)));
  }

  /** Whether a digit stands here. */
  public boolean atDigit() {
    return isDigit(next());
  }

  private boolean wholeSince(int start) {
    for (int i = start; i < place; i++) {
      if (text.charAt(i) == '.' || text.charAt(i) == 'E') {
        return false;
      }
    }
    return true;
  }

  /**
   * Reads an unsigned number of minutes or seconds.
   *
   * @param part what is read, in the plural, for the message
   * @return the number, in [0, 60)
   * @throws TextFormatException if there is no number, or it reaches 60
   */
  public double below60(String part) {
    int start = place;
    double value = number("a number of " + part + " must follow");
    if (!(value < 60.0)) {
      String given = text.substring(start, place).trim();
      place = start;
      throw refuse(part + " must be in [0, 60), but were " + given);
    }
    return value;
  }

  /** A colon or hyphen right between figures, as in 41-35.5 N; after a space it is a minus. */
  private void skipPartMark() {
    char c = next();
    if ((c == ':' || c == '-')
        && place > 0
        && text.charAt(place - 1) != ' '
        && place + 1 < text.length()
        && isDigit(text.charAt(place + 1))) {
      place++;
    }
  }

  /**
   * Reads one of two hemisphere letters, of either case, if one is there.
   *
   * @param positive letter that makes the angle positive, upper case
   * @param negative letter that makes it negative, upper case
   * @return 1, -1, or 0 if neither letter stands here
   */
  public int hemisphere(char positive, char negative) {
    char c = Character.toUpperCase(next());
    if (c == positive || c == negative) {
      place++;
      skipSpaces();
      return c == positive ? 1 : -1;
    }
    return 0;
  }

  /**
   * Reads a separator if one is there.
   *
   * @param marks the characters that count as one
   * @return whether there was one
   */
  public boolean skip(String marks) {
    return skipAny(marks);
  }

  /**
   * Reads one letter that must be there, of either case.
   *
   * @param letter the letter, upper case
   * @param reason what to say if it is not there
   * @throws TextFormatException if another character or the end stands here
   */
  public void expect(char letter, String reason) {
    if (Character.toUpperCase(next()) != letter) {
      throw refuse(reason);
    }
    place++;
    skipSpaces();
  }

  /**
   * Makes sure that nothing but spaces is left.
   *
   * @param reason what to say if something is
   * @throws TextFormatException if a character is left
   */
  public void expectEnd(String reason) {
    if (!atEnd()) {
      throw refuse(reason);
    }
  }
}
