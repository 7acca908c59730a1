package org.ferryglide.nav.magnetic;

/**
 * What a model does with a date outside the years it was made for: the caller's choice, never a
 * surprise on the day it lapses.
 *
 * <pre>{@code
 * MagneticModel strict = MagneticModel.wmm2025().withOutsideSpan(OutsideSpan.REFUSE);
 * strict.at(LocalDate.of(2031, 1, 1)); // DateTimeException
 * }</pre>
 */
public enum OutsideSpan {
  /** Answer, with a note that says by how long the date lies outside the span. */
  ANSWER_WITH_NOTE,
  /** Throw a {@link java.time.DateTimeException} that names the span and the date. */
  REFUSE
}
