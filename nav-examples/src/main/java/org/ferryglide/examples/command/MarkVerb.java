package org.ferryglide.examples.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ferryglide.examples.files.Bytes;
import org.ferryglide.examples.teach.Exercises;
import org.ferryglide.examples.teach.MarkedSheet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Marks a learner's answers. */
@Command(
    name = "mark",
    description = "Mark answers to the exercises of a seed, and name the likeliest slips.",
    footer = {
      "",
      "A line of FILE is number,value for an answer or number,figure,value for a figure written on",
      "the way; # begins a comment. Seed and count must be those of the exercises.",
      "",
      "Example:",
      "  ferryglide mark nav-examples/scenarios/answers.csv --seed 7 --count 6"
    })
final class MarkVerb extends Verb {
  /** A sheet of two hundred exercises with ten figures each is far smaller. */
  private static final int MOST_BYTES = 1_000_000;

  @Parameters(index = "0", paramLabel = "FILE", description = "The answers.")
  private Path file = Path.of("");

  @Option(names = "--seed", paramLabel = "N", description = "Any number; 1 by default.")
  private long seed = 1;

  @Option(names = "--count", paramLabel = "N", description = "How many, 1 to 200; 10 by default.")
  private int count = 10;

  @Override
  protected Answer answer() throws IOException {
    List<String> lines = Bytes.text(file, MOST_BYTES).lines().toList();
    Exercises exercises = InputRefused.given(() -> Exercises.of(seed, count));
    MarkedSheet marked = MarkedSheet.of(exercises, file.toString(), lines);
    if (marked.markings().isEmpty()) {
      throw new InputRefused(
          file + ": holds no answer; a line is number,value for each exercise answered");
    }
    Answer answer =
        new Answer().value("answered", marked.markings().size()).value("right", marked.right());
    marked.toString().lines().forEach(answer::line);
    List<Object> values = new ArrayList<>();
    marked
        .markings()
        .forEach(
            (number, marking) -> {
              Map<String, Object> value = new LinkedHashMap<>();
              value.put("number", number);
              value.put("isRight", marking.isRight());
              value.put("told", marking.toString());
              values.add(value);
            });
    return answer.value("markings", values);
  }
}
