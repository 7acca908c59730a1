package org.ferryglide.nav.quickest;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.jspecify.annotations.Nullable;

/**
 * A fan of extremals launched in every direction at once, watched until its front sweeps over the
 * goal: every extremal that arrives is found, and the earliest is the quickest path of all.
 *
 * <p>Neighbouring rays that pass the goal too far apart to tell are joined by new ones between
 * them. A fan belongs to one thread.
 */
final class ExtremalFan {
  /** Rays launched at first, 5° apart; more are put in where the front is stretched at the goal. */
  private static final int FIRST_RAYS = 72;

  /** Steps in the time the craft would take through still water. */
  private static final int STEPS_IN_STILL_WATER = 48;

  /**
   * A step never longer than this, so that streams of a few hours' rhythm are followed, seconds.
   */
  private static final double LONGEST_STEP_SECONDS = 300.0;

  /** Rays are not put closer than a first gap halved this often. */
  private static final int DEEPEST = 30;

  /** Halvings spent on the border between rays that live and rays that ran aground: 0.001°. */
  private static final int DEEPEST_AT_BORDER = 12;

  /** More rays than this tell of a front stretched beyond reason; no more are put in. */
  private static final int MOST_RAYS = 5000;

  /** A front between two rays counts as straight below this share of the distance sailed. */
  private static final double STRAIGHT_SHARE = 0.02;

  private final CraftMotion motion;
  private final Extremals extremals;
  private final Obstacles obstacles;
  private final double startLatitude;
  private final double startLongitude;
  private final double departure;
  private final double horizon;
  private final double stepSeconds;
  private final List<Double> times = new ArrayList<>();
  private final ArrayList<Ray> rays = new ArrayList<>();

  ExtremalFan(
      CraftMotion motion,
      Obstacles obstacles,
      double startLatitude,
      double startLongitude,
      double departureSeconds,
      double horizonSeconds,
      double straightMetres) {
    this.motion = motion;
    this.extremals = new Extremals(motion, Ellipsoid.WGS84);
    this.obstacles = obstacles;
    this.startLatitude = startLatitude;
    this.startLongitude = startLongitude;
    this.departure = departureSeconds;
    this.horizon = horizonSeconds;
    this.stepSeconds =
        Math.min(LONGEST_STEP_SECONDS, straightMetres / motion.calmSpeed() / STEPS_IN_STILL_WATER);
    times.add(0.0);
    for (int i = 0; i <= FIRST_RAYS; i++) {
      rays.add(new Ray(2.0 * Math.PI * i / FIRST_RAYS, 0));
    }
  }

  /**
   * The quickest arrival at a goal; fans may be asked for several goals, nearer ones first.
   *
   * @param goalLatitude radians
   * @param goalLongitude radians
   * @return the arrival; null if no extremal arrives within the horizon
   */
  @Nullable Arrival quickestTo(double goalLatitude, double goalLongitude) {
    Goal goal = new Goal(goalLatitude, goalLongitude);
    Arrival best = null;
    for (int k = 1; ; k++) {
      if (best != null && times.get(k - 1) >= best.seconds()) {
        return best;
      }
      if (!advanceTo(k)) {
        return best;
      }
      best = earlier(best, sweep(goal, k));
    }
  }

  private static @Nullable Arrival earlier(@Nullable Arrival one, @Nullable Arrival other) {
    if (one == null || other == null) {
      return one == null ? other : one;
    }
    return other.seconds() < one.seconds() ? other : one;
  }

  /** Makes sure that every ray has its state at time k. */
  private boolean advanceTo(int k) {
    if (k >= times.size()) {
      double last = times.get(k - 1);
      if (last >= horizon) {
        return false;
      }
      // a short leg that turns out long must not be followed in steps of a second all day
      double step = Math.max(stepSeconds, last / STEPS_IN_STILL_WATER);
      double next = Math.min(last + Math.min(step, LONGEST_STEP_SECONDS), horizon);
      double seam = motion.nextBreakAfter(departure + last) - departure;
      times.add(seam > last && seam < next ? seam : next);
    }
    boolean alive = false;
    for (Ray ray : rays) {
      alive |= ray.reach(k);
    }
    return alive;
  }

