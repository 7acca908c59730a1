package org.ferryglide.examples.command;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.ferryglide.nav.position.AngleForm;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.sky.Daylight;
import org.ferryglide.nav.sky.Moon;
import org.ferryglide.nav.sky.MoonPhase;
import org.ferryglide.nav.sky.SunDay;
import org.ferryglide.nav.teach.LandfallProblems;
import org.ferryglide.nav.teach.Problem;
import org.ferryglide.nav.teach.Quantity;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Daylight, twilight and the next spring-making moon. */
@Command(
    name = "daylight",
    description = "Sunrise, sunset and twilights of a day, and the next new and full moon.",
    footer = {
      "",
      "Example:",
      "  ferryglide daylight \"46-11.8N 26-17.6W\" 2026-06-14 --zone +01:00 --depart 16:40"
          + " --under-way 185 --working"
    })
final class DaylightVerb extends Verb {
  @Parameters(index = "0", paramLabel = "PLACE", description = "Position.")
  private Position place = Position.ofDegrees(0.0, 0.0);

  @Parameters(index = "1", paramLabel = "DATE", description = "Date, as 2026-06-14.")
  private LocalDate date = LocalDate.EPOCH;

  @Option(
      names = "--zone",
      defaultValue = "Z",
      paramLabel = "ZONE",
      description = "Clock of the day, as +01:00 or Europe/London (UTC if left out).")
  private ZoneId zone = ZoneOffset.UTC;

  @Option(
      names = "--depart",
      paramLabel = "TIME",
      description = "With --under-way: also the daylight left on landing, as 16:40.")
  private @Nullable LocalTime depart;

  @Option(
      names = "--under-way",
      paramLabel = "MINUTES",
      description = "How long the party is under way, rests in it.")
  private @Nullable Integer underWay;

  @Mixin private WorkingOption working = new WorkingOption();

  @Override
  protected Answer answer() {
    SunDay day = InputRefused.given(() -> SunDay.of(date, zone, place));
    Answer answer = new Answer().row("place", place.text(AngleForm.DEGREES_MINUTES, 1));
    row(answer, "sun", "daylight", day.daylight());
    row(answer, "civil", "civilTwilight", day.civilTwilight());
    row(answer, "nautical", "nauticalTwilight", day.nauticalTwilight());
    Instant noon = date.atTime(12, 0).atZone(zone).toInstant();
    moon(answer, "new moon", "nextNewMoon", Moon.next(MoonPhase.NEW, noon));
    moon(answer, "full moon", "nextFullMoon", Moon.next(MoonPhase.FULL, noon));
    left(answer, day.daylight());
    return answer.row("clock", zone.getId().equals("Z") ? "UTC" : zone.getId());
  }

  private void left(Answer answer, Daylight light) {
    if (depart == null || underWay == null) {
      if (working.isWanted() || depart != null || underWay != null) {
        throw new InputRefused("--depart and --under-way are needed together, and for --working");
      }
      return;
    }
    Instant leaving = date.atTime(depart).atZone(zone).toInstant();
    Optional<String> without = noFigure(light, leaving.plus(Duration.ofMinutes(underWay)));
    if (without.isPresent()) {
      answer.row("left", without.get());
      return;
    }
    // both by the clock that is shown at sunset, though it was changed in the morning
    ZoneOffset clock = zone.getRules().getOffset(light.set().get());
    Instant midnight = date.atStartOfDay().toInstant(clock);
    double sunset = (double) ChronoUnit.MINUTES.between(midnight, light.set().get());
    double departure = Duration.between(midnight, leaving).getSeconds() / 60.0;
    double minutes = underWay;
    Problem problem =
        InputRefused.given(() -> LandfallProblems.daylightLeft(departure, minutes, sunset));
    answer
        .row("left", Quantity.MINUTES.text(problem.answer()) + " of daylight on landing")
        .value("daylightLeftMinutes", problem.answer());
    working.adding(answer, it -> it.working(problem.working()));
  }

  /** Why the time from landing to the day's sunset is not daylight left; empty where it is. */
  private Optional<String> noFigure(Daylight light, Instant landing) {
    Optional<Instant> rise = light.rise();
    if (!light.upAtStart()) {
      if (!rise.isPresent()) {
        return Optional.of("the sun does not rise on this day");
      }
      if (landing.isBefore(rise.get())) {
        return Optional.of("landing before sunrise, at " + Times.minute(landing, zone));
      }
    }
    if (!light.set().isPresent()) {
      return Optional.of("the sun does not set on this day");
    }
    return light.upAtStart() && rise.isPresent() && !landing.isBefore(rise.get())
        ? Optional.of("landing after sunrise; the sun does not set again on this day")
        : Optional.empty();
  }

  private void row(Answer answer, String label, String name, Daylight light) {
    String words =
        light.isUpAllDay() ? "all day" : light.isDownAllDay() ? "never" : crossings(light);
    Map<String, Object> value = new LinkedHashMap<>();
    value.put("upAtStart", light.upAtStart());
    light.rise().ifPresent(time -> value.put("from", time.toString()));
    light.set().ifPresent(time -> value.put("until", time.toString()));
    answer.row(label, words).value(name, value);
  }

  /** Near midsummer it may end after midnight, before it begins anew. */
  private String crossings(Daylight light) {
    Optional<Instant> rise = light.rise();
    Optional<Instant> set = light.set();
    String from = rise.map(time -> "from " + Times.minute(time, zone)).orElse("from before");
    String until = set.map(time -> "until " + Times.minute(time, zone)).orElse("and on");
    boolean endsFirst = rise.isPresent() && set.isPresent() && set.get().isBefore(rise.get());
    return endsFirst ? until + ", again " + from : from + " " + until;
  }

  private void moon(Answer answer, String label, String name, Instant time) {
    answer.row(label, Times.minute(time, zone)).value(name, time.toString());
  }
}
