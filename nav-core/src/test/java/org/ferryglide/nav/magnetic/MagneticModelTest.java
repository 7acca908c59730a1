package org.ferryglide.nav.magnetic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Severity;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.api.Test;

class MagneticModelTest {
  private static final Position PLACE = Position.ofDegrees(54.0, -7.0);

  @Test
  void theModelInForceIsThatOfItsFiveYears() {
    assertSame(MagneticModel.wmm2015v2(), MagneticModel.inForceOn(LocalDate.of(2015, 1, 1)));
    assertSame(MagneticModel.wmm2015v2(), MagneticModel.inForceOn(LocalDate.of(2019, 12, 31)));
    assertSame(MagneticModel.wmm2020(), MagneticModel.inForceOn(LocalDate.of(2020, 1, 1)));
    assertSame(MagneticModel.wmm2020(), MagneticModel.inForceOn(LocalDate.of(2024, 12, 31)));
    assertSame(MagneticModel.wmm2025(), MagneticModel.inForceOn(LocalDate.of(2025, 1, 1)));
    assertSame(MagneticModel.wmm2025(), MagneticModel.inForceOn(LocalDate.of(2035, 1, 1)));
    assertSame(MagneticModel.wmm2015v2(), MagneticModel.inForceOn(LocalDate.of(1990, 1, 1)));
  }

  @Test
  void modelsSayWhatTheyAre() {
    MagneticModel model = MagneticModel.wmm2025();
    assertEquals("WMM2025", model.name());
    assertEquals(12, model.degree());
    assertEquals(2025.0, model.validFromYear());
    assertEquals(2030.0, model.validToYear());
    assertEquals("WMM2015v2 (2015.0 to 2020.0)", MagneticModel.wmm2015v2().toString());
    MagneticSnapshot snapshot = model.at(LocalDate.of(2026, 1, 1));
    assertSame(model, snapshot.model());
    assertEquals(2026.0, snapshot.decimalYear());
  }

  @Test
  void theDayOfLapseIsNoCrashAndNoSilence() {
    MagneticModel model = MagneticModel.wmm2025();
    assertTrue(model.at(LocalDate.of(2025, 1, 1)).notes().isEmpty());
    assertTrue(model.at(LocalDate.of(2030, 1, 1)).notes().isEmpty());
    Note day = model.at(LocalDate.of(2030, 1, 2)).notes().get(0);
    assertEquals("magnetic.outside-span", day.code());
    assertEquals(Severity.CAUTION, day.severity());
    assertEquals(
        "WMM2025 is made for 2025.0 to 2030.0, but the date was 2030-01-02, 0.1 years after it"
            + " ends. The variation drifts from the truth as the years pass: use a newer model.",
        day.text());
    Note years = model.at(LocalDate.of(2032, 7, 2)).notes().get(0);
    assertEquals(Severity.WARNING, years.severity());
    assertEquals(2.5, Double.parseDouble(String.valueOf(years.data().get("yearsOutside"))), 0.01);
    Note early = model.at(LocalDate.of(2024, 7, 1)).notes().get(0);
    assertTrue(early.text().contains("2024-07-01, 0.6 years before it begins"), early.text());
    assertTrue(early.text().endsWith("use the model made for that time."), early.text());
    double inside = model.at(LocalDate.of(2030, 1, 1)).variation(PLACE).degreesEast();
    double after = model.at(LocalDate.of(2030, 1, 2)).variation(PLACE).degreesEast();
    assertEquals(inside, after, 0.001);
  }

  @Test
  void refusingIsTheCallersChoice() {
    MagneticModel strict = MagneticModel.wmm2025().refusingOutsideSpan();
    assertEquals(
        "WMM2025 is made for 2025.0 to 2030.0, but the date was 2031-01-01, 1.0 years after it"
            + " ends",
        assertThrows(DateTimeException.class, () -> strict.at(LocalDate.of(2031, 1, 1)))
            .getMessage());
    assertThrows(DateTimeException.class, () -> strict.atDecimalYear(2024.9));
    assertThrows(DateTimeException.class, () -> strict.at(Instant.parse("2024-12-31T23:59:59Z")));
    assertThrows(
        DateTimeException.class, () -> strict.place(PLACE).variationAt(LocalDate.of(2031, 1, 1)));
    assertTrue(strict.at(LocalDate.of(2026, 1, 1)).notes().isEmpty());
    assertEquals(1, MagneticModel.wmm2025().at(LocalDate.of(2031, 1, 1)).notes().size());
  }

