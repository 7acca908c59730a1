package org.ferryglide.nav.landfall;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.plane.Gaussian;
import org.ferryglide.nav.position.Position;

/**
 * What becomes of a miss: which handrail or backstop catches it, on which side and after how long a
 * run.
 *
 * <p>Passages are taken as straight lines from the start that pass the target at a normally
 * distributed distance; 999 of them, at even chances, stand for all.
 *
 * <pre>{@code
 * MissedTarget missed =
 *     MissedTarget.of(leg, acrossStandardDeviation, sight, Distance.ofNauticalMiles(3))
 *         .caughtBy("mainland", coastline)
 *         .caughtBy("10 m contour", contour);
 * missed.catches().get(0).name(); // mainland
 * missed.uncaught(Side.LEFT); // 0.04: the side to stay off, so aim right
 * missed.aimedOff(aim.offset()).uncaught(Side.LEFT); // less
 * }</pre>
 */
public final class MissedTarget implements Serializable {

  private static final long serialVersionUID = 1L;

  private static final int PASSAGES = 999;

  /** A line that lies within this of the course is a handrail. */
  private static final double HANDRAIL_DEGREES = 30.0;

  private final Leg leg;
  private final double sigma;
  private final double reach;
  private final double beyond;
  private final Offset aimed;
  private final List<Backstop> lines;
  private final List<Catch> catches;
  private final double uncaughtLeft;
  private final double uncaughtRight;

  private MissedTarget(
      Leg leg,
      double sigma,
      double reach,
      double beyond,
      Offset aimed,
      List<Backstop> lines,
      List<Catch> catches,
      double uncaughtLeft,
      double uncaughtRight) {
    this.leg = leg;
    this.sigma = Arguments.notNegative(sigma, "standard deviation across", "metres");
    this.reach = Arguments.notNegative(reach, "sight", "metres");
    this.beyond = Arguments.notNegative(beyond, "run beyond the target", "metres");
    this.aimed = Objects.requireNonNull(aimed, "aimed");
    this.lines = List.copyOf(lines);
    this.catches = List.copyOf(catches);
    this.uncaughtLeft = uncaughtLeft;
    this.uncaughtRight = uncaughtRight;
  }

  /**
   * A leg whose target may be missed; without any line to catch the miss so far.
   *
   * @param leg the leg to the target
   * @param acrossStandardDeviation one standard deviation across it at the target
   * @param sight how far off the target is seen, half its width included
   * @param beyond how far one would go on past it
   * @return the question
   * @throws IllegalArgumentException if a distance is negative
   */
  public static MissedTarget of(
      Leg leg, Distance acrossStandardDeviation, Distance sight, Distance beyond) {
    return answer(
        leg,
        acrossStandardDeviation.metres(),
        sight.metres(),
        beyond.metres(),
        Offset.NONE,
        List.of());
  }

  /**
   * Having aimed off.
   *
   * @param offset how far to which side of the target one aims
   * @return the answer with everything else, the lines too, the same
   */
  public MissedTarget aimedOff(Offset offset) {
    return answer(leg, sigma, reach, beyond, offset, lines);
  }

  /**
   * With one more line that would be noticed on reaching it: a coast, a depth contour, a string of
   * buoys, the edge of a race. Lying along the course it is a handrail, lying across it a backstop.
   *
   * @param name what the paddler calls it
   * @param line its points in order, at least two
   * @return the answer with everything else, lines given before too, the same
   * @throws IllegalArgumentException if there are fewer than two points
   */
  public MissedTarget caughtBy(String name, List<Position> line) {
    List<Backstop> more = new ArrayList<>(lines);
    more.add(new Backstop(name, line));
    return answer(leg, sigma, reach, beyond, aimed, more);
  }

