package org.ferryglide.examples.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ferryglide.examples.files.Bytes;
import org.ferryglide.examples.teach.Exercise;
import org.ferryglide.examples.teach.Exercises;
import org.ferryglide.examples.teach.Worksheet;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Exercises on an invented area, as text or as a worksheet with its answers. */
@Command(
    name = "exercises",
    description = "Exercises on an invented area, with a worksheet to print and its answers.",
    footer = {
      "",
      "The same seed gives the same exercises everywhere.",
      "",
      "Example:",
      "  ferryglide exercises --seed 7 --count 6"
    })
final class ExercisesVerb extends Verb {
  @Option(names = "--seed", paramLabel = "N", description = "Any number; 1 by default.")
  private long seed = 1;

  @Option(names = "--count", paramLabel = "N", description = "How many, 1 to 200; 10 by default.")
  private int count = 10;

  @Option(
      names = "--sheet",
      paramLabel = "FILE",
      description = "Write the worksheet as HTML, to print on A4.")
  private @Nullable Path sheet;

  @Option(
      names = "--answers",
      paramLabel = "FILE",
      description = "Write the answers with every working as HTML.")
  private @Nullable Path answers;

  @Option(names = "--working", description = "Print answer and working under each exercise.")
  private boolean working;

  @Override
  protected Answer answer() throws IOException {
    Exercises exercises = InputRefused.given(() -> Exercises.of(seed, count));
    Worksheet printed = Worksheet.of(exercises);
    if (sheet != null) {
      Bytes.write(sheet, printed.questions());
    }
    if (answers != null) {
      Bytes.write(answers, printed.answers());
    }
    Answer answer = new Answer().value("seed", seed).value("count", count);
    List<Object> values = new ArrayList<>();
    for (Exercise exercise : exercises.list()) {
      answer.line(exercise.number() + ". " + exercise.story());
      if (working) {
        answer.line("   " + exercise.answer());
        exercise.problem().working().toString().lines().forEach(line -> answer.line("   " + line));
      }
      Map<String, Object> value = new LinkedHashMap<>();
      value.put("number", exercise.number());
      value.put("story", exercise.story());
      if (working) {
        value.put("answer", exercise.answer());
        value.put("working", Answer.value(exercise.problem().working()));
      }
      values.add(value);
    }
    return answer.value("exercises", values);
  }
}
