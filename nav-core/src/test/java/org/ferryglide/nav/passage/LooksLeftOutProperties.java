package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.testing.Seeds;

/** What is left out, shared or carried on for speed leaves every figure as it was. */
class LooksLeftOutProperties {
  private static Position near(Random random, double miles) {
    double reach = miles / 60.0;
    return Position.ofDegrees(
        46.0 + reach * (2.0 * random.nextDouble() - 1.0),
        -26.0 + 1.4 * reach * (2.0 * random.nextDouble() - 1.0));
  }

  private static Danger danger(Random random, int number) {
    Position first = near(random, 6.0);
    Distance keepOff = Distance.ofMetres(600.0 * random.nextDouble());
    String name = "Danger " + number;
    Danger danger =
        random.nextBoolean()
            ? Danger.point(name, first, keepOff)
            : Danger.area(
                name,
                List.of(
                    first,
                    Position.ofDegrees(
                        first.latitudeDegrees() + 0.02 * random.nextDouble(),
                        first.longitudeDegrees() + 0.01),
                    Position.ofDegrees(first.latitudeDegrees() + 0.005, first.longitudeDegrees())),
                keepOff);
    return switch (random.nextInt(4)) {
      case 0 -> danger.closedAboveStream(Speed.ofKnots(0.3 + random.nextDouble()));
      case 1 -> danger.closedAboveWind(Speed.ofKnots(9)); // no wind is known
      default -> danger;
    };
  }

