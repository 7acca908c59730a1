package org.ferryglide.nav.bearing;

/**
 * What a swing is worth, judged by how far its curve may be off on the heading where it is known
 * least. The limits are common practice for a compass read to about a degree from a small boat; no
 * source.
 *
 * <pre>{@code
 * if (fit.verdict() == SwingVerdict.REPEAT) {
 *   // paddle another circle
 * }
 * }</pre>
 *
 * @see SwingFit#likelyErrorDegrees
 */
public enum SwingVerdict {
  /** Eight headings or more, 10° apart; the curve within 2.5° all round, and every sight of it. */
  GOOD,
  /** The curve within 5° all round, and every sight of it. */
  FAIR,
  /** Neither: swing again. */
  REPEAT,
  /** Five sights fix five coefficients and leave nothing to judge them by. */
  NOT_JUDGED
}
