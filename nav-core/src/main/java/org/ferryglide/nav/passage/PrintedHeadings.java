package org.ferryglide.nav.passage;

import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.WindResponse;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WindField;
import org.jspecify.annotations.Nullable;

/**
 * Where a party lies that steers the printed headings for the printed times while the errors are
 * those of a draw: how far off the plan at each look. Only what differs from the plan is added up,
 * so that without errors nothing is off. One object serves all draws and threads.
 */
final class PrintedHeadings {
  private final Candidate plan;

  /** The plan from each look to the next: motion through the water, stream, and wind's effect. */
  private final double[] waterEast;

  private final double[] waterNorth;
  private final double[] longitude;
  private final double[] degreesPerMetreEast;
  private final double[] degreesPerMetreNorth;
  private final double[] streamEast;
  private final double[] streamNorth;
  private final double[] blownEast;
  private final double[] blownNorth;
  private final @Nullable WindField wind;
  private final StreamField[] streams;

  PrintedHeadings(Candidate plan) {
    this.plan = plan;
    waterEast = new double[plan.size];
    waterNorth = new double[plan.size];
    longitude = new double[plan.size];
    degreesPerMetreEast = new double[plan.size];
    degreesPerMetreNorth = new double[plan.size];
    streamEast = new double[plan.size];
    streamNorth = new double[plan.size];
    blownEast = new double[plan.size];
    blownNorth = new double[plan.size];
    WindField given = plan.passage.wind().orElse(null);
    wind = plan.passage.party().craft().windResponse().isNone() ? null : given;
    streams = new StreamField[plan.route.legs().size()];
    for (int leg = 0; leg < streams.length; leg++) {
      streams[leg] = plan.streamOf(leg);
    }
    double[] room = new double[2];
    for (int look = 1; look < plan.size; look++) {
      if (isOnTheWay(look)) {
        fill(look, room);
      }
    }
  }

  /** Whether the party paddles from the look before to this one. */
  private boolean isOnTheWay(int look) {
    return plan.leg[look] == plan.leg[look - 1] && plan.time[look] > plan.time[look - 1];
  }

  private double middle(double[] values, int look) {
    return 0.5 * (values[look - 1] + values[look]);
  }

  private void fill(int look, double[] room) {
    double seconds = plan.time[look] - plan.time[look - 1];
    double latitude = middle(plan.latitude, look);
    double turned = Math.IEEEremainder(plan.longitude[look] - plan.longitude[look - 1], 360.0);
    longitude[look] = Candidate.longitude(plan.longitude[look - 1] + 0.5 * turned);
    degreesPerMetreEast[look] = 1.0 / PlaneMetres.east(latitude);
    degreesPerMetreNorth[look] = 1.0 / PlaneMetres.north(latitude);
    double groundEast = turned * PlaneMetres.east(latitude) / seconds;
    double groundNorth =
        (plan.latitude[look] - plan.latitude[look - 1]) * PlaneMetres.north(latitude) / seconds;
    boolean known =
        streams[plan.leg[look]].sample(latitude, longitude[look], middle(plan.time, look), room, 0);
    streamEast[look] = known ? room[0] : Double.NaN;
    streamNorth[look] = known ? room[1] : Double.NaN;
    waterEast[look] = groundEast - streamEast[look];
    waterNorth[look] = groundNorth - streamNorth[look];
    if (wind != null) {
      known = wind.sample(latitude, longitude[look], middle(plan.time, look), room, 0);
      blown(known, look, room[0] - streamEast[look], room[1] - streamNorth[look], room);
      blownEast[look] = room[0];
      blownNorth[look] = room[1];
    }
  }

  /** The motion through the water on the heading of a look in a wind over the water. */
  private void blown(boolean known, int look, double windEast, double windNorth, double[] out) {
    if (!known) {
      out[0] = Double.NaN;
      out[1] = Double.NaN;
      return;
    }
    Craft craft = craft(plan.leg[look]);
    WindResponse response = craft.windResponse();
    double heading = Math.toRadians(plan.heading[look - 1]);
    double blows = Math.hypot(windEast, windNorth);
    double from = Math.atan2(-windEast, -windNorth) - heading;
    double offBow = Math.toDegrees(Math.IEEEremainder(from, 2.0 * Math.PI));
    double paddled =
        craft.paddlingShare()
            * Math.max(
                0.0,
                craft.speed().metresPerSecond()
                    + response.speedChangeMetresPerSecond(offBow, blows));
    double track = heading + Math.toRadians(response.leewayDegrees(offBow, blows));
    out[0] = paddled * Math.sin(track) + response.driftFraction() * windEast;
    out[1] = paddled * Math.cos(track) + response.driftFraction() * windNorth;
  }

  private Craft craft(int leg) {
    int first = plan.passage.legs().size() - plan.route.legs().size();
    Craft craft = plan.passage.party().craft();
    return plan.passage
        .legs()
        .get(first + leg)
        .options()
        .speed()
        .map(craft::withSpeed)
        .orElse(craft);
  }

  /**
   * Steers the printed headings through a draw.
   *
   * @param off receives metres east and north of the plan at each look, by the party's own watch;
   *     NaN from where stream or wind are not known
   */
  void steer(DrawnErrors errors, double[] off) {
    double[] water = new double[2];
    double[] flow = new double[2];
    double east = errors.plottedEast;
    double north = errors.plottedNorth;
    for (int look = 0; look < plan.size; look++) {
      boolean begins = look == 0 || plan.leg[look] != plan.leg[look - 1];
      if (begins && look > 0 && plan.isAshoreBefore(plan.leg[look])) {
        east = errors.plottedEast;
        north = errors.plottedNorth;
      } else if (!begins && isOnTheWay(look)) {
        double time = middle(plan.time, look) + errors.departureLate;
        double seconds = plan.time[look] - plan.time[look - 1];
        double latitude = middle(plan.latitude, look) + north * degreesPerMetreNorth[look];
        double longitude =
            Candidate.longitude(this.longitude[look] + east * degreesPerMetreEast[look]);
        boolean known =
            streams[plan.leg[look]].sample(latitude, longitude, time - errors.streamLate, flow, 0);
        if (known) {
          errors.stream(time, flow, 0);
        }
        double nowEast = known ? flow[0] : Double.NaN;
        double nowNorth = known ? flow[1] : Double.NaN;
        water[0] = waterEast[look];
        water[1] = waterNorth[look];
        if (wind != null) {
          known = wind.sample(latitude, longitude, time, flow, 0);
          if (known) {
            errors.wind(time, flow, 0);
          }
          blown(known, look, flow[0] - nowEast, flow[1] - nowNorth, flow);
          water[0] += flow[0] - blownEast[look];
          water[1] += flow[1] - blownNorth[look];
        }
        errors.water(time, water);
        east += (water[0] - waterEast[look] + nowEast - streamEast[look]) * seconds;
        north += (water[1] - waterNorth[look] + nowNorth - streamNorth[look]) * seconds;
      }
      off[2 * look] = east;
      off[2 * look + 1] = north;
    }
  }
}
