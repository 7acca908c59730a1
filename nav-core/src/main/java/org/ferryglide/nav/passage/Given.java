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
 * Everything a passage is built from. A builder fills one in; a passage holds a frozen copy, whose
 * lists cannot be changed and whose fields nobody changes.
 */
final class Given implements Serializable {
  private static final long serialVersionUID = 1L;
  private static final ErrorModel USUAL_ERRORS = ErrorModel.usual();

  final String name;
  final ZoneId zone;
  Party party;
  DaylightBook daylights = new DaylightBook();
  List<WayPoint> wayPoints = new ArrayList<>();
  List<PassageLeg> legs = new ArrayList<>();
  Map<String, WaterLevel> levels = new LinkedHashMap<>();
  List<WayPoint> refuges = new ArrayList<>();
  List<Note> notes = new ArrayList<>();
  List<Condition> conditions = new ArrayList<>();
  @Nullable StreamField stream;
  @Nullable WindField wind;
  @Nullable TrueBearing swellFrom;
  @Nullable Distance visibility;
  @Nullable VariationSource variation;
  @Nullable DeviationTable deviation;
  @Nullable List<Danger> dangers;
  @Nullable List<Lane> lanes;
  @Nullable List<List<Position>> shores;
  PassageLimits limits = PassageLimits.none();
  ErrorModel errors = USUAL_ERRORS;
  Duration longestDuration = CourseToSteer.USUAL_LONGEST_DURATION;

  Given(String name, ZoneId zone, Party party) {
    this.name = Names.checked(name, "name of a passage");
    this.zone = Objects.requireNonNull(zone, "zone");
    this.party = Objects.requireNonNull(party, "party");
  }

  /** The same under another name, with another party, and without way points and legs. */
  Given around(String otherName, Party otherParty) {
    Given around = new Given(otherName, zone, otherParty);
    around.daylights = daylights;
    around.levels = new LinkedHashMap<>(levels);
    around.refuges = new ArrayList<>(refuges);
    around.notes = new ArrayList<>(notes);
    around.stream = stream;
    around.wind = wind;
    around.swellFrom = swellFrom;
    around.visibility = visibility;
    around.variation = variation;
    around.deviation = deviation;
    around.dangers = dangers;
    around.lanes = lanes;
    around.shores = shores;
    around.limits = limits;
    around.errors = errors;
    around.longestDuration = longestDuration;
    return around;
  }

  /** A copy to go on building from. */
  Given copy() {
    Given copy = around(name, party);
    copy.wayPoints = new ArrayList<>(wayPoints);
    copy.legs = new ArrayList<>(legs);
    copy.conditions = new ArrayList<>(conditions);
    return copy;
  }

  /** A copy for a passage. */
  Given frozen() {
    Given frozen = copy();
    frozen.wayPoints = Collections.unmodifiableList(frozen.wayPoints);
    frozen.legs = Collections.unmodifiableList(frozen.legs);
    frozen.levels = Collections.unmodifiableMap(frozen.levels);
    frozen.refuges = Collections.unmodifiableList(frozen.refuges);
    frozen.notes = Collections.unmodifiableList(frozen.notes);
    frozen.conditions = Collections.unmodifiableList(frozen.conditions);
    return frozen;
  }

  /** Adds a leg to another way point. */
  void add(WayPoint next, LegOptions options) {
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
  }

  /** Refuses what no passage can be built from. */
  void refuseUnlessWhole() {
    if (legs.isEmpty()) {
      throw new IllegalStateException("a passage needs at least one leg");
    }
    if (stream == null) {
      throw new IllegalStateException(
          "a passage needs a stream; StreamField.slack() says that there is none");
    }
    for (WayPoint refuge : refuges) {
      for (WayPoint place : wayPoints) {
        if (refuge.name().equals(place.name()) && !refuge.position().equals(place.position())) {
          throw new IllegalStateException(
              "refuge "
                  + refuge.name()
                  + " must not have the name of a way point at another place, but was at "
                  + refuge.position()
                  + " and the way point at "
                  + place.position());
        }
      }
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
  }
}
