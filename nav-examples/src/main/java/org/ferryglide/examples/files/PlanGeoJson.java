package org.ferryglide.examples.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.PassageLeg;
import org.ferryglide.nav.passage.PlannedLeg;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.passage.WayPoint;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.steer.TrackPoint;

/**
 * A passage and its plan as GeoJSON: way points, legs, and where there is a plan the path over the
 * ground.
 *
 * <pre>{@code
 * String json = JsonText.of(PlanGeoJson.of(passage, TimedPlan.of(passage, departure)));
 * }</pre>
 *
 * <p>Longitude stands before latitude, seven decimals of a degree (a centimetre); lines are cut at
 * the antimeridian.
 *
 * @see <a href="https://www.rfc-editor.org/rfc/rfc7946">RFC 7946, sections 3.1.1 and 3.1.9</a>
 */
public final class PlanGeoJson {
  private static final double DECIMALS = 1e7;

  /** Points of a path over the ground, seconds apart. */
  private static final double TRACK_STEP_SECONDS = 300.0;

  private PlanGeoJson() {}

  /**
   * The features of a passage.
   *
   * @param passage the passage
   * @param plan its plan, or why there is none
   * @return values by name, a FeatureCollection
   */
  public static Map<String, Object> of(Passage passage, Outcome<TimedPlan, NotPossible> plan) {
    List<Object> features = new ArrayList<>();
    for (WayPoint wayPoint : passage.wayPoints()) {
      Map<String, Object> properties = kind("way point");
      properties.put("name", wayPoint.name());
      features.add(feature(geometry("Point", pair(wayPoint.position())), properties));
    }
    for (PassageLeg leg : passage.legs()) {
      Map<String, Object> properties = kind("leg");
      properties.put("number", leg.number());
      properties.put("courseTrueDegrees", leg.leg().initialCourse().degrees());
      properties.put("lengthNauticalMiles", leg.leg().length().nauticalMiles());
      features.add(feature(line(List.of(leg.leg().start(), leg.leg().end())), properties));
    }
    plan.solved().ifPresent(solved -> solved.legs().forEach(leg -> features.add(track(leg))));
    Map<String, Object> collection = new LinkedHashMap<>();
    collection.put("type", "FeatureCollection");
    collection.put("features", features);
    return collection;
  }

  private static Map<String, Object> track(PlannedLeg leg) {
    List<Position> path = new ArrayList<>();
    for (TrackPoint point : leg.steered().groundTrack().pointsEvery(TRACK_STEP_SECONDS)) {
      path.add(point.position());
    }
    Map<String, Object> properties = kind("path over the ground");
    properties.put("number", leg.leg().number());
    properties.put("headingTrueDegrees", leg.heading().degrees());
    properties.put("departure", leg.departure().toString());
    properties.put("arrival", leg.arrival().toString());
    return feature(line(path), properties);
  }

  private static Map<String, Object> kind(String kind) {
    Map<String, Object> properties = new LinkedHashMap<>();
    properties.put("kind", kind);
    return properties;
  }

  private static Map<String, Object> feature(
      Map<String, Object> geometry, Map<String, Object> properties) {
    Map<String, Object> feature = new LinkedHashMap<>();
    feature.put("type", "Feature");
    feature.put("geometry", geometry);
    feature.put("properties", properties);
    return feature;
  }

  /** A line, in parts where it crosses the antimeridian. */
  static Map<String, Object> line(List<Position> path) {
    List<List<Object>> parts = new ArrayList<>();
    List<Object> part = new ArrayList<>();
    parts.add(part);
    part.add(pair(path.get(0)));
    for (int at = 1; at < path.size(); at++) {
      Position before = path.get(at - 1);
      Position after = path.get(at);
      double step = after.longitudeDegrees() - before.longitudeDegrees();
      if (Math.abs(step) > 180.0) {
        double side = before.longitudeDegrees() < 0.0 ? -180.0 : 180.0;
        double toSide = side - before.longitudeDegrees();
        double share = toSide / (step - Math.copySign(360.0, step));
        double latitude =
            before.latitudeDegrees() + share * (after.latitudeDegrees() - before.latitudeDegrees());
        part.add(pair(side, latitude));
        part = new ArrayList<>();
        parts.add(part);
        part.add(pair(-side, latitude));
      }
      part.add(pair(after));
    }
    return parts.size() == 1
        ? geometry("LineString", part)
        : geometry("MultiLineString", List.copyOf(parts));
  }

  private static Map<String, Object> geometry(String type, List<?> coordinates) {
    Map<String, Object> geometry = new LinkedHashMap<>();
    geometry.put("type", type);
    geometry.put("coordinates", coordinates);
    return geometry;
  }

  private static List<Double> pair(Position position) {
    return pair(position.longitudeDegrees(), position.latitudeDegrees());
  }

  private static List<Double> pair(double longitude, double latitude) {
    return List.of(rounded(longitude), rounded(latitude));
  }

  private static double rounded(double degrees) {
    return Math.rint(degrees * DECIMALS) / DECIMALS + 0.0;
  }
}
