package org.ferryglide.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The README promises two commands and an example; both are held to it. */
class ReadmeTest {
  private static List<String> readme() throws IOException {
    return Files.readAllLines(Path.of("..", "README.md"));
  }

  private static List<List<String>> fencedBlocks(List<String> lines) {
    List<List<String>> blocks = new ArrayList<>();
    List<String> block = null;
    for (String line : lines) {
      if (line.startsWith("```")) {
        if (block == null) {
          block = new ArrayList<>();
        } else {
          blocks.add(block);
          block = null;
        }
      } else if (block != null) {
        block.add(line);
      }
    }
    return blocks;
  }

  @Test
  void thereAreExactlyTwoCommands() throws IOException {
    List<String> lines = readme();
    int start = lines.indexOf("## Two commands");
    int end = start + 1;
    while (!lines.get(end).startsWith("## ")) {
      end++;
    }
    List<List<String>> commands = fencedBlocks(lines.subList(start, end));
    assertEquals(2, commands.size());
    assertEquals("./mvnw verify", commands.get(1).get(0));
    assertTrue(
        Files.readString(Path.of("..", ".ci", "run")).contains("verify"), "CI runs the same");
  }

  @Test
  void theExampleIsTheCompiledOne() throws IOException {
    String source =
        Files.readString(
            Path.of("src", "main", "java", "org", "ferryglide", "examples", "TenLines.java"));
    List<String> java =
        fencedBlocks(readme()).stream()
            .filter(block -> block.stream().anyMatch(line -> line.contains("RhumbLeg")))
            .findFirst()
            .orElseThrow();
    for (String line : java) {
      assertTrue(source.contains(line.trim()), line);
    }
  }

  @Test
  void theExampleAnswersWhatTheReadmeSays() throws IOException {
    assertTrue(
        readme()
            .contains(
                "It answers `"
                    + TenLines.courseToSteer()
                    + "`. The whole program is `TenLines` in nav-examples; the build compiles and runs it."),
        TenLines.courseToSteer());
  }
}
