package org.ferryglide.nav.timing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.Route;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.nav.water.ChartedDepth;
import org.ferryglide.nav.water.Found;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WaterLevel;
import org.ferryglide.nav.water.Window;
import org.junit.jupiter.api.Test;

class DepartureSearchTest {
  private static final Instant MIDNIGHT = Instant.parse("2026-06-01T00:00:00Z");
  private static final double START = EpochSeconds.of(MIDNIGHT);
  private static final double KNOT = Speed.METRES_PER_SECOND_PER_KNOT;

  /** 4 NM to the north, then 4 NM to the east. */
  private static final Route ROUTE =
      Route.ofRhumbLegs(
          Position.ofDegrees(55, -6),
          Position.ofDegrees(55 + 4.0 / 60, -6),
          Position.ofDegrees(55 + 4.0 / 60, -6 + 7.0 / 60));

  /** North and south by turns, up to 3.2 kn, slack at midnight and every 6.21 h after it. */
  private static StreamField tide() {
    return new StreamField() {
      @Override
      public boolean sample(double lat, double lon, double time, double[] out, int offset) {
        out[offset] = 0.0;
        out[offset + 1] = 3.2 * KNOT * Math.sin((time - START) * 2 * Math.PI / 44712);
        return true;
      }

      @Override
      public boolean isUniform() {
        return true;
      }
    };
  }

  private static CourseToSteer solver() {
    return CourseToSteer.with(Craft.ofSpeed(Speed.ofKnots(3)), tide())
        .withStrategy(Strategy.trackHeld());
  }

  /** The same in still water, where every departure is possible. */
  private static CourseToSteer still() {
    return CourseToSteer.with(Craft.ofSpeed(Speed.ofKnots(3)), StreamField.slack());
  }

  private static Departures day(Condition... conditions) {
    DepartureSearch search = DepartureSearch.of(solver(), ROUTE).withStep(Duration.ofMinutes(5));
    for (Condition condition : conditions) {
      search = search.withCondition(condition);
    }
    return search.between(MIDNIGHT, MIDNIGHT.plus(Duration.ofDays(1)));
  }

  @Test
  void everyDepartureIsTold() {
    Departures departures = day();
    assertEquals(24 * 12 + 1, departures.all().size());
    assertEquals(MIDNIGHT.plusSeconds(300), departures.all().get(1).time());
    for (Departure departure : departures.all()) {
      assertEquals(departure.outcome().isSolved(), departure.isFit());
      Outcome<SteeredRoute, NotPossible> alone = solver().solve(ROUTE, departure.time());
      assertEquals(alone.isSolved(), departure.isFit());
    }
  }

  /**
   * A route without conditions is worked out when it is asked for, any other way at once; the
   * answers are the same, also after a departure has been sent somewhere else.
   */
  @Test
  void whatIsWorkedOutLaterIsTheSame() throws IOException, ClassNotFoundException {
    Departing along = Departing.along(solver(), ROUTE);
    Departing atOnce =
        new Departing() {
          @Override
          public Outcome<SteeredRoute, NotPossible> leaving(Instant departure) {
            return along.leaving(departure);
          }

          @Override
          public Outcome<SteeredRoute, NotPossible> leaving(double departureSeconds) {
            return along.leaving(departureSeconds); // an instant would round to microseconds
          }
        };
    Instant until = MIDNIGHT.plus(Duration.ofHours(8));
    Departures later = DepartureSearch.of(along).between(MIDNIGHT, until);
    Departures known = DepartureSearch.of(atOnce).between(MIDNIGHT, until);
    int impossible = 0;
    for (int i = 0; i < known.all().size(); i++) {
      Departure departure = later.all().get(i);
      assertEquals(known.all().get(i).isFit(), departure.isFit());
      assertEquals(known.all().get(i).isKnown(), departure.isKnown());
      SteeredRoute steered = known.all().get(i).outcome().solved().orElse(null);
      if (steered != null) { // measured without a track, and the same to the last bit
        assertEquals(steered.arrivalSeconds(), departure.arrival());
        assertEquals(steered.crossStreamShare(), departure.crossStreamShare());
        assertEquals(steered.reserve().metresPerSecond(), departure.reserve());
        assertEquals(steered.effort().metres(), departure.effort());
      }
      assertEquals(known.all().get(i).toString(), sent(departure).toString());
      assertEquals(known.all().get(i), departure);
      assertEquals(known.all().get(i), sent(departure));
      impossible += departure.isFit() ? 0 : 1;
    }
    assertTrue(impossible > 0 && impossible < known.all().size());
    assertEquals(known.earliestArrival(), later.earliestArrival());
    assertEquals(known.leastEffort(), later.leastEffort());
    assertEquals(known.mostReserve(), later.mostReserve());
    assertEquals(known.windows().items(), later.windows().items());
  }

