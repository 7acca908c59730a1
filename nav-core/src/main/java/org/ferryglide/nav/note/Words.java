package org.ferryglide.nav.note;

import java.io.IOException;
import java.io.Reader;
import java.io.Serializable;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What is printed, in the words of one language: templates by key, in which figures stand by name
 * in braces. Notes are looked up by their codes, the key being {@code note.} and the code, so that
 * a translation is one file of templates.
 *
 * <pre>{@code
 * Words words = Words.of(Map.of("off", "at most {distance} to the {side}"));
 * words.say("off", "distance", "0.1 NM", "side", "left"); // at most 0.1 NM to the left
 * words.say(note, (of, name) -> of.data().get(name)); // a note with its own figures
 * }</pre>
 *
 * <p>A name in a note's template stands for a datum of the note; where the note has a part of that
 * name ({@link Note#with(String, Note)}), for that part in the words of its own code.
 */
public final class Words implements Serializable {
  private static final long serialVersionUID = 1L;

  @SuppressWarnings("serial") // a LinkedHashMap
  private final Map<String, String> templates;

  private Words(Map<String, String> templates) {
    this.templates = templates;
  }

  /**
   * Words by key.
   *
   * @param templates keys and templates; copied
   * @return the words
   */
  public static Words of(Map<String, String> templates) {
    return new Words(new LinkedHashMap<>(templates));
  }

  /**
   * The words of a file.
   *
   * @param from keys and templates as {@link Properties#load(Reader)} reads them
   * @return the words
   * @throws IOException if it cannot be read
   * @throws IllegalArgumentException if it holds a malformed escape
   */
  public static Words read(Reader from) throws IOException {
    Properties properties = new Properties();
    properties.load(from);
    Map<String, String> templates = new LinkedHashMap<>();
    for (String key : properties.stringPropertyNames()) {
      templates.put(key, properties.getProperty(key));
    }
    return new Words(templates);
  }

  /**
   * The words of a file in UTF-8.
   *
   * @param file keys and templates as {@link Properties#load(Reader)} reads them
   * @return the words
   * @throws IOException if the file is not there or cannot be read
   * @throws IllegalArgumentException if it holds a malformed escape
   */
  public static Words read(Path file) throws IOException {
    try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      return read(reader);
    }
  }

  /**
   * These words with others in place of those of the same keys.
   *
   * @param others the others
   * @return all of them
   */
  public Words with(Words others) {
    Map<String, String> all = new LinkedHashMap<>(templates);
    all.putAll(others.templates);
    return new Words(all);
  }

  /**
   * All of them.
   *
   * @return templates by key; unmodifiable
   */
  public Map<String, String> templates() {
    return Collections.unmodifiableMap(templates);
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
    String template = templates.get(key);
    if (template == null) {
      throw new IllegalArgumentException("no words for " + key);
    }
    Map<String, String> named = new LinkedHashMap<>();
    for (int i = 0; i + 1 < figures.length; i += 2) {
      named.put(figures[i], figures[i + 1]);
    }
    String said =
        filled(
            template,
            named::get,
            name -> {
              throw new IllegalArgumentException(
                  "words for " + key + " name an unknown figure: " + name);
            });
    return Objects.requireNonNull(said, "words");
  }

  /**
   * A note.
   *
   * @param note the note
   * @param printed how a datum of a note is printed, by its name; null if it has no such datum
   * @return the words of its code; its own English if there are none, or if they name something
   *     that this note does not have
   */
  public String say(Note note, BiFunction<Note, String, String> printed) {
    return say(note, note.code(), note.text(), printed);
  }

  /**
   * A part of a note.
   *
   * @param note the note
   * @param part its name
   * @param printed how a datum of a note is printed, by its name; null if it has no such datum
   * @return the words of the part's code, as for {@link #say(Note, BiFunction)}; the whole note if
   *     it has no such part
   */
  public String sayPart(Note note, String part, BiFunction<Note, String, String> printed) {
    String code = note.data().get(part + "Code");
    return code == null
        ? say(note, printed)
        : say(note, code, Objects.toString(note.data().get(part), ""), printed);
  }

  private String say(
      Note note, String code, String english, BiFunction<Note, String, String> printed) {
    String template = templates.get("note." + code);
    String words =
        template == null
            ? null
            : filled(
                template,
                name ->
                    note.data().containsKey(name + "Code")
                        ? sayPart(note, name, printed)
                        : printed.apply(note, name),
                name -> {});
    return words == null ? english : words;
  }

  /** The template with its figures; null if one is not known, after its name was told. */
  private static @Nullable String filled(
      String template, Function<String, @Nullable String> figures, Consumer<String> unknown) {
    StringBuilder out = new StringBuilder();
    int from = 0;
    for (int brace = template.indexOf('{'); brace >= 0; brace = template.indexOf('{', from)) {
      int end = template.indexOf('}', brace);
      String name = end < 0 ? "" : template.substring(brace + 1, end);
      String figure = figures.apply(name);
      if (figure == null) {
        unknown.accept(name);
        return null;
      }
      out.append(template, from, brace).append(figure);
      from = end + 1;
    }
    return out.append(template, from, template.length()).toString();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Words that && templates.equals(that.templates);
  }

  @Override
  public int hashCode() {
    return templates.hashCode();
  }

  @Override
  public String toString() {
    return templates.size() + " words";
  }
}
