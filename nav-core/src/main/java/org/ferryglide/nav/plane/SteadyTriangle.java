package org.ferryglide.nav.plane;

import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.steer.Reason;

/**
 * The current triangle on plain doubles: the water track that makes good a course in a steady
 * stream, in closed form.
 *
 * <p>With the stream's part across the course {@code c} and along it {@code a}, and the speed
 * through the water {@code v}, the water track lies {@code asin(c/v)} up-stream of the course and
 * the speed made good is {@code a + sqrt(v² − c²)}. It can be steered when {@code |c| ≤ v} and the
 * speed made good is above zero. A stream that outruns the craft can still be used while it sets
 * within {@code asin(v/u)} of the course; then two headings hold the track, and {@link #solve}
 * gives the faster, {@link #slower} the other.
 *
 * <pre>{@code
 * double[] out = new double[2];
 * int finding = SteadyTriangle.solve(90.0, 1.80, 0.0, -0.62, out, 0); // stream sets south
 * // finding == SteadyTriangle.SOLVED, out[0] = 069.9°, out[1] = 1.69 m/s
 * }</pre>
 *
 * <p>Nothing is allocated. NaN in any argument gives NaN in the outputs and {@link #UNDEFINED}. The
 * speed made good is computed without cancellation when the stream is against the craft; its
 * relative error is at most 1e-12 while it is above a hundredth of the speed through the water,
 * held to that by a property test against 50-digit arithmetic.
 */
public final class SteadyTriangle {
  /** The course can be made good. */
  public static final int SOLVED = 0;

  /** The stream across the course is faster than the craft: {@link Reason#CROSS_STREAM}. */
  public static final int CROSS_STREAM = 1;

  /** The craft would be carried back along the course: {@link Reason#ADVERSE_STREAM}. */
  public static final int ADVERSE_STREAM = 2;

  /**
   * No way is made: no stream and no speed, or the craft just stems the stream, to 1e-9 of the
   * speeds; or it has no speed and the stream is dead against it. {@link Reason#NO_PROGRESS}.
   */
  public static final int NO_PROGRESS = 3;

  /** An argument is NaN. */
  public static final int UNDEFINED = 4;

  /** Speed made good below this share of the speeds it is made of is none. */
  private static final double NO_WAY = 1e-9;

  /** Rounding of the parts of a stream along and across a course, as a share of it. */
  private static final double ROUNDING = 1e-14;

  private SteadyTriangle() {}

  /**
   * The water track and the speed made good; of two, the faster.
   *
   * @param courseDegrees course to make good, degrees from true north, any finite angle
   * @param waterSpeed speed through the water, metres a second, at least 0; at 0 the stream alone
   *     must set exactly along the course, and the water track returned is the course
   * @param streamEast stream's part to the east, metres a second
   * @param streamNorth stream's part to the north, metres a second
   * @param out receives the water track, degrees in [0, 360), then the speed made good, metres a
   *     second, above 0; both NaN unless the result is {@link #SOLVED}
   * @param offset index of the water track in {@code out}
   * @return {@link #SOLVED}, or why not
   */
  public static int solve(
      double courseDegrees,
      double waterSpeed,
      double streamEast,
      double streamNorth,
      double[] out,
      int offset) {
    double course = Math.toRadians(courseDegrees);
    double sine = Math.sin(course);
    double cosine = Math.cos(course);
    double along = streamEast * sine + streamNorth * cosine;
    double across = streamEast * cosine - streamNorth * sine;
    int finding = finding(along, across, waterSpeed);
    if (finding != SOLVED) {
      out[offset] = Double.NaN;
      out[offset + 1] = Double.NaN;
      return finding;
    }
    out[offset] = reduced(courseDegrees - ferryAngleDegrees(across, waterSpeed));
    out[offset + 1] = speedMadeGood(along, across, waterSpeed);
    return SOLVED;
  }

  /**
   * The slower of two water tracks that hold the same course, when the stream outruns the craft.
   *
   * @param courseDegrees course to make good, degrees from true north, any finite angle
   * @param waterSpeed speed through the water, metres a second, at least 0
   * @param streamEast stream's part to the east, metres a second
   * @param streamNorth stream's part to the north, metres a second
   * @param out receives the water track, degrees in [0, 360), then the speed made good, metres a
   *     second, above 0; both NaN if there is no second water track
   * @param offset index of the water track in {@code out}
   * @return true if there is a second water track, which is so only when the stream is faster than
   *     the craft and sets within {@code asin(v/u)} of the course
   */
  public static boolean slower(
      double courseDegrees,
      double waterSpeed,
      double streamEast,
      double streamNorth,
      double[] out,
      int offset) {
    double course = Math.toRadians(courseDegrees);
    double sine = Math.sin(course);
    double cosine = Math.cos(course);
    double along = streamEast * sine + streamNorth * cosine;
    double across = streamEast * cosine - streamNorth * sine;
    double root = Math.sqrt((waterSpeed - across) * (waterSpeed + across));
    double excess = along * along + across * across - waterSpeed * waterSpeed;
    if (!(along > 0.0 && excess > 0.0 && root > 0.0)) { // written so that NaN fails
      out[offset] = Double.NaN;
      out[offset + 1] = Double.NaN;
      return false;
    }
    out[offset] = reduced(courseDegrees + 180.0 + ferryAngleDegrees(across, waterSpeed));
    out[offset + 1] = excess / (along + root);
    return true;
  }

