package org.ferryglide.examples.teach;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
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

  /** Titles without the figures and sides that change from draw to draw. */
  private static final Set<String> KINDS =
      Set.of(
          "Aiming off up stream of a mark",
          "Back bearing that holds the track",
          "Clearing bearing",
          "Compass course by the deviation card",
          "Daylight left on landing",
          "Depth",
          "Distance off a light that rises or dips",
          "Distance off by a running fix",
          "Distance off by a vertical angle",
          "Distance off by two bearings on the bow",
          "Estimated position from the start",
          "Fix by the bearings of two marks",
          "Heading across a stream",
          "Heading that allows for leeway",
          "Height of a water at a secondary port",
          "Height of the tide by the cosine",
          "Height of the tide by the port's curve",
          "Height of the tide by twelfths",
          "How far off by a small angle",
          "Length of a leg on the chart",
          "Magnetic course of a leg on the chart",
          "Magnetic course of a leg on the land map",
          "Magnetic course with a rose of … in …",
          "One heading through … hours",
          "Rate of the stream from the table",
          "Stream between two hours of the table",
          "Time of a leg in a stream",
          "Time of a water at a secondary port",
          "True bearing from the deck compass");

  /** Kinds whose draws are not sharp often enough for every seed to have one. */
  private static final Set<String> SOMETIMES_WITHOUT =
      Set.of("One heading through … hours", "Time of a water at a secondary port");

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
      solved.add(kind(problem.title()));
    }
    TreeSet<String> missing = new TreeSet<>(KINDS);
    missing.removeAll(solved);
    assertTrue(SOMETIMES_WITHOUT.containsAll(missing), missing::toString);
    solved.removeAll(KINDS);
    assertEquals(Set.of(), solved);
  }

  private static String kind(String title) {
    return title.replaceAll("[0-9]+", "…").replaceAll(" with the danger to .*| over a .*", "");
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
