package org.ferryglide.examples.page;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.function.BiFunction;
import org.ferryglide.nav.bearing.Bearing;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Units;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.passage.PlannedLeg;
import org.ferryglide.nav.position.AngleForm;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.timing.Verdict;
import org.jspecify.annotations.Nullable;

/**
 * Figures and findings as they are printed, by one clock, in units of one's choice and in the words
 * of one language; each figure rounded to the side on which its own check is worse.
 */
final class Printed {
  /** A figure that is whole but for the rounding of its arithmetic stays as it is. */
  private static final double ROUNDING = 1e-9;

  private final ZoneId zone;
  private final LocalDate day;
  private final Labels labels;
  private final Units units;
  private final BiFunction<Note, String, String> printing;

  /** Figures by a clock, days counted from a date. */
  Printed(ZoneId zone, LocalDate day, Labels labels, Units units) {
    this.zone = zone;
    this.day = day;
    this.labels = labels;
    this.units = units;
    BiFunction<Note, String, String> bare = units.printing(labels.words(), this::early);
    this.printing = bare.andThen(Printed::isolated);
  }

  private static @Nullable String isolated(@Nullable String said) {
    return said == null ? null : Labels.isolated(said);
  }

  ZoneId zone() {
    return zone;
  }

  LocalDate day() {
    return day;
  }

  Units units() {
    return units;
  }

  /** A note in the words of its code. */
  String say(Note note) {
    return labels.words().say(note, printing);
  }

  /** What a finding is about, or why something is not possible, without its figures. */
  String about(Note note) {
    return note.code().equals("not-possible")
        ? labels.words().sayPart(note, "reason", printing)
        : labels.words().sayPart(note, "about", printing);
  }

  String say(Verdict verdict) {
    return say(verdict.note());
  }

  String answer(Verdict verdict) {
    return labels.answer(verdict);
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

  /** Two times of the clock, each with its day where it is another. */
  String span(String from, String until) {
    return labels.say("span", "from", from, "until", until);
  }

  /** A time with its date and its distance from UTC, for those who have nothing else at hand. */
  String dated(Instant time) {
    ZonedDateTime local = time.atZone(zone);
    String dated =
        two(local.getHour()) + ":" + two(local.getMinute()) + " " + date(local.toLocalDate());
    // a clock that is changed tells which of two hours it means
    boolean isChanged = !offset(time).equals(offset(day.atStartOfDay(zone).toInstant()));
    return isChanged ? dated + ", " + offset(time) : dated;
  }

  String date() {
    return date(day);
  }

  String date(LocalDate date) {
    return labels.say(
        "date",
        "day",
        Integer.toString(date.getDayOfMonth()),
        "month",
        labels.say("month." + date.getMonthValue()),
        "year",
        Integer.toString(date.getYear()));
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

  /** A distance off or still to go: up. */
  String distanceUp(Distance distance) {
    return up(units.distance(distance.metres())) + " " + distanceUnit();
  }

  /** How far something is seen: down. */
  String distanceDown(Distance distance) {
    return down(units.distance(distance.metres())) + " " + distanceUnit();
  }

  /** The length of one leg, which lies on neither side of a limit: nearest. */
  String distanceNear(Distance distance) {
    return near(units.distance(distance.metres())) + " " + distanceUnit();
  }

  String distanceUnit() {
    return labels.say("unit." + units.distanceSymbol());
  }

  /** A rate of a stream, and a speed to be kept: up. */
  String speedUp(Speed speed) {
    return up(units.speed(speed.metresPerSecond())) + " " + speedUnit();
  }

  /** A speed made good: down. */
  String speedDown(Speed speed) {
    return down(units.speed(speed.metresPerSecond())) + " " + speedUnit();
  }

  String speedUnit() {
    return labels.say("unit." + units.speedSymbol());
  }

  /** A depth, or a height of tide: down. */
  String heightDown(double metres) {
    return down(units.height(metres)) + " " + heightUnit();
  }

  String heightUnit() {
    return labels.say("unit." + units.heightSymbol());
  }

  /** To a tenth, up. */
  static String up(double value) {
    return Double.toString(Math.ceil(value * 10.0 - ROUNDING) / 10.0 + 0.0);
  }

  /** To a tenth, down. */
  static String down(double value) {
    return Double.toString(Math.floor(value * 10.0 + ROUNDING) / 10.0 + 0.0);
  }

  private static String near(double value) {
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
