package org.ferryglide.examples;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.magnetic.VariationSource;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.StreamField;

/**
 * Short names for scripts, to be imported statically; each only calls the library.
 *
 * <pre>{@code
 * import static org.ferryglide.examples.Shorthand.*;
 *
 * print(leg("46-10.0N 26-20.0W", "46-11.8N 26-17.6W").course());
 * }</pre>
 */
public final class Shorthand {
  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

  private Shorthand() {}

  /**
   * A position.
   *
   * @param text in any form that {@link Position#parse} reads
   * @return the position
   */
  public static Position at(String text) {
    return Position.parse(text);
  }

  /**
   * A leg of constant course.
   *
   * @param from its start, as text
   * @param to its end, as text
   * @return the leg
   */
  public static RhumbLeg leg(String from, String to) {
    return RhumbLeg.between(at(from), at(to));
  }

  /**
   * A speed.
   *
   * @param knots in knots
   * @return the speed
   */
  public static Speed knots(double knots) {
    return Speed.ofKnots(knots);
  }

  /**
   * A distance.
   *
   * @param metres in metres
   * @return the distance
   */
  public static Distance metres(double metres) {
    return Distance.ofMetres(metres);
  }

  /**
   * A true bearing.
   *
   * @param degrees any angle, degrees
   * @return the bearing
   */
  public static TrueBearing degreesTrue(double degrees) {
    return TrueBearing.ofDegrees(degrees);
  }

  /**
   * A stream that never changes.
   *
   * @param setDegrees where it goes, degrees true
   * @param rateKnots how fast, knots
   * @return the stream
   */
  public static StreamField stream(double setDegrees, double rateKnots) {
    return StreamField.steady(Velocity.ofSetAndRate(degreesTrue(setDegrees), knots(rateKnots)));
  }

  /**
   * A time.
   *
   * @param text with its offset, as 2026-06-14T11:40+01:00
   * @return the instant
   */
  public static Instant time(String text) {
    return OffsetDateTime.parse(text).toInstant();
  }

  /**
   * The variation by the World Magnetic Model.
   *
   * @param place where
   * @param when when; its date in UTC counts
   * @return the variation
   */
  public static Variation variation(Position place, Instant when) {
    return VariationSource.builtInModels()
        .at(place, when.atOffset(ZoneOffset.UTC).toLocalDate())
        .variation();
  }

  /**
   * A time as clocks show it, to the nearest minute.
   *
   * @param instant the time
   * @param offset hours ahead of UTC
   * @return date and clock
   */
  public static String clock(Instant instant, int offset) {
    return CLOCK.format(
        instant
            .plusSeconds(30)
            .truncatedTo(ChronoUnit.MINUTES)
            .atOffset(ZoneOffset.ofHours(offset)));
  }

  /**
   * Prints a line on standard output.
   *
   * @param line what to print
   */
  public static void print(Object line) {
    System.out.println(line);
  }
}
