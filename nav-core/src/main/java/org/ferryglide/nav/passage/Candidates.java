package org.ferryglide.nav.passage;

import org.ferryglide.nav.steer.SteeredRoute;

/**
 * The candidate last looked at by each thread, so that all checks of a departure share one look
 * along the way.
 */
final class Candidates {
  private final Passage passage;

  @SuppressWarnings("ThreadLocalUsage") // each passage has candidates of its own
  private final ThreadLocal<Candidate> last = new ThreadLocal<>();

  @SuppressWarnings("ThreadLocalUsage") // so are their solvers
  private final ThreadLocal<PassageSolver> slower;

  Candidates(Passage passage) {
    this.passage = passage;
    this.slower = ThreadLocal.withInitial(() -> PassageSolver.lean(passage.slower()));
  }

  /** What is known of a route; the very route is meant, not one that equals it. */
  @SuppressWarnings("ReferenceEquality")
  Candidate of(SteeredRoute route) {
    Candidate candidate = last.get();
    if (candidate == null || candidate.route != route) {
      candidate = new Candidate(passage, route, slower::get);
      last.set(candidate);
    }
    return candidate;
  }
}
