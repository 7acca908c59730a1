package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.water.Found;
import org.ferryglide.nav.water.Window;
import org.ferryglide.testing.Seeds;

/**
 * Turns and ways home of passages with a stop, levels, an uneven stream, wind and dangers that open
 * and close, against every departure tried by {@link PlainDay} and {@link PlainDraw}, which share
 * no code with the search; and a party really slower that keeps the times.
 */
class WayHomeAgainstPlainVectorsProperties {
  /** How many times were compared that fail, and that hold. */
  static int[] compare(long seed) {
    Tried world = new Tried(new SplittableRandom(seed), false);
    int[] counts = new int[3];
    Instant departure = Instant.ofEpochSecond((long) world.day.departure);
    TimedPlan plan = TimedPlan.of(world.passage, departure).solved().orElse(null);
    if (plan == null) {
      return counts;
    }
    world.tryAll();
    WayHome found =
        WayHome.of(plan, departure.plus(Duration.ofHours(Tried.HOURS)), Duration.ofMinutes(5));
    for (int k = world.day.legs() - 1; k >= 0; k--) {
      TurnTimes turn = found.turns().get(k);
      Tried.agrees(world.on[k], turn.goingOn(), world.day.departure, "on from " + k, counts);
      Tried.agrees(world.home[k], turn.home(), world.day.departure, "home from " + k, counts);
    }
    return counts;
  }

  @Property(seed = Seeds.SEED, tries = 3 * Seeds.MORE_IN_THE_SOAK, maxDiscardRatio = 20)
  void turnsAndWaysHomeAreThoseOfEveryDepartureTried(@ForAll long seed) {
    int[] counts = compare(seed);
    Assume.that(counts[Tried.FAILS] + counts[Tried.HOLDS] > 0);
  }

  /**
   * A party of any speed from the slower to the planned one that lingers at each way point as long
   * as the times allow is never late, in daylight at the end with water at its landing; and home
   * likewise wherever the times promise it. One just as slow as it may be meets nothing else that
   * stops either. About half of the days drawn give times to keep: in the thorough soak a thousand.
   */
  @Property(seed = Seeds.SEED, tries = Seeds.MORE_IN_THE_SOAK > 1 ? 2000 : 25, maxDiscardRatio = 20)
  void aSlowerPartyThatKeepsTheTimesIsHomeInTime(@ForAll long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Tried world = new Tried(random, true);
    Instant departure = Instant.ofEpochSecond((long) world.day.departure);
    TimedPlan plan = TimedPlan.of(world.passage, departure).solved().orElse(null);
    Assume.that(plan != null && plan.holds());
    WayHome found =
        WayHome.of(
            Objects.requireNonNull(plan),
            departure.plus(Duration.ofHours(Tried.HOURS)),
            Duration.ofMinutes(20));
    Assume.that(found.turns().get(0).notLaterThan().isPresent());
    double slower = Party.USUAL_SLOWER_SHARE;
    boolean slowest = random.nextInt(3) == 0;
    double share = slowest ? slower : slower + (1.0 - slower) * random.nextDouble();
    world.paddle(found, share, slowest, random);
  }

  /** One day with every departure tried. */
  static final class Tried {
    private static final double GRID_SECONDS = 180.0;
    private static final int HOURS = 8;
    private static final int GRID = (int) (HOURS * 3600.0 / GRID_SECONDS);

    /** Looks a minute apart, closings told from look to look, edges to the second. */
    private static final int SURE_ON_BOTH_SIDES = 3;

    /** Distances to keep are tried so much nearer and farther, metres. */
    private static final double METRES = 12.0;

    private static final int FAILS = 0;
    private static final int UNSURE = 1;
    private static final int HOLDS = 2;

    final PlainDay day;
    final PlainDraw.Chosen chosen = new PlainDraw.Chosen();
    final double[] stop = new double[PlainDraw.FIGURES];
    final Passage passage;

    /** By way point and grid: going on, home. */
    private final int[][] on;

    private final int[][] home;

    Tried(SplittableRandom random, boolean holds) {
      day = new PlainDay(random);
      PlainDraw plan = new PlainDraw(day);
      plan.paddle();
      ChancesAgainstPlainDrawsProperties.close(day, plan, random);
      day.closedFrom += 3600.0 * random.nextInt(5);
      day.closedUntil = Math.rint(day.closedFrom + 3000.0 + 6000.0 * random.nextDouble());
      for (int i = 0; i < PlainDay.DANGERS; i++) {
        // half of those that open lie on the way
        boolean meets = i != PlainDay.ALWAYS && random.nextInt(3) == 0;
        chosen.keepOff[i] = meets ? 700.0 : 50.0 + 100.0 * random.nextDouble();
      }
      boolean gauged = random.nextBoolean();
      chosen.lowestAtStart = gauged ? 1.5 + 1.5 * random.nextDouble() : 0.0;
      chosen.lowestAtEnd = gauged ? 0.0 : 1.5 + 1.5 * random.nextDouble();
      chosen.onshore = 8.0 + 8.0 * random.nextDouble();
      chosen.leastStream = 0.2;
      stop[PlainDraw.DAYLIGHT] = 20.0;
      stop[PlainDraw.AFLOAT] = 2000.0;
      stop[PlainDraw.SHARE] = 0.9;
      stop[PlainDraw.RESERVE] = 0.3 + random.nextDouble();
      stop[PlainDraw.STREAM] = 0.6 + 1.2 * random.nextDouble();
      stop[PlainDraw.WIND] = 10.0 + 8.0 * random.nextDouble();
      stop[PlainDraw.AGAINST] = 6.0 + 8.0 * random.nextDouble();
      stop[PlainDraw.LANE] = 60.0;
      if (holds) {
        soften();
      }
      passage =
          ChancesAgainstPlainDrawsProperties.passage(day, chosen, stop).toBuilder()
              .errors(ErrorModel.none())
              .limits(ChancesAgainstPlainDrawsProperties.limits(chosen, stop).withRateError(0.0))
              .build();
      on = new int[day.legs()][];
      home = new int[day.legs()][];
    }

