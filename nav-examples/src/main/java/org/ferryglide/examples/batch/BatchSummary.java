package org.ferryglide.examples.batch;

/**
 * What came of a batch.
 *
 * <pre>{@code
 * System.exit(summary.exitStatus()); // 0 if every row was worked, 2 if one was refused
 * }</pre>
 *
 * @param rows rows read, refused ones included, heading and blank lines not
 * @param refused rows that could not be worked
 * @param stopped whether it ended at the first refused row
 * @param seconds how long it took
 */
public record BatchSummary(long rows, long refused, boolean stopped, double seconds) {

  /**
   * What a program should end with.
   *
   * @return 0, or 2 if a row was refused
   */
  public int exitStatus() {
    return refused == 0 ? 0 : 2;
  }

  /**
   * How quick it was.
   *
   * @return rows a second
   */
  public long rowsASecond() {
    return Math.round(rows / Math.max(seconds, 1e-9));
  }

  /** For people: {@code 1000000 rows, 2 refused, 700000 rows a second}. */
  @Override
  public String toString() {
    return rows
        + (rows == 1 ? " row, " : " rows, ")
        + refused
        + " refused, "
        + rowsASecond()
        + " rows a second"
        + (stopped ? "; stopped at the refused row" : "");
  }
}
