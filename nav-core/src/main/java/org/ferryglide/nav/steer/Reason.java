package org.ferryglide.nav.steer;

import java.util.Locale;
import org.ferryglide.nav.note.Note;

/**
 * Why a leg cannot be steered. More reasons may be added, so a {@code switch} needs a default.
 *
 * <pre>{@code
 * boolean waitForTheTurn = notPossible.reason() == Reason.ADVERSE_STREAM;
 * }</pre>
 */
public enum Reason {
  /** The stream across the track is faster than the craft: no heading holds against it. */
  CROSS_STREAM("the stream across the track is too strong to hold against"),
  /**
   * Some heading holds the track, but the stream ahead carries the craft back along it; with a
   * constant heading, it turns against the craft before the end is reached, so that more time would
   * not help.
   */
  ADVERSE_STREAM("the stream ahead is too strong to make way against"),
  /** Neither the craft nor the stream makes any way toward the end of the leg. */
  NO_PROGRESS("nothing makes way toward the end of the leg"),
  /** A stream or wind is not known at a place and time the craft would come to. */
  NO_DATA("the stream or wind is not known there and then"),
  /** The end is not reached within the longest duration that the caller allows. */
  BEYOND_HORIZON("the end is not reached within the longest duration allowed"),
  /**
   * Land, closed areas and the party's limits of stream and sea leave no way to the end within the
   * longest duration.
   */
  NO_ROOM("land, closed areas and the limits of stream and sea leave no way to the end"),
  /** It can be steered, but takes a larger share of the craft's speed than the limits allow. */
  NO_RESERVE("it would leave too little reserve of speed");

  private final String text;

  Reason(String text) {
    this.text = text;
  }

  String text() {
    return text;
  }

  /**
   * The reason as words with a code, so that it can be translated.
   *
   * @return {@code reason.} and its name, for example {@code reason.cross-stream}
   */
  public Note note() {
    return Note.information("reason." + name().toLowerCase(Locale.ROOT).replace('_', '-'), text);
  }
}
