package org.ferryglide.nav.passage;

import java.io.Serializable;
import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.bearing.DeviationTable;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.magnetic.VariationSource;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.timing.Condition;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WaterLevel;
import org.ferryglide.nav.water.WindField;
import org.jspecify.annotations.Nullable;

/**
 * A passage as the party means to paddle it: way points and legs, the party, what the water and the
 * wind do, what is to be kept away from, and the limits the party has chosen. It is built once and
 * never changed.
 *
 * <pre>{@code
 * Passage passage =
 *     Passage.builder("Marrow Slip to Dunlathe", ZoneId.of("Z"), party)
 *         .from(slip)
 *         .to(point)
 *         .to(island, LegOptions.usual().withStrategy(Strategy.trackHeld()))
 *         .stream(stations)
 *         .level("Orrin Quay", tide)
 *         .limits(PassageLimits.none().withStream(Speed.ofKnots(1.5), Speed.ofKnots(2.5)))
 *         .build();
 * }</pre>
 *
 * <p>Nothing is made up for what is left out: without a stream nothing can be steered, without
 * dangers "dangers: not checked" stands at the top of whatever is printed.
 */
public final class Passage implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Given given;

  /** Worked out when first asked for: which of two threads does so makes no difference. */
  private transient volatile @Nullable Checks checks;

  /** From what nobody changes any more. */
  Passage(Given frozen) {
    given = frozen;
  }

  /**
   * Begins to build a passage.
   *
   * @param name what it is called
   * @param zone the zone of the clock the party goes by
   * @param party who paddles it
   * @return a builder
   * @throws IllegalArgumentException if the name is empty or holds control characters
   */
  public static PassageBuilder builder(String name, ZoneId zone, Party party) {
    return new PassageBuilder(new Given(name, zone, party));
  }

  /**
   * What it is called.
   *
   * @return the name
   */
  public String name() {
    return given.name;
  }

  /**
   * The zone of the party's clock.
   *
   * @return the zone
   */
  public ZoneId zone() {
    return given.zone;
  }

  /**
   * Who paddles it.
   *
   * @return the party
   */
  public Party party() {
    return given.party;
  }

  /**
   * The way points in order.
   *
   * @return at least two; unmodifiable
   */
  public List<WayPoint> wayPoints() {
    return given.wayPoints;
  }

  /**
   * The legs in order.
   *
   * @return one fewer than way points; unmodifiable
   */
  public List<PassageLeg> legs() {
    return given.legs;
  }

  /**
   * What the water does.
   *
   * @return the stream; legs may have their own
   */
  public StreamField stream() {
    return Objects.requireNonNull(given.stream, "stream");
  }

  /**
   * What the wind does.
   *
   * @return the wind; empty if none was given, which is not a calm
   */
  public Optional<WindField> wind() {
    return Optional.ofNullable(given.wind);
  }

  /**
   * Where the swell comes from.
   *
   * @return its direction; empty if none was given
   */
  public Optional<TrueBearing> swellFrom() {
    return Optional.ofNullable(given.swellFrom);
  }

  /**
   * How far one can see.
   *
   * @return the visibility; empty if none was given
   */
  public Optional<Distance> visibility() {
    return Optional.ofNullable(given.visibility);
  }

  /**
   * The heights of the water by port.
   *
   * @return the levels by name, in the order they were given; unmodifiable
   */
  public Map<String, WaterLevel> levels() {
    return given.levels;
  }

  /** The level of a port that a part of this passage asks for; building it made sure of it. */
  WaterLevel level(String port) {
    return Objects.requireNonNull(given.levels.get(port), port);
  }

  /**
   * Where the variation comes from.
   *
   * @return a model or roses; empty if none was given
   */
  public Optional<VariationSource> variation() {
    return Optional.ofNullable(given.variation);
  }

  /**
   * The deviation of the compass on deck.
   *
   * @return the table; empty if none was given
   */
  public Optional<DeviationTable> deviation() {
    return Optional.ofNullable(given.deviation);
  }

  /**
   * What is to be kept away from.
   *
   * @return the dangers; empty if nobody looked for any, which is not the same as a list of none
   */
  public Optional<List<Danger>> dangers() {
    return Optional.ofNullable(given.dangers);
  }

  /**
   * The lanes and fairways.
   *
   * @return the lanes; empty if nobody looked for any
   */
  public Optional<List<Lane>> lanes() {
    return Optional.ofNullable(given.lanes);
  }

  /**
   * The lines of the shore.
   *
   * @return the lines; empty if none were given, so that nothing is known of land down wind
   */
  public Optional<List<List<Position>>> shores() {
    return Optional.ofNullable(given.shores);
  }

  /**
   * Landings that are not way points.
   *
   * @return the refuges; unmodifiable
   */
  public List<WayPoint> refuges() {
    return given.refuges;
  }

  /**
   * The limits the party has chosen.
   *
   * @return the limits
   */
  public PassageLimits limits() {
    return given.limits;
  }

  /**
   * How large the errors of the passage are.
   *
   * @return the model
   */
  public ErrorModel errors() {
    return given.errors;
  }

  /**
   * The conditions the program has added.
   *
   * @return the conditions; unmodifiable
   */
  public List<Condition> conditions() {
    return given.conditions;
  }

  /**
   * The same passage put together anew, to change a part of it.
   *
   * @return a builder that holds every part
   */
  public PassageBuilder toBuilder() {
    return new PassageBuilder(given.copy());
  }

  /**
   * The same passage with one of its legs paddled otherwise.
   *
   * <pre>{@code
   * LegOptions options = passage.legs().get(1).options().withStrategy(Strategy.quickest());
   * Passage quicker = passage.withLegOptions(2, options);
   * }</pre>
   *
   * @param leg number of the leg, the first is 1
   * @param options how it is paddled
   * @return the passage, in all else the same
   * @throws IllegalArgumentException if the passage has no such leg
   */
  public Passage withLegOptions(int leg, LegOptions options) {
    refuseUnlessLeg(leg);
    Objects.requireNonNull(options, "options");
    Given changed = given.copy();
    changed.legs.set(leg - 1, changed.legs.get(leg - 1).withOptions(options));
    return new Passage(changed.frozen());
  }

  /**
   * What steers a leg in every plan of this passage, to ask it for more than a plan tells: other
   * ways, lines of equal time, headings in steps. A quickest path is kept out of the dangers away
   * from the leg's ends that are closed always or at stated times, and of the limits of stream and
   * wind against stream; all else is for the checks of a plan. No limit refuses a leg here.
   *
   * <pre>{@code
   * CourseToSteer solver = passage.courseToSteer(2);
   * SteeredLeg second = solver.solve(passage.legs().get(1).leg(), departure).orElseThrow();
   * }</pre>
   *
   * @param leg number of the leg, the first is 1
   * @return the craft at the leg's speed and rests, in its stream and wind, by its strategy
   * @throws IllegalArgumentException if the passage has no such leg
   */
  public CourseToSteer courseToSteer(int leg) {
    refuseUnlessLeg(leg);
    return PassageSolver.withNotes(this).solver(leg - 1);
  }

  private void refuseUnlessLeg(int leg) {
    if (leg < 1 || leg > legs().size()) {
      throw new IllegalArgumentException(
          "leg must be in [1, " + legs().size() + "], but was " + leg);
    }
  }

  /** Everything it is held against. */
  Checks checks() {
    Checks known = checks;
    if (known == null) {
      known = Checks.of(this);
      checks = known;
    }
    return known;
  }

  /** The daylight of its places, shared with all passages made from it. */
  DaylightBook daylights() {
    return given.daylights;
  }

  /** The same passage with the party as slow as it may turn out. */
  Passage slower() {
    double share =
        party().slowerSpeed().metresPerSecond() / party().craft().speed().metresPerSecond();
    Given slow = given.copy();
    slow.party = party().slower();
    slow.legs.replaceAll(
        leg ->
            leg.withOptions(
                leg.options()
                    .speed()
                    .map(speed -> leg.options().withSpeed(speed.times(share)))
                    .orElse(leg.options())));
    return new Passage(slow.frozen());
  }

  /** Everything but the name, the way points, the party and the program's own conditions. */
  PassageBuilder around(String name, Party party) {
    return new PassageBuilder(given.around(name, party));
  }

  /** The same passage in one draw of the errors: leg by leg, and without conditions. */
  Passage drawn(StreamField stream, @Nullable WindField wind, List<PassageLeg> legs) {
    Given drawn = given.copy();
    drawn.stream = stream;
    drawn.wind = wind;
    drawn.legs = legs;
    return new Passage(drawn);
  }

  /**
   * How long a leg may take before it counts as not possible.
   *
   * @return the longest duration
   */
  public Duration longestDuration() {
    return given.longestDuration;
  }

  /**
   * What was doubted about the tables and places the passage was built from, and stops at its ends,
   * which are not made.
   *
   * @return the notes as they were given, then those of the stops; unmodifiable
   */
  public List<Note> notes() {
    List<Note> notes = new ArrayList<>(given.notes);
    List<WayPoint> places = wayPoints();
    WayPoint first = places.get(0);
    WayPoint last = places.get(places.size() - 1);
    if (first.equals(last)) { // one place with one stop, made where the passage only comes by
      notes.addAll(notMade("passage.stop-at-both", "begins and ends there", first, true));
    } else {
      notes.addAll(notMade("passage.stop-at-start", "begins there", first, false));
      notes.addAll(notMade("passage.stop-at-end", "ends there", last, false));
    }
    return Collections.unmodifiableList(notes);
  }

  private static List<Note> notMade(
      String code, String why, WayPoint place, boolean meantElsewhere) {
    if (!place.stop().isPresent()) {
      return List.of();
    }
    String words = "The stop at " + place.name() + " is not made: the passage " + why;
    Note note = meantElsewhere ? Note.information(code, words) : Note.caution(code, words);
    return List.of(note.with("place", place.name()));
  }

  /**
   * What is not checked, whatever the departure, because no limit or no data were given for it: the
   * line at the top of everything printed. Waves, traffic, cold and much else are never checked.
   *
   * @return for example {@code dangers}; unmodifiable
   */
  public List<Note> notChecked() {
    return checks().notChecked();
  }

  /** How fast the party means to paddle a leg between rests. */
  Speed speedOf(int leg) {
    return legs().get(leg).options().speed().orElse(party().craft().speed());
  }

  @Override
  public String toString() {
    return name() + ", " + legs().size() + (legs().size() == 1 ? " leg" : " legs");
  }
}
