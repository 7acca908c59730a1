package org.ferryglide.nav.sky;

/**
 * What the sun does at one threshold during one calendar day.
 *
 * <pre>{@code
 * boolean noNightAtAll = day.daylight().state() == SunState.ALWAYS_UP;
 * }</pre>
 */
public enum SunState {
  /** It crosses the threshold at least once; a day can have a rise only, or a set only. */
  CROSSES,
  /** It stays above the threshold all day. */
  ALWAYS_UP,
  /** It stays below the threshold all day. */
  ALWAYS_DOWN
}
