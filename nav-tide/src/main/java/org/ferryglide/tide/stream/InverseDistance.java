package org.ferryglide.tide.stream;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.note.Note;

/**
 * All stations within reach count, the near ones most: weight ((R - d) / (R d))², which fades to
 * nothing at the reach R, so that the field is continuous where a station comes in.
 */
final class InverseDistance implements StationRule {
  private static final long serialVersionUID = 1L;

  /** Nearer than this a station alone counts, metres. */
  private static final double AT_THE_STATION = 1e-3;

  private final StationPlaces places;
  private final double reachMetres;

  InverseDistance(StationPlaces places, double reachMetres) {
    this.places = places;
    this.reachMetres = reachMetres;
  }

  @Override
  public boolean sample(double latitude, double longitude, double t, double[] out, int offset) {
    double eastScale = StationPlaces.eastScale(latitude);
    int segment = places.segmentOf(t);
    double sum = 0.0;
    double east = 0.0;
    double north = 0.0;
    for (int i = 0; i < places.count(); i++) {
      double weight = weight(i, latitude, longitude, eastScale);
      if (weight > 0.0 && places.sample(i, segment, t, out, offset)) {
        if (weight == Double.POSITIVE_INFINITY) {
          return true;
        }
        sum += weight;
        east += weight * out[offset];
        north += weight * out[offset + 1];
      }
    }
    if (!(sum > 0.0)) { // also where longitude or latitude is NaN
      return false;
    }
    out[offset] = east / sum;
    out[offset + 1] = north / sum;
    return true;
  }

  private double weight(int i, double latitude, double longitude, double eastScale) {
    double squared = places.squaredDistance(i, latitude, longitude, eastScale);
    if (!(squared < reachMetres * reachMetres) || places.isCutOff(i, latitude, longitude)) {
      return 0.0;
    }
    double distance = Math.sqrt(squared);
    if (distance < AT_THE_STATION) {
      return Double.POSITIVE_INFINITY;
    }
    double root = 1.0 / distance - 1.0 / reachMetres;
    return root * root;
  }

  @Override
  public double[] weights(double latitude, double longitude, double t) {
    double eastScale = StationPlaces.eastScale(latitude);
    double[] weights = new double[places.count()];
    double sum = 0.0;
    for (int i = 0; i < weights.length; i++) {
      double weight = weight(i, latitude, longitude, eastScale);
      if (weight > 0.0 && places.curve(i).sample(t, new double[2], 0)) {
        if (weight == Double.POSITIVE_INFINITY) {
          double[] alone = new double[weights.length];
          alone[i] = 1.0;
          return alone;
        }
        weights[i] = weight;
        sum += weight;
      }
    }
    if (!(sum > 0.0)) {
      return new double[0];
    }
    for (int i = 0; i < weights.length; i++) {
      weights[i] /= sum;
    }
    return weights;
  }

  @Override
  public List<Note> notes(double latitude, double longitude, double t, double[] weights) {
    List<Note> notes = new ArrayList<>(withoutData(latitude, longitude, t));
    double[] bearings = new double[weights.length];
    int counted = 0;
    for (int i = 0; i < weights.length; i++) {
      if (weights[i] == 1.0) {
        return notes;
      }
      if (weights[i] > 0.0) {
        bearings[counted++] =
            Math.atan2(
                Math.IEEEremainder(places.longitude(i) - longitude, 360.0)
                    * StationPlaces.eastScale(latitude),
                (places.latitude(i) - latitude) * StationPlaces.eastScale(0.0));
      }
    }
    notes.add(
        Note.information(
            "stream.between-stations",
            "Weighted from the stations within reach, the nearest counting most."));
    if (allOnOneSide(bearings, counted)) {
      notes.add(
          Note.caution(
              "stream.outside-stations",
              "Extrapolated: all the stations that count lie on one side of this place."));
    }
    return notes;
  }

  private List<Note> withoutData(double latitude, double longitude, double t) {
    List<String> names = new ArrayList<>();
    double eastScale = StationPlaces.eastScale(latitude);
    for (int i = 0; i < places.count(); i++) {
      if (weight(i, latitude, longitude, eastScale) > 0.0
          && !places.curve(i).sample(t, new double[2], 0)) {
        names.add(places.station(i).name());
      }
    }
    return names.isEmpty()
        ? List.of()
        : List.of(
            Note.caution(
                    "stream.station-without-data",
                    "Stations without data for this time were left out: " + names + ".")
                .with("stations", String.join("; ", names)));
  }

  /** Whether half a circle holds all bearings, radians. */
  private static boolean allOnOneSide(double[] bearings, int count) {
    for (int i = 0; i < count; i++) {
      boolean allClockwise = true;
      for (int j = 0; j < count; j++) {
        double turn = Math.IEEEremainder(bearings[j] - bearings[i], 2.0 * Math.PI);
        // exactly opposite counts as between
        allClockwise &= turn >= 0.0 && turn < Math.PI - 1e-9;
      }
      if (allClockwise) {
        return true;
      }
    }
    return false;
  }
}
