package org.ferryglide.tide.folder;

import java.io.IOException;
import java.io.Reader;
import java.io.Serializable;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.WindField;
import org.ferryglide.tide.sheet.Sheet;

/**
 * A forecast of the wind by hour and place, as a party writes it down from the official forecast.
 *
 * <pre>{@code
 * WindField wind = ForecastWind.read("wind.csv", reader);
 * Optional<Velocity> atThree = wind.at(place, Instant.parse("2026-06-14T15:00:00Z"));
 * }</pre>
 *
 * <p>At each place the wind's east and north components are interpolated linearly between the
 * stated times; between places they are weighed by the inverse square of the distance. Nothing is
 * made up: before the first and after the last time of the nearest place, and in a gap of more than
 * {@link #LONGEST_GAP_HOURS} there, no wind is known, which is not a calm. A forecast for one place
 * holds everywhere.
 *
 * <p>Weighing by the square of the distance is common practice, no source. A coast turns and
 * funnels the wind in ways that no such rule knows.
 */
public final class ForecastWind implements WindField, Serializable {
  private static final long serialVersionUID = 1L;

  /** A longer gap between two stated times is not bridged, hours. Common practice, no source. */
  public static final double LONGEST_GAP_HOURS = 6.0;

  private static final double LONGEST_GAP_SECONDS = 3600.0 * LONGEST_GAP_HOURS;

  private final String source;
  private final Place[] places;

  ForecastWind(String source, List<Place> places) {
    this.source = source;
    this.places = places.toArray(new Place[0]);
  }

  /** What is stated for one place: times in order, and where the air goes then. */
  static final class Place implements Serializable {
    private static final long serialVersionUID = 1L;

    final Position position;
    final double[] seconds;
    final double[] from;
    final double[] knots;

    /** Where the air goes, metres a second. */
    final double[] east;

    final double[] north;

    /** As stated, the wind by where it comes from, in degrees. */
    Place(Position position, double[] seconds, double[] from, double[] knots) {
      this.position = position;
      this.seconds = seconds;
      this.from = from;
      this.knots = knots;
      this.east = new double[seconds.length];
      this.north = new double[seconds.length];
      for (int i = 0; i < seconds.length; i++) {
        Velocity wind = Velocity.ofWind(TrueBearing.ofDegrees(from[i]), Speed.ofKnots(knots[i]));
        east[i] = wind.eastMetresPerSecond();
        north[i] = wind.northMetresPerSecond();
      }
    }

    /** Adds the wind at a time with a weight; false if none is known. */
    boolean add(double time, double weight, double[] sum) {
      int last = seconds.length - 1;
      if (!(time >= seconds[0] && time <= seconds[last])) { // NaN fails
        return false;
      }
      int found = Arrays.binarySearch(seconds, time);
      if (found >= 0) {
        sum[0] += weight * east[found];
        sum[1] += weight * north[found];
        sum[2] += weight;
        return true;
      }
      int after = -found - 1;
      int before = after - 1;
      double gap = seconds[after] - seconds[before];
      if (gap > LONGEST_GAP_SECONDS) {
        return false;
      }
      double part = (time - seconds[before]) / gap;
      sum[0] += weight * (east[before] + part * (east[after] - east[before]));
      sum[1] += weight * (north[before] + part * (north[after] - north[before]));
      sum[2] += weight;
      return true;
    }

    /** Square of the distance, in degrees of latitude. */
    double square(double latitude, double longitude) {
      double north = latitude - position.latitudeDegrees();
      double east =
          Math.IEEEremainder(longitude - position.longitudeDegrees(), 360.0)
              * Math.cos(Math.toRadians(0.5 * (latitude + position.latitudeDegrees())));
      return east * east + north * north;
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Place that
          && position.equals(that.position)
          && Arrays.equals(seconds, that.seconds)
          && Arrays.equals(east, that.east)
          && Arrays.equals(north, that.north);
    }

    @Override
    public int hashCode() {
      return 31 * position.hashCode() + Arrays.hashCode(seconds);
    }
  }

