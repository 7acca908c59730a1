package org.ferryglide.tide.harmonic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.ferryglide.nav.note.InputFormatException;
import org.junit.jupiter.api.Test;

class HarmonicConstantsSheetTest {
  private static HarmonicConstants read(String... lines) throws IOException {
    return HarmonicConstants.read(
        "skarra.csv", new StringReader(String.join("\n", lines)), NodalScheme.schureman());
  }

  private static String refusal(String... lines) {
    return String.valueOf(assertThrows(InputFormatException.class, () -> read(lines)).getMessage());
  }

  @Test
  void greenwichLagsAreRead() throws IOException {
    HarmonicConstants constants =
        read(
            "# invented",
            "constituent,amplitude_m,phase_lag_greenwich_deg",
            "Z0,2.41,",
            "M2,1.52,109.2",
            "lam2,0.04,-10.0");
    assertEquals(2.41, constants.mean());
    assertEquals(2, constants.list().size());
    assertEquals(109.2, constants.list().get(0).greenwichLagDegrees());
    assertEquals(Constituents.LDA2, constants.list().get(1).constituent());
    assertEquals(350.0, constants.list().get(1).greenwichLagDegrees());
    assertEquals(1.52, constants.amplitude("M2"));
    assertEquals(0.0, constants.amplitude("S2"));
  }

  @Test
  void zoneLagsKeepTheirZone() throws IOException {
    HarmonicConstants constants =
        read(
            "constituent,amplitude_m,phase_lag_zone_deg,zone",
            "M2,1.52,109.2,+01:00",
            "K1,0.1,20,Z");
    assertEquals(
        HarmonicConstant.ofZone(
            Constituents.M2, constants.list().get(0).amplitude(), 109.2, ZoneOffset.ofHours(1)),
        constants.list().get(0));
    assertEquals(109.2 - 28.9841042, constants.list().get(0).greenwichLagDegrees(), 1e-6);
    assertEquals(20.0, constants.list().get(1).greenwichLagDegrees());
  }

  @Test
  void localLagsKeepTheirMeridian() throws IOException {
    HarmonicConstants constants =
        read("constituent,amplitude_m,phase_lag_local_deg,longitude_deg", "M2,1.52,330,-71.05");
    assertEquals(330.0 + 142.1 - 360.0, constants.list().get(0).greenwichLagDegrees(), 1e-9);
  }

  @Test
  void aStreamsAmplitudesAreInMetresASecond() throws IOException {
    assertEquals(
        0.6,
        read("constituent,amplitude_m_s,phase_lag_greenwich_deg", "M2,0.6,10").amplitude("M2"));
  }

  @Test
  void aStreamsAmplitudesMayBeInKnots() throws IOException {
    HarmonicConstants constants =
        read("constituent,amplitude_kn,phase_lag_greenwich_deg", "Z0,0.5,", "M2,1.2,10");
    assertEquals(0.5 * 1852.0 / 3600.0, constants.mean(), 1e-15);
    assertEquals(1.2 * 1852.0 / 3600.0, constants.amplitude("M2"), 1e-15);
    assertEquals(
        1, read("constituent,amplitude_kn,phase_lag_greenwich_deg", "M2,20,10").notes().size());
  }

  @Test
  void aCallersOwnConstituentIsRead() throws IOException {
    Constituent sigma =
        Constituent.compound("2NS2", Constituents.N2.times(2), Constituents.S2.times(-1));
    HarmonicConstants constants =
        HarmonicConstants.read(
            "skarra.csv",
            new StringReader("constituent,amplitude_m,phase_lag_greenwich_deg\n2NS2,0.05,1"),
            NodalScheme.schureman(),
            List.of(sigma));
    assertEquals(sigma, constants.list().get(0).constituent());
  }

  @Test
  void everyProblemIsListedWithItsPlace() {
    assertEquals(
        "skarra.csv, line 2, column 1: constituent: must be a constituent that the scheme of"
            + " Schureman knows, but was \"EPS2\"\n"
            + "skarra.csv, line 3, column 2: amplitude_m: must be a number in [0.0, 30.0], but was"
            + " \"-1\"\n"
            + "skarra.csv, line 4, column 1: constituent: each constituent must occur once, but M2"
            + " stands again\n"
            + "skarra.csv, line 5, column 3: phase_lag_greenwich_deg: must be a number in [-360.0,"
            + " 720.0], but was \"NaN\"\n"
            + "skarra.csv, line 7, column 1: constituent: the mean Z0 must occur once",
        refusal(
            "constituent,amplitude_m,phase_lag_greenwich_deg",
            "EPS2,0.1,1",
            "M2,-1,2",
            "M2,1,2",
            "S2,1,NaN",
            "Z0,1,",
            "Z0,2,"));
  }

  @Test
  void lagsWithoutAReferenceAreRefused() {
    assertEquals(
        "skarra.csv: a sheet of constants must give one kind of phase lag of"
            + " [phase_lag_greenwich_deg, phase_lag_zone_deg, phase_lag_local_deg], but gave none",
        refusal("constituent,amplitude_m", "M2,1"));
  }

  @Test
  void aSheetOfTheMeanAloneIsRefused() {
    assertEquals(
        "skarra.csv: a sheet of constants must have at least one constituent",
        refusal("constituent,amplitude_m,phase_lag_greenwich_deg", "Z0,1,0"));
  }

  @Test
  void anEmptySheetIsRefused() {
    assertEquals(
        "skarra.csv: a sheet of constants must give one amplitude of [amplitude_m, amplitude_m_s,"
            + " amplitude_kn], but gave none",
        refusal("constituent,amplitude_m,phase_lag_greenwich_deg"));
  }

  @Test
  void theMeanMayBeNamedInSmallLetters() throws IOException {
    HarmonicConstants constants =
        HarmonicConstants.read(
            "skarra.csv",
            new StringReader(
                "constituent,amplitude_m,phase_lag_greenwich_deg\nz0,2.4,\nM2,1.5,10\n"),
            NodalScheme.schureman());
    assertEquals(2.4, constants.mean());
  }

  @Test
  void anAmplitudeBeyondAnyTideIsDoubtedInEverythingPredictedFromIt() throws IOException {
    HarmonicConstants constants =
        HarmonicConstants.read(
            "skarra.csv",
            new StringReader(
                "constituent,amplitude_m,phase_lag_greenwich_deg\nM2,15.2,10\nS2,1,20\n"),
            NodalScheme.schureman());
    assertEquals(1, constants.notes().size());
    assertEquals("tide.doubt.amplitude", constants.notes().get(0).code());
    HarmonicTide tide =
        HarmonicTide.of("Skarra", "mean", constants.withMean(3.0), NodalConvention.AT_INSTANT);
    Instant from = Instant.parse("2026-06-01T00:00:00Z");
    assertTrue(tide.notesAt(from).contains(constants.notes().get(0)));
    assertTrue(
        tide.table(from, from.plus(Duration.ofDays(2))).notes().contains(constants.notes().get(0)));
  }
}
