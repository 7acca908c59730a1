package org.ferryglide.examples.teach;

import java.util.List;
import java.util.Optional;
import org.ferryglide.examples.svg.Svg;
import org.ferryglide.nav.teach.Problem;

/**
 * The picture of a worked problem, drawn from its own figures: a triangle that is really solved, a
 * plot, the norths, or a curve between two waters.
 *
 * <pre>{@code
 * Optional<Svg> picture = WorkingPicture.of("triangle", problem);
 * picture.ifPresent(svg -> page.add(svg.inline()));
 * }</pre>
 */
public final class WorkingPicture {
  private WorkingPicture() {}

  /**
   * The picture of a problem.
   *
   * @param name unlike that of every other picture of its page
   * @param problem the problem
   * @return the picture, or none for a problem that is mere arithmetic
   */
  public static Optional<Svg> of(String name, Problem problem) {
    List<String> figures = problem.figures();
    if (figures.contains("Water track 1")) {
      return Optional.of(VectorPictures.runs(name, problem));
    }
    if (figures.contains("Rate 1")) {
      return Optional.of(VectorPictures.hourly(name, problem));
    }
    if (figures.containsAll(List.of("Course", "Set", "Rate", "Water track"))) {
      return Optional.of(VectorPictures.triangle(name, problem));
    }
    if (figures.contains("Distance made good") && figures.contains("Drift")) {
      return Optional.of(VectorPictures.estimated(name, problem));
    }
    if (figures.contains("Wind from")) {
      return Optional.of(VectorPictures.leeway(name, problem));
    }
    if (figures.contains("Course aimed")) {
      return Optional.of(FixPictures.aimedOff(name, problem));
    }
    if (figures.contains("Off the second mark")) {
      return Optional.of(FixPictures.twoBearings(name, problem));
    }
    if (figures.containsAll(List.of("Second bearing", "Water track"))) {
      return Optional.of(FixPictures.runningFix(name, problem));
    }
    if (figures.contains("Second angle")) {
      return Optional.of(FixPictures.bowBearings(name, problem));
    }
    if (figures.contains("Clearing bearing")) {
      return Optional.of(FixPictures.clearing(name, problem));
    }
    if (figures.contains("Astern")) {
      return Optional.of(FixPictures.backBearing(name, problem));
    }
    if (figures.contains("Water before")) {
      return Optional.of(CurvePictures.between(name, problem));
    }
    if (figures.containsAll(List.of("Neap rate", "Neaps to springs"))) {
      return Optional.of(CurvePictures.rate(name, problem));
    }
    if (figures.contains("Dries") || figures.contains("Charted depth")) {
      return Optional.of(CurvePictures.depth(name, problem));
    }
    boolean norths = figures.contains("Variation") || figures.contains("Deviation");
    if (norths && !figures.contains("Neaps to springs")) {
      return Optional.of(NorthPictures.norths(name, problem));
    }
    return Optional.empty();
  }

  /** What a picture shows, in words: the problem's figures. */
  static String words(Problem problem) {
    StringBuilder words = new StringBuilder();
    for (String figure : problem.figures()) {
      words.append(words.length() == 0 ? "" : "; ").append(figure).append(' ');
      words.append(text(problem, figure));
    }
    return words.append('.').toString();
  }

  /** A figure of the problem in writing. */
  static String text(Problem problem, String figure) {
    return problem.quantity(figure).text(problem.exact(figure));
  }
}
