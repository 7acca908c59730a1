package org.ferryglide.nav.passage;

import java.util.List;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.Arrivals;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.timing.Verdict;
import org.jspecify.annotations.Nullable;

/**
 * How long a party needs from the looks of one candidate to the landing that it can use first.
 *
 * <p>To solve the way to every landing from every look would cost more than all other checks
 * together, so that landings are tried the nearest first, and only until one is near enough for
 * what is asked.
 */
final class NearestLanding {
  /** A party this near is there. */
  private static final double THERE_METRES = 10.0;

  private final List<LandingCheck> landings;
  private final Candidate candidate;
  private final Passage slow;
  private final double ashoreSeconds;
  private final List<Outline> shores;

  /**
   * No party is faster over the ground, metres a second; infinite where that is not known. It rests
   * on the promise of {@link org.ferryglide.nav.water.StreamField#maxRate}: a field that breaks it
   * may hide a landing that would be reached first, and the time given is then too long, never too
   * short.
   */
  private final double fastest;

  /** By leg for a draw, whose party is another on each; otherwise one for all. */
  private final @Nullable Arrivals[] arrivals;

  /** Of the landings at the look asked for, in the order in which they are tried. */
  private final int[] order;

  private final double[] square;

  /**
   * For one candidate.
   *
   * @param landings at least one
   * @param candidate whose looks are asked for
   * @param slow the passage at the slower speed
   * @param shores as drawn; none where none were given
   */
  NearestLanding(
      List<LandingCheck> landings, Candidate candidate, Passage slow, List<Outline> shores) {
    this.landings = landings;
    this.candidate = candidate;
    this.slow = slow;
    ashoreSeconds = Seconds.of(slow.party().landing());
    this.shores = shores;
    arrivals = new Arrivals[candidate.isDraw() ? candidate.route.legs().size() : 1];
    fastest = candidate.isDraw() ? Double.POSITIVE_INFINITY : fastest(slow);
    order = new int[landings.size()];
    square = new double[landings.size()];
  }

  /** The distance from a look to the nearest landing, usable or not, metres squared, roughly. */
  double squareFrom(int look) {
    measure(look);
    double least = square[0];
    for (double one : square) {
      least = Math.min(least, one);
    }
    return least;
  }

  /**
   * Seconds from a look to the first usable landing; infinite if there is none, NaN if that is not
   * known. Where one is found within enough seconds, it may not be the first.
   */
  double seconds(int look, double enough) {
    measure(look);
    Sorted.ascending(square, order);
    Position here =
        Position.ofDegrees(
            candidate.latitude[look], Candidate.longitude(candidate.longitude[look]));
    double time = candidate.time[look];
    double best = Double.POSITIVE_INFINITY;
    boolean unknown = false;
    for (int which : order) {
      LandingCheck landing = landings.get(which);
      RhumbLeg leg = RhumbLeg.between(here, landing.place().position());
      if (leg.length().metres() > best * fastest) {
        continue; // however the stream may run
      }
      if (ShoreCheck.isBetween(shores, here, landing.place().position(), leg.length().metres())) {
        continue;
      }
      double arrival = time;
      if (leg.length().metres() > THERE_METRES) {
        Arrivals solver = arrivals(candidate.leg[look]);
        arrival = solver.at(leg, time);
        if (Double.isNaN(arrival)) { // only then its reason is worth working out
          unknown |= solver.steered(leg, time).why().map(NotPossible::isDataMissing).orElse(false);
        }
      }
      if (arrival - time < best) {
        Verdict usable =
            candidate.isDraw()
                ? landing.usable(candidate.passage, arrival, arrival + ashoreSeconds)
                : landing.usable(arrival, arrival + ashoreSeconds);
        unknown |= usable.answer() == Verdict.Answer.NOT_CHECKED;
        best = usable.holds() ? arrival - time : best;
        if (best <= enough && best < Double.POSITIVE_INFINITY) {
          return best;
        }
      }
    }
    return Double.isInfinite(best) && unknown ? Double.NaN : best;
  }

  private static double fastest(Passage slow) {
    Craft craft = slow.party().craft();
    return craft.windResponse().isNone() && slow.stream().maxRate().isPresent()
        ? craft.speed().metresPerSecond() + slow.stream().maxRate().get().metresPerSecond()
        : Double.POSITIVE_INFINITY;
  }

  /** The distances from a look, squared and roughly. */
  private void measure(int look) {
    double latitude = candidate.latitude[look];
    double north = PlaneMetres.north(latitude);
    double east = PlaneMetres.east(latitude);
    for (int i = 0; i < square.length; i++) {
      Position place = landings.get(i).place().position();
      double up = north * (place.latitudeDegrees() - latitude);
      double right =
          east * PlaneMetres.turned(place.longitudeDegrees() - candidate.longitude[look]);
      square[i] = up * up + right * right;
    }
  }

  private Arrivals arrivals(int leg) {
    int at = candidate.isDraw() ? leg : 0;
    Arrivals known = arrivals[at];
    if (known == null) {
      known = candidate.isDraw() ? drawn(leg) : usual();
      arrivals[at] = known;
    }
    return known;
  }

  private Arrivals usual() {
    return Arrivals.of(PassageSolver.solver(slow, LegOptions.usual()));
  }

  /** For a draw: its party, as fast as on a leg, in its water and wind. */
  private Arrivals drawn(int leg) {
    LegOptions options = LegOptions.usual().withSpeed(candidate.drawnSpeed(leg));
    return Arrivals.of(PassageSolver.solver(candidate.passage, options));
  }
}
