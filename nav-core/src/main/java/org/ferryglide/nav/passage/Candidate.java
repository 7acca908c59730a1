package org.ferryglide.nav.passage;

import java.util.Arrays;
import java.util.Objects;
import java.util.function.Consumer;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.timing.Condition;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WindField;
import org.jspecify.annotations.Nullable;

/**
 * One way a passage may go, looked at minute by minute: where the party is, its heading, and what
 * water and wind do there. Made once and shared by all checks.
 */
final class Candidate {
  /**
   * Between a draw's looks. Against looks every half minute, and drifts in steps of a minute, the
   * chances of checks differed by 0.002 (dangers), 0.007 (drift), 0.011 (reserve), 0.012 (stream)
   * and 0.019 (wind), root mean square, and by 0.05 at most, over 120 random passages with limits
   * near what they meet; the 200 draws of each leave 0.035 themselves.
   */
  private static final double DRAW_STEP_SECONDS = 180.0;

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

  /** From the look before, metres a second over the ground; 0 where a leg begins. */
  final double[] groundEast;

  final double[] groundNorth;

  /** Degrees of latitude gone north or south since the first look, and of longitude. */
  final double[] goneLatitude;

  final double[] goneLongitude;

  /** Seconds from the look before; 0 where a leg begins. */
  final double[] seconds;

  private final Columns columns;
  private final StreamField[] streams;
  private final int[] lastLooks;
  private final WorkRoom room;
  private @Nullable Outcome<SteeredRoute, NotPossible> slower;
  private @Nullable Candidate slowest;
  private double @Nullable [] slowerTimes;
  private int @Nullable [] strongest;
  private @Nullable ErrorsAlong errors;
  private double @Nullable [] drawnSpeeds;
  private double @Nullable [] reserves;
  private @Nullable DrawnErrors drawnErrors;

  Candidate(Passage passage, SteeredRoute route) {
    this(passage, route, new WorkRoom(passage));
  }

  /** With a workspace that serves many candidates of one thread. */
  Candidate(Passage passage, SteeredRoute route, WorkRoom room) {
    this(passage, route, room, LookTimes.step(passage, route), candidate -> {});
  }

  private Candidate(
      Passage passage,
      SteeredRoute route,
      WorkRoom room,
      double stepSeconds,
      Consumer<Candidate> displaced) {
    this.passage = passage;
    this.route = route;
    this.room = room;
    int legs = route.legs().size();
    lastLooks = new int[legs];
    int count = 0;
    for (int i = 0; i < legs; i++) {
      count = LookTimes.add(passage, route, i, stepSeconds, room, count);
      lastLooks[i] = count - 1;
    }
    size = count;
    columns = room.lend(count);
    System.arraycopy(room.times(count), 0, columns.time, 0, count);
    time = columns.time;
    latitude = columns.latitude;
    longitude = columns.longitude;
    heading = columns.heading;
    streamEast = columns.streamEast;
    streamNorth = columns.streamNorth;
    windEast = columns.windEast;
    windNorth = columns.windNorth;
    leg = columns.leg;
    groundEast = columns.groundEast;
    groundNorth = columns.groundNorth;
    seconds = columns.seconds;
    goneLatitude = columns.goneLatitude;
    goneLongitude = columns.goneLongitude;
    int first = passage.legs().size() - legs;
    streams = new StreamField[legs];
    for (int i = 0; i < legs; i++) {
      streams[i] = passage.legs().get(first + i).options().stream().orElse(passage.stream());
    }
    fill();
    move();
    displaced.accept(this);
    count();
  }

  /**
   * The looks along the route of {@link #slower}, for checks of the slower party: nothing slower
   * still is to be solved.
   */
  @SuppressWarnings("ReferenceEquality")
  Candidate slowest(Passage slow, SteeredRoute route) {
    Candidate known = slowest;
    if (known == null || known.passage != slow || known.route != route) {
      known = new Candidate(slow, route, slow.checks().room());
      known.slower = Outcome.ofSolved(route);
      slowest = known;
    }
    return known;
  }

  /** What a condition says of this candidate. */
  Verdict against(Condition condition) {
    return condition instanceof PassageCheck own ? own.check(this) : condition.check(route);
  }

