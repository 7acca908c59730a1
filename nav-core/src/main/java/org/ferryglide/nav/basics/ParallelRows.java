package org.ferryglide.nav.basics;

import java.util.stream.IntStream;

/**
 * Shares rows out over the processors in blocks, so that a row costs next to nothing to hand out.
 *
 * <pre>{@code
 * ParallelRows.share(
 *     from, until, offset, WIDTH, (first, end, at) -> kernel(in, first, end, out, at));
 * }</pre>
 */
public final class ParallelRows {
  /** A block takes about half a millisecond: long beside the handing out. */
  private static final int ROWS_IN_BLOCK = 4096;

  private ParallelRows() {}

  /**
   * Work on some rows.
   *
   * <pre>{@code
   * ParallelRows.Work work = (from, until, offset) -> kernel(in, from, until, out, offset);
   * }</pre>
   */
  public interface Work {
    /**
     * Works on the rows from the first up to, not including, the second.
     *
     * @param from first row
     * @param until row after the last
     * @param offset where the results of the first of them go
     */
    void on(int from, int until, int offset);
  }

  /**
   * Has all rows worked on, each once.
   *
   * @param from first row
   * @param until row after the last
   * @param offset where the results of the first row go
   * @param width how many results a row has
   * @param work what to do with a block of them; called by several threads at once
   */
  public static void share(int from, int until, int offset, int width, Work work) {
    share(from, until, ROWS_IN_BLOCK, offset, width, work);
  }

  /**
   * The same in blocks of another size, for rows that cost much less or more.
   *
   * @param from first row
   * @param until row after the last
   * @param rowsInBlock how many rows are handed out at once, above 0
   * @param offset where the results of the first row go
   * @param width how many results a row has
   * @param work what to do with a block of them; called by several threads at once
   */
  public static void share(int from, int until, int rowsInBlock, int offset, int width, Work work) {
    int blocks = (int) Math.max(0L, ((long) until - from + rowsInBlock - 1) / rowsInBlock);
    IntStream.range(0, blocks)
        .parallel()
        .forEach(
            block -> {
              int first = from + block * rowsInBlock;
              int end = (int) Math.min(until, (long) first + rowsInBlock);
              work.on(first, end, offset + width * (first - from));
            });
  }
}
