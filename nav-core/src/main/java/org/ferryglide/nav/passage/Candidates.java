package org.ferryglide.nav.passage;

import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import org.ferryglide.nav.steer.SteeredRoute;
import org.jspecify.annotations.Nullable;

/**
 * The candidate last looked at by each thread, so that all checks of a departure share one look
 * along the way.
 */
final class Candidates {
  // no thread-local: its values would lead back to it, and a thread that outlives a thousand
  // passages would keep them all
  private final ConcurrentMap<Thread, Last> last = new ConcurrentHashMap<>();

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
  }

  private Last mine() {
    Thread thread = Thread.currentThread();
    Last known = last.get(thread);
    if (known == null) {
      last.keySet().removeIf(one -> !one.isAlive());
      known = new Last(passage);
      last.put(thread, known);
    }
    return known;
  }

  /** The workspace of the thread that asks. */
  WorkRoom room() {
    return mine().room;
  }

  /** What is known of a route; the very route is meant, not one that equals it. */
  @SuppressWarnings("ReferenceEquality")
  Candidate of(SteeredRoute route) {
    Last mine = mine();
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
