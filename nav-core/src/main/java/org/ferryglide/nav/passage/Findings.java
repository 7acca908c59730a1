package org.ferryglide.nav.passage;

import org.ferryglide.nav.note.Note;

/** Words that several checks say, each under its code. */
final class Findings {
  static final Note NEVER = Note.information("why.never", "it never comes to that");
  static final Note NO_STREAM =
      Note.information("why.no-stream", "no stream is known there and then");
  static final Note NO_WIND = Note.information("why.no-wind", "no wind is known there and then");
  static final Note NO_WIND_OR_STREAM =
      Note.information("why.no-wind-or-stream", "wind or stream are not known there and then");
  static final Note NO_HEIGHT =
      Note.information("why.no-height", "no height of tide is known then");
  static final Note NO_LANDING = Note.information("why.no-landing", "no landing was given");
  static final Note NO_LANDING_KNOWN =
      Note.information(
          "why.no-landing-known", "no landing is known to be usable from there and then");

  static final Note ANY_LEVEL = Note.information("why.any-level", "works at any level");
  static final Note ANY_LEVEL_OPEN =
      Note.information(
          "why.any-level-open", "works at any level; wind onto it has no limit to be held against");
  static final Note NO_DOUBT = Note.information("why.no-doubt", "nothing looked wrong");
  static final Note NO_DRIFT =
      Note.information("why.no-drift", "stream, wind or danger are not known there and then");
  static final Note NO_SUN =
      Note.information("why.no-sun", "the sun is worked out from 1901 to 2099 only");
  static final Note NOT_ENTERED = Note.information("why.not-entered", "not entered");
  static final Note NO_ANGLE =
      Note.information("why.no-angle", "the party has chosen no limit for the angle");
  static final Note ALL_THE_WAY = Note.information("why.all-the-way", "all the way");
  static final Note NONE_IN_REACH =
      Note.information("why.none-in-reach", "none can be reached from there");
  static final Note NOT_POSSIBLE = Note.information("why.not-possible", "not possible");

  /** The time between two looks at an edge of which neither fails. */
  static final Note EDGE = Note.information("why.edge", "a check fails for a moment only");

  static final Note OPEN_DAYLIGHT = Note.information("open.daylight", "daylight");
  static final Note OPEN_DANGERS = Note.information("open.dangers", "dangers");
  static final Note OPEN_LAND_DOWN_WIND = Note.information("open.land-down-wind", "land down wind");
  static final Note OPEN_LANES = Note.information("open.lanes", "lanes and fairways");
  static final Note OPEN_VARIATION = Note.information("open.variation", "variation");
  static final Note OPEN_WIND = Note.information("open.wind", "wind");
  static final Note OPEN_STREAM = Note.information("open.stream", "stream");
  static final Note OPEN_ONSHORE_WIND = Note.information("open.onshore-wind", "onshore wind");
  static final Note OPEN_SWELL = Note.information("open.swell", "swell");

  private Findings() {}

  /** Words that end with the name of a place. */
  static Note at(String code, String words, String place) {
    return Note.information(code, words + place).with("place", place);
  }

  /** A name alone. */
  static Note named(String code, String name) {
    return Note.information(code, name).with("name", name);
  }
}
