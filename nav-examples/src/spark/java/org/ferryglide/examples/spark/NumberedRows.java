package org.ferryglide.examples.spark;

import java.io.Serializable;
import java.util.List;

/**
 * Rows of figures, each worked from its number alone, some at a time, so that any part of them can
 * be worked anywhere, in any order, and is the same.
 */
interface NumberedRows extends Serializable {
  /** What the figures after the number are called. */
  List<String> columns();

  /** How many rows there are, numbered from 0. */
  long count();

  /** How many are worked at a time. */
  int atATime();

  /** The workspace of one thread. */
  Worker worker();

  /** Works rows, on one thread. */
  interface Worker {
    /**
     * Works some rows one after another.
     *
     * @param first number of the first, a multiple of {@link NumberedRows#atATime}
     * @param rows how many
     * @param out receives their figures, row after row
     */
    void work(long first, int rows, double[] out);
  }

  /** How many blocks of {@link #atATime} rows there are, the last of them perhaps shorter. */
  default long blocks() {
    return (count() + atATime() - 1) / atATime();
  }

  /** How many rows a block has. */
  default int rowsOf(long block) {
    return (int) Math.min(atATime(), count() - block * atATime());
  }
}
