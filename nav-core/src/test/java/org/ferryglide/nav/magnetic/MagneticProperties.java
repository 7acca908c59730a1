package org.ferryglide.nav.magnetic;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.StringReader;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.ferryglide.nav.bearing.MagneticBearing;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.position.Position;
import org.ferryglide.testing.Seeds;

class MagneticProperties {
  /** A few hundred roundings of sums near 60 000 nT. */
  private static final double SUM_NANOTESLA = 2e-9;

  private static double[] elements(MagneticSnapshot snapshot, double lat, double lon, double h) {
    double[] row = new double[MagneticSnapshot.ELEMENTS_WITH_CHANGE];
    snapshot.elementsWithChange(lat, lon, h, row, 0);
    return row;
  }

  @Property(seed = Seeds.SEED, tries = 300)
  void theFastSumsAreThePlainOnes(
      @ForAll("latitudes") double latitude,
      @ForAll("longitudes") double longitude,
      @ForAll @DoubleRange(min = -5000, max = 100_000) @Scale(3) double height)
      throws Exception {
    CoefficientTable table = new CoefficientTable(12);
    CoefficientTable changes = new CoefficientTable(12);
    TestModels.read("wmm2025.txt", table, changes);
    double[] plain =
        SlowField.components(12, n -> table.g[n], n -> table.h[n], latitude, longitude, height);
    double[] fast =
        elements(MagneticModel.wmm2025().atDecimalYear(2025.0), latitude, longitude, height);
    double atPoles = Math.max(1.0, 0.01 / Math.cos(Math.toRadians(latitude))); // plain ones divide
    for (int i = 0; i < 3; i++) {
      assertEquals(plain[i], fast[i], SUM_NANOTESLA * atPoles);
    }
  }

  @Property(seed = Seeds.SEED, tries = 100)
  void changesAreTheDifferencesOfElements(
      @ForAll("latitudes") double latitude, @ForAll("longitudes") double longitude) {
    double step = 1e-3;
    double[] row = elements(MagneticModel.wmm2025().atDecimalYear(2027.0), latitude, longitude, 0);
    double[] before =
        elements(MagneticModel.wmm2025().atDecimalYear(2027.0 - step), latitude, longitude, 0);
    double[] after =
        elements(MagneticModel.wmm2025().atDecimalYear(2027.0 + step), latitude, longitude, 0);
    for (int i = 0; i < 7; i++) {
      double difference = after[i] - before[i];
      if (i == 6) {
        difference = Math.IEEEremainder(difference, 360.0);
      }
      // third derivatives grow as the inverse cube of the horizontal field
      double curved = 1.0 + Math.pow(3000.0 / row[3], 3);
      assertEquals(row[7 + i], difference / (2.0 * step), 1e-5 * curved);
    }
  }

  @Property(seed = Seeds.SEED, tries = 100)
  void aNewDateEachTimeIsTheSnapshotOfThatDate(
      @ForAll("latitudes") double latitude,
      @ForAll("longitudes") double longitude,
      @ForAll @DoubleRange(min = 2010, max = 2040) @Scale(4) double year) {
    double[] row = new double[14];
    MagneticModel.wmm2025().elementsWithChange(year, latitude, longitude, 0, row, 0);
    double[] snapshot =
        elements(MagneticModel.wmm2025().atDecimalYear(year), latitude, longitude, 0);
    assertArrayEquals(Arrays.copyOf(snapshot, 5), Arrays.copyOf(row, 5), 10 * SUM_NANOTESLA);
    MagneticPlace place = MagneticModel.wmm2025().place(Position.ofDegrees(latitude, longitude));
    assertEquals(
        0.0,
        Math.IEEEremainder(place.declinationDegrees(year) - snapshot[6], 360.0),
        1e-9 * (1.0 + 3000.0 / snapshot[3]));
  }

  /** At a pole the field is one vector, whichever meridian it is referred to. */
  @Property(seed = Seeds.SEED, tries = 100)
  void bothPolesAreOrdinaryPlaces(@ForAll("longitudes") double longitude, @ForAll boolean north) {
    MagneticSnapshot snapshot = MagneticModel.wmm2025().atDecimalYear(2026.0);
    double latitude = north ? 90.0 : -90.0;
    double[] there = elements(snapshot, latitude, longitude, 0);
    double[] greenwich = elements(snapshot, latitude, 0.0, 0);
    double[] beside = elements(snapshot, latitude - Math.copySign(1e-7, latitude), longitude, 0);
    double turn = Math.toRadians(north ? longitude : -longitude);
    assertEquals(
        greenwich[0] * Math.cos(turn) - greenwich[1] * Math.sin(turn), there[0], SUM_NANOTESLA);
    assertEquals(
        greenwich[0] * Math.sin(turn) + greenwich[1] * Math.cos(turn), there[1], SUM_NANOTESLA);
    assertEquals(greenwich[2], there[2], SUM_NANOTESLA);
    for (int i = 0; i < 14; i++) {
      assertEquals(there[i], beside[i], 1e-4); // 1e-7 degrees are 11 mm; the field barely differs
    }
  }

