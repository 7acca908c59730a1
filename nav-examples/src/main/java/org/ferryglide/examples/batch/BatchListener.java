package org.ferryglide.examples.batch;

import java.io.PrintWriter;
import org.ferryglide.nav.note.InputProblem;

/**
 * Hears how a batch gets on. Called by the thread that runs the batch, in the order of the rows.
 *
 * <pre>{@code
 * BatchListener listener = BatchListener.printingTo(new PrintWriter(System.err, true));
 * }</pre>
 */
public interface BatchListener {
  /** How many refused rows are told one by one. */
  int MOST_TOLD = 100;

  /**
   * A row was refused; of the first {@link #MOST_TOLD} it is told which.
   *
   * @param problem source, line, column and what is wrong
   */
  void refused(InputProblem problem);

  /**
   * Rows have been written; told about once a second, and not for short work.
   *
   * @param rows rows so far
   * @param rowsASecond rows a second so far
   */
  void progress(long rows, long rowsASecond);

  /**
   * A listener that writes each of these on a line of its own.
   *
   * @param out where to; usually the standard error stream; flushed
   * @return the listener
   */
  static BatchListener printingTo(PrintWriter out) {
    return new BatchListener() {
      @Override
      public void refused(InputProblem problem) {
        out.println(problem);
        out.flush();
      }

      @Override
      public void progress(long rows, long rowsASecond) {
        out.println(rows + " rows, " + rowsASecond + " rows a second");
        out.flush();
      }
    };
  }
}
