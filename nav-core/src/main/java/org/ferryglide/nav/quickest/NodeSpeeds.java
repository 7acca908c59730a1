package org.ferryglide.nav.quickest;

import java.util.Arrays;

/**
 * How fast the craft gets on each move of a front from each node of its grid, at any time.
 *
 * <p>Stream and wind are asked for at even times, and each node keeps those of a few times about
 * the last look, since a front passes it but once or twice; between them they are interpolated. In
 * wind the speeds themselves are kept. Not thread-safe.
 */
final class NodeSpeeds {
  /** Nodes each way at which it is looked whether the flow changes with time. */
  private static final int PROBES = 9;

  /** When it is looked, hours: a tide has turned in them. */
  private static final double[] PROBE_HOURS = {0.0, 0.5, 1.2, 2.0, 3.1, 4.5, 6.0, 9.0, 15.0};

  /** A craft holds its place in a stream below this share of its speed, or making way all round. */
  private static final double HOLDS = 0.95;

  /** Whether it does is asked for stretches of this length; 300 s did no better, see the front. */
  private static final double STRETCH_SECONDS = 1350.0;

  /** A move looked along is looked at so often, squares. */
  private static final double LOOK_SQUARES = 0.5;

  /** Less than this share of the craft's speed is no way. */
  private static final double LEAST_SHARE = 0.03;

  /** Even times of which each node keeps what was seen, a power of two. */
  private static final int KEPT = 4;

  private static final float UNKNOWN = Float.POSITIVE_INFINITY;

  /** Stands where stream or wind is not known, or was not asked for yet. */
  private static final float[] NO_SPEEDS = new float[0];

  /** What was seen at a node and a time. */
  static final class Look {
    private double east;
    private double north;
    private float[] row = NO_SPEEDS;
    private float[] later = NO_SPEEDS;
    private double share;
  }

  final SearchGrid grid;
  final Moves moves;

  /** Whether the flow was the same at all times wherever it was looked at. */
  final boolean steady;

  /** Whether moves are looked at all along: for gates and gaps that lie between nodes. */
  final boolean close;

  private final CourseSpeed courseSpeed;
  private final CraftMotion motion;
  private final double departure;
  private final double calm;
  private final boolean windless;

  /** Seconds between the times that are asked for. */
  private final double between;

  private final Polar polar;

  /** Which of the even times each node keeps. */
  private final int[] times;

  /** Stream of each node at each of them, east and north, in calm air. */
  private final float[] streams;

  /** Speeds on each move, in wind; empty where the flow is not known. */
  private final float[][] speeds;

  private final double[] flow = new double[CraftMotion.FLOW];

  /** By stretches of time, in which each node was asked whether a craft holds there, and did. */
  private long[] asked = new long[0];

  private long[] held = new long[0];

  /** Whether some look in wind showed a move on which no way is made. */
  private boolean driven;

  /** Speeds on each move where it is asked whether a craft holds. */
  private float[] tried = NO_SPEEDS;

  /** The hardest stream that any look showed, metres a second. */
  private double strongest;

  /** The fastest that any look showed, metres a second over the ground. */
  private double fastest;

  NodeSpeeds(
      CraftMotion motion,
      CourseSpeed courseSpeed,
      SearchGrid grid,
      Moves moves,
      double departure,
      double between,
      boolean close) {
    this.motion = motion;
    this.grid = grid;
    this.moves = moves;
    this.departure = departure;
    this.between = between;
    calm = motion.calmSpeed();
    windless = motion.isWindless();
    polar = new Polar(courseSpeed, moves);
    times = new int[KEPT * grid.nodes()];
    Arrays.fill(times, -1);
    streams = new float[windless ? 2 * times.length : 0];
    speeds = new float[windless ? 0 : times.length][];
    Arrays.fill(speeds, NO_SPEEDS);
    this.close = close;
    this.courseSpeed = courseSpeed;
    steady = !close && isSteady();
  }

  private boolean isSteady() {
    double[] first = new double[CraftMotion.FLOW];
    for (int i = 0; i < PROBES; i++) {
      for (int j = 0; j < PROBES; j++) {
        int column = (grid.columns - 1) * i / (PROBES - 1);
        int node = column * grid.rows + (grid.rows - 1) * j / (PROBES - 1);
        boolean known = false;
        for (double hours : PROBE_HOURS) {
          if (!flow(node, 3600.0 * hours)) {
            continue;
          }
          if (known && !Arrays.equals(flow, first)) {
            return false;
          }
          System.arraycopy(flow, 0, first, 0, flow.length);
          known = true;
        }
      }
    }
    return true;
  }

  private boolean flow(int node, double seconds) {
    double time = departure + Math.max(0.0, seconds);
    return motion.flow(grid.latitude(node), grid.longitude(node), time, flow);
  }

  /**
   * Whether a craft holds its place at a node about a time; not where the stream is not known. Each
   * node is asked once for each stretch of time.
   */
  boolean holds(int node, double seconds) {
    if (held.length == 0) {
      held = new long[grid.nodes()];
      asked = new long[grid.nodes()];
    }
    int stretch = (int) (Math.max(0.0, seconds) / STRETCH_SECONDS);
    if (stretch >= Long.SIZE) {
      return holdsAt(node, seconds);
    }
    long bit = 1L << stretch;
    if ((asked[node] & bit) == 0) {
      asked[node] |= bit;
      held[node] |= holdsAt(node, (stretch + 0.5) * STRETCH_SECONDS) ? bit : 0;
    }
    return (held[node] & bit) != 0;
  }

