package org.ferryglide.examples.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * The session in the documentation, replayed; a line of three dots stands for what is not shown.
 */
class SessionTest {
  private static final Path PAGE = Path.of("COMMAND.md");
  private static final Path README = Path.of("..", "README.md");
  private static final String PROMPT = "$ ferryglide ";
  private static final Pattern STATUS = Pattern.compile("\\(exit status (\\d)\\)\n$");

  @TempDir private static Path temporary;

  /** A command and what the page says it answers. */
  private record Step(String command, String said) {}

  private static List<Step> steps(Path file) throws IOException {
    String page = Files.readString(file).replace("\r\n", "\n");
    int fence = page.indexOf("```console\n");
    assertTrue(fence >= 0, file + " has no session");
    int begin = fence + "```console\n".length();
    String session = page.substring(begin, page.indexOf("```", begin));
    List<Step> steps = new ArrayList<>();
    for (String part : session.split("(?m)^\\" + PROMPT)) {
      if (!part.isEmpty()) {
        int end = part.indexOf('\n');
        steps.add(new Step(part.substring(0, end), part.substring(end + 1)));
      }
    }
    return steps;
  }

  @TestFactory
  Stream<DynamicTest> eachStepAnswersWhatThePageSays() throws IOException {
    List<Step> steps = new ArrayList<>(steps(PAGE));
    assertTrue(steps.size() >= 8, "only " + steps.size());
    List<Step> more = steps(README);
    assertTrue(more.size() >= 2, "only " + more.size());
    steps.addAll(more);
    return steps.stream().map(it -> DynamicTest.dynamicTest(it.command(), () -> replay(it)));
  }

  private static void replay(Step step) {
    String own = temporary.resolve("my-passage").toString();
    Ran ran = Ran.line(step.command().replace("nav-examples/", "").replace("my-passage", own));
    Matcher matcher = STATUS.matcher(step.said());
    boolean hasStatus = matcher.find();
    String all = hasStatus ? step.said().substring(0, matcher.start()) : step.said();
    String said = all.replace("nav-examples/", ""); // the tests run in the module's folder
    String answered = (ran.out() + ran.err()).replace(own, "my-passage").replace("\r\n", "\n");
    assertEquals(hasStatus ? Integer.parseInt(matcher.group(1)) : 0, ran.status(), answered);
    if (said.endsWith("\n...\n")) {
      String shown = said.substring(0, said.length() - "...\n".length());
      assertEquals(shown, answered.substring(0, Math.min(shown.length(), answered.length())));
    } else {
      assertEquals(said, answered);
    }
  }

  @Test
  void everyVerbStandsOnThePage() throws IOException {
    String page = Files.readString(PAGE);
    for (String name : Verbs.NAMES) {
      assertTrue(page.contains("| `" + name), name);
    }
  }
}
