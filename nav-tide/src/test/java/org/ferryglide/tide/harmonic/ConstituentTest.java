package org.ferryglide.tide.harmonic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class ConstituentTest {
  /** Published to five to seven decimals. */
  private static final double PUBLISHED_SPEED = 4e-6;

  @Test
  void speedsAreThePublishedOnes() {
    // US National Ocean Service, list of 37 constituents, degrees an hour
    assertSpeed("M2", 28.984104);
    assertSpeed("N2", 28.43973);
    assertSpeed("K1", 15.041069);
    assertSpeed("O1", 13.943035);
    assertSpeed("M1", 14.496694);
    assertSpeed("MK3", 44.025173);
    assertSpeed("2MK3", 42.92714);
    assertSpeed("SA", 0.0410686);
    assertSpeed("MSF", 1.0158958);
    assertSpeed("MF", 1.0980331);
    assertSpeed("2SM2", 31.015896);
    assertSpeed("L2", 29.528479);
    assertSpeed("M8", 115.93642);
    assertSpeed("T2", 29.958933);
  }

  private static void assertSpeed(String name, double published) {
    assertEquals(
        published,
        NodalScheme.schureman().constituent(name).orElseThrow().speedDegreesPerHour(),
        PUBLISHED_SPEED,
        name);
  }

  @Test
  void aDoodsonNumberIsReadWithAndWithoutItsPoint() {
    Constituent n2 = Constituent.ofDoodson("N2", "245.655", 0, NodeFamily.M2);
    assertEquals(Constituents.N2, n2);
    assertEquals(n2, Constituent.ofDoodson("N2", "245655", 4, NodeFamily.M2));
    assertEquals(
        n2, Constituent.ofMultiples("N2", new int[] {2, -1, 0, 1, 0, 0}, 0, NodeFamily.M2));
    assertEquals(6, Constituent.ofDoodson("x", "3E5.555", 0, NodeFamily.NONE).multiple(1));
  }

  @Test
  void aDoodsonNumberThatCannotBeReadIsRefused() {
    for (String bad : List.of("", "24565", "245.6555", "24a.555")) {
      assertEquals(
          "Doodson number must be six digits like 255.555, but was \"" + bad + "\"",
          assertThrows(
                  IllegalArgumentException.class,
                  () -> Constituent.ofDoodson("x", bad, 0, NodeFamily.NONE))
              .getMessage());
    }
  }

  @Test
  void aCompoundOfCompoundsIsTakenApart() {
    Constituent threeMs8 =
        Constituent.compound("3MS8", Constituents.M4.times(1), Constituents.MS4.times(1));
    assertEquals(8, threeMs8.species());
    assertTrue(threeMs8.isCompound());
    double[] whole = new double[2];
    double[] m2 = new double[2];
    NodalScheme.schureman().corrections(1e9, List.of(threeMs8), whole);
    NodalScheme.schureman().corrections(1e9, List.of(Constituents.M2), m2);
    assertEquals(m2[0] * m2[0] * m2[0], whole[0], 1e-12);
    assertEquals(3 * m2[1], whole[1], 1e-12);
  }

  @Test
  void whatANameMeansDependsOnTheScheme() {
    assertNotEquals(
        NodalScheme.schureman().constituent("SA").orElseThrow(),
        NodalScheme.foreman(50.0).constituent("SA").orElseThrow());
    double schureman = argument(Constituents.SA);
    double foreman = argument(Constituents.SA_FROM_PERIGEE);
    // 76.6° in 2024, recalculated by an independent program
    assertEquals(76.6, Math.abs(Math.IEEEremainder(schureman - foreman, 360.0)), 0.7);
  }

  private static double argument(Constituent constituent) {
    return constituent.argumentDegrees(MeanLongitudes.SCHUREMAN, CalendarYears.startSeconds(2024));
  }

  @Test
  void partsAndNamesAreChecked() {
    assertEquals(
        "times of a part must be in [-20, 20] and not 0, but was 0",
        assertThrows(IllegalArgumentException.class, () -> Constituents.M2.times(0)).getMessage());
    assertEquals(
        "a compound must have parts, but X had none",
        assertThrows(IllegalArgumentException.class, () -> Constituent.compound("X")).getMessage());
    assertEquals(
        "name of a constituent must not be empty",
        assertThrows(
                IllegalArgumentException.class,
                () -> Constituent.ofDoodson("", "255.555", 0, NodeFamily.M2))
            .getMessage());
    assertEquals(
        "multiples of a constituent must be 6, of tau, s, h, p, N' and p1, but were 2",
        assertThrows(
                IllegalArgumentException.class,
                () -> Constituent.ofMultiples("x", new int[2], 0, NodeFamily.NONE))
            .getMessage());
  }

  @Test
  void bothListsHaveTheirNumbers() {
    assertEquals(37, Constituents.STANDARD_37.size());
    assertEquals(69, Constituents.FOREMAN_69.size());
    assertEquals(37, Constituents.STANDARD_37.stream().map(Constituent::name).distinct().count());
    assertEquals(69, Constituents.FOREMAN_69.stream().map(Constituent::name).distinct().count());
  }
}
