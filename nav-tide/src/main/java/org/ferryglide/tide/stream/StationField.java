package org.ferryglide.tide.stream;

import java.io.Serializable;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.Explanation;
import org.ferryglide.nav.water.StreamField;

/**
 * The stream between stations: each has its curve and its place, and a rule says which of them
 * count for the water between, and how much.
 *
 * <p>Every rule has a domain, outside which there are no data: for {@link #nearest} and {@link
 * #inverseDistance} the reach of the stations, for {@link #triangles} the triangles. {@linkplain
 * #withShores Shores} cut a station off from the water behind them.
 *
 * <pre>{@code
 * StationField field =
 *     StationField.nearest(stations, Distance.ofNauticalMiles(3)).withShores(coast);
 * field.explain(position, instant).sources(); // which stations, with their weights
 * }</pre>
 *
 * <p>Distances are those on a plane with the scales of the WGS84 ellipsoid at both ends: within 0.1
 * % of the true ones up to 100 km, below 70° of latitude.
 */
public final class StationField implements StreamField, Serializable {
  private static final long serialVersionUID = 1L;

  /**
   * How far from its station a stream table is taken to hold unless the caller says otherwise: 6
   * NM. Common practice, no source; in narrow or broken water a table holds for far less.
   */
  public static final Distance USUAL_REACH = Distance.ofNauticalMiles(6.0);

  private enum Kind {
    NEAREST,
    INVERSE_DISTANCE,
    TRIANGLES
  }

  private final Kind kind;
  private final double limitMetres;
  private final StationPlaces places;
  private final StationRule rule;

  private StationField(Kind kind, double limitMetres, StationPlaces places) {
    this.kind = kind;
    this.limitMetres = limitMetres;
    this.places = places;
    this.rule =
        switch (kind) {
          case NEAREST -> new NearestStation(places, limitMetres);
          case INVERSE_DISTANCE -> new InverseDistance(places, limitMetres);
          case TRIANGLES -> new StationMesh(places, limitMetres);
        };
  }

  /**
   * The nearest station alone counts for the water round it, as in hand work. If it has no data for
   * a time, there are none; the next station is not asked instead.
   *
   * @param stations at least one, no name and no place twice
   * @param reach how far from a station its curve still holds, above 0
   * @return the field; its domain is what lies within {@code reach} of a station that is not cut
   *     off
   * @throws IllegalArgumentException if there is no station, one occurs twice, or the reach is not
   *     above 0
   */
  public static StationField nearest(List<StreamStation> stations, Distance reach) {
    return new StationField(
        Kind.NEAREST,
        Arguments.positive(reach.metres(), "reach of a station", "metres"),
        new StationPlaces(stations, Shoreline.none()));
  }

  /**
   * The nearest station alone counts for the water round it, out to {@link #USUAL_REACH}.
   *
   * @param stations at least one, no name and no place twice
   * @return the field, as {@link #nearest(List, Distance)} makes it
   * @throws IllegalArgumentException if there is no station, or one occurs twice
   */
  public static StationField nearest(List<StreamStation> stations) {
    return nearest(stations, USUAL_REACH);
  }

  /**
   * All stations within reach count, each with the weight ((R - d) / (R d))² for the distance d and
   * the reach R, which is the inverse square of the distance made to fade out at the reach. At a
   * station it alone counts. Stations without data for a time are left out, with a note.
   *
   * @param stations at least one, no name and no place twice
   * @param reach how far from a station it still counts, above 0
   * @return the field; its domain is what lies nearer than {@code reach} to a station that is not
   *     cut off
   * @throws IllegalArgumentException if there is no station, one occurs twice, or the reach is not
   *     above 0
   * @see <a href="https://doi.org/10.1002/nme.1620151110">Franke and Nielson (1980), the weights of
   *     the modified Shepard method</a>
   */
  public static StationField inverseDistance(List<StreamStation> stations, Distance reach) {
    return new StationField(
        Kind.INVERSE_DISTANCE,
        Arguments.positive(reach.metres(), "reach of a station", "metres"),
        new StationPlaces(stations, Shoreline.none()));
  }

  /**
   * The three stations at the corners of a triangle count for the water in it, linear in between;
   * the triangles are those of Delaunay, as near to equal sides as the stations allow. If a corner
   * that counts has no data for a time, there are none.
   *
   * @param stations at least three, not all in line, no name and no place twice, within 10° of
   *     longitude and of latitude
   * @param longestSide triangles with a longer side are left out, since their corners say little of
   *     the middle; above 0
   * @return the field; its domain is the triangles with their edges
   * @throws IllegalArgumentException if there are fewer than three stations, all are in line, one
   *     occurs twice, they span more than 10°, or no triangle has sides short enough
   */
  public static StationField triangles(List<StreamStation> stations, Distance longestSide) {
    return new StationField(
        Kind.TRIANGLES,
        Arguments.positive(longestSide.metres(), "longest side of a triangle", "metres"),
        new StationPlaces(stations, Shoreline.none()));
  }

