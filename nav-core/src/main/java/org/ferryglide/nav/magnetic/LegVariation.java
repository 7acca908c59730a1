package org.ferryglide.nav.magnetic;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.basics.Edge;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.geodesy.Leg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;

/**
 * The variation along a leg: at its start, middle and end, and the places where it has changed by
 * half a degree, so that a long leg is steered with the right one.
 *
 * <pre>{@code
 * LegVariation along = LegVariation.of(snapshot, leg);
 * along.middle(); // the one to use for a short leg
 * along.changes(); // empty for a short leg
 * }</pre>
 */
public final class LegVariation implements Serializable {
  private static final long serialVersionUID = 1L;

  /** The models know no feature so small that the variation could turn back within this. */
  private static final double SAMPLE_METRES = 10_000.0;

  private static final int MOST_SAMPLES = 4096;
  private static final double STEP_DEGREES = 0.5;

  /**
   * Half a metre is promised; what is found is a fifth of it, to have room where the field bends.
   */
  private static final double FOUND_METRES = 0.1;

  private final Leg leg;
  private final Variation start;
  private final Variation middle;
  private final Variation end;
  private final double change;
  private final Change[] changes;
  private final Note[] notes;

  /**
   * A place where the variation has changed by another half degree since the start.
   *
   * <pre>{@code
   * LegVariation.Change first = along.changes().get(0);
   * first.fromStart().inNauticalMiles(1);
   * }</pre>
   *
   * @param fromStart distance along the leg, to the nearest metre
   * @param place the position there
   * @param variation the variation there
   */
  public record Change(Distance fromStart, Position place, Variation variation)
      implements Serializable {
    private static final long serialVersionUID = 1L;

    /**
     * Takes where and what.
     *
     * @param fromStart distance along the leg
     * @param place the position there
     * @param variation the variation there
     */
    public Change {
      Objects.requireNonNull(fromStart, "fromStart");
      Objects.requireNonNull(place, "place");
      Objects.requireNonNull(variation, "variation");
    }
  }

  private LegVariation(MagneticSnapshot snapshot, Leg leg) {
    this.leg = leg;
    double length = leg.length().metres();
    start = snapshot.variation(leg.start());
    middle = snapshot.variation(leg.pointAt(Distance.ofMetres(length / 2.0)));
    end = snapshot.variation(leg.end());
    List<Change> found = new ArrayList<>();
    int samples = samples(length);
    double before = 0.0; // since the start, kept whole when the variation passes ±180°
    for (int i = 1; i <= samples; i++) {
      double from = length * (i - 1) / samples;
      double to = length * i / samples;
      double after = since(snapshot, to, before);
      boolean rising = after >= before;
      int step =
          (int) (rising ? Math.floor(before / STEP_DEGREES) : Math.ceil(before / STEP_DEGREES));
      for (int next = step + (rising ? 1 : -1);
          rising ? next * STEP_DEGREES <= after : next * STEP_DEGREES >= after;
          next += rising ? 1 : -1) {
        if (next != 0) {
          found.add(crossing(snapshot, from, to, before, next * STEP_DEGREES, rising));
        }
      }
      before = after;
    }
    change = before;
    changes = found.toArray(new Change[0]);
    notes = notes(snapshot).toArray(new Note[0]);
  }

  /** Change since the start, continued from a value nearby. */
  private double since(MagneticSnapshot snapshot, double metres, double nearby) {
    Position place = leg.pointAt(Distance.ofMetres(metres));
    double raw = snapshot.variation(place).degreesEast() - start.degreesEast();
    return nearby + Math.IEEEremainder(raw - nearby, 360.0);
  }

  private Change crossing(
      MagneticSnapshot snapshot,
      double from,
      double to,
      double before,
      double wanted,
      boolean rising) {
    double changed =
        Edge.of(
            metres -> since(snapshot, metres, before) >= wanted == rising, to, from, FOUND_METRES);
    Distance fromStart = Distance.ofMetres(changed);
    Position place = leg.pointAt(fromStart);
    return new Change(fromStart, place, snapshot.variation(place));
  }

