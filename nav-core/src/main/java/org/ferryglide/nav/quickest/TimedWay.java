package org.ferryglide.nav.quickest;

/**
 * A way and its time.
 *
 * @param way the way
 * @param seconds how long it takes
 * @param gained how much it gained when its tracks were last halved, seconds; NaN if they never
 *     were
 * @param rough the way of the front that it comes from
 */
record TimedWay(Way way, double seconds, double gained, Way rough) {
  /** What it would take in ever more tracks: each halving gains a quarter of the last. */
  double expected() {
    return gained > 0.0 ? seconds - gained / 3.0 : seconds;
  }
}
