import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Makes the first page of the javadoc from the README's table of tasks, each type linked, and from
 * the questions of the handbook. Run from the project's root: {@code java .ci/Overview.java
 * overview.html}.
 */
class Overview {
  private static final String FOLDER = "org/ferryglide/nav/teach/doc-files/";
  private static final String HANDBOOK = FOLDER + "handbook.html"; // doc-files/handbook.html

  private static final Pattern CODE = Pattern.compile("`([^`]+)`");
  private static final Pattern TYPE = Pattern.compile("[A-Z]\\w+");

  public static void main(String[] args) throws IOException {
    Map<String, String> types = new TreeMap<>();
    for (String root : List.of("nav-core/src/main/java", "nav-tide/src/main/java")) {
      Path folder = Path.of(root);
      try (Stream<Path> files = Files.walk(folder)) {
        files
            .filter(file -> file.toString().endsWith(".java") && isPublic(file))
            .map(file -> folder.relativize(file).toString().replaceAll("\\.java$", ""))
            .map(file -> file.replace('/', '.').replace('\\', '.'))
            .forEach(name -> types.put(name.substring(name.lastIndexOf('.') + 1), name));
      }
    }
    List<String> readme = Files.readAllLines(Path.of("README.md"));
    String rows =
        readme.stream()
            .dropWhile(line -> !line.startsWith("| you want to"))
            .takeWhile(line -> line.startsWith("|"))
            .skip(2)
            .map(line -> row(line, types))
            .collect(Collectors.joining("\n"));
    if (rows.isEmpty()) {
      throw new IllegalStateException("README.md has no table that begins with '| you want to'");
    }
    String questions =
        Files.readAllLines(Path.of("nav-core/src/main/java", HANDBOOK)).stream()
            .filter(line -> line.matches("<li><a href=.*#.*"))
            .map(line -> line.replace("href=\"", "href=\"{@docRoot}/org.ferryglide.nav/" + FOLDER))
            .collect(Collectors.joining("\n"));
    Files.createDirectories(Path.of(args[0]).toAbsolutePath().getParent());
    Files.writeString(
        Path.of(args[0]),
        """
        <!DOCTYPE html>
        <html lang="en"><head><title>Ferryglide</title></head><body>
        <p>Navigation for sea kayakers. Official charts, tables, forecasts and the advice of the coastguard come first.
        <table class="striped">
        <caption>Where to start</caption>
        <thead><tr><th scope="col">you want to</th><th scope="col">start at</th></tr></thead>
        <tbody>
        %s
        </tbody>
        </table>
        <p><a href="{@docRoot}/org.ferryglide.nav/%s">Handbook</a>. How do I …</p>
        <ul>
        %s
        </ul>
        </body></html>
        """
            .formatted(rows, HANDBOOK, questions));
  }

  private static boolean isPublic(Path file) {
    try {
      return Pattern.compile("(?m)^public ").matcher(Files.readString(file)).find();
    } catch (IOException problem) {
      throw new java.io.UncheckedIOException(problem);
    }
  }

  private static String row(String line, Map<String, String> types) {
    String[] cells = line.split("\\|");
    String start =
        CODE.matcher(cells[2].trim())
            .replaceAll(code -> Matcher.quoteReplacement(linked(code.group(1), types)));
    return "<tr><th scope=\"row\">" + cells[1].trim() + "</th><td>" + start + "</td></tr>";
  }

  private static String linked(String code, Map<String, String> types) {
    Matcher type = TYPE.matcher(code);
    String escaped = code.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    return type.lookingAt() && types.containsKey(type.group())
        ? "{@link " + types.get(type.group()) + " " + escaped + "}"
        : "<code>" + escaped + "</code>";
  }
}
