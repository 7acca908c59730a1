package org.ferryglide.examples.page;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.passage.WayHome;
import org.ferryglide.nav.timing.Verdict;

/** The line at the top of everything printed: what nobody looked at. */
final class Caution {
  private Caution() {}

  /** What was not given, then what could not be looked up. */
  static String notChecked(WorkedPassage worked, Printed printed) {
    List<Note> open =
        new ArrayList<>(
            worked.wayHome().map(WayHome::notChecked).orElse(worked.day().notChecked()));
    worked.plan().solved().map(TimedPlan::verdicts).orElse(List.of()).stream()
        .filter(verdict -> verdict.answer() == Verdict.Answer.NOT_CHECKED)
        .forEach(verdict -> open.add(verdict.note()));
    Labels labels = worked.labels();
    return open.isEmpty()
        ? labels.say("all-checked")
        : labels.say(
            "not-checked", "what", String.join(", ", open.stream().map(printed::say).toList()));
  }
}
