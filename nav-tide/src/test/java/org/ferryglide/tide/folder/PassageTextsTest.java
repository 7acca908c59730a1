package org.ferryglide.tide.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.magnetic.CompassRose;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.passage.Landing;
import org.ferryglide.nav.passage.LegOptions;
import org.ferryglide.nav.passage.Party;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.PassageBuilder;
import org.ferryglide.nav.passage.PassageLimits;
import org.ferryglide.nav.passage.Stop;
import org.ferryglide.nav.passage.WayPoint;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.reckon.ErrorSource;
import org.ferryglide.nav.reckon.Spread;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.nav.steer.WindResponse;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WindField;
import org.ferryglide.tide.stream.HourlyStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the files of a folder tell of a passage, and how they refuse what they cannot tell. */
class PassageTextsTest {
  private final PassageFolder folder = PassageFolder.of(Folders.sound());

  @Test
  void whatNoFileTellsIsRefused() {
    Passage passage = folder.passage();
    Velocity breeze = Velocity.ofWind(TrueBearing.ofDegrees(10), Speed.ofKnots(5));
    Passage windy = passage.toBuilder().wind(WindField.steady(breeze)).build();
    assertTrue(
        assertThrows(IllegalArgumentException.class, () -> folder.withPassage(windy))
            .getMessage()
            .startsWith("the wind of a folder must be a ForecastWind, but was "));
    Party hasty = passage.party().withLaunching(Duration.ofSeconds(90));
    assertThrows(
        IllegalArgumentException.class,
        () -> folder.withPassage(passage.toBuilder().party(hasty).build()));
  }

  @Test
  void anotherVariationIsRefused() {
    Passage passage = folder.passage();
    Passage turned = passage.toBuilder().variation(CompassRose.parse("2°10'E 2019 (8'E)")).build();
    assertEquals(
        "a folder cannot tell the variation",
        refused(turned).substring(0, "a folder cannot tell the variation".length()));
  }

  private String refused(Passage passage) {
    return String.valueOf(
        assertThrows(IllegalArgumentException.class, () -> folder.withPassage(passage))
            .getMessage());
  }

  @Test
  void aLegInAChangedStreamOfAStationIsRefused() {
    HourlyStream station = folder.streams().get(0);
    PassageFolder told = folder.withPassage(inStream(folder.passage(), station));
    assertEquals("station Hesk Sound", told.texts().get("legs.csv").split(",")[9]);
    for (HourlyStream changed :
        List.of(
            station.smoothed(),
            station.inHourlySteps(),
            station.withRange(Distance.ofMetres(4.0)),
            station.withRangeOfTheDay(ZoneId.of("UTC")))) {
      Passage passage = inStream(told.passage(), changed);
      assertTrue(
          assertThrows(IllegalArgumentException.class, () -> told.withPassage(passage))
              .getMessage()
              .startsWith(
                  "the stream of a leg in a folder must be steady or a station's, but was "),
          changed::toString);
    }
    // the same table laid along the same tides is the same stream, whoever laid it
    HourlyStream alike = PassageFolder.of(Folders.sound()).streams().get(0);
    assertEquals(told, told.withPassage(inStream(told.passage(), alike)));
    assertEquals(told, folder.withPassage(inStream(folder.passage(), alike)));
  }

  private static Passage inStream(Passage passage, StreamField stream) {
    List<WayPoint> places = passage.wayPoints();
    PassageBuilder builder =
        Passage.builder(passage.name(), passage.zone(), passage.party()).from(places.get(0));
    for (WayPoint next : places.subList(1, places.size())) {
      builder.to(next, LegOptions.usual().withStream(stream));
    }
    passage.levels().forEach(builder::level);
    return builder.stream(passage.stream())
        .limits(passage.limits())
        .variation(passage.variation().orElseThrow())
        .build();
  }

  @Test
  void theStopLimitOfTheStreamIsTheStrongestStreamOfTheFolder() {
    FolderLimits limits =
        FolderLimits.USUAL
            .withStrongestStream(Speed.ofKnots(3))
            .withReach(Distance.ofNauticalMiles(5))
            .withLatestArrival(folder.start().plusHours(9));
    PassageFolder three = folder.withLimits(limits);
    PassageFolder two = three.withPassage(stopped(three, 1.5, 2.0));
    assertEquals(limits.withStrongestStream(Speed.ofKnots(2)), two.limits());
    Passage unlimited = two.passage().toBuilder().limits(PassageLimits.none()).build();
    PassageFolder any = two.withPassage(unlimited);
    assertEquals(Optional.empty(), any.limits().strongestStream());
    assertEquals(limits, any.limits().withStrongestStream(Speed.ofKnots(3)));
    assertEquals(PassageLimits.none(), any.passage().limits());
    PassageFolder four = any.withPassage(stopped(any, 2.0, 4.0));
    assertEquals(limits.withStrongestStream(Speed.ofKnots(4)), four.limits());
  }

