package org.ferryglide.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every example in the javadoc of the stream room compiles, given what it takes as known. */
class JavadocExamplesTest {
  private static final Path ROOM =
      Path.of("..", "nav-tide", "src", "main", "java", "org", "ferryglide", "tide", "stream");

  private static final Pattern EXAMPLE =
      Pattern.compile("<pre>\\{@code\\n(.*?)\\n *\\* *}</pre>", Pattern.DOTALL);

  /** What examples name without having made it, and what it is. */
  private static final Map<String, String> KNOWN = new LinkedHashMap<>();

  static {
    known("HourlyStream", "stream");
    known("StreamTable", "table");
    known("PilotRemarks", "remarks");
    known("CurrentTable", "reference");
    known("CurrentCurve", "curve");
    known("TideTable", "tides", "tidesAtPortEnnor");
    known("HarmonicConstants", "constants");
    known("List<StreamStation>", "stations");
    known("Shoreline", "coast");
    known("Distance", "reach");
    known("Position", "position", "northWest", "northEast", "southEast", "southWest");
    known("CurrentEvent", "event");
    known("TrueBearing", "set");
    known("Instant", "instant", "slackBefore", "strongest", "slackAfter");
    known("ZoneId", "zone");
    known("List<String>", "card");
    known("Reader", "reader");
    known("double[]", "latitudes", "longitudes", "epochSeconds", "east", "north");
  }

  private static void known(String type, String... names) {
    for (String name : names) {
      KNOWN.put(name, type);
    }
  }

  @Test
  void everyExampleOfTheRoomCompiles(@TempDir Path folder) throws IOException {
    Map<String, String> examples = examples();
    assertTrue(examples.keySet().containsAll(List.of("BetweenHours0", "TideRange0")), "found");
    StringBuilder source = new StringBuilder("package org.ferryglide.tide.stream;\n");
    for (String room : List.of("bearing", "geodesy", "measure", "note", "position", "water")) {
      source.append("import org.ferryglide.nav.").append(room).append(".*;\n");
    }
    for (String room : List.of("harmonic", "height")) {
      source.append("import org.ferryglide.tide.").append(room).append(".*;\n");
    }
    source.append("import java.io.*;\nimport java.time.*;\nimport java.util.*;\n");
    source.append("class Examples {\n");
    examples.forEach(
        (name, body) ->
            source
                .append("static void example")
                .append(name)
                .append('(')
                .append(parameters(body))
                .append(") throws IOException {\n")
                .append(body)
                .append("\n}\n"));
    source.append("}\n");
    assertEquals("", JavaSource.messagesOfCompiler(folder, "Examples", source.toString()));
  }

  private static Map<String, String> examples() throws IOException {
    Map<String, String> examples = new TreeMap<>();
    List<Path> files;
    try (Stream<Path> all = Files.list(ROOM)) {
      files = all.filter(file -> file.toString().endsWith(".java")).collect(Collectors.toList());
    }
    for (Path file : files) {
      String type = file.getFileName().toString().replace(".java", "").replace('-', '_');
      Matcher example = EXAMPLE.matcher(Files.readString(file));
      for (int i = 0; example.find(); i++) {
        String body = example.group(1).replaceAll("(?m)^ *\\* ?", "");
        if (body.contains(";") || body.contains("}")) { // the others are sheets
          examples.put(type + i, body);
        }
      }
    }
    return examples;
  }

  /** What a piece of code names of what is known and does not declare itself. */
  private static String parameters(String body) {
    List<String> parameters = new ArrayList<>();
    KNOWN.forEach(
        (name, type) -> {
          boolean used = Pattern.compile("\\b" + name + "\\b").matcher(body).find();
          boolean declared = Pattern.compile("[\\w>\\]] " + name + "\\s*=").matcher(body).find();
          if (used && !declared) {
            parameters.add(type + " " + name);
          }
        });
    return String.join(", ", parameters);
  }
}
