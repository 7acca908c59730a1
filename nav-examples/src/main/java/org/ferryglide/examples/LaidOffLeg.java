package org.ferryglide.examples;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.magnetic.MagneticModel;
import org.ferryglide.nav.magnetic.RoseComparison;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.passage.PassageLeg;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.Reason;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.tide.folder.PassageFolder;

/**
 * One leg of a passage, from the line on the chart to the heading on deck.
 *
 * @param number its number, the first is 1
 * @param from where it starts
 * @param to where it ends
 * @param leg the rhumb line between them
 * @param roseVariation variation by the printed rose, carried to the date
 * @param modelVariation variation by the field model at the middle of the leg; empty where the
 *     field is too weak for a compass
 * @param modelName the model's name
 * @param departure when it is started; empty if the leg before is not possible
 * @param constantHeading the course to steer with a constant heading; empty without departure
 * @param trackHeld the courses to steer with the track held; empty without departure
 * @param asChosen the leg by a strategy of its own; empty where that is one of the two before
 * @param solver how the leg is steered
 * @param notes what the reader should know, of this leg alone or of all
 */
record LaidOffLeg(
    int number,
    PassageFolder.WayPoint from,
    PassageFolder.WayPoint to,
    RhumbLeg leg,
    Variation roseVariation,
    Optional<Variation> modelVariation,
    String modelName,
    Optional<Instant> departure,
    Optional<Outcome<SteeredLeg, NotPossible>> constantHeading,
    Optional<Outcome<SteeredLeg, NotPossible>> trackHeld,
    Optional<Outcome<SteeredLeg, NotPossible>> asChosen,
    CourseToSteer solver,
    List<Note> notes) {

  static LaidOffLeg of(
      PassageFolder folder, PassageLeg own, CourseToSteer solver, Optional<Instant> departure) {
    int number = own.number();
    PassageFolder.WayPoint from = folder.wayPoints().get(number - 1);
    PassageFolder.WayPoint to = folder.wayPoints().get(number);
    RhumbLeg leg = RhumbLeg.between(from.position(), to.position());
    LocalDate date = folder.start().toLocalDate();
    Position middle = leg.pointAt(leg.length().times(0.5));
    MagneticModel model = MagneticModel.inForceOn(date);
    Optional<RoseComparison> comparison = RoseComparison.of(folder.rose(), model, middle, date);
    Optional<Outcome<SteeredLeg, NotPossible>> constantHeading =
        departure.map(
            start -> solver.withStrategy(Strategy.constantHeading()).solve(own.leg(), start));
    Optional<Outcome<SteeredLeg, NotPossible>> trackHeld =
        departure.map(start -> solver.withStrategy(Strategy.trackHeld()).solve(own.leg(), start));
    Optional<Outcome<SteeredLeg, NotPossible>> asChosen =
        solver.strategy().equals(Strategy.constantHeading())
                || solver.strategy().equals(Strategy.trackHeld())
            ? Optional.empty()
            : departure.map(start -> solver.solve(own.leg(), start));

    List<Note> notes = new ArrayList<>();
    String told = Integer.toString(number);
    folder.notes().stream().filter(note -> told.equals(note.data().get("leg"))).forEach(notes::add);
    notes.addAll(comparison.map(RoseComparison::notes).orElse(model.at(date).notesAt(middle)));
    constantHeading.flatMap(Outcome::solved).ifPresent(solved -> notes.addAll(solved.notes()));
    trackHeld.flatMap(Outcome::solved).ifPresent(solved -> notes.addAll(solved.notes()));
    asChosen.flatMap(Outcome::solved).ifPresent(solved -> notes.addAll(solved.notes()));
    departure.ifPresent(
        start -> notes.addAll(streamNotes(solver.stream(), from.position(), start)));
    constantHeading
        .flatMap(Outcome::solved)
        .ifPresent(
            solved -> notes.addAll(streamNotes(solver.stream(), to.position(), solved.arrival())));
    return new LaidOffLeg(
        number,
        from,
        to,
        leg,
        folder.rose().variationAt(date),
        comparison.map(RoseComparison::modelVariation),
        model.name(),
        departure,
        constantHeading,
        trackHeld,
        asChosen,
        solver,
        notes.stream().distinct().toList());
  }

  private static List<Note> streamNotes(StreamField stream, Position place, Instant time) {
    return stream.explain(place, time).notes().stream()
        // the leg itself tells its stations, and where it has no answer
        .filter(note -> !note.code().equals("stream.nearest-station"))
        .filter(note -> !note.code().equals("stream.no-data"))
        .toList();
  }

  /**
   * When the leg ends as its passage steers it, or else with a constant heading or with the track
   * held; empty if it never does.
   */
  Optional<Instant> arrival() {
    return solved().map(SteeredLeg::arrival);
  }

  /** The leg as chosen, or else by the first strategy that does; empty if it is not possible. */
  Optional<SteeredLeg> solved() {
    boolean held = solver.strategy().equals(Strategy.trackHeld());
    return asChosen
        .flatMap(Outcome::solved)
        .or(() -> held ? trackHeld.flatMap(Outcome::solved) : Optional.empty())
        .or(() -> constantHeading.flatMap(Outcome::solved))
        .or(() -> trackHeld.flatMap(Outcome::solved));
  }

  /** Whether the leg has no answer because the tables do not cover it, by place or by time. */
  boolean isWithoutData() {
    return solved().isEmpty()
        && constantHeading.flatMap(Outcome::why).filter(LaidOffLeg::isNoData).isPresent();
  }

  static boolean isNoData(NotPossible why) {
    return why.reason() == Reason.NO_DATA;
  }

  /** Whether the leg has an answer, and the answer is no. */
  boolean isNotPossible() {
    return departure.isPresent() && solved().isEmpty() && !isWithoutData();
  }
}
