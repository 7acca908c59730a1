package org.ferryglide.nav.passage;

import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.DeviationTable;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.magnetic.VariationSource;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.timing.Condition;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WaterLevel;
import org.ferryglide.nav.water.WindField;

/**
 * Puts a passage together. Not safe for use by several threads.
 *
 * <pre>{@code
 * Passage passage = Passage.builder(name, zone, party).from(a).to(b).stream(stream).build();
 * }</pre>
 */
public final class PassageBuilder {
  private final Given given;

  /** Holds every part of what was given already, to change a part of it. */
  PassageBuilder(Given given) {
    this.given = given;
  }

  /**
   * Where the passage begins.
   *
   * @param start the first way point
   * @return this builder
   * @throws IllegalStateException if there is one already
   */
  public PassageBuilder from(WayPoint start) {
    if (!given.wayPoints.isEmpty()) {
      throw new IllegalStateException(
          "the passage begins at " + given.wayPoints.get(0) + " already");
    }
    given.wayPoints.add(Objects.requireNonNull(start, "start"));
    return this;
  }

  /**
   * A leg to another way point, paddled as usual.
   *
   * @param next the way point
   * @return this builder
   */
  public PassageBuilder to(WayPoint next) {
    return to(next, LegOptions.usual());
  }

  /**
   * A leg to another way point.
   *
   * @param next the way point
   * @param options how the leg is paddled
   * @return this builder
   * @throws IllegalStateException if the passage has no beginning yet
   * @throws IllegalArgumentException if a way point of that name is there already at another place;
   *     a passage may come back to the same place
   */
  public PassageBuilder to(WayPoint next, LegOptions options) {
    given.add(next, options);
    return this;
  }

  /**
   * Another party than the builder was begun with.
   *
   * @param party who paddles it
   * @return this builder
   */
  public PassageBuilder party(Party party) {
    given.party = Objects.requireNonNull(party, "party");
    return this;
  }

  /**
   * What the water does.
   *
   * @param stream the stream
   * @return this builder
   */
  public PassageBuilder stream(StreamField stream) {
    given.stream = Objects.requireNonNull(stream, "stream");
    return this;
  }

  /**
   * What the wind does.
   *
   * @param wind the wind
   * @return this builder
   */
  public PassageBuilder wind(WindField wind) {
    given.wind = Objects.requireNonNull(wind, "wind");
    return this;
  }

  /**
   * Where the swell comes from.
   *
   * @param swellFrom its direction
   * @return this builder
   */
  public PassageBuilder swellFrom(TrueBearing swellFrom) {
    given.swellFrom = Objects.requireNonNull(swellFrom, "swellFrom");
    return this;
  }

  /**
   * How far one can see.
   *
   * @param visibility the visibility, above zero
   * @return this builder
   * @throws IllegalArgumentException if the visibility is not above zero
   */
  public PassageBuilder visibility(Distance visibility) {
    Arguments.positive(visibility.metres(), "visibility", "metres");
    given.visibility = visibility;
    return this;
  }

  /**
   * The height of the water at a port.
   *
   * @param port the name by which landings, stops and dangers ask for it
   * @param level the height
   * @return this builder
   * @throws IllegalArgumentException if the port is there already
   */
  public PassageBuilder level(String port, WaterLevel level) {
    if (given.levels.put(
            Names.checked(port, "name of a port"), Objects.requireNonNull(level, "level"))
        != null) {
      throw new IllegalArgumentException("port " + port + " is there already");
    }
    return this;
  }

  /**
   * Where the variation comes from.
   *
   * @param variation a model, a printed rose, or the roses of a chart
   * @return this builder
   */
  public PassageBuilder variation(VariationSource variation) {
    given.variation = Objects.requireNonNull(variation, "variation");
    return this;
  }

  /**
   * The deviation of the compass on deck.
   *
   * @param deviation the table
   * @return this builder
   */
  public PassageBuilder deviation(DeviationTable deviation) {
    given.deviation = Objects.requireNonNull(deviation, "deviation");
    return this;
  }

