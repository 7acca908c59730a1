package org.ferryglide.examples.teach;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.ferryglide.nav.note.Working;
import org.ferryglide.nav.teach.Problem;
import org.ferryglide.nav.teach.Quantity;
import org.ferryglide.testing.Seeds;
import org.junit.jupiter.api.Test;

class ExercisesTest {
  /** Slips that move the answer by less have no effect at all. */
  private static final double NO_EFFECT = 1e-9;

  private static final int GOLDEN = -296842714;

  private static Quantity quantity(Problem problem) {
    List<String> figures = problem.figures();
    return problem.quantity(figures.get(figures.size() - 1));
  }

  @Property(seed = Seeds.SEED, tries = 12)
  void theRightAnswerIsRightAndSoIsTheOneByHandOrItsRoundingIsTold(@ForAll long seed) {
    for (Exercise exercise : Exercises.of(seed, 29).list()) {
      Problem problem = exercise.problem();
      assertTrue(problem.mark(problem.answer()).isRight());
      Working working = problem.working();
      assertEquals(problem.answer(), working.result().exact(), 0.0);
      double moved =
          quantity(problem).difference(working.result().byHand(), working.result().exact());
      assertEquals(
          Math.abs(moved) > NO_EFFECT && !quantity(problem).isBearing(),
          working.toString().contains("without rounding on the way")
              && !quantity(problem).isBearing(),
          working::toString);
    }
  }

  @Test
  void theSameSeedGivesTheSameSheetAndAnotherSeedAnother() {
    List<String> once = Exercises.of(7, 20).list().stream().map(Exercise::story).toList();
    assertEquals(once, Exercises.of(7, 20).list().stream().map(Exercise::story).toList());
    Set<String> other =
        new HashSet<>(Exercises.of(8, 20).list().stream().map(Exercise::story).toList());
    other.retainAll(once);
    assertTrue(other.size() <= 2, other::toString);
  }

  /** A regression value, the same with Java 17 and 25 and in every language. */
  @Test
  void theSheetIsTheSameInEveryLanguageAndVersionOfJava() {
    Locale before = Locale.getDefault();
    Set<Integer> sheets = new HashSet<>();
    try {
      for (String language : List.of("en", "tr", "ar-EG", "th-TH-u-nu-thai", "hi-IN-u-nu-deva")) {
        Locale.setDefault(Locale.forLanguageTag(language));
        StringBuilder sheet = new StringBuilder();
        for (Exercise exercise : Exercises.of(7, 29).list()) {
          sheet.append(exercise.story()).append(exercise.answer());
        }
        sheets.add(sheet.toString().hashCode());
      }
    } finally {
      Locale.setDefault(before);
    }
    assertEquals(Set.of(GOLDEN), sheets);
  }

  @Test
  void gradesRiseAndEveryKindIsThere() {
    List<Exercise> list = Exercises.of(3, 20).list();
    for (int i = 1; i < list.size(); i++) {
      assertTrue(list.get(i).grade() >= list.get(i - 1).grade());
    }
    assertTrue(list.stream().map(e -> e.problem().title()).distinct().count() >= 18);
    assertEquals(7, Exercises.of(3, 7).list().size());
    assertEquals(200, Exercises.of(3, 200).list().size());
  }

  @Test
  void refusesNoExercisesAndTooMany() {
    assertThrows(IllegalArgumentException.class, () -> Exercises.of(1, 0));
    assertThrows(IllegalArgumentException.class, () -> Exercises.of(1, 201));
  }
}
