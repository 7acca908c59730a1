package org.ferryglide.nav.passage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.basics.ParallelRows;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.timing.Condition;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.WindField;

/** Runs a plan through the errors, draw by draw. */
final class PlanDraws {
  /** Errors are drawn anew for so many times the planned duration; then the last ones stay. */
  private static final double LONGEST = 2.0;

  /** Handed to a thread at once: a block takes about a millisecond. */
  private static final int DRAWS_IN_BLOCK = 16;

  private final PlannedWay way;
  private final PlanErrors errors;
  private final long seed;
  private final double departure;
  private final Candidate planned;
  private final PrintedHeadings printed;
  private final Passage asDrawn;
  private final List<Condition> conditions;

  /** By draw and way point: seconds since 1970, NaN where it is not reached; then metres. */
  final double[][] arrivals;

  final double[][] east;
  final double[][] north;

  /** By draw and condition: 1 if it holds, 0 if not, NaN if it was not checked. */
  final double[][] holds;

  PlanDraws(TimedPlan plan, PlanErrors errors, int draws, long seed) {
    way = PlannedWay.of(plan);
    this.errors = errors;
    this.seed = seed;
    departure = EpochSeconds.of(plan.departure());
    Passage passage = way.passage;
    planned = Candidate.toBeDrawn(passage, way.route);
    printed = new PrintedHeadings(planned);
    // the draws stand in place of the upper end of the rates and of the width of the track
    asDrawn =
        passage.toBuilder()
            .limits(passage.limits().withRateError(0.0))
            .errors(ErrorModel.none())
            .build();
    conditions = Checks.of(asDrawn).conditions();
    arrivals = new double[draws][plan.legs().size() + 1];
    east = new double[draws][plan.legs().size() + 1];
    north = new double[draws][plan.legs().size() + 1];
    holds = new double[draws][conditions.size()];
  }

  List<String> names() {
    return conditions.stream().map(Condition::name).collect(Collectors.toList());
  }

  void run(boolean parallel) {
    if (parallel) {
      ParallelRows.share(
          0, arrivals.length, DRAWS_IN_BLOCK, 0, 1, (from, until, row) -> drawEach(from, until));
    } else {
      drawEach(0, arrivals.length);
    }
  }

  private void drawEach(int from, int until) {
    Draws draws = new Draws();
    for (int number = from; number < until; number++) {
      draws.draw(number);
    }
  }

  /** What a block of draws is made with, so that a draw makes nothing but its route. */
  private final class Draws {
    private final DrawnErrors drawn =
        new DrawnErrors(errors, LONGEST * (way.route.arrivalSeconds() - departure));
    private final Passage world = world(drawn);
    private final PassageSolver solver = PassageSolver.lean(world);
    private final WorkRoom room = new WorkRoom(world);
    private final double[] off = new double[2 * planned.size];
    private final double[] speeds = new double[way.route.legs().size()];

    void draw(int number) {
      // each draw has random numbers of its own, whatever thread it falls to
      drawn.draw(errors, departure, world.wind().isPresent(), new Normals(seed, number));
      printed.steer(drawn, off);
      for (int i = 0; i + 1 < east[number].length; i++) {
        int look = planned.lastLookOf(way.endOf(i));
        east[number][i + 1] = off[2 * look];
        north[number][i + 1] = off[2 * look + 1];
      }
      east[number][0] = drawn.plottedEast;
      north[number][0] = drawn.plottedNorth;
      Arrays.fill(arrivals[number], Double.NaN);
      double leaving = departure + drawn.departureLate;
      arrivals[number][0] = leaving;
      drawSpeeds();
      solver.leaving(leaving).solved().ifPresent(route -> check(number, route));
    }

    private void drawSpeeds() {
      for (int i = 0; i < speeds.length; i++) {
        SteeredLeg leg = way.route.legs().get(i);
        double factor =
            drawn.meanSpeedFactor(
                leg.groundTrack().startSeconds() + drawn.departureLate,
                leg.arrivalSeconds() + drawn.departureLate);
        speeds[i] = factor * world.speedOf(i).metresPerSecond();
        solver.paddleAt(i, speeds[i]);
      }
    }

    private void check(int number, SteeredRoute route) {
      for (int i = 0; i + 1 < arrivals[number].length; i++) {
        arrivals[number][i + 1] = route.legs().get(way.endOf(i)).arrivalSeconds();
      }
      Candidate candidate =
          Candidate.ofDraw(world, route, room, speeds, drawn, looks -> displace(looks, off));
      for (int i = 0; i < holds[number].length; i++) {
        Verdict verdict = candidate.against(conditions.get(i));
        boolean unknown = verdict.answer() == Verdict.Answer.NOT_CHECKED;
        holds[number][i] = unknown ? Double.NaN : verdict.holds() ? 1.0 : 0.0;
      }
      candidate.giveBack();
    }
  }

  /** Moves each look to the side by as much as the printed headings would have left the party. */
  private void displace(Candidate candidate, double[] off) {
    PlaneMetres metres = candidate.room().metres();
    int first = 0;
    int plannedFirst = 0;
    for (int number = 0; number < candidate.route.legs().size(); number++) {
      int last = candidate.lastLookOf(number);
      int plannedLast = planned.lastLookOf(number);
      double course =
          Math.toRadians(candidate.route.legs().get(number).leg().initialCourse().degrees());
      double sine = Math.sin(course);
      double cosine = Math.cos(course);
      double begin = candidate.time[first];
      double stretch =
          (planned.time[plannedLast] - planned.time[plannedFirst])
              / Math.max(1e-9, candidate.time[last] - begin);
      int same = plannedFirst;
      for (int look = first; look <= last; look++) {
        double then = planned.time[plannedFirst] + (candidate.time[look] - begin) * stretch;
        while (same + 1 < plannedLast && planned.time[same + 1] <= then) {
          same++;
        }
        double span = planned.time[same + 1] - planned.time[same];
        double part = span > 0.0 ? Math.min(1.0, (then - planned.time[same]) / span) : 0.0;
        double east = off[2 * same] + part * (off[2 * same + 2] - off[2 * same]);
        double north = off[2 * same + 1] + part * (off[2 * same + 3] - off[2 * same + 1]);
        double aside = east * cosine - north * sine;
        metres.moveTo(candidate.latitude[look]);
        candidate.latitude[look] -= aside * sine / metres.north();
        candidate.longitude[look] =
            Candidate.longitude(candidate.longitude[look] + aside * cosine / metres.east());
      }
      first = last + 1;
      plannedFirst = plannedLast + 1;
    }
  }

  /** The passage in the water and the wind of the draws of one thread. */
  private Passage world(DrawnErrors drawn) {
    WindField wind = asDrawn.wind().orElse(null);
    List<PassageLeg> legs = new ArrayList<>(asDrawn.legs());
    legs.replaceAll(
        leg ->
            leg.options().stream()
                .map(own -> leg.withOptions(leg.options().withStream(new DrawnStream(own, drawn))))
                .orElse(leg));
    return asDrawn.drawn(
        new DrawnStream(asDrawn.stream(), drawn),
        wind == null ? null : new DrawnWind(wind, drawn),
        legs);
  }
}