  private static Departure sent(Departure departure) throws IOException, ClassNotFoundException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(departure);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      return (Departure) in.readObject();
    }
  }

  @Test
  void theEdgesOfWindowsAreThoseOfASecond() {
    List<Window> windows = day().windows().items();
    assertFalse(windows.isEmpty());
    for (Window window : windows) {
      if (window.from().isAfter(MIDNIGHT)) {
        assertTrue(solver().solve(ROUTE, window.from()).isSolved());
        assertFalse(solver().solve(ROUTE, window.from().minusMillis(1100)).isSolved());
      }
      if (window.until().isBefore(MIDNIGHT.plus(Duration.ofDays(1)))) {
        assertTrue(solver().solve(ROUTE, window.until()).isSolved());
        assertFalse(solver().solve(ROUTE, window.until().plusMillis(1100)).isSolved());
      }
    }
  }

  @Test
  void theBestAreNoWorseThanASearchEveryTwentySeconds() {
    Departures departures = day();
    double earliest = Double.POSITIVE_INFINITY;
    double effort = Double.POSITIVE_INFINITY;
    double reserve = 0.0;
    for (int i = 0; i <= 24 * 180; i++) {
      SteeredRoute steered =
          solver().solve(ROUTE, MIDNIGHT.plusSeconds(i * 20L)).solved().orElse(null);
      if (steered != null) {
        earliest = Math.min(earliest, steered.arrivalSeconds());
        effort = Math.min(effort, steered.effort().metres());
        reserve = Math.max(reserve, steered.reserve().metresPerSecond());
      }
    }
    assertTrue(
        departures.earliestArrival().orElseThrow().outcome().orElseThrow().arrivalSeconds()
            <= earliest + 1.0);
    assertTrue(
        departures.leastEffort().orElseThrow().outcome().orElseThrow().effort().metres()
            <= effort + 0.01);
    assertTrue(
        departures.mostReserve().orElseThrow().outcome().orElseThrow().reserve().metresPerSecond()
            >= reserve - 1e-4);
  }

  @Test
  void allCoresFindTheSame() {
    DepartureSearch one = DepartureSearch.of(solver(), ROUTE);
    Instant until = MIDNIGHT.plus(Duration.ofHours(30));
    assertEquals(
        one.between(MIDNIGHT, until).all(), one.onAllCores().between(MIDNIGHT, until).all());
  }

  @Test
  void conditionsNarrowTheWindows() {
    Instant sunrise = MIDNIGHT.plus(Duration.ofHours(5));
    Instant sunset = MIDNIGHT.plus(Duration.ofHours(20));
    Condition daylight =
        Condition.during("daylight", List.of(TimeSpan.of(sunrise, sunset)), Duration.ofMinutes(30));
    Condition arrival =
        Condition.arriveBy(
            MIDNIGHT.plus(Duration.ofHours(17)), MIDNIGHT.plus(Duration.ofHours(18)));
    Departures departures = day(daylight, arrival);
    assertEquals(List.of(daylight, arrival), departures.conditions());
    for (Window window : departures.windows()) {
      assertFalse(window.from().isBefore(sunrise));
      assertFalse(
          solver()
              .solve(ROUTE, window.until())
              .orElseThrow()
              .arrival()
              .isAfter(MIDNIGHT.plus(Duration.ofHours(18))));
    }
    Departure early = departures.all().get(12); // 0100, before sunrise
    if (early.outcome().isSolved()) {
      assertEquals(-4 * 60.0, early.verdicts().get(0).figure().orElseThrow(), 1e-6);
      assertEquals(-8.0, early.verdicts().get(0).margin().orElseThrow(), 1e-6);
    }
    assertFalse(early.isFit());
  }

  @Test
  void depthStreamAndReserveAreMargins() {
    WaterLevel level =
        new WaterLevel() {
          @Override
          public double heightMetres(double time) {
            return 2.0 + 2.0 * Math.cos((time - START) * 2 * Math.PI / 44712);
          }

          @Override
          public String datum() {
            return "chart datum";
          }
        };
    Instant four = MIDNIGHT.plus(Duration.ofHours(4));
    SteeredRoute passage = solver().solve(ROUTE, four).orElseThrow();
    Condition bar =
        Condition.depthAtLeast(
            "the bar",
            1,
            level,
            ChartedDepth.ofDryingHeight(Distance.ofMetres(1.0), "chart datum"),
            Distance.ofMetres(1.0),
            Distance.ofMetres(0.5));
    assertEquals("depth at the bar", bar.name());
    Verdict overBar = bar.check(passage);
    assertEquals("metres", overBar.unit());
    double depth = level.heightMetres(EpochSeconds.of(passage.timeAt(1))) - 1.0;
    assertEquals(depth, overBar.figure().orElseThrow(), 1e-9);
    assertEquals((depth - 0.5) / 0.5, overBar.margin().orElseThrow(), 1e-9);
    assertEquals(passage.timeAt(1), overBar.when().orElseThrow());
    Condition quiet = Condition.streamAtMost(tide(), Speed.ofKnots(2.0), Speed.ofKnots(3.0));
    double fastest = 0.0;
    for (double t = START + 4 * 3600; t <= passage.arrivalSeconds(); t += 60) {
      fastest = Math.max(fastest, 3.2 * Math.abs(Math.sin((t - START) * 2 * Math.PI / 44712)));
    }
    assertEquals(fastest, quiet.check(passage).figure().orElseThrow(), 0.01);
    assertEquals(3.0 - fastest, quiet.check(passage).margin().orElseThrow(), 0.01);
    Condition spare = Condition.reserveAtLeast(Speed.ofKnots(1), Speed.ofKnots(0.5));
    assertEquals(passage.reserve().knots(), spare.check(passage).figure().orElseThrow(), 1e-12);
  }

  @Test
  void aWindowBetweenTwoStepsIsFound() {
    Departures hourly =
        DepartureSearch.of(still(), ROUTE)
            .withStep(Duration.ofHours(1))
            .withCondition(narrow(0.05, 1.0))
            .between(MIDNIGHT, MIDNIGHT.plus(Duration.ofHours(4)));
    assertEquals(0, hourly.all().stream().filter(Departure::isFit).count());
    Window window = hourly.windows().first().orElseThrow();
    assertEquals(
        9000.0 - 180.0, Duration.between(MIDNIGHT, window.from()).toMillis() / 1000.0, 2.0);
    assertEquals(360.0, window.duration().toMillis() / 1000.0, 4.0);
  }

  @Test
  void aGapBetweenTwoStepsIsFound() {
    Departures hourly =
        DepartureSearch.of(still(), ROUTE)
            .withStep(Duration.ofHours(1))
            .withCondition(narrow(0.05, -1.0))
            .between(MIDNIGHT, MIDNIGHT.plus(Duration.ofHours(4)));
    assertEquals(hourly.all().size(), hourly.all().stream().filter(Departure::isFit).count());
    List<Window> windows = hourly.windows().items();
    assertEquals(2, windows.size());
    assertEquals(
        360.0, Seconds.of(Duration.between(windows.get(0).until(), windows.get(1).from())), 4.0);
  }

  /** Holds, or fails if the sign is negative, within some hours of half past two. */
  private static Condition narrow(double hours, double sign) {
    return Condition.of(
        "narrow",
        "hours",
        1.0,
        0.0,
        passage -> sign * (hours - Math.abs((passage.departureSeconds() - START) / 3600.0 - 2.5)));
  }

  @Test
  void whatWasNotCheckedNeverHoldsAndIsNotTakenForNever() {
    Condition unknown =
        Condition.of(
            "swell",
            "metres",
            0.5,
            1.0,
            passage -> passage.departureSeconds() < START + 7200.0 ? 0.2 : Double.NaN);
    Departures departures =
        DepartureSearch.of(still(), ROUTE)
            .withCondition(unknown)
            .between(MIDNIGHT, MIDNIGHT.plus(Duration.ofHours(4)));
    Departure late = departures.all().get(departures.all().size() - 1);
    assertFalse(late.isFit());
    assertFalse(late.isKnown());
    assertEquals(Verdict.Answer.NOT_CHECKED, late.verdicts().get(0).answer());
    assertTrue(late.verdicts().get(0).margin().isEmpty());
    assertFalse(departures.windows().isWhole());
    assertTrue(
        departures.windows().items().get(departures.windows().items().size() - 1).openAfter());
  }

  @Test
  void aPassageOutsideTheWindowsThatWereSearchedIsNotChecked() {
    Found<Window> slack =
        Found.of(
            List.of(Window.of(MIDNIGHT.plusSeconds(3600), MIDNIGHT.plusSeconds(36000))),
            TimeSpan.of(MIDNIGHT, MIDNIGHT.plusSeconds(43200)),
            List.of(TimeSpan.of(MIDNIGHT, MIDNIGHT.plusSeconds(43200))),
            List.of());
    Condition during = Condition.during("slack", slack, Duration.ofMinutes(20));
    assertEquals(
        Verdict.Answer.STOPPED,
        during.check(still().solve(ROUTE, MIDNIGHT.plusSeconds(600)).orElseThrow()).answer());
    SteeredRoute within = still().solve(ROUTE, MIDNIGHT.plusSeconds(3600)).orElseThrow();
    assertEquals(Verdict.Answer.WARNED, during.check(within).answer());
    assertEquals(0.0, during.check(within).margin().orElseThrow(), 1e-9);
    SteeredRoute nextDay = still().solve(ROUTE, MIDNIGHT.plusSeconds(44712 + 3600)).orElseThrow();
    assertEquals(Verdict.Answer.NOT_CHECKED, during.check(nextDay).answer());
    assertEquals(
        "slack: not checked, there are no data for some of the time",
        during.check(nextDay).message());
  }

  @Test
  void aWayOfOnesOwnCanBeSearched() {
    Departing withAnHourAshore =
        departure ->
            still()
                .solve(Route.ofLegs(ROUTE.legs().get(0)), departure)
                .match(
                    first ->
                        still()
                            .solve(
                                Route.ofLegs(ROUTE.legs().get(1)),
                                first.arrival().plus(Duration.ofHours(1)))
                            .map(
                                second ->
                                    SteeredRoute.of(
                                        List.of(first.legs().get(0), second.legs().get(0)))),
                    Outcome::ofUnsolved);
    Departures departures =
        DepartureSearch.of(withAnHourAshore).between(MIDNIGHT, MIDNIGHT.plusSeconds(7200));
    SteeredRoute passage = departures.all().get(0).outcome().orElseThrow();
    assertEquals(passage.timeAt(1).plus(Duration.ofHours(1)), passage.leavingAt(1));
    assertEquals(ROUTE.legs().get(0).end(), passage.at(passage.timeAt(1).plusSeconds(60)));
    assertEquals(passage.arrival(), passage.leavingAt(2));
    assertThrows(
        IllegalArgumentException.class,
        () -> SteeredRoute.of(List.of(passage.legs().get(0), passage.legs().get(0))));
  }

  @Test
  void aSearchThatFindsNothingSaysSo() {
    Departures none = day(Condition.of("never", "units", 1.0, 0.0, passage -> -1.0));
    assertTrue(none.windows().isEmpty());
    assertTrue(none.earliestArrival().isEmpty());
    assertTrue(none.leastEffort().isEmpty());
    assertTrue(none.mostReserve().isEmpty());
  }

  @Test
  void badSearchesAreRefused() {
    DepartureSearch search = DepartureSearch.of(solver(), ROUTE);
    assertEquals(
        "step must be at least PT1S, but was PT0S",
        assertThrows(IllegalArgumentException.class, () -> search.withStep(Duration.ZERO))
            .getMessage());
    assertEquals(
        "the last departure must not be before the first, nor more than 1000000 steps later, but"
            + " they were from 2026-06-01T00:00:00Z until 2026-05-31T23:50:00Z",
        assertThrows(
                IllegalArgumentException.class,
                () -> search.between(MIDNIGHT, MIDNIGHT.minusSeconds(600)))
            .getMessage());
  }
}