  @Test
  void datesThatAreNoDatesAreRefused() {
    assertEquals(
        "date must be a finite number of years, but was NaN",
        assertThrows(
                IllegalArgumentException.class,
                () -> MagneticModel.wmm2025().atDecimalYear(Double.NaN))
            .getMessage());
  }

  @Test
  void everyWayOfNamingADateAgrees() {
    MagneticModel model = MagneticModel.wmm2025();
    assertEquals(
        model.at(LocalDate.of(2028, 7, 2)).variation(PLACE),
        model.at(Instant.parse("2028-07-02T00:00:00Z")).variation(PLACE));
    assertEquals(2028.5, MagneticModel.decimalYear(LocalDate.of(2028, 7, 2)));
    assertEquals(2025.0, MagneticModel.decimalYear(Instant.parse("2025-01-01T00:00:00Z")));
    assertEquals(
        2025.0 + 0.5 / 365.0,
        MagneticModel.decimalYear(Instant.parse("2025-01-01T12:00:00Z")),
        1e-12);
    assertEquals(
        model.atDecimalYear(2028.5).variation(PLACE).degreesEast(),
        model.place(PLACE).variationAt(LocalDate.of(2028, 7, 2)).degreesEast(),
        1e-12);
    assertEquals(PLACE, model.place(PLACE).position());
    assertEquals(1, model.place(PLACE).notesAt(LocalDate.of(2030, 6, 1)).size());
    assertTrue(model.place(PLACE).notesAt(LocalDate.of(2029, 6, 1)).isEmpty());
  }

  /** NOAA NCEI's published error figures, World Magnetic Model 2025 and 2020. */
  @Test
  void errorsAreThosePublished() {
    MagneticErrorModel errors = MagneticModel.wmm2025().errorModel().orElseThrow();
    assertEquals(new MagneticErrorModel(137, 89, 141, 133, 138, 0.20, 0.26, 5417), errors);
    assertEquals(Math.hypot(0.26, 0.5417), errors.declinationDegrees(10_000.0), 1e-12);
    assertEquals(180.0, errors.declinationDegrees(0.0));
    assertEquals(180.0, errors.declinationDegrees(1.0));
    assertEquals(5625.0, MagneticModel.wmm2020().errorModel().orElseThrow().declinationSlope());
    MagneticSnapshot snapshot = MagneticModel.wmm2025().atDecimalYear(2026.0);
    double sigma = snapshot.standardErrorDegrees(PLACE).orElseThrow();
    assertEquals(errors.declinationDegrees(snapshot.field(PLACE).horizontalNanotesla()), sigma);
    assertEquals(0.4, sigma, 0.05);
    assertEquals(
        "error of the dip must be a finite number of degrees, at least 0, but was -1.0",
        assertThrows(
                IllegalArgumentException.class,
                () -> new MagneticErrorModel(1, 1, 1, 1, 1, -1, 1, 1))
            .getMessage());
  }

  @Test
  void compassZonesFollowTheHorizontalField() {
    assertEquals(CompassZone.BLACKOUT, CompassZone.ofHorizontal(1999.9));
    assertEquals(CompassZone.CAUTION, CompassZone.ofHorizontal(2000.0));
    assertEquals(CompassZone.CAUTION, CompassZone.ofHorizontal(5999.9));
    assertEquals(CompassZone.USABLE, CompassZone.ofHorizontal(6000.0));
    MagneticSnapshot snapshot = MagneticModel.wmm2025().atDecimalYear(2026.0);
    // first row of the official 100-point table: horizontal 1504 nT near 89°N 121°W
    assertEquals(List.of("magnetic.blackout-zone"), codes(snapshot, Position.ofDegrees(89, -121)));
    // the report's row at 80°N: horizontal 6523 nT, 1.5 degrees further north less than 6000
    assertEquals(CompassZone.USABLE, snapshot.field(Position.ofDegrees(80, 0)).zone());
    assertEquals(List.of("magnetic.caution-zone"), codes(snapshot, Position.ofDegrees(82, 0)));
    assertEquals(List.of(), codes(snapshot, PLACE));
  }

