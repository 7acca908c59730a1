package org.ferryglide.examples.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Command lines that are broken, each with its exit status and a part of its message. */
class BrokenLinesTest {
  private static final Path LINES =
      Path.of("src/test/resources/org/ferryglide/examples/command/broken-lines.txt");

  private static List<String> lines() throws IOException {
    return Files.readAllLines(LINES, StandardCharsets.UTF_8).stream()
        .filter(line -> !line.isEmpty() && !line.startsWith("#"))
        .toList();
  }

  @Test
  void thereAreFiftyOfThem() throws IOException {
    assertTrue(lines().size() >= 50, "only " + lines().size());
  }

  @TestFactory
  Stream<DynamicTest> eachIsAnsweredInOneLine() throws IOException {
    return lines().stream()
        .map(
            line -> {
              String[] parts = line.split(" \\| ", 3);
              return DynamicTest.dynamicTest(
                  parts[2].isEmpty() ? "(nothing)" : parts[2],
                  () -> isAnswered(Integer.parseInt(parts[0]), parts[1], parts[2]));
            });
  }

  private static void isAnswered(int status, String message, String line) {
    Ran ran = Ran.line(line);
    String told = ran.status() == 2 ? ran.err() : ran.out();
    assertEquals(status, ran.status(), told);
    assertTrue(told.contains(message), told);
    if (ran.status() == 2) {
      assertEquals("", ran.out());
      // of a file, a line for each problem
      assertTrue(
          ran.err().lines().count() == 1
              || ran.err().lines().allMatch(it -> it.contains(", line ")),
          ran.err());
    }
    assertFalse(told.contains("Exception"), told);
    assertFalse(told.contains("\tat "), told);
    if (status == 3 || status == 4) {
      Ran json = Ran.line(line + " --json");
      assertEquals(status, json.status());
      AnswerSchemas.keeps(Ran.words(line).get(0), json.out());
    }
  }
}
