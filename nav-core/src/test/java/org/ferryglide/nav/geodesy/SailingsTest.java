package org.ferryglide.nav.geodesy;

import static org.ferryglide.testing.Rows.number;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.ferryglide.testing.Rows;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The sailings of the handbooks, whose printed answers say 60 miles to a degree. */
class SailingsTest {
  /** A minute of latitude is 1843 to 1862 m long, not 1852, so that distances agree to this. */
  private static final double SIXTY_MILES_TO_A_DEGREE = 0.005;

  @TestFactory
  List<DynamicTest> mercatorSailingsAgree() {
    return Rows.of(SailingsTest.class, "published-sailings.csv").stream()
        .map(row -> DynamicTest.dynamicTest(row[0], () -> checkMercator(row)))
        .toList();
  }

  private static void checkMercator(String[] row) {
    RhumbLeg leg =
        RhumbLeg.between(
            Position.ofDegrees(number(row[1]), number(row[2])),
            Position.ofDegrees(number(row[3]), number(row[4])));
    assertEquals(number(row[5]), leg.course().degrees(), number(row[6]));
    double printed = number(row[7]);
    assertEquals(printed, leg.length().nauticalMiles(), SIXTY_MILES_TO_A_DEGREE * printed);
    // The traditional mixture itself: meridional parts of the ellipsoid, 60 miles to a degree.
    double degreesOfLatitude = Math.abs(number(row[3]) - number(row[1]));
    double cosine = Math.abs(Math.cos(Math.toRadians(leg.course().degrees())));
    assertEquals(printed, 60 * degreesOfLatitude / cosine, 0.6); // printed courses are rounded
  }

  @TestFactory
  List<DynamicTest> midLatitudeSailingsAgree() {
    return Rows.of(SailingsTest.class, "published-parallel-and-mid-latitude.csv").stream()
        .map(row -> DynamicTest.dynamicTest(String.join(" ", row), () -> checkMidLatitude(row)))
        .toList();
  }

  private static void checkMidLatitude(String[] row) {
    Position end =
        RhumbLeg.from(
                Position.ofDegrees(number(row[0]), number(row[1])),
                TrueBearing.ofDegrees(number(row[2])),
                Distance.ofNauticalMiles(number(row[3])))
            .end();
    double run = Math.abs(number(row[4]) - number(row[0]));
    assertEquals(number(row[4]), end.latitudeDegrees(), SIXTY_MILES_TO_A_DEGREE * run + 1.0 / 60);
    assertEquals(number(row[5]), end.longitudeDegrees(), number(row[6]) / 60);
  }

  /** Source: oic-nwreviewer.blogspot.com, parallel sailing 50-06N from 153-06E, 879 miles east. */
  @Test
  void parallelSailingAgreesOnTheSphere() {
    double[] out = new double[2];
    double metres = 879 * 1852.0;
    Ellipsoid sphere = Ellipsoid.sphere(GreatCircle.MINUTE_IS_A_MILE.metres());
    RhumbLines.direct(sphere, 50.1, 153.1, 90, metres, out, 0);
    double printed = 175 + (56 + 20 / 60.0) / 60;
    assertEquals(printed, out[1], 0.5 / 3600);
  }
}
