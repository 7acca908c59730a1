package org.ferryglide.examples.batch;

/** Why one row cannot be worked. Carries no stack, since a bad file throws one for every row. */
final class RefusedRow extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final int column;
  private final String reason;

  /**
   * Takes the reason.
   *
   * @param column number of the field, the first is 1; 0 where the whole row is meant
   * @param reason what was given and what is allowed
   */
  RefusedRow(int column, String reason) {
    super(reason, null, false, false);
    this.column = column;
    this.reason = reason;
  }

  int column() {
    return column;
  }

  String reason() {
    return reason;
  }
}
