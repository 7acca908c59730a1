package org.ferryglide.nav.fix;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.ferryglide.nav.note.Note;

/**
 * What a reader of a fix should be told.
 *
 * @param poorCutDegrees a cut of less is poor
 * @param otherWorseBy by how much the squares of the next best place are greater
 */
record FixJudge(double poorCutDegrees, double otherWorseBy) {

  /** Lines that disagree so much are met in one honest fix of a hundred. */
  private static final double DISAGREEMENT = 0.01;

  /** Squares that are no more than this worse are nearly as good: odds of one to seven. */
  private static final double NEARLY_AS_GOOD = 4.0;

  /** A shared error of less than this many of its standard deviations is chance. */
  private static final double CHANCE = 3.0;

  List<Note> notes(LeastSquares squares, double cut, double agreement, double[][] rows) {
    List<Note> notes = new ArrayList<>();
    LineEquation[] equations = squares.equations();
    if (equations.length > 1 && cut < poorCutDegrees) {
      notes.add(
          Note.caution(
                  "fix.poor-cut",
                  "The position lines cross at a small angle, so that a small error of a bearing"
                      + " makes a large one of the position; the ellipse is too small, the region"
                      + " holds.")
              .with("cutDegrees", cut));
    }
    if (agreement < DISAGREEMENT) {
      disagreement(squares, agreement, rows, notes);
    }
    if (equations.length >= 3 && marksInHalfCircle(equations)) {
      notes.add(
          Note.information(
              "fix.half-circle",
              "All marks lie within half the horizon; an error shared by all bearings would put the"
                  + " true position outside the cocked hat."));
    }
    if (otherWorseBy < NEARLY_AS_GOOD) {
      notes.add(
          Note.caution(
              "fix.two-places",
              "The lines agree nearly as well in another place, which may be the true one."));
    }
    double[] scratch = new double[6];
    for (LineEquation equation : equations) {
      if (equation.seenFromBehind(squares.lat(), squares.lon(), scratch)) {
        notes.add(
            Note.caution(
                "fix.transit-behind",
                "A transit is seen from beyond its rear mark, where the rear one stands in"
                    + " front."));
      }
    }
    return notes;
  }

  private static void disagreement(
      LeastSquares squares, double agreement, double[][] rows, List<Note> notes) {
    OptionalDouble shared = SharedError.significant(squares.equations(), rows, CHANCE);
    if (shared.isPresent()) {
      notes.add(
          Note.warning(
                  "fix.shared-error",
                  "All bearings seem to be off to the same side by the same amount; was the"
                      + " variation, or the deviation, applied, and the right way round?")
              .with("degrees", shared.getAsDouble()));
    }
    notes.add(
        Note.warning(
                "fix.disagreement",
                "The position lines disagree by more than their stated uncertainty explains; look"
                    + " for a wrong variation, a mark misidentified or a bearing misread.")
            .with("agreement", agreement));
  }

  /** Whether all lines are bearings and their marks leave half the horizon empty. */
  private static boolean marksInHalfCircle(LineEquation[] equations) {
    double[] azimuths = new double[equations.length];
    double[] point = new double[3];
    double[] scratch = new double[6];
    for (int i = 0; i < azimuths.length; i++) {
      if (Double.isNaN(equations[i].bearingSigmaDegrees())
          || !equations[i].straight(point, scratch)) {
        return false;
      }
      azimuths[i] = point[2];
    }
    Arrays.sort(azimuths);
    double widest = azimuths[0] + 360.0 - azimuths[azimuths.length - 1];
    for (int i = 1; i < azimuths.length; i++) {
      widest = Math.max(widest, azimuths[i] - azimuths[i - 1]);
    }
    return widest > 180.0;
  }
}
