package org.ferryglide.nav.passage;

import org.ferryglide.nav.steer.SteeredRoute;
import org.jspecify.annotations.Nullable;

/**
 * The candidate last looked at by each thread, so that all checks of a departure share one look
 * along the way.
 */
final class Candidates {
  @SuppressWarnings("ThreadLocalUsage") // each passage has candidates of its own
  private final ThreadLocal<Last> last;

  private static final class Last {
    private final WorkRoom room;
    private @Nullable Candidate candidate;

    Last(Passage passage) {
      room = new WorkRoom(passage);
    }
  }

  private final Passage passage;

  Candidates(Passage passage) {
    this.passage = passage;
    last = ThreadLocal.withInitial(() -> new Last(passage));
  }

  /** The workspace of the thread that asks. */
  WorkRoom room() {
    return last.get().room;
  }

  /** What is known of a route; the very route is meant, not one that equals it. */
  @SuppressWarnings("ReferenceEquality")
  Candidate of(SteeredRoute route) {
    Last mine = last.get();
    Candidate candidate = mine.candidate;
    if (candidate == null || candidate.route != route) {
      if (candidate != null) {
        candidate.giveBack(); // no check is at work on it any more
      }
      candidate = new Candidate(passage, route, mine.room);
      mine.candidate = candidate;
    }
    return candidate;
  }
}
