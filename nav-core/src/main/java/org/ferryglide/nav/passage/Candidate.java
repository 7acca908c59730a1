package org.ferryglide.nav.passage;

import java.util.function.Supplier;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WindField;
import org.jspecify.annotations.Nullable;

/**
 * One way a passage may go, looked at minute by minute: where the party is, its heading, and what
 * water and wind do there. Made once and shared by all checks.
 */
final class Candidate {
  /** Between looks: streams and winds of tables, and places at 4 knots, move little in a minute. */
  static final double STEP_SECONDS = 60.0;

  final Passage passage;
  final SteeredRoute route;
  final int size;
  final double[] time;
  final double[] latitude;
  final double[] longitude;
  final double[] heading;
  final double[] streamEast;
  final double[] streamNorth;
  final double[] windEast;
  final double[] windNorth;
  final int[] leg;
  private final Supplier<PassageSolver> slowerSolver;
  private @Nullable Outcome<SteeredRoute, NotPossible> slower;
  private int @Nullable [] strongest;
  private double @Nullable [] halfWidths;

  Candidate(Passage passage, SteeredRoute route) {
    this(passage, route, () -> PassageSolver.lean(passage.slower()));
  }

  /** With a solver of the slower party that serves many candidates. */
  Candidate(Passage passage, SteeredRoute route, Supplier<PassageSolver> slowerSolver) {
    this.passage = passage;
    this.route = route;
    this.slowerSolver = slowerSolver;
    int count = 0;
    for (SteeredLeg steered : route.legs()) {
      count += looks(steered);
    }
    size = count;
    time = new double[count];
    latitude = new double[count];
    longitude = new double[count];
    heading = new double[count];
    streamEast = new double[count];
    streamNorth = new double[count];
    windEast = new double[count];
    windNorth = new double[count];
    leg = new int[count];
    fill();
  }

  /** For a passage at the slower speed already: nothing slower is to be solved. */
  static Candidate ofTheSlowest(Passage slow, SteeredRoute route) {
    Candidate candidate = new Candidate(slow, route);
    candidate.slower = Outcome.ofSolved(route);
    return candidate;
  }

  /** The same passage at the slower speed. */
  Outcome<SteeredRoute, NotPossible> slower() {
    if (slower == null) {
      slower = slowerSolver.get().leaving(EpochSeconds.of(route.departure()));
    }
    return slower;
  }

  /** The stream along a leg of the route. */
  StreamField streamOf(int legOfRoute) {
    return passage
        .legs()
        .get(legOfRoute + passage.legs().size() - route.legs().size())
        .options()
        .stream()
        .orElse(passage.stream());
  }

  /** Whether the party was ashore before a leg of the route. */
  boolean isAshoreBefore(int legOfRoute) {
    return passage
        .wayPoints()
        .get(legOfRoute + passage.legs().size() - route.legs().size())
        .stop()
        .isPresent();
  }

  /** Whether the party waited ashore before a leg of the route until something happened. */
  boolean waitsBefore(int legOfRoute) {
    return passage
        .wayPoints()
        .get(legOfRoute + passage.legs().size() - route.legs().size())
        .stop()
        .map(stop -> !(stop instanceof Stops.Ashore))
        .orElse(false);
  }

  /** The look at the end of a leg. */
  int lastLookOf(int legOfRoute) {
    int last = -1;
    for (int look = 0; look < size; look++) {
      last = leg[look] == legOfRoute ? look : last;
    }
    return last;
  }

  /** The look with the strongest stream of a leg. */
  int strongest(int legOfRoute) {
    if (strongest == null) {
      strongest = new int[route.legs().size()];
      double[] most = new double[strongest.length];
      for (int look = 0; look < size; look++) {
        if (streamRate(look) > most[leg[look]]) {
          most[leg[look]] = streamRate(look);
          strongest[leg[look]] = look;
        }
      }
    }
    return strongest[legOfRoute];
  }

  /**
   * Half the width of the band in which the party is 95 times in a hundred, metres: the longer axis
   * of its ellipse, whatever the way it lies.
   */
  double halfWidth95(int look) {
    if (halfWidths == null) {
      halfWidths = Widths.of(this);
    }
    return halfWidths[look];
  }

  private static int looks(SteeredLeg steered) {
    double seconds = EpochSeconds.of(steered.arrival()) - EpochSeconds.of(steered.departure());
    return 1 + Math.max(1, (int) Math.ceil(seconds / STEP_SECONDS));
  }

  private void fill() {
    WindField wind = passage.wind().orElse(null);
    double[] three = new double[3];
    int at = 0;
    int number = 0;
    for (SteeredLeg steered : route.legs()) {
      StreamField stream = streamOf(number);
      double from = EpochSeconds.of(steered.departure());
      double until = EpochSeconds.of(steered.arrival());
      int looks = looks(steered);
      for (int i = 0; i < looks; i++) {
        double when = i == looks - 1 ? until : Math.min(until, from + i * STEP_SECONDS);
        steered.groundTrack().at(when, three, 0);
        time[at] = when;
        latitude[at] = three[0];
        longitude[at] = three[1];
        heading[at] = three[2];
        leg[at] = number;
        sample(stream, wind, at, three);
        at++;
      }
      number++;
    }
  }

  private void sample(StreamField stream, @Nullable WindField wind, int at, double[] room) {
    boolean known = stream.sample(latitude[at], longitude[at], time[at], room, 0);
    streamEast[at] = known ? room[0] : Double.NaN;
    streamNorth[at] = known ? room[1] : Double.NaN;
    boolean blows = wind != null && wind.sample(latitude[at], longitude[at], time[at], room, 0);
    windEast[at] = blows ? room[0] : Double.NaN;
    windNorth[at] = blows ? room[1] : Double.NaN;
  }

  /** A longitude in [-180, 180). */
  static double longitude(double degrees) {
    double reduced = Math.IEEEremainder(degrees, 360.0);
    return reduced >= 180.0 ? -180.0 : reduced + 0.0;
  }

  /** Rate of the stream at a look, metres a second; NaN if it is not known. */
  double streamRate(int look) {
    return Math.hypot(streamEast[look], streamNorth[look]);
  }

  /** Speed of the wind at a look, metres a second; NaN if it is not known. */
  double windSpeed(int look) {
    return Math.hypot(windEast[look], windNorth[look]);
  }
}