  /** A plan to be drawn, with the looks of its draws. */
  static Candidate toBeDrawn(Passage passage, SteeredRoute route) {
    return new Candidate(passage, route, new WorkRoom(passage), DRAW_STEP_SECONDS, candidate -> {});
  }

  /**
   * One draw of the errors, with places that are changed before anything is made of them.
   *
   * @param speeds how fast the party paddles each leg in the mean, metres a second
   */
  static Candidate ofDraw(
      Passage drawn,
      SteeredRoute route,
      WorkRoom room,
      double[] speeds,
      DrawnErrors errors,
      Consumer<Candidate> displaced) {
    Candidate candidate = new Candidate(drawn, route, room, DRAW_STEP_SECONDS, displaced);
    candidate.drawnSpeeds = speeds;
    candidate.drawnErrors = errors;
    candidate.slower = Outcome.ofSolved(route);
    return candidate;
  }

  /** Whether this is one draw of the errors, whose water stands in {@link #passage}. */
  boolean isDraw() {
    return drawnSpeeds != null;
  }

  /**
   * How fast the party paddles in the interval of a time over its mean speed on a leg: one but in
   * draws, whose legs are solved for the mean.
   */
  double overMeanSpeed(int legOfRoute, double seconds) {
    DrawnErrors drawn = drawnErrors;
    if (drawn == null) {
      return 1.0;
    }
    int number = legOfRoute + passage.legs().size() - route.legs().size();
    double planned = passage.speedOf(number).metresPerSecond();
    double mean = Objects.requireNonNull(drawnSpeeds)[legOfRoute] / planned;
    return drawn.speedFactor(seconds) / mean;
  }

  /** Whether errors are drawn anew between two looks of a draw, so that stream and wind jump. */
  boolean isDrawnAnew(int before, int after) {
    DrawnErrors drawn = drawnErrors;
    return drawn != null && drawn.nextIntervalAfter(time[before]) <= time[after];
  }

  /** How fast the party of a draw paddles a leg. */
  Speed drawnSpeed(int legOfRoute) {
    return Speed.ofMetresPerSecond(Objects.requireNonNull(drawnSpeeds)[legOfRoute]);
  }

  /** Gives back the arrays in which the looks stand: nothing may be asked of them any more. */
  void giveBack() {
    room.giveBack(columns);
    if (slowest != null) {
      slowest.giveBack();
      slowest = null;
    }
  }

  /** The same passage at the slower speed. */
  Outcome<SteeredRoute, NotPossible> slower() {
    if (slower == null) {
      slower = room.slower().leaving(EpochSeconds.of(route.departure()));
    }
    return slower;
  }

  /**
   * Departure and arrival of each leg at the slower speed, seconds since 1970; without any where it
   * is not possible, for which {@link #slower} has the reason.
   */
  double[] slowerTimes() {
    if (slowerTimes == null) {
      slowerTimes =
          slower == null && !room.asksForSlowerRoute()
              ? room.slower().times(EpochSeconds.of(route.departure()))
              : slower().<double[]>match(Candidate::times, why -> new double[0]);
    }
    return slowerTimes;
  }

  private static double[] times(SteeredRoute route) {
    double[] times = new double[2 * route.legs().size()];
    for (int i = 0; i < route.legs().size(); i++) {
      times[2 * i] = EpochSeconds.of(route.legs().get(i).departure());
      times[2 * i + 1] = EpochSeconds.of(route.legs().get(i).arrival());
    }
    return times;
  }

  /** Room to work in, for one thread. */
  WorkRoom room() {
    return room;
  }

  /** The stream along a leg of the route. */
  StreamField streamOf(int legOfRoute) {
    return streams[legOfRoute];
  }

  /** Whether the party was ashore before a leg of the route. */
  boolean isAshoreBefore(int legOfRoute) {
    return room.isStop(legOfRoute + passage.legs().size() - route.legs().size());
  }

  /** Whether the party waited ashore before a leg of the route until something happened. */
  boolean waitsBefore(int legOfRoute) {
    return room.isWait(legOfRoute + passage.legs().size() - route.legs().size());
  }

  /** The look at the end of a leg. */
  int lastLookOf(int legOfRoute) {
    return lastLooks[legOfRoute];
  }

  /** The look at the beginning of a leg. */
  int firstLookOf(int legOfRoute) {
    return legOfRoute == 0 ? 0 : lastLooks[legOfRoute - 1] + 1;
  }

