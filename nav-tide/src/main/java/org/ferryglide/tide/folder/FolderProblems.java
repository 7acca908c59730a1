package org.ferryglide.tide.folder;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.InputProblem;

/** Everything wrong with a folder: files that cannot be read, what stands in them, what follows. */
final class FolderProblems {
  /** More would bury the ones that matter. */
  private static final int MOST_OF_A_FILE = 40;

  /** A message may quote a field, and a field may be as long as its file. */
  private static final int LONGEST_MESSAGE = 500;

  private final List<InputProblem> unreadable = new ArrayList<>();
  private final List<InputProblem> inFiles = new ArrayList<>();
  private final List<InputProblem> betweenFiles = new ArrayList<>();

  /** A file that is missing or cannot be read as text. */
  void unreadable(String source, int line, int column, String message) {
    unreadable.add(problem(source, line, column, message));
  }

  /** What a reader found wrong with one file. */
  void inFile(InputFormatException refusal) {
    List<InputProblem> problems = refusal.problems();
    int shown = Math.min(problems.size(), MOST_OF_A_FILE);
    for (InputProblem one : problems.subList(0, shown)) {
      inFiles.add(problem(one.source(), one.line(), one.column(), one.message()));
    }
    if (shown < problems.size()) {
      inFiles.add(
          problem(
              problems.get(0).source(),
              0,
              0,
              "and " + (problems.size() - shown) + " more problems in this file"));
    }
  }

  /** What is wrong with one file as a whole. */
  void inFile(String source, String message) {
    inFiles.add(problem(source, 0, 0, message));
  }

  /** Files that are sound by themselves but do not fit together. */
  void betweenFiles(String source, int line, int column, String message) {
    betweenFiles.add(problem(source, line, column, message));
  }

  private static InputProblem problem(String source, int line, int column, String message) {
    String shown =
        message.length() <= LONGEST_MESSAGE
            ? message
            : message.substring(0, LONGEST_MESSAGE - 1) + "…";
    return new InputProblem(
        PlainCharacters.visible(source), line, column, PlainCharacters.visible(shown));
  }

  boolean isEmpty() {
    return unreadable.isEmpty() && inFiles.isEmpty() && betweenFiles.isEmpty();
  }

  void refuseIfAny() {
    if (!isEmpty()) {
      List<InputProblem> all = new ArrayList<>(unreadable);
      all.addAll(inFiles);
      all.addAll(betweenFiles);
      throw new InputFormatException(all);
    }
  }
}
