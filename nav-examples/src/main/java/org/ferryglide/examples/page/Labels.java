package org.ferryglide.examples.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Properties;
import org.ferryglide.nav.note.Note;

/**
 * Every word that pages, sheets and notes print of their own, from one file, so that a translation
 * is one file too. Figures stand in the words by their names in braces.
 *
 * <pre>{@code
 * Labels labels = Labels.english();
 * labels.say("leg.off", "distance", "0.1 NM", "side", "left"); // at most 0.1 NM to the left
 * labels.say(note); // by the note's code, with its own figures
 * }</pre>
 */
public final class Labels {
  private final Map<String, String> words;

  private Labels(Map<String, String> words) {
    this.words = words;
  }

  /**
   * The words that come with the program.
   *
   * @return the labels
   */
  public static Labels english() {
    try (InputStream in = Labels.class.getResourceAsStream("labels.properties")) {
      if (in == null) {
        throw new IllegalStateException("labels.properties is missing beside Labels");
      }
      return read(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The words of another file.
   *
   * @param from keys and words as {@link Properties#load(Reader)} reads them
   * @return the labels
   * @throws IOException if it cannot be read
   */
  public static Labels read(Reader from) throws IOException {
    Properties properties = new Properties();
    properties.load(from);
    Map<String, String> words = new LinkedHashMap<>();
    properties.stringPropertyNames().forEach(key -> words.put(key, properties.getProperty(key)));
    return new Labels(words);
  }

  /**
   * The words of a key.
   *
   * @param key as it stands in the file
   * @param figures names and what stands for them, in turn
   * @return the words with the figures in them
   * @throws IllegalArgumentException if there is no such key, or the words name a figure that was
   *     not given
   */
  public String say(String key, String... figures) {
    String template = words.get(key);
    if (template == null) {
      throw new IllegalArgumentException("no words for " + key);
    }
    Map<String, String> named = new LinkedHashMap<>();
    for (int i = 0; i + 1 < figures.length; i += 2) {
      named.put(figures[i], figures[i + 1]);
    }
    return filled(key, template, named);
  }

  /**
   * A note, by its code.
   *
   * @param note the note
   * @return the words of {@code note.} and its code with its data by name; its own English if the
   *     file has none
   * @throws IllegalArgumentException if the words name a figure that the note does not have
   */
  public String say(Note note) {
    String template = words.get("note." + note.code());
    return template == null ? note.text() : filled(note.code(), template, note.data());
  }

  /**
   * Whether there are words for a key.
   *
   * @param key as it would stand in the file
   * @return true if there are
   */
  public boolean has(String key) {
    return words.containsKey(key);
  }

  /**
   * All of them.
   *
   * @return a copy, words by key
   */
  public Map<String, String> all() {
    return new LinkedHashMap<>(words);
  }

  private static String filled(String key, String template, Map<String, String> named) {
    StringBuilder out = new StringBuilder();
    int from = 0;
    for (int brace = template.indexOf('{'); brace >= 0; brace = template.indexOf('{', from)) {
      int end = template.indexOf('}', brace);
      String name = end < 0 ? "" : template.substring(brace + 1, end);
      String figure = named.get(name);
      if (figure == null) {
        throw new IllegalArgumentException("words for " + key + " name an unknown figure: " + name);
      }
      out.append(template, from, brace).append(figure);
      from = end + 1;
    }
    return out.append(template, from, template.length()).toString();
  }
}
