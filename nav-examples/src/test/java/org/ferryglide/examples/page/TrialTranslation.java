package org.ferryglide.examples.page;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.passage.Danger;
import org.ferryglide.nav.passage.Lane;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.passage.WayPoint;
import org.ferryglide.tide.folder.PassageFolder;

/**
 * A trial translation: every letter of every label is put into another alphabet. Whatever is still
 * in the Roman one, but for names that the user gave, was not in the file of labels.
 */
public final class TrialTranslation {
  private static final Pattern ROMAN = Pattern.compile("[A-Za-z]{2,}");
  private static final Set<String> OF_THE_STANDARDS = Set.of("UTC", "WMM");

  private TrialTranslation() {}

  /**
   * All labels in the other alphabet.
   *
   * @return the labels, read from a file of them
   * @throws IOException if they cannot be read
   */
  public static Labels labels() throws IOException {
    Properties other = new Properties();
    Labels.english()
        .words()
        .templates()
        .forEach((key, words) -> other.setProperty(key, otherLetters(words)));
    StringWriter file = new StringWriter();
    other.store(file, "a trial");
    return Labels.read(new StringReader(file.toString()));
  }

  /**
   * The example with a water too high, a neap rate above its spring rate, a rose and a place
   * misread.
   *
   * @return the folder
   * @throws Exception if it cannot be read
   */
  public static PassageFolder doubtful() throws Exception {
    PassageFolder folder = PassageFolder.read(Path.of("scenarios", "ollen-skerries"));
    for (String[] slip :
        new String[][] {
          {"tides/dunlathe.csv", ",4.4,high", ",9.4,high"},
          {"streams.csv", ",-3,005,2.1,1.0", ",-3,005,2.1,2.4"},
          {"passage.csv", "8°50'W", "8°50'E"},
          {"waypoints.csv", "026°20.0'W", "026°17.62'W"},
          {"waypoints.csv", "46°10.0'N", "46°11.81'N"}
        }) {
      String text = folder.texts().get(slip[0]);
      folder = folder.withFile(slip[0], text.replace(slip[1], slip[2]));
    }
    return folder;
  }

  /** Each letter outside braces is moved into the Cyrillic block. */
  private static String otherLetters(String words) {
    StringBuilder out = new StringBuilder();
    boolean name = false;
    for (int i = 0; i < words.length(); i++) {
      char letter = words.charAt(i);
      name = letter == '{' || (name && letter != '}');
      boolean roman = (letter >= 'a' && letter <= 'z') || (letter >= 'A' && letter <= 'Z');
      out.append(roman && !name ? (char) (letter - 'A' + '\u0410') : letter);
    }
    return out.toString();
  }

  /**
   * Names and words that are the user's own.
   *
   * @param worked the passage
   * @return them, the longest first
   */
  public static List<String> given(WorkedPassage worked) {
    Passage passage = worked.passage();
    List<String> more = new ArrayList<>();
    for (String item : List.of("party", "craft", "carried", "call", "remarks")) {
      worked.shore().words(item).ifPresent(more::add);
    }
    worked.highWater().ifPresent(water -> more.add(water.port()));
    return given(passage, worked.plan().match(TimedPlan::notes, why -> passage.notes()), more);
  }

  /**
   * Names and words that are the user's own.
   *
   * @param passage the passage
   * @param notes what is told of it
   * @param more names beside those of the passage
   * @return them, the longest first
   */
  public static List<String> given(Passage passage, List<Note> notes, List<String> more) {
    List<String> names = new ArrayList<>(more);
    names.add(passage.name());
    List<WayPoint> places = new ArrayList<>(passage.wayPoints());
    places.addAll(passage.refuges());
    places.forEach(place -> names.addAll(List.of(place.name(), place.toSee())));
    passage.dangers().orElse(List.of()).stream().map(Danger::name).forEach(names::add);
    passage.lanes().orElse(List.of()).stream().map(Lane::name).forEach(names::add);
    passage.levels().forEach((port, level) -> names.addAll(List.of(port, level.datum())));
    notes.stream()
        .flatMap(note -> Stream.of("station", "file", "heading").map(note.data()::get))
        .filter(Objects::nonNull)
        .forEach(names::add);
    names.removeIf(String::isEmpty);
    names.sort(Comparator.comparingInt(String::length).reversed());
    return names;
  }

  /**
   * What stayed English of a text.
   *
   * @param given names and words that are the user's own
   * @param text the text
   * @return its words in Roman letters, with what stands around them
   */
  public static Set<String> roman(List<String> given, String text) {
    String left = text.replaceAll("\\s+", " "); // a card wraps names
    for (String name : given) {
      left = left.replace(name, "·");
      if (name.length() > 30 && name.matches("[A-Za-z0-9]+")) { // broken where it has no blank
        left = left.replaceAll(String.join(" ?", name.split("")), "·");
      }
      for (int kept = name.length() - 1; kept > 1; kept--) { // and cuts them where it must
        left = left.replace(name.substring(0, kept) + "…", "·");
      }
    }
    Set<String> found = new TreeSet<>();
    Matcher matcher = ROMAN.matcher(left);
    while (matcher.find()) {
      if (!OF_THE_STANDARDS.contains(matcher.group())) {
        int from = Math.max(0, matcher.start() - 40);
        found.add(left.substring(from, Math.min(left.length(), matcher.end() + 40)).strip());
      }
    }
    return found;
  }
}