  /** Looks at the piece of front that each pair of neighbours sweeps in step k. */
  private @Nullable Arrival sweep(Goal goal, int k) {
    Arrival best = null;
    for (int i = 0; i + 1 < rays.size(); i++) {
      Ray a = rays.get(i);
      Ray b = rays.get(i + 1);
      int depth = Math.max(a.depth, b.depth);
      boolean aLives = a.reach(k);
      boolean bLives = b.reach(k);
      if (!aLives && !bLives) {
        continue;
      }
      if (aLives != bLives) {
        if (depth < DEEPEST_AT_BORDER && rays.size() < MOST_RAYS) {
          insertBetween(i, a, b, depth, k);
          i--; // look at the left half first
        }
        continue;
      }
      goal.look(a, b, k);
      if (goal.isNear()
          && goal.gap > goal.straightEnough(times.get(k))
          && depth < DEEPEST
          && rays.size() < MOST_RAYS) {
        insertBetween(i, a, b, depth, k);
        i--;
      } else if (goal.isSwept()) {
        best =
            earlier(
                best,
                refine(
                    goal, 0.5 * (a.heading + b.heading), 0.5 * (times.get(k - 1) + times.get(k))));
      }
    }
    return best;
  }

  private void insertBetween(int index, Ray a, Ray b, int depth, int k) {
    Ray between = new Ray(0.5 * (a.heading + b.heading), depth + 1);
    between.reach(k);
    rays.add(index + 1, between);
  }

  /** Newton's method for the launch heading and the time at which the ray stands on the goal. */
  private @Nullable Arrival refine(Goal goal, double heading, double seconds) {
    final double metres = 1e-3;
    final double turn = 1e-6;
    double[] here = new double[2];
    double[] turned = new double[2];
    double[] later = new double[2];
    double time = seconds;
    double launch = heading;
    for (int i = 0; i < 30; i++) {
      if (!miss(goal, launch, time, here)) {
        return null;
      }
      if (Math.hypot(here[0], here[1]) < metres) {
        Arrival arrival = new Arrival(launch, time);
        return isClear(arrival) ? arrival : null;
      }
      double tick = Math.min(1.0, 0.01 * time);
      if (!miss(goal, launch + turn, time, turned) || !miss(goal, launch, time - tick, later)) {
        return null;
      }
      double a = (turned[0] - here[0]) / turn;
      double b = (here[0] - later[0]) / tick;
      double c = (turned[1] - here[1]) / turn;
      double d = (here[1] - later[1]) / tick;
      double determinant = a * d - b * c;
      if (determinant == 0.0) {
        return null;
      }
      double dHeading = (d * here[0] - b * here[1]) / determinant;
      double dTime = (a * here[1] - c * here[0]) / determinant;
      double damping =
          Math.min(1.0, Math.min(0.1 / Math.abs(dHeading), 0.2 * time / Math.abs(dTime)));
      launch -= damping * dHeading;
      time -= damping * dTime;
      if (!(time > 0.0 && time <= 2.0 * horizon)) {
        return null;
      }
    }
    return null;
  }

  private boolean isClear(Arrival arrival) {
    if (!obstacles.isEmpty()) {
      double[][] rows = path(arrival);
      for (int i = 1; i < rows.length; i++) {
        if (obstacles.blocks(rows[i - 1][1], rows[i - 1][2], rows[i][1], rows[i][2])) {
          return false;
        }
      }
    }
    return true;
  }

  /** Where a ray stands from the goal at a time, metres north and east. */
  private boolean miss(Goal goal, double heading, double seconds, double[] out) {
    double[] state = new double[Extremals.SIZE];
    extremals.launch(startLatitude, startLongitude, heading, state, 0);
    double t = 0.0;
    for (int k = 1; t < seconds; k++) {
      double next = k < times.size() ? times.get(k) : t + stepSeconds;
      next = Math.min(next, seconds);
      if (!extremals.step(state, 0, departure + t, next - t)) {
        return false;
      }
      t = next;
    }
    goal.offset(state[0], state[1], out);
    return true;
  }

  /**
   * The path of an arrival.
   *
   * @return rows of time since departure (s), latitude, longitude, heading (radians)
   */
  double[][] path(Arrival arrival) {
    List<double[]> rows = new ArrayList<>();
    double[] state = new double[Extremals.SIZE];
    extremals.launch(startLatitude, startLongitude, arrival.heading(), state, 0);
    double t = 0.0;
    rows.add(row(t, state));
    for (int k = 1; t < arrival.seconds(); k++) {
      double next = Math.min(k < times.size() ? times.get(k) : t + stepSeconds, arrival.seconds());
      extremals.step(state, 0, departure + t, next - t);
      t = next;
      rows.add(row(t, state));
    }
    return rows.toArray(new double[0][]);
  }

