package org.ferryglide.examples.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.PrintStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.chrono.Chronology;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * The verbs in programs of their own, started where people write other letters, figures and
 * calendars and keep other clocks: they answer the same to the byte.
 */
class VerbsElsewhereTest {
  private static final String SCENARIO = "scenarios/ollen-skerries";
  private static final String TIDES = SCENARIO + "/tides/dunlathe.csv";

  private static final List<String> LINES =
      List.of(
          "--help",
          "leg 46-10.0N,26-20.0W 46-11.8N,26-17.6W --date 2026-06-14 --speed 3.5 --working",
          "leg 46-10.0N,26-20.0W 46-11.8N,26-17.6W --json",
          "bearing 047 --from true --to compass --variation 7W --deviation 3E",
          "variation 46-11.8N,26-17.6W 2026-06-14 --json",
          "grid 46-11.8N,26-17.6W",
          "height " + TIDES + " --at 2026-06-14T14:17+01:00 --working",
          "windows " + TIDES + " --drying 1.2 --depth 0.5 --from 2026-06-14T06:00+01:00 --days 1",
          "stream " + SCENARIO + " 46.2,-26.25 --from 2026-06-14T12:00+01:00 --hours 3",
          "steer 46N,26W 46.1N,26W --speed 3 --set 090 --rate 1.5 --working",
          "fix scenarios/fix-in-fog.csv --variation 7.8W",
          "daylight 46-11.8N,26-17.6W 2026-06-14 --zone Europe/Dublin",
          "check " + SCENARIO,
          "passage " + SCENARIO,
          "passage " + SCENARIO + " --json --depart 2026-06-14T16:00+01:00",
          "mark scenarios/answers.csv --seed 7 --count 6",
          "batch rhumb-inverse batch/legs.csv --threads 1",
          "leg 91N,0E 0N,0E");

  @TempDir private static Path temporary;

  private static String athome = "";

  /** Runs every line in this program, whatever its locale and zone, and prints all that it says. */
  static final class Lines {
    private Lines() {}

    public static void main(String[] args) {
      PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
      // so that a test that asks for another place proves that it got there
      out.println(
          Locale.getDefault().toLanguageTag()
              + " "
              + Chronology.ofLocale(Locale.getDefault())
              + " "
              + TimeZone.getDefault().getID());
      System.setIn(new ByteArrayInputStream(new byte[0]));
      for (String line : LINES) {
        Ran ran = Ran.line(line);
        String counted = ran.err().replaceAll("[0-9]+ rows a second", "rows a second");
        out.print("$ " + line + "\n" + ran.out() + counted + "(" + ran.status() + ")\n");
      }
    }
  }

  /** Of whatever runs the tests: a build or a launcher with a loader of its own. */
  private static String classPath() {
    List<String> parts = new ArrayList<>();
    for (String property : List.of("surefire.test.class.path", "java.class.path")) {
      parts.add(System.getProperty(property, ""));
    }
    if (Lines.class.getClassLoader() instanceof URLClassLoader loader) {
      Arrays.stream(loader.getURLs()).map(URL::getPath).forEach(parts::add);
    }
    return String.join(File.pathSeparator, parts);
  }

  private static String run(String... options) throws Exception {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xshare:auto"));
    command.addAll(List.of(options));
    command.addAll(List.of("-cp", classPath(), Lines.class.getName()));
    File out = temporary.resolve("out" + String.join("", options).hashCode()).toFile();
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(out).start();
    assertTrue(process.waitFor(120, TimeUnit.SECONDS), "it did not end");
    String said = new String(Files.readAllBytes(out.toPath()), StandardCharsets.UTF_8);
    assertEquals(0, process.exitValue(), said);
    return said;
  }

  private static String place(String said) {
    return said.substring(0, said.indexOf('\n'));
  }

  private static String answers(String said) {
    return said.substring(said.indexOf('\n') + 1);
  }

  @BeforeAll
  static void atHome() throws Exception {
    athome = answers(run("-Duser.language=en", "-Duser.country=IE", "-Duser.timezone=UTC"));
    assertTrue(athome.contains("061° magnetic"), athome);
  }

  @TestFactory
  Stream<DynamicTest> whereverTheProgramRunsItAnswersTheSame() {
    return Stream.of(
            new String[] {"tr", "TR", "", "Europe/Istanbul", "tr-TR ISO Europe/Istanbul"},
            new String[] {"ar", "EG", "nu-arab", "Africa/Cairo", "ar-EG-u-nu-arab"},
            new String[] {"de", "DE", "", "Pacific/Chatham", "de-DE ISO Pacific/Chatham"},
            new String[] {"th", "TH", "ca-buddhist-nu-thai", "Asia/Bangkok", "ThaiBuddhist"})
        .map(
            it ->
                DynamicTest.dynamicTest(
                    it[0] + "-" + it[1] + " " + it[2] + " " + it[3],
                    () -> {
                      String said =
                          run(
                              "-Duser.language=" + it[0],
                              "-Duser.country=" + it[1],
                              "-Duser.extensions=" + (it[2].isEmpty() ? "" : "u-" + it[2]),
                              "-Duser.timezone=" + it[3]);
                      assertTrue(place(said).contains(it[4]), place(said));
                      assertEquals(athome, answers(said));
                    }));
  }
}
