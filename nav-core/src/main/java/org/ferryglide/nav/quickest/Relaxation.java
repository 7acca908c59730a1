package org.ferryglide.nav.quickest;

/**
 * Moves the places of a way sideways until no small move makes it quicker: Newton's method on the
 * offsets, and where it gets stuck, sweeps over the places one by one. Not thread-safe.
 */
final class Relaxation {
  private static final int MOST_ROUNDS = 20;
  private static final int MOST_FRESH_STARTS = 3;
  private static final int HALVINGS = 12;

  /** Sweeps over the places one by one where Newton's method has got stuck. */
  private static final int LATER_SWEEPS = 15;

  private final TrackTimes times;
  private final Sweeps sweeps;
  private final OffsetSystem system;

  /** A round that gains less than this share of the time is the last. */
  private double settledShare;

  /** Whether Newton's method got stuck. */
  private boolean stuck;

  Relaxation(TrackTimes times) {
    this.times = times;
    sweeps = new Sweeps(times);
    system = new OffsetSystem(times);
  }

  /**
   * A settled way near the one given; itself, if it cannot be made.
   *
   * @param firstSweeps how often the places are swept first
   * @param share a round that gains less than this share of the time is the last
   */
  Way relaxed(Way way, int firstSweeps, double share) {
    boolean before = times.setLenient(true);
    settledShare = share;
    Way best = settled(firstSweeps == 0 ? way : sweeps.swept(way, firstSweeps));
    for (int again = 0; again < MOST_FRESH_STARTS && stuck; again++) {
      best = settled(sweeps.swept(best, LATER_SWEEPS));
    }
    times.setLenient(before);
    return best;
  }

  /** Newton's method; leaves in {@link #stuck} whether it ended before it settled. */
  private Way settled(Way way) {
    stuck = false;
    Way best = way;
    double time = best.arrival(times);
    if (Double.isNaN(time) || way.tracks() < 2) {
      return way;
    }
    double damping = 0.0;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      system.measure(best);
      double scale = system.scale();
      boolean gained = false;
      for (int attempt = 0; attempt < 8 && !gained; attempt++) {
        while (!system.solve(damping)) {
          damping = Math.max(4.0 * damping, 1e-4 * scale);
          if (!(damping < 1e9 * scale)) {
            stuck = true;
            return best; // nothing curves at all
          }
        }
        double share = 1.0;
        for (int h = 0; h < HALVINGS; h++) {
          Way trial = system.moved(best, share);
          double trialTime = trial.arrival(times);
          if (trialTime < time) {
            gained = true;
            double gain = time - trialTime;
            best = trial;
            time = trialTime;
            damping = share == 1.0 ? 0.25 * damping : damping;
            if (gain < settledShare * time) {
              return best;
            }
            break;
          }
          share *= h == 0 ? 0.5 : 0.35;
          if (system.predicted(share) < settledShare * time) {
            return best;
          }
        }
        if (!gained) {
          damping = Math.max(8.0 * damping, 1e-3 * scale);
        }
      }
      if (!gained) {
        stuck = true;
        return best;
      }
    }
    stuck = true;
    return best;
  }
}
