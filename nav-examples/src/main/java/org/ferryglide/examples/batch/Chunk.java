package org.ferryglide.examples.batch;

/**
 * A part of a file.
 *
 * @param bytes where it stands, from 0 on
 * @param length how many bytes count
 * @param kind what they are
 */
@SuppressWarnings("ArrayRecordComponent") // handed on once, never compared
record Chunk(byte[] bytes, int length, Kind kind) {

  /** What the bytes of a chunk are. */
  enum Kind {
    /** Whole rows. */
    ROWS,
    /** A piece of a line too long to be a row; the line goes on in the next chunk. */
    LONG_LINE,
    /** The last piece of such a line. */
    LONG_LINE_END
  }
}
