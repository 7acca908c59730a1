package org.ferryglide.examples.teach;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.ferryglide.nav.teach.Problem;
import org.ferryglide.nav.teach.Quantity;
import org.ferryglide.testing.Seeds;

/**
 * Every kind of exercise solved a second time from the words of its question alone, by drawing on
 * squared paper and searching, with no code of the library: what the learner reads is enough, and
 * leads to the answer of the sheet.
 */
class SlowPathTest {
  /** A tenth of the tightest tolerance that answers are marked with; searches stop well below. */
  private static final double TENTH_OF_TOLERANCE = 0.1;

  /** Cards and curves are read from printed tables in straight lines; the library is smooth. */
  private static final double READ_FROM_A_TABLE = 1.0;

  /** The course to lay off lies between whole degrees, which its question does not print. */
  private static final double LAID_OFF = 0.51;

  private static final Pattern FIGURE =
      Pattern.compile(
          "(?:^|; )([A-Z][A-Za-z ]*?(?: [0-9](?= [0-9]))?) (-?[0-9][^;(]*?)"
              + " ?(?:\\([^)]*\\))?(?=;|$)");

  @Property(seed = Seeds.SEED, tries = 6 * Seeds.MORE_IN_THE_SOAK)
  void everyKindIsSolvedAgainFromItsQuestion(@ForAll long seed) {
    TreeSet<String> solved = new TreeSet<>();
    PracticeArea area = PracticeArea.of(seed);
    for (Problem problem : DrawnProblems.of(seed)) {
      Quantity quantity = problem.quantity(problem.asked());
      SlowSolver slow = new SlowSolver(read(problem.question()), area);
      double tolerance =
          problem.title().equals("Magnetic course of a leg on the chart")
              ? LAID_OFF
              : quantity.tolerance()
                  * (slow.readsATable(problem) ? READ_FROM_A_TABLE : TENTH_OF_TOLERANCE);
      assertEquals(
          0.0,
          quantity.difference(slow.solve(problem.title()), problem.answer()),
          tolerance,
          problem::toString);
      solved.add(problem.title());
    }
    assertTrue(solved.size() >= 26, solved::toString);
  }

  /** The figures of a question by name, in degrees, minutes, miles, knots and metres. */
  private static Map<String, Double> read(String question) {
    Map<String, Double> figures = new HashMap<>();
    Matcher found = FIGURE.matcher(question);
    while (found.find()) {
      figures.put(found.group(1), number(found.group(2).trim()));
    }
    return figures;
  }

  private static double number(String text) {
    Matcher clock = Pattern.compile("(\\d\\d):(\\d\\d)").matcher(text);
    if (clock.matches()) {
      return 60.0 * Integer.parseInt(clock.group(1)) + Integer.parseInt(clock.group(2));
    }
    Matcher length = Pattern.compile("(?:(\\d+) h )?(\\d+) min").matcher(text);
    if (length.matches()) {
      return (length.group(1) == null ? 0 : 60.0 * Integer.parseInt(length.group(1)))
          + Integer.parseInt(length.group(2));
    }
    Matcher side = Pattern.compile("(\\d+)°(\\d\\d)'([EW])").matcher(text);
    if (side.matches()) {
      double size = Integer.parseInt(side.group(1)) + Integer.parseInt(side.group(2)) / 60.0;
      return side.group(3).equals("E") ? size : -size;
    }
    return Double.parseDouble(text.replaceAll("[^-0-9.].*$", ""));
  }
}
