package org.ferryglide.nav.steer;

/** The greatest of what was looked at. */
final class WorstLook {
  /** Halvings of the step between looks where the worst stands at an end of a segment. */
  private static final int HALVINGS = 6;

  private final int what;
  double value;
  double time;
  double speed;
  private int segment;
  private double part;
  private double step;

  WorstLook(int what) {
    this.what = what;
  }

  void clear() {
    value = Double.NEGATIVE_INFINITY;
    time = 0.0;
    speed = 0.0;
    segment = -1;
  }

  void take(int segment, double part, double step, DemandScan scan) {
    double looked = scan.looked(what);
    if (looked > value) {
      value = looked;
      time = scan.lookedTime;
      speed = scan.lookedSpeed;
      this.segment = segment;
      this.part = part;
      this.step = step;
    }
  }

  void refine(DemandScan scan) {
    if (segment < 0 || step == 0.0) { // in a steady segment no look is better
      return;
    }
    if (part < 0.5 * step || part > 1.0 - 0.5 * step) { // at an end of its segment
      halve(scan);
      return;
    }
    double middle = part;
    if (!scan.measure(segment, middle - step)) {
      return;
    }
    double before = scan.looked(what);
    if (!scan.measure(segment, middle + step)) {
      return;
    }
    double after = scan.looked(what);
    double bend = before - 2.0 * value + after;
    if (bend < 0.0) {
      double top = middle + 0.5 * step * (before - after) / bend;
      if (scan.measure(segment, Math.min(1.0, Math.max(0.0, top)))) {
        take(segment, top, step, scan);
      }
    }
  }

  /**
   * Moves to the better side in ever smaller steps, into the next segment if need be; not where the
   * smallest step is no better to either side, as where the stream is strongest at a break point.
   */
  private void halve(DemandScan scan) {
    double length = step * (scan.track.timeOf(segment + 1) - scan.track.timeOf(segment));
    double here = value;
    lookAround(Math.scalb(length, -HALVINGS), scan);
    if (!(value > here)) {
      return;
    }
    for (int i = 0; i < HALVINGS; i++) {
      length *= 0.5;
      lookAround(length, scan);
    }
  }

  private void lookAround(double seconds, DemandScan scan) {
    double at = time;
    for (double side = -1.0; side <= 1.0; side += 2.0) {
      if (scan.measureAt(at + side * seconds)) {
        take(segment, part, step, scan);
      }
    }
  }
}
