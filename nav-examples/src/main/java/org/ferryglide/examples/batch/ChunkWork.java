package org.ferryglide.examples.batch;

import java.util.ArrayList;
import java.util.List;

/** Works the rows of one chunk, walking over them line by line. */
abstract class ChunkWork {
  /** Of more refusals in one chunk only the number is kept. */
  private static final int MOST_KEPT = 100;

  /** A row that was refused, by its line within the chunk. */
  record Refusal(long line, RefusedRow why) {}

  /**
   * A chunk that has been worked.
   *
   * @param bytes what is to be written
   * @param length how much of it
   * @param rows rows met, refused ones too
   * @param lines lines of the file it took
   * @param refused how many rows were refused
   * @param refusals the first of them
   * @param lengthBeforeRefusal how much is written before the first refused row
   */
  @SuppressWarnings("ArrayRecordComponent") // handed on once, never compared
  record Result(
      byte[] bytes,
      int length,
      long rows,
      long lines,
      long refused,
      List<Refusal> refusals,
      int lengthBeforeRefusal) {}

  private final Row row;
  private final Figures figures;
  private final List<Refusal> refusals = new ArrayList<>();
  private long rows;
  private long refused;
  private int lengthBeforeRefusal = -1;

  ChunkWork(Heading heading, List<Added> adds, BatchOptions options) {
    this.row = new Row(heading);
    this.figures = new Figures(adds, options.isFullPrecision(), 2 * BatchRun.CHUNK_BYTES);
  }

  final Figures figures() {
    return figures;
  }

  /** Works all rows of a chunk. */
  final Result work(byte[] bytes, int length) {
    long line = 0;
    int start = 0;
    while (start < length) {
      int end = RowEnds.after(bytes, start, length);
      RefusedRow broken = null;
      if (end == RowEnds.OPEN_QUOTE) {
        end = lineEnd(bytes, start, length);
        broken = new RefusedRow(0, "a quotation mark is not closed");
      } else if (end == RowEnds.OPEN) {
        end = length;
      }
      int content = withoutEnding(bytes, start, end);
      if (content > start) {
        rows++;
        if (broken == null) {
          try {
            row.moveTo(bytes, start, content);
          } catch (RefusedRow refusal) {
            broken = refusal;
            if (refusal.column() > 0) { // a mark out of place may have swallowed rows below
              end = lineEnd(bytes, start, end);
              content = withoutEnding(bytes, start, end);
            }
          }
        }
        int before = figures.length();
        try {
          if (broken == null) {
            work(row, bytes, start, content, end);
          } else {
            refused(broken, bytes, start, content, end);
            note(line, broken, before);
          }
        } catch (RefusedRow refusal) {
          refused(refusal, bytes, start, content, end);
          note(line, refusal, before);
        }
      } else {
        blank(bytes, start, end);
      }
      line += lines(bytes, start, end);
      start = end;
    }
    ended(line);
    return new Result(
        figures.bytes(),
        figures.length(),
        rows,
        line,
        refused,
        refusals,
        lengthBeforeRefusal < 0 ? figures.length() : lengthBeforeRefusal);
  }

  /** Notes a refused row. */
  final void note(long line, RefusedRow why, int lengthBefore) {
    refused++;
    if (refusals.size() < MOST_KEPT) {
      refusals.add(new Refusal(line, why));
    }
    if (lengthBeforeRefusal < 0) {
      lengthBeforeRefusal = lengthBefore;
    }
  }

  private static int lineEnd(byte[] bytes, int start, int end) {
    int line = RowEnds.afterLine(bytes, start, end);
    return line < 0 ? end : line;
  }

  /** The place before the line feed, and before the carriage return in front of it. */
  static int withoutEnding(byte[] bytes, int start, int end) {
    int content = end > start && bytes[end - 1] == '\n' ? end - 1 : end;
    return content > start && bytes[content - 1] == '\r' ? content - 1 : content;
  }

  private static int lines(byte[] bytes, int start, int end) {
    int lines = 0;
    for (int i = start; i < end; i++) {
      lines += bytes[i] == '\n' ? 1 : 0;
    }
    return lines;
  }

  /**
   * Works one whole row; a {@link RefusedRow} thrown here is noted, and {@link #refused} called.
   */
  abstract void work(Row row, byte[] bytes, int start, int content, int end);

  /** Writes a row that is refused. */
  abstract void refused(RefusedRow why, byte[] bytes, int start, int content, int end);

  /** Meets a line without anything. */
  abstract void blank(byte[] bytes, int start, int end);

  /** Called after the last row, with the lines seen. */
  abstract void ended(long lines);
}
