package org.ferryglide.nav.note;

/**
 * How much a {@link Note} matters to somebody about to launch.
 *
 * <pre>{@code
 * boolean mustRead = note.severity() == Severity.WARNING;
 * }</pre>
 */
public enum Severity {
  /** Says how the answer was made; nothing is wrong. */
  INFORMATION,
  /** The answer is less certain than its digits suggest. */
  CAUTION,
  /** The answer should not be used without a check by other means. */
  WARNING
}
