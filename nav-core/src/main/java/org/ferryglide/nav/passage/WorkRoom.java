package org.ferryglide.nav.passage;

import java.util.Arrays;
import org.ferryglide.nav.basics.Seconds;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.reckon.ErrorSource;
import org.ferryglide.nav.reckon.ErrorWalk;
import org.ferryglide.nav.reckon.Spread;
import org.jspecify.annotations.Nullable;

/** What one thread needs to look at candidates of a passage, made once. */
final class WorkRoom {
  private final Passage passage;
  private final PlaneMetres metres = new PlaneMetres();
  private final double[] flow = new double[2];
  private final boolean[] isStop;
  private final boolean[] isWait;
  private final boolean asksForSlowerRoute;
  private double[] places = new double[0];
  private double[] times = new double[0];
  private double[] clearances = new double[0];
  private @Nullable Columns idle;
  private @Nullable PassageSolver withNotes;
  private @Nullable PassageSolver slower;
  private @Nullable ErrorWalk place;
  private @Nullable ErrorWalk lateness;
  private @Nullable ErrorWalk current;
  private @Nullable Object lastWalker;
  private double @Nullable [] growth;

  WorkRoom(Passage passage) {
    this.passage = passage;
    asksForSlowerRoute =
        passage.lanes().map(lanes -> !lanes.isEmpty()).orElse(false)
            || passage.conditions().stream().anyMatch(SlowerToo.class::isInstance);
    int count = passage.wayPoints().size();
    isStop = new boolean[count];
    isWait = new boolean[count];
    for (int i = 0; i < count; i++) {
      Stop stop = passage.wayPoints().get(i).stop().orElse(null);
      isStop[i] = stop != null;
      isWait[i] = stop != null && Stops.of(stop).waits();
    }
  }

  /**
   * Whether some check asks for the slower party's whole route, and not its times alone: then it is
   * solved once for both.
   */
  boolean asksForSlowerRoute() {
    return asksForSlowerRoute;
  }

  /** Whether the party goes ashore at a way point. */
  boolean isStop(int wayPoint) {
    return isStop[wayPoint];
  }

  /** Whether it waits there until something happens. */
  boolean isWait(int wayPoint) {
    return isWait[wayPoint];
  }

  /** Room for so many looks, full of what stood there before; lent to one candidate at a time. */
  Columns lend(int looks) {
    Columns mine = idle;
    idle = null;
    return mine != null && mine.isEnoughFor(looks) ? mine : new Columns(looks + looks / 4);
  }

  /** Takes back what was lent. */
  void giveBack(Columns columns) {
    idle = columns;
  }

  /** Metres that remember nothing of where they were before. */
  PlaneMetres metres() {
    metres.restart();
    return metres;
  }

  /** Room for a flow, east and north. */
  double[] flow() {
    return flow;
  }

  /** Room for three figures at each look. */
  double[] places(int looks) {
    if (places.length < 3 * looks) {
      places = new double[3 * looks];
    }
    return places;
  }

  /** Room for how clear each danger is. */
  double[] clearances(int dangers) {
    if (clearances.length != dangers) {
      clearances = new double[dangers];
    }
    return clearances;
  }

  /** Solves the passage, with what the stream has to say of itself. */
  PassageSolver withNotes() {
    if (withNotes == null) {
      withNotes = PassageSolver.withNotes(passage);
    }
    return withNotes;
  }

  /** Solves the passage at the slower speed. */
  PassageSolver slower() {
    if (slower == null) {
      slower = PassageSolver.lean(passage.slower());
    }
    return slower;
  }

  /** Look times: room for so many, what stands there already kept. */
  double[] times(int looks) {
    if (times.length < looks) {
      times = Arrays.copyOf(times, looks + looks / 2);
    }
    return times;
  }

  /**
   * A walk of the position's error: from the beginning for another walker than the last, where it
   * stands for the same one.
   */
  ErrorWalk place(Object walker) {
    if (place == null) {
      place = ErrorWalk.of(passage.errors());
    }
    if (!isWalkedBy(walker)) {
      place.reset();
      lastWalker = walker;
    }
    return place;
  }

  @SuppressWarnings("ReferenceEquality")
  boolean isWalkedBy(Object walker) {
    return lastWalker == walker;
  }

  /** Standard deviation of the place along the longer axis for a metre through the water. */
  double growthPaddled() {
    return growth()[0];
  }

  /** The same for a metre of stream. */
  double growthCarried() {
    return growth()[1];
  }

  /** The same for a second in which other currents run. */
  double growthInTime() {
    return growth()[2];
  }

  private double[] growth() {
    if (growth == null) {
      double second = Math.min(1.0, Seconds.of(passage.errors().interval()));
      double[] covariance = new double[3];
      growth = new double[3];
      ErrorWalk paddled = lateness();
      paddled.step(1.0, 0.0, 0.0, 0.0, second);
      growth[0] = longerAxis(paddled, covariance) / second;
      ErrorWalk carried = lateness();
      carried.step(0.0, 0.0, 1.0, 0.0, second);
      growth[1] = longerAxis(carried, covariance) / second;
      ErrorWalk inTime = current();
      inTime.step(0.0, 0.0, 0.0, 0.0, second);
      growth[2] = longerAxis(inTime, covariance) / second;
    }
    return growth;
  }

  private static double longerAxis(ErrorWalk walk, double[] covariance) {
    walk.covariance(covariance, 0);
    double half = PlaneMetres.length(0.5 * (covariance[0] - covariance[1]), covariance[2]);
    return Math.sqrt(0.5 * (covariance[0] + covariance[1]) + half);
  }

  /** A walk of what is lost along the way, currents apart, from the beginning. */
  ErrorWalk lateness() {
    if (lateness == null) {
      lateness =
          ErrorWalk.of(
              passage
                  .errors()
                  .with(ErrorSource.PLOTTED_POSITION, Spread.NONE)
                  .with(ErrorSource.OTHER_CURRENT, Spread.NONE));
    }
    lateness.reset();
    return lateness;
  }

  /** A walk of the currents' part alone, from the beginning. */
  ErrorWalk current() {
    if (current == null) {
      ErrorModel all = passage.errors();
      current =
          ErrorWalk.of(
              ErrorModel.none()
                  .withInterval(all.interval())
                  .with(ErrorSource.OTHER_CURRENT, all.spread(ErrorSource.OTHER_CURRENT)));
    }
    current.reset();
    return current;
  }
}
