package org.ferryglide.tide.harmonic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class HarmonicConstantsTest {
  private static final HarmonicConstant M2 = new HarmonicConstant(Constituents.M2, 1.5, 109.2);
  private static final HarmonicConstant SA = new HarmonicConstant(Constituents.SA, 0.1, 200.0);

  private final HarmonicConstants constants =
      HarmonicConstants.of(NodalScheme.schureman(), 2.4, List.of(M2, SA));

  @Test
  void constantsAreFoundByName() {
    assertEquals(Optional.of(M2), constants.constant("m2"));
    assertEquals(Optional.empty(), constants.constant("S2"));
    assertEquals(0.1, constants.amplitude("SA"));
  }

  @Test
  void theWeathersConstituentsCanBeLeftOut() {
    assertEquals(List.of(M2), constants.without("SA", "SSA").list());
    assertEquals(2.4, constants.without("SA").mean());
  }

  @Test
  void aConstituentThatStandsTwiceIsRefused() {
    assertEquals(
        "each constituent must occur once, but M2 stands twice",
        assertThrows(
                IllegalArgumentException.class,
                () -> HarmonicConstants.of(NodalScheme.schureman(), 0.0, List.of(M2, M2)))
            .getMessage());
  }

  @Test
  void aConstituentOfAnotherSchemeIsRefused() {
    assertEquals(
        "constituent must have a nodal correction in the scheme of Foreman at latitude 50.0, but"
            + " was SA",
        assertThrows(
                IllegalArgumentException.class,
                () -> HarmonicConstants.of(NodalScheme.foreman(50.0), 0.0, List.of(SA)))
            .getMessage());
  }

  @Test
  void constantsOfTwoSchemesAreNotAdded() {
    HarmonicConstants other = HarmonicConstants.of(NodalScheme.foreman(50.0), 0.0, List.of(M2));
    assertEquals(
        "constants must be of the scheme of Schureman, but were of Foreman at latitude 50.0",
        assertThrows(IllegalArgumentException.class, () -> constants.plus(other)).getMessage());
  }

  @Test
  void amplitudesAndFactorsAreChecked() {
    assertEquals(
        "amplitude of M2 must be a finite number of units of the series, at least 0, but was -1.0",
        assertThrows(
                IllegalArgumentException.class,
                () -> new HarmonicConstant(Constituents.M2, -1.0, 0.0))
            .getMessage());
    assertEquals(
        "factor must be a finite number of times, at least 0, but was NaN",
        assertThrows(IllegalArgumentException.class, () -> constants.scaledBy(Double.NaN))
            .getMessage());
    assertEquals(
        "amplitude ratio must be a finite number of times above 0, but was 0.0",
        assertThrows(
                IllegalArgumentException.class,
                () -> new Inference(Constituents.P1, Constituents.K1, 0.0, 1.0))
            .getMessage());
    assertTrue(constants.scaledBy(0.0).mean() == 0.0);
  }
}
