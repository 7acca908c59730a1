package org.ferryglide.nav.passage;

import java.util.Objects;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.timing.Condition;
import org.ferryglide.nav.timing.Verdict;
import org.jspecify.annotations.Nullable;

/** A condition that needs more than a steered route: it looks at the passage along the way. */
abstract class PassageCheck implements Condition {
  private final Note about;
  private final Passage passage;
  private Candidates shared;

  PassageCheck(Note about, Passage passage) {
    this.about = Objects.requireNonNull(about, "about");
    this.passage = passage;
    this.shared = new Candidates(passage);
  }

  /** Looks along the way together with other checks; called before the check is handed out. */
  final void share(Candidates candidates) {
    shared = candidates;
  }

  @Override
  public String name() {
    return about.text();
  }

  @Override
  public Note about() {
    return about;
  }

  Passage passage() {
    return passage;
  }

  @Override
  public Verdict check(SteeredRoute route) {
    return check(shared.of(route));
  }

  /** The same with what was looked up already. */
  abstract Verdict check(Candidate candidate);

  /**
   * The same for a search of which only the least margin counts. A check whose figure is costly
   * overrides it, and may answer null where its margin is no less than one found before; this never
   * does. Where that is negative something stops already, and what is not known does not matter.
   */
  @Nullable Verdict worseThan(Candidate candidate, double margin) {
    return check(candidate);
  }

  /** A verdict with the time and place of a look. */
  static Verdict at(Verdict verdict, Candidate candidate, int look) {
    return verdict
        .at(EpochSeconds.toInstant(candidate.time[look]))
        .at(
            Position.ofDegrees(
                candidate.latitude[look], Candidate.longitude(candidate.longitude[look])));
  }
}
