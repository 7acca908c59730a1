package org.ferryglide.tide.harmonic;

import java.util.List;

/**
 * The constituents in general use, by name.
 *
 * <p>The angles are those of Schureman (1958), table 2, and of Foreman (1977), whose two lists
 * agree in all of them but SA, S1 and M1: what a name means there depends on whose constants it
 * stands beside, which is why {@link NodalScheme#constituent} looks names up.
 *
 * <pre>{@code
 * double hours = 360.0 / Constituents.M2.speedDegreesPerHour(); // 12.42
 * }</pre>
 */
public final class Constituents {

  /** SA as official US constants have it: the mean sun alone, h. */
  public static final Constituent SA = Constituent.ofDoodson("SA", "056.555", 0, NodeFamily.NONE);

  /** SA as Foreman has it: the mean sun from its perigee, h - p1. */
  public static final Constituent SA_FROM_PERIGEE =
      Constituent.ofDoodson("SA", "056.554", 0, NodeFamily.NONE);

  /** SSA, the solar semi-annual. */
  public static final Constituent SSA = Constituent.ofDoodson("SSA", "057.555", 0, NodeFamily.NONE);

  /** MSM. */
  public static final Constituent MSM =
      Constituent.ofDoodson("MSM", "063.655", 0, NodeFamily.NOT_LISTED);

  /** MM, the lunar monthly. */
  public static final Constituent MM = Constituent.ofDoodson("MM", "065.455", 0, NodeFamily.MM);

  /** MF, the lunar fortnightly. */
  public static final Constituent MF = Constituent.ofDoodson("MF", "075.555", 0, NodeFamily.MF);

  /** ALP1. */
  public static final Constituent ALP1 =
      Constituent.ofDoodson("ALP1", "117.655", 3, NodeFamily.NOT_LISTED);

  /** 2Q1. */
  public static final Constituent TWO_Q1 =
      Constituent.ofDoodson("2Q1", "125.755", 3, NodeFamily.O1);

  /** SIG1. */
  public static final Constituent SIG1 = Constituent.ofDoodson("SIG1", "127.555", 3, NodeFamily.O1);

  /** Q1, the larger lunar elliptic diurnal. */
  public static final Constituent Q1 = Constituent.ofDoodson("Q1", "135.655", 3, NodeFamily.O1);

  /** RHO1. */
  public static final Constituent RHO1 = Constituent.ofDoodson("RHO1", "137.455", 3, NodeFamily.O1);

  /** O1, the principal lunar diurnal. */
  public static final Constituent O1 = Constituent.ofDoodson("O1", "145.555", 3, NodeFamily.O1);

  /** TAU1. */
  public static final Constituent TAU1 =
      Constituent.ofDoodson("TAU1", "147.555", 1, NodeFamily.NOT_LISTED);

  /** BET1. */
  public static final Constituent BET1 =
      Constituent.ofDoodson("BET1", "153.655", 1, NodeFamily.NOT_LISTED);

  /** M1, the smaller lunar elliptic diurnal, as Schureman and official US constants have it. */
  public static final Constituent M1 = Constituent.ofDoodson("M1", "155.555", 1, NodeFamily.M1);

  /** NO1, the smaller lunar elliptic diurnal, as Foreman has it. */
  public static final Constituent NO1 =
      Constituent.ofDoodson("NO1", "155.655", 1, NodeFamily.NOT_LISTED);

  /** CHI1. */
  public static final Constituent CHI1 = Constituent.ofDoodson("CHI1", "157.455", 1, NodeFamily.J1);

  /** PI1. */
  public static final Constituent PI1 = Constituent.ofDoodson("PI1", "162.556", 3, NodeFamily.NONE);

  /** P1, the principal solar diurnal. */
  public static final Constituent P1 = Constituent.ofDoodson("P1", "163.555", 3, NodeFamily.NONE);

  /** S1 as official US constants have it: the mean sun alone. */
  public static final Constituent S1 = Constituent.ofDoodson("S1", "164.555", 2, NodeFamily.NONE);

  /** S1 as Foreman has it, counted from the perigee of the sun. */
  public static final Constituent S1_FROM_PERIGEE =
      Constituent.ofDoodson("S1", "164.556", 1, NodeFamily.NONE);

  /** K1, the lunisolar diurnal. */
  public static final Constituent K1 = Constituent.ofDoodson("K1", "165.555", 1, NodeFamily.K1);

  /** PSI1. */
  public static final Constituent PSI1 =
      Constituent.ofDoodson("PSI1", "166.554", 1, NodeFamily.NONE);

  /** PHI1. */
  public static final Constituent PHI1 =
      Constituent.ofDoodson("PHI1", "167.555", 1, NodeFamily.NONE);