  /**
   * The same field with shores: no station counts for water behind them. Where a corner of a
   * triangle is cut off, the others share its weight.
   *
   * @param shores the lines that cut off
   * @return a changed copy
   */
  public StationField withShores(Shoreline shores) {
    return new StationField(kind, limitMetres, places.withShores(shores));
  }

  /**
   * The stations of the field.
   *
   * @return unmodifiable list in the order given
   */
  public List<StreamStation> stations() {
    List<StreamStation> stations = new ArrayList<>();
    for (int i = 0; i < places.count(); i++) {
      stations.add(places.station(i));
    }
    return List.copyOf(stations);
  }

  @Override
  public boolean sample(
      double latitudeDegrees,
      double longitudeDegrees,
      double epochSeconds,
      double[] eastNorth,
      int offset) {
    return rule.sample(latitudeDegrees, longitudeDegrees, epochSeconds, eastNorth, offset);
  }

  @Override
  public double nextBreakAfter(double epochSeconds) {
    double next = Double.POSITIVE_INFINITY;
    for (int i = 0; i < places.count(); i++) {
      next = Math.min(next, places.curve(i).nextBreakAfter(epochSeconds));
    }
    return next;
  }

  @Override
  public double startSeconds() {
    double first = Double.POSITIVE_INFINITY;
    for (int i = 0; i < places.count(); i++) {
      first = Math.min(first, places.curve(i).startSeconds());
    }
    return first;
  }

  @Override
  public double endSeconds() {
    double last = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < places.count(); i++) {
      last = Math.max(last, places.curve(i).endSeconds());
    }
    return last;
  }

  @Override
  public String source() {
    return places.count() == 1 ? places.station(0).name() : places.count() + " stream stations";
  }

  @Override
  public Optional<Speed> maxRate() {
    Speed greatest = Speed.ZERO;
    for (int i = 0; i < places.count(); i++) {
      Optional<Speed> one = places.curve(i).maxRate();
      if (!one.isPresent()) {
        return Optional.empty();
      }
      greatest = one.get().compareTo(greatest) > 0 ? one.get() : greatest;
    }
    return Optional.of(greatest);
  }

  @Override
  public Explanation explain(Position position, Instant instant) {
    double latitude = position.latitudeDegrees();
    double longitude = position.longitudeDegrees();
    double[] weights = rule.weights(latitude, longitude, EpochSeconds.of(instant));
    if (weights.length == 0) {
      return StreamFlags.noData("No station covers this place at this time.");
    }
    List<Explanation.Source> sources = new ArrayList<>();
    List<Note> notes =
        new ArrayList<>(rule.notes(latitude, longitude, EpochSeconds.of(instant), weights));
    for (int i = 0; i < weights.length; i++) {
      if (weights[i] > 0.0) {
        sources.add(new Explanation.Source(places.station(i).name(), weights[i]));
        addOnce(places.curve(i).explain(instant).notes(), notes);
      }
    }
    addCutOff(latitude, longitude, notes);
    sources.sort((a, b) -> Double.compare(b.weight(), a.weight()));
    return new Explanation(sources, notes);
  }

  /** Adds notes; one that several stations have stands once and names them all. */
  private static void addOnce(List<Note> more, List<Note> notes) {
    for (Note note : more) {
      int same = 0;
      while (same < notes.size() && !notes.get(same).text().equals(note.text())) {
        same++;
      }
      if (same == notes.size()) {
        notes.add(note);
      } else {
        Note first = notes.get(same);
        String names = first.data().getOrDefault("station", "");
        String name = note.data().getOrDefault("station", "");
        if (!name.isEmpty()) {
          notes.set(same, first.with("station", names.isEmpty() ? name : names + "; " + name));
        }
      }
    }
  }

  private void addCutOff(double latitude, double longitude, List<Note> notes) {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < places.count(); i++) {
      if (places.isCutOff(i, latitude, longitude)) {
        names.add(places.station(i).name());
      }
    }
    if (!names.isEmpty()) {
      notes.add(
          Note.information(
                  "stream.cut-off", "Stations behind a shore were not used: " + names + ".")
              .with("stations", String.join("; ", names)));
    }
  }

  /** The rule and the stations. */
  @Override
  public String toString() {
    return kind + " of " + stations();
  }
}
