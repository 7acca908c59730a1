package org.ferryglide.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.reflect.Modifier;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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
    StringBuilder body = new StringBuilder();
    for (String line : example("RhumbLeg.between")) {
      if (line.startsWith("import ")) {
        assertTrue(source.contains(line), line);
      } else {
        body.append(line);
      }
    }
    // a line may break elsewhere where it stands deeper
    assertTrue(
        source.replaceAll("\\s", "").contains(body.toString().replaceAll("\\s", "")), source);
  }

  private static List<String> example(String holding) throws IOException {
    return fencedBlocks(readme()).stream()
        .filter(block -> block.stream().anyMatch(line -> line.contains(holding)))
        .findFirst()
        .orElseThrow();
  }

  /** Types of the table, each with the method that is called on it, are there by that name. */
  @Test
  void theTableOfTasksNamesWhatThereIs() throws Exception {
    Map<String, String> types = new HashMap<>();
    for (String module : List.of("nav-core", "nav-tide")) {
      Path root = Path.of("..", module, "src", "main", "java");
      try (Stream<Path> files = Files.walk(root)) {
        files
            .map(file -> root.relativize(file).toString().replace(File.separatorChar, '.'))
            .filter(name -> name.endsWith(".java"))
            .map(name -> name.substring(0, name.length() - ".java".length()))
            .forEach(name -> types.put(name.substring(name.lastIndexOf('.') + 1), name));
      }
    }
    Pattern named = Pattern.compile("(?<![\\w.])([A-Z][a-z]\\w*)(?:\\.([a-z]\\w*)\\()?");
    int found = 0;
    for (String line : readme()) {
      Matcher code = Pattern.compile("`([^`]+)`").matcher(line.startsWith("| ") ? line : "");
      while (code.find()) {
        Matcher type = named.matcher(code.group(1));
        while (type.find()) {
          assertTrue(types.containsKey(type.group(1)), code.group());
          Class<?> there = Class.forName(types.get(type.group(1)));
          String method = type.group(2);
          assertTrue(Modifier.isPublic(there.getModifiers()), type.group());
          assertTrue(
              method == null
                  || Stream.of(there.getMethods()).anyMatch(one -> one.getName().equals(method)),
              type.group());
          found++;
        }
      }
    }
    assertTrue(found > 50, "names in the README's tables: " + found);
  }

  /** A reader of DEVELOPERS.md alone finds each room, and no room that is gone. */
  @Test
  void thePlanOfRoomsNamesEveryPackage() throws IOException {
    List<String> plan = Files.readAllLines(Path.of("..", "DEVELOPERS.md"));
    for (String module : List.of("nav-core", "nav-tide", "nav-examples")) {
      try (Stream<Path> files = Files.walk(Path.of("..", module, "src", "main", "java"))) {
        files
            .filter(file -> file.endsWith("package-info.java"))
            .map(file -> file.getName(file.getNameCount() - 2).toString())
            .filter(room -> !room.equals("examples"))
            .forEach(
                room ->
                    assertTrue(
                        plan.stream().anyMatch(line -> line.startsWith("| `" + room + "` | ")),
                        room));
      }
    }
  }

  /** Imports above a class, the rest in its main method: nothing else is added. */
  @Test
  void theExamplePastedWithItsImportsCompilesAndAnswersWhatTheReadmeSays(@TempDir Path folder)
      throws Exception {
    String answer = printedBy(example("RhumbLeg.between"), folder);
    assertTrue(
        readme().stream().anyMatch(line -> line.startsWith("It prints `" + answer + "`.")), answer);
  }

  @Test
  void thePassageOfTenLinesIsPlannedAsTheReadmeSays(@TempDir Path folder) throws Exception {
    List<String> printed = printedBy(example("Passage.builder"), folder).lines().toList();
    assertTrue(fencedBlocks(readme()).contains(printed), printed::toString);
  }

  /** None is passed over; CONSUMERS.md has whole files, which ConsumersTest compiles. */
  @Test
  void everyExampleOfJavaInAPageForUsersCompilesAsPasted(@TempDir Path folder) throws Exception {
    int compiled = 0;
    for (Path page :
        List.of(
            Path.of("..", "README.md"), Path.of("..", "DEVELOPERS.md"), Path.of("COMMAND.md"))) {
      List<String> block = null;
      for (String line : Files.readAllLines(page)) {
        if (line.equals("```java")) {
          block = new ArrayList<>();
        } else if (line.startsWith("```") && block != null) {
          String messages = JavaSource.messagesOfCompiler(folder, "Pasted", pasted(block));
          assertEquals("", messages, () -> page + " has an example that does not compile");
          block = null;
          compiled++;
        } else if (block != null) {
          block.add(line);
        }
      }
    }
    assertTrue(compiled >= 2, "examples of Java: " + compiled);
  }

  private static String pasted(List<String> example) {
    StringBuilder imports = new StringBuilder();
    StringBuilder body = new StringBuilder();
    for (String line : example) {
      (line.startsWith("import ") ? imports : body).append(line).append('\n');
    }
    return imports
        + "public class Pasted { public static void main(String[] args) {\n"
        + body
        + "}}\n";
  }

  private static String printedBy(List<String> example, Path folder) throws Exception {
    assertEquals("", JavaSource.messagesOfCompiler(folder, "Pasted", pasted(example)));

    PrintStream out = System.out;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    try (URLClassLoader loader =
        new URLClassLoader(new URL[] {folder.toUri().toURL()}, RhumbLeg.class.getClassLoader())) {
      System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
      loader
          .loadClass("Pasted")
          .getMethod("main", String[].class)
          .invoke(null, (Object) new String[0]);
    } finally {
      System.setOut(out);
    }
    return printed.toString(StandardCharsets.UTF_8).trim();
  }
}
