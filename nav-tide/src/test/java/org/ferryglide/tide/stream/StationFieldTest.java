package org.ferryglide.tide.stream;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.stream.Collectors;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.geodesy.RhumbLines;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.Explanation;
import org.junit.jupiter.api.Test;

class StationFieldTest {
  private static final double ROUNDING = 1e-12;
  private static final Instant THIRD_HOUR = StreamSamples.afterHigh(3);
  private static final Distance TEN_MILES = Distance.ofNauticalMiles(10);

  /** Streams of one knot east, two knots north, three knots west at the corners of a triangle. */
  private static final StreamStation A = steady("A", 50.0, -5.0, 90, 1);

  private static final StreamStation B = steady("B", 50.1, -5.0, 0, 2);
  private static final StreamStation C = steady("C", 50.0, -4.85, 270, 3);
  private static final double KNOT = 1852.0 / 3600.0;

  private static StreamStation steady(
      String name, double latitude, double longitude, double set, double rate) {
    StreamTable table =
        StreamTable.of(
            name,
            Position.ofDegrees(latitude, longitude),
            StreamSamples.ENNOR,
            List.of(
                StreamSamples.row(-6, set, rate, rate),
                StreamSamples.row(-3, set, rate, rate),
                StreamSamples.row(0, set, rate, rate),
                StreamSamples.row(3, set, rate, rate),
                StreamSamples.row(6, set, rate, rate)));
    return table.boundTo(StreamSamples.tides(4.0, 745)).asStation();
  }

  private static double[] at(StationField field, double latitude, double longitude) {
    double[] out = new double[2];
    assertTrue(field.sample(latitude, longitude, EpochSeconds.of(THIRD_HOUR), out, 0));
    return out;
  }

  private static boolean hasData(StationField field, double latitude, double longitude) {
    return field.at(Position.ofDegrees(latitude, longitude), THIRD_HOUR).isPresent();
  }

  private static Explanation explain(StationField field, double latitude, double longitude) {
    return field.explain(Position.ofDegrees(latitude, longitude), THIRD_HOUR);
  }

  private static List<String> codes(Explanation explanation) {
    return explanation.notes().stream().map(Note::code).collect(Collectors.toList());
  }

  @Test
  void theNearestStationSpeaksWithinItsReach() {
    StationField field = StationField.nearest(List.of(A, B, C), Distance.ofNauticalMiles(4));
    assertArrayEquals(new double[] {KNOT, 0}, at(field, 50.04, -5.0), ROUNDING);
    assertArrayEquals(new double[] {0, 2 * KNOT}, at(field, 50.06, -5.0), ROUNDING);
    assertTrue(hasData(field, 50.1 + 3.99 / 60, -5.0));
    assertFalse(hasData(field, 50.1 + 4.01 / 60, -5.0));
  }

  @Test
  void theNearestStationIsNamedWithItsDistance() {
    StationField field = StationField.nearest(List.of(A, B, C), TEN_MILES);
    Explanation explanation = explain(field, 50.1 + 2.0 / 60, -5.0);
    assertEquals("B", explanation.sources().get(0).name());
    assertEquals(1.0, explanation.sources().get(0).weight());
    Note note = explanation.notes().get(0);
    assertEquals("stream.nearest-station", note.code());
    assertEquals("Taken from the nearest station, B, 2.0 NM away.", note.text());
  }

  @Test
  void withoutDataAtTheNearestStationThereIsNone() {
    StreamStation silent =
        StreamStation.of(
            "S",
            Position.ofDegrees(50.05, -5.0),
            StreamSamples.table().boundTo(StreamSamples.tides(4.0)));
    StationField field = StationField.nearest(List.of(A, silent), TEN_MILES);
    Position here = Position.ofDegrees(50.05, -5.0);
    assertTrue(field.at(here, THIRD_HOUR).isPresent());
    assertFalse(field.at(here, StreamSamples.afterHigh(10)).isPresent());
    assertEquals(
        "No station covers this place at this time.",
        field.explain(here, StreamSamples.afterHigh(10)).notes().get(0).text());
  }

