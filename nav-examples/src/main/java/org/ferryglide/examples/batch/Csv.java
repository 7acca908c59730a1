package org.ferryglide.examples.batch;

import java.nio.charset.StandardCharsets;

/** Text as a field of a comma-separated file. */
final class Csv {
  private Csv() {}

  /** The field, within quotation marks where RFC 4180 asks for them. */
  static byte[] quoted(String text) {
    boolean plain = true;
    for (int i = 0; i < text.length() && plain; i++) {
      char here = text.charAt(i);
      plain = here != ',' && here != '"' && here != '\n' && here != '\r';
    }
    String field = plain ? text : '"' + text.replace("\"", "\"\"") + '"';
    return field.getBytes(StandardCharsets.UTF_8);
  }
}