  /**
   * Reads a sheet.
   *
   * <p>Headings: {@code place}, {@code position} (in the first row of each place; later rows repeat
   * it or leave it empty), {@code time} (a date and time with its offset, ascending for each
   * place), {@code from_deg} (true, where the wind comes from; may be empty in a calm), {@code
   * speed_kn} (mean speed in [0, 150]).
   *
   * @param source what to call the sheet in messages, usually the file's name
   * @param reader the text; left open
   * @return the wind
   * @throws IOException if the text cannot be read
   * @throws InputFormatException listing every problem with line and column
   */
  public static ForecastWind read(String source, Reader reader) throws IOException {
    return WindSheet.read(source, reader);
  }

  /**
   * Reads a sheet from a file in UTF-8; see {@link #read(String, Reader)}.
   *
   * @param file the file
   * @return the wind
   * @throws IOException if the file cannot be read
   * @throws InputFormatException listing every problem with line and column
   */
  public static ForecastWind read(Path file) throws IOException {
    try (Reader reader = Sheet.open(file)) {
      return read(file.toString(), reader);
    }
  }

  /** The sheet that reads as this forecast. */
  String text() {
    StringBuilder rows = new StringBuilder("place,position,time,from_deg,speed_kn\n");
    for (int k = 0; k < places.length; k++) {
      Place place = places[k];
      for (int i = 0; i < place.seconds.length; i++) {
        rows.append("place ")
            .append(k + 1)
            .append(',')
            .append(i == 0 ? Sheet.field("position", place.position.toString()) : "")
            .append(',')
            .append(EpochSeconds.toInstant(place.seconds[i]))
            .append(',')
            .append(Numbers.of(place.from[i]))
            .append(',')
            .append(Numbers.of(place.knots[i]))
            .append('\n');
      }
    }
    return rows.toString();
  }

  @Override
  public boolean sample(
      double latitudeDegrees,
      double longitudeDegrees,
      double epochSeconds,
      double[] eastNorth,
      int offset) {
    if (Double.isNaN(latitudeDegrees + longitudeDegrees)) {
      return false;
    }
    int nearest = 0;
    double least = places[0].square(latitudeDegrees, longitudeDegrees);
    for (int i = 1; i < places.length; i++) {
      double square = places[i].square(latitudeDegrees, longitudeDegrees);
      if (square < least) {
        nearest = i;
        least = square;
      }
    }
    double[] sum = new double[3];
    if (!places[nearest].add(epochSeconds, 1.0, sum)) {
      return false;
    }
    for (int i = 0; i < places.length; i++) {
      if (i != nearest && least > 0.0) {
        places[i].add(
            epochSeconds, least / places[i].square(latitudeDegrees, longitudeDegrees), sum);
      }
    }
    eastNorth[offset] = sum[0] / sum[2];
    eastNorth[offset + 1] = sum[1] / sum[2];
    return true;
  }

  @Override
  public double startSeconds() {
    double start = Double.POSITIVE_INFINITY;
    for (Place place : places) {
      start = Math.min(start, place.seconds[0]);
    }
    return start;
  }

  @Override
  public double endSeconds() {
    double end = Double.NEGATIVE_INFINITY;
    for (Place place : places) {
      end = Math.max(end, place.seconds[place.seconds.length - 1]);
    }
    return end;
  }

  @Override
  public double nextBreakAfter(double epochSeconds) {
    double next = Double.POSITIVE_INFINITY;
    for (Place place : places) {
      for (double time : place.seconds) {
        if (time > epochSeconds) {
          next = Math.min(next, time);
          break;
        }
      }
    }
    return next;
  }

  @Override
  public Optional<Speed> maxSpeed() {
    double most = 0.0;
    for (Place place : places) {
      for (int i = 0; i < place.seconds.length; i++) {
        most = Math.max(most, Math.hypot(place.east[i], place.north[i]));
      }
    }
    return Optional.of(Speed.ofMetresPerSecond(most * (1.0 + 1e-12))); // for the rounding of means
  }

  @Override
  public boolean isUniform() {
    return places.length == 1;
  }

  @Override
  public Optional<Position> position() {
    return places.length == 1 ? Optional.of(places[0].position) : Optional.empty();
  }

  @Override
  public String source() {
    return source;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ForecastWind that && Arrays.equals(places, that.places);
  }

  @Override
  public int hashCode() {
    return Objects.hash((Object[]) places);
  }

  /** How many places it covers. */
  @Override
  public String toString() {
    return source + ", wind at " + places.length + (places.length == 1 ? " place" : " places");
  }
}
