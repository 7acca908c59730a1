package org.ferryglide.examples.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.InputProblem;
import org.ferryglide.nav.note.Note;
import org.ferryglide.tide.folder.PassageFolder;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** All problems and doubts of a folder, nothing else. */
@Command(
    name = "check",
    description = "All problems and doubts of a passage's folder, nothing else.",
    footer = {"", "Example:", "  ferryglide check nav-examples/scenarios/ollen-skerries"})
final class CheckVerb extends Verb {
  @Parameters(index = "0", paramLabel = "FOLDER", description = "The passage's folder.")
  private Path folder = Path.of("");

  @Override
  protected Answer answer() throws IOException {
    try {
      List<Note> doubts = new ArrayList<>(PassageFolder.read(folder).notes());
      return new Answer()
          .line(doubts.isEmpty() ? "no problem, no doubt" : "no problem; what looks wrong:")
          .value("problems", List.of())
          .value("found", 0)
          .notes(doubts);
    } catch (InputFormatException e) {
      if (!isJson()) {
        throw e;
      }
      List<Object> problems = new ArrayList<>();
      for (InputProblem problem : e.problems()) {
        Map<String, Object> value = new LinkedHashMap<>();
        value.put("file", problem.source());
        value.put("line", problem.line());
        value.put("column", problem.column());
        value.put("message", problem.message());
        problems.add(value);
      }
      return new Answer()
          .value("problems", problems)
          .value("found", e.found())
          .status(Status.REFUSED);
    }
  }
}