  /**
   * All that is to be kept away from, as far as the party has looked. An empty list says that it
   * has looked and found none.
   *
   * @param dangers the dangers, each with a name of its own
   * @return this builder
   * @throws IllegalArgumentException if two have the same name
   */
  public PassageBuilder dangers(List<Danger> dangers) {
    Set<String> names = new HashSet<>();
    for (Danger danger : dangers) {
      if (!names.add(danger.name())) {
        throw new IllegalArgumentException(
            "dangers must have names of their own, but two were called " + danger.name());
      }
    }
    given.dangers = List.copyOf(dangers);
    return this;
  }

  /**
   * All lanes and fairways, as far as the party has looked. An empty list says that there are none.
   *
   * @param lanes the lanes
   * @return this builder
   */
  public PassageBuilder lanes(List<Lane> lanes) {
    given.lanes = List.copyOf(lanes);
    return this;
  }

  /**
   * The shore, as far as the party has drawn it, to find where there is no land down wind, and
   * where a leg or the way to a landing crosses it farther than 50 m from its ends.
   *
   * <p>It does not change the stream: a stream of stations is cut off by a shore that was given to
   * it, as the folder's is.
   *
   * @param shores lines of at least two points each, within 60 NM of each other
   * @return this builder
   * @throws IllegalArgumentException if there is no line, a line has fewer than two points, or they
   *     lie too far apart
   */
  public PassageBuilder shores(List<List<Position>> shores) {
    given.shores = Outline.shores(shores);
    return this;
  }

  /**
   * A landing beside the way.
   *
   * @param refuge a way point with a landing
   * @return this builder
   * @throws IllegalArgumentException if it has no landing
   */
  public PassageBuilder refuge(WayPoint refuge) {
    if (refuge.landing().isPresent()) {
      given.refuges.add(refuge);
      return this;
    }
    throw new IllegalArgumentException("refuge " + refuge.name() + " must have a landing");
  }

  /**
   * The limits the party has chosen.
   *
   * @param limits the limits
   * @return this builder
   */
  public PassageBuilder limits(PassageLimits limits) {
    given.limits = Objects.requireNonNull(limits, "limits");
    return this;
  }

  /**
   * How large the errors of the passage are.
   *
   * @param errors the model; {@link ErrorModel#usual} by default
   * @return this builder
   */
  public PassageBuilder errors(ErrorModel errors) {
    given.errors = Objects.requireNonNull(errors, "errors");
    return this;
  }

  /**
   * A condition of the program's own, checked with the others.
   *
   * @param condition the condition
   * @return this builder
   */
  public PassageBuilder condition(Condition condition) {
    given.conditions.add(Objects.requireNonNull(condition, "condition"));
    return this;
  }

  /**
   * How long a leg or a wait may take before it counts as not possible.
   *
   * @param longestDuration above zero, at most 60 days; a day by default
   * @return this builder
   */
  public PassageBuilder longestDuration(Duration longestDuration) {
    if (longestDuration.isNegative()
        || longestDuration.isZero()
        || longestDuration.compareTo(Duration.ofDays(60)) > 0) {
      throw new IllegalArgumentException(
          "longest duration must be above PT0S and at most PT1440H, but was " + longestDuration);
    }
    given.longestDuration = longestDuration;
    return this;
  }

  /**
   * A doubt about what the passage is built from, to be printed with it.
   *
   * @param note the doubt
   * @return this builder
   */
  public PassageBuilder note(Note note) {
    given.notes.add(Objects.requireNonNull(note, "note"));
    return this;
  }

  /**
   * Builds the passage.
   *
   * @return the passage
   * @throws IllegalStateException if it has no leg or no stream, a landing, stop, mark or danger
   *     asks for a port that was not given, or a refuge has the name of a way point at another
   *     place
   */
  public Passage build() {
    given.refuseUnlessWhole();
    return new Passage(given.frozen());
  }
}