  private double[] row(double t, double[] state) {
    return new double[] {t, state[0], state[1], extremals.heading(state, 0)};
  }

  /** A launch heading (radians) and the seconds it takes. */
  record Arrival(double heading, double seconds) {}

  /** One extremal, its states at the common times as far as it has been followed. */
  private final class Ray {
    final double heading;
    final int depth;
    private double[] states = new double[Extremals.SIZE * 64];
    private int reached;
    private boolean dead;

    Ray(double heading, int depth) {
      this.heading = heading;
      this.depth = depth;
      extremals.launch(startLatitude, startLongitude, heading, states, 0);
    }

    /** Follows the ray to time k; false once it has left the data or run aground. */
    boolean reach(int k) {
      while (!dead && reached < k) {
        int from = reached * Extremals.SIZE;
        int to = from + Extremals.SIZE;
        if (to + Extremals.SIZE > states.length) {
          states = java.util.Arrays.copyOf(states, 2 * states.length);
        }
        System.arraycopy(states, from, states, to, Extremals.SIZE);
        double t = times.get(reached);
        dead =
            !extremals.step(states, to, departure + t, times.get(reached + 1) - t)
                || obstacles.blocks(states[from], states[from + 1], states[to], states[to + 1]);
        if (!dead) {
          reached++;
        }
      }
      return reached >= k;
    }

    double latitude(int k) {
      return states[k * Extremals.SIZE];
    }

    double longitude(int k) {
      return states[k * Extremals.SIZE + 1];
    }
  }

  /** The goal, and what one piece of front does about it; a plane with the goal at its origin. */
  private final class Goal {
    private final double latitude;
    private final double longitude;
    private final double north;
    private final double east;
    private final double[] a0 = new double[2];
    private final double[] a1 = new double[2];
    private final double[] b0 = new double[2];
    private final double[] b1 = new double[2];
    private double gap;

    Goal(double latitude, double longitude) {
      this.latitude = latitude;
      this.longitude = longitude;
      this.north = extremals.meridianRadius(latitude);
      this.east = extremals.parallelRadius(latitude);
    }

    void offset(double otherLatitude, double otherLongitude, double[] out) {
      out[0] = (otherLatitude - latitude) * north;
      out[1] = Math.IEEEremainder(otherLongitude - longitude, 2.0 * Math.PI) * east;
    }

    void look(Ray a, Ray b, int k) {
      offset(a.latitude(k - 1), a.longitude(k - 1), a0);
      offset(a.latitude(k), a.longitude(k), a1);
      offset(b.latitude(k - 1), b.longitude(k - 1), b0);
      offset(b.latitude(k), b.longitude(k), b1);
      gap = Math.max(distance(a1, b1), distance(a0, b0));
    }

    /** Below this the front between two rays may be taken for straight, metres. */
    double straightEnough(double seconds) {
      return Math.max(0.5, STRAIGHT_SHARE * seconds * extremals.speed());
    }

    /** Whether the goal may lie under this piece of front, bent as it may be. */
    boolean isNear() {
      double stride = Math.max(distance(a0, a1), distance(b0, b1));
      return distanceToChord() < 0.75 * gap + stride;
    }

    private double distanceToChord() {
      double north1 = b1[0] - a1[0];
      double east1 = b1[1] - a1[1];
      double square = north1 * north1 + east1 * east1;
      double share = square == 0.0 ? 0.0 : -(a1[0] * north1 + a1[1] * east1) / square;
      share = Math.min(1.0, Math.max(0.0, share));
      return Math.hypot(a1[0] + share * north1, a1[1] + share * east1);
    }

    boolean isSwept() {
      return inTriangle(a0, a1, b1) || inTriangle(a0, b1, b0);
    }
  }

  private static double distance(double[] p, double[] q) {
    return Math.hypot(p[0] - q[0], p[1] - q[1]);
  }

  /** Whether the origin lies in a triangle, its rim included with a little to spare. */
  private static boolean inTriangle(double[] p, double[] q, double[] r) {
    double a = cross(p, q);
    double b = cross(q, r);
    double c = cross(r, p);
    double spare = 1e-6 * (Math.abs(a) + Math.abs(b) + Math.abs(c));
    return (a >= -spare && b >= -spare && c >= -spare) || (a <= spare && b <= spare && c <= spare);
  }

  private static double cross(double[] p, double[] q) {
    return p[0] * q[1] - p[1] * q[0];
  }
}
