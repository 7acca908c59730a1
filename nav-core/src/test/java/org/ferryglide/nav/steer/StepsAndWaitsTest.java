package org.ferryglide.nav.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.quickest.PlanePatch;
import org.ferryglide.nav.water.StreamField;
import org.junit.jupiter.api.Test;

/** Quickest paths that wait, and paths steered in steps, keep out of land and closed areas. */
class StepsAndWaitsTest {
  private static final double SPEED = 1.5;
  private static final Instant DEPARTURE = Instant.parse("2026-06-14T10:00:00Z");
  private static final Leg LEG = RhumbLeg.between(PlanePatch.at(0, 0), PlanePatch.at(6, 0));

  private static CourseToSteer solver(StreamField stream, Strategy strategy) {
    return CourseToSteer.with(Craft.ofSpeed(Speed.ofMetresPerSecond(SPEED)), stream)
        .withStrategy(strategy)
        .withLimits(SteeringLimits.NONE);
  }

  private static List<Position> box(double west, double south, double east, double north) {
    return List.of(
        PlanePatch.at(west, south),
        PlanePatch.at(east, south),
        PlanePatch.at(east, north),
        PlanePatch.at(west, north));
  }

  private static List<Position> acrossAll(double west, double east) {
    return box(west, -30, east, 30);
  }

  private static TimeSpan shut(long from, long until) {
    return TimeSpan.of(DEPARTURE.plusSeconds(from), Duration.ofSeconds(until - from));
  }

  /** Seconds of tracks within a box between two times after the departure. */
  private static int secondsInside(
      List<GroundTrack> tracks,
      double west,
      double south,
      double east,
      double north,
      double from,
      double until) {
    int inside = 0;
    for (GroundTrack track : tracks) {
      for (TrackPoint point : track.pointsEvery(1.0)) {
        double x = PlanePatch.x(point.position().longitudeDegrees());
        double y = PlanePatch.y(point.position().latitudeDegrees());
        double after = Duration.between(DEPARTURE, point.time()).toMillis() / 1000.0;
        if (x > west && x < east && y > south && y < north && after > from && after < until) {
          inside++;
        }
      }
    }
    return inside;
  }

  private static List<GroundTrack> tracks(SteeredRoute route) {
    List<GroundTrack> tracks = new ArrayList<>();
    for (SteeredLeg leg : route.legs()) {
      tracks.add(leg.groundTrack());
    }
    return tracks;
  }

  @Test
  void stepsGoRoundTheIslandTheirPathGoesRound() {
    CourseToSteer solver =
        solver(StreamField.slack(), Strategy.quickestAround(List.of(box(2.5, -1, 3.5, 1.6))));
    SteeredLeg path = solver.solve(LEG, DEPARTURE).orElseThrow();
    for (int minutes : new int[] {5, 15, 30}) {
      SteeredRoute steps = solver.inSteps(path, Duration.ofMinutes(minutes)).orElseThrow();
      assertEquals(
          0, secondsInside(tracks(steps), 2.5, -1, 3.5, 1.6, -1, 1e9), minutes + " minutes");
      double lost = steps.arrivalSeconds() - path.arrivalSeconds();
      final double rounding = 1.0; // the path passes corners at 2 m, steps of a second nearer
      assertTrue(lost > -rounding, lost + " s lost");
    }
  }

  @Test
  void stepsWaitWhereTheirPathWaits() {
    CourseToSteer solver =
        solver(
            StreamField.slack(),
            Strategy.quickest().withClosure(acrossAll(2.9, 3.1), shut(0, 4000)));
    SteeredLeg path = solver.solve(LEG, DEPARTURE).orElseThrow();
    SteeredRoute steps = solver.inSteps(path, Duration.ofMinutes(15)).orElseThrow();
    assertEquals(0, secondsInside(tracks(steps), 2.9, -30, 3.1, 30, -1, 4000));
    double soonest = 4000 + 3100 / SPEED; // from the bar to the end
    double took = steps.duration().toMillis() / 1000.0;
    assertTrue(took > soonest && steps.arrivalSeconds() < path.arrivalSeconds() + 1.0, took + " s");
    assertEquals(soonest, path.duration().toMillis() / 1000.0, 0.001 * soonest);
  }

  @Test
  void stepsThatCannotKeepOutOfWhatThePathKeepsOutOfAreNoAnswer() {
    SteeredLeg path =
        solver(
                StreamField.slack(),
                Strategy.quickest().withClosure(acrossAll(2.9, 3.1), shut(2100, 8000)))
            .solve(LEG, DEPARTURE)
            .orElseThrow();
    assertEquals(6000 / SPEED, path.duration().toMillis() / 1000.0, 1.0);
    // a slower craft comes too late to pass before the area closes
    NotPossible why =
        solver(StreamField.slack(), Strategy.quickest())
            .withCraft(Craft.ofSpeed(Speed.ofMetresPerSecond(1.2)))
            .inSteps(path, Duration.ofMinutes(15))
            .why()
            .orElseThrow();
    assertEquals(Reason.NO_ROOM, why.reason());
  }

  @Test
  void nobodyWaitsInAnAreaThatClosesMeanwhile() {
    SteeredLeg path =
        solver(
                StreamField.slack(),
                Strategy.quickest()
                    .withClosure(acrossAll(2.9, 3.1), shut(0, 9000))
                    .withClosure(acrossAll(1.5, 2.9), shut(3500, 9000)))
            .solve(LEG, DEPARTURE)
            .orElseThrow();
    List<GroundTrack> tracks = List.of(path.groundTrack());
    assertEquals(0, secondsInside(tracks, 1.5, -30, 2.9, 30, 3500, 9000));
    assertEquals(0, secondsInside(tracks, 2.9, -30, 3.1, 30, -1, 9000));
    // waiting at the edge until it opens, and 4.5 km from there
    double soonest = 9000 + 4500 / SPEED;
    double took = path.duration().toMillis() / 1000.0;
    assertTrue(took > soonest - 5 && took < soonest + 30, took + " s, at best " + soonest);
  }

  /** A stream across that peaks while the craft waits: all of it is met. */
  @Test
  void theStreamMetWhileWaitingCounts() {
    double start = DEPARTURE.getEpochSecond();
    StreamField stream =
        (latitude, longitude, seconds, out, offset) -> {
          double apart = (seconds - start - 3000) / 400;
          out[offset] = 0.0;
          out[offset + 1] = 1.35 * Math.exp(-apart * apart);
          return true;
        };
    SteeredLeg path =
        solver(stream, Strategy.quickest().withClosure(acrossAll(2.9, 3.1), shut(0, 6000)))
            .solve(LEG, DEPARTURE)
            .orElseThrow();
    assertEquals(1.35, path.greatestStreamShare() * SPEED, 0.02);
    assertEquals(0.15, path.reserve().metresPerSecond(), 0.02);
    assertFalse(path.notes().stream().anyMatch(note -> note.text().contains("stream, 0.0 kn")));
  }
}
