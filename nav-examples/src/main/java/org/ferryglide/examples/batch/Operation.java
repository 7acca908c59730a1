package org.ferryglide.examples.batch;

import java.util.List;

/**
 * What is done to every row: the columns it reads, those it adds, and the figures of one row.
 *
 * @param name what it is called
 * @param reads the columns that it needs, in the order in which its solver asks for them
 * @param adds the columns that it adds, in order
 * @param isGrouped whether rows that agree in the first column read are worked together, into a row
 *     of their own
 * @param solvers makes what works the rows, one for each chunk
 */
record Operation(
    String name, List<String> reads, List<Added> adds, boolean isGrouped, Solvers solvers) {

  /** Makes a worker for one chunk, which may keep its working arrays and what it remembers. */
  interface Solvers {
    ChunkWork work(Heading heading, BatchOptions options);
  }

  /** Works one row. */
  interface Solver {
    /**
     * Adds the figures of a row.
     *
     * @param row the fields, in the order of {@link Operation#reads}
     * @param figures where the figures go, in the order of {@link Operation#adds}
     * @throws RefusedRow if the row cannot be worked
     */
    void solve(Row row, Figures figures);
  }

  /** Makes a {@link Solver} for one chunk. */
  interface SolverMaker {
    Solver solver();
  }

  /** An operation that works each row alone and adds to it. */
  static Operation ofRows(String name, List<String> reads, List<Added> adds, SolverMaker maker) {
    return new Operation(
        name,
        reads,
        adds,
        false,
        (heading, options) -> new RowsWork(heading, adds, options, maker.solver()));
  }
}
