package org.ferryglide.examples.batch;

import java.util.List;

/** Adds figures to each row alone; refused rows pass with empty ones, blank lines as they are. */
final class RowsWork extends ChunkWork {
  private final Heading heading;
  private final Operation.Solver solver;

  RowsWork(Heading heading, List<Added> adds, BatchOptions options, Operation.Solver solver) {
    super(heading, adds, options);
    this.heading = heading;
    this.solver = solver;
  }

  @Override
  void work(Row row, byte[] bytes, int start, int content, int end) {
    figures().start(bytes, start, content);
    try {
      solver.solve(row, figures());
    } catch (IllegalArgumentException e) { // what a value of the library refuses
      throw new RefusedRow(0, String.valueOf(e.getMessage()));
    }
    figures().end(bytes, content, end);
  }

  @Override
  void refused(RefusedRow why, byte[] bytes, int start, int content, int end) {
    figures().takeBack();
    figures().start(bytes, start, content);
    figures().pad(heading.width() - Row.fields(bytes, start, content));
    figures().end(bytes, content, end);
  }

  @Override
  void blank(byte[] bytes, int start, int end) {
    figures().raw(bytes, start, end);
  }

  @Override
  void ended(long lines) {}
}
