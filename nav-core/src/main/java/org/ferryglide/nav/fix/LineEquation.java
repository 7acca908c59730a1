package org.ferryglide.nav.fix;

/**
 * What a position line says about a place: how many standard deviations it is off the line, and how
 * that changes with a metre east and a metre north. One for each kind of line.
 */
abstract class LineEquation {

  /** An equation of each kind; the one place that knows them all. */
  private static final PositionLine.Kinds<LineEquation> KINDS =
      new PositionLine.Kinds<>() {
        @Override
        public LineEquation bearing(BearingLine line) {
          return new BearingEquation(line);
        }

        @Override
        public LineEquation distance(DistanceCircle line) {
          return new DistanceEquation(line);
        }

        @Override
        public LineEquation transit(TransitLine line) {
          return new TransitEquation(line);
        }

        @Override
        public LineEquation straight(StraightLine line) {
          return new StraightEquation(line);
        }

        @Override
        public LineEquation transferred(TransferredLine line) {
          return new TransferredEquation(line, of(line.original()));
        }
      };

  static LineEquation of(PositionLine line) {
    return line.match(KINDS);
  }

  /**
   * Writes, in standard deviations of the observation, the observed value less the value at the
   * place, and the derivative of the latter by metres east and north. A run since is not counted.
   *
   * @param lat latitude of the place, degrees
   * @param lon longitude of the place, degrees
   * @param exact true for geodesics, false for the quick form
   * @param out receives residual, east and north derivative
   * @param scratch at least 6 long, overwritten
   */
  abstract void write(double lat, double lon, boolean exact, double[] out, double[] scratch);

  /**
   * Writes latitude and longitude of a point of a nearly straight line, and its direction, degrees;
   * false if the line is a circle.
   */
  boolean straight(double[] out, double[] scratch) {
    return false;
  }

  /** Writes latitude and longitude of the centre, and the radius, metres; false if no circle. */
  boolean circle(double[] out, double[] scratch) {
    return false;
  }

  /** Whether this is a bearing and a place has the mark on the other side. */
  boolean pointsAway(double lat, double lon, double[] scratch) {
    return false;
  }

  /** Whether this is a transit and a place has its rear mark before its front one. */
  boolean seenFromBehind(double lat, double lon, double[] scratch) {
    return false;
  }

  /** One standard deviation of a bearing, degrees; NaN if this is none. */
  double bearingSigmaDegrees() {
    return Double.NaN;
  }

  /** Writes azimuth and distance of a mark. */
  static void sight(
      double lat, double lon, double markLat, double markLon, boolean exact, double[] scratch) {
    if (exact) {
      SightLine.exact(lat, lon, markLat, markLon, scratch);
    } else {
      SightLine.quick(lat, lon, markLat, markLon, scratch);
    }
  }
}