  /** The same asked at every time that a way with this wait is looked at. */
  boolean holdsAllAlong(int node, double from, double until) {
    int looks = (int) Math.ceil((until - from) / TrackTimes.HELD_LOOK_SECONDS);
    for (int i = 0; i <= looks; i++) {
      if (!holdsAt(node, from + (until - from) * i / looks)) {
        return false;
      }
    }
    return true;
  }

  private boolean holdsAt(int node, double seconds) {
    if (!flow(node, seconds)) {
      return false;
    }
    if (windless) {
      return Math.hypot(flow[0], flow[1]) < HOLDS * calm;
    }
    if (tried.length == 0) {
      tried = new float[moves.count];
    }
    polar.fill(flow, tried);
    return makesWay(tried);
  }

  /** Whether way is made on every move, so that the craft can stay where it is. */
  private boolean makesWay(float[] row) {
    for (float speed : row) {
      if (!(speed > (1.0 - HOLDS) * calm)) {
        return false;
      }
    }
    return true;
  }

  /** Whether every look so far showed a stream and wind in which a craft holds its place. */
  boolean holdsEverywhere() {
    return strongest < HOLDS * calm && !driven;
  }

  /** A speed over the ground that no look has shown to be exceeded, metres a second. */
  double fastest() {
    return fastest;
  }

  /** Looks at a node; false if stream or wind is not known there and then. */
  boolean look(int node, double seconds, Look look) {
    int time = 0;
    double share = 0.0;
    if (!steady) {
      double place = Math.max(0.0, seconds) / between;
      time = (int) place;
      share = place - time;
    }
    int now = kept(node, time);
    int later = share == 0.0 ? now : kept(node, time + 1);
    return windless ? lookCalm(now, later, share, look) : lookInWind(now, later, share, look);
  }

  private boolean lookCalm(int now, int later, double share, Look look) {
    double east = streams[2 * now];
    double eastLater = streams[2 * later];
    if (east == UNKNOWN || eastLater == UNKNOWN) { // the nearer must do
      int nearer = share < 0.5 ? now : later;
      look.east = streams[2 * nearer];
      look.north = streams[2 * nearer + 1];
      return look.east != UNKNOWN;
    }
    double north = streams[2 * now + 1];
    look.east = east + share * (eastLater - east);
    look.north = north + share * (streams[2 * later + 1] - north);
    return true;
  }

  private boolean lookInWind(int now, int later, double share, Look look) {
    look.row = speeds[now];
    look.later = speeds[later];
    look.share = share;
    if (look.row.length == 0 || look.later.length == 0) { // the nearer must do
      look.row = share < 0.5 ? look.row : look.later;
      look.later = look.row;
    }
    return look.row.length != 0;
  }

  /**
   * Seconds for a move by looks all along it; 0 if it cannot be made somewhere on it, or stream or
   * wind are not known there.
   *
   * @param seconds when it is begun
   * @param guess about how long it takes
   */
  double secondsAlong(int node, int other, int move, double seconds, double guess) {
    double metres = moves.metres[move];
    int parts = (int) Math.ceil(metres / (LOOK_SQUARES * grid.spacing));
    double along = grid.along(node);
    double right = grid.right(node);
    double aside = 0.5 * LOOK_SQUARES * grid.spacing; // what is between two looks
    double sum = 0.0;
    for (int i = 0; i < parts; i++) {
      double share = (i + 0.5) / parts;
      double a = along + share * (grid.along(other) - along);
      double r = right + share * (grid.right(other) - right);
      double time = departure + Math.max(0.0, seconds + share * guess);
      if (!isKnown(a, r + aside, time) || !isKnown(a, r - aside, time) || !isKnown(a, r, time)) {
        return 0.0;
      }
      double speed =
          courseSpeed.madeGood(
              flow[0], flow[1], flow[2], flow[3], moves.sine[move], moves.cosine[move]);
      if (!(speed > LEAST_SHARE * calm)) {
        return 0.0;
      }
      sum += metres / parts / speed;
    }
    return sum;
  }

  /** Takes the flow at a place of the plane; false where it is not known. */
  private boolean isKnown(double along, double right, double time) {
    return motion.flow(
        grid.plane.latitude(along, right), grid.plane.longitude(along, right), time, flow);
  }

  /** The speed made good on a move by what was seen; NaN or not above 0 if there is none. */
  double speed(Look look, int move) {
    if (windless) {
      double sine = moves.sine[move];
      double cosine = moves.cosine[move];
      double along = look.east * sine + look.north * cosine;
      double across = look.east * cosine - look.north * sine;
      return along + Math.sqrt(calm * calm - across * across);
    }
    double now = look.row[move];
    return now + look.share * (look.later[move] - now);
  }

  /** Where what is known of a node at one of the even times stands; asked for if need be. */
  private int kept(int node, int time) {
    int at = KEPT * node + (time & (KEPT - 1));
    if (times[at] != time) {
      times[at] = time;
      ask(node, time, at);
    }
    return at;
  }

  private void ask(int node, int time, int at) {
    boolean known = flow(node, time * between);
    double rate = known ? Math.sqrt(flow[0] * flow[0] + flow[1] * flow[1]) : 0.0;
    strongest = Math.max(strongest, rate);
    if (windless) {
      streams[2 * at] = known ? (float) flow[0] : UNKNOWN;
      streams[2 * at + 1] = (float) flow[1];
      fastest = Math.max(fastest, rate + calm);
      return;
    }
    if (!known) {
      speeds[at] = NO_SPEEDS;
      return;
    }
    if (speeds[at].length == 0) {
      speeds[at] = new float[moves.count];
    }
    polar.fill(flow, speeds[at]);
    driven |= !driven && !makesWay(speeds[at]);
    for (float speed : speeds[at]) {
      fastest = Math.max(fastest, speed);
    }
  }
}
