package org.ferryglide.tide.sheet;

import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.InputProblem;

/** Text whose lines and whole length are bounded, so that no file can exhaust the memory. */
final class BoundedReader extends FilterReader {
  /** The longest line of a sheet; a row of every table here has a few hundred characters. */
  static final int LONGEST_LINE = 65_536;

  /** A grid of a million rows has about forty. */
  static final long MOST_CHARACTERS = 128L << 20;

  private static final char BYTE_ORDER_MARK = '\ufeff';

  private final String source;
  private long characters;
  private int line = 1;
  private int column;
  private boolean afterReturn;

  /** Whether the text itself could not be read; what else goes wrong is the parser's. */
  private boolean broken;

  BoundedReader(String source, Reader reader) {
    super(reader);
    this.source = source;
  }

  boolean isBroken() {
    return broken;
  }

  @Override
  public int read() throws IOException {
    char[] one = new char[1];
    return read(one, 0, 1) < 0 ? -1 : one[0];
  }

  @Override
  public int read(char[] buffer, int offset, int length) throws IOException {
    int count;
    boolean atStart = characters == 0;
    try {
      count = in.read(buffer, offset, length);
      if (atStart && count > 0 && buffer[offset] == BYTE_ORDER_MARK) {
        characters++; // in front of a comment it would hide that it is one
        System.arraycopy(buffer, offset + 1, buffer, offset, count - 1);
        count = count > 1 ? count - 1 : in.read(buffer, offset, length);
      }
    } catch (IOException e) {
      broken = true;
      throw e;
    }
    for (int i = 0; i < count; i++) {
      see(buffer[offset + i]);
    }
    return count;
  }

  private void see(char character) {
    characters++;
    if (character == '\n' && afterReturn) {
      afterReturn = false; // the second half of a line's end
      return;
    }
    afterReturn = character == '\r';
    if (character == '\n' || character == '\r') {
      line++;
      column = 0;
    } else if (++column > LONGEST_LINE) {
      throw new InputFormatException(
          new InputProblem(
              source,
              line,
              0,
              "a line must have at most "
                  + LONGEST_LINE
                  + " characters, field and comment alike, but had more"));
    }
    if (characters > MOST_CHARACTERS) {
      throw new InputFormatException(
          new InputProblem(
              source,
              line,
              0,
              "a sheet must have at most " + MOST_CHARACTERS + " characters, but had more"));
    }
  }
}