  private static List<String> codes(MagneticSnapshot snapshot, Position place) {
    return snapshot.notesAt(place).stream().map(Note::code).toList();
  }

  @Test
  void gridVariationIsInUseNearThePolesOnly() {
    MagneticSnapshot snapshot = MagneticModel.wmm2025().atDecimalYear(2025.0);
    assertTrue(snapshot.gridVariationDegrees(Position.ofDegrees(54.9, 10)).isEmpty());
    double declination = snapshot.variation(Position.ofDegrees(70, 30)).degreesEast();
    assertEquals(
        declination - 30.0,
        snapshot.gridVariationDegrees(Position.ofDegrees(70, 30)).orElseThrow(),
        1e-12);
    declination = snapshot.variation(Position.ofDegrees(-70, 30)).degreesEast();
    assertEquals(
        declination + 30.0,
        snapshot.gridVariationDegrees(Position.ofDegrees(-70, 30)).orElseThrow(),
        1e-12);
  }

  @Test
  void valuesAndRowsAreTheSameNumbers() {
    MagneticSnapshot snapshot = MagneticModel.wmm2025().atDecimalYear(2026.3);
    double[] row = new double[MagneticSnapshot.ELEMENTS_WITH_CHANGE + 1];
    snapshot.elementsWithChange(54.0, -7.0, 0.0, row, 1);
    MagneticField field = snapshot.field(PLACE);
    assertEquals(field.northNanotesla(), row[1]);
    assertEquals(field.eastNanotesla(), row[2]);
    assertEquals(field.downNanotesla(), row[3]);
    assertEquals(field.horizontalNanotesla(), row[4]);
    assertEquals(field.totalNanotesla(), row[5]);
    assertEquals(field.dipDegrees(), row[6], 1e-12);
    assertEquals(field.declinationDegrees(), row[7], 1e-12);
    assertEquals(60.0 * row[14], snapshot.annualChange(PLACE).minutesEast());
    double[] elements = new double[9];
    snapshot.elements(new double[] {0.0, 54.0}, new double[] {0.0, -7.0}, 0.0, 1, 2, elements, 1);
    assertEquals(row[7], elements[1 + MagneticSnapshot.DECLINATION]);
    assertEquals(row[1], elements[1 + MagneticSnapshot.NORTH]);
    assertEquals(0.0, elements[0]);
    assertEquals(0.0, elements[8]);
    double[] declinations = new double[2];
    snapshot.declinations(
        new double[] {Double.NaN, 54.0}, new double[] {0.0, -7.0}, 0, 2, declinations, 0);
    assertEquals(row[7], declinations[1]);
    assertTrue(Double.isNaN(declinations[0]));
    assertThrows(
        IndexOutOfBoundsException.class,
        () -> snapshot.declinations(new double[1], new double[1], 0, 2, declinations, 0));
  }

  @Test
  void notANumberPassesThroughTheKernels() {
    double[] row = new double[14];
    MagneticModel.wmm2025().elementsWithChange(Double.NaN, 54.0, -7.0, 0.0, row, 0);
    assertTrue(Double.isNaN(row[0]) && Double.isNaN(row[6]));
    MagneticModel.wmm2025().atDecimalYear(2026).elementsWithChange(54, 7, Double.NaN, row, 0);
    for (double value : row) {
      assertTrue(Double.isNaN(value));
    }
    assertTrue(Double.isNaN(MagneticModel.wmm2025().place(PLACE).declinationDegrees(Double.NaN)));
  }

