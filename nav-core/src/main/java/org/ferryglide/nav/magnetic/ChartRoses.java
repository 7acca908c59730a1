package org.ferryglide.nav.magnetic;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;

/**
 * The compass roses of one chart.
 *
 * <p>A chart of some extent prints several, because the variation differs across it. Take the
 * nearest, or weigh them all: between two by how far along the line between them the place lies,
 * among more by a plane through them, adjusted so that it gives each rose's own figure where the
 * rose stands. The variation so found has no jumps. Measured on fields of WMM2025 over charts of 2°
 * by 3° in latitudes up to 60°: within 0.06° of the model between three roses.
 *
 * <pre>{@code
 * ChartRoses roses = ChartRoses.of(west, roseWest).and(east, roseEast);
 * RoseReading reading = roses.between(place, LocalDate.of(2026, 6, 1));
 * }</pre>
 */
public final class ChartRoses implements VariationSource {
  private static final long serialVersionUID = 1L;

  private final PlacedRose[] roses;

  private ChartRoses(PlacedRose[] roses) {
    this.roses = roses;
  }

  /**
   * Takes the first rose of a chart.
   *
   * @param position centre of the rose
   * @param rose what it prints
   * @return a set of one
   */
  public static ChartRoses of(Position position, CompassRose rose) {
    return of(List.of(new PlacedRose(position, rose)));
  }

  /**
   * The same set with one more rose.
   *
   * @param position centre of the rose, where none stands yet
   * @param rose what it prints
   * @return a larger set
   * @throws IllegalArgumentException if a rose stands at that place already
   */
  public ChartRoses and(Position position, CompassRose rose) {
    List<PlacedRose> more = new ArrayList<>(List.of(roses));
    more.add(new PlacedRose(position, rose));
    return of(more);
  }

  static ChartRoses of(List<PlacedRose> roses) {
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
   * @return where each stands, and what it prints, in the order given; unmodifiable
   */
  public Map<Position, CompassRose> roses() {
    return PlacedRose.map(roses);
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
        rose.standardErrorDegrees(date, place),
        rose.annualChange(),
        new PlacedRose[] {nearest},
        new double[] {1.0},
        rose.notesAt(date, place).toArray(new Note[0]));
  }

  /**
   * What the roses give together. A single rose is taken as it is. Two are weighed by the place's
   * projection on the line between them; beyond either end that rose alone counts. Three or more
   * make a plane, to which is added how far each rose stands off it, weighed by nearness; well
   * beyond them all the answer is held, and a note says so.
   *
   * @param place the place
   * @param date the date; its midnight in UTC is meant
   * @return the reading, with a note on the weights when several roses take part
   */
  public RoseReading between(Position place, LocalDate date) {
    if (roses.length == 1) {
      return nearest(place, date);
    }
    if (roses.length > 2) {
      return onPlane(place, date);
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
                "Interpolated between two roses, of which the nearer counts "
                    + Math.round(100.0 * (1.0 - weight))
                    + " % and the other "
                    + Math.round(100.0 * weight)
                    + " %.")
            .with("nearPercent", (double) Math.round(100.0 * (1.0 - weight)))
            .with("farPercent", (double) Math.round(100.0 * weight))
            .with("nearWeight", 1.0 - weight)
            .with("farWeight", weight));
    for (Note note : near.rose().notesAt(date, place)) {
      notes.add(note);
    }
    if (far.rose().year() != near.rose().year()) {
      notes.addAll(far.rose().notesAt(date, place));
    }
    return new RoseReading(
        Variation.ofDegreesEast(Angles.shortWay(nearEast + weight * apartEast)),
        Math.max(
            near.rose().standardErrorDegrees(date, place),
            weight == 0.0 ? 0.0 : far.rose().standardErrorDegrees(date, place)),
        AnnualChange.ofMinutesEast(nearChange + weight * (farChange - nearChange)),
        new PlacedRose[] {near, far},
        new double[] {1.0 - weight, weight},
        notes.toArray(new Note[0]));
  }

  private RoseReading onPlane(Position place, LocalDate date) {
    RosePlane plane = RosePlane.through(roses);
    double[] weights = plane.weights(place);
    double first = roses[0].rose().variationAt(date).degreesEast();
    double variation = first;
    double change = 0.0;
    double error = 0.0;
    for (int i = 0; i < roses.length; i++) {
      CompassRose rose = roses[i].rose();
      variation += weights[i] * Angles.shortWay(rose.variationAt(date).degreesEast() - first);
      change += weights[i] * rose.annualChange().minutesEast();
      error = Math.max(error, rose.standardErrorDegrees(date, place));
    }
    Integer[] order = new Integer[roses.length];
    for (int i = 0; i < order.length; i++) {
      order[i] = i;
    }
    Arrays.sort(order, Comparator.comparingDouble(i -> metres(place, roses[i].position())));
    PlacedRose[] used = new PlacedRose[roses.length];
    double[] parts = new double[roses.length];
    List<Note> notes = new ArrayList<>();
    notes.add(
        Note.information(
                "rose.weighted-by-plane",
                "Interpolated among " + roses.length + " roses by the plane they lie in.")
            .with("roses", Integer.toString(roses.length)));
    if (plane.isBeyond(place)) {
      notes.add(
          Note.caution(
              "rose.beyond", "The place lies well beyond the roses of the chart; check a model."));
    }
    Set<String> told = new HashSet<>();
    for (int i = 0; i < used.length; i++) {
      used[i] = roses[order[i]];
      parts[i] = weights[order[i]];
      for (Note note : used[i].rose().notesAt(date, place)) {
        if (told.add(note.code() + used[i].rose().year())) {
          notes.add(note);
        }
      }
    }
    return new RoseReading(
        Variation.ofDegreesEast(Angles.shortWay(variation)),
        error,
        AnnualChange.ofMinutesEast(change),
        used,
        parts,
        notes.toArray(new Note[0]));
  }

  /**
   * What {@link #between} gives, as a source of variation.
   *
   * @param place the place
   * @param date the date; its midnight in UTC is meant
   * @return the reading
   */
  @Override
  public VariationReading at(Position place, LocalDate date) {
    RoseReading reading = between(place, date);
    return new VariationReading(
        reading.variation(),
        reading.standardErrorDegrees(),
        roses.length == 1 ? "rose " + roses[0].rose().printed() : roses.length + " roses",
        reading.notes());
  }

  /** Each rose against a model, at its own place on the chart. */
  @Override
  public List<RoseComparison> comparedWith(
      MagneticModel model, List<Position> places, LocalDate date) {
    List<RoseComparison> comparisons = new ArrayList<>();
    roses()
        .forEach(
            (place, rose) ->
                RoseComparison.of(rose, model, place, date).ifPresent(comparisons::add));
    return List.copyOf(comparisons);
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

  @Override
  public boolean equals(Object other) {
    return other instanceof ChartRoses that && Arrays.equals(roses, that.roses);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(roses);
  }

  /** How many roses. */
  @Override
  public String toString() {
    return roses.length + " compass roses";
  }
}