  @Test
  void inverseDistanceMixesByTheStatedWeights() {
    StationField field = StationField.inverseDistance(List.of(A, B), TEN_MILES);
    // on the meridian between, a third of the way from A
    double d = 0.1 / 3 * 60;
    double a = Math.pow((10 - d) / (10 * d), 2);
    double b = Math.pow((10 - 2 * d) / (10 * 2 * d), 2);
    double[] here = at(field, 50.0 + 0.1 / 3, -5.0);
    // 0.1 NM in 60 of latitude: a minute of latitude there is 1854 m, not 1852
    assertEquals(KNOT * a / (a + b), here[0], 1e-3);
    assertEquals(2 * KNOT * b / (a + b), here[1], 1e-3);
  }

  @Test
  void atAStationItAloneCounts() {
    StationField field = StationField.inverseDistance(List.of(A, B, C), TEN_MILES);
    assertArrayEquals(new double[] {KNOT, 0}, at(field, 50.0, -5.0), ROUNDING);
    assertEquals(1, explain(field, 50.0, -5.0).sources().size());
    double[] close = at(field, 50.0000001, -5.0);
    assertArrayEquals(new double[] {KNOT, 0}, close, 1e-6);
  }

  @Test
  void inverseDistanceSaysWhetherItExtrapolates() {
    StationField field = StationField.inverseDistance(List.of(A, B, C), TEN_MILES);
    assertEquals(List.of("stream.between-stations"), codes(explain(field, 50.03, -4.96)));
    assertEquals(
        List.of("stream.between-stations", "stream.outside-stations"),
        codes(explain(field, 50.1, -4.8)));
    assertEquals(3, explain(field, 50.03, -4.96).sources().size());
  }

  @Test
  void silentStationsAreLeftOutWithANote() {
    StreamStation silent =
        StreamStation.of(
            "S",
            Position.ofDegrees(50.05, -5.0),
            StreamSamples.table().boundTo(StreamSamples.tides(4.0)));
    StationField field = StationField.inverseDistance(List.of(A, silent), TEN_MILES);
    Position here = Position.ofDegrees(50.04, -5.0);
    Explanation late = field.explain(here, StreamSamples.afterHigh(10));
    assertEquals("A", late.sources().get(0).name());
    assertEquals("stream.station-without-data", late.notes().get(0).code());
  }

  @Test
  void trianglesAreLinearBetweenTheirCorners() {
    StationField field = StationField.triangles(List.of(A, B, C), TEN_MILES);
    assertArrayEquals(new double[] {KNOT, 0}, at(field, 50.0, -5.0), ROUNDING);
    assertArrayEquals(new double[] {-3 * KNOT, 0}, at(field, 50.0, -4.85), ROUNDING);
    assertArrayEquals(
        new double[] {-2 * KNOT / 3, 2 * KNOT / 3}, at(field, 50.0 + 0.1 / 3, -4.95), 1e-9);
    assertFalse(hasData(field, 50.1, -4.9));
    assertFalse(hasData(field, 49.999, -4.9));
    assertEquals(3, explain(field, 50.02, -4.97).sources().size());
    assertEquals(List.of("stream.between-stations"), codes(explain(field, 50.02, -4.97)));
  }

  @Test
  void aSilentCornerThatCountsSilencesTheTriangle() {
    StreamStation silent =
        StreamStation.of(
            "S",
            Position.ofDegrees(50.1, -5.0),
            StreamSamples.table().boundTo(StreamSamples.tides(4.0)));
    StationField field = StationField.triangles(List.of(A, silent, C), TEN_MILES);
    Instant late = StreamSamples.afterHigh(10);
    double[] out = {7, 8};
    assertFalse(field.sample(50.02, -4.95, EpochSeconds.of(late), out, 0));
    assertArrayEquals(new double[] {7, 8}, out);
    assertTrue(
        field.at(Position.ofDegrees(50.0, -4.95), late).isPresent(), "on the side from A to C");
  }

