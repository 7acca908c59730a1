package org.ferryglide.examples.teach;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ferryglide.examples.JavaSource;
import org.ferryglide.examples.svg.Svg;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The handbook in the javadoc: its examples are run, its links walked, its drawings drawn again.
 */
class HandbookTest {
  private static final Path ROOT = Path.of("..");
  private static final Path SOURCES = ROOT.resolve("nav-core/src/main/java");
  private static final Path PAGES = SOURCES.resolve("org/ferryglide/nav/teach/doc-files");

  private static final Pattern EXAMPLE =
      Pattern.compile(
          "<pre class=\"example\">\\{@code\n(.*?)\n}</pre>\\s*<p>prints</p>\\s*"
              + "<pre class=\"printed\">\\{@code\n(.*?)\n}</pre>",
          Pattern.DOTALL);
  private static final Pattern LINK = Pattern.compile("(?:href|src)=\"([^\"]+)\"");
  private static final Pattern IMAGE = Pattern.compile("<img src=\"([^\"]+)\" alt=\"([^\"]*)\"");

  /** What the issue of a handbook is about: a page for each. */
  private static final List<String> SUBJECTS =
      List.of(
          "bearings",
          "legs",
          "variation",
          "laying-off",
          "tides",
          "streams",
          "steering",
          "reckoning",
          "landfall",
          "uncertainty",
          "planning");

  private static Map<String, String> pages() throws IOException {
    Map<String, String> pages = new TreeMap<>();
    try (Stream<Path> files = Files.list(PAGES)) {
      for (Path file : files.filter(path -> path.toString().endsWith(".html")).toList()) {
        pages.put(file.getFileName().toString(), Files.readString(file));
      }
    }
    return pages;
  }

  @Test
  void everyPageHasIdeaFormulaDrawingExampleLimitsSourcesAndTheCaution() throws IOException {
    Map<String, String> pages = pages();
    for (String subject : SUBJECTS) {
      String page = pages.get(subject + ".html");
      for (String id : List.of("idea", "formula", "by-hand", "example", "limits", "sources")) {
        // doclint wants every anchor of the folder to be unlike all others
        String anchor = "<h2 id=\"" + subject + "-" + id + "\">";
        assertTrue(page.contains(anchor), () -> id + " of " + subject);
      }
      assertTrue(IMAGE.matcher(page).find(), () -> "drawing of " + subject);
      assertTrue(EXAMPLE.matcher(page).find(), () -> "example of " + subject);
      assertTrue(page.contains("coastguard come first"), () -> "caution of " + subject);
    }
    assertEquals(SUBJECTS.size() + 1, pages.size());
  }

