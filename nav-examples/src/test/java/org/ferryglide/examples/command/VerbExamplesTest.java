package org.ferryglide.examples.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import picocli.CommandLine;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;

/** Every verb's help holds an example, and the example does what it says. */
class VerbExamplesTest {

  @TestFactory
  Stream<DynamicTest> everyVerbHelps() {
    return Verbs.NAMES.stream()
        .map(
            name ->
                DynamicTest.dynamicTest(
                    name,
                    () -> {
                      Ran ran = Ran.of(name, "--help");
                      assertEquals(0, ran.status());
                      assertTrue(ran.out().startsWith("Usage: ferryglide " + name), ran.out());
                      assertTrue(ran.out().contains("Example"), ran.out());
                      assertEquals("", ran.err());
                    }));
  }

  @TestFactory
  Stream<DynamicTest> everyExampleRuns() {
    return Verbs.NAMES.stream()
        .flatMap(name -> examples(name).stream())
        .map(line -> DynamicTest.dynamicTest(line, () -> runs(line)));
  }

  private static List<String> examples(String name) {
    String[] footer = new CommandLine(Verbs.named(name)).getCommandSpec().usageMessage().footer();
    List<String> lines =
        Arrays.stream(footer).map(String::trim).filter(it -> it.startsWith("ferryglide ")).toList();
    assertFalse(lines.isEmpty(), name + " has no example");
    return lines;
  }

  private static void runs(String line) throws IOException {
    // the tests run in the module's folder, people in the project's
    String here = line.substring("ferryglide ".length()).replace("nav-examples/", "");
    forget(Path.of("target", "my-passage"));
    forget(Path.of("target", "laid-off.csv"));
    Ran text = Ran.line(here);
    assertEquals(0, text.status(), text.err());
    if (!here.startsWith("batch ")) { // which counts its rows on the error stream
      assertEquals("", text.err());
      assertFalse(text.out().isEmpty());
    }

    forget(Path.of("target", "my-passage"));
    forget(Path.of("target", "laid-off.csv"));
    Ran json = Ran.line(here + " --json");
    assertEquals(0, json.status(), json.err());
    if (!here.startsWith("batch ")) {
      isOneJsonObject(json.out());
    }
  }

  private static void forget(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (Stream<Path> within = Files.walk(folder)) {
        for (Path path : within.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(path);
        }
      }
    }
  }

  private static void isOneJsonObject(String text) {
    try (var parser = new JsonFactory().createParser(ObjectReadContext.empty(), text)) {
      assertEquals(JsonToken.START_OBJECT, parser.nextToken());
      parser.skipChildren();
      assertEquals(null, parser.nextToken());
    }
  }
}
