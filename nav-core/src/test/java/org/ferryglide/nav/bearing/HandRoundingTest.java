package org.ferryglide.nav.bearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class HandRoundingTest {
  @Test
  void northIsWritten000FromEitherSide() {
    assertEquals("000°M", HandRounding.WHOLE_DEGREE.bearing(0.4, 'M'));
    assertEquals("000°M", HandRounding.WHOLE_DEGREE.bearing(359.5, 'M'));
    assertEquals("000.0°M", HandRounding.TENTH_OF_DEGREE.bearing(359.96, 'M'));
    assertEquals("000°00'M", HandRounding.MINUTE.bearing(360.0, 'M'));
  }

  @Test
  void aRoundedZeroHasNoLetter() {
    assertEquals("0°", HandRounding.WHOLE_DEGREE.eastWest(-0.4));
    assertEquals("0°01'W", HandRounding.MINUTE.eastWest(-0.5 / 60.0));
  }

  @Test
  void whatIsNoAngleIsNeverWrittenAsOne() {
    assertEquals(
        "bearing must be in [0, 360] degrees, but was NaN",
        message(() -> HandRounding.WHOLE_DEGREE.bearing(Double.NaN, 'T')));
    assertEquals(
        "bearing must be in [0, 360] degrees, but was -10.0",
        message(() -> HandRounding.WHOLE_DEGREE.bearing(-10.0, 'T')));
    assertEquals(
        "angle must be a finite number of degrees, but was NaN",
        message(() -> HandRounding.MINUTE.eastWest(Double.NaN)));
  }

  private static String message(Executable call) {
    return String.valueOf(assertThrows(IllegalArgumentException.class, call).getMessage());
  }
}