  @Test
  void heightHardlyMattersToTheVariation() {
    MagneticSnapshot snapshot = MagneticModel.wmm2025().atDecimalYear(2026);
    assertEquals(
        snapshot.variation(PLACE).degreesEast(),
        snapshot.field(PLACE, Distance.ofMetres(300.0)).declinationDegrees(),
        0.001);
    assertEquals(
        "height must be in [-10000, 850000] metres, but was 900000.0",
        assertThrows(
                IllegalArgumentException.class, () -> snapshot.field(PLACE, Distance.ofMetres(9e5)))
            .getMessage());
  }

  @Test
  void snapshotsCanBeShipped() throws Exception {
    MagneticSnapshot snapshot = MagneticModel.wmm2025().atDecimalYear(2031);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(snapshot);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      MagneticSnapshot copy = (MagneticSnapshot) in.readObject();
      assertEquals(snapshot.variation(PLACE), copy.variation(PLACE));
      assertEquals(snapshot.notes(), copy.notes());
    }
  }

  /** 74.7°N 95°W: the snapshot cautioned, the place said nothing. */
  @Test
  void aPlaceTellsOfItsWeakField() {
    LocalDate date = LocalDate.of(2026, 6, 1);
    Position weak = Position.ofDegrees(74.7, -95.0);
    MagneticModel model = MagneticModel.wmm2025();
    assertEquals(model.at(date).notesAt(weak).get(0).code(), "magnetic.caution-zone");
    assertEquals(
        List.of("magnetic.caution-zone"),
        model.place(weak).notesAt(date).stream().map(Note::code).toList());
    assertEquals(
        horizontalNanotesla(model.at(date).notesAt(weak).get(0)),
        horizontalNanotesla(model.place(weak).notesAt(date).get(0)),
        1e-6);
  }

  private static double horizontalNanotesla(Note note) {
    Double figure = note.figures().get("horizontalNanotesla");
    return figure == null ? Double.NaN : figure;
  }

  @Test
  void aReadingCarriesItsErrorAndItsNotes() {
    LocalDate date = LocalDate.of(2026, 6, 1);
    VariationReading now = VariationSource.builtInModels().at(PLACE, date);
    MagneticSnapshot june = MagneticModel.wmm2025().at(date);
    assertEquals(june.variation(PLACE), now.variation());
    assertEquals(june.standardErrorDegrees(PLACE).orElseThrow(), now.standardErrorDegrees());
    assertEquals(List.of(), now.notes());
    assertEquals("WMM2025", now.source());
    assertEquals(now, june.reading(PLACE));
    VariationReading lapsed =
        MagneticModel.inForceOn(LocalDate.of(2040, 1, 1)).at(PLACE, LocalDate.of(2040, 1, 1));
    assertEquals("magnetic.outside-span", lapsed.notes().get(0).code());
    assertEquals(Severity.WARNING, lapsed.notes().get(0).severity());
    assertEquals(1.07, lapsed.standardErrorDegrees(), 0.05); // 0.4° and ten years of 0.1°
    VariationReading rose = CompassRose.parse("4°15'W 2016 (8'E)").at(PLACE, date);
    assertEquals("rose 4°15'W 2016 (8'E)", rose.source());
    assertEquals("rose.old", rose.notes().get(0).code());
    assertEquals(Math.hypot(0.4, 0.33), rose.standardErrorDegrees(), 0.02);
    assertTrue(rose.toString().endsWith("(rose 4°15'W 2016 (8'E)), 1 note"), rose.toString());
  }

  @Test
  void theModelOfAnInstantIsThatOfItsDate() {
    assertSame(
        MagneticModel.wmm2020(), MagneticModel.inForceOn(Instant.parse("2024-12-31T23:59:59Z")));
    assertSame(
        MagneticModel.wmm2025(), MagneticModel.inForceOn(Instant.parse("2025-01-01T00:00:00Z")));
    assertSame(
        MagneticModel.wmm2015v2(), MagneticModel.inForceOn(Instant.parse("2019-12-31T23:59:59Z")));
    assertThrows(DateTimeException.class, () -> MagneticModel.wmm2025().at(Instant.MIN));
  }
}
