package org.ferryglide.tide.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.reading.Judgement;

/** What looks wrong in a sheet, gathered while it is read. */
final class SheetDoubts {
  /** Doubts of one kind that are reported row by row. */
  private static final int MOST = 10;

  private final String source;
  private final List<Note> told = new ArrayList<>();
  private final Map<Judgement, Integer> countOfAKind = new LinkedHashMap<>();

  SheetDoubts(String source) {
    this.source = source;
  }

  /** Adds a doubt about a field; about the whole sheet where the line is 0. */
  void add(Judgement judgement, int line, String heading, Note what) {
    int count = countOfAKind.merge(judgement, 1, Integer::sum);
    if (count <= MOST) {
      told.add(TideJudgements.note(judgement, place(line, heading), what));
    }
  }

  private Note place(int line, String heading) {
    String file = SheetText.printable(source);
    return line == 0
        ? Note.information("doubt.in-file", file).with("file", file)
        : Note.information("doubt.in-field", file + ", line " + line + ", " + heading)
            .with("file", file)
            .with("line", Integer.toString(line))
            .with("heading", heading);
  }

  /** The doubts in the order of finding, and how many more there were of a kind. */
  List<Note> notes() {
    List<Note> all = new ArrayList<>(told);
    countOfAKind.forEach(
        (judgement, count) -> {
          if (count > MOST) {
            String more = Integer.toString(count - MOST);
            all.add(
                TideJudgements.note(
                    judgement,
                    place(0, ""),
                    Note.information("doubt.more", more + " more rows look wrong like these.")
                        .with("more", more)));
          }
        });
    return List.copyOf(all);
  }
}
