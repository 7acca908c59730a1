package org.ferryglide.examples.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Words;
import org.ferryglide.nav.passage.DeckCard;
import org.ferryglide.nav.timing.Verdict;

/**
 * Every word that pages, sheets, cards and notes print of their own, so that a translation is one
 * file: those of {@code labels.properties} and those of {@link DeckCard#english}. Figures stand in
 * the words by their names in braces.
 *
 * <pre>{@code
 * Labels labels = Labels.english();
 * labels.say("leg.left", "distance", "0.1 NM"); // at most 0.1 NM to the left
 * Labels translated = Labels.read(Path.of("words.properties"));
 * }</pre>
 */
public final class Labels {
  private final Words words;

  private Labels(Words words) {
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
      Words own = Words.read(new InputStreamReader(in, StandardCharsets.UTF_8));
      return new Labels(DeckCard.english().with(own));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The words of a translation.
   *
   * @param from keys of {@link #english} and words as {@link java.util.Properties#load(Reader)}
   *     reads them; keys left out stay English
   * @return the labels
   * @throws IOException if it cannot be read
   */
  public static Labels read(Reader from) throws IOException {
    return new Labels(english().words.with(Words.read(from)));
  }

  /**
   * The words of a translation in a file.
   *
   * @param file as {@link #read(Reader)} reads it, UTF-8
   * @return the labels
   * @throws FileSystemException if it cannot be read, is no UTF-8 or holds a malformed escape, with
   *     the file and the reason
   * @throws IOException if reading fails
   */
  public static Labels read(Path file) throws IOException {
    try (Reader from = Files.newBufferedReader(file)) {
      return read(from);
    } catch (CharacterCodingException e) {
      throw refused(file, "must be text in UTF-8, but is not", e);
    } catch (IllegalArgumentException e) {
      throw refused(file, String.valueOf(e.getMessage()), e);
    }
  }

  private static FileSystemException refused(Path file, String reason, Exception cause) {
    FileSystemException refused = new FileSystemException(file.toString(), null, reason);
    refused.initCause(cause);
    return refused;
  }

  /**
   * All of them.
   *
   * @return templates by key
   */
  public Words words() {
    return words;
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
    String[] isolated = figures.clone();
    for (int i = 1; i < isolated.length; i += 2) {
      isolated[i] = isolated(isolated[i]);
    }
    return words.say(key, isolated);
  }

  /**
   * What was not checked: what nobody gave anything for, and what could not be made.
   *
   * @param notGiven what nothing was given for
   * @param verdicts the findings of a plan; none where there is no plan
   * @param saying how a note is told
   * @return one line, also where all that was given was checked
   */
  public String notChecked(
      List<Note> notGiven, List<Verdict> verdicts, Function<Note, String> saying) {
    List<String> open = new ArrayList<>();
    notGiven.forEach(note -> open.add(saying.apply(note)));
    for (Verdict verdict : verdicts) {
      if (verdict.answer() == Verdict.Answer.NOT_CHECKED) {
        open.add(saying.apply(verdict.note()));
      }
    }
    return open.isEmpty()
        ? say("all-checked")
        : say("not-checked", "what", String.join(", ", open));
  }

  /**
   * How a finding was judged.
   *
   * @param verdict the finding
   * @return a word, as {@code WARNING}
   */
  public String answer(Verdict verdict) {
    return say(
        switch (verdict.answer()) {
          case WITHIN -> "answer.within";
          case WARNED -> "answer.warned";
          case STOPPED -> "answer.stopped";
          case NOT_CHECKED -> "answer.not-checked";
        });
  }

  /**
   * A name that runs from right to left between characters that keep it by itself (U+2068, U+2069):
   * without them it would put the figures of a position behind it out of their order.
   */
  static String isolated(String name) {
    return name.chars().anyMatch(Labels::isRightToLeft) ? "\u2068" + name + "\u2069" : name;
  }

  /**
   * The same for a whole line: its stretches from right to left, up to the next figure or letter.
   */
  static String withNamesIsolated(String line) {
    StringBuilder out = new StringBuilder();
    int from = 0;
    for (int i = 0; i < line.length(); i++) {
      if (isRightToLeft(line.charAt(i))) {
        int last = i;
        for (int on = i; on < line.length() && !isLetterOrFigure(line.charAt(on)); on++) {
          last = isRightToLeft(line.charAt(on)) ? on : last;
        }
        out.append(line, from, i).append(isolated(line.substring(i, last + 1)));
        i = last;
        from = last + 1;
      }
    }
    return out.append(line, from, line.length()).toString();
  }

  private static boolean isLetterOrFigure(char letter) {
    return Character.isLetterOrDigit(letter) && !isRightToLeft(letter);
  }

  private static boolean isRightToLeft(int letter) {
    byte direction = Character.getDirectionality(letter);
    return direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
        || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
  }
}