  @Property(seed = Seeds.SEED, tries = 100)
  void longitudeIsACircle(
      @ForAll("latitudes") double latitude, @ForAll("longitudes") double longitude) {
    MagneticSnapshot snapshot = MagneticModel.wmm2020().atDecimalYear(2021.0);
    double[] here = elements(snapshot, latitude, longitude, 0);
    double[] round = elements(snapshot, latitude, longitude + 360.0, 0);
    assertArrayEquals(Arrays.copyOf(here, 5), Arrays.copyOf(round, 5), 1e-8);
  }

  @Property(seed = Seeds.SEED, tries = 100)
  void elementsBelongTogether(
      @ForAll("latitudes") double latitude, @ForAll("longitudes") double longitude) {
    double[] row = elements(MagneticModel.wmm2025().atDecimalYear(2026.0), latitude, longitude, 0);
    double h = Math.hypot(row[0], row[1]);
    assertEquals(h, row[3], 1e-10);
    assertEquals(Math.hypot(h, row[2]), row[4], 1e-10);
    assertEquals(row[2], row[4] * Math.sin(Math.toRadians(row[5])), 1e-8);
    assertEquals(row[1], h * Math.sin(Math.toRadians(row[6])), 1e-8);
  }

  @Property(seed = Seeds.SEED, tries = 3)
  void oneSnapshotServesManyThreads(@ForAll("latitudes") double latitude) {
    MagneticSnapshot snapshot = MagneticModel.wmm2025().at(LocalDate.of(2026, 6, 1));
    double[] alone =
        IntStream.range(-180, 180)
            .mapToDouble(lon -> elements(snapshot, latitude, lon, 0)[6])
            .toArray();
    double[] together =
        IntStream.range(-180, 180)
            .parallel()
            .mapToDouble(lon -> elements(snapshot, latitude, lon, 0)[6])
            .toArray();
    assertArrayEquals(alone, together);
  }

  @Property(seed = Seeds.SEED, tries = 50)
  void aModelOfHigherDegreeWithZerosIsTheSameModel(
      @ForAll("latitudes") double latitude, @ForAll("longitudes") double longitude)
      throws Exception {
    StringBuilder cof = new StringBuilder(TestModels.cof("wmm2025.txt"));
    StringBuilder zeros = new StringBuilder();
    for (int m = 0; m <= 13; m++) {
      zeros.append("13 ").append(m).append(" 0 0 0 0\n");
    }
    cof.insert(cof.indexOf("\n999") + 1, zeros);
    MagneticModel higher = MagneticModel.readCof("13.COF", new StringReader(cof.toString()));
    assertEquals(13, higher.degree());
    assertArrayEquals(
        elements(MagneticModel.wmm2025().atDecimalYear(2026.0), latitude, longitude, 0),
        elements(higher.atDecimalYear(2026.0), latitude, longitude, 0),
        1e-9);
  }

  @Property(seed = Seeds.SEED, tries = 200)
  void aRoseOfAgeZeroIsWhatIsPrinted(
      @ForAll @DoubleRange(min = -30, max = 30) @Scale(6) double variation,
      @ForAll @DoubleRange(min = -20, max = 20) @Scale(3) double change) {
    CompassRose rose =
        new CompassRose(
            Variation.ofDegreesEast(variation), 2019, AnnualChange.ofMinutesEast(change));
    assertEquals(rose.variation(), rose.variationInYear(2019));
    assertEquals(rose.variation(), rose.variationAt(LocalDate.of(2019, 1, 1)));
    assertEquals(rose, CompassRose.parse(rose.toString()));
    assertEquals(variation + change / 10.0, rose.variationInYear(2025).degreesEast(), 1e-12);
  }

  /** The inner ring already leans by the printed variation: only what came since is applied. */
  @Property(seed = Seeds.SEED, tries = 200)
  void theInnerRingNeverHasItsVariationAppliedTwice(
      @ForAll @DoubleRange(min = -30, max = 30) @Scale(6) double variation,
      @ForAll @DoubleRange(min = -20, max = 20) @Scale(3) double change,
      @ForAll @DoubleRange(min = 0, max = 359.999) @Scale(6) double course) {
    CompassRose rose =
        new CompassRose(
            Variation.ofDegreesEast(variation), 2019, AnnualChange.ofMinutesEast(change));
    LocalDate date = LocalDate.of(2026, 6, 1);
    TrueBearing outer = TrueBearing.ofDegrees(course);
    double readOnInnerRing = outer.toMagnetic(rose.variation()).degrees();
    MagneticBearing inner = rose.innerRing(readOnInnerRing, date);
    assertEquals(0.0, inner.turnDegreesTo(outer.toMagnetic(rose.variationAt(date))), 1e-9);
    assertEquals(
        readOnInnerRing, rose.innerRing(readOnInnerRing, LocalDate.of(2019, 1, 1)).degrees());
  }

  @Provide
  Arbitrary<Double> latitudes() {
    return Arbitraries.oneOf(
        Arbitraries.of(0.0, -0.0, 89.999, -89.999),
        Arbitraries.doubles().between(-89.9, 89.9).ofScale(9));
  }

  @Provide
  Arbitrary<Double> longitudes() {
    return Arbitraries.oneOf(
        Arbitraries.of(0.0, -0.0, -180.0, 90.0, -90.0),
        Arbitraries.doubles().between(-180.0, 179.999).ofScale(9));
  }
}