  /** The look with the strongest stream of a leg. */
  int strongest(int legOfRoute) {
    if (strongest == null) {
      strongest = new int[route.legs().size()];
      Arrays.setAll(strongest, this::firstLookOf); // where no stream is known
      double[] most = new double[strongest.length];
      for (int look = 0; look < size; look++) {
        double square = streamEast[look] * streamEast[look] + streamNorth[look] * streamNorth[look];
        if (square > most[leg[look]]) {
          most[leg[look]] = square;
          strongest[leg[look]] = look;
        }
      }
    }
    return strongest[legOfRoute];
  }

  /** What the errors make of the way. */
  ErrorsAlong errors() {
    ErrorsAlong known = errors;
    if (known == null) {
      known = new ErrorsAlong(this, columns);
      errors = known;
    }
    return known;
  }

  /**
   * The reserve at each look in knots, worked out once for the check and for the hours: every check
   * of a candidate's reserve has the same limits and craft.
   */
  double[] reserves(ReserveCheck check) {
    double[] known = reserves;
    if (known == null) {
      known = columns.reserve;
      for (int look = 0; look < size; look++) {
        known[look] = check.worked(this, look);
      }
      reserves = known;
    }
    return known;
  }

  private void fill() {
    WindField wind = passage.wind().orElse(null);
    double[] three = room.places(size);
    double[] flow = room.flow();
    int at = 0;
    for (int number = 0; number < lastLooks.length; number++) {
      int end = lastLooks[number] + 1;
      route.legs().get(number).groundTrack().atEach(time, at, end, three, 3 * at);
      for (; at < end; at++) {
        latitude[at] = three[3 * at];
        longitude[at] = three[3 * at + 1];
        heading[at] = three[3 * at + 2];
        leg[at] = number;
        sample(streams[number], wind, at, flow);
      }
    }
  }

  /** Works out how the party moves on the way solved, from its places before they are displaced. */
  private void move() {
    PlaneMetres metres = room.metres();
    beginLeg(0);
    for (int look = 1; look < size; look++) {
      double span = time[look] - time[look - 1];
      double north = latitude[look] - latitude[look - 1];
      double east = PlaneMetres.turned(longitude[look] - longitude[look - 1]);
      if (leg[look] == leg[look - 1] && span > 0.0) {
        metres.moveTo(0.5 * (latitude[look] + latitude[look - 1]));
        seconds[look] = span;
        groundEast[look] = east * metres.east() / span;
        groundNorth[look] = north * metres.north() / span;
      } else {
        beginLeg(look);
      }
    }
  }

  /** Adds up the degrees gone. */
  private void count() {
    goneLatitude[0] = 0.0;
    goneLongitude[0] = 0.0;
    for (int look = 1; look < size; look++) {
      double east = PlaneMetres.turned(longitude[look] - longitude[look - 1]);
      goneLatitude[look] = goneLatitude[look - 1] + Math.abs(latitude[look] - latitude[look - 1]);
      goneLongitude[look] = goneLongitude[look - 1] + Math.abs(east);
    }
  }

  private void beginLeg(int look) {
    seconds[look] = 0.0;
    groundEast[look] = 0.0;
    groundNorth[look] = 0.0;
  }

  private void sample(StreamField stream, @Nullable WindField wind, int at, double[] flow) {
    boolean known = stream.sample(latitude[at], longitude[at], time[at], flow, 0);
    streamEast[at] = known ? flow[0] : Double.NaN;
    streamNorth[at] = known ? flow[1] : Double.NaN;
    boolean blows = wind != null && wind.sample(latitude[at], longitude[at], time[at], flow, 0);
    windEast[at] = blows ? flow[0] : Double.NaN;
    windNorth[at] = blows ? flow[1] : Double.NaN;
  }

  /** A longitude in [-180, 180). */
  static double longitude(double degrees) {
    double reduced = PlaneMetres.turned(degrees);
    return reduced >= 180.0 ? -180.0 : reduced + 0.0;
  }

  /** Rate of the stream at a look, metres a second; NaN if it is not known. */
  double streamRate(int look) {
    return PlaneMetres.length(streamEast[look], streamNorth[look]);
  }

  /** Speed of the wind at a look, metres a second; NaN if it is not known. */
  double windSpeed(int look) {
    return PlaneMetres.length(windEast[look], windNorth[look]);
  }
}
