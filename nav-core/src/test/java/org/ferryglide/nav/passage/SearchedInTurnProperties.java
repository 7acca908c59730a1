package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.Arrivals;
import org.ferryglide.nav.timing.Departure;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.Found;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.Window;
import org.ferryglide.testing.Seeds;

/** A search that asks no more than it needs finds what asking everything finds. */
class SearchedInTurnProperties {
  private static final double LOOK_SECONDS = 600.0;

  private static Position near(Random random, double miles) {
    double reach = miles / 60.0;
    return Position.ofDegrees(
        46.0 + reach * (2.0 * random.nextDouble() - 1.0),
        -26.0 + 1.4 * reach * (2.0 * random.nextDouble() - 1.0));
  }

  private static Landing landing(Random random) {
    return random.nextBoolean()
        ? Landing.atAnyLevel()
        : Landing.between(
            "Bar", Distance.ofMetres(1.0 + 2.0 * random.nextDouble()), Distance.ofMetres(9.0));
  }

  /**
   * A stream that tells how fast it is at most, so that far landings need not be asked for, and
   * whose data may end.
   */
  private static StreamField bounded(double knots, double end) {
    StreamField turning = Scenes.turning(knots);
    return new StreamField() {
      private static final long serialVersionUID = 1L;

      @Override
      public boolean sample(
          double latitude, double longitude, double seconds, double[] eastNorth, int offset) {
        return seconds < end && turning.sample(latitude, longitude, seconds, eastNorth, offset);
      }

      @Override
      public Optional<Speed> maxRate() {
        return Optional.of(Speed.ofKnots(knots));
      }
    };
  }

  private static Passage passage(Random random) {
    double end =
        random.nextBoolean()
            ? EpochSeconds.of(Scenes.NOON) + 3600.0 * (2.0 + 8.0 * random.nextDouble())
            : Double.POSITIVE_INFINITY;
    PassageBuilder builder =
        Passage.builder("in turn", ZoneOffset.UTC, Scenes.party(3.0 + 1.5 * random.nextDouble()))
            .from(WayPoint.of("0", near(random, 3.0)).withLanding(landing(random)))
            .stream(bounded(2.5 * random.nextDouble(), end))
            .level("Bar", Scenes.level());
    int legs = 2 + random.nextInt(2);
    for (int i = 1; i <= legs; i++) {
      WayPoint place = WayPoint.of("" + i, near(random, 3.0));
      builder.to(random.nextBoolean() ? place.withLanding(landing(random)) : place);
    }
    for (int i = 0; i < random.nextInt(4); i++) {
      builder.refuge(WayPoint.of("refuge " + i, near(random, 4.0)).withLanding(landing(random)));
    }
    List<Danger> dangers = new ArrayList<>();
    int rocks = random.nextInt(3);
    for (int i = 0; i < rocks; i++) {
      dangers.add(
          Danger.point("rock " + i, near(random, 4.0), Distance.ofMetres(200))
              .closedAboveStream(Speed.ofKnots(0.3 + random.nextDouble())));
    }
    long warning = random.nextBoolean() ? 10L + random.nextInt(30) : 90L;
    return builder
        .dangers(dangers)
        .limits(
            PassageLimits.none()
                .withTimeToLanding(
                    Duration.ofMinutes(warning),
                    Duration.ofMinutes(warning + random.nextInt(60)).plusMinutes(1)))
        .build();
  }

  /** The ways to all landings from all looks, in their order. */
  private static double slowest(Passage slow, Candidate candidate) {
    List<WayPoint> places = new ArrayList<>(slow.wayPoints());
    places.addAll(slow.refuges());
    Arrivals arrivals = Arrivals.of(PassageSolver.solver(slow, LegOptions.usual()));
    double ashore = Seconds.of(slow.party().landing());
    double asked = Double.NEGATIVE_INFINITY;
    double worst = -1.0;
    for (int look = 0; look < candidate.size; look++) {
      double time = candidate.time[look];
      if (time - asked < LOOK_SECONDS && look + 1 < candidate.size) {
        continue;
      }
      asked = time;
      double best = Double.POSITIVE_INFINITY;
      Position here = Position.ofDegrees(candidate.latitude[look], candidate.longitude[look]);
      for (WayPoint place : places) {
        Landing landing = place.landing().orElse(null);
        if (landing == null) {
          continue;
        }
        RhumbLeg leg = RhumbLeg.between(here, place.position());
        double arrival = leg.length().metres() > 10.0 ? arrivals.at(leg, time) : time;
        if (!Double.isNaN(arrival)
            && LandingCheck.beside(slow, place, landing)
                .usable(arrival, arrival + ashore)
                .holds()) {
          best = Math.min(best, arrival - time);
        }
      }
      worst = Math.max(worst, best);
    }
    return worst;
  }

