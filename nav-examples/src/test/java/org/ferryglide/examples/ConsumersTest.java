package org.ferryglide.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import javax.xml.parsers.DocumentBuilderFactory;
import net.sf.geographiclib.Geodesic;
import org.apache.commons.math3.util.FastMath;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.tide.height.TideTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shredzone.commons.suncalc.SunTimes;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** The consumer projects in the documentation, compiled and run against what the modules hold. */
class ConsumersTest {
  @TempDir Path folder;

  private static String block(String language, String begin) throws IOException {
    String page = Files.readString(Path.of("CONSUMERS.md")).replace("\r\n", "\n");
    for (String part : page.split("```" + language + "\n")) {
      if (part.startsWith(begin)) {
        return part.substring(0, part.indexOf("```"));
      }
    }
    throw new AssertionError("no block that begins with " + begin);
  }

  private static String origin(Class<?> type) throws URISyntaxException {
    return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI()).toString();
  }

  /** What a consumer of nav-tide gets with it, and nothing of the tests. */
  private static List<String> jars() throws Exception {
    List<String> jars = new ArrayList<>();
    for (Class<?> type :
        List.of(
            RhumbLeg.class,
            TideTable.class,
            Geodesic.class,
            FastMath.class,
            SunTimes.class,
            Class.forName("de.siegmar.fastcsv.reader.CsvReader"))) {
      jars.add(origin(type));
    }
    return jars;
  }

  private void write(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private void compiles(String option, List<String> sources) throws Exception {
    List<String> arguments =
        new ArrayList<>(
            List.of(
                "-encoding",
                "UTF-8",
                "-proc:none",
                "--release",
                "17",
                "-Xlint:all,-classfile,-requires-transitive-automatic,-requires-automatic",
                option,
                String.join(File.pathSeparator, jars()),
                "-d",
                folder.resolve("classes").toString()));
    sources.forEach(it -> arguments.add(folder.resolve(it).toString()));
    ByteArrayOutputStream messages = new ByteArrayOutputStream();
    int status =
        ToolProvider.getSystemJavaCompiler()
            .run(null, messages, messages, arguments.toArray(new String[0]));
    assertEquals(0, status, messages.toString(StandardCharsets.UTF_8));
  }

  @Test
  void theJavaProjectCompilesAndRunsOnTheClassPath() throws Exception {
    write("example/MyPassage.java", block("java", "package example;"));
    compiles("-cp", List.of("example/MyPassage.java"));
    PrintStream out = System.out;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    try (URLClassLoader loader =
        new URLClassLoader(
            new URL[] {folder.resolve("classes").toUri().toURL()},
            ConsumersTest.class.getClassLoader())) {
      System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
      loader
          .loadClass("example.MyPassage")
          .getMethod("main", String[].class)
          .invoke(null, (Object) new String[] {"scenarios/ollen-skerries"});
    } finally {
      System.setOut(out);
    }
    String told = printed.toString(StandardCharsets.UTF_8);
    assertTrue(told.startsWith("arriving 2026-06-14T13:16"), told);
  }

  /** Skipped where the modules are folders of classes without their descriptors. */
  @Test
  void theJavaProjectCompilesOnTheModulePath() throws Exception {
    boolean modules =
        Stream.of(origin(RhumbLeg.class), origin(TideTable.class))
            .allMatch(it -> it.endsWith(".jar") || Files.exists(Path.of(it, "module-info.class")));
    assumeTrue(modules, "no module descriptors here");
    write("example/MyPassage.java", block("java", "package example;"));
    write("module-info.java", block("java", "module example"));
    compiles("--module-path", List.of("module-info.java", "example/MyPassage.java"));
  }

  @Test
  void theBuildFilesNameTheVersionOfTheProject() throws Exception {
    Document consumer =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(block("xml", "<project"))));
    Document own =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(Path.of("..", "pom.xml").toFile());
    String version = own.getElementsByTagName("version").item(0).getTextContent();
    assertEquals(version, consumer.getElementsByTagName("version").item(1).getTextContent());
    assertTrue(block("kotlin", "plugins").contains("org.ferryglide:nav-tide:" + version), version);
  }

  /** Kotlin's compiler is too heavy for every build; what the program names is looked up here. */
  @Test
  void theKotlinProgramNamesWhatThereIs() throws Exception {
    String program = block("kotlin", "package example");
    List<String> imports = program.lines().filter(it -> it.startsWith("import org")).toList();
    assertTrue(imports.size() > 4, program);
    for (String line : imports) {
      Class.forName(line.substring("import ".length()));
    }
  }
}
