package org.ferryglide.nav.passage;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * Figures and lines as a deck card prints them. Each figure is rounded to the side on which its own
 * check is worse.
 */
final class CardText {
  /** A figure that is whole but for the rounding of its arithmetic stays as it is. */
  private static final double ROUNDING = 1e-9;

  private final ZoneId zone;
  private final LocalDate day;

  /** Text whose clock is that of the passage, and whose day is that of its departure. */
  CardText(TimedPlan plan) {
    zone = plan.passage().zone();
    day = plan.departure().atZone(zone).toLocalDate();
  }

  /** The whole minute that is not earlier: an arrival, against dusk and a closing gate. */
  static Instant later(Instant time) {
    Instant minute = time.truncatedTo(ChronoUnit.MINUTES);
    return minute.equals(time) ? time : minute.plus(1, ChronoUnit.MINUTES);
  }

  /** The whole minute that is not later: an arrival, against an opening gate. */
  static Instant earlier(Instant time) {
    return time.truncatedTo(ChronoUnit.MINUTES);
  }

  /** A clock time of a whole minute, with the days since the departure's own. */
  String clock(Instant minute) {
    ZonedDateTime local = minute.atZone(zone);
    long days = ChronoUnit.DAYS.between(day, local.toLocalDate());
    String hours = two(local.getHour()) + ":" + two(local.getMinute());
    return days == 0 ? hours : hours + (days > 0 ? "+" : "") + days;
  }

  boolean isOnTheDay(Instant time) {
    return time.atZone(zone).toLocalDate().equals(day);
  }

  private static String two(int number) {
    return number < 10 ? "0" + number : Integer.toString(number);
  }

  /** The day of the departure. */
  String date() {
    return day.getDayOfMonth() + " " + CardLabels.month(day.getMonthValue()) + " " + day.getYear();
  }

  /** The zone of the clock on that day. */
  String offset() {
    return zone.getRules().getOffset(day.atStartOfDay(zone).toInstant()).toString().equals("Z")
        ? "UTC"
        : "UTC" + zone.getRules().getOffset(day.atStartOfDay(zone).toInstant());
  }

  /** To a tenth, up. */
  static String up(double value) {
    return Double.toString(Math.ceil(value * 10.0 - ROUNDING) / 10.0 + 0.0);
  }

  /** To a tenth, down. */
  static String down(double value) {
    return Double.toString(Math.floor(value * 10.0 + ROUNDING) / 10.0 + 0.0);
  }

  /** A direction at the nearest mark of a compass, three figures. */
  static String atMark(double degrees, int marks) {
    long mark = Math.floorMod((long) Math.floor(degrees / marks + 0.5) * marks, 360L);
    return (mark < 10 ? "00" : mark < 100 ? "0" : "") + mark + "°";
  }

  /** Text within a width; what is left off is shown to be. */
  static String fit(String text, int width) {
    return text.codePointCount(0, text.length()) <= width
        ? text
        : text.substring(0, text.offsetByCodePoints(0, width - 1)) + "…";
  }

  /** Text on as many lines as it needs; later ones are set in. */
  static List<String> wrap(String text, int width) {
    List<String> lines = new ArrayList<>();
    String rest = text;
    String indent = "";
    while (indent.length() + rest.length() > width) {
      int room = width - indent.length();
      int space = rest.lastIndexOf(' ', room);
      int cut = space > 0 ? space : room;
      lines.add(indent + rest.substring(0, cut));
      rest = rest.substring(cut).trim();
      indent = "  ";
    }
    lines.add(indent + rest);
    return lines;
  }
}
