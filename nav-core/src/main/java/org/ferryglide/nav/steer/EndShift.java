package org.ferryglide.nav.steer;

/**
 * How the end of a path shifts when the heading is turned and when it is held longer: a matrix of
 * two by two that learns from every path followed, after Broyden (1965), Math. Comp. 19, 577, DOI
 * 10.1090/S0025-5718-1965-0198670-6.
 *
 * <p>A turn is measured in metres by which it would swing the end in still water, so that both
 * unknowns weigh alike in what is learnt.
 */
final class EndShift {
  private double eastPerSwing;
  private double northPerSwing;
  private double eastPerSecond;
  private double northPerSecond;

  /** The swing, metres to starboard, and the seconds that {@link #undo} found. */
  private double swing;

  private double seconds;

  /** As in water that is still but for the motion over the ground at the end. */
  void set(double headingRadians, double groundEast, double groundNorth) {
    eastPerSwing = Math.cos(headingRadians);
    northPerSwing = -Math.sin(headingRadians);
    eastPerSecond = groundEast;
    northPerSecond = groundNorth;
  }

  /** Finds the {@link #swing} and {@link #seconds} that shift the end back by a miss. */
  void undo(double east, double north) {
    double determinant = eastPerSwing * northPerSecond - eastPerSecond * northPerSwing;
    swing = -(northPerSecond * east - eastPerSecond * north) / determinant;
    seconds = -(eastPerSwing * north - northPerSwing * east) / determinant;
  }

  /** Takes only a part of what {@link #undo} found. */
  void shorten(double part) {
    swing *= part;
    seconds *= part;
  }

  /** The swing found, metres to starboard by which it would move the end in still water. */
  double swing() {
    return swing;
  }

  /** The seconds found by which to hold the heading longer. */
  double seconds() {
    return seconds;
  }

  /** Learns from what {@link #swing} and {@link #seconds}, perhaps shortened since, brought. */
  void learn(double shiftEast, double shiftNorth) {
    double size = swing * swing + seconds * seconds;
    if (size > 0.0) {
      double offEast = shiftEast - eastPerSwing * swing - eastPerSecond * seconds;
      double offNorth = shiftNorth - northPerSwing * swing - northPerSecond * seconds;
      eastPerSwing += offEast * swing / size;
      northPerSwing += offNorth * swing / size;
      eastPerSecond += offEast * seconds / size;
      northPerSecond += offNorth * seconds / size;
    }
  }
}