    /** Moves limits so far that both parties may depart as planned. */
    private void soften() {
      PlainDraw.Chosen tried = new PlainDraw.Chosen();
      tried.leastStream = chosen.leastStream;
      tried.drift = false;
      PlainDraw planned = new PlainDraw(day);
      PlainDraw slower = new PlainDraw(day.onward(0, day.departure, Party.USUAL_SLOWER_SHARE));
      for (PlainDraw party : List.of(planned, slower)) {
        if (!party.paddle()) {
          return;
        }
        double[] figures = party.still(tried);
        for (int i : new int[] {PlainDraw.STREAM, PlainDraw.WIND, PlainDraw.AGAINST}) {
          stop[i] = Math.max(stop[i], 1.05 * figures[i] + 0.1);
        }
        stop[PlainDraw.RESERVE] =
            Math.min(stop[PlainDraw.RESERVE], figures[PlainDraw.RESERVE] - 0.1);
        chosen.lowestAtStart =
            Math.min(chosen.lowestAtStart, figures[PlainDraw.LEVEL_AT_START] - 0.1);
        chosen.lowestAtEnd = Math.min(chosen.lowestAtEnd, figures[PlainDraw.LEVEL_AT_END] - 0.1);
        chosen.onshore = Math.max(chosen.onshore, figures[PlainDraw.WIND_AT_STOP] + 0.5);
        for (int i = 0; i < PlainDay.DANGERS; i++) {
          double clear = figures[PlainDraw.DANGER + i] - 30.0;
          chosen.keepOff[i] = Math.max(1.0, Math.min(chosen.keepOff[i], clear));
        }
      }
      double level =
          planned.lowest(
              planned.arrival(day.legs()), slower.arrival(day.legs()) + PlainDay.LANDING);
      chosen.lowestAtEnd = Math.min(chosen.lowestAtEnd, level - 0.1);
    }

    double grid(int i) {
      return day.departure + GRID_SECONDS * i;
    }

    private void tryAll() {
      for (int k = day.legs() - 1; k >= 0; k--) {
        on[k] = new int[GRID];
        home[k] = new int[GRID];
        for (int i = 0; i < GRID; i++) {
          on[k][i] = goingOn(k, grid(i));
          home[k][i] = k == 0 ? HOLDS : goingHome(k, grid(i));
        }
      }
    }

    /** One of the answers, if the party begins a part of its way at a time. */
    private int answer(PlainDay planned, PlainDay slower, double[] left) {
      PlainDraw[] parties = {new PlainDraw(planned), new PlainDraw(slower)};
      int answer = HOLDS;
      for (int i = 0; i < 2; i++) {
        if (!parties[i].paddle()) {
          return FAILS;
        }
        left[i] = parties[i].leaving(1);
      }
      int legs = planned.legs();
      for (PlainDraw party : parties) {
        answer = Math.min(answer, answer(party));
      }
      // at every time from the arrival of the one to that of the other
      double level =
          parties[0].lowest(parties[0].arrival(legs), parties[1].arrival(legs) + PlainDay.LANDING);
      double over = level - lowestAtEnd(planned);
      return Math.min(answer, over > 0.02 ? HOLDS : over < -0.02 ? FAILS : UNSURE);
    }

    /** The landing at the end of a part. */
    private double lowestAtEnd(PlainDay part) {
      boolean isHome = part.lat[part.legs()] == day.lat[0];
      return isHome ? chosen.lowestAtStart : chosen.lowestAtEnd;
    }

    private int answer(PlainDraw party) {
      PlainDraw.Chosen tried = new PlainDraw.Chosen();
      tried.leastStream = chosen.leastStream;
      tried.drift = false;
      double[] figures = party.still(tried);
      double[] limits = stop.clone();
      limits[PlainDraw.LEVEL_AT_START] = chosen.lowestAtStart;
      limits[PlainDraw.LEVEL_AT_END] = lowestAtEnd(party.day());
      limits[PlainDraw.WIND_AT_STOP] = chosen.onshore;
      int answer = HOLDS;
      for (int i = 0; i < PlainDraw.SHORE; i++) {
        boolean more = ChancesAgainstPlainDrawsProperties.isMoreBetter(i);
        answer = Math.min(answer, answer((figures[i] - limits[i]) * (more ? 1.0 : -1.0), OUT[i]));
      }
      for (int i = 0; i < PlainDay.DANGERS; i++) {
        double clear = figures[PlainDraw.DANGER + i] - chosen.keepOff[i];
        answer = Math.min(answer, answer(clear, METRES));
      }
      return answer == FAILS ? FAILS : Math.min(answer, drifting(party, tried));
    }

