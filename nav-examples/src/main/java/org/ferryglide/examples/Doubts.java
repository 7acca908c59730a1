package org.ferryglide.examples;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Severity;

/** The notes of a passage sorted for its reader: worst first, each once, with the legs it is of. */
final class Doubts {
  private final Map<String, Doubt> doubts = new LinkedHashMap<>();
  private final Page page;

  private Doubts(Page page) {
    this.page = page;
  }

  /** A note and the numbers of the legs that have it. */
  private record Doubt(Note note, SortedSet<Integer> legs) {
    String line(Page page) {
      if (legs.isEmpty() || note.data().containsKey("leg")) {
        return page.words(note);
      }
      return page.say(
          legs.size() == 1 ? "text.note-of-leg" : "text.note-of-legs",
          "note",
          page.words(note),
          "legs",
          legs.stream().map(String::valueOf).collect(Collectors.joining(", ")));
    }
  }

  static Doubts of(LaidOffPassage passage, List<Note> more, Page page) {
    Doubts doubts = new Doubts(page);
    passage.folder().notes().stream()
        .filter(note -> !note.data().containsKey("leg"))
        .forEach(note -> doubts.add(note, 0));
    for (LaidOffLeg leg : passage.legs()) {
      leg.notes().forEach(note -> doubts.add(note, leg.number()));
    }
    more.forEach(note -> doubts.add(note, 0));
    return doubts;
  }

  private void add(Note note, int leg) {
    // a rose or a model is one for all legs, though its figures differ a little from leg to leg
    boolean ofAllLegs = note.code().startsWith("rose.") || note.code().startsWith("magnetic.");
    Doubt doubt =
        doubts.computeIfAbsent(
            ofAllLegs ? note.code() : note.code() + note.text(),
            key -> new Doubt(note, new TreeSet<>()));
    if (leg > 0) {
      doubt.legs().add(leg);
    }
  }

  /** What must be looked at before any figure is used. */
  List<String> atTheTop() {
    return lines(note -> note.severity() != Severity.INFORMATION);
  }

  /** How the figures were made. */
  List<String> atTheEnd() {
    return lines(note -> note.severity() == Severity.INFORMATION);
  }

  private List<String> lines(Predicate<Note> wanted) {
    List<Doubt> sorted = new ArrayList<>(doubts.values());
    sorted.sort(Comparator.comparing((Doubt doubt) -> doubt.note().severity()).reversed());
    return sorted.stream()
        .filter(doubt -> wanted.test(doubt.note()))
        .map(doubt -> doubt.line(page))
        .toList();
  }
}
