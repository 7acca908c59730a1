package org.ferryglide.tide.harmonic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.tide.height.MeanRanges;
import org.ferryglide.tide.height.SpringNeap;
import org.ferryglide.tide.height.TideTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TideCharacterTest {
  private static TideCharacter of(String station) {
    return TideCharacter.of(UsStations.constants(station));
  }

  private static double ageHours(String station) {
    return of(station).ageOfTide().orElseThrow().toMinutes() / 60.0;
  }

  @Test
  void agesOfTideAreThoseOfAnIndependentCalculation() {
    assertEquals(39.8, ageHours("8410140"), 0.06); // Eastport
    assertEquals(36.4, ageHours("8443970"), 0.06); // Boston
    assertEquals(25.6, ageHours("9447130"), 0.06); // Seattle
    assertEquals(25.5, ageHours("8665530"), 0.06); // Charleston
    assertEquals(-4.6, ageHours("1612340"), 0.06); // Honolulu: springs before the moon
  }

  @Test
  void theFormNumberTellsTheKind() {
    assertEquals(TideCharacter.Kind.SEMI_DIURNAL, of("8443970").kind()); // Boston
    assertEquals(TideCharacter.Kind.MIXED_MAINLY_SEMI_DIURNAL, of("9447130").kind()); // Seattle
    assertEquals(TideCharacter.Kind.DIURNAL, of("8729840").kind()); // Pensacola
    assertEquals(1.0, of("1612340").formNumber(), 0.02); // Honolulu
  }

  @ParameterizedTest
  @CsvSource({
    "0.24, SEMI_DIURNAL",
    "0.26, MIXED_MAINLY_SEMI_DIURNAL",
    "1.49, MIXED_MAINLY_SEMI_DIURNAL",
    "1.51, MIXED_MAINLY_DIURNAL",
    "2.99, MIXED_MAINLY_DIURNAL",
    "3.01, DIURNAL"
  })
  void everyLimitOfTheFormNumberCounts(double formNumber, TideCharacter.Kind kind) {
    double lag = 10.0;
    TideCharacter character =
        TideCharacter.of(
            HarmonicConstants.of(
                NodalScheme.schureman(),
                0.0,
                List.of(
                    new HarmonicConstant(Constituents.M2, 0.7, lag),
                    new HarmonicConstant(Constituents.S2, 0.3, lag),
                    new HarmonicConstant(Constituents.K1, 0.6 * formNumber, lag),
                    new HarmonicConstant(Constituents.O1, 0.4 * formNumber, lag))));
    assertEquals(kind, character.kind());
  }

  @Test
  void onlyASemiDiurnalTideHasNoCaution() {
    assertTrue(of("8443970").notes().isEmpty());
    assertEquals("tide.not-semi-diurnal", of("8729840").notes().get(0).code());
  }

  @Test
  void rangesAreThoseOfTheTwoMainConstituents() {
    TideCharacter character =
        TideCharacter.of(
            HarmonicConstants.of(
                NodalScheme.schureman(),
                0.0,
                List.of(
                    new HarmonicConstant(Constituents.M2, 1.5, 350.0),
                    new HarmonicConstant(Constituents.S2, 0.5, 10.0))));
    assertEquals(
        Optional.of(new MeanRanges(Distance.ofMetres(4.0), Distance.ofMetres(2.0))),
        character.meanRanges());
    assertEquals(0.0, character.formNumber());
    // 20° at 1.0158958° an hour, across north
    assertEquals(Duration.ofMinutes(1181), character.ageOfTide().orElseThrow());
  }

  @Test
  void springsByTheMoonAndThisAgeAreThoseOfThePredictedRanges() {
    Instant from = Instant.parse("2016-01-01T00:00:00Z");
    Instant to = Instant.parse("2018-01-01T00:00:00Z");
    int inside = 0;
    int all = 0;
    // Eastport, Boston, New York, Fripps Inlet, Lake Worth
    for (String station : List.of("8410140", "8443970", "8518750", "8668498", "8722670")) {
      HarmonicConstants constants = UsStations.constants(station);
      TideTable table =
          HarmonicTide.of(station, "mean", constants, NodalConvention.AT_INSTANT).table(from, to);
      Duration age = TideCharacter.of(constants).ageOfTide().orElseThrow();
      List<SpringNeap> byTheMoon =
          SpringNeap.fromMoon(age, from.minusSeconds(864000), to.plusSeconds(864000)).items();
      for (SpringNeap turn : SpringNeap.of(table)) {
        all++;
        inside +=
            byTheMoon.stream()
                    .anyMatch(
                        rule ->
                            rule.kind() == turn.kind()
                                && Duration.between(rule.time(), turn.time())
                                        .abs()
                                        .compareTo(rule.within())
                                    <= 0)
                ? 1
                : 0;
      }
    }
    assertTrue(all > 400 && inside > 0.9 * all, inside + " of " + all);
  }

  @Test
  void aTideOfTheDayAloneHasNoAge() {
    TideCharacter character =
        TideCharacter.of(
            HarmonicConstants.of(
                NodalScheme.schureman(),
                0.0,
                List.of(new HarmonicConstant(Constituents.K1, 0.3, 1.0))));
    assertEquals(Optional.empty(), character.ageOfTide());
    assertEquals(Optional.empty(), character.meanRanges());
    assertEquals(TideCharacter.Kind.DIURNAL, character.kind());
    assertEquals(Double.POSITIVE_INFINITY, character.formNumber());
  }

  @Test
  void constantsWithoutTheMainFourAreRefused() {
    HarmonicConstants bare = HarmonicConstants.of(NodalScheme.schureman(), 0.0, List.of());
    assertEquals(
        "constants must have one of M2, S2, K1 and O1 to tell the character of a tide",
        assertThrows(IllegalArgumentException.class, () -> TideCharacter.of(bare)).getMessage());
  }
}