  @Test
  void shoresStopInfluence() {
    Shoreline wall =
        Shoreline.of(
            List.of(List.of(Position.ofDegrees(50.05, -5.1), Position.ofDegrees(50.05, -4.9))));
    StationField nearest = StationField.nearest(List.of(A, B), TEN_MILES).withShores(wall);
    assertArrayEquals(new double[] {0, 2 * KNOT}, at(nearest, 50.051, -5.0), ROUNDING);
    assertArrayEquals(new double[] {KNOT, 0}, at(nearest, 50.049, -5.0), ROUNDING);
    assertTrue(codes(explain(nearest, 50.049, -5.0)).contains("stream.cut-off"));
    StationField weighted = StationField.inverseDistance(List.of(A, B), TEN_MILES).withShores(wall);
    assertArrayEquals(new double[] {KNOT, 0}, at(weighted, 50.049, -5.0), ROUNDING);
    StationField mesh = StationField.triangles(List.of(A, B, C), TEN_MILES).withShores(wall);
    double[] here = at(mesh, 50.03, -4.95);
    assertEquals(0.0, here[1], ROUNDING, "B lies behind the wall");
    assertEquals(2, explain(mesh, 50.03, -4.95).sources().size());
  }

  @Test
  void theDateLineIsNoBorder() {
    StreamStation west = steady("W", -17.0, 179.98, 90, 1);
    StreamStation east = steady("E", -17.0, -179.98, 270, 1);
    StationField field = StationField.inverseDistance(List.of(west, east), TEN_MILES);
    assertArrayEquals(new double[] {0, 0}, at(field, -17.0, -180.0), 1e-9);
    assertArrayEquals(new double[] {0, 0}, at(field, -17.0, 180.0), 1e-9);
    StreamStation north = steady("N", -16.9, 179.99, 0, 1);
    StationField mesh = StationField.triangles(List.of(west, east, north), TEN_MILES);
    assertTrue(hasData(mesh, -16.97, -179.999));
    assertTrue(hasData(mesh, -16.97, 179.999));
  }

  @Test
  void distancesAgreeWithRhumbLines() {
    // the plane of the field against rhumb lines on the ellipsoid, up to 100 km and 70 degrees
    double[] rhumb = new double[2];
    for (double latitude : new double[] {-69, -20, 0, 35, 50, 60, 69}) {
      StationPlaces places =
          new StationPlaces(List.of(steady("A", latitude, -5, 0, 1)), Shoreline.none());
      for (double dLatitude : new double[] {-0.6, -0.1, 0.01, 0.3, 0.6}) {
        for (double dLongitude : new double[] {-0.6, 0.02, 0.5}) {
          double lat = latitude + dLatitude;
          double lon = -5 + dLongitude;
          RhumbLines.inverse(latitude, -5, lat, lon, rhumb, 0);
          double plane =
              Math.sqrt(places.squaredDistance(0, lat, lon, StationPlaces.eastScale(lat)));
          assertEquals(1.0, plane / rhumb[1], 1e-3);
        }
      }
    }
  }

  @Test
  void nanHasNoData() {
    double[] out = new double[2];
    double t = EpochSeconds.of(THIRD_HOUR);
    for (StationField field :
        List.of(
            StationField.nearest(List.of(A, B, C), TEN_MILES),
            StationField.inverseDistance(List.of(A, B, C), TEN_MILES),
            StationField.triangles(List.of(A, B, C), TEN_MILES))) {
      assertFalse(field.sample(Double.NaN, -5, t, out, 0));
      assertFalse(field.sample(50, Double.NaN, t, out, 0));
      assertFalse(field.sample(50, -5, Double.NaN, out, 0));
      assertFalse(field.isUniform());
    }
  }

  @Test
  void breakPointsAndGreatestRateAreThoseOfTheStations() {
    StationField field = StationField.nearest(List.of(A, B, C), TEN_MILES);
    assertEquals(3.0, field.maxRate().get().knots(), ROUNDING);
    double high = EpochSeconds.of(StreamSamples.afterHigh(0));
    assertEquals(high + 3 * 3600, field.nextBreakAfter(high));
  }

