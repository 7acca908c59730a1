package org.ferryglide.nav.passage;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Units;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Words;

/**
 * Figures, words and lines as a deck card prints them. Each figure is rounded to the side on which
 * its own check is worse.
 */
final class CardText {
  /** What is not known: to be filled in by hand, never a zero. */
  static final String BLANK_DIRECTION = "___°";

  static final String BLANK_FIGURE = "__";
  static final String BLANK_TIME = "__:__";
  static final String BLANK = "__________";

  /** The words that come with the library. */
  static final Words ENGLISH = english();

  /** A figure that is whole but for the rounding of its arithmetic stays as it is. */
  private static final double ROUNDING = 1e-9;

  /** The clock of the departure throughout: one that is changed on the way shows an hour twice. */
  private final ZoneOffset zone;

  private final LocalDate day;
  private final Words words;
  private final Units units;
  private final BiFunction<Note, String, String> printing;

  /** Text whose clock and day are those of the departure. */
  CardText(TimedPlan plan, Words words, Units units) {
    this.zone = plan.passage().zone().getRules().getOffset(plan.departure());
    this.day = plan.departure().atZone(zone).toLocalDate();
    this.words = words;
    this.units = units;
    this.printing = units.printing(words, this::early);
  }

  private static Words english() {
    try (InputStream in = CardText.class.getResourceAsStream("words.properties")) {
      if (in == null) {
        throw new IllegalStateException("words.properties is missing beside CardText");
      }
      return Words.read(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The words of a key, with figures by name. */
  String say(String key, String... figures) {
    return words.say("card." + key, figures);
  }

  /** A note in the card's words. */
  String say(Note note) {
    return words.say(note, printing);
  }

  /** What a finding is about, or why something is not possible, without its figures. */
  String about(Note note) {
    return note.code().equals("not-possible")
        ? words.sayPart(note, "reason", printing)
        : words.sayPart(note, "about", printing);
  }

  /** A short word for something that nobody looked at. */
  String shortly(Note open) {
    String key = "card.short." + open.code();
    return words.templates().containsKey(key) ? words.say(key) : say(open);
  }

  /** One of the eight points of the compass. */
  String point(String abbreviation) {
    return words.say("point." + abbreviation);
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

  /** The clock at the whole minute that is not earlier. */
  String late(Instant time) {
    return clock(later(time));
  }

  /** The clock at the whole minute that is not later. */
  String early(Instant time) {
    return clock(earlier(time));
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
    return words.say(
        "date",
        "day",
        Integer.toString(day.getDayOfMonth()),
        "month",
        words.say("month." + day.getMonthValue()),
        "year",
        Integer.toString(day.getYear()));
  }

  /** How far the clock is from UTC. */
  String offset() {
    String id = zone.getId();
    return id.equals("Z") ? "UTC" : "UTC" + id;
  }

  /** A distance to a tenth, up, with its unit. */
  String distance(Distance distance) {
    return up(units.distance(distance.metres()))
        + " "
        + words.say("unit." + units.distanceSymbol());
  }

  /** A rate or speed to a tenth, up, with its unit. */
  String speed(Speed speed) {
    return up(units.speed(speed.metresPerSecond())) + " " + speedUnit();
  }

  String speedUnit() {
    return words.say("unit." + units.speedSymbol());
  }

  /** A height to a tenth, without its unit. */
  String height(double metres, boolean up) {
    double height = units.height(metres);
    return up ? up(height) : down(height);
  }

  String heightUnit() {
    return words.say("unit." + units.heightSymbol());
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
    long mark = Math.floorMod(nearestMark(degrees, marks), 360L);
    return (mark < 10 ? "00" : mark < 100 ? "0" : "") + mark + "°";
  }

  static long nearestMark(double degrees, int marks) {
    return (long) Math.floor(degrees / marks + 0.5) * marks;
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
      int cut = space > 0 ? space : whole(rest, room);
      lines.add(indent + rest.substring(0, cut));
      rest = rest.substring(cut).trim();
      indent = "  ";
    }
    lines.add(indent + rest);
    return lines;
  }

  /** A cut that does not part a character of two halves. */
  private static int whole(String text, int at) {
    return Character.isHighSurrogate(text.charAt(at - 1)) ? at - 1 : at;
  }
}
