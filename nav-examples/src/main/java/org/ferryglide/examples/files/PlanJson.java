package org.ferryglide.examples.files;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.passage.PlannedHour;
import org.ferryglide.nav.passage.PlannedLeg;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.timing.Verdict;
import org.jspecify.annotations.Nullable;

/**
 * A timed plan as named values, for JSON; {@code plan.schema.json} beside this class says what
 * stands in it.
 *
 * <pre>{@code
 * String json = JsonText.of(PlanJson.of("Round the isle", TimedPlan.of(passage, departure)));
 * }</pre>
 *
 * <p>Times are UTC, angles degrees, positions decimal degrees; names carry the unit. What is not
 * known is null.
 */
public final class PlanJson {
  private PlanJson() {}

  /**
   * The values of a plan, or why there is none.
   *
   * @param name what the passage is called
   * @param departure the departure asked for
   * @param plan what came of it
   * @return values by name
   */
  public static Map<String, Object> of(
      String name, Instant departure, Outcome<TimedPlan, NotPossible> plan) {
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("format", "ferryglide-plan-1");
    values.put("name", name);
    values.put("departure", departure.toString());
    values.put("possible", plan.solved().isPresent());
    values.putAll(plan.match(PlanJson::solved, PlanJson::failed));
    values.put(
        "caution",
        "Official charts, tables, forecasts and the coastguard's advice come first; this is a sum,"
            + " not a permission to go.");
    return values;
  }

  private static Map<String, Object> failed(NotPossible why) {
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("reason", why.reason().name());
    values.put("message", why.message());
    values.put("wantOfData", why.isDataMissing());
    return values;
  }

  private static Map<String, Object> solved(TimedPlan plan) {
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("arrival", plan.arrival().toString());
    values.put("launch", plan.launch().toString());
    values.put("landed", plan.landed().toString());
    values.put("lengthNauticalMiles", plan.length().nauticalMiles());
    values.put("legs", each(plan.legs(), PlanJson::leg));
    values.put("checks", each(plan.verdicts(), PlanJson::check));
    values.put("notChecked", plan.notChecked().stream().map(Note::text).toList());
    values.put("notes", each(plan.notes(), PlanJson::note));
    return values;
  }

  private static <T> List<Object> each(
      List<T> items, Function<T, Map<String, @Nullable Object>> change) {
    List<Object> values = new ArrayList<>();
    items.forEach(item -> values.add(change.apply(item)));
    return values;
  }

  private static Map<String, @Nullable Object> leg(PlannedLeg planned) {
    Map<String, @Nullable Object> values = new LinkedHashMap<>();
    values.put("number", planned.leg().number());
    values.put("from", place(planned.leg().from().name(), planned.leg().from().position()));
    values.put("to", place(planned.leg().to().name(), planned.leg().to().position()));
    values.put("lengthNauticalMiles", planned.leg().leg().length().nauticalMiles());
    values.put("courseTrueDegrees", planned.course().degrees());
    values.put("headingTrueDegrees", planned.heading().degrees());
    values.put(
        "headingMagneticDegrees",
        planned.magnetic(planned.heading()).map(bearing -> bearing.degrees()).orElse(null));
    values.put(
        "variationDegreesEast",
        planned.variation().map(reading -> reading.variation().degreesEast()).orElse(null));
    values.put("departure", planned.departure().toString());
    values.put("arrival", planned.arrival().toString());
    values.put("speedMadeGoodKnots", planned.speedMadeGood().knots());
    values.put("greatestCrossTrackMetres", planned.greatestCrossTrack().metres());
    values.put("hours", each(planned.hours(), PlanJson::hour));
    return values;
  }

  private static Map<String, @Nullable Object> hour(PlannedHour hour) {
    Map<String, @Nullable Object> values = new LinkedHashMap<>();
    values.put("from", hour.span().from().toString());
    values.put("until", hour.span().until().toString());
    values.put("latitudeDegrees", hour.position().latitudeDegrees());
    values.put("longitudeDegrees", hour.position().longitudeDegrees());
    values.put("headingTrueDegrees", hour.heading().degrees());
    values.put("streamSetTrueDegrees", hour.stream().map(it -> it.set().degrees()).orElse(null));
    values.put("streamRateKnots", hour.stream().map(it -> it.rate().knots()).orElse(null));
    values.put("speedMadeGoodKnots", hour.speedMadeGood().knots());
    return values;
  }

  private static Map<String, Object> place(String name, Position position) {
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("name", name);
    values.put("latitudeDegrees", position.latitudeDegrees());
    values.put("longitudeDegrees", position.longitudeDegrees());
    return values;
  }

  private static Map<String, @Nullable Object> check(Verdict verdict) {
    Map<String, @Nullable Object> values = new LinkedHashMap<>();
    values.put("answer", verdict.answer().name());
    values.put("reason", verdict.reason());
    values.put("when", verdict.when().map(Instant::toString).orElse(null));
    values.put("latitudeDegrees", verdict.where().map(Position::latitudeDegrees).orElse(null));
    values.put("longitudeDegrees", verdict.where().map(Position::longitudeDegrees).orElse(null));
    return values;
  }

  private static Map<String, @Nullable Object> note(Note note) {
    Map<String, @Nullable Object> values = new LinkedHashMap<>();
    values.put("code", note.code());
    values.put("severity", note.severity().name());
    values.put("text", note.text());
    return values;
  }
}
