package org.ferryglide.nav.passage;

import org.ferryglide.nav.timing.Verdict;

/** Every word that a deck card prints of its own, in one place, so that a translation covers it. */
final class CardLabels {
  static final String NOT_CHECKED = "not checked: ";
  static final String ALL_CHECKED = "all given was checked";
  static final String SEE_FURTHER = " see back";
  static final String VOID = "void on any other day";
  static final String MAGNETIC = "magnetic";
  static final String COMPASS = "compass";
  static final String TRUE = "true ";
  static final String TO = " to ";
  static final String MINUTES = " min";
  static final String ETA = "ETA ";
  static final String STREAM_TO = "stream to ";
  static final String STREAM_SLACK = "stream slack";
  static final String ASTERN = "astern ";
  static final String BY = "by ";
  static final String MISSED = "missed: ";
  static final String LEFT = "LEFT";
  static final String RIGHT = "RIGHT";
  static final String TURN = ", turn ";
  static final String EITHER_SIDE = "either side: aim off";
  static final String HIGH_WATER = "HW";
  static final String NOT_LATER = "not later";
  static final String CLOCK = ", clock ";
  static final String FIRST_AFLOAT = "first boat afloat ";
  static final String UNDER_WAY = "under way ";
  static final String LAST_ASHORE = "last ashore ";
  static final String PARTY = "party ";
  static final String RESTS = ", rests ";
  static final String IN_AN_HOUR = " min in an hour";
  static final String LAUNCH_INTERVAL = "launch interval ";
  static final String RANGE = "range ";
  static final String FROM_NEAPS = " % from neaps to springs";
  static final String LEGS = "LEGS";
  static final String TIDAL_HOURS = "TIDAL HOURS";
  static final String LANDINGS = "LANDINGS";
  static final String CHECKS = "CHECKS, the worst first";
  static final String LIKELY = " likely, ";
  static final String OFF_THE_LINE = "off the line at most ";
  static final String TO_THE_LEFT = " to the left";
  static final String TO_THE_RIGHT = " to the right";
  static final String ANY_LEVEL = "at any level";
  static final String WORKS = "works ";
  static final String HEIGHT_THEN = ", then ";
  static final String OPEN = "open ";
  static final String TRUE_NORTH = " true";
  static final String NEXT_DAY = "+1 is the next day, -1 the day before.";
  static final String HOLD_A_TRANSIT =
      "One heading: until the mark is in sight, then hold a transit.";
  static final String NEW_HEADINGS = "New headings under way, see each hour.";
  static final String CAUTION =
      "Official charts, tables, forecasts and the coastguard come first. No card says go.";

  static final String AT = ", at ";
  static final String NEAR = ", near ";

  static final String AT_MARK = "at ";
  static final String DEGREES_TRUE_FROM = " degrees true from ";
  static final String COMMA = ", ";
  static final String DECIMAL = " decimal ";
  static final String MILES = " miles";
  static final String RADIO = "POSITION FOR RADIO";
  static final String DRIFT = "DRIFT in 10, 20, 30 min without paddling";
  static final String WAY_HOME = "WAY HOME";
  static final String LANDINGS_FROM = "LANDINGS from ";
  static final String NO_WAY_HOME = "no way home ";
  static final String STEER = " steer ";
  static final String THERE = ", there ";
  static final String SLOWER = ", slower ";
  static final String NOT_USABLE = ": no, ";
  static final String ON_UNTIL = "on until ";
  static final String NOT_ON = "NOT ON: ";
  static final String NEVER = "NOT ON";
  static final String IS_HERE = ": here";
  static final String HOME_AT = "  home, leaving ";
  static final String NO_DRIFT = "stays";
  static final String ENDS_WITH = ", ended by ";
  static final String NO_INTERVAL = "none: ";

  /** What is not known: to be filled in by hand, never a zero. */
  static final String BLANK_DIRECTION = "___°";

  static final String BLANK_RATE = "__ kn";
  static final String BLANK_TIME = "__:__";
  static final String BLANK_HEIGHT = "__ m";
  static final String BLANK = "__________";

  private static final String[] MONTHS = {
    "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"
  };

  private CardLabels() {}

  static String month(int month) {
    return MONTHS[month - 1];
  }

  /** What stands in front of a finding. */
  static String answer(Verdict.Answer answer) {
    return switch (answer) {
      case WARNED -> "WARNING ";
      case STOPPED -> "STOP ";
      case NOT_CHECKED -> "NOT CHECKED ";
      default -> "";
    };
  }

  /** A short word for something that nobody looked at. */
  static String shortName(String notChecked) {
    return switch (notChecked) {
      case "lanes and fairways" -> "lanes";
      case "land down wind" -> "lee shore";
      default -> notChecked;
    };
  }
}