  /** THE1. */
  public static final Constituent THE1 = Constituent.ofDoodson("THE1", "173.655", 1, NodeFamily.J1);

  /** J1. */
  public static final Constituent J1 = Constituent.ofDoodson("J1", "175.455", 1, NodeFamily.J1);

  /** OO1. */
  public static final Constituent OO1 = Constituent.ofDoodson("OO1", "185.555", 1, NodeFamily.OO1);

  /** UPS1. */
  public static final Constituent UPS1 =
      Constituent.ofDoodson("UPS1", "195.455", 1, NodeFamily.NOT_LISTED);

  /** OQ2. */
  public static final Constituent OQ2 =
      Constituent.ofDoodson("OQ2", "225.855", 0, NodeFamily.NOT_LISTED);

  /** EPS2. */
  public static final Constituent EPS2 =
      Constituent.ofDoodson("EPS2", "227.655", 0, NodeFamily.NOT_LISTED);

  /** 2N2. */
  public static final Constituent TWO_N2 =
      Constituent.ofDoodson("2N2", "235.755", 0, NodeFamily.M2);

  /** MU2. */
  public static final Constituent MU2 = Constituent.ofDoodson("MU2", "237.555", 0, NodeFamily.M2);

  /** N2, the larger lunar elliptic semi-diurnal. */
  public static final Constituent N2 = Constituent.ofDoodson("N2", "245.655", 0, NodeFamily.M2);

  /** NU2. */
  public static final Constituent NU2 = Constituent.ofDoodson("NU2", "247.455", 0, NodeFamily.M2);

  /** GAM2. */
  public static final Constituent GAM2 =
      Constituent.ofDoodson("GAM2", "253.755", 2, NodeFamily.NOT_LISTED);

  /** H1. */
  public static final Constituent H1 =
      Constituent.ofDoodson("H1", "254.556", 2, NodeFamily.NOT_LISTED);

  /** M2, the principal lunar semi-diurnal. */
  public static final Constituent M2 = Constituent.ofDoodson("M2", "255.555", 0, NodeFamily.M2);

  /** H2. */
  public static final Constituent H2 =
      Constituent.ofDoodson("H2", "256.554", 0, NodeFamily.NOT_LISTED);

  /** LDA2. */
  public static final Constituent LDA2 = Constituent.ofDoodson("LDA2", "263.655", 2, NodeFamily.M2);

  /** L2. */
  public static final Constituent L2 = Constituent.ofDoodson("L2", "265.455", 2, NodeFamily.L2);

  /** T2. */
  public static final Constituent T2 = Constituent.ofDoodson("T2", "272.556", 0, NodeFamily.NONE);

  /** S2, the principal solar semi-diurnal. */
  public static final Constituent S2 = Constituent.ofDoodson("S2", "273.555", 0, NodeFamily.NONE);

  /** R2. */
  public static final Constituent R2 = Constituent.ofDoodson("R2", "274.554", 2, NodeFamily.NONE);

  /** K2, the lunisolar semi-diurnal. */
  public static final Constituent K2 = Constituent.ofDoodson("K2", "275.555", 0, NodeFamily.K2);

  /** ETA2. */
  public static final Constituent ETA2 =
      Constituent.ofDoodson("ETA2", "285.455", 0, NodeFamily.NOT_LISTED);

  /** M3. */
  public static final Constituent M3 = Constituent.ofDoodson("M3", "355.555", 2, NodeFamily.M3);

  /**
   * MSF, the lunisolar fortnightly: S2 less M2, which gives it a node factor in Schureman's scheme.
   */
  public static final Constituent MSF = Constituent.compound("MSF", S2.times(1), M2.times(-1));

  /** SO1. */
  public static final Constituent SO1 = Constituent.compound("SO1", S2.times(1), O1.times(-1));

  /** MSN2. */
  public static final Constituent MSN2 =
      Constituent.compound("MSN2", M2.times(1), S2.times(1), N2.times(-1));

  /** MKS2. */
  public static final Constituent MKS2 =
      Constituent.compound("MKS2", M2.times(1), K2.times(1), S2.times(-1));

  /** SO3. */
  public static final Constituent SO3 = Constituent.compound("SO3", S2.times(1), O1.times(1));

  /** MO3. */
  public static final Constituent MO3 = Constituent.compound("MO3", M2.times(1), O1.times(1));

  /** MK3. */
  public static final Constituent MK3 = Constituent.compound("MK3", M2.times(1), K1.times(1));

  /** SK3. */
  public static final Constituent SK3 = Constituent.compound("SK3", S2.times(1), K1.times(1));

