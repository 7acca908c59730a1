package org.ferryglide.nav.geodesy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;

class LegTest {
  private static final Position JFK =
      Position.ofDegrees(40 + (38 + 23 / 60.0) / 60, -(73 + (46 + 44 / 60.0) / 60));
  private static final Position SINGAPORE =
      Position.ofDegrees(1 + (21 + 33 / 60.0) / 60, 103 + (59 + 22 / 60.0) / 60);

  /** A tenth of a second of arc is printed. */
  private static final double HALF_A_PRINTED_TENTH_OF_A_SECOND = 0.05 / 3600;

  /** Source: manual page of GeographicLib's RhumbSolve. */
  @Test
  void rhumbLegAgreesWithThePublishedExample() {
    RhumbLeg leg = RhumbLeg.between(JFK, SINGAPORE);
    assertEquals(
        103 + (34 + 58.2 / 60) / 60, leg.course().degrees(), HALF_A_PRINTED_TENTH_OF_A_SECOND);
    assertEquals(18523563, leg.length().metres(), 0.5);
  }

  /** Source: manual page of GeographicLib's GeodSolve. */
  @Test
  void geodesicLegAgreesWithThePublishedExample() {
    GeodesicLeg leg = GeodesicLeg.between(JFK, SINGAPORE);
    assertEquals(
        3 + (18 + 29.9 / 60) / 60, leg.initialCourse().degrees(), HALF_A_PRINTED_TENTH_OF_A_SECOND);
    assertEquals(
        177 + (29 + 9.2 / 60) / 60, leg.finalCourse().degrees(), HALF_A_PRINTED_TENTH_OF_A_SECOND);
    assertEquals(15347628, leg.length().metres(), 0.5);
  }

  @Test
  void rhumbLegPastAPoleIsRefused() {
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class,
            () ->
                RhumbLeg.from(
                    Position.ofDegrees(80, 10),
                    TrueBearing.ofDegrees(45),
                    Distance.ofKilometres(2000)));
    assertEquals(
        "a rhumb line from 80.0, 10.0 on course 45.0°T ends at the pole before 2000000.0 m",
        refusal.getMessage());
  }

  @Test
  void lengthBelowZeroIsRefused() {
    assertEquals(
        "length of a leg must be a finite number of metres, at least 0, but was -1.0",
        assertThrows(
                IllegalArgumentException.class,
                () -> RhumbLeg.from(JFK, TrueBearing.ofDegrees(45), Distance.ofMetres(-1)))
            .getMessage());
  }
}