  @Test
  void badStationsAreRefusedByName() {
    assertEquals(
        "a field between stations must have at least one station",
        message(() -> StationField.nearest(List.of(), TEN_MILES)));
    assertEquals(
        "stream station A is given twice",
        message(() -> StationField.nearest(List.of(A, A), TEN_MILES)));
    assertEquals(
        "stream station D stands at the same place as another",
        message(() -> StationField.nearest(List.of(A, steady("D", 50.0, -5.0, 0, 1)), TEN_MILES)));
    assertEquals(
        "reach of a station must be a finite number of metres above 0, but was 0.0",
        message(() -> StationField.inverseDistance(List.of(A), Distance.ZERO)));
    assertEquals(
        "triangles need at least 3 stations that are not all in line, but were given 2",
        message(() -> StationField.triangles(List.of(A, B), TEN_MILES)));
    assertEquals(
        "no triangle between the stations has all its sides within 100.0 m",
        message(() -> StationField.triangles(List.of(A, B, C), Distance.ofMetres(100))));
    assertEquals(
        "stations of triangles must lie within 10.0 degrees, but span 40.0",
        message(
                () ->
                    StationField.triangles(List.of(A, B, steady("F", 10.1, -5.0, 0, 1)), TEN_MILES))
            .replace("40.0", "40.0"));
  }

  private static String message(org.junit.jupiter.api.function.Executable call) {
    return String.valueOf(assertThrows(IllegalArgumentException.class, call).getMessage());
  }

  @Test
  void aNoteOfSeveralStationsStandsOnceAndNamesThem() {
    StationField field = StationField.inverseDistance(List.of(A, B), TEN_MILES);
    Explanation explanation =
        field.explain(Position.ofDegrees(50.05, -5.0), StreamSamples.afterHigh(1));
    assertEquals(List.of("stream.between-stations", "stream.interpolated"), codes(explanation));
    assertEquals("A; B", explanation.notes().get(1).data().get("station"));
    assertTrue(field.toString().startsWith("INVERSE_DISTANCE of [A at 50.0"), field.toString());
  }

  /** A lost sign on a station's longitude must show, not be answered from the next station. */
  @Test
  void aStreamFarFromItsStationIsDoubtedAndBeyondItsReachUnknown() {
    HourlyStream stream = StreamSamples.table().boundTo(StreamSamples.tides(5.0, 745));
    StationField field = StationField.nearest(List.of(stream.asStation()));
    Position near = Position.ofDegrees(50.11 + 2.9 / 60, -5.52);
    Position far = Position.ofDegrees(50.11 + 3.1 / 60, -5.52);
    Position beyond = Position.ofDegrees(50.11 + 6.1 / 60, -5.52);
    assertFalse(codes(field.explain(near, NOON)).contains("stream.far-from-station"));
    assertTrue(codes(field.explain(far, NOON)).contains("stream.far-from-station"));
    assertFalse(field.at(beyond, NOON).isPresent());
    assertEquals(List.of("stream.no-data"), codes(field.explain(beyond, NOON)));
    assertEquals(6.0, StationField.USUAL_REACH.nauticalMiles(), 1e-12);
  }

  @Test
  void aCurveUsedAsAFieldDoubtsItselfFarFromItsStation() {
    HourlyStream stream = StreamSamples.table().boundTo(StreamSamples.tides(5.0, 745));
    Position other = Position.ofDegrees(50.11, 5.52); // the sign of the longitude is lost
    assertFalse(
        codes(stream.explain(StreamSamples.SKARRA, NOON)).contains("stream.far-from-station"));
    Explanation wrong = stream.explain(other, NOON);
    assertTrue(codes(wrong).contains("stream.far-from-station"));
    assertEquals("Skarra Sound", stream.source());
    assertEquals(StreamSamples.SKARRA, stream.position().get());
    assertEquals(StreamSamples.afterHigh(-6), stream.span().get().from());
  }

  private static final Instant NOON = StreamSamples.afterHigh(3);
}
