package org.ferryglide.examples.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The script of completions, asked by a bash where there is one. */
class CompletionTest {
  @TempDir Path folder;

  private List<String> completed(String... words) throws Exception {
    Path script = folder.resolve("completion.sh");
    Files.writeString(script, Ran.of("completion").out());
    StringBuilder asked = new StringBuilder("source '" + script + "'; COMP_WORDS=(ferryglide");
    for (String word : words) {
      asked.append(" '").append(word).append('\'');
    }
    asked
        .append("); COMP_CWORD=")
        .append(words.length)
        .append(
            "; COMP_LINE=; COMP_POINT=0; _complete_ferryglide; printf '%s\\n' \"${COMPREPLY[@]}\"");
    Process bash =
        new ProcessBuilder("bash", "--norc", "-c", asked.toString())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    bash.getOutputStream().close();
    String out = new String(bash.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, bash.waitFor(), out);
    return out.lines().map(String::trim).toList();
  }

  private static boolean hasBash() {
    try {
      return new ProcessBuilder("bash", "-c", "complete -p; true").start().waitFor() == 0;
    } catch (IOException | InterruptedException e) {
      return false;
    }
  }

  @Test
  void verbsAndTheirOptionsAreCompleted() throws Exception {
    assumeTrue(hasBash(), "no bash here");
    assertEquals(List.of("departures"), completed("dep"));
    List<String> options = completed("stream", "--e");
    assertTrue(options.contains("--every"), options.toString());
  }
}
