package org.ferryglide.nav.teach;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.ferryglide.nav.note.Figure;
import org.ferryglide.nav.note.Step;
import org.ferryglide.nav.note.Working;

/** The lines of a problem as somebody works them by hand, beside their exact values. */
final class HandWork {
  private static final double[] NOTHING_WRITTEN = {};

  private final List<Line> lines;
  private final Chain exact;
  private final Chain hand;
  private final Quantity asked;

  HandWork(List<Line> lines) {
    this.lines = lines;
    this.exact = Chain.worked(lines, false, NOTHING_WRITTEN, List.of());
    this.hand = Chain.worked(lines, true, NOTHING_WRITTEN, List.of());
    this.asked = lines.get(lines.size() - 1).quantity();
  }

  /** By how much rounding moved the answer, in the unit of the figure asked for. */
  double moved() {
    return asked.difference(hand.last(), exact.last());
  }

  Working working(String title, String estimate, String check) {
    Working working = Working.titled(title);
    if (!estimate.isEmpty()) {
      working = working.plus(remark("In the head", estimate, "about"));
    }
    Figure[] written = new Figure[lines.size()];
    for (int i = 0; i < written.length; i++) {
      Line line = lines.get(i);
      String text = line.quantity().text(hand.value(i));
      String unit = line.quantity().unit();
      written[i] = new Figure(line.name(), exact.value(i), hand.value(i), unit, text);
      List<Figure> inputs = new ArrayList<>();
      for (int read : inputsOf(i)) {
        inputs.add(written[read]);
      }
      working = working.plus(new Step(line.words(), inputs, written[i]));
    }
    working = working.plus(remark("Rounding", fineness(), movedInWords()));
    return check.isEmpty()
        ? working
        : working.plus(remark("Check", check, asked.text(hand.last())));
  }

  private String fineness() {
    Set<String> written = new LinkedHashSet<>();
    for (Line line : lines) {
      if (!line.given()) {
        written.add(line.quantity().writtenTo());
      }
    }
    return written.isEmpty()
        ? "figures as given"
        : "each line is written before the next one uses it: " + String.join(", ", written);
  }

  private String movedInWords() {
    double hundredths = Math.rint(Math.abs(moved()) * 100.0) / 100.0;
    return hundredths == 0.0
        ? "moves nothing"
        : ("moves " + hundredths + " " + asked.unitOfDifference()).trim();
  }

  /** A line of words about the answer; it carries the answer, so that the last line always does. */
  private Step remark(String name, String words, String text) {
    return new Step(
        words, List.of(), new Figure(name, exact.last(), hand.last(), asked.unit(), text));
  }

  private Set<Integer> inputsOf(int line) {
    Set<Integer> inputs = new LinkedHashSet<>();
    hand.reading(line, inputs::add);
    return inputs;
  }
}
