package org.ferryglide.examples.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** A hundred folders, each broken in one place, with the refusal's first line and exit status 2. */
class BrokenFoldersTest {
  private static final Path EXAMPLE = Path.of("scenarios/ollen-skerries");
  private static final Path CASES =
      Path.of("src/test/resources/org/ferryglide/examples/command/broken-folders.txt");

  @TempDir private static Path temporary;

  private static final Map<String, String> SOUND = new TreeMap<>();

  @BeforeAll
  static void readTheExample() throws IOException {
    try (Stream<Path> files = Files.walk(EXAMPLE)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String name = EXAMPLE.relativize(file).toString().replace('\\', '/');
        SOUND.put(name, Files.readString(file).replace("\r\n", "\n"));
      }
    }
  }

  private static List<String> cases() throws IOException {
    return Files.readAllLines(CASES).stream().filter(it -> !it.startsWith("#")).toList();
  }

  @Test
  void thereAreAHundredOfThem() throws IOException {
    assertTrue(cases().size() >= 100, "only " + cases().size());
  }

  @TestFactory
  Stream<DynamicTest> eachIsRefusedWithFileLineAndColumn() throws IOException {
    return cases().stream()
        .map(
            line -> {
              String[] parts = line.split(" \\| ", 4);
              return DynamicTest.dynamicTest(
                  parts[0] + ": " + parts[1] + " -> " + parts[2], () -> isRefused(parts));
            });
  }

  private static void isRefused(String[] parts) throws IOException {
    Path folder = Files.createTempDirectory(temporary, "broken");
    Files.createDirectory(folder.resolve("tides"));
    for (Map.Entry<String, String> file : SOUND.entrySet()) {
      Files.writeString(folder.resolve(file.getKey()), file.getValue());
    }
    String sound = SOUND.get(parts[0]);
    assertTrue(sound.contains(parts[1]), "the example no longer holds " + parts[1]);
    String broken =
        sound.replaceFirst(
            Pattern.quote(parts[1]), Matcher.quoteReplacement(parts[2].replace("\\n", "\n")));
    Files.writeString(folder.resolve(parts[0]), broken);

    Ran ran = Ran.of("check", folder.toString());
    assertEquals(2, ran.status(), ran.out());
    assertEquals("", ran.out());
    String first = ran.err().lines().findFirst().orElse("");
    assertEquals(
        parts[3], first.replace(folder + folder.getFileSystem().getSeparator(), "").strip());
  }
}
