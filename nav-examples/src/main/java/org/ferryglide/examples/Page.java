package org.ferryglide.examples;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Severity;

/** Plain text in two columns: times late, heights low, never to the second, by one clock. */
final class Page {
  private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
  private static final int TEXT_COLUMN = 16;

  /** A rate that prints as 0.0 knots. */
  private static final double SLACK_KNOTS = 0.05;

  private final StringBuilder text = new StringBuilder();
  private final ZoneOffset offset;
  private final LocalDate day;

  /** A page whose clock times are at an offset, with the date wherever it is another day. */
  Page(ZoneOffset offset, LocalDate day) {
    this.offset = offset;
    this.day = day;
  }

  void line(String line) {
    text.append(line).append('\n');
  }

  void line() {
    text.append('\n');
  }

  void row(String label, String words) {
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

  static String words(Note note) {
    return (note.severity() == Severity.WARNING
            ? "WARNING"
            : note.severity().toString().toLowerCase(Locale.ROOT))
        + ": "
        + note.text();
  }

  /** Findings of checks by this page's clock. */
  Findings findings() {
    return Findings.by(this::clock);
  }

  String clock(Instant time) {
    LocalDate date = time.atOffset(offset).toLocalDate();
    return CLOCK.format(time.atOffset(offset)) + (date.equals(day) ? "" : " on " + date);
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

  static String hoursAndMinutes(Duration time) {
    long minutes = time.toMinutes();
    return minutes < 60 ? minutes + " min" : minutes / 60 + " h " + minutes % 60 + " min";
  }

  static String setAndRate(Velocity stream) {
    return stream.rate().knots() < SLACK_KNOTS ? "slack" : stream.setAndRate();
  }

  static String trueAndMagnetic(TrueBearing heading, Variation variation) {
    return heading.threeDigits()
        + " true, "
        + heading.toMagnetic(variation).threeDigits()
        + " magnetic";
  }

  /** Rounded down: less water than promised is the dangerous way. */
  static String metresDown(double metres) {
    return Math.floor(metres * 10.0 + 1e-9) / 10.0 + 0.0 + " m";
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
