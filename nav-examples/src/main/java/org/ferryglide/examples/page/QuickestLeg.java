package org.ferryglide.examples.page;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.passage.LegOptions;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.PlannedLeg;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.steer.Strategy;

/**
 * The quickest ways along one leg of a passage, with the lines of equal time about them. They are
 * kept out of its dangers away from the leg's ends that are closed always or at stated times, and
 * of its limits of stream and wind against stream; all checks are made for the first way, in {@link
 * #plan}.
 *
 * <pre>{@code
 * QuickestLeg leg =
 *     QuickestLeg.of(folder.passage(), departure, 2, Duration.ofMinutes(15), 3).orElseThrow();
 * leg.ways().get(0).path().arrival();
 * }</pre>
 */
public final class QuickestLeg implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Minutes between lines of equal time; the first that needs no more lines than there is room. */
  private static final int[] SPACINGS = {2, 5, 10, 15, 20, 30, 60, 120, 240};

  private static final int MOST_LINES = 6;

  /** A line nearer its middle than such a part of a spacing is hardly seen. */
  private static final long DOT = 5;

  private final TimedPlan plan;
  private final PlannedLeg leg;
  private final Instant planned;
  private final CourseToSteer solver;
  private final List<Way> ways;

  /**
   * One of the ways.
   *
   * @param path the way itself, on which the heading changes all the time
   * @param steps the same in headings held for a while; or why it cannot be steered so
   */
  public record Way(SteeredLeg path, Outcome<SteeredRoute, NotPossible> steps)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    /**
     * How far two refinements of the path are apart: the search's own doubt.
     *
     * @return seconds; empty where one heading is the answer
     */
    public Optional<Double> doubtSeconds() {
      return note("steer.quickest-error").map(note -> note.figures().get("errorSeconds"));
    }

    /**
     * When it meets its greatest stream.
     *
     * @return the time; empty where there is none
     */
    public Optional<Instant> greatestStreamAt() {
      return note("steer.greatest-stream").map(note -> Instant.parse(note.data().get("atTime")));
    }

    /**
     * How strong that is.
     *
     * @return metres a second, 0 where there is none
     */
    public double greatestStreamMetresPerSecond() {
      return note("steer.greatest-stream")
          .map(note -> note.figures().get("rateMetresPerSecond"))
          .orElse(0.0);
    }

    private Optional<Note> note(String code) {
      return path.notes().stream().filter(note -> note.code().equals(code)).findFirst();
    }
  }

  /**
   * A line of equal time.
   *
   * @param time when it is reached, or left for the end of the leg
   * @param outlines closed polygons
   */
  record Line(Instant time, List<List<Position>> outlines) {}

  private QuickestLeg(
      TimedPlan plan, PlannedLeg leg, Instant planned, CourseToSteer solver, List<Way> ways) {
    this.plan = plan;
    this.leg = leg;
    this.planned = planned;
    this.solver = solver;
    this.ways = ways;
  }

  /**
   * Works out a leg that is begun when the passage's plan begins it.
   *
   * @param passage the passage
   * @param departure when the passage starts
   * @param number of the leg, from 1
   * @param each how long a heading is held
   * @param most how many ways are wanted at most
   * @return the leg; or why the plan, or any quickest way, is not possible
   * @throws IllegalArgumentException if the passage has no leg of that number, {@code each} is
   *     shorter than a second or {@code most} below 1
   */
  public static Outcome<QuickestLeg, NotPossible> of(
      Passage passage, Instant departure, int number, Duration each, int most) {
    if (number < 1 || number > passage.legs().size()) {
      throw new IllegalArgumentException(
          "leg must be in [1, " + passage.legs().size() + "], but was " + number);
    }
    Outcome<TimedPlan, NotPossible> usual = TimedPlan.of(passage, departure);
    Passage quickened = quickened(passage, number);
    return usual.match(
        plan -> {
          Instant planned = plan.legs().get(number - 1).arrival();
          return (quickened == passage ? usual : TimedPlan.of(quickened, departure))
              .map(by -> along(by, planned, number, each, most));
        },
        Outcome::ofUnsolved);
  }

  private static QuickestLeg along(
      TimedPlan plan, Instant planned, int number, Duration each, int most) {
    PlannedLeg leg = plan.legs().get(number - 1);
    CourseToSteer solver = plan.passage().courseToSteer(number);
    List<Way> ways = new ArrayList<>();
    for (SteeredLeg path : solver.quickestWays(leg.leg().leg(), leg.departure(), most)) {
      ways.add(new Way(path, solver.inSteps(path, each)));
    }
    if (ways.isEmpty()) { // one heading is the answer
      ways.add(new Way(leg.steered(), solver.inSteps(leg.steered(), each)));
    }
    return new QuickestLeg(plan, leg, planned, solver, List.copyOf(ways));
  }

  /** The passage with the leg by the quickest path, with its obstacles where it has any. */
  private static Passage quickened(Passage passage, int number) {
    LegOptions options = passage.legs().get(number - 1).options();
    return options.strategy().isQuickest()
        ? passage
        : passage.withLegOptions(number, options.withStrategy(Strategy.quickest()));
  }

  /**
   * The whole passage with this leg by its first way, held against every check: what that way is
   * not kept out of, and what a leg sooner done does to the legs after it, is told there.
   *
   * @return the plan
   */
  public TimedPlan plan() {
    return plan;
  }

  /**
   * The leg as the quickest path plans it, for variation and compass.
   *
   * @return the leg
   */
  public PlannedLeg leg() {
    return leg;
  }

  /**
   * When the passage itself, steered as its folder says, ends the leg.
   *
   * @return the arrival as planned
   */
  public Instant planned() {
    return planned;
  }

  /**
   * The ways.
   *
   * @return the ways, the quickest first, at least one
   */
  public List<Way> ways() {
    return ways;
  }

  /** How far the party gets by when, until a time. */
  List<Line> forward(Instant until) {
    long spacing = spacing(until);
    long first = clockSeconds(leg.departure()) + spacing / DOT;
    List<Instant> times = new ArrayList<>();
    for (long at = Math.floorDiv(first, spacing) * spacing + spacing;
        at <= clockSeconds(until) && times.size() < MOST_LINES;
        at += spacing) {
      times.add(atClock(at));
    }
    return times.isEmpty()
        ? List.of()
        : lines(solver.isochrones(leg.leg().leg().start(), leg.departure(), times));
  }

  /** From where, leaving when, a place can still be made by a time; the last time first. */
  List<Line> back(Position goal, Instant latest) {
    long spacing = spacing(latest);
    long last = clockSeconds(latest) - spacing / DOT;
    List<Instant> times = new ArrayList<>();
    for (long at = Math.floorDiv(last, spacing) * spacing;
        at >= clockSeconds(leg.departure()) && times.size() < MOST_LINES;
        at -= spacing) {
      times.add(atClock(at));
    }
    return times.isEmpty() ? List.of() : lines(solver.reachesBack(goal, latest, times));
  }

  private static List<Line> lines(Map<Instant, List<List<Position>>> byTime) {
    List<Line> lines = new ArrayList<>();
    byTime.forEach((time, outlines) -> lines.add(new Line(time, outlines)));
    return lines;
  }

  /** Seconds between the round times of lines until a time. */
  private long spacing(Instant until) {
    long all = Duration.between(leg.departure(), until).getSeconds();
    for (int minutes : SPACINGS) {
      if (60L * minutes * MOST_LINES >= all) {
        return 60L * minutes;
      }
    }
    return 60L * SPACINGS[SPACINGS.length - 1];
  }

  private long clockSeconds(Instant time) {
    return time.getEpochSecond() + offsetSeconds();
  }

  private Instant atClock(long seconds) {
    return Instant.ofEpochSecond(seconds - offsetSeconds());
  }

  /** Of the party's clock: its round times are those of the lines. */
  private long offsetSeconds() {
    return plan.passage().zone().getRules().getOffset(leg.departure()).getTotalSeconds();
  }
}