  @Test
  void everyExamplePrintsWhatThePageSaysItDoes(@TempDir Path folder) throws Exception {
    List<String> names = new ArrayList<>();
    List<String> printed = new ArrayList<>();
    StringBuilder methods = new StringBuilder();
    for (Map.Entry<String, String> page : pages().entrySet()) {
      Matcher example = EXAMPLE.matcher(page.getValue());
      while (example.find()) {
        methods.append("static void example").append(names.size());
        methods.append("(PrintStream page) throws Exception {\n");
        methods.append(example.group(1).replace("System.out", "page")).append("\n}\n");
        names.add(page.getKey() + " " + names.size());
        printed.add(example.group(2));
      }
    }
    assertTrue(names.size() >= SUBJECTS.size());
    String source = imports() + "class Examples {\n" + methods + "}\n";
    assertEquals("", JavaSource.messagesOfCompiler(folder, "Examples", source));
    URL[] compiled = {folder.toUri().toURL()};
    try (URLClassLoader loader = new URLClassLoader(compiled, getClass().getClassLoader())) {
      Class<?> examples = loader.loadClass("Examples");
      for (int i = 0; i < names.size(); i++) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        var method = examples.getDeclaredMethod("example" + i, PrintStream.class);
        method.setAccessible(true);
        method.invoke(null, new PrintStream(out, true, StandardCharsets.UTF_8));
        String actual = out.toString(StandardCharsets.UTF_8).stripTrailing();
        assertEquals(printed.get(i), actual.replace("\r", ""), names.get(i));
      }
    }
  }

  /** Every public package of both modules, since the pages leave their imports out. */
  private static String imports() throws IOException {
    Set<String> packages = new TreeSet<>();
    for (String module : List.of("nav-core", "nav-tide")) {
      String exported = Files.readString(ROOT.resolve(module + "/src/main/java/module-info.java"));
      Matcher name = Pattern.compile("exports ([\\w.]+);").matcher(exported);
      while (name.find()) {
        packages.add(name.group(1));
      }
    }
    String java = "import java.io.*;import java.time.*;import java.time.temporal.*;";
    return packages.stream()
        .map(name -> "import " + name + ".*;\n")
        .collect(Collectors.joining("", java + "import java.util.*;\n", ""));
  }

  @Test
  void everyLinkLeadsSomewhere() throws IOException {
    Map<String, String> pages = pages();
    for (Map.Entry<String, String> page : pages.entrySet()) {
      Matcher link = LINK.matcher(page.getValue());
      while (link.find()) {
        String[] target = link.group(1).split("#", 2);
        String where = page.getKey() + " to " + link.group(1);
        Path file = PAGES.resolve(target[0].isEmpty() ? page.getKey() : target[0]);
        assertTrue(Files.exists(file), where);
        if (target.length == 2) {
          String there = Files.readString(file);
          assertTrue(there.contains("id=\"" + target[1] + "\""), where);
        }
      }
    }
  }

  @Test
  void everyPageIsTwoClicksFromTheFirstOneAndEachLeadsBack() throws IOException {
    Map<String, String> pages = pages();
    String index = pages.get("handbook.html");
    for (String subject : SUBJECTS) {
      String question = "<li><a href=\"" + subject + ".html#";
      assertTrue(index.contains(question), () -> "a question that leads to " + subject);
      assertTrue(pages.get(subject + ".html").contains("href=\"handbook.html\""), subject);
    }
    String room = Files.readString(PAGES.resolve("../package-info.java"));
    assertTrue(room.contains("href=\"doc-files/handbook.html\""));
    String module = Files.readString(SOURCES.resolve("module-info.java"));
    assertTrue(module.contains("org/ferryglide/nav/teach/doc-files/handbook.html"));
    String overview = Files.readString(ROOT.resolve(".ci/Overview.java"));
    assertTrue(overview.contains("doc-files/handbook.html"));
  }

  /** From the package pages of the rooms into the handbook. */
  @Test
  void everyLinkOfAPackagePageIntoTheHandbookLeadsSomewhere() throws IOException {
    int found = 0;
    try (Stream<Path> files = Files.walk(SOURCES)) {
      for (Path file : files.filter(path -> path.endsWith("package-info.java")).toList()) {
        Matcher link = Pattern.compile("href=\"([^\":]+)\"").matcher(Files.readString(file));
        while (link.find()) {
          Path target = file.getParent().resolve(link.group(1));
          assertTrue(Files.exists(target), () -> file + " to " + link.group(1));
          found++;
        }
      }
    }
    assertTrue(found >= SUBJECTS.size(), found + " links");
  }

  @Test
  void everyDrawingIsWhatTheLibraryDrawsAndIsShownWithWords() throws IOException {
    Map<String, Svg> drawings = HandbookDrawings.all();
    Set<String> shown = new TreeSet<>();
    for (String page : pages().values()) {
      Matcher image = IMAGE.matcher(page);
      while (image.find()) {
        shown.add(image.group(1));
        assertTrue(image.group(2).length() > 40, () -> "words for " + image.group(1));
      }
    }
    for (Map.Entry<String, Svg> drawing : drawings.entrySet()) {
      Path file = ROOT.resolve(drawing.getKey());
      assertTrue(shown.contains(file.getFileName().toString()), () -> drawing.getKey());
      assertEquals(drawing.getValue().file(), Files.readString(file), drawing.getKey());
    }
    assertEquals(drawings.size(), shown.size());
  }
}
