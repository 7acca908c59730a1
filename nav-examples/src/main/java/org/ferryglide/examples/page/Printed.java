package org.ferryglide.examples.page;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import org.ferryglide.nav.bearing.Bearing;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.passage.PlannedLeg;
import org.ferryglide.nav.position.AngleForm;
import org.ferryglide.nav.position.Position;

/** Figures as they are printed, each rounded to the side on which its own check is worse. */
final class Printed {
  /** A figure that is whole but for the rounding of its arithmetic stays as it is. */
  private static final double ROUNDING = 1e-9;

  private static final String[] MONTHS = {
    "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"
  };

  private final ZoneId zone;
  private final LocalDate day;

  /** Figures by a clock, days counted from a date. */
  Printed(ZoneId zone, LocalDate day) {
    this.zone = zone;
    this.day = day;
  }

  ZoneId zone() {
    return zone;
  }

  LocalDate day() {
    return day;
  }

  /** The whole minute that is not earlier: an arrival, against dusk and a closing gate. */
  static Instant laterMinute(Instant time) {
    Instant minute = time.truncatedTo(ChronoUnit.MINUTES);
    return minute.equals(time) ? time : minute.plus(1, ChronoUnit.MINUTES);
  }

  /** The clock at the whole minute that is not earlier. */
  String late(Instant time) {
    return clock(laterMinute(time));
  }

  /** The clock at the whole minute that is not later. */
  String early(Instant time) {
    return clock(time.truncatedTo(ChronoUnit.MINUTES));
  }

  private String clock(Instant minute) {
    ZonedDateTime local = minute.atZone(zone);
    long days = ChronoUnit.DAYS.between(day, local.toLocalDate());
    String clock = two(local.getHour()) + ":" + two(local.getMinute());
    return days == 0 ? clock : clock + (days > 0 ? "+" : "") + days;
  }

  /** A time with its date and its distance from UTC, for those who have nothing else at hand. */
  String dated(Instant time) {
    ZonedDateTime local = time.atZone(zone);
    return two(local.getHour()) + ":" + two(local.getMinute()) + " " + date(local.toLocalDate());
  }

  String date() {
    return date(day);
  }

  static String date(LocalDate day) {
    return day.getDayOfMonth() + " " + MONTHS[day.getMonthValue() - 1] + " " + day.getYear();
  }

  /** How far the clock is from UTC at a time. */
  String offset(Instant time) {
    String id = zone.getRules().getOffset(time).getId();
    return id.equals("Z") ? "UTC" : "UTC" + id;
  }

  static String two(int number) {
    return number < 10 ? "0" + number : Integer.toString(number);
  }

  /** Minutes between two printed times. */
  static long minutes(Instant from, Instant until) {
    return Duration.between(laterMinute(from), laterMinute(until)).toMinutes();
  }

  /** To a tenth, up. */
  static String up(double value) {
    return Double.toString(Math.ceil(value * 10.0 - ROUNDING) / 10.0 + 0.0);
  }

  /** To a tenth, down. */
  static String down(double value) {
    return Double.toString(Math.floor(value * 10.0 + ROUNDING) / 10.0 + 0.0);
  }

  /** To the nearest tenth, for what lies on neither side of a limit. */
  static String near(double value) {
    return Double.toString(Math.rint(value * 10.0) / 10.0 + 0.0);
  }

  static String place(Position position) {
    return position.text(AngleForm.DEGREES_MINUTES, 1);
  }

  /**
   * A direction of a leg: magnetic where the variation is known, true with its letter elsewhere.
   */
  static String direction(PlannedLeg leg, TrueBearing direction) {
    return leg.magnetic(direction).map(Bearing::threeDigits).orElse(direction.threeDigits() + "T");
  }
}
