package org.ferryglide.examples.command;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** The verbs by name; only the one that is asked for is loaded, which makes the start quick. */
final class Verbs {
  /** In the order in which the help lists them. */
  static final List<String> NAMES =
      List.of(
          "passage",
          "departures",
          "quickest",
          "check",
          "begin",
          "leg",
          "bearing",
          "variation",
          "grid",
          "height",
          "windows",
          "stream",
          "steer",
          "fix",
          "daylight",
          "exercises",
          "mark",
          "batch",
          "study",
          "completion");

  private Verbs() {}

  /** A new verb of that name, or null if there is none. */
  static @Nullable Verb named(String name) {
    return switch (name) {
      case "passage" -> new PassageVerb();
      case "departures" -> new DeparturesVerb();
      case "quickest" -> new QuickestVerb();
      case "check" -> new CheckVerb();
      case "begin" -> new BeginVerb();
      case "leg" -> new LegVerb();
      case "bearing" -> new BearingVerb();
      case "variation" -> new VariationVerb();
      case "grid" -> new GridVerb();
      case "height" -> new HeightVerb();
      case "windows" -> new WindowsVerb();
      case "stream" -> new StreamVerb();
      case "steer" -> new SteerVerb();
      case "fix" -> new FixVerb();
      case "daylight" -> new DaylightVerb();
      case "exercises" -> new ExercisesVerb();
      case "mark" -> new MarkVerb();
      case "batch" -> new BatchVerb();
      case "study" -> new StudyVerb();
      case "completion" -> new CompletionVerb();
      default -> null;
    };
  }
}
