package org.ferryglide.examples.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

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
    AnswerSchemas.keeps(Ran.words(here).get(0), json.out());
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

  /** Answers of other shapes than those of the examples, each after its exit status. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "0 leg 0N,0E 1N,1E --geodesic --date 2026-06-14 --speed 3",
        "0 leg 0N,0E 1N,1E",
        "0 bearing 360 --from true --to true",
        "0 bearing 112 --from grid --to compass --deviation 2.4E --at 46N,26W --date 2026-06-14",
        "0 variation 46N,26W 1950-01-01",
        "0 variation 88N,164E 2026-06-14",
        "0 grid --of irish 53.5,-6.5",
        "4 height scenarios/ollen-skerries/tides/dunlathe.csv --at 2027-06-14T14:17+01:00",
        "3 windows scenarios/ollen-skerries/tides/dunlathe.csv --sounding 8 --depth 20",
        "4 windows scenarios/ollen-skerries/tides/dunlathe.csv --drying 1 --depth 1 --from"
            + " 2027-01-01T00:00Z --days 1",
        "4 stream scenarios/ollen-skerries 50N,26W --from 2026-06-14T06:00+01:00 --slack 1",
        "0 stream scenarios/ollen-skerries 46.2,-26.25 --from 2026-06-14T06:00+01:00 --every 20",
        "2 steer 46N,26W 46.1N,26W --speed 3",
        "3 steer 46N,26W 46.1N,26W --speed 1 --set 090 --rate 2",
        "4 steer 46N,26W 46.1N,26W --speed 3 --streams scenarios/ollen-skerries --depart"
            + " 2027-01-01T00:00Z",
        "0 daylight 89N,0E 2026-06-14",
        "0 daylight 89N,0E 2026-12-14",
        "0 passage scenarios/ollen-skerries --what-if",
        "4 passage scenarios/ollen-skerries --depart 2027-06-14T11:40+01:00",
        "5 passage scenarios/ollen-skerries --depart 2026-06-14T23:00+01:00",
        "5 check scenarios/ollen-skerries --depart 2026-06-14T23:00+01:00",
        "4 departures scenarios/ollen-skerries --from 2027-01-01",
        "0 quickest scenarios/ollen-skerries --ways 1 --step 60",
        "4 quickest scenarios/ollen-skerries --depart 2027-06-14T11:40+01:00",
        "2 quickest scenarios/ollen-skerries --leg 9",
        "2 check scenarios/nowhere",
        "2 check scenarios",
        "2 mark scenarios/answers.csv --seed 8",
        "0 batch rhumb-inverse batch/legs.csv --out target/laid-off.csv"
      })
  void everyAnswerKeepsToItsSchema(String statusAndLine) {
    String line = statusAndLine.substring(2);
    Ran ran = Ran.line(line + " --json");
    assertEquals(Integer.parseInt(statusAndLine.substring(0, 1)), ran.status(), ran.err());
    if (ran.out().isEmpty()) {
      assertEquals(Status.REFUSED.code(), ran.status());
    } else {
      AnswerSchemas.keeps(Ran.words(line).get(0), ran.out());
    }
  }

  @Test
  void aSchemaRefusesWhatIsNoAnswer() {
    assertThrows(AssertionError.class, () -> AnswerSchemas.keeps("leg", "{}"));
    assertThrows(
        AssertionError.class,
        () -> AnswerSchemas.keeps("fix", "{\"possible\": true, \"notes\": []}"));
    String grid = Ran.of("grid", "46N,26W", "--json").out();
    assertThrows(
        AssertionError.class, () -> AnswerSchemas.keeps("grid", grid.replace("scale", "factor")));
  }
}
