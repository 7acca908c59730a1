package org.ferryglide.examples.batch;

import java.util.Arrays;
import java.util.List;

/**
 * The rows of a chunk as they are written: what came in, and the figures added behind it.
 *
 * <p>Figures are given in the order of the columns; a row that ends early or is refused gets empty
 * figures for the rest.
 */
final class Figures {
  /** No figure takes more: a double in full has at most 24 characters, a rounded one 40. */
  private static final int LONGEST_FIGURE = 48;

  private final List<Added> columns;
  private final boolean full;
  private byte[] bytes;
  private int length;
  private int column;
  private int rowStart;

  Figures(List<Added> columns, boolean full, int expected) {
    this.columns = columns;
    this.full = full;
    this.bytes = new byte[Math.max(256, expected)];
  }

  /** Starts a row with the bytes that came in; figures follow. */
  void start(byte[] row, int from, int to) {
    rowStart = length;
    column = 0;
    raw(row, from, to);
  }

  /** Writes bytes as they are. */
  void raw(byte[] source, int from, int to) {
    room(to - from);
    System.arraycopy(source, from, bytes, length, to - from);
    length += to - from;
  }

  /** Takes back the row begun last, if {@link #end} has not closed it. */
  void takeBack() {
    length = rowStart;
  }

  /** Writes commas for fields that a row lacks, so that figures come under their headings. */
  void pad(int fields) {
    for (int i = 0; i < fields; i++) {
      room(1);
      bytes[length++] = ',';
    }
  }

  /** Adds a number to the row; NaN leaves it empty. */
  void add(double value) {
    Added to = columns.get(column);
    comma();
    if (Double.isNaN(value)) {
      return;
    }
    if (full) {
      length = Decimals.writeText(Double.toString(value), bytes, length);
      return;
    }
    int start = length;
    length = Decimals.write(value, to.decimals(), bytes, length);
    if (to.kind() == Added.Kind.DIRECTION && isWhole(start, "360.")) {
      length = Decimals.write(0.0, to.decimals(), bytes, start);
    } else if (to.kind() == Added.Kind.LONGITUDE && isWhole(start, "180.")) {
      length = Decimals.write(-180.0, to.decimals(), bytes, start);
    }
  }

  private boolean isWhole(int start, String whole) {
    for (int i = 0; i < whole.length(); i++) {
      if (bytes[start + i] != whole.charAt(i)) {
        return false;
      }
    }
    return true;
  }

  /** Adds a word of plain ASCII to the row. */
  void add(String word) {
    comma();
    room(word.length() + LONGEST_FIGURE);
    length = Decimals.writeText(word, bytes, length);
  }

  /** Leaves the next figure of the row empty. */
  void skip() {
    comma();
  }

  private void comma() {
    room(LONGEST_FIGURE);
    bytes[length++] = ',';
    column++;
  }

  /** Ends the row with its own line ending; figures not given stay empty. */
  void end(byte[] row, int from, int to) {
    while (column < columns.size()) {
      comma();
    }
    raw(row, from, to);
    rowStart = length;
  }

  private void room(int more) {
    if (length + more > bytes.length) {
      bytes = Arrays.copyOf(bytes, Math.max(2 * bytes.length, length + more));
    }
  }

  byte[] bytes() {
    return bytes;
  }

  int length() {
    return length;
  }
}
