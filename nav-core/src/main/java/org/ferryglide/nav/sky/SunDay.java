package org.ferryglide.nav.sky;

import java.io.Serializable;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.position.Position;
import org.shredzone.commons.suncalc.SunPosition;
import org.shredzone.commons.suncalc.SunTimes;

/**
 * Sunrise, sunset and twilight of one calendar day at one place.
 *
 * <p>The day runs from midnight to midnight in the caller's zone, 23 or 25 hours where the clocks
 * change. Times are whole minutes, rounded so that there is never less light than they say: a rise
 * up to the next minute, a set down. A rise in the last minute of the day is given as the midnight
 * that ends it.
 *
 * <p>Accuracy before the rounding, measured against PyEphem 4.1.4 over 334 events of the years 2020
 * to 2034: median 5 s, worst 21 s below 62 degrees of latitude and 26 s up to 75 degrees; a sun
 * that only grazes the threshold can be minutes off. Real refraction varies by as much. An open sea
 * horizon and an eye at sea level are assumed.
 *
 * <pre>{@code
 * SunDay day = SunDay.of(date, ZoneId.of("UTC+01:00"), landing);
 * Optional<Instant> sunset = day.daylight().set();
 * Optional<Instant> dark = day.nauticalTwilight().set();
 * }</pre>
 */
public final class SunDay implements Serializable {

  private static final long serialVersionUID = 1L;

  /** No second crossing of the same kind is nearer than this to a first one. */
  private static final Duration NEXT_LOOK = Duration.ofMinutes(1);

  private static final int SECONDS_PER_MINUTE = 60;

  private final LocalDate date;
  private final ZoneId zone;
  private final Position position;
  private final Daylight daylight;
  private final Daylight civilTwilight;
  private final Daylight nauticalTwilight;

  private SunDay(LocalDate date, ZoneId zone, Position position) {
    this.date = date;
    this.zone = zone;
    this.position = position;
    this.daylight = look(SunThreshold.SUNRISE_AND_SUNSET);
    this.civilTwilight = look(SunThreshold.CIVIL_TWILIGHT);
    this.nauticalTwilight = look(SunThreshold.NAUTICAL_TWILIGHT);
  }

  /**
   * The sun of a calendar day.
   *
   * @param date the date, as a calendar in {@code zone} shows it, in the years 1900 to 2100
   * @param zone the zone whose midnights bound the day
   * @param position where
   * @return the day
   * @throws IllegalArgumentException if {@code date} is outside the years 1900 to 2100
   * @throws DateTimeException if {@code zone} skipped the date when it changed sides of the date
   *     line
   */
  public static SunDay of(LocalDate date, ZoneId zone, Position position) {
    if (!Sun.known(date).atStartOfDay(zone).isBefore(date.plusDays(1).atStartOfDay(zone))) {
      throw new DateTimeException("date must exist in " + zone + ", but " + date + " was skipped");
    }
    return new SunDay(
        Objects.requireNonNull(date, "date"),
        Objects.requireNonNull(zone, "zone"),
        Objects.requireNonNull(position, "position"));
  }

  /**
   * The calendar date.
   *
   * @return as given
   */
  public LocalDate date() {
    return date;
  }

  /**
   * The zone whose midnights bound the day.
   *
   * @return as given
   */
  public ZoneId zone() {
    return zone;
  }

  /**
   * The place.
   *
   * @return as given
   */
  public Position position() {
    return position;
  }

  /**
   * Sunrise and sunset.
   *
   * @return crossings of the upper limb through the sea horizon
   */
  public Daylight daylight() {
    return daylight;
  }

  /**
   * Civil twilight: until its end shapes can be made out in clear weather.
   *
   * @return crossings of 6° below the horizon
   */
  public Daylight civilTwilight() {
    return civilTwilight;
  }

  /**
   * Nautical twilight: after its end it is night.
   *
   * @return crossings of 12° below the horizon
   */
  public Daylight nauticalTwilight() {
    return nauticalTwilight;
  }

