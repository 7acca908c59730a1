package org.ferryglide.nav.basics;

import java.util.stream.IntStream;

/**
 * Shares rows out over the processors in blocks, so that a row costs next to nothing to hand out.
 *
 * <pre>{@code
 * ParallelRows.share(from, until, (a, b) -> kernel(in, a, b, out, offset + WIDTH * (a - from)));
 * }</pre>
 */
public final class ParallelRows {
  /** A block takes about half a millisecond: long beside the handing out. */
  private static final int ROWS_IN_BLOCK = 4096;

  private ParallelRows() {}

  /**
   * Work on the rows from the first up to, not including, the second.
   *
   * <pre>{@code
   * ParallelRows.Work work = (from, until) -> Arrays.fill(out, from, until, 1.0);
   * }</pre>
   */
  public interface Work {
    /**
     * Works on some rows.
     *
     * @param from first row
     * @param until row after the last
     */
    void on(int from, int until);
  }

  /**
   * Has all rows worked on, each once.
   *
   * @param from first row
   * @param until row after the last
   * @param work what to do with a block of them; called by several threads at once
   */
  public static void share(int from, int until, Work work) {
    share(from, until, ROWS_IN_BLOCK, work);
  }

  /**
   * The same in blocks of another size, for rows that cost much less or more.
   *
   * @param from first row
   * @param until row after the last
   * @param rowsInBlock how many rows are handed out at once, above 0
   * @param work what to do with a block of them; called by several threads at once
   */
  public static void share(int from, int until, int rowsInBlock, Work work) {
    int blocks = (int) Math.max(0L, ((long) until - from + rowsInBlock - 1) / rowsInBlock);
    IntStream.range(0, blocks)
        .parallel()
        .forEach(
            block -> {
              int first = from + block * rowsInBlock;
              work.on(first, (int) Math.min(until, (long) first + rowsInBlock));
            });
  }
}