  /** MN4. */
  public static final Constituent MN4 = Constituent.compound("MN4", M2.times(1), N2.times(1));

  /** M4. */
  public static final Constituent M4 = Constituent.compound("M4", M2.times(2));

  /** SN4. */
  public static final Constituent SN4 = Constituent.compound("SN4", S2.times(1), N2.times(1));

  /** MS4. */
  public static final Constituent MS4 = Constituent.compound("MS4", M2.times(1), S2.times(1));

  /** MK4. */
  public static final Constituent MK4 = Constituent.compound("MK4", M2.times(1), K2.times(1));

  /** S4. */
  public static final Constituent S4 = Constituent.compound("S4", S2.times(2));

  /** SK4. */
  public static final Constituent SK4 = Constituent.compound("SK4", S2.times(1), K2.times(1));

  /** 2MK5. */
  public static final Constituent TWO_MK5 = Constituent.compound("2MK5", M2.times(2), K1.times(1));

  /** 2SK5. */
  public static final Constituent TWO_SK5 = Constituent.compound("2SK5", S2.times(2), K1.times(1));

  /** 2MN6. */
  public static final Constituent TWO_MN6 = Constituent.compound("2MN6", M2.times(2), N2.times(1));

  /** M6. */
  public static final Constituent M6 = Constituent.compound("M6", M2.times(3));

  /** 2MK6. */
  public static final Constituent TWO_MK6 = Constituent.compound("2MK6", M2.times(2), K2.times(1));

  /** 2MS6. */
  public static final Constituent TWO_MS6 = Constituent.compound("2MS6", M2.times(2), S2.times(1));

  /** 2SM6. */
  public static final Constituent TWO_SM6 = Constituent.compound("2SM6", S2.times(2), M2.times(1));

  /** MSK6. */
  public static final Constituent MSK6 =
      Constituent.compound("MSK6", M2.times(1), S2.times(1), K2.times(1));

  /** 3MK7. */
  public static final Constituent THREE_MK7 =
      Constituent.compound("3MK7", M2.times(3), K1.times(1));

  /** M8. */
  public static final Constituent M8 = Constituent.compound("M8", M2.times(4));

  /** M10. */
  public static final Constituent M10 = Constituent.compound("M10", M2.times(5));

  /** 2SM2. */
  public static final Constituent TWO_SM2 = Constituent.compound("2SM2", S2.times(2), M2.times(-1));

  /** 2MK3. */
  public static final Constituent TWO_MK3 = Constituent.compound("2MK3", M2.times(2), K1.times(-1));

  /** S6. */
  public static final Constituent S6 = Constituent.compound("S6", S2.times(3));

  /**
   * The 37 constituents of official US predictions, the largest in the equilibrium tide first,
   * shallow-water ones last.
   */
  public static final List<Constituent> STANDARD_37 =
      List.of(
          M2, K1, S2, O1, P1, N2, MF, K2, MM, SSA, Q1, NU2, J1, M1, MU2, L2, T2, TWO_N2, OO1, RHO1,
          MSF, M3, SA, TWO_Q1, LDA2, S1, R2, M4, MS4, MN4, M6, MK3, TWO_MK3, S4, TWO_SM2, M8, S6);

  /**
   * The 68 main constituents of Foreman (1977) and M10, the largest in the equilibrium tide first,
   * shallow-water ones last. The order decides which of two close ones an analysis keeps; it is
   * common practice, no source.
   */
  public static final List<Constituent> FOREMAN_69 =
      List.of(
          M2,
          K1,
          S2,
          O1,
          P1,
          N2,
          MF,
          K2,
          MM,
          SSA,
          Q1,
          NU2,
          J1,
          NO1,
          MU2,
          L2,
          T2,
          TWO_N2,
          OO1,
          MSM,
          RHO1,
          MSF,
          M3,
          SA_FROM_PERIGEE,
          SIG1,
          PI1,
          TWO_Q1,
          PHI1,
          EPS2,
          LDA2,
          ETA2,
          CHI1,
          THE1,
          TAU1,
          PSI1,
          S1_FROM_PERIGEE,
          R2,
          UPS1,
          H1,
          BET1,
          ALP1,
          GAM2,
          OQ2,
          H2,
          M4,
          MS4,
          MN4,
          M6,
          TWO_MS6,
          TWO_MN6,
          MK3,
          MO3,
          SK3,
          SO3,
          MK4,
          S4,
          SN4,
          SK4,
          MKS2,
          MSN2,
          SO1,
          TWO_SM6,
          TWO_MK6,
          MSK6,
          TWO_MK5,
          TWO_SK5,
          THREE_MK7,
          M8,
          M10);

  private Constituents() {}
}