  /**
   * Many triangles at once.
   *
   * @param courseDegrees courses to make good, degrees from true north
   * @param waterSpeed speeds through the water, metres a second
   * @param streamEast streams' parts to the east, metres a second
   * @param streamNorth streams' parts to the north, metres a second
   * @param from first row
   * @param to row after the last
   * @param waterTrackDegrees receives the water tracks, degrees in [0, 360); NaN where not possible
   * @param speedMadeGood receives the speeds made good, metres a second; NaN where not possible
   * @throws IndexOutOfBoundsException if an array is too short
   */
  public static void solve(
      double[] courseDegrees,
      double[] waterSpeed,
      double[] streamEast,
      double[] streamNorth,
      int from,
      int to,
      double[] waterTrackDegrees,
      double[] speedMadeGood) {
    for (int i = from; i < to; i++) {
      double course = Math.toRadians(courseDegrees[i]);
      double sine = Math.sin(course);
      double cosine = Math.cos(course);
      double along = streamEast[i] * sine + streamNorth[i] * cosine;
      double across = streamEast[i] * cosine - streamNorth[i] * sine;
      boolean solved = finding(along, across, waterSpeed[i]) == SOLVED;
      waterTrackDegrees[i] =
          solved
              ? reduced(courseDegrees[i] - ferryAngleDegrees(across, waterSpeed[i]))
              : Double.NaN;
      speedMadeGood[i] = solved ? speedMadeGood(along, across, waterSpeed[i]) : Double.NaN;
    }
  }

  /**
   * Whether a course can be made good.
   *
   * @param along the stream's part along the course, metres a second, positive when it helps
   * @param across the stream's part across the course, metres a second, positive to the right
   * @param waterSpeed speed through the water, metres a second
   * @return {@link #SOLVED}, or why not
   */
  public static int finding(double along, double across, double waterSpeed) {
    if (Double.isNaN(along + across + waterSpeed)) {
      return UNDEFINED;
    }
    double stream = Math.abs(along) + Math.abs(across);
    if (waterSpeed == 0.0 && Math.abs(across) <= ROUNDING * stream) {
      // the stream alone, straight along the course or against it but for the rounding of its parts
      return along > 0.0 ? SOLVED : NO_PROGRESS;
    }
    if (Math.abs(across) > waterSpeed) {
      return CROSS_STREAM;
    }
    double madeGood = speedMadeGood(along, across, waterSpeed);
    double none = NO_WAY * (waterSpeed + stream);
    if (madeGood > none) {
      return SOLVED;
    }
    return madeGood < -none ? ADVERSE_STREAM : NO_PROGRESS;
  }

  /** Speed made good on the faster heading, for |across| ≤ waterSpeed; not above 0 if adverse. */
  public static double speedMadeGood(double along, double across, double waterSpeed) {
    double square = (waterSpeed - across) * (waterSpeed + across);
    double root = square < 0.0 ? 0.0 : Math.sqrt(square); // by rounding, where there is no speed
    if (along >= 0.0) {
      return along + root;
    }
    // the same sum without taking two like numbers from each other
    double spare = square - along * along;
    return spare / (root - along);
  }

  /**
   * How far the water track must lie to the left of the course, degrees. The arc sine by way of the
   * other side of the triangle: well conditioned near a right angle, and quicker.
   */
  public static double ferryAngleDegrees(double across, double waterSpeed) {
    if (waterSpeed == 0.0) {
      return 0.0;
    }
    double root = Math.sqrt((waterSpeed - across) * (waterSpeed + across));
    return Math.toDegrees(Math.atan2(across, root));
  }

  /** An angle that is seldom more than a turn out, in [0, 360). */
  private static double reduced(double degrees) {
    return degrees >= 0.0 && degrees < 360.0 ? degrees + 0.0 : Angles.reduced(degrees);
  }

  /** The least speed through the water that holds the course and does not lose ground along it. */
  public static double leastWaterSpeed(double along, double across) {
    return along >= 0.0 ? Math.abs(across) : Math.hypot(along, across);
  }
}