  private static Passage passage(Random random) {
    PassageBuilder builder =
        Passage.builder("dangers", ZoneOffset.UTC, Scenes.party(3.0 + 1.5 * random.nextDouble()))
            .from(WayPoint.of("0", near(random, 4.0)))
            .stream(Scenes.turning(2.0 * random.nextDouble()));
    int legs = 1 + random.nextInt(4);
    for (int i = 1; i <= legs; i++) {
      WayPoint place = WayPoint.of("" + i, near(random, 4.0));
      builder.to(
          random.nextInt(4) == 0
              ? place.withStop(Stop.ashore(java.time.Duration.ofMinutes(20)))
              : place);
    }
    List<Danger> dangers = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      dangers.add(danger(random, i));
    }
    return builder.dangers(dangers).build();
  }

  @Property(seed = Seeds.SEED, tries = 150 * Seeds.MORE_IN_THE_SOAK)
  void theNearestIsTheNearestOfAllLooks(@ForAll Random random) {
    Passage passage = passage(random);
    TimedPlan plan = TimedPlan.of(passage, Scenes.NOON).solved().orElse(null);
    Assume.that(plan != null); // not too strong a stream
    Candidate candidate = new Candidate(passage, plan.route());
    for (Danger danger : passage.dangers().orElseThrow()) {
      DangerCheck check = new DangerCheck(passage, danger);
      double least = Double.POSITIVE_INFINITY;
      boolean unknown = false;
      for (int look = 0; look < candidate.size; look++) {
        double figure = check.figure(candidate, look);
        unknown |= Double.isNaN(figure);
        least = figure < least ? figure : least;
      }
      Verdict verdict = check.check(candidate);
      if (unknown && !(least < 0.0)) {
        assertEquals(Verdict.Answer.NOT_CHECKED, verdict.answer());
      } else if (Double.isInfinite(least)) {
        assertEquals(Verdict.Answer.WITHIN, verdict.answer());
      } else {
        assertEquals(least, verdict.figure().orElseThrow());
      }
    }
  }

  @Property(seed = Seeds.SEED, tries = 60)
  void placesOfOneSweepArePlacesOneByOne(@ForAll Random random) {
    TimedPlan plan = TimedPlan.of(passage(random), Scenes.NOON).solved().orElse(null);
    Assume.that(plan != null); // not too strong a stream
    SteeredLeg leg = plan.route().legs().get(0);
    double[] times = new double[40];
    double span = leg.groundTrack().endSeconds() - leg.groundTrack().startSeconds();
    for (int i = 0; i < times.length; i++) {
      times[i] = leg.groundTrack().startSeconds() + span * (i - 2) / 36.0; // beyond both ends too
    }
    double[] each = new double[3 * times.length];
    leg.groundTrack().atEach(times, 0, times.length, each, 0);
    double[] one = new double[3 * times.length];
    for (int i = 0; i < times.length; i++) {
      leg.groundTrack().at(times[i], one, 3 * i);
    }
    assertArrayEquals(one, each);
  }

  /** Each hour as it begins, wherever the looks lie, and the strongest stream of each leg. */
  @Property(seed = Seeds.SEED, tries = 60)
  void driftsAreAskedOnEachHourAndInTheStrongestStream(@ForAll Random random) {
    Passage passage = passage(random);
    TimedPlan plan = TimedPlan.of(passage, Scenes.NOON).solved().orElse(null);
    Assume.that(plan != null); // not too strong a stream
    Candidate candidate = new Candidate(passage, plan.route());
    List<Integer> asked = new ArrayList<>();
    for (int look = 0; look < candidate.size; look++) {
      boolean onTheHour = look == 0 || hours(candidate, look) != hours(candidate, look - 1);
      if (onTheHour || look == candidate.strongest(candidate.leg[look])) {
        asked.add(look);
      }
    }
    assertArrayEquals(
        asked.stream().mapToInt(Integer::intValue).toArray(), DriftCheck.asked(candidate));
  }

  private static long hours(Candidate candidate, int look) {
    return (long) Math.floor((candidate.time[look] - candidate.time[0]) / 3600.0);
  }

  /** The reserve of the check and of the hours, worked out once, is that of each look alone. */
  @Property(seed = Seeds.SEED, tries = 60)
  void theReserveWorkedOutOnceIsThatOfEachLook(@ForAll Random random) {
    Passage passage = passage(random);
    TimedPlan plan = TimedPlan.of(passage, Scenes.NOON).solved().orElse(null);
    Assume.that(plan != null); // not too strong a stream
    Candidate candidate = new Candidate(passage, plan.route());
    ReserveCheck check = new ReserveCheck(passage);
    for (int look = 0; look < candidate.size; look++) {
      assertEquals(check.worked(candidate, look), check.figure(candidate, look));
      assertEquals(
          check.worked(candidate, look), new ReserveCheck(passage).figure(candidate, look));
    }
  }

  /** Segments left out by their bounds are not crossed: a line is crossed where one of its is. */
  @Property(seed = Seeds.SEED, tries = 100)
  void aLongLineIsCrossedWhereOneOfItsSegmentsIs(@ForAll Random random) {
    List<Position> line = new ArrayList<>();
    int points = 2 + random.nextInt(80);
    for (int i = 0; i < points; i++) {
      line.add(near(random, 6.0));
    }
    Outline whole = Outline.line(line, "a shore");
    for (int way = 0; way < 20; way++) {
      Position from = near(random, 6.0);
      double reach = 0.05 * random.nextDouble();
      Position to =
          Position.ofDegrees(
              from.latitudeDegrees() + reach * (random.nextDouble() - 0.5),
              from.longitudeDegrees() + reach * (random.nextDouble() - 0.5));
      if (isTouched(line, from, to)) {
        continue; // each segment lies on a plane of its own
      }
      boolean crossed = false;
      for (int i = 0; i + 1 < points; i++) {
        crossed |= isCrossed(Outline.line(line.subList(i, i + 2), "a segment"), from, to);
      }
      assertEquals(crossed, isCrossed(whole, from, to));
    }
  }

  /** Whether an end of the way or a corner of the line is too near the other to tell. */
  private static boolean isTouched(List<Position> line, Position from, Position to) {
    double near = 50.0;
    Outline way = Outline.line(List.of(from, to), "the way");
    Outline whole = Outline.line(line, "a shore");
    boolean touched = false;
    for (Position corner : line) {
      touched |= way.distance(corner.latitudeDegrees(), corner.longitudeDegrees()) < near;
    }
    return touched
        || whole.distance(from.latitudeDegrees(), from.longitudeDegrees()) < near
        || whole.distance(to.latitudeDegrees(), to.longitudeDegrees()) < near;
  }

  private static boolean isCrossed(Outline line, Position from, Position to) {
    return !Double.isNaN(
        line.crossed(
            from.latitudeDegrees(),
            from.longitudeDegrees(),
            to.latitudeDegrees(),
            to.longitudeDegrees(),
            at -> true));
  }

  /** The slower party's times are those of its whole answer. */
  @Property(seed = Seeds.SEED, tries = 60)
  void timesAloneAreTheTimesOfTheRoute(@ForAll Random random) {
    Passage passage = passage(random);
    PassageSolver solver = PassageSolver.lean(passage);
    double departure = Scenes.NOON.getEpochSecond();
    double[] times = solver.times(departure);
    solver
        .leaving(departure)
        .match(
            route -> {
              for (int i = 0; i < route.legs().size(); i++) {
                assertEquals(
                    route.legs().get(i).departure().toEpochMilli() / 1e3, times[2 * i], 0.002);
                assertEquals(
                    route.legs().get(i).arrival().toEpochMilli() / 1e3, times[2 * i + 1], 0.002);
              }
              return true;
            },
            why -> {
              assertEquals(0, times.length);
              return false;
            });
  }

  /** A part in a million, within 80° of the equator. */
  @Example
  void metresOfADegreeAreCarriedOnByTheirSlope() {
    PlaneMetres metres = new PlaneMetres();
    double worst = 0.0;
    for (double start = -80.0; start <= 80.0; start += 1.7) {
      metres.restart();
      metres.moveTo(start);
      for (double off = -0.07; off <= 0.07; off += 0.01) {
        double latitude = start + off;
        metres.moveTo(latitude);
        worst = Math.max(worst, Math.abs(metres.east() / PlaneMetres.east(latitude) - 1.0));
        worst = Math.max(worst, Math.abs(metres.north() / PlaneMetres.north(latitude) - 1.0));
      }
    }
    assertTrue(worst < 1e-6, "" + worst);
  }
}
