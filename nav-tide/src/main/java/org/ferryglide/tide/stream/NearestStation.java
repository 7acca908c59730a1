package org.ferryglide.tide.stream;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;

/** The nearest station within reach and not cut off counts for the water round it. */
final class NearestStation implements StationRule {
  private static final long serialVersionUID = 1L;

  /** Beyond this share of its reach a station is doubted; common practice, no source. */
  private static final double FAR_SHARE = 0.5;

  private final StationPlaces places;
  private final double reachMetres;

  NearestStation(StationPlaces places, double reachMetres) {
    this.places = places;
    this.reachMetres = reachMetres;
  }

  @Override
  public boolean sample(double latitude, double longitude, double t, double[] out, int offset) {
    int nearest = nearest(latitude, longitude);
    return nearest >= 0 && places.curve(nearest).sample(t, out, offset);
  }

  private int nearest(double latitude, double longitude) {
    double eastScale = StationPlaces.eastScale(latitude);
    double least = reachMetres * reachMetres;
    int nearest = -1;
    for (int i = 0; i < places.count(); i++) {
      double squared = places.squaredDistance(i, latitude, longitude, eastScale);
      boolean nearer = nearest < 0 ? squared <= least : squared < least;
      if (nearer && !places.isCutOff(i, latitude, longitude)) {
        least = squared;
        nearest = i;
      }
    }
    return nearest;
  }

  @Override
  public double[] weights(double latitude, double longitude, double t) {
    int nearest = nearest(latitude, longitude);
    if (nearest < 0 || !places.curve(nearest).sample(t, new double[2], 0)) {
      return new double[0];
    }
    double[] weights = new double[places.count()];
    weights[nearest] = 1.0;
    return weights;
  }

  @Override
  public List<Note> notes(double latitude, double longitude, double t, double[] weights) {
    int nearest = nearest(latitude, longitude);
    double metres =
        Math.sqrt(
            places.squaredDistance(
                nearest, latitude, longitude, StationPlaces.eastScale(latitude)));
    String name = places.station(nearest).name();
    List<Note> notes = new ArrayList<>();
    String miles = Distance.ofMetres(metres).inNauticalMiles(1);
    notes.add(
        Note.information(
                "stream.nearest-station",
                "Taken from the nearest station, " + name + ", " + miles + " away.")
            .with("station", name)
            .with("distanceMetres", Math.rint(metres)));
    if (metres > FAR_SHARE * reachMetres) {
      notes.add(StreamFlags.farFromStation(name, metres));
    }
    return notes;
  }
}
