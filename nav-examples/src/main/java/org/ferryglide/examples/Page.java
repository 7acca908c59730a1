package org.ferryglide.examples;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.ferryglide.examples.page.Labels;
import org.ferryglide.nav.bearing.CompassPoint;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.Note;

/**
 * Plain text in two columns in the words of one language: times late, heights low, never to the
 * second, by one clock.
 */
final class Page {
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
  private static final int TEXT_COLUMN = 20;
  private static final int LONGEST_LINE = 92;

  /** A rate that prints as 0.0 knots. */
  private static final double SLACK_KNOTS = 0.05;

  private final StringBuilder text = new StringBuilder();
  private final ZoneOffset offset;
  private final LocalDate day;
  private final Labels labels;
  private final Findings findings;

  /** A page whose clock times are at an offset, with the date wherever it is another day. */
  Page(ZoneOffset offset, LocalDate day, Labels labels) {
    this.offset = offset;
    this.day = day;
    this.labels = labels;
    this.findings = Findings.by(this::clock, labels);
  }

  void line(String line) {
    text.append(line).append('\n');
  }

  void line() {
    text.append('\n');
  }

  /** A paragraph, indented. */
  void paragraph(String words) {
    List<String> line = new ArrayList<>();
    int wide = 0;
    for (String word : words.split(" ", -1)) {
      if (wide + word.length() > LONGEST_LINE && !line.isEmpty()) {
        line("  " + String.join(" ", line));
        line.clear();
        wide = 0;
      }
      line.add(word);
      wide += word.length() + 1;
    }
    line("  " + String.join(" ", line));
  }

  /** A row beside the label of a key; beside none where the key is empty. */
  void row(String key, String words) {
    labelled(key.isEmpty() ? "" : say(key), words);
  }

  void labelled(String label, String words) {
    int start = text.length();
    text.append("  ").append(label);
    do {
      text.append(' ');
    } while (text.length() - start < TEXT_COLUMN);
    text.append(words).append('\n');
  }

  /** A note beside the figure it concerns. */
  void row(Note note) {
    row("", words(note));
  }

  String words(Note note) {
    String key =
        switch (note.severity()) {
          case WARNING -> "text.warning";
          case CAUTION -> "text.caution";
          case INFORMATION -> "text.information";
        };
    return say(key, "note", findings.say(note));
  }

  /** The words of a key with its figures. */
  String say(String key, String... figures) {
    return labels.say(key, figures);
  }

  /** Findings of checks by this page's clock. */
  Findings findings() {
    return findings;
  }

  String clock(Instant time) {
    LocalDate date = time.atOffset(offset).toLocalDate();
    String clock = CLOCK.format(time.atOffset(offset));
    return date.equals(day) ? clock : say("text.clock", "time", clock, "date", date.toString());
  }

  /** With its date whatever the day. */
  String dateAndClock(Instant time) {
    return time.atOffset(offset).toLocalDate() + " " + CLOCK.format(time.atOffset(offset));
  }

  ZoneOffset offset() {
    return offset;
  }

  /** Rounded later: an ETA that is too early is the dangerous one. */
  static Instant up(Instant time) {
    Instant minute = time.truncatedTo(ChronoUnit.MINUTES);
    return minute.equals(time) ? time : minute.plus(1, ChronoUnit.MINUTES);
  }

  String hoursAndMinutes(Duration time) {
    String hours = Long.toString(time.toMinutes() / 60);
    String minutes = Long.toString(time.toMinutes() % 60);
    return time.toMinutes() < 60
        ? say("text.minutes", "minutes", minutes)
        : say("text.hours", "hours", hours, "minutes", minutes);
  }

  String setAndRate(Velocity stream) {
    return stream.rate().knots() < SLACK_KNOTS ? say("hours.slack") : unit(stream.setAndRate());
  }

  String trueAndMagnetic(TrueBearing heading, Variation variation) {
    return say(
        "text.true-and-magnetic",
        "true",
        heading.threeDigits(),
        "magnetic",
        heading.toMagnetic(variation).threeDigits());
  }

  /** The nearest of sixteen points. */
  String point(TrueBearing bearing) {
    CompassPoint point = bearing.nearestPoint(16);
    return say("text.point." + point.abbreviation());
  }

  String knots(Speed speed) {
    return unit(speed.inKnots(1));
  }

  String nauticalMiles(Distance distance) {
    return unit(distance.inNauticalMiles(1));
  }

  String kilometres(Distance distance) {
    return unit(distance.inKilometres(1));
  }

  String metres(double metres) {
    return unit(metres + " m");
  }

  /** Rounded down: less water than promised is the dangerous way. */
  String metresDown(double metres) {
    return metres(Math.floor(metres * 10.0 + 1e-9) / 10.0 + 0.0);
  }

  /** A figure and its unit, this in the words of the page. */
  String unit(String printed) {
    int blank = printed.lastIndexOf(' ');
    return printed.substring(0, blank + 1) + say("unit." + printed.substring(blank + 1));
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
