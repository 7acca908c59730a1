package org.ferryglide.examples.files;

import java.util.List;
import java.util.StringJoiner;

/**
 * Rows of comma-separated text that neither a comma nor a spreadsheet takes amiss.
 *
 * <pre>{@code
 * SafeCsv.row(List.of("Quill, the", "=1+1")); // "Quill, the",'=1+1
 * }</pre>
 *
 * <p>A text that a spreadsheet would take for a formula (beginning with =, +, -, @, a tab or a
 * carriage return) and that is no number gets an apostrophe before it.
 *
 * @see <a href="https://www.rfc-editor.org/rfc/rfc4180">RFC 4180</a>
 * @see <a href="https://owasp.org/www-community/attacks/CSV_Injection">OWASP, CSV injection</a>
 */
public final class SafeCsv {
  private static final String BEGINS_FORMULA = "=+-@\t\r";
  private static final String NEEDS_QUOTES = ",\"\r\n#";

  private SafeCsv() {}

  /**
   * One row.
   *
   * @param fields in order
   * @return the row, without its end
   */
  public static String row(List<String> fields) {
    StringJoiner row = new StringJoiner(",");
    fields.forEach(field -> row.add(field(field)));
    return row.toString();
  }

  /**
   * One field.
   *
   * @param text what stands in it
   * @return the field, quoted where it must be
   */
  public static String field(String text) {
    String safe = isFormula(text) ? "'" + text : text;
    for (int at = 0; at < NEEDS_QUOTES.length(); at++) {
      if (safe.indexOf(NEEDS_QUOTES.charAt(at)) >= 0) {
        return '"' + safe.replace("\"", "\"\"") + '"';
      }
    }
    return safe;
  }

  private static boolean isFormula(String text) {
    return !text.isEmpty()
        && BEGINS_FORMULA.indexOf(text.charAt(0)) >= 0
        && !text.matches("[+-]?\\d+(\\.\\d+)?");
  }
}
