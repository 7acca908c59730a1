package org.ferryglide.nav.magnetic;

import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.note.TextFormatException;
import org.ferryglide.nav.reading.AngleReader;

/** Reads what charts print in a compass rose: variation, year, annual change, or the year first. */
final class RoseText {
  private static final String CHANGE_REASON =
      "the annual change must follow, as in (8'E), (6' decreasing) or (nil)";

  private final String text;
  private int place;

  private RoseText(String text) {
    this.text = text;
  }

  static CompassRose parse(String text) {
    return new RoseText(text).rose();
  }

  private CompassRose rose() {
    int yearAt = yearIndex();
    skipSpaces();
    skipVariationWord();
    skipAny("( ");
    boolean yearFirst = place == yearAt;
    int year;
    double variation;
    if (yearFirst) {
      year = year();
      skipAny(" ,:;)\n\r\t\u00a0\u202f");
      skipVariationWord();
      variation = variation(text.length());
    } else {
      variation = variation(yearAt);
      skipAny(" ,(\n\r\t");
      if (place != yearAt) {
        throw refuse("only the year may follow the variation");
      }
      year = year();
    }
    double change = change(Math.signum(variation));
    return new CompassRose(
        Variation.ofDegreesEast(variation), year, AnnualChange.ofMinutesEast(change));
  }

  /** The four digits that stand here. */
  private int year() {
    int year = Integer.parseInt(text.substring(place, place + 4));
    if (year < CompassRose.FIRST_YEAR || year > CompassRose.LAST_YEAR) {
      throw refuse("year of the rose must be from 1500 to 2999");
    }
    place += 4;
    return year;
  }

  /** The first four digits that stand alone. */
  private int yearIndex() {
    int run = 0;
    for (int i = 0; i <= text.length(); i++) {
      char c = i < text.length() ? text.charAt(i) : ' ';
      if (isDigit(c)) {
        run++;
      } else if (run == 4 && c != '.' && (i == 4 || text.charAt(i - 5) != '.')) {
        return i - 4;
      } else {
        run = 0;
      }
    }
    place = text.length();
    throw refuse("the year of the rose, four digits, must come before or after the variation");
  }

  private void skipVariationWord() {
    if (skipWord("magnetic variation")
        || skipWord("mag. var")
        || skipWord("mag var")
        || skipWord("variation")
        || skipWord("var")) {
      skipAny(".: ");
    }
  }

  /** Degrees east, from here to an index at the latest. */
  private double variation(int end) {
    int before = letter();
    int start = place;
    AngleReader reader = new AngleReader(text.substring(start, Math.max(start, end)));
    double degrees;
    try {
      degrees = reader.angle("variation");
    } catch (TextFormatException e) {
      place = start + e.index();
      throw refuse("variation must be degrees, or degrees and minutes below 60, as in 4°15'W");
    }
    if (degrees > 180.0) {
      throw refuse("variation must be in [0, 180] degrees");
    }
    place = start + reader.index();
    int sign = oneOf(before, letter());
    if (sign == 0 && degrees != 0.0) {
      throw refuse("variation needs its letter, E or W");
    }
    return sign < 0 ? -degrees : degrees;
  }

  /** Minutes east a year, from the part behind the year. */
  private double change(double variationSign) {
    skipAny(" ,;)\n\r\t");
    boolean bracket = skipAny("(");
    skipSpaces();
    double minutes;
    int letter = 0;
    int growth = growth("annual increase", "annual decrease");
    if (growth == 0) {
      growth = growth("increasing", "decreasing");
    }
    if (growth == 0) {
      growth = growth("increase", "decrease");
    }
    if (growth == 0 && skipWord("annual change")) {
      skipAny(": ");
    }
    if (growth == 0 && (skipWord("no annual change") || skipWord("nil"))) {
      minutes = 0.0;
    } else {
      skipWord("about");
      letter = letter();
      minutes = minutes();
      letter = oneOf(letter, letter());
      if (growth == 0) {
        growth = growth("increasing", "decreasing");
      }
      if (growth == 0) {
        growth = growth("increase", "decrease");
      }
    }
    if (!skipWord("annually")
        && !skipWord("a year")
        && !skipWord("per annum")
        && !skipWord("yearly")) {
      skipWord("per year");
    }
    double change = signed(minutes, letter, growth, variationSign);
    if (bracket && !skipAny(")")) {
      throw refuse("the bracket must close after the annual change");
    }
    if (skipAny(".")) {
      skipSpaces();
    }
    skipSpaces();
    if (place < text.length()) {
      throw refuse("nothing may follow the annual change");
    }
    return change;
  }

