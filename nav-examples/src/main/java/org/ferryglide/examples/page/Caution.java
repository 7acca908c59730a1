package org.ferryglide.examples.page;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.passage.WayHome;
import org.ferryglide.nav.timing.Verdict;

/** The line at the top of everything printed: what nobody looked at. */
final class Caution {
  private Caution() {}

  static String notChecked(Labels labels, WorkedPassage worked) {
    List<String> open = open(worked);
    return open.isEmpty()
        ? labels.say("all-checked")
        : labels.say("not-checked", "what", String.join(", ", open));
  }

  /** What was not given, then what could not be looked up. */
  static List<String> open(WorkedPassage worked) {
    List<String> open =
        new ArrayList<>(
            worked.wayHome().map(WayHome::notChecked).orElse(worked.day().notChecked()));
    worked
        .plan()
        .solved()
        .ifPresent(
            plan ->
                plan.verdicts().stream()
                    .filter(verdict -> verdict.answer() == Verdict.Answer.NOT_CHECKED)
                    .forEach(verdict -> open.add(verdict.reason())));
    return open;
  }
}
