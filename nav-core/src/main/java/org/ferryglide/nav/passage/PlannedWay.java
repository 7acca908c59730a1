package org.ferryglide.nav.passage;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.GroundTrack;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.steer.Strategy;

/**
 * A plan whose quickest legs are laid down as the chords of the way that was found, each with its
 * track held: a party that meets other water than tabled keeps to the way it drew on the chart. It
 * knows nothing that would let it search another.
 */
final class PlannedWay {
  /** Between places at which the way is looked at. */
  private static final double LOOK_SECONDS = 15.0;

  /** Chords pass the way as near as this. */
  private static final double NEAR_METRES = 2.0;

  /** What chords may add to a leg; a way that waits is out by more. */
  private static final double LATE_SECONDS = 60.0;

  private static final double LATE_SHARE = 0.01;

  final Passage passage;
  final SteeredRoute route;
  private final int[] ends;

  private PlannedWay(Passage passage, SteeredRoute route, int[] ends) {
    this.passage = passage;
    this.route = route;
    this.ends = ends;
  }

  /**
   * The way of a plan; the plan itself where no leg is quickest, where the program has conditions
   * of its own, which count the way points as they were given, or where the chords cannot be held
   * in the tabled water as planned either: a quickest way may wait.
   */
  static PlannedWay of(TimedPlan plan) {
    Passage passage = plan.passage();
    int[] ends = new int[plan.legs().size()];
    PassageBuilder builder =
        passage.around(passage.name(), passage.party()).from(passage.wayPoints().get(0));
    int parts = 0;
    for (int i = 0; i < ends.length; i++) {
      PassageLeg leg = passage.legs().get(i);
      LegOptions options = leg.options();
      if (options.strategy().isQuickest()) {
        options = options.withStrategy(Strategy.trackHeld());
        for (Position place : corners(plan.route().legs().get(i).groundTrack())) {
          builder.to(
              WayPoint.of("corner " + (parts - i + 1) + " of the way planned", place), options);
          parts++;
        }
      }
      builder.to(leg.to(), options);
      ends[i] = parts++;
    }
    if (parts > ends.length && passage.conditions().isEmpty()) {
      Passage laid = builder.build();
      SteeredRoute held =
          PassageSolver.lean(laid).leaving(EpochSeconds.of(plan.departure())).solved().orElse(null);
      if (held != null && isOnTime(held, ends, plan.route())) {
        return new PlannedWay(laid, held, ends);
      }
    }
    for (int i = 0; i < ends.length; i++) {
      ends[i] = i;
    }
    return new PlannedWay(passage, plan.route(), ends);
  }

  /** Whether the chords of each leg are held in the time that it was planned to take. */
  private static boolean isOnTime(SteeredRoute held, int[] ends, SteeredRoute planned) {
    for (int i = 0; i < ends.length; i++) {
      SteeredLeg leg = planned.legs().get(i);
      double took = leg.arrivalSeconds() - leg.groundTrack().startSeconds();
      double off = held.legs().get(ends[i]).arrivalSeconds() - leg.arrivalSeconds();
      if (Math.abs(off) > LATE_SECONDS + LATE_SHARE * took) {
        return false;
      }
    }
    return true;
  }

  /** Which leg of this route ends a leg of the plan. */
  int endOf(int legOfPlan) {
    return ends[legOfPlan];
  }

  /** Where the chords meet, ends left out. */
  private static List<Position> corners(GroundTrack track) {
    int count = 2 + (int) ((track.endSeconds() - track.startSeconds()) / LOOK_SECONDS);
    double[][] places = new double[count][GroundTrack.FIGURES];
    for (int i = 0; i < count; i++) {
      double part = i / (count - 1.0);
      double time = track.startSeconds() + part * (track.endSeconds() - track.startSeconds());
      track.at(time, places[i], 0);
    }
    List<Position> corners = new ArrayList<>();
    int from = 0;
    for (int to = 2; to < count; to++) {
      if (!isNear(places, from, to)) {
        from = to - 1;
        corners.add(position(places[from]));
      }
    }
    return corners;
  }

  private static boolean isNear(double[][] places, int from, int to) {
    Outline chord = Outline.line(List.of(position(places[from]), position(places[to])), "a way");
    for (int i = from + 1; i < to; i++) {
      double metres =
          chord.distance(places[i][GroundTrack.LATITUDE], places[i][GroundTrack.LONGITUDE]);
      if (metres > NEAR_METRES) {
        return false;
      }
    }
    return true;
  }

  private static Position position(double[] place) {
    return Position.ofDegrees(place[GroundTrack.LATITUDE], place[GroundTrack.LONGITUDE]);
  }
}
