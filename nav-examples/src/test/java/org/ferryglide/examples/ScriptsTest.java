package org.ferryglide.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.tide.height.TideTable;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * The scripts are short, compile against what the jar holds, and print what they say they print.
 */
class ScriptsTest {
  private static final Path SCRIPTS = Path.of("scripts");
  private static final String PRINTS = "// Prints:";

  @TempDir private static Path classes;

  private static List<Path> scripts() throws IOException {
    try (Stream<Path> files = Files.list(SCRIPTS)) {
      return files.filter(it -> it.toString().endsWith(".java")).sorted().toList();
    }
  }

  @TestFactory
  Stream<DynamicTest> eachPrintsWhatItSays() throws IOException {
    List<Path> scripts = scripts();
    assertEquals(8, scripts.size());
    compile(scripts);
    return scripts.stream()
        .map(it -> DynamicTest.dynamicTest(it.getFileName().toString(), () -> runs(it)));
  }

  private static void compile(List<Path> scripts) {
    String codes =
        Stream.of(RhumbLeg.class, TideTable.class, Shorthand.class)
            .map(type -> type.getProtectionDomain().getCodeSource().getLocation().getPath())
            .collect(Collectors.joining(File.pathSeparator));
    List<String> arguments =
        new ArrayList<>(
            List.of("-encoding", "UTF-8", "-proc:none", "-Xlint:all,-classfile", "-Werror"));
    arguments.addAll(List.of("-cp", codes, "-d", classes.toString()));
    scripts.forEach(it -> arguments.add(it.toString()));
    ByteArrayOutputStream messages = new ByteArrayOutputStream();
    int status =
        ToolProvider.getSystemJavaCompiler()
            .run(null, messages, messages, arguments.toArray(new String[0]));
    assertEquals(0, status, messages.toString(StandardCharsets.UTF_8));
  }

  private static void runs(Path script) throws Exception {
    List<String> lines = Files.readAllLines(script);
    int end = lines.indexOf(PRINTS);
    long code =
        lines.stream()
            .limit(end)
            .filter(it -> !it.isEmpty() && !it.startsWith("//") && !it.startsWith("import "))
            .count();
    assertTrue(code <= 30, "a script is short, but this one has " + code + " lines");
    String name = script.getFileName().toString().replace(".java", "");
    String command =
        lines.stream()
            .skip(1)
            .takeWhile(it -> it.startsWith("//"))
            .map(it -> it.substring(2).replace("\\", "").trim())
            .collect(Collectors.joining(" "));
    String start = "In nav-examples: java -cp target/ferryglide.jar scripts/" + name + ".java";
    assertTrue(command.startsWith(start), command);
    String rest = command.substring(start.length()).trim();
    String[] arguments = rest.isEmpty() ? new String[0] : rest.split(" ");
    String said =
        lines.stream().skip(end + 1L).map(it -> it.substring(5)).collect(Collectors.joining("\n"));
    assertEquals(said, printed(name, arguments));
  }

  private static String printed(String name, String[] arguments) throws Exception {
    PrintStream out = System.out;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    try (URLClassLoader loader =
        new URLClassLoader(
            new URL[] {classes.toUri().toURL()}, ScriptsTest.class.getClassLoader())) {
      System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
      loader.loadClass(name).getMethod("main", String[].class).invoke(null, (Object) arguments);
    } finally {
      System.setOut(out);
    }
    return printed.toString(StandardCharsets.UTF_8).strip().replace("\r\n", "\n");
  }
}
