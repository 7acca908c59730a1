package org.ferryglide.tide.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.InputProblem;
import org.ferryglide.testing.Seeds;

/** Folders damaged at random: refused in words with a place, or read; never anything else. */
class BrokenFoldersProperties {
  private static final String[] INSERTS = {
    "\"",
    ",",
    ";",
    "\n",
    "\t",
    "#",
    "4,2",
    "\u001b[31m",
    "\u0000",
    "NaN",
    "1e999",
    "-",
    "°",
    "'",
    "\r",
    "\ufeff",
    "   ",
    "🛶",
    "\"\"",
    "Infinity",
    "\u202e",
    "99999999999999999999",
    "N",
    "é"
  };

  @Property(seed = Seeds.SEED, tries = 300 * Seeds.MORE_IN_THE_SOAK)
  void damageIsToldByFileOrHarmless(
      @ForAll @IntRange(max = 16) int file,
      @ForAll @IntRange(max = 999) int place,
      @ForAll @IntRange(max = 23) int insert,
      @ForAll @IntRange(max = 12) int remove)
      throws IOException {
    Map<String, String> files = Folders.whole();
    String name = new ArrayList<>(files.keySet()).get(file);
    String text = Objects.requireNonNull(files.get(name));
    int at = place % text.length();
    int end = Math.min(text.length(), at + remove);
    files.put(name, text.substring(0, at) + INSERTS[insert] + text.substring(end));
    Path folder = Files.createTempDirectory("broken");
    try {
      Folders.write(folder, files);
      PassageFolder read = PassageFolder.read(folder);
      assertTrue(read.wayPoints().size() >= 2);
      assertEquals(read, read.withPassage(read.passage()));
    } catch (InputFormatException e) {
      List<InputProblem> problems = e.problems();
      assertTrue(problems.get(0).source().startsWith(folder.toString()));
      for (InputProblem problem : problems) {
        assertFalse(problem.message().isEmpty());
        assertTrue(problem.message().length() <= 520);
        problem
            .toString()
            .chars()
            .forEach(c -> assertFalse(Character.isISOControl(c), problem.message()));
        long lines = files.getOrDefault(relative(folder, problem), "").lines().count();
        assertTrue(problem.line() <= lines + 1, problem.toString());
      }
    } finally {
      try (Stream<Path> all = Files.walk(folder)) {
        for (Path path : (Iterable<Path>) all.sorted(Comparator.reverseOrder())::iterator) {
          Files.delete(path);
        }
      }
    }
  }

  private static String relative(Path folder, InputProblem problem) {
    return folder.relativize(Path.of(problem.source())).toString().replace('\\', '/');
  }
}
