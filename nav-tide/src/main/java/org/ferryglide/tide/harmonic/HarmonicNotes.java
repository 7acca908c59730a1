package org.ferryglide.tide.harmonic;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.note.Note;

/** What a reader of a predicted height should know. */
final class HarmonicNotes {
  private static final double DAY_SECONDS = 86400.0;

  /** A step smaller than this is not worth a word, metres. */
  private static final double STEP_METRES = 0.005;

  private HarmonicNotes() {}

  static List<Note> of(HarmonicPredictor predictor, double seconds) {
    List<Note> notes = new ArrayList<>(predictor.constants().notes());
    notes.add(
        Note.information(
            "harmonic.tide-only",
            "Predicted from harmonic constants: the tide alone, without wind, air pressure and"
                + " rivers."));
    for (double near : new double[] {seconds - DAY_SECONDS, seconds}) {
      double next = predictor.nextBreakAfter(near);
      if (next - near <= DAY_SECONDS) {
        double step = predictor.value(next) - predictor.value(Math.nextDown(next));
        if (Math.abs(step) >= STEP_METRES) {
          notes.add(
              Note.caution(
                      "harmonic.new-year-step",
                      "Nodal corrections change at New Year, and the predicted height steps there.")
                  .with("stepMetres", Math.round(step * 1000.0) / 1000.0));
        }
      }
    }
    return List.copyOf(notes);
  }
}
