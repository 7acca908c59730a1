package org.ferryglide.examples;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Severity;

/** The notes of a passage sorted for its reader: worst first, each once, with the legs it is of. */
final class Doubts {
  private final Map<String, Note> notes = new LinkedHashMap<>();
  private final Map<String, TreeSet<Integer>> legs = new LinkedHashMap<>();

  static Doubts of(LaidOffPassage passage, List<Note> more) {
    Doubts doubts = new Doubts();
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
    String key = ofAllLegs ? note.code() : note.code() + note.text();
    notes.putIfAbsent(key, note);
    TreeSet<Integer> own = legs.computeIfAbsent(key, any -> new TreeSet<>());
    if (leg > 0) {
      own.add(leg);
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

  private List<String> lines(java.util.function.Predicate<Note> wanted) {
    List<String> keys = new ArrayList<>();
    notes.forEach(
        (key, note) -> {
          if (wanted.test(note)) {
            keys.add(key);
          }
        });
    keys.sort(Comparator.comparing((String key) -> notes.get(key).severity()).reversed());
    return keys.stream()
        .map(key -> Page.words(notes.get(key)) + of(legs.get(key), notes.get(key)))
        .toList();
  }

  private static String of(TreeSet<Integer> legs, Note note) {
    if (legs.isEmpty() || note.data().containsKey("leg")) {
      return "";
    }
    StringBuilder text = new StringBuilder(legs.size() == 1 ? " (leg " : " (legs ");
    String gap = "";
    for (int leg : legs) {
      text.append(gap).append(leg);
      gap = ", ";
    }
    return text.append(')').toString();
  }
}
