package org.ferryglide.examples.teach;

import java.util.ArrayList;
import java.util.List;

/**
 * Exercises drawn by a seed, on an invented area.
 *
 * <p>Each has one right answer within its tolerance: a question in which some slip leads to an
 * answer within the tolerance of the right one is thrown away and drawn again, so that nobody is
 * marked right for doing it wrong.
 *
 * <pre>{@code
 * Exercises sheet = Exercises.of(7, 12);
 * sheet.list().forEach(exercise -> System.out.println(exercise.story()));
 * }</pre>
 */
public final class Exercises {
  /** Draws of one question before it is given up; the loosest kind needs some hundreds. */
  private static final int DRAWS = 3000;

  private final PracticeArea area;
  private final List<Exercise> list;

  private Exercises(PracticeArea area, List<Exercise> list) {
    this.area = area;
    this.list = list;
  }

  /**
   * A sheet of exercises, easy ones first.
   *
   * @param seed any number; the same one gives the same sheet everywhere
   * @param count how many, 1 to 200
   * @return the sheet
   * @throws IllegalArgumentException if {@code count} is out of range
   */
  public static Exercises of(long seed, int count) {
    if (count < 1 || count > 200) {
      throw new IllegalArgumentException("number of exercises must be in 1 to 200, was " + count);
    }
    PracticeArea area = PracticeArea.of(seed);
    SeededRandom random = new SeededRandom(seed ^ 0x5DEECE66DL);
    Questions questions = new Questions(new Draws(area, random));
    List<Exercise> list = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      list.add(drawn(questions, spread(i, count, questions.kinds()), i + 1));
    }
    return new Exercises(area, List.copyOf(list));
  }

  /** Kinds from all grades, easy ones first. */
  private static int spread(int i, int count, int kinds) {
    return (int) Math.floor((i + 0.5) * kinds / count);
  }

  /** A question of this kind, or of the next one where the area has no sharp one of this. */
  private static Exercise drawn(Questions questions, int kind, int number) {
    for (int further = 0; further < questions.kinds(); further++) {
      for (int draw = 0; draw < DRAWS; draw++) {
        Exercise exercise = questions.draw((kind + further) % questions.kinds(), number);
        if (exercise != null && exercise.problem().isSharp()) {
          return exercise;
        }
      }
    }
    throw new IllegalStateException("no sharp question of any kind");
  }

  /**
   * The invented area the exercises are set in.
   *
   * @return the area
   */
  public PracticeArea area() {
    return area;
  }

  /**
   * The exercises in order.
   *
   * @return exercises
   */
  public List<Exercise> list() {
    return list;
  }
}
