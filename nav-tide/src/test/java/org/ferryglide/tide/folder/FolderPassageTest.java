package org.ferryglide.tide.folder;

import static org.ferryglide.nav.measure.Distance.ofMetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ferryglide.nav.bearing.DeviationTable;
import org.ferryglide.nav.bearing.HeadingDeviation;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.magnetic.CompassRose;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.passage.Danger;
import org.ferryglide.nav.passage.Landing;
import org.ferryglide.nav.passage.Lane;
import org.ferryglide.nav.passage.LegOptions;
import org.ferryglide.nav.passage.Party;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.PassageLimits;
import org.ferryglide.nav.passage.PlannedLeg;
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
import org.ferryglide.nav.water.WindField;
import org.ferryglide.tide.height.TableCurve;
import org.ferryglide.tide.height.TideTable;
import org.ferryglide.tide.stream.Shoreline;
import org.ferryglide.tide.stream.StationField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FolderPassageTest {
  private static final Instant LOW_WATER = Instant.parse("2026-06-14T09:44:00Z");

  private static final List<List<Position>> SHORES =
      List.of(
          List.of(Position.parse("46°16.0'N 026°20.0'W"), Position.parse("46°15.5'N 026°15.0'W")),
          List.of(Position.parse("46°15.0'N 026°12.0'W"), Position.parse("46°15.2'N 026°11.0'W")));

  @TempDir Path root;

  private PassageFolder read(Map<String, String> files) throws IOException {
    Path folder = Files.createTempDirectory(root, "folder");
    Folders.write(folder, files);
    return PassageFolder.read(folder);
  }

  @Test
  void thePlanOfAFolderEqualsThePlanBuiltInCode() throws IOException {
    PassageFolder folder = read(Folders.whole());
    Passage built = builtInCode(folder);
    Passage read = folder.passage();
    assertEquals(built.wayPoints(), read.wayPoints());
    assertEquals(built.party(), read.party());
    assertEquals(built.limits(), read.limits());
    assertEquals(built.dangers(), read.dangers());
    assertEquals(built.lanes(), read.lanes());
    assertEquals(built.refuges(), read.refuges());
    assertEquals(built.shores(), read.shores());
    assertEquals(built.errors(), read.errors());
    assertEquals(built.zone(), read.zone());
    assertEquals(built.visibility(), read.visibility());
    assertEquals(built.swellFrom(), read.swellFrom());
    Instant start = folder.start().toInstant();
    assertEquals(TimedPlan.of(built, start), TimedPlan.of(read, start));
    TrueBearing west = TrueBearing.ofDegrees(270);
    PlannedLeg leg = TimedPlan.of(read, start).orElseThrow().legs().get(0);
    assertEquals(
        TimedPlan.of(built, start).orElseThrow().legs().get(0).compass(west), leg.compass(west));
    assertTrue(leg.compass(west).isPresent());
    assertTrue(TimedPlan.of(read, start).isSolved());
  }

  /** The same as the files of {@link Folders#whole} say, put together by hand. */
  private static Passage builtInCode(PassageFolder folder) throws IOException {
    TideTable table = folder.tides().get("Orrin Quay");
    Craft craft =
        Craft.ofSpeed(Speed.ofKnots(3.5))
            .withRestEachHour(Duration.ofMinutes(8))
            .withWindResponse(
                WindResponse.commonPractice(WindResponse.Trim.LOADED).withDrift(0.03));
    Party party =
        Party.of(craft)
            .withSlowerSpeed(Speed.ofKnots(2.9))
            .withLaunching(Duration.ofMinutes(15))
            .withLanding(Duration.ofMinutes(10))
            .withEyeHeight(ofMetres(0.8));
    Landing cove =
        Landing.between("Orrin Quay", ofMetres(0.4), ofMetres(4.6))
            .withOpenSector(TrueBearing.ofDegrees(200), TrueBearing.ofDegrees(290));
    Duration ever = Duration.ofDays(36525);
    Danger race =
        Danger.area(
                "Hesk Race",
                List.of(
                    Position.parse("46°11.4'N 026°17.4'W"),
                    Position.parse("46°11.6'N 026°16.4'W"),
                    Position.parse("46°11.1'N 026°16.6'W")),
                ofMetres(100))
            .closedDuring(
                List.of(
                    TimeSpan.of(table.start().minus(ever), table.start().plusSeconds(3600)),
                    span("2026-06-14T01:34:00Z/2026-06-14T04:34:00Z"),
                    span("2026-06-14T13:53:00Z/2026-06-14T16:53:00Z"),
                    span("2026-06-15T02:12:00Z/2026-06-15T05:12:00Z"),
                    TimeSpan.of(table.end().minusSeconds(7200), table.end().plus(ever))))
            .closedAboveStream(Speed.ofKnots(2.2))
            .closedAboveWind(Speed.ofKnots(16))
            .closedBelowLevel("Orrin Quay", ofMetres(0.2))
            .closedAboveLevel("Orrin Quay", ofMetres(6.0));
    return Passage.builder("Out and over", ZoneId.of("Atlantic/Azores"), party)
        .from(
            WayPoint.of("Marrow Slip", Position.parse("46°10.0'N 026°20.0'W"))
                .withLanding(Landing.atAnyLevel()))
        .to(
            WayPoint.of("Hesk Point", Position.parse("46°11.8'N 026°17.6'W"))
                .withToSee("white beacon")
                .withMark(ofMetres(14))
                .withStop(Stop.ashore(Duration.ofMinutes(20))),
            LegOptions.usual().withStrategy(Strategy.trackHeld()).withSpeed(Speed.ofKnots(3.2)))
        .to(
            WayPoint.of("Quill Island", Position.parse("46°12.1'N 026°13.0'W")).withLanding(cove),
            LegOptions.usual()
                .withoutRests()
                .alongGeodesic()
                .withStream(StreamField.steady(Velocity.parse("015° 0.4 kn"))))
        .stream(
            StationField.nearest(folder.stations(), Distance.ofNauticalMiles(6))
                .withShores(Shoreline.of(SHORES)))
        .shores(SHORES)
        .errors(
            ErrorModel.usual()
                .with(ErrorSource.COMPASS, Spread.of(1.5, 2.0))
                .with(ErrorSource.SPEED, Spread.of(0.04, 0.05))
                .withInterval(Duration.ofMinutes(30)))
        .level("Orrin Quay", TableCurve.cosine(table))
        .variation(CompassRose.parse("8°50'W 2019 (8'E)"))
        .wind(FolderPassageTest.sixHourly())
        .deviation(
            DeviationTable.through(
                List.of(
                    HeadingDeviation.parse("000", "2°E"),
                    HeadingDeviation.parse("090", "3°W"),
                    HeadingDeviation.parse("180", "2°W"),
                    HeadingDeviation.parse("270", "3°E"))))
        .visibility(Distance.ofNauticalMiles(5))
        .swellFrom(TrueBearing.ofDegrees(310))
        .dangers(
            List.of(
                Danger.point("Fang Rock", Position.parse("46°10.3'N 026°15.4'W"), ofMetres(150)),
                race))
        .lanes(
            List.of(
                Lane.along(
                    "Tarn fairway",
                    List.of(
                        Position.parse("46°13.9'N 026°14.0'W"),
                        Position.parse("46°12.7'N 026°10.5'W")),
                    ofMetres(400))))
        .refuge(
            WayPoint.of("Sel Sand", Position.parse("46°11.3'N 026°13.8'W"))
                .withLanding(Landing.atAnyLevel()))
        .limits(
            PassageLimits.none()
                .withStream(Speed.ofKnots(2), Speed.ofKnots(3))
                .withWind(Speed.ofKnots(12), Speed.ofKnots(18))
                .withWindAgainstStream(Speed.ofKnots(8), Speed.ofKnots(14), Speed.ofKnots(0.5))
                .withReserve(Speed.ofKnots(1), Speed.ofKnots(0.5))
                .withOnshoreWind(Speed.ofKnots(10), Speed.ofKnots(16))
                .withDaylight(Duration.ofHours(2), Duration.ofMinutes(30))
                .withTimeAfloat(Duration.ofHours(4), Duration.ofMinutes(390))
                .withTimeToLanding(Duration.ofHours(1), Duration.ofHours(2))
                .withLaneAngle(20, 45)
                .withRateError(0.3))
        .build();
  }

  /** The same wind always, stated every six hours from 05:00 UTC. */
  private static WindField sixHourly() {
    WindField steady =
        WindField.steady(Velocity.ofWind(TrueBearing.ofDegrees(250), Speed.ofKnots(8)));
    double first = Instant.parse("2026-06-14T05:00:00Z").getEpochSecond();
    return new WindField() {
      private static final long serialVersionUID = 1L;

      @Override
      public boolean sample(
          double latitude, double longitude, double seconds, double[] eastNorth, int offset) {
        return steady.sample(latitude, longitude, seconds, eastNorth, offset);
      }

      @Override
      public boolean isUniform() {
        return true;
      }

      @Override
      public double nextBreakAfter(double seconds) {
        return first + (Math.floor((seconds - first) / 21600.0) + 1.0) * 21600.0;
      }
    };
  }

  private static TimeSpan span(String text) {
    return TimeSpan.parse(text);
  }

  @Test
  void todaysFolderGivesAPassageThatSaysWhatNobodyLookedAt() throws IOException {
    PassageFolder folder = read(Folders.sound());
    TimedPlan plan = TimedPlan.of(folder.passage(), folder.start().toInstant()).orElseThrow();
    assertEquals(
        List.of(
            "dangers",
            "lanes and fairways",
            "stream",
            "wind",
            "landing at Marrow Slip",
            "landing at Quill Island"),
        plan.notChecked().stream().map(it -> it.text()).toList());
    assertEquals(Party.of(Craft.ofSpeed(Speed.ofKnots(3.5))), plan.passage().party());
    assertEquals(folder.start().getOffset(), plan.passage().zone());
  }

  @Test
  void todaysLimitsAreThoseOfThePassage() throws IOException {
    Map<String, String> files = Folders.sound();
    files.put(
        "limits.csv",
        "item,value\nlight,civil twilight\nstrongest stream,2 kn\n"
            + "latest arrival,2026-06-14T18:00+01:00\nlargest cross-stream share,70 %\n");
    Passage passage = read(files).passage();
    assertEquals(
        PassageLimits.none()
            .withStream(Speed.ofKnots(2).times(0.8), Speed.ofKnots(2))
            .withLight(SunThreshold.CIVIL_TWILIGHT)
            .withCrossStreamShare(0.5, 0.7),
        passage.limits());
    assertEquals(1, passage.conditions().size());
    files.put("limits.csv", "item,value\nlight,any\nlargest cross-stream share,40 %\n");
    Passage night = read(files).passage();
    assertFalse(night.limits().light().isPresent());
    assertEquals(
        PassageLimits.none().withAnyLight().withCrossStreamShare(0.25, 0.4), night.limits());
  }

  @Test
  void aSheetOfNoDangersIsNotTheSameAsNoSheet() throws IOException {
    Map<String, String> files = Folders.sound();
    files.put("dangers.csv", "name,position,keep_off_m\n");
    files.put("lanes.csv", "name,position,width_m\n");
    assertEquals(List.of(), read(files).passage().dangers().get());
    assertEquals(List.of(), read(files).passage().lanes().get());
    assertFalse(read(Folders.sound()).passage().dangers().isPresent());
  }

  @Test
  void aFolderIsWrittenAndReadBackWithoutLoss() throws IOException {
    PassageFolder folder = read(Folders.whole());
    Path copy = root.resolve("copy");
    folder.write(copy);
    PassageFolder back = PassageFolder.read(copy);
    assertEquals(folder, back);
    assertEquals(folder.hashCode(), back.hashCode());
    assertEquals(Folders.whole(), back.texts());
    Instant start = folder.start().toInstant();
    assertEquals(TimedPlan.of(folder.passage(), start), TimedPlan.of(back.passage(), start));
    assertThrows(DirectoryNotEmptyException.class, () -> folder.write(copy));
  }

  @Test
  void aFolderIsShippedWithItsPassage() throws Exception {
    PassageFolder folder = read(Folders.whole());
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(folder);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      PassageFolder back = (PassageFolder) in.readObject();
      Instant start = folder.start().toInstant();
      assertEquals(folder, back);
      assertEquals(TimedPlan.of(folder.passage(), start), TimedPlan.of(back.passage(), start));
    }
  }

  /** A line drawn between a place and every station: nothing is known of the water behind it. */
  @Test
  void aCoastIsTheShoreOfTheChecksAndCutsStationsOff() throws IOException {
    Map<String, String> files = Folders.sound();
    PassageFolder folder = read(files);
    Passage open = folder.passage();
    assertFalse(open.shores().isPresent());
    Position station = folder.stations().get(0).position();
    Position behind =
        Position.ofDegrees(station.latitudeDegrees() + 0.02, station.longitudeDegrees());
    assertTrue(open.stream().at(behind, LOW_WATER).isPresent());
    StringBuilder coast = new StringBuilder("name,position\n");
    List<Position> line = new ArrayList<>();
    for (double off : new double[] {-0.2, 0.2}) {
      Position point =
          Position.ofDegrees(station.latitudeDegrees() + 0.01, station.longitudeDegrees() + off);
      Position printed = Position.parse(point.toString());
      line.add(printed);
      coast.append("North shore,\"").append(point).append("\"\n");
    }
    files.put("coast.csv", coast.toString());
    PassageFolder drawn = read(files);
    assertEquals(Optional.of(List.of(line)), drawn.passage().shores());
    assertFalse(drawn.passage().stream().at(behind, LOW_WATER).isPresent());
    assertTrue(drawn.passage().stream().at(station, LOW_WATER).isPresent());
    assertEquals(coast.toString(), drawn.texts().get("coast.csv"));
    files.put("coast.csv", "name,position\nNorth shore,46°10.0'N 026°20.0'W\n");
    InputFormatException refused = assertThrows(InputFormatException.class, () -> read(files));
    assertTrue(refused.getMessage().contains("at least 2 points"), refused::getMessage);
  }

  @Test
  void aStopMayWaitForWaterForATimeAndForSlack() throws IOException {
    Map<String, String> files = Folders.sound();
    String heading = "place,stop\n";
    files.put("places.csv", heading + "Hesk Point,until 2.5 m or more at Orrin Quay\n");
    assertEquals(
        Stop.untilLevelAtLeast("Orrin Quay", ofMetres(2.5)),
        read(files).passage().wayPoints().get(1).stop().get());
    files.put("places.csv", heading + "Hesk Point,until 1 m or less at Orrin Quay\n");
    assertEquals(
        Stop.untilLevelAtMost("Orrin Quay", ofMetres(1.0)),
        read(files).passage().wayPoints().get(1).stop().get());
    files.put("places.csv", heading + "Hesk Point,until 2026-06-14T10:44+01:00\n");
    assertEquals(Stop.until(LOW_WATER), read(files).passage().wayPoints().get(1).stop().get());
    files.put("places.csv", heading + "Hesk Point,until 0.5 kn or less\n");
    assertEquals(
        Stop.untilStreamAtMost(Speed.ofKnots(0.5)),
        read(files).passage().wayPoints().get(1).stop().get());
  }

  @Test
  void aLegMayHaveTheStreamOfOneStation() throws IOException {
    Map<String, String> files = Folders.sound();
    files.put("legs.csv", "leg,strategy,stream\n2,new heading every 20 min,station Hesk Sound\n");
    PassageFolder folder = read(files);
    LegOptions options = folder.passage().legs().get(1).options();
    assertEquals(Strategy.newHeadingEvery(Duration.ofMinutes(20)), options.strategy());
    assertEquals(folder.streams().get(0), options.stream().get());
    assertFalse(folder.passage().legs().get(0).options().stream().isPresent());
  }
}