  private static MissedTarget answer(
      Leg leg, double sigma, double reach, double beyond, Offset aimed, List<Backstop> lines) {
    TrackFan fan = new TrackFan(leg, lines);
    int[][] caught = new int[lines.size()][2];
    double[] furthest = new double[lines.size()];
    boolean[] handrail = new boolean[lines.size()];
    int[] uncaught = new int[2];
    for (int i = 0; i < PASSAGES; i++) {
      double x = aimed.metresRight() + sigma * Gaussian.quantile((i + 0.5) / PASSAGES);
      if (Math.abs(x) <= reach) {
        continue; // found
      }
      int side = x < 0.0 ? 0 : 1;
      int line = fan.firstCrossing(x, beyond);
      if (line < 0) {
        uncaught[side]++;
      } else {
        caught[line][side]++;
        furthest[line] = Math.max(furthest[line], fan.run() - leg.length().metres());
        handrail[line] |= fan.angleDegrees() < HANDRAIL_DEGREES;
      }
    }
    List<Catch> found = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      if (caught[i][0] + caught[i][1] > 0) {
        found.add(
            new Catch(
                lines.get(i).name(),
                handrail[i],
                caught[i][0] / (double) PASSAGES,
                caught[i][1] / (double) PASSAGES,
                Distance.ofMetres(furthest[i])));
      }
    }
    found.sort((a, b) -> Double.compare(b.left() + b.right(), a.left() + a.right()));
    return new MissedTarget(
        leg,
        sigma,
        reach,
        beyond,
        aimed,
        lines,
        found,
        uncaught[0] / (double) PASSAGES,
        uncaught[1] / (double) PASSAGES);
  }

  /**
   * The lines that catch misses.
   *
   * @return the one that catches most first; unmodifiable
   */
  public List<Catch> catches() {
    return catches;
  }

  /**
   * The chance of missing the target on one side with nothing to catch the miss.
   *
   * @param side the side of the target on which one passes
   * @return a share of all passages
   */
  public double uncaught(Side side) {
    return side == Side.LEFT ? uncaughtLeft : uncaughtRight;
  }

  /**
   * The course the passages fan out from.
   *
   * @return the final course of the leg
   */
  public TrueBearing course() {
    return leg.finalCourse();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof MissedTarget that
        && leg.equals(that.leg)
        && Double.compare(sigma, that.sigma) == 0
        && Double.compare(reach, that.reach) == 0
        && Double.compare(beyond, that.beyond) == 0
        && aimed.equals(that.aimed)
        && lines.equals(that.lines)
        && catches.equals(that.catches)
        && Double.compare(uncaughtLeft, that.uncaughtLeft) == 0
        && Double.compare(uncaughtRight, that.uncaughtRight) == 0;
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        leg, sigma, reach, beyond, aimed, lines, catches, uncaughtLeft, uncaughtRight);
  }

  /** What catches the misses, for people. */
  @Override
  public String toString() {
    return "missed target caught by "
        + catches
        + ", uncaught "
        + uncaughtLeft
        + " on the left and "
        + uncaughtRight
        + " on the right";
  }

  /**
   * A line and the misses it catches.
   *
   * <pre>{@code
   * String line = caught.name() + (caught.handrail() ? " (handrail)" : " (backstop)");
   * }</pre>
   *
   * @param name what the paddler calls the line
   * @param handrail true if it lies within 30 degrees of the track where it is met
   * @param left share of all passages that pass the target on the left and are caught here
   * @param right share of all passages that pass it on the right and are caught here
   * @param furthestRun the longest run beyond the length of the leg before it is met; negative if
   *     it is met before
   */
  public record Catch(
      String name, boolean handrail, double left, double right, Distance furthestRun)
      implements Serializable {

    private static final long serialVersionUID = 1L;

    /**
     * Takes all parts; {@link MissedTarget#catches} has them.
     *
     * @param name what the paddler calls the line
     * @param handrail whether it lies along the track
     * @param left share caught here that passes on the left
     * @param right share caught here that passes on the right
     * @param furthestRun the longest run before it is met
     * @throws IllegalArgumentException if a share is NaN or outside [0, 1]
     */
    public Catch {
      Objects.requireNonNull(name, "name");
      Arguments.within(left, 0.0, 1.0, "share on the left", "(no unit)");
      Arguments.within(right, 0.0, 1.0, "share on the right", "(no unit)");
      Objects.requireNonNull(furthestRun, "furthestRun");
    }
  }
}