  @Property(seed = Seeds.SEED, tries = 60 * Seeds.MORE_IN_THE_SOAK)
  void theTimeToALandingIsThatOfTheNearestOfAll(@ForAll Random random) {
    Passage passage = passage(random);
    TimedPlan plan = TimedPlan.of(passage, Scenes.NOON).solved().orElse(null);
    if (plan == null) {
      return; // too strong a stream
    }
    double seconds = slowest(passage.slower(), new Candidate(passage, plan.route()));
    Verdict verdict = Told.of(plan, "time to a usable landing");
    if (Double.isInfinite(seconds)) {
      assertFalse(verdict.holds()); // stopped, or not known
    } else {
      assertEquals(seconds / 60.0, verdict.figure().orElseThrow());
    }
  }

  private static String told(Verdict verdict) {
    return verdict + " " + verdict.note().data() + " " + verdict.when();
  }

  /** What is told of a time to a landing does not hang on what was found worse before it. */
  @Property(seed = Seeds.SEED, tries = 60 * Seeds.MORE_IN_THE_SOAK)
  void aWorseTimeToALandingIsToldAsItIs(@ForAll Random random) {
    Passage passage = passage(random);
    TimedPlan plan = TimedPlan.of(passage, Scenes.NOON).solved().orElse(null);
    Assume.that(plan != null); // too strong a stream
    Candidate candidate = new Candidate(passage, Objects.requireNonNull(plan).route());
    ReachCheck check = new ReachCheck(passage);
    Verdict whole = check.check(candidate);
    Statistics.label("beyond")
        .collect(whole.note().data().containsKey("beyondMinutes"))
        .coverage(coverage -> coverage.check(true).percentage(share -> share > 5.0));
    if (whole.margin().isPresent()) {
      for (double more : new double[] {1e-6, 0.3, 1e6}) {
        Verdict worse = check.worseThan(candidate, whole.margin().getAsDouble() + more);
        assertEquals(told(whole), told(Objects.requireNonNull(worse)));
      }
    }
  }

  /**
   * Which departures are fit and which are known, and how little their margin is where all hold.
   */
  @Property(seed = Seeds.SEED, tries = 20 * Seeds.MORE_IN_THE_SOAK)
  void allChecksInTurnAreAllChecksTogether(@ForAll Random random) {
    Passage part = PartPassages.withSlower(passage(random));
    InTurn inTurn = new InTurn(part);
    Set<Verdict.Answer> answers = EnumSet.noneOf(Verdict.Answer.class);
    WhenToGo whole =
        WhenToGo.search(
            part, Scenes.NOON, Scenes.NOON.plus(Duration.ofHours(6)), Duration.ofMinutes(20));
    for (Departure departure : whole.choices()) {
      departure
          .outcome()
          .solved()
          .ifPresent(
              route -> {
                Verdict verdict = inTurn.check(route);
                answers.add(verdict.answer());
                assertEquals(departure.isFit(), verdict.holds());
                assertEquals(departure.isKnown(), verdict.answer() != Verdict.Answer.NOT_CHECKED);
                if (departure.isFit()) { // beyond 1 what has no figure is not counted by the search
                  assertEquals(
                      Math.min(1.0, WhenToGo.worstMargin(departure)),
                      Math.min(1.0, verdict.margin().orElseThrow()),
                      1e-12);
                }
              });
    }
    boolean holds =
        answers.contains(Verdict.Answer.WITHIN) || answers.contains(Verdict.Answer.WARNED);
    Statistics.label("some hold").collect(holds);
    Statistics.label("some unknown").collect(answers.contains(Verdict.Answer.NOT_CHECKED));
    Statistics.label("some stopped").collect(answers.contains(Verdict.Answer.STOPPED));
  }

  @Property(seed = Seeds.SEED, tries = 15 * Seeds.MORE_IN_THE_SOAK)
  void theSpansAreThoseOfAllChecksTogether(@ForAll Random random) {
    Passage passage = passage(random);
    TimedPlan plan = TimedPlan.of(passage, Scenes.NOON).solved().orElse(null);
    if (plan == null) {
      return;
    }
    Duration step = Duration.ofMinutes(10);
    Instant until = plan.arrival().plus(Duration.ofHours(6));
    List<TurnTimes> turns = WayHome.of(plan, until, step).turns();
    int last = turns.size() - 1;
    for (int i = 1; i <= last; i++) {
      assertEquals(
          together(PartPassages.home(passage, i), plan, i, until, step), turns.get(i).home());
    }
    assertEquals(
        together(PartPassages.onward(passage, last), plan, last, until, step),
        turns.get(last).goingOn());
  }

  private static Found<Window> together(
      Passage part, TimedPlan plan, int wayPoint, Instant until, Duration step) {
    Instant from =
        EpochSeconds.toInstant(Math.ceil(EpochSeconds.of(plan.route().leavingAt(wayPoint))));
    return WhenToGo.search(PartPassages.withSlower(part), from, until, step).windows();
  }
}
