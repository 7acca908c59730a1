package org.ferryglide.nav.bearing;

/**
 * What a swing is worth, judged by how well five coefficients explain it. The limits are common
 * practice for a compass read to about a degree from a small boat; no source.
 *
 * <pre>{@code
 * if (fit.verdict() == SwingVerdict.REPEAT) {
 *   // paddle another circle
 * }
 * }</pre>
 */
public enum SwingVerdict {
  /** Eight headings or more, scatter at most 1°, no sight off by more than 2.5°. */
  GOOD,
  /** Scatter at most 2°, no sight off by more than 5°. */
  FAIR,
  /** Scatter or a single sight beyond that: swing again. */
  REPEAT,
  /** Five sights fix five coefficients and leave nothing to judge them by. */
  NOT_JUDGED
}
