package org.ferryglide.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every example in the javadoc of what both modules export compiles, given what it takes as known.
 */
class JavadocExamplesTest {
  private static final Pattern EXAMPLE =
      Pattern.compile("<pre>\\{@code\\n(.*?)\\n *\\* *}</pre>", Pattern.DOTALL);

  /** Fewer examples than this, and they were not found: there are some 340. */
  private static final int MANY = 300;

  /** What an example may take as known, and where. */
  private record Known(String where, String type, String name) {
    boolean holdsIn(Example example) {
      return where.equals("*") || where.equals(example.room()) || where.equals(example.type());
    }
  }

  /**
   * One example.
   *
   * @param folder the package's folder below the module's sources
   * @param type the type it explains, or its room and {@code package-info}
   */
  private record Example(Path folder, String type, String body) {
    String room() {
      return folder.getFileName().toString();
    }

    String packageName() {
      return folder.toString().replace(java.io.File.separatorChar, '.');
    }
  }

  @Test
  void everyExampleCompiles(@TempDir Path folder) throws IOException {
    List<Known> known = known();
    List<Example> examples = examples();
    assertTrue(examples.size() > MANY, examples.size() + " examples found");
    Set<String> rooms = new TreeSet<>();
    Map<String, List<Example>> byRoom = new LinkedHashMap<>();
    for (Example example : examples) {
      rooms.add(example.packageName());
      byRoom.computeIfAbsent(example.packageName(), name -> new ArrayList<>()).add(example);
    }
    StringBuilder messages = new StringBuilder();
    for (Map.Entry<String, List<Example>> room : byRoom.entrySet()) {
      StringBuilder source = new StringBuilder("package " + room.getKey() + ";\n");
      rooms.forEach(other -> source.append("import ").append(other).append(".*;\n"));
      source.append("import java.io.*;\nimport java.nio.file.*;\nimport java.time.*;\n");
      source.append("import java.util.*;\nclass Examples {\n");
      for (int i = 0; i < room.getValue().size(); i++) {
        Example example = room.getValue().get(i);
        source
            .append("static void example" + i + "(" + parameters(example, known) + ")")
            .append(" throws Exception { // of " + example.type() + "\n")
            .append(example.body())
            .append("\n}\n");
      }
      source.append("}\n");
      messages.append(JavaSource.messagesOfCompiler(folder, "Examples", source.toString()));
    }
    assertEquals("", messages.toString());
  }

  private static List<Known> known() throws IOException {
    List<Known> all = new ArrayList<>();
    Path list =
        Path.of("src", "test", "resources", "org", "ferryglide", "examples", "javadoc_known.txt");
    for (String line : Files.readAllLines(list)) {
      if (!line.startsWith("#")) {
        String[] parts = line.split("\\|", -1);
        for (String name : parts[2].split(" ", -1)) {
          all.add(new Known(parts[0], parts[1], name));
        }
      }
    }
    return all;
  }

  private static List<Example> examples() throws IOException {
    List<Example> examples = new ArrayList<>();
    for (String module : List.of("nav-core", "nav-tide")) {
      Path root = Path.of("..", module, "src", "main", "java");
      String exports = Files.readString(root.resolve("module-info.java"));
      List<Path> files;
      try (Stream<Path> all = Files.walk(root)) {
        files =
            all.filter(file -> file.toString().endsWith(".java"))
                .sorted()
                .collect(Collectors.toList());
      }
      for (Path file : files) {
        Path folder = root.relativize(file).getParent();
        String type = file.getFileName().toString().replace(".java", "");
        Matcher example = EXAMPLE.matcher(Files.readString(file));
        while (example.find()) {
          String body = example.group(1).replaceAll("(?m)^ *\\* ?", "");
          if (folder == null || !(body.contains(";") || body.contains("}"))) {
            continue; // the module's page, or a sheet
          }
          boolean page = type.equals("package-info");
          Example found =
              new Example(folder, page ? folder.getFileName() + "/" + type : type, body);
          if (exports.contains("exports " + found.packageName() + ";")) {
            examples.add(found);
          }
        }
      }
    }
    return examples;
  }

  /** What an example names of what is known and does not declare itself; narrow places last. */
  private static String parameters(Example example, List<Known> known) {
    Map<String, String> types = new LinkedHashMap<>();
    known.stream()
        .filter(one -> one.holdsIn(example) && isUsed(one.name(), example.body()))
        .sorted(Comparator.comparing(one -> breadth(one, example)))
        .forEach(one -> types.put(one.name(), one.type()));
    return types.entrySet().stream()
        .map(one -> one.getValue() + " " + one.getKey())
        .collect(Collectors.joining(", "));
  }

  private static int breadth(Known known, Example example) {
    return known.where().equals("*") ? 0 : known.where().equals(example.room()) ? 1 : 2;
  }

  private static boolean isUsed(String name, String body) {
    boolean declared =
        Pattern.compile("[\\w>\\]] " + name + "\\s*[=:]|\\b" + name + " *->").matcher(body).find();
    return !declared && Pattern.compile("(?<![\\w.])" + name + "\\b(?!\\()").matcher(body).find();
  }
}
