package org.ferryglide.examples.batch;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Cuts a stream of bytes into chunks of whole rows. Where the cuts fall depends on the bytes alone.
 *
 * <p>A row may be a mebibyte long. A longer line comes in pieces, and where a quotation mark is
 * still open after so much, its line is given as a row by itself, to be refused as such.
 */
final class ChunkReader {
  /** Longest row, bytes. */
  static final int LONGEST_ROW = 1 << 20;

  /** Where a chunk may end. */
  interface Cut {
    /**
     * The last place at which the bytes from 0 to {@code filled} may be cut; 0 if there is none.
     */
    int last(byte[] bytes, int filled);
  }

  private final InputStream in;
  private final int size;
  private byte[] kept = {};
  private boolean ended;
  private boolean inLongLine;

  ChunkReader(InputStream in, int size) {
    this.in = in;
    this.size = size;
  }

  /** The last place at which a row ends. */
  static int lastRowEnd(byte[] bytes, int filled) {
    int last = 0;
    int end = RowEnds.after(bytes, 0, filled);
    while (end > 0) {
      last = end;
      end = RowEnds.after(bytes, last, filled);
    }
    return last;
  }

  /** The first row with its ending, to be called once and first; empty where the stream is. */
  byte[] first() throws IOException {
    byte[] buffer = new byte[size];
    int filled = 0;
    while (true) {
      filled = fill(buffer, filled);
      int end = RowEnds.after(buffer, 0, filled);
      if (end > 0 || ended || buffer.length >= LONGEST_ROW) {
        int cut = end > 0 ? end : filled;
        kept = Arrays.copyOfRange(buffer, cut, filled);
        return Arrays.copyOf(buffer, cut);
      }
      buffer = Arrays.copyOf(buffer, 2 * buffer.length);
    }
  }

  /** The next chunk, or null after the last. */
  @Nullable Chunk next(Cut cut) throws IOException {
    byte[] buffer = Arrays.copyOf(kept, Math.max(size, 2 * kept.length));
    int filled = kept.length;
    while (true) {
      filled = fill(buffer, filled);
      if (filled == 0 && !inLongLine) {
        return null;
      }
      if (inLongLine) {
        int end = RowEnds.afterLine(buffer, 0, filled);
        inLongLine = end < 0 && !ended;
        return take(
            buffer,
            end < 0 ? filled : end,
            filled,
            inLongLine ? Chunk.Kind.LONG_LINE : Chunk.Kind.LONG_LINE_END);
      }
      int place = ended ? filled : cut.last(buffer, filled);
      if (place > 0) {
        return take(buffer, place, filled, Chunk.Kind.ROWS);
      }
      if (filled >= LONGEST_ROW) {
        int line = RowEnds.afterLine(buffer, 0, filled);
        inLongLine = line < 0;
        return inLongLine
            ? take(buffer, filled, filled, Chunk.Kind.LONG_LINE)
            : take(buffer, line, filled, Chunk.Kind.ROWS); // a quotation mark is left open
      }
      buffer = Arrays.copyOf(buffer, 2 * buffer.length);
    }
  }

  private Chunk take(byte[] buffer, int length, int filled, Chunk.Kind kind) {
    kept = Arrays.copyOfRange(buffer, length, filled);
    return new Chunk(buffer, length, kind);
  }

  /** Reads until the buffer is full or the stream ends, so that cuts do not depend on timing. */
  private int fill(byte[] buffer, int filled) throws IOException {
    int count = ended ? 0 : in.readNBytes(buffer, filled, buffer.length - filled);
    ended = ended || filled + count < buffer.length;
    return filled + count;
  }
}
