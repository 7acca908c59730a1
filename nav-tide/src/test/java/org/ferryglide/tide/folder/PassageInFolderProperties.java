package org.ferryglide.tide.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.passage.Danger;
import org.ferryglide.nav.passage.Landing;
import org.ferryglide.nav.passage.Lane;
import org.ferryglide.nav.passage.LegOptions;
import org.ferryglide.nav.passage.Party;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.PassageBuilder;
import org.ferryglide.nav.passage.PassageLimits;
import org.ferryglide.nav.passage.Stop;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.passage.WayPoint;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.reckon.ErrorSource;
import org.ferryglide.nav.reckon.Spread;
import org.ferryglide.nav.sky.SunThreshold;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.nav.steer.WindResponse;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.testing.Seeds;
import org.ferryglide.tide.stream.Shoreline;
import org.ferryglide.tide.stream.StationField;

/** A passage built in code goes into a folder and comes back as the same passage and plan. */
class PassageInFolderProperties {
  private static final String PORT = "Orrin Quay";
  private static final Instant START = Instant.parse("2026-06-14T10:40:00Z");

  private final PassageFolder folder = PassageFolder.of(Folders.sound());

  /** Draws parts of passages in full precision, from the least figures on. */
  private final class Draw {
    final Random random;

    Draw(long seed) {
      random = new Random(seed);
    }

    boolean is(int oneIn) {
      return random.nextInt(oneIn) == 0;
    }

    double in(double from, double until) {
      double drawn = from + (until - from) * random.nextDouble();
      return switch (random.nextInt(12)) {
        case 0 -> Math.nextUp(from);
        case 1 -> from + (until - from) * 1e-12 * random.nextDouble();
        case 2 -> Math.rint(drawn);
        default -> drawn;
      };
    }

    Distance metres(double from, double until) {
      return Distance.ofMetres(in(from, until));
    }

    Speed knots(double from, double until) {
      return Speed.ofKnots(in(from, until));
    }

    Duration minutes(int from, int until) {
      return Duration.ofMinutes(from + random.nextInt(until - from));
    }

    Position near(Position place, double miles) {
      return Position.ofDegrees(
          place.latitudeDegrees() + in(-miles, miles) / 60.0,
          place.longitudeDegrees() + in(-miles, miles) / 40.0);
    }

    TrueBearing direction() {
      return TrueBearing.ofDegrees(in(0, 360));
    }

    Landing landing() {
      double lowest = in(-1.0, 1.0);
      Landing landing =
          is(3)
              ? Landing.atAnyLevel()
              : Landing.between(PORT, Distance.ofMetres(lowest), metres(4.0, 6.0));
      return is(2) ? landing.withOpenSector(direction(), direction()) : landing;
    }

    Stop stop() {
      return switch (random.nextInt(4)) {
        case 0 -> Stop.until(START.plusSeconds(60L * random.nextInt(240)));
        case 1 ->
            is(2)
                ? Stop.untilLevelAtLeast(PORT, Distance.ofMetres(in(0.7, 2.0)))
                : Stop.untilLevelAtMost(PORT, Distance.ofMetres(in(3.0, 5.0)));
        case 2 -> Stop.untilStreamAtMost(knots(1.0, 2.0));
        default -> Stop.ashore(minutes(5, 60));
      };
    }

    WayPoint place(String name, Position position, boolean mayStop) {
      WayPoint place = WayPoint.of(name, position);
      place = is(2) ? place.withToSee("a \"white\" house, low") : place;
      if (is(2)) {
        place = is(2) ? place.withMark(metres(1, 50), PORT) : place.withMark(metres(1, 50));
      }
      place = is(2) ? place.withLanding(landing()) : place;
      return mayStop && is(3) ? place.withStop(stop()) : place;
    }

