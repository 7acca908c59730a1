package org.ferryglide.tide.folder;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.passage.Stop;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.tide.sheet.Sheet;

/** What stands in the fields of a folder's sheets, read as values. */
final class Words {
  /** A number as a paddler writes it, with decimals enough for the least double. */
  static final String NUMBER = "(-?[0-9]{1,6}(?:\\.[0-9]{1,340})?)";

  private static final Pattern DURATION =
      Pattern.compile("(?:([0-9]{1,4}) h)? ?(?:([0-9]{1,5}) min)?");
  private static final Pattern LEVEL =
      Pattern.compile("until " + NUMBER + " m or (more|less) at (.+)");
  private static final Pattern SLACK = Pattern.compile("until " + NUMBER + " kn or less");
  private static final Pattern EVERY = Pattern.compile("new heading every (.+)");
  private static final Pattern PER_CENT = Pattern.compile(NUMBER + " ?%");
  private static final Pattern DEGREES = Pattern.compile(NUMBER + " ?°?");

  private Words() {}

  /** A field that may be empty; what is refused is recorded and left out. */
  static <T> Optional<T> of(Sheet.Row row, String heading, Function<String, T> parser) {
    return row.has(heading)
        ? row.read(heading, text -> Optional.of(parser.apply(text)), Optional.empty())
        : Optional.empty();
  }

  /** A number that may be left out. */
  static OptionalDouble number(Sheet.Row row, String heading, double least, double greatest) {
    return row.has(heading) ? row.number(heading, least, greatest) : OptionalDouble.empty();
  }

  /** A true direction in degrees that may be left out. */
  static Optional<TrueBearing> direction(Sheet.Row row, String heading) {
    OptionalDouble degrees = number(row, heading, 0.0, 360.0);
    return degrees.isPresent()
        ? Optional.of(TrueBearing.ofDegrees(degrees.getAsDouble()))
        : Optional.empty();
  }

  /** A speed in knots that may be left out. */
  static Optional<Speed> knots(Sheet.Row row, String heading, double greatest) {
    OptionalDouble knots = number(row, heading, 0.0, greatest);
    return knots.isPresent() ? Optional.of(Speed.ofKnots(knots.getAsDouble())) : Optional.empty();
  }

  /** {@code 40 min}, {@code 2 h} or {@code 1 h 20 min}. */
  static Duration duration(String text) {
    Matcher matcher = DURATION.matcher(text);
    if (!matcher.matches() || (matcher.group(1) == null && matcher.group(2) == null)) {
      throw new IllegalArgumentException(
          "must be a time as in 40 min or 1 h 20 min, but was \"" + text + "\"");
    }
    String hours = matcher.group(1);
    String minutes = matcher.group(2);
    return Duration.ofHours(hours == null ? 0 : Long.parseLong(hours))
        .plusMinutes(minutes == null ? 0 : Long.parseLong(minutes));
  }

  /** A share in per cent, as a part of 1. */
  static double share(String text) {
    Matcher matcher = PER_CENT.matcher(text);
    if (!matcher.matches()) {
      throw new IllegalArgumentException(
          "must be a share in per cent, as in 25 %, but was \"" + text + "\"");
    }
    return new BigDecimal(matcher.group(1)).movePointLeft(2).doubleValue(); // as it was written
  }

  /** An angle in degrees, the sign ° after it or left out. */
  static double degrees(String text) {
    Matcher matcher = DEGREES.matcher(text);
    if (!matcher.matches()) {
      throw new IllegalArgumentException(
          "must be an angle in degrees, as in 20°, but was \"" + text + "\"");
    }
    return Double.parseDouble(matcher.group(1));
  }

  /** How a leg is steered. */
  static Strategy strategy(String text) {
    Matcher every = EVERY.matcher(text);
    if (every.matches()) {
      return Strategy.newHeadingEvery(duration(every.group(1)));
    }
    return switch (text) {
      case "constant heading", "one heading" -> Strategy.constantHeading();
      case "track held" -> Strategy.trackHeld();
      case "bow on target" -> Strategy.bowOnTarget();
      case "quickest" -> Strategy.quickest();
      default ->
          throw new IllegalArgumentException(
              "must be constant heading, track held, new heading every 20 min, new headings at"
                  + " times, bow on target, quickest, or quickest round an obstacle, but was \""
                  + text
                  + "\"");
    };
  }

  /** How long the party stays; {@link #portOfStop} tells the port it asks for. */
  static Stop stop(String text) {
    Matcher level = LEVEL.matcher(text);
    if (level.matches()) {
      double metres = Double.parseDouble(level.group(1));
      return "more".equals(level.group(2))
          ? Stop.untilLevelAtLeast(level.group(3), Distance.ofMetres(metres))
          : Stop.untilLevelAtMost(level.group(3), Distance.ofMetres(metres));
    }
    Matcher slack = SLACK.matcher(text);
    if (slack.matches()) {
      return Stop.untilStreamAtMost(Speed.ofKnots(Double.parseDouble(slack.group(1))));
    }
    if (text.startsWith("until ") && !text.contains(" or ")) {
      return Stop.until(PassageSheet.dateAndTime(text.substring(6)).toInstant());
    }
    try {
      return Stop.ashore(duration(text));
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(
          "must be a stop as in 40 min, until 2026-06-14T15:00+01:00, until 0.5 kn or less, or"
              + " until 2.5 m or more at a port, but was \""
              + text
              + "\"",
          e);
    }
  }

  /** The port whose level a stop waits for. */
  static Optional<String> portOfStop(String text) {
    Matcher level = LEVEL.matcher(text);
    return level.matches() ? Optional.of(level.group(3)) : Optional.empty();
  }

  /** The text that reads as a stop. */
  static String text(Stop stop) {
    if (stop.length().isPresent()) {
      return ErrorSheet.minutes(stop.length().get());
    }
    if (stop.time().isPresent()) {
      return "until " + stop.time().get();
    }
    if (stop.slackRate().isPresent()) {
      return "until " + Numbers.knots(stop.slackRate().get()) + " kn or less";
    }
    String port = stop.port().get();
    return stop.leastLevel().isPresent()
        ? "until " + Numbers.of(stop.leastLevel().get()) + " m or more at " + port
        : "until " + Numbers.of(stop.greatestLevel().get()) + " m or less at " + port;
  }
}
