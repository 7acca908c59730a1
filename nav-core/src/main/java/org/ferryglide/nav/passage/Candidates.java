package org.ferryglide.nav.passage;

import org.ferryglide.nav.steer.SteeredRoute;

/**
 * The candidate last looked at by each thread, so that all checks of a departure share one look
 * along the way.
 */
final class Candidates {
  private final Passage passage;
  private final ThreadLocal<Candidate> last = new ThreadLocal<>();

  Candidates(Passage passage) {
    this.passage = passage;
  }

  Candidate of(SteeredRoute route) {
    Candidate candidate = last.get();
    if (candidate == null || candidate.route != route) {
      candidate = new Candidate(passage, route);
      last.set(candidate);
    }
    return candidate;
  }
}
