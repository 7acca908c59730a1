package org.ferryglide.tide.stream;

import java.io.Serializable;
import java.util.List;
import org.ferryglide.nav.note.Note;

/** How several stations answer for the water between them. */
interface StationRule extends Serializable {

  /** The stream; false if there are no data. Does not allocate. */
  boolean sample(double latitude, double longitude, double t, double[] out, int offset);

  /** The share of every station in the answer, their sum 1; empty if there are no data. */
  double[] weights(double latitude, double longitude, double t);

  /** What a reader should know of these shares. */
  List<Note> notes(double latitude, double longitude, double t, double[] weights);
}
