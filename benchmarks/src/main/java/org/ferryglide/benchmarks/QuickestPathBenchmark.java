package org.ferryglide.benchmarks;

import java.time.Instant;
import java.util.concurrent.TimeUnit;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.nav.steer.WindResponse;
import org.ferryglide.nav.water.WindField;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What does the quickest path cost? Across a channel 10 NM wide, whose stream is strongest in the
 * middle and turns with the tide, in calm air and in wind; past three islands of 1000 corners
 * together; and on a tidal day of 30 NM. Beside it the straight answers for the channel.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class QuickestPathBenchmark extends InFixedHeap {
  private Leg leg = QuickestPathWaters.leg(10);
  private Leg day = QuickestPathWaters.leg(30);
  private Instant departure = Instant.parse("2026-06-14T10:00:00Z");
  private CourseToSteer solver =
      CourseToSteer.with(
          Craft.ofSpeed(Speed.ofKnots(3.5)), QuickestPathWaters.tidalChannel(leg, 1.2));
  private CourseToSteer inWind =
      solver
          .withCraft(
              solver
                  .craft()
                  .withWindResponse(WindResponse.commonPractice(WindResponse.Trim.ORDINARY)))
          .withWind(
              WindField.steady(Velocity.ofWind(TrueBearing.ofDegrees(300), Speed.ofKnots(12))));
  private CourseToSteer varied =
      CourseToSteer.with(solver.craft(), QuickestPathWaters.tidalWaters(leg.start()));
  private Strategy coasts = Strategy.quickestAround(QuickestPathWaters.islands(leg, 1000));

  /** The quickest path of all. */
  @Benchmark
  public Outcome<SteeredLeg, NotPossible> quickestPath() {
    return solver.withStrategy(Strategy.quickest()).solve(leg, departure);
  }

  /** The same in a wind of force 4 on the bow, with leeway. */
  @Benchmark
  public Outcome<SteeredLeg, NotPossible> quickestPathInWind() {
    return inWind.withStrategy(Strategy.quickest()).solve(leg, departure);
  }

  /** Among coasts of 1000 corners. */
  @Benchmark
  public Outcome<SteeredLeg, NotPossible> quickestPathPastCoasts() {
    return varied.withStrategy(coasts).solve(leg, departure);
  }

  /** 30 NM, for which a tide turns. */
  @Benchmark
  public Outcome<SteeredLeg, NotPossible> quickestPathOfADay() {
    return varied.withStrategy(Strategy.quickest()).solve(day, departure);
  }

  /** One heading held. */
  @Benchmark
  public Outcome<SteeredLeg, NotPossible> oneHeading() {
    return solver.solve(leg, departure);
  }

  /** The track held. */
  @Benchmark
  public Outcome<SteeredLeg, NotPossible> trackHeld() {
    return solver.withStrategy(Strategy.trackHeld()).solve(leg, departure);
  }
}
