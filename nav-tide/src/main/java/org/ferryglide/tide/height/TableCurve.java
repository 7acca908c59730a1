package org.ferryglide.tide.height;

import java.io.Serializable;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.water.EpochSeconds;

/**
 * A curve through the high and low waters of a table.
 *
 * <pre>{@code
 * TideCurve curve = TableCurve.cosine(table);
 * OptionalDouble height = curve.heightMetresAt(Instant.parse("2026-06-01T12:00:00Z"));
 * List<Note> notes = curve.notesAt(Instant.parse("2026-06-01T12:00:00Z"));
 * }</pre>
 *
 * <p>Every curve passes through the table's waters and never leaves the span between them. What it
 * does between two waters is a guess at the shape of the tide, and its notes say so.
 */
public final class TableCurve implements TideCurve, Serializable {
  private static final long serialVersionUID = 1L;

  private final TideTable table;

  @SuppressWarnings("serial") // every shape of this package is serializable
  private final PieceShape shape;

  private final CurveNotes notes;

  private TableCurve(TideTable table, PieceShape shape, CurveNotes notes) {
    this.table = table;
    this.shape = shape;
    this.notes = notes;
  }

  /**
   * The rule of twelfths on sixths of the actual time between two waters, joined by straight lines.
   *
   * <p>A rule of thumb for semi-diurnal tides: at most 2.6 % of the rise or fall from the cosine.
   * Its notes warn where the tide is not semi-diurnal.
   *
   * @param table the waters
   * @return the curve
   */
  public static TableCurve twelfths(TideTable table) {
    return new TableCurve(table, new TwelfthsShape(), CurveNotes.TWELFTHS);
  }

  /**
   * Half a cosine wave between two waters.
   *
   * @param table the waters
   * @return the curve
   */
  public static TableCurve cosine(TideTable table) {
    return new TableCurve(table, new CosineShape(), CurveNotes.COSINE);
  }

  /**
   * The waters that the curve passes through.
   *
   * @return the table
   */
  public TideTable table() {
    return table;
  }

  @Override
  public String datum() {
    return table.datum();
  }

  @Override
  public double startSeconds() {
    return table.seconds(0);
  }

  @Override
  public double endSeconds() {
    return table.seconds(table.pieces());
  }

  @Override
  public double heightMetres(double epochSeconds) {
    int piece = table.pieceAt(epochSeconds);
    if (piece < 0) {
      return Double.NaN;
    }
    double from = table.height(piece);
    return from
        + (table.height(piece + 1) - from) * shape.passed(piece, fraction(piece, epochSeconds));
  }

  @Override
  public double slopeMetresPerSecond(double epochSeconds) {
    int piece = table.pieceAt(epochSeconds);
    if (piece < 0) {
      return Double.NaN;
    }
    return (table.height(piece + 1) - table.height(piece))
        / interval(piece)
        * shape.slope(piece, fraction(piece, epochSeconds));
  }

  @Override
  public double greatestSlopeChange(double fromSeconds, double toSeconds) {
    int piece = table.pieceAt(fromSeconds);
    if (piece < 0) {
      return Double.NaN;
    }
    double interval = interval(piece);
    double change = Math.abs(table.height(piece + 1) - table.height(piece));
    return change / (interval * interval) * shape.greatestSlopeChange(piece);
  }

  @Override
  public double nextSeamAfter(double epochSeconds) {
    if (epochSeconds < startSeconds()) {
      return startSeconds();
    }
    int piece = table.pieceAt(epochSeconds);
    if (piece < 0 || epochSeconds >= endSeconds()) {
      return Double.POSITIVE_INFINITY;
    }
    double knot = shape.nextKnot(piece, fraction(piece, epochSeconds));
    while (knot < 1.0) {
      double seam = table.seconds(piece) + knot * interval(piece);
      if (seam > epochSeconds) {
        return seam;
      }
      knot = shape.nextKnot(piece, knot + 1e-9); // that knot is now, but for rounding
    }
    return table.seconds(piece + 1);
  }

  private double interval(int piece) {
    return table.seconds(piece + 1) - table.seconds(piece);
  }

  private double fraction(int piece, double epochSeconds) {
    return (epochSeconds - table.seconds(piece)) / interval(piece);
  }

  @Override
  public List<Note> notesAt(Instant instant) {
    int piece = table.pieceAt(EpochSeconds.of(instant));
    if (piece < 0) {
      return List.of();
    }
    List<Note> all = new ArrayList<>(table.notes());
    notes.addTo(all, table, piece);
    return List.copyOf(all);
  }

  /** How the curve is made and whose waters it joins. */
  @Override
  public String toString() {
    return notes.title() + " through " + table;
  }
}