  /** 1 when the variation is said to increase, -1 to decrease, 0 if neither is said here. */
  private int growth(String increase, String decrease) {
    return skipWord(increase) ? 1 : skipWord(decrease) ? -1 : 0;
  }

  private double signed(double minutes, int letter, int growth, double variationSign) {
    if (minutes == 0.0) {
      return 0.0;
    }
    double byWord = growth * variationSign;
    if (letter == 0 && growth == 0) {
      throw refuse("the annual change needs E or W, or the word increasing or decreasing");
    }
    if (letter == 0 && byWord == 0.0) {
      throw refuse("a variation of zero cannot be said to increase or decrease: give E or W");
    }
    if (letter != 0 && byWord != 0.0 && byWord != letter) {
      throw refuse("the word contradicts the letters of the variation and its change");
    }
    return minutes * (letter != 0 ? letter : byWord);
  }

  /** Minutes, or degrees and minutes, unsigned. */
  private double minutes() {
    int start = place;
    double minutes = angle();
    if (minutes > AnnualChange.MOST_MINUTES) {
      place = start;
      throw refuse("annual change must be in [0, 21600] minutes of arc");
    }
    return minutes;
  }

  private double angle() {
    int start = place;
    double first = number();
    if (skipOne("°º˚")) {
      skipSpaces();
      double rest = 0.0;
      if (place < text.length() && isDigit(text.charAt(place))) {
        int restAt = place;
        rest = number();
        if (!(rest < 60.0)) {
          place = restAt;
          throw refuse("minutes after degrees must be in [0, 60), but were " + rest);
        }
        skipOne("'′’");
      }
      double minutes = first * 60.0 + rest;
      if (minutes > RoseAge.SWIFT_MINUTES) {
        place = start;
        throw refuse(
            "annual change must not exceed a degree when it is given in degrees; charts print"
                + " minutes, as in (8'E)");
      }
      return minutes;
    }
    skipOne("'′’");
    skipSpaces();
    if (skipWord("minutes") || skipWord("min")) {
      skipAny(". ");
    }
    return first;
  }

  /** One mark and no more: two minute marks would be seconds. */
  private boolean skipOne(String marks) {
    if (place < text.length() && marks.indexOf(text.charAt(place)) >= 0) {
      place++;
      return true;
    }
    return false;
  }

  private double number() {
    int start = place;
    while (place < text.length() && (isDigit(text.charAt(place)) || text.charAt(place) == '.')) {
      place++;
    }
    // Double.toString writes a tiny number as 1.0E-4; any other E is the letter of a side
    if (text.startsWith("E-", place)
        && place + 2 < text.length()
        && isDigit(text.charAt(place + 2))) {
      place += 2;
      while (place < text.length() && isDigit(text.charAt(place))) {
        place++;
      }
    }
    try {
      return Double.parseDouble(text.substring(start, place));
    } catch (NumberFormatException e) {
      place = start;
      throw refuse(CHANGE_REASON);
    }
  }

  /** 1 for a lone E, -1 for a lone W, 0 if neither stands here. */
  private int letter() {
    skipSpaces();
    if (skipWord("E") || skipWord("East")) {
      return 1;
    }
    return skipWord("W") || skipWord("West") ? -1 : 0;
  }

  private int oneOf(int before, int after) {
    if (before != 0 && after != 0) {
      throw refuse("the letter E or W must come once, before or after the figures");
    }
    return before + after;
  }

  private boolean skipWord(String word) {
    int end = place + word.length();
    if (!text.regionMatches(true, place, word, 0, word.length())
        || (end < text.length() && Character.isLetter(text.charAt(end)))) {
      return false;
    }
    place = end;
    skipSpaces();
    return true;
  }

  private boolean skipAny(String characters) {
    int start = place;
    while (place < text.length() && characters.indexOf(text.charAt(place)) >= 0) {
      place++;
    }
    return place > start;
  }

  private void skipSpaces() {
    skipAny(" \t\n\r\u00a0\u202f");
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private TextFormatException refuse(String reason) {
    return new TextFormatException(reason, text, place);
  }
}
