package org.ferryglide.nav.magnetic;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.bearing.Angles;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;

/**
 * The compass roses of one chart.
 *
 * <p>A chart of some extent prints several, because the variation differs across it. Take the
 * nearest, or weigh the two nearest by how far along the line between them the place lies.
 *
 * <pre>{@code
 * ChartRoses roses = ChartRoses.of(List.of(west, east));
 * RoseReading reading = roses.between(place, LocalDate.of(2026, 6, 1));
 * }</pre>
 */
public final class ChartRoses implements Serializable {
  private static final long serialVersionUID = 1L;

  private final PlacedRose[] roses;

  private ChartRoses(PlacedRose[] roses) {
    this.roses = roses;
  }

  /**
   * Takes the roses of a chart.
   *
   * @param roses at least one, no two at the same place
   * @return the set
   * @throws IllegalArgumentException if there are none, or two stand at the same place
   */
  public static ChartRoses of(List<PlacedRose> roses) {
    if (roses.isEmpty()) {
      throw new IllegalArgumentException("a chart's roses must be at least one");
    }
    for (int i = 0; i < roses.size(); i++) {
      for (int k = 0; k < i; k++) {
        if (roses.get(i).position().equals(roses.get(k).position())) {
          throw new IllegalArgumentException(
              "two roses must not stand at the same place, but do at " + roses.get(i).position());
        }
      }
    }
    return new ChartRoses(roses.toArray(new PlacedRose[0]));
  }

  /**
   * The roses.
   *
   * @return the roses in the order given, unmodifiable
   */
  public List<PlacedRose> roses() {
    return List.of(roses);
  }

  /**
   * What the nearest rose gives; of two equally near, the first.
   *
   * @param place the place
   * @param date the date; its midnight in UTC is meant
   * @return the reading
   */
  public RoseReading nearest(Position place, LocalDate date) {
    PlacedRose nearest = roses[nearestBut(place, -1)];
    CompassRose rose = nearest.rose();
    return new RoseReading(
        rose.variationAt(date),
        rose.annualChange(),
        new PlacedRose[] {nearest},
        new double[] {1.0},
        rose.notesAt(date).toArray(new Note[0]));
  }

  /**
   * What the two nearest roses give, weighed by the place's projection on the line between them;
   * beyond either end that rose alone counts. A single rose is taken as it is.
   *
   * @param place the place
   * @param date the date; its midnight in UTC is meant
   * @return the reading, with a note on the weights when two roses take part
   */
  public RoseReading between(Position place, LocalDate date) {
    if (roses.length == 1) {
      return nearest(place, date);
    }
    int nearest = nearestBut(place, -1);
    PlacedRose near = roses[nearest];
    PlacedRose far = roses[nearestBut(place, nearest)];
    double toNear = metres(place, near.position());
    double toFar = metres(place, far.position());
    double apart = metres(near.position(), far.position());
    // law of cosines: how far along from the near rose to the far one, as part of the whole
    double along = (toNear * toNear + apart * apart - toFar * toFar) / (2.0 * apart * apart);
    double weight = Math.min(1.0, Math.max(0.0, along));
    double nearEast = near.rose().variationAt(date).degreesEast();
    double farEast = far.rose().variationAt(date).degreesEast();
    double apartEast = Angles.shortWay(farEast - nearEast); // both sides of ±180° are neighbours
    double nearChange = near.rose().annualChange().minutesEast();
    double farChange = far.rose().annualChange().minutesEast();
    List<Note> notes = new ArrayList<>();
    notes.add(
        Note.information(
                "rose.weighted",
                "Weighed between two roses, "
                    + Math.round(100.0 * (1.0 - weight))
                    + " to "
                    + Math.round(100.0 * weight)
                    + " parts in a hundred.")
            .with("nearWeight", 1.0 - weight)
            .with("farWeight", weight));
    for (Note note : near.rose().notesAt(date)) {
      notes.add(note);
    }
    if (far.rose().year() != near.rose().year()) {
      notes.addAll(far.rose().notesAt(date));
    }
    return new RoseReading(
        Variation.ofDegreesEast(Angles.shortWay(nearEast + weight * apartEast)),
        AnnualChange.ofMinutesEast(nearChange + weight * (farChange - nearChange)),
        new PlacedRose[] {near, far},
        new double[] {1.0 - weight, weight},
        notes.toArray(new Note[0]));
  }

  /** Index of the nearest rose, one left out; -1 leaves out none. */
  private int nearestBut(Position place, int leftOut) {
    int best = leftOut == 0 ? 1 : 0;
    for (int i = best + 1; i < roses.length; i++) {
      if (i != leftOut
          && metres(place, roses[i].position()) < metres(place, roses[best].position())) {
        best = i;
      }
    }
    return best;
  }

  private static double metres(Position one, Position other) {
    return GeodesicLeg.between(one, other).length().metres();
  }
}
