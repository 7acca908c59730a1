package org.ferryglide.nav.passage;

import java.io.Serializable;
import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.water.Found;
import org.ferryglide.nav.water.Window;

/**
 * The times of one way point: until when the party may go on from it, and when home can still be
 * made.
 *
 * <pre>{@code
 * for (TurnTimes times : wayHome.turns()) {
 *   System.out.println(times.wayPoint().name() + " not later than " + times.notLaterThan());
 *   times.homeBarred().forEach((span, why) -> System.out.println("no way home " + span + ": " + why.text()));
 * }
 * }</pre>
 */
public final class TurnTimes implements Serializable {
  private static final long serialVersionUID = 1L;

  private final WayPoint wayPoint;
  private final Instant planned;
  private final Found<Window> goingOn;
  private final LinkedHashMap<TimeSpan, Note> notOn;
  private final Found<Window> home;
  private final LinkedHashMap<TimeSpan, Note> barred;

  TurnTimes(
      WayPoint wayPoint,
      Instant planned,
      Found<Window> goingOn,
      Map<TimeSpan, Note> notOn,
      Found<Window> home,
      Map<TimeSpan, Note> barred) {
    this.wayPoint = wayPoint;
    this.planned = planned;
    this.goingOn = goingOn;
    this.notOn = new LinkedHashMap<>(notOn);
    this.home = home;
    this.barred = new LinkedHashMap<>(barred);
  }

  /**
   * Where.
   *
   * @return the way point
   */
  public WayPoint wayPoint() {
    return wayPoint;
  }

  /**
   * When the plan leaves it.
   *
   * @return the planned time
   */
  public Instant planned() {
    return planned;
  }

  /**
   * Until when the party may leave it to go on: the end of the span that begins at the planned
   * time, in which all checks hold for the rest of the passage, for the planned party and the
   * slower one.
   *
   * @return the time, never later than it is and at most a second earlier; empty if going on fails
   *     a check at the planned time already
   */
  public Optional<Instant> notLaterThan() {
    return goingOn
        .first()
        .filter(window -> window.from().equals(goingOn.asked().from()))
        .map(Window::until);
  }

  /**
   * Every span in which the party may go on. A span after {@link #notLaterThan} is for waiting
   * ashore, not for being late.
   *
   * @return the spans from the planned time until the end of the search, and what could be seen
   */
  public Found<Window> goingOn() {
    return goingOn;
  }

  /**
   * The spans in which going on fails a check or could not be checked, with the worst reason as
   * each begins.
   *
   * @return in order of time; unmodifiable
   */
  public Map<TimeSpan, Note> goingOnBarred() {
    return Collections.unmodifiableMap(notOn);
  }

  /**
   * Every span in which the way home can be begun here with all checks holding, for the planned
   * party and the slower one. At the start, which is home, the whole time.
   *
   * @return the spans from the planned time, at a stop from the arrival and the minutes of landing
   *     and launching, until the end of the search, and what could be seen
   */
  public Found<Window> home() {
    return home;
  }

  /**
   * The spans in which the way home is barred or could not be checked, with the worst reason as
   * each begins.
   *
   * @return in order of time, those between two spans of {@link #home} among them; unmodifiable
   */
  public Map<TimeSpan, Note> homeBarred() {
    return Collections.unmodifiableMap(barred);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TurnTimes that
        && wayPoint.equals(that.wayPoint)
        && planned.equals(that.planned)
        && goingOn.equals(that.goingOn)
        && home.equals(that.home);
  }

  @Override
  public int hashCode() {
    return Objects.hash(wayPoint, planned, goingOn, home);
  }

  @Override
  public String toString() {
    return wayPoint.name()
        + notLaterThan().map(time -> " not later than " + time).orElse(" not at all")
        + ", home in "
        + home.items();
  }
}