    private static int answer(double spare, double out) {
      return spare >= out ? HOLDS : spare < -out ? FAILS : UNSURE;
    }

    private int drifting(PlainDraw party, PlainDraw.Chosen tried) {
      tried.drift = true;
      boolean[] free = new boolean[2];
      for (int i = 0; i < 2; i++) {
        for (int k = 0; k < PlainDay.DANGERS; k++) {
          tried.keepOff[k] = chosen.keepOff[k] + (i == 0 ? METRES : -METRES);
        }
        free[i] = party.still(tried)[PlainDraw.DRIFT] >= 10.0;
        if (free[i]) {
          return i == 0 ? HOLDS : UNSURE;
        }
      }
      return FAILS;
    }

    /** What a figure is out by: minutes, shares, knots, metres. */
    private static final double[] OUT = {1.5, 0, 0.01, 0.03, 0.02, 0.1, 0.1, 0.02, 0.02, 0.1};

    private int goingHome(int wayPoint, double time) {
      return answer(
          day.home(wayPoint, time, 1.0),
          day.home(wayPoint, time, Party.USUAL_SLOWER_SHARE),
          new double[2]);
    }

    private int goingOn(int wayPoint, double time) {
      double[] left = new double[2];
      int answer =
          answer(
              day.onward(wayPoint, time, 1.0),
              day.onward(wayPoint, time, Party.USUAL_SLOWER_SHARE),
              left);
      if (answer == FAILS || wayPoint + 1 == day.legs()) {
        return answer;
      }
      int first = (int) Math.floor((left[0] - day.departure) / GRID_SECONDS);
      int last = (int) Math.ceil((left[1] - day.departure) / GRID_SECONDS);
      for (int i = first; i <= last; i++) {
        int then = i < GRID ? on[wayPoint + 1][i] : UNSURE;
        boolean inside = i > first && i < last;
        answer = Math.min(answer, inside ? then : then == HOLDS ? HOLDS : UNSURE);
      }
      return answer;
    }

    private static void agrees(
        int[] states, Found<Window> windows, double zero, String what, int[] counts) {
      for (int i = SURE_ON_BOTH_SIDES; i + SURE_ON_BOTH_SIDES < GRID; i++) {
        int state = states[i];
        boolean sure = state != UNSURE;
        for (int k = i - SURE_ON_BOTH_SIDES; k <= i + SURE_ON_BOTH_SIDES; k++) {
          sure &= states[k] == state;
        }
        Instant time = Instant.ofEpochSecond((long) (zero + GRID_SECONDS * i));
        if (sure
            && !time.isBefore(windows.asked().from())
            && !time.isAfter(windows.asked().until())) {
          boolean held = windows.items().stream().anyMatch(window -> window.contains(time));
          counts[state]++;
          assertEquals(state == HOLDS, held, () -> what + " at " + time + " of " + windows.items());
        }
      }
    }

    /** What vectors and the library differ by along some hours. */
    private static final double SECONDS = 10.0;

    private void paddle(WayHome found, double share, boolean slowest, SplittableRandom random) {
      double time = day.departure;
      for (int k = 0; k < day.legs(); k++) {
        TurnTimes times = found.turns().get(k);
        double last = times.notLaterThan().orElseThrow().getEpochSecond();
        double reached = time;
        int number = k;
        assertTrue(
            reached <= last + SECONDS, () -> "late at " + number + ": " + reached + " " + times);
        time = Math.floor(time + random.nextDouble() * Math.max(0.0, last - time));
        Instant now = Instant.ofEpochSecond((long) time);
        if (k > 0 && times.home().items().stream().anyMatch(span -> span.contains(now))) {
          PlainDraw back = new PlainDraw(day.home(k, time, share));
          assertTrue(back.paddle());
          isWell(back, slowest, "home from " + k + " at " + now);
        }
        PlainDraw onward = new PlainDraw(day.onward(k, time, share));
        assertTrue(onward.paddle());
        if (slowest || k + 1 == day.legs()) {
          isWell(onward, slowest, "on from " + k + " at " + now);
        }
        time = onward.leaving(1);
      }
    }

    private void isWell(PlainDraw party, boolean slowest, String what) {
      double[] figures = party.still(new PlainDraw.Chosen());
      assertTrue(figures[PlainDraw.DAYLIGHT] >= stop[PlainDraw.DAYLIGHT] - 1.5, what);
      assertTrue(figures[PlainDraw.LEVEL_AT_END] >= lowestAtEnd(party.day()) - 0.02, what);
      assertTrue(!slowest || answer(party) != FAILS, what);
    }
  }
}