  /**
   * Any of the three.
   *
   * @param threshold which
   * @return the crossings of that threshold
   */
  public Daylight at(SunThreshold threshold) {
    return switch (threshold) {
      case SUNRISE_AND_SUNSET -> daylight;
      case CIVIL_TWILIGHT -> civilTwilight;
      case NAUTICAL_TWILIGHT -> nauticalTwilight;
    };
  }

  private Daylight look(SunThreshold threshold) {
    ZonedDateTime start = date.atStartOfDay(zone).withZoneSameInstant(ZoneOffset.UTC);
    ZonedDateTime end = date.plusDays(1).atStartOfDay(zone).withZoneSameInstant(ZoneOffset.UTC);
    List<SunCrossing> crossings = new ArrayList<>();
    ZonedDateTime from = start;
    while (from.isBefore(
        end)) { // again after the last crossing found: a day can have two of a kind
      SunTimes found =
          SunTimes.compute()
              .at(position.latitudeDegrees(), position.longitudeDegrees())
              .on(from)
              .limit(Duration.between(from, end))
              .twilight(threshold.altitudeDegrees())
              .execute();
      ZonedDateTime latest = from;
      for (boolean rising : new boolean[] {true, false}) {
        ZonedDateTime time = rising ? found.getRise() : found.getSet();
        if (time != null && !time.isBefore(from) && time.isBefore(end)) {
          crossings.add(new SunCrossing(time.toInstant(), rising));
          latest = time.isAfter(latest) ? time : latest;
        }
      }
      if (latest.equals(from)) {
        break;
      }
      from = latest.plus(NEXT_LOOK);
    }
    crossings.sort(Comparator.comparing(SunCrossing::time));
    // a sun that grazes the threshold is found twice within a minute or so, once from either side
    for (int i = crossings.size() - 1; i > 0; i--) {
      if (crossings.get(i).rising() == crossings.get(i - 1).rising()) {
        crossings.remove(i);
      }
    }
    boolean upAtStart =
        crossings.isEmpty()
            ? isUp(start.plus(Duration.between(start, end).dividedBy(2)), threshold)
            : !crossings.get(0).rising();
    return new Daylight(threshold, upAtStart, toMinutes(crossings));
  }

  /** A light that has gone by the minute in which it is sure to have come is none. */
  private static List<SunCrossing> toMinutes(List<SunCrossing> crossings) {
    List<SunCrossing> rounded = new ArrayList<>(crossings.size());
    for (SunCrossing crossing : crossings) {
      Instant time = toMinute(crossing.time(), crossing.rising());
      int last = rounded.size() - 1;
      if (last >= 0 && !crossing.rising() && !rounded.get(last).time().isBefore(time)) {
        rounded.remove(last);
      } else {
        rounded.add(new SunCrossing(time, crossing.rising()));
      }
    }
    return rounded;
  }

  private boolean isUp(ZonedDateTime time, SunThreshold threshold) {
    double altitudeDegrees =
        SunPosition.compute()
            .at(position.latitudeDegrees(), position.longitudeDegrees())
            .on(time)
            .execute()
            .getTrueAltitude();
    return altitudeDegrees > threshold.altitudeDegrees();
  }

  /** Never more light than there is: rises later, sets earlier. */
  private static Instant toMinute(Instant time, boolean rising) {
    long seconds = time.getEpochSecond();
    long early = seconds - Math.floorMod(seconds, (long) SECONDS_PER_MINUTE);
    return Instant.ofEpochSecond(rising && early < seconds ? early + SECONDS_PER_MINUTE : early);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SunDay that
        && date.equals(that.date)
        && zone.equals(that.zone)
        && position.equals(that.position);
  }

  @Override
  public int hashCode() {
    return Objects.hash(date, zone, position);
  }

  /** Date, zone and place. */
  @Override
  public String toString() {
    return "sun of " + date + " " + zone + " at " + position;
  }
}
