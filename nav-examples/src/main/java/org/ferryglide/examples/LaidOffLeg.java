package org.ferryglide.examples;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.magnetic.MagneticModel;
import org.ferryglide.nav.magnetic.MagneticSnapshot;
import org.ferryglide.nav.magnetic.RoseComparison;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.tide.stream.HourlyStream;
import org.ferryglide.tide.stream.StreamTable;

/**
 * One leg of a passage, from the line on the chart to the heading on deck.
 *
 * @param from where it starts
 * @param to where it ends
 * @param leg the rhumb line between them
 * @param roseVariation variation by the printed rose, carried to the date
 * @param modelVariation variation by the field model at the middle of the leg
 * @param modelName the model's name
 * @param stream the nearest stream table, bound to the tides of its port
 * @param streamDistance from the middle of the leg to that table's position
 * @param departure when it is started; empty if the leg before is not possible
 * @param oneHeading the course to steer with one heading held; empty without departure
 * @param trackHeld the courses to steer with the track held; empty without departure
 * @param notes what the reader should know
 */
record LaidOffLeg(
    Scenario.WayPoint from,
    Scenario.WayPoint to,
    RhumbLeg leg,
    Variation roseVariation,
    Variation modelVariation,
    String modelName,
    HourlyStream stream,
    Distance streamDistance,
    Optional<Instant> departure,
    Optional<Outcome<SteeredLeg, NotPossible>> oneHeading,
    Optional<Outcome<SteeredLeg, NotPossible>> trackHeld,
    List<Note> notes) {

  /** Lays off every leg; each starts when the one before arrives with one heading held. */
  static List<LaidOffLeg> all(Scenario scenario) {
    List<LaidOffLeg> legs = new ArrayList<>();
    Optional<Instant> departure = Optional.of(scenario.start().toInstant());
    for (int i = 0; i + 1 < scenario.wayPoints().size(); i++) {
      LaidOffLeg leg =
          layOff(scenario, scenario.wayPoints().get(i), scenario.wayPoints().get(i + 1), departure);
      legs.add(leg);
      departure = leg.arrival();
    }
    return legs;
  }

  private static LaidOffLeg layOff(
      Scenario scenario,
      Scenario.WayPoint from,
      Scenario.WayPoint to,
      Optional<Instant> departure) {
    final RhumbLeg leg = RhumbLeg.between(from.position(), to.position());
    final LocalDate date = scenario.start().toLocalDate();
    final Position middle = leg.pointAt(leg.length().times(0.5));
    final MagneticSnapshot model = MagneticModel.inForceOn(date).at(date);
    final StreamTable table = nearest(scenario.streams(), middle);
    final HourlyStream stream = bound(table, scenario.tides());
    List<Note> notes = new ArrayList<>(scenario.rose().notesAt(date, middle));
    notes.addAll(model.notesAt(middle));
    RoseComparison.of(scenario.rose(), model.model(), middle, date)
        .ifPresent(comparison -> notes.addAll(comparison.notes()));
    CourseToSteer solver = CourseToSteer.with(Craft.ofSpeed(scenario.speed()), stream);
    Optional<Outcome<SteeredLeg, NotPossible>> oneHeading =
        departure.map(start -> solver.solve(leg, start));
    Optional<Outcome<SteeredLeg, NotPossible>> trackHeld =
        departure.map(start -> solver.withStrategy(Strategy.trackHeld()).solve(leg, start));
    oneHeading.flatMap(Outcome::solved).ifPresent(solved -> notes.addAll(solved.notes()));
    trackHeld.flatMap(Outcome::solved).ifPresent(solved -> notes.addAll(solved.notes()));
    departure.ifPresent(start -> notes.addAll(stream.explain(start).notes()));
    oneHeading
        .flatMap(Outcome::solved)
        .ifPresent(solved -> notes.addAll(stream.explain(solved.arrival()).notes()));
    return new LaidOffLeg(
        from,
        to,
        leg,
        scenario.rose().variationAt(date),
        model.variation(middle),
        model.model().name(),
        stream,
        between(middle, table.position()),
        departure,
        oneHeading,
        trackHeld,
        List.copyOf(notes));
  }

  private static Distance between(Position one, Position other) {
    return GeodesicLeg.between(one, other).length();
  }

  private static StreamTable nearest(List<StreamTable> tables, Position place) {
    return tables.stream()
        .min(Comparator.comparing(table -> between(place, table.position())))
        .orElseThrow();
  }

  private static HourlyStream bound(
      StreamTable table, Map<String, org.ferryglide.tide.height.TideTable> tides) {
    String port = table.standardPort().name();
    return table.boundTo(
        Optional.ofNullable(tides.get(port))
            .orElseThrow(() -> new IllegalStateException("no tide table of " + port)));
  }

  /**
   * When the leg ends with one heading held, or else with the track held; empty if it never does.
   */
  Optional<Instant> arrival() {
    return oneHeading
        .flatMap(Outcome::solved)
        .or(() -> trackHeld.flatMap(Outcome::solved))
        .map(SteeredLeg::arrival);
  }
}
