package org.ferryglide.examples.page;

import java.util.List;
import org.ferryglide.examples.svg.Markup;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.passage.WayHome;
import org.ferryglide.nav.timing.Verdict;

/** What stands at the top of everything printed: what nobody looked at, and what is not within. */
final class Caution {
  private Caution() {}

  /** What was not given, then what could not be looked up. */
  static String notChecked(WorkedPassage worked, Printed printed) {
    List<Note> notGiven =
        worked.wayHome().map(WayHome::notChecked).orElse(worked.day().notChecked());
    List<Verdict> verdicts = worked.plan().solved().map(TimedPlan::verdicts).orElse(List.of());
    return worked.labels().notChecked(notGiven, verdicts, printed::say);
  }

  /**
   * Each finding that is not within, as an item of a list.
   *
   * @return whether there is none
   */
  static boolean findings(Markup body, List<Verdict> verdicts, Printed printed) {
    boolean isAllWithin = true;
    for (Verdict verdict : verdicts) {
      if (verdict.answer() != Verdict.Answer.WITHIN) {
        isAllWithin = false;
        String words =
            printed.say(verdict)
                + verdict.when().map(time -> ", " + printed.early(time)).orElse("")
                + verdict.where().map(place -> ", " + Printed.place(place)).orElse("");
        body.open("li").element("strong", printed.answer(verdict)).text(" " + words);
        body.close().line();
      }
    }
    return isAllWithin;
  }
}
