package org.ferryglide.nav.geodesy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;

class LineTest {
  private static final Position HERE = Position.ofDegrees(50, -5);
  private static final Position THERE = Position.ofDegrees(51, -4);

  @Test
  void aPreparedRhumbLineGivesTheSameBitsAsTheKernel() {
    Line line = RhumbLeg.between(HERE, THERE).line();
    double[] kernel = new double[2];
    double[] prepared = new double[3];
    for (double metres = -1e6; metres <= 1e6; metres += 12_345) {
      RhumbLines.direct(50, -5, line.initialCourse().degrees(), metres, kernel, 0);
      line.pointAt(metres, prepared, 0);
      assertEquals(kernel[0], prepared[0]);
      assertEquals(kernel[1], prepared[1]);
      assertEquals(line.initialCourse().degrees(), prepared[2]);
    }
  }

  @Test
  void aPreparedGeodesicAgreesWithTheKernel() {
    Line line = GeodesicLeg.between(HERE, THERE).line();
    double[] kernel = new double[3];
    for (double metres = -1e7; metres <= 1e7; metres += 123_456) {
      Geodesics.direct(50, -5, line.initialCourse().degrees(), metres, kernel, 0);
      Distance along = Distance.ofMetres(metres);
      assertEquals(0.0, Places.metres(line.pointAt(along), kernel[0], kernel[1]), 1e-8);
      assertEquals(kernel[2], line.courseAt(along).degrees(), 1e-12);
    }
  }

  @Test
  void aRhumbLineReachesFromPoleToPole() {
    Line north = Line.rhumb(Position.ofDegrees(80, 0), TrueBearing.ofDegrees(0));
    double toPole = Places.metres(Position.ofDegrees(80, 0), 90, 0);
    assertEquals(toPole, north.farthestAhead().metres(), 1e-8);
    double pole = Ellipsoid.WGS84.quarterMeridianMetres();
    assertEquals(toPole - 2 * pole, north.farthestAstern().metres(), 1e-8);
    assertEquals(90.0, north.pointAt(north.farthestAhead()).latitudeDegrees(), 1e-13);

    Line winding = Line.rhumb(Position.ofDegrees(80, 0), TrueBearing.ofDegrees(120));
    assertEquals(-toPole / Math.cos(Math.toRadians(60)), winding.farthestAstern().metres(), 1e-5);
    assertTrue(winding.pointAt(winding.farthestAstern()).latitudeDegrees() > 89.999_999);
    assertEquals(Line.SEARCH_SPAN, winding.farthestAhead());
    Line east = Line.rhumb(HERE, TrueBearing.ofDegrees(90));
    assertEquals(Line.SEARCH_SPAN, east.farthestAhead());
    assertEquals(Line.SEARCH_SPAN, east.farthestAstern().magnitude());
  }

  @Test
  void aGeodesicHasNoEnd() {
    Line line = GeodesicLeg.between(HERE, THERE).line();
    assertEquals(Line.SEARCH_SPAN, line.farthestAhead());
    assertEquals(Line.SEARCH_SPAN, line.farthestAstern().magnitude());
    assertEquals(HERE, line.origin());
  }

  @Test
  void linesAreEqualByOriginAndCourse() {
    RhumbLeg rhumb = RhumbLeg.between(HERE, THERE);
    GeodesicLeg geodesic = GeodesicLeg.between(HERE, THERE);
    assertEquals(Line.rhumb(HERE, rhumb.course()), rhumb.line());
    assertEquals(Line.geodesic(HERE, geodesic.initialCourse()), geodesic.line());
    assertNotEquals(RhumbLeg.between(HERE, THERE).line(), RhumbLeg.between(THERE, HERE).line());
    for (Line line :
        List.of(RhumbLeg.between(HERE, THERE).line(), GeodesicLeg.between(HERE, THERE).line())) {
      assertNotEquals(line, HERE);
      assertTrue(line.toString().contains("through 50.0°N 5.0°W"), line.toString());
    }
  }

  @Test
  void nanAlongGivesNan() {
    double[] out = new double[3];
    for (Line line :
        List.of(RhumbLeg.between(HERE, THERE).line(), GeodesicLeg.between(HERE, THERE).line())) {
      line.pointAt(Double.NaN, out, 0);
      assertTrue(Double.isNaN(out[0]) && Double.isNaN(out[1]) && Double.isNaN(out[2]));
    }
  }
}
