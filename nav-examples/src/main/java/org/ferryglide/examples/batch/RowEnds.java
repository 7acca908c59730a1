package org.ferryglide.examples.batch;

/**
 * Where rows end, by RFC 4180: a line feed ends a row unless it stands within quotation marks,
 * which open only at the start of a field. A carriage return before the line feed belongs to the
 * ending.
 */
final class RowEnds {
  /** Instead of a place: the bytes end before the row does. */
  static final int OPEN = -1;

  /** Instead of a place: the bytes end within quotation marks. */
  static final int OPEN_QUOTE = -2;

  private RowEnds() {}

  /**
   * The place after the line feed that ends a row.
   *
   * @param bytes the rows
   * @param from where the row starts
   * @param to where the bytes end
   * @return the place, {@link #OPEN} or {@link #OPEN_QUOTE}
   */
  static int after(byte[] bytes, int from, int to) {
    for (int i = from; i < to; i++) {
      byte here = bytes[i];
      if (here == '\n') {
        return i + 1;
      }
      if (here == '"' && (i == from || bytes[i - 1] == ',')) {
        i = closingQuote(bytes, i + 1, to);
        if (i == OPEN_QUOTE) {
          return OPEN_QUOTE;
        }
      }
    }
    return OPEN;
  }

  /** The place of the mark that closes a quoted field; {@link #OPEN_QUOTE} if there is none. */
  static int closingQuote(byte[] bytes, int from, int to) {
    for (int i = from; i < to; i++) {
      if (bytes[i] == '"') {
        if (i + 1 < to && bytes[i + 1] == '"') {
          i++; // two stand for one
        } else {
          return i;
        }
      }
    }
    return OPEN_QUOTE;
  }

  /**
   * The place after the first line feed, quotation marks or not; {@link #OPEN} if there is none.
   */
  static int afterLine(byte[] bytes, int from, int to) {
    for (int i = from; i < to; i++) {
      if (bytes[i] == '\n') {
        return i + 1;
      }
    }
    return OPEN;
  }
}