    LegOptions leg() {
      Strategy[] ways = {
        Strategy.constantHeading(),
        Strategy.trackHeld(),
        Strategy.bowOnTarget(),
        Strategy.newHeadingEvery(minutes(5, 90)),
        Strategy.newHeadingsAt(
            List.of(START.plusSeconds(60), START.plusSeconds(61 + random.nextInt(9000))))
      };
      LegOptions leg = LegOptions.usual();
      leg = is(2) ? leg.withStrategy(ways[random.nextInt(ways.length)]) : leg;
      leg = is(3) ? leg.withSpeed(knots(3.0, 5.0)) : leg;
      leg = is(3) ? leg.withoutRests() : leg;
      leg = is(3) ? leg.alongGeodesic() : leg;
      if (is(3)) {
        Velocity steady = Velocity.ofSetAndRate(direction(), knots(0.1, 1.0));
        leg = leg.withStream(is(2) ? folder.streams().get(0) : StreamField.steady(steady));
      }
      return leg;
    }

    Party party() {
      Craft craft = Craft.ofSpeed(knots(3.2, 4.5)).withRestEachHour(minutes(0, 15));
      if (is(2)) {
        craft = craft.withWindResponse(WindResponse.none().withDrift(in(0.0, 0.05)));
      }
      Party party = Party.of(craft).withLaunching(minutes(0, 20)).withLanding(minutes(0, 20));
      party = is(2) ? party.withSlowerSpeed(craft.speed().times(in(0.6, 1.0))) : party;
      return is(2) ? party.withEyeHeight(metres(0.5, 2.0)) : party;
    }

    PassageLimits limits() {
      PassageLimits limits = PassageLimits.none().withRateError(random.nextInt(101) / 100.0);
      limits = is(2) ? limits.withStream(knots(0.5, 2), knots(2, 4)) : limits;
      limits = is(2) ? limits.withWind(knots(5, 10), knots(10, 20)) : limits;
      limits =
          is(2) ? limits.withWindAgainstStream(knots(5, 10), knots(10, 20), knots(0, 1)) : limits;
      limits = is(2) ? limits.withReserve(knots(1, 2), knots(0, 1)) : limits;
      limits = is(2) ? limits.withOnshoreWind(knots(5, 10), knots(10, 20)) : limits;
      limits = is(2) ? limits.withDaylight(minutes(60, 200), minutes(0, 60)) : limits;
      limits = is(2) ? limits.withTimeAfloat(minutes(60, 200), minutes(200, 900)) : limits;
      limits = is(2) ? limits.withTimeToLanding(minutes(10, 60), minutes(60, 90)) : limits;
      limits = is(2) ? limits.withLaneAngle(in(0, 40), in(40, 90)) : limits;
      limits = is(4) ? limits.withLight(SunThreshold.CIVIL_TWILIGHT) : limits;
      return is(4) ? limits.withAnyLight() : limits;
    }

    Danger danger(String name, Position near) {
      List<Position> corners = new ArrayList<>();
      for (int i = 0; i < 3; i++) {
        corners.add(near(near, 0.3));
      }
      Danger danger =
          is(2)
              ? Danger.point(name, corners.get(0), metres(0, 300))
              : Danger.area(name, corners, metres(0, 300));
      if (is(3)) {
        danger =
            danger.closedDuring(
                List.of(
                    TimeSpan.of(START.plusSeconds(random.nextInt(9000)), minutes(1, 90)),
                    TimeSpan.of(START.plusSeconds(random.nextInt(9000)), minutes(1, 90))));
      }
      danger = is(3) ? danger.closedAboveStream(knots(0, 3)) : danger;
      danger = is(3) ? danger.closedAboveLevel(PORT, metres(2, 5)) : danger;
      danger = is(3) ? danger.closedBelowLevel(PORT, metres(0, 2)) : danger;
      return is(3) ? danger.closedAboveWind(knots(5, 20)) : danger;
    }