  /** The place along the leg, its ends included, where the horizontal field is weakest. */
  private Position weakest(MagneticSnapshot snapshot) {
    double length = leg.length().metres();
    int samples = samples(length);
    Position weakest = leg.start();
    double least = snapshot.field(weakest).horizontalNanotesla();
    for (int i = 1; i <= samples; i++) {
      Position place =
          i < samples ? leg.pointAt(Distance.ofMetres(length * i / samples)) : leg.end();
      double horizontal = snapshot.field(place).horizontalNanotesla();
      if (horizontal < least) {
        least = horizontal;
        weakest = place;
      }
    }
    return weakest;
  }

  private static int samples(double lengthMetres) {
    return (int) Math.min(MOST_SAMPLES, Math.ceil(lengthMetres / SAMPLE_METRES) + 1.0);
  }

  private List<Note> notes(MagneticSnapshot snapshot) {
    List<Note> all = new ArrayList<>(snapshot.notesAt(weakest(snapshot)));
    if (changes.length > 0) {
      all.add(
          Note.information(
                  "variation.changes",
                  "Variation changes from "
                      + start.degreesAndMinutes()
                      + " to "
                      + end.degreesAndMinutes()
                      + " along the leg; it has changed by half a degree after "
                      + changes[0].fromStart().inNauticalMiles(1)
                      + ".")
              .with("startVariation", start.degreesAndMinutes())
              .with("endVariation", end.degreesAndMinutes())
              .with("changeDegreesEast", change)
              .with("halfDegreeAfterMetres", changes[0].fromStart().metres()));
    }
    return all;
  }

  /**
   * Looks at the variation along a leg.
   *
   * @param snapshot the model at the date
   * @param leg the leg
   * @return the variation along it
   */
  public static LegVariation of(MagneticSnapshot snapshot, Leg leg) {
    return new LegVariation(snapshot, leg);
  }

  /**
   * The leg.
   *
   * @return the leg
   */
  public Leg leg() {
    return leg;
  }

  /**
   * The variation where the leg begins.
   *
   * @return the variation
   */
  public Variation start() {
    return start;
  }

  /**
   * The variation halfway along.
   *
   * @return the variation
   */
  public Variation middle() {
    return middle;
  }

  /**
   * The variation where the leg ends.
   *
   * @return the variation
   */
  public Variation end() {
    return end;
  }

  /**
   * How much the variation changes from start to end.
   *
   * @return degrees, positive when magnetic north moves east; whole turns about a magnetic pole
   *     included
   */
  public double changeDegreesEast() {
    return change;
  }

  /**
   * The places where the variation has changed by half a degree, a whole one, and so on since the
   * start, in the order in which the leg meets them.
   *
   * @return the places, empty on most legs of a day's paddle, unmodifiable
   */
  public List<Change> changes() {
    return List.of(changes);
  }

  /**
   * Lapse of the model, the weakest field anywhere along the leg, change along it.
   *
   * @return the notes, possibly empty, unmodifiable
   */
  public List<Note> notes() {
    return List.of(notes);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof LegVariation that
        && leg.equals(that.leg)
        && start.equals(that.start)
        && middle.equals(that.middle)
        && end.equals(that.end)
        && Double.compare(change, that.change) == 0
        && Arrays.equals(changes, that.changes)
        && Arrays.equals(notes, that.notes);
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        leg, start, middle, end, change, Arrays.hashCode(changes), Arrays.hashCode(notes));
  }

  /** Variation at start, middle and end as charts print it. */
  @Override
  public String toString() {
    return start.degreesAndMinutes()
        + ", "
        + middle.degreesAndMinutes()
        + ", "
        + end.degreesAndMinutes();
  }
}
