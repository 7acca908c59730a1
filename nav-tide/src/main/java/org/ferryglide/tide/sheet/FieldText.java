package org.ferryglide.tide.sheet;

import java.util.Locale;

/** What may stand in a field of a sheet: nothing that a terminal or a spreadsheet would act on. */
final class FieldText {
  private static final String CALLS = "=(|!";

  private FieldText() {}

  /** What is wrong with a field's text; empty if nothing is. */
  static String fault(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (!isPlain(c)) {
        String hex = Integer.toHexString(c).toUpperCase(Locale.ROOT);
        return "must not hold control or hidden characters, but has U+"
            + "0000".substring(hex.length())
            + hex
            + " as character "
            + (i + 1);
      }
    }
    String trimmed = text.trim();
    return isFormula(trimmed)
        ? "must not begin with "
            + trimmed.charAt(0)
            + " here, which a spreadsheet takes for a formula, but was "
            + SheetText.quote(trimmed)
        : "";
  }

  /** Neither a control, the tab apart, nor one that turns text round or is not seen. */
  static boolean isPlain(char c) {
    boolean control = Character.isISOControl(c) && c != '\t';
    boolean reorders = (c >= '\u202a' && c <= '\u202e') || (c >= '\u2066' && c <= '\u2069');
    boolean hidden = c == '\u200b' || c == '\ufeff' || c == '\u2028' || c == '\u2029';
    return !(control || reorders || hidden);
  }

  /** A sign before a plain figure is none. */
  private static boolean isFormula(String text) {
    if (text.length() < 2) {
      return false;
    }
    char first = text.charAt(0);
    if (first != '+' && first != '-') {
      return first == '=' || first == '@';
    }
    char second = text.charAt(1);
    boolean figure =
        (second >= '0' && second <= '9') || second == '.' || second == '+' || second == '-';
    for (int i = 0; i < CALLS.length(); i++) {
      figure &= text.indexOf(CALLS.charAt(i)) < 0;
    }
    return !figure;
  }

  /** A field that is read back as the text. */
  static String written(String what, String text) {
    String fault = fault(text);
    if (!fault.isEmpty()) {
      throw new IllegalArgumentException(what + " " + fault);
    }
    if (!text.trim().equals(text)) {
      throw new IllegalArgumentException(
          what + " must not begin or end with a space to be written, but was \"" + text + "\"");
    }
    return text.indexOf(',') < 0 && text.indexOf('"') < 0 && text.indexOf('#') != 0
        ? text
        : '"' + text.replace("\"", "\"\"") + '"';
  }
}
