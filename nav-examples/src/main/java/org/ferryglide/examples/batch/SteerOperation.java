package org.ferryglide.examples.batch;

import java.util.List;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.CurrentTriangle;
import org.ferryglide.nav.steer.Reason;
import org.ferryglide.nav.steer.SteeringLimits;

/**
 * The heading that holds a track in a steady stream. Speeds are knots, distances nautical miles;
 * the speed is that along the water track, which is the heading turned by the leeway.
 *
 * <p>The outcome is OK, or why there is no heading, with empty figures. With figures it may also be
 * {@link #FASTER_OF_TWO}, {@link #NO_RESERVE}, or both separated by a space.
 */
final class SteerOperation implements Operation.Solver {
  /** The stream outruns the boat, and a slower heading would hold the track too. */
  static final String FASTER_OF_TWO = "FASTER_OF_TWO";

  /** More of the speed goes against the stream across than {@link SteeringLimits#USUAL} allows. */
  static final String NO_RESERVE = Reason.NO_RESERVE.name();

  private static final double FASTEST_KNOTS = 100.0;

  private SteerOperation() {}

  static Operation operation() {
    return Operation.ofRows(
        "course-to-steer",
        List.of("track_deg", "distance_nm", "speed_kn", "set_deg", "rate_kn", "leeway_deg"),
        List.of(
            Added.direction("heading_deg"),
            Added.number("ground_speed_kn", 6),
            Added.number("hours", 6),
            Added.word("outcome")),
        SteerOperation::new);
  }

  @Override
  public void solve(Row row, Figures figures) {
    TrueBearing track = TrueBearing.ofDegrees(row.direction(0));
    double distance = row.number(1, 0.0, 100_000.0, "nautical miles");
    Craft craft = Craft.ofSpeed(Speed.ofKnots(row.number(2, 0.0, FASTEST_KNOTS, "knots")));
    TrueBearing set = TrueBearing.ofDegrees(row.direction(3));
    Speed rate = Speed.ofKnots(row.number(4, 0.0, FASTEST_KNOTS, "knots"));
    double leeway = row.number(5, -90.0, 90.0, "degrees");
    Velocity stream = Velocity.ofSetAndRate(set, rate);
    CurrentTriangle.solve(track, craft, stream)
        .match(
            triangle -> {
              double knots = triangle.speedMadeGood().knots();
              figures.add(triangle.waterTrack().turnedBy(-leeway).degrees());
              figures.add(knots);
              figures.add(distance / knots);
              figures.add(
                  outcome(
                      CurrentTriangle.slower(track, craft, stream).isPresent(),
                      triangle.crossStreamShare() > SteeringLimits.USUAL.refuseAbove()));
              return triangle;
            },
            why -> {
              figures.skip();
              figures.skip();
              figures.skip();
              figures.add(why.reason().name());
              return why;
            });
  }

  private static String outcome(boolean isOneOfTwo, boolean isReserveGone) {
    if (isReserveGone) {
      return isOneOfTwo ? FASTER_OF_TWO + " " + NO_RESERVE : NO_RESERVE;
    }
    return isOneOfTwo ? FASTER_OF_TWO : "OK";
  }
}