    ForecastWind wind() throws IOException {
      StringBuilder rows = new StringBuilder("place,position,time,from_deg,speed_kn\n");
      for (String place : List.of("46°11.0'N 026°19.0'W", "46°14.0'N 026°10.0'W")) {
        for (int hour = 8; hour < 21; hour += 3) {
          rows.append(place).append(',').append(place).append(",2026-06-14T");
          rows.append(hour < 10 ? "0" : "").append(hour).append(":00Z,");
          rows.append(in(0, 360)).append(',').append(in(0.1, 20)).append('\n');
        }
      }
      return ForecastWind.read("wind", new StringReader(rows.toString()));
    }
  }

  private Passage drawn(Draw draw) throws IOException {
    Passage bare = folder.passage();
    ZoneId zone = draw.is(2) ? ZoneId.of("Atlantic/Azores") : folder.start().getOffset();
    List<WayPoint> places = bare.wayPoints();
    int count = 2 + draw.random.nextInt(3);
    PassageBuilder builder = Passage.builder("drawn, \"so\"", zone, draw.party());
    for (int i = 0; i < count; i++) {
      Position near = draw.near(places.get(i % 3).position(), 0.5);
      boolean ends = i == 0 || i + 1 == count;
      WayPoint place = draw.place("P" + i, near, !ends);
      if (i == 0) {
        builder.from(place);
      } else {
        builder.to(place, draw.leg());
      }
    }
    StationField stream = StationField.nearest(folder.stations(), folder.limits().reach());
    if (draw.is(2)) {
      List<List<Position>> shore =
          List.of(
              List.of(
                  Position.ofDegrees(draw.in(46.3, 46.4), -26.3),
                  Position.ofDegrees(draw.in(46.3, 46.4), -26.2)));
      builder.shores(shore);
      stream = stream.withShores(Shoreline.of(shore));
    }
    builder.stream(stream).limits(draw.limits()).variation(folder.rose());
    bare.levels().forEach(builder::level);
    if (draw.is(2)) {
      Position near = places.get(1).position();
      builder.dangers(List.of(draw.danger("Rock", near), draw.danger("Race, west", near)));
    }
    if (draw.is(2)) {
      List<Position> middle =
          List.of(draw.near(places.get(1).position(), 1), places.get(2).position());
      builder.lanes(List.of(Lane.along("Fairway", middle, draw.metres(50, 500))));
    }
    if (draw.is(2)) {
      WayPoint refuge = draw.place("Refuge", draw.near(places.get(1).position(), 2), false);
      builder.refuge(refuge.withLanding(draw.landing()));
    }
    if (draw.is(2)) {
      builder.wind(draw.wind());
    }
    if (draw.is(2)) {
      builder.visibility(draw.metres(500, 9000)).swellFrom(draw.direction());
    }
    if (draw.is(2)) {
      Spread steered = Spread.of(draw.in(0, 3), draw.in(0, 3));
      builder.errors(ErrorModel.usual().with(ErrorSource.COMPASS, steered));
    }
    return builder.longestDuration(draw.minutes(600, 1400)).build();
  }

  @Property(seed = Seeds.SEED, tries = 60 * Seeds.MORE_IN_THE_SOAK)
  void thePlanOfAFolderIsThePlanBuiltInCode(@ForAll long seed) throws IOException {
    Passage passage = drawn(new Draw(seed));
    PassageFolder made = folder.withPassage(passage);
    Path target = Files.createTempDirectory("passage");
    try {
      made.write(target);
      PassageFolder back = PassageFolder.read(target);
      assertEquals(made, back);
      // what a folder doubts of its tables and places is told by its passage alone
      PassageBuilder doubted = passage.toBuilder();
      back.notes().forEach(doubted::note);
      assertEquals(
          TimedPlan.of(doubted.build(), START),
          TimedPlan.of(back.passage(), START),
          made::toString);
      assertEquals(back, back.withPassage(back.passage()));
    } finally {
      for (Map.Entry<String, String> file : made.texts().entrySet()) {
        Files.delete(target.resolve(file.getKey()));
      }
      Files.delete(target.resolve("tides"));
      Files.delete(target);
    }
  }
}
