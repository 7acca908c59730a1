package org.ferryglide.examples;

import org.ferryglide.examples.page.Labels;
import org.ferryglide.examples.page.WorkedPassage;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.tide.folder.PassageFolder;

/**
 * The texts of the main job, for programs that print them elsewhere.
 *
 * <pre>{@code
 * PassageReport report = PassageReport.of(PassageFolder.read(folder));
 * System.out.print(report.text());
 * }</pre>
 */
public final class PassageReport {
  private final PassageFolder folder;
  private final LaidOffPassage passage;

  private PassageReport(PassageFolder folder) {
    this.folder = folder;
    this.passage = LaidOffPassage.of(folder);
  }

  /**
   * Lays off a passage.
   *
   * @param folder the passage's folder
   * @return its texts
   */
  public static PassageReport of(PassageFolder folder) {
    return new PassageReport(folder);
  }

  /**
   * The passage leg by leg, with its checks and cautions.
   *
   * @return lines of plain text
   */
  public String text() {
    return text(Labels.english());
  }

  /**
   * The same in the words of a translation.
   *
   * @param labels the words
   * @return lines of plain text
   */
  public String text(Labels labels) {
    return PassagePrinter.print(passage, labels);
  }

  /**
   * The departures of the day of the start at which no check stops, and what speaks against others.
   *
   * @param labels the words
   * @return lines of plain text
   */
  public String departures(Labels labels) {
    return PlanPrinter.windows(folder, labels);
  }

  /**
   * The deck card.
   *
   * @return lines of plain text; one line that says why if there is none
   */
  public String card() {
    return card(WorkedPassage.of(folder).withWayHome());
  }

  /**
   * The deck card of a passage worked out already.
   *
   * @param worked the passage, in the words and units that the card is to have
   * @return lines of plain text; one line that says why if there is none
   */
  public static String card(WorkedPassage worked) {
    return PlanPrinter.card(worked);
  }

  /**
   * The plan with all its checks, for the planned start.
   *
   * @return the plan, or why it is not possible
   */
  public Outcome<TimedPlan, NotPossible> plan() {
    return passage.plan();
  }

  /**
   * Whether the tables do not cover the passage, so that there is no answer.
   *
   * @return true if a leg is without data
   */
  public boolean isWithoutData() {
    return passage.isWithoutData();
  }

  /**
   * Whether a leg is not possible as planned.
   *
   * @return true if there is such a leg
   */
  public boolean isNotPossible() {
    return passage.isNotPossible();
  }
}