  private static Passage stopped(PassageFolder folder, double warning, double stop) {
    Passage passage = folder.passage();
    PassageLimits limits = passage.limits().withStream(Speed.ofKnots(warning), Speed.ofKnots(stop));
    return passage.toBuilder().limits(limits).build();
  }

  @Test
  void filesThatTellTheSameStayAsTheyAre() {
    PassageFolder whole = PassageFolder.of(Folders.whole());
    assertEquals(whole, whole.withPassage(whole.passage()));
    Passage without = whole.passage().toBuilder().lanes(List.of()).build();
    Map<String, String> texts = whole.withPassage(without).texts();
    assertEquals("name,position,width_m\n", texts.get("lanes.csv"));
    assertEquals(whole.texts().get("dangers.csv"), texts.get("dangers.csv"));
  }

  private PassageBuilder builder() {
    return folder.passage().toBuilder();
  }

  private Passage along(LegOptions leg, WayPoint... places) {
    Passage passage = folder.passage();
    PassageBuilder builder =
        Passage.builder(passage.name(), passage.zone(), passage.party()).from(places[0]);
    for (int i = 1; i < places.length; i++) {
      builder.to(places[i], leg);
    }
    passage.levels().forEach(builder::level);
    return builder.stream(passage.stream())
        .limits(passage.limits())
        .variation(passage.variation().orElseThrow())
        .build();
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.MIN_VALUE, 1e-200 / 3.0, 1e-9 / 3.0})
  void theLeastFiguresComeBack(double least) {
    PassageLimits limits = PassageLimits.none().withLaneAngle(least, 45).withRateError(least);
    assertEquals(limits, folder.withPassage(builder().limits(limits).build()).passage().limits());
    ErrorModel errors =
        ErrorModel.usual()
            .with(ErrorSource.COMPASS, Spread.of(least, 1.0))
            .with(ErrorSource.SPEED, Spread.of(least, least));
    assertEquals(errors, folder.withErrors(errors).passage().errors());
    Craft craft =
        Craft.ofSpeed(Speed.ofKnots(3)).withWindResponse(WindResponse.none().withDrift(least));
    assertEquals(Party.of(craft), folder.withParty(Party.of(craft)).passage().party());
    List<WayPoint> places = folder.passage().wayPoints();
    for (Stop stop :
        List.of(
            Stop.untilLevelAtMost("Orrin Quay", Distance.ofMetres(-least)),
            Stop.untilStreamAtMost(Speed.ofMetresPerSecond(least)))) {
      WayPoint stopped = places.get(1).withStop(stop);
      Passage passage = along(LegOptions.usual(), places.get(0), stopped, places.get(2));
      assertEquals(
          Optional.of(stop), folder.withPassage(passage).passage().wayPoints().get(1).stop());
    }
  }

  @Test
  void aLegOfSixtyDaysIsTold() {
    FolderLimits longest = FolderLimits.USUAL.withLongestLeg(Duration.ofDays(60));
    assertEquals(longest, folder.withLimits(longest).limits());
  }

  @Test
  void strategiesOfNoFileAreRefusedByWhatTheyLack() {
    WayPoint[] places = folder.passage().wayPoints().toArray(new WayPoint[0]);
    LegOptions never = LegOptions.usual().withStrategy(Strategy.newHeadingsAt(List.of()));
    assertEquals(
        "new headings of a leg in a folder must be at one time or more, but were at none",
        refused(along(never, places)));
    List<Position> islet =
        List.of(
            Position.parse("46°11.0'N 026°18.0'W"),
            Position.parse("46°11.1'N 026°18.0'W"),
            Position.parse("46°11.1'N 026°18.1'W"));
    LegOptions round = LegOptions.usual().withStrategy(Strategy.quickestAround(List.of(islet)));
    assertEquals(
        "a folder is told of obstacles in its files, legs.csv and obstacles.csv, but the strategy"
            + " was quickest path round obstacles",
        refused(along(round, places)));
  }

  @Test
  void aPlacePassedTwiceMustBeTheSameBothTimes() {
    List<WayPoint> places = folder.passage().wayPoints();
    WayPoint lunch = places.get(1).withStop(Stop.ashore(Duration.ofMinutes(20)));
    LegOptions usual = LegOptions.usual();
    Passage alike = along(usual, places.get(0), lunch, places.get(2), lunch, places.get(0));
    assertEquals(alike.wayPoints(), folder.withPassage(alike).passage().wayPoints());
    assertEquals(
        "a folder tells of a place once, for every time that it is passed, but Hesk Point differs"
            + " from one time to another",
        refused(along(usual, places.get(0), lunch, places.get(2), places.get(1), places.get(0))));
  }

  @Test
  void whatNoColumnTellsIsSaidToBeInNoFile() {
    WayPoint refuge =
        WayPoint.of("Sel Sand", Position.parse("46°11.3'N 026°13.8'W"))
            .withLanding(Landing.atAnyLevel())
            .withStop(Stop.ashore(Duration.ofMinutes(5)));
    assertEquals(
        "a folder cannot tell all of the refuges \"[Sel Sand 46°11.3'N 026°13.8'W]\"",
        refused(builder().refuge(refuge).build()));
  }
}
