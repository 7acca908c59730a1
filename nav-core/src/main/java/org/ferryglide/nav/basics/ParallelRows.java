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
    int blocks = (int) Math.max(0L, ((long) until - from + ROWS_IN_BLOCK - 1) / ROWS_IN_BLOCK);
    IntStream.range(0, blocks)
        .parallel()
        .forEach(
            block -> {
              int first = from + block * ROWS_IN_BLOCK;
              work.on(first, Math.min(until, first + ROWS_IN_BLOCK));
            });
  }
}
