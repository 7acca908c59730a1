package org.ferryglide.nav.passage;

import java.io.Serializable;
import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.DeviationTable;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.magnetic.VariationSource;
import org.ferryglide.nav.measure.Distance;
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
 * <p>What is left out is not made up: without a stream nothing can be steered, without dangers
 * "dangers: not checked" stands at the top of whatever is printed.
 */
public final class Passage implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final ZoneId zone;
  private final Party party;
  private final List<WayPoint> wayPoints;
  private final List<PassageLeg> legs;
  private final StreamField stream;
  private final @Nullable WindField wind;
  private final @Nullable TrueBearing swellFrom;
  private final @Nullable Distance visibility;
  private final Map<String, WaterLevel> levels;
  private final @Nullable VariationSource variation;
  private final @Nullable DeviationTable deviation;
  private final @Nullable List<Danger> dangers;
  private final @Nullable List<Lane> lanes;
  private final @Nullable List<List<Position>> shores;
  private final List<WayPoint> refuges;
  private final PassageLimits limits;
  private final ErrorModel errors;
  private final List<Condition> conditions;
  private final Duration longestDuration;
  private final List<Note> notes;
  private final DaylightBook daylights;

  /** Worked out when first asked for: which of two threads does so makes no difference. */
  private transient volatile @Nullable Checks checks;

  private Passage(Builder from) {
    daylights = from.daylights;
    name = from.name;
    zone = from.zone;
    party = from.party;
    wayPoints = copy(from.wayPoints);
    legs = copy(from.legs);
    stream = Objects.requireNonNull(from.stream, "stream");
    wind = from.wind;
    swellFrom = from.swellFrom;
    visibility = from.visibility;
    levels = Collections.unmodifiableMap(new LinkedHashMap<>(from.levels));
    variation = from.variation;
    deviation = from.deviation;
    dangers = from.dangers == null ? null : copy(from.dangers);
    lanes = from.lanes == null ? null : copy(from.lanes);
    shores = from.shores == null ? null : copy(from.shores);
    refuges = copy(from.refuges);
    limits = from.limits;
    errors = from.errors;
    conditions = copy(from.conditions);
    longestDuration = from.longestDuration;
    notes = copy(from.notes);
  }

  private static <T> List<T> copy(List<T> list) {
    return Collections.unmodifiableList(new ArrayList<>(list));
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
  public static Builder builder(String name, ZoneId zone, Party party) {
    return new Builder(name, zone, party);
  }

  /**
   * What it is called.
   *
   * @return the name
   */
  public String name() {
    return name;
  }

  /**
   * The zone of the party's clock.
   *
   * @return the zone
   */
  public ZoneId zone() {
    return zone;
  }

  /**
   * Who paddles it.
   *
   * @return the party
   */
  public Party party() {
    return party;
  }

  /**
   * The way points in order.
   *
   * @return at least two; unmodifiable
   */
  public List<WayPoint> wayPoints() {
    return wayPoints;
  }

  /**
   * The legs in order.
   *
   * @return one fewer than way points; unmodifiable
   */
  public List<PassageLeg> legs() {
    return legs;
  }

  /**
   * What the water does.
   *
   * @return the stream; legs may have their own
   */
  public StreamField stream() {
    return stream;
  }

  /**
   * What the wind does.
   *
   * @return the wind; empty if none was given, which is not a calm
   */
  public Optional<WindField> wind() {
    return Optional.ofNullable(wind);
  }

  /**
   * Where the swell comes from.
   *
   * @return its direction; empty if none was given
   */
  public Optional<TrueBearing> swellFrom() {
    return Optional.ofNullable(swellFrom);
  }

  /**
   * How far one can see.
   *
   * @return the visibility; empty if none was given
   */
  public Optional<Distance> visibility() {
    return Optional.ofNullable(visibility);
  }

  /**
   * The heights of the water by port.
   *
   * @return the levels by name, in the order they were given; unmodifiable
   */
  public Map<String, WaterLevel> levels() {
    return levels;
  }

  /** The level of a port that a part of this passage asks for; building it made sure of it. */
  WaterLevel level(String port) {
    return Objects.requireNonNull(levels.get(port), port);
  }

  /**
   * Where the variation comes from.
   *
   * @return a model or roses; empty if none was given
   */
  public Optional<VariationSource> variation() {
    return Optional.ofNullable(variation);
  }

  /**
   * The deviation of the compass on deck.
   *
   * @return the table; empty if none was given
   */
  public Optional<DeviationTable> deviation() {
    return Optional.ofNullable(deviation);
  }

  /**
   * What is to be kept away from.
   *
   * @return the dangers; empty if nobody looked for any, which is not the same as a list of none
   */
  public Optional<List<Danger>> dangers() {
    return Optional.ofNullable(dangers);
  }

  /**
   * The lanes and fairways.
   *
   * @return the lanes; empty if nobody looked for any
   */
  public Optional<List<Lane>> lanes() {
    return Optional.ofNullable(lanes);
  }

  /**
   * The lines of the shore.
   *
   * @return the lines; empty if none were given, so that nothing is known of land down wind
   */
  public Optional<List<List<Position>>> shores() {
    return Optional.ofNullable(shores);
  }

  /**
   * Landings that are not way points.
   *
   * @return the refuges; unmodifiable
   */
  public List<WayPoint> refuges() {
    return refuges;
  }

  /**
   * The limits the party has chosen.
   *
   * @return the limits
   */
  public PassageLimits limits() {
    return limits;
  }

  /**
   * How large the errors of the passage are.
   *
   * @return the model
   */
  public ErrorModel errors() {
    return errors;
  }

  /**
   * The conditions the program has added.
   *
   * @return the conditions; unmodifiable
   */
  public List<Condition> conditions() {
    return conditions;
  }

  /**
   * The same passage put together anew, to change a part of it.
   *
   * @return a builder that holds every part
   */
  public Builder toBuilder() {
    Builder builder = new Builder(name, zone, party);
    builder.daylights = daylights;
    builder.wayPoints.addAll(wayPoints);
    builder.legs.addAll(legs);
    builder.stream = stream;
    builder.wind = wind;
    builder.swellFrom = swellFrom;
    builder.visibility = visibility;
    builder.levels.putAll(levels);
    builder.variation = variation;
    builder.deviation = deviation;
    builder.dangers = dangers == null ? null : new ArrayList<>(dangers);
    builder.shores = shores;
    builder.lanes = lanes == null ? null : new ArrayList<>(lanes);
    builder.refuges.addAll(refuges);
    builder.limits = limits;
    builder.errors = errors;
    builder.conditions.addAll(conditions);
    builder.longestDuration = longestDuration;
    builder.notes.addAll(notes);
    return builder;
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
    return daylights;
  }

  /** The same passage with the party as slow as it may turn out. */
  Passage slower() {
    double share = party.slowerSpeed().metresPerSecond() / party.craft().speed().metresPerSecond();
    Builder builder = toBuilder();
    builder.party = party.slower();
    builder.legs.clear();
    for (PassageLeg leg : legs) {
      LegOptions options =
          leg.options()
              .speed()
              .map(speed -> leg.options().withSpeed(speed.times(share)))
              .orElse(leg.options());
      builder.legs.add(new PassageLeg(leg.number(), leg.from(), leg.to(), options));
    }
    return builder.build();
  }

  /**
   * How long a leg may take before it counts as not possible.
   *
   * @return the longest duration
   */
  public Duration longestDuration() {
    return longestDuration;
  }

  /**
   * What was doubted about the tables and places the passage was built from.
   *
   * @return the notes, worst first as they were given; unmodifiable
   */
  public List<Note> notes() {
    return notes;
  }

  @Override
  public String toString() {
    return name + ", " + legs.size() + (legs.size() == 1 ? " leg" : " legs");
  }

  /**
   * Puts a passage together. Not safe for use by several threads.
   *
   * <pre>{@code
   * Passage passage = Passage.builder(name, zone, party).from(a).to(b).stream(stream).build();
   * }</pre>
   */
  public static final class Builder {
    private final String name;
    private final ZoneId zone;
    private Party party;
    private DaylightBook daylights = new DaylightBook();
    private final List<WayPoint> wayPoints = new ArrayList<>();
    private final List<PassageLeg> legs = new ArrayList<>();
    private final Map<String, WaterLevel> levels = new LinkedHashMap<>();
    private final List<WayPoint> refuges = new ArrayList<>();
    private final List<Note> notes = new ArrayList<>();
    private @Nullable StreamField stream;
    private @Nullable WindField wind;
    private @Nullable TrueBearing swellFrom;
    private @Nullable Distance visibility;
    private @Nullable VariationSource variation;
    private @Nullable DeviationTable deviation;
    private @Nullable List<Danger> dangers;
    private @Nullable List<Lane> lanes;
    private @Nullable List<List<Position>> shores;
    private PassageLimits limits = PassageLimits.none();
    private ErrorModel errors = ErrorModel.usual();
    private final List<Condition> conditions = new ArrayList<>();
    private Duration longestDuration = CourseToSteer.USUAL_LONGEST_DURATION;

    private Builder(String name, ZoneId zone, Party party) {
      this.name = Names.checked(name, "name of a passage");
      this.zone = Objects.requireNonNull(zone, "zone");
      this.party = Objects.requireNonNull(party, "party");
    }

    /**
     * Where the passage begins.
     *
     * @param start the first way point
     * @return this builder
     * @throws IllegalStateException if there is one already
     */
    public Builder from(WayPoint start) {
      if (!wayPoints.isEmpty()) {
        throw new IllegalStateException("the passage begins at " + wayPoints.get(0) + " already");
      }
      wayPoints.add(Objects.requireNonNull(start, "start"));
      return this;
    }

    /**
     * A leg to another way point, paddled as usual.
     *
     * @param next the way point
     * @return this builder
     */
    public Builder to(WayPoint next) {
      return to(next, LegOptions.usual());
    }

    /**
     * A leg to another way point.
     *
     * @param next the way point
     * @param options how the leg is paddled
     * @return this builder
     * @throws IllegalStateException if the passage has no beginning yet
     * @throws IllegalArgumentException if a way point of that name is there already at another
     *     place; a passage may come back to the same place
     */
    public Builder to(WayPoint next, LegOptions options) {
      if (wayPoints.isEmpty()) {
        throw new IllegalStateException("a passage begins with from(…)");
      }
      for (WayPoint known : wayPoints) {
        if (known.name().equals(next.name()) && !known.position().equals(next.position())) {
          throw new IllegalArgumentException(
              "way point "
                  + next.name()
                  + " must be at one place, but was at "
                  + known.position()
                  + " and at "
                  + next.position());
        }
      }
      Objects.requireNonNull(options, "options");
      WayPoint last = wayPoints.get(wayPoints.size() - 1);
      legs.add(new PassageLeg(legs.size() + 1, last, next, options));
      wayPoints.add(next);
      return this;
    }

    /** Remembers daylight together with other passages. */
    Builder daylights(DaylightBook daylights) {
      this.daylights = daylights;
      return this;
    }

    /**
     * Another party than the builder was begun with.
     *
     * @param party who paddles it
     * @return this builder
     */
    public Builder party(Party party) {
      this.party = Objects.requireNonNull(party, "party");
      return this;
    }

    /**
     * What the water does.
     *
     * @param stream the stream
     * @return this builder
     */
    public Builder stream(StreamField stream) {
      this.stream = Objects.requireNonNull(stream, "stream");
      return this;
    }

    /**
     * What the wind does.
     *
     * @param wind the wind
     * @return this builder
     */
    public Builder wind(WindField wind) {
      this.wind = Objects.requireNonNull(wind, "wind");
      return this;
    }

    /**
     * Where the swell comes from.
     *
     * @param swellFrom its direction
     * @return this builder
     */
    public Builder swellFrom(TrueBearing swellFrom) {
      this.swellFrom = Objects.requireNonNull(swellFrom, "swellFrom");
      return this;
    }

    /**
     * How far one can see.
     *
     * @param visibility the visibility, above zero
     * @return this builder
     * @throws IllegalArgumentException if the visibility is not above zero
     */
    public Builder visibility(Distance visibility) {
      Arguments.positive(visibility.metres(), "visibility", "metres");
      this.visibility = visibility;
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
    public Builder level(String port, WaterLevel level) {
      if (levels.put(Names.checked(port, "name of a port"), Objects.requireNonNull(level, "level"))
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
    public Builder variation(VariationSource variation) {
      this.variation = Objects.requireNonNull(variation, "variation");
      return this;
    }

    /**
     * The deviation of the compass on deck.
     *
     * @param deviation the table
     * @return this builder
     */
    public Builder deviation(DeviationTable deviation) {
      this.deviation = Objects.requireNonNull(deviation, "deviation");
      return this;
    }

    /**
     * All that is to be kept away from, as far as the party has looked. An empty list says that it
     * has looked and found none.
     *
     * @param dangers the dangers
     * @return this builder
     */
    public Builder dangers(List<Danger> dangers) {
      this.dangers = List.copyOf(dangers);
      return this;
    }

    /**
     * All lanes and fairways, as far as the party has looked. An empty list says that there are
     * none.
     *
     * @param lanes the lanes
     * @return this builder
     */
    public Builder lanes(List<Lane> lanes) {
      this.lanes = List.copyOf(lanes);
      return this;
    }

    /**
     * The shore, as far as the party has drawn it, to tell where there is no land down wind.
     *
     * @param shores lines of at least two points each, within 60 NM of each other
     * @return this builder
     * @throws IllegalArgumentException if there is no line, a line has fewer than two points, or
     *     they lie too far apart
     */
    public Builder shores(List<List<Position>> shores) {
      if (shores.isEmpty()) {
        throw new IllegalArgumentException("shores must have at least 1 line, but had none");
      }
      List<List<Position>> lines = new ArrayList<>();
      for (List<Position> line : shores) {
        if (line.size() < 2) {
          throw new IllegalArgumentException(
              "line of a shore must have at least 2 points, but had " + line.size());
        }
        Outline.line(line, "a shore");
        lines.add(Collections.unmodifiableList(new ArrayList<>(line)));
      }
      this.shores = Collections.unmodifiableList(lines);
      return this;
    }

    /**
     * A landing beside the way.
     *
     * @param refuge a way point with a landing
     * @return this builder
     * @throws IllegalArgumentException if it has no landing
     */
    public Builder refuge(WayPoint refuge) {
      if (refuge.landing().isPresent()) {
        refuges.add(refuge);
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
    public Builder limits(PassageLimits limits) {
      this.limits = Objects.requireNonNull(limits, "limits");
      return this;
    }

    /**
     * How large the errors of the passage are.
     *
     * @param errors the model; {@link ErrorModel#usual} unless told
     * @return this builder
     */
    public Builder errors(ErrorModel errors) {
      this.errors = Objects.requireNonNull(errors, "errors");
      return this;
    }

    /**
     * A condition of the program's own, checked with the others.
     *
     * @param condition the condition
     * @return this builder
     */
    public Builder condition(Condition condition) {
      conditions.add(Objects.requireNonNull(condition, "condition"));
      return this;
    }

    /**
     * How long a leg or a wait may take before it counts as not possible.
     *
     * @param longestDuration above zero, at most 60 days; a day unless told
     * @return this builder
     */
    public Builder longestDuration(Duration longestDuration) {
      if (longestDuration.isNegative()
          || longestDuration.isZero()
          || longestDuration.compareTo(Duration.ofDays(60)) > 0) {
        throw new IllegalArgumentException(
            "longest duration must be above PT0S and at most PT1440H, but was " + longestDuration);
      }
      this.longestDuration = longestDuration;
      return this;
    }

    /**
     * A doubt about what the passage is built from, to be printed with it.
     *
     * @param note the doubt
     * @return this builder
     */
    public Builder note(Note note) {
      notes.add(Objects.requireNonNull(note, "note"));
      return this;
    }

    /**
     * Builds the passage.
     *
     * @return the passage
     * @throws IllegalStateException if it has no leg or no stream, or a landing, stop or danger
     *     asks for a port that was not given
     */
    public Passage build() {
      if (legs.isEmpty()) {
        throw new IllegalStateException("a passage needs at least one leg");
      }
      if (stream == null) {
        throw new IllegalStateException(
            "a passage needs a stream; StreamField.slack() says that there is none");
      }
      for (String port : Ports.askedFor(wayPoints, refuges, dangers)) {
        if (!levels.containsKey(port)) {
          throw new IllegalStateException(
              "port "
                  + port
                  + " is asked for, but its level was not given; known are "
                  + levels.keySet());
        }
      }
      return new Passage(this);
    }
  }
}
