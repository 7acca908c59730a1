package org.ferryglide.tide.harmonic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.note.Note;
import org.ferryglide.testing.Published;
import org.ferryglide.tide.height.TideEvent;
import org.ferryglide.tide.height.TideTable;
import org.junit.jupiter.api.Test;

class HarmonicTideTest {
  private static final double OFFICIAL_WORST_METRES = 0.0015;
  private static final String SEATTLE = "9447130";
  private static final String PENSACOLA = "8729840";
  private static final String BOSTON = "8443970";
  private static final String NAPLES = "8725110";
  private static final String ANCHORAGE = "9455920";

  private static HarmonicTide tide(String station) {
    return HarmonicTide.of(
        station,
        "mean lower low water",
        UsStations.constants(station).withMean(UsStations.mean(station, "above_mllw_m")),
        NodalConvention.MID_YEAR);
  }

  @Test
  void officialHighAndLowWatersAreMetToTheMinute() {
    List<Published.Row> official =
        Published.rows(
            HarmonicTideTest.class, "us-high-low-seattle-2015.csv", "utc", "kind", "height_m");
    List<TideEvent> waters =
        tide(SEATTLE)
            .extremes(Instant.parse("2015-01-01T00:00:00Z"), Instant.parse("2015-01-03T00:00:00Z"))
            .items();
    assertEquals(official.size(), waters.size());
    for (int i = 0; i < waters.size(); i++) {
      TideEvent water = waters.get(i);
      Published.Row row = official.get(i);
      Instant minute = water.time().plusSeconds(30).truncatedTo(ChronoUnit.MINUTES);
      assertEquals(OffsetDateTime.parse(row.text("utc")).toInstant(), minute);
      assertEquals(TideEvent.Kind.valueOf(row.text("kind")), water.kind());
      assertEquals(row.number("height_m"), water.height().metres(), OFFICIAL_WORST_METRES);
    }
  }

  @Test
  void aDiurnalTideHasFewerTurnsThanASemiDiurnalOne() {
    // counted on a one-minute grid by an independent program: 69 in March 2025, against 120
    Instant from = Instant.parse("2025-03-01T00:00:00Z");
    Instant to = Instant.parse("2025-04-01T00:00:00Z");
    assertEquals(69, tide(PENSACOLA).extremes(from, to).items().size());
    assertEquals(120, tide(SEATTLE).extremes(from, to).items().size(), 1);
  }

  @Test
  void everyTurnIsAnExtremeOfTheCurveToWithinASecond() {
    HarmonicTide tide = tide(PENSACOLA);
    List<TideEvent> waters =
        tide.extremes(Instant.parse("2025-03-01T00:00:00Z"), Instant.parse("2025-04-01T00:00:00Z"))
            .items();
    for (TideEvent water : waters) {
      double time = EpochSeconds.of(water.time());
      double before = tide.slopeMetresPerSecond(time - 1.0);
      double after = tide.slopeMetresPerSecond(time + 1.0);
      assertTrue(water.isHigh() ? before > 0 && after < 0 : before < 0 && after > 0);
    }
  }

  @Test
  void theExtremesBoundTheCurve() {
    HarmonicTide tide = tide(SEATTLE);
    Instant from = Instant.parse("2025-03-01T00:00:00Z");
    Instant to = from.plus(Duration.ofDays(14));
    List<TideEvent> waters = tide.extremes(from, to).items();
    for (int i = 1; i < waters.size(); i++) {
      double start = EpochSeconds.of(waters.get(i - 1).time());
      double end = EpochSeconds.of(waters.get(i).time());
      double one = waters.get(i - 1).height().metres();
      double other = waters.get(i).height().metres();
      for (double t = start; t < end; t += 60.0) {
        double height = tide.heightMetres(t);
        assertTrue(height >= Math.min(one, other) - 1e-9 && height <= Math.max(one, other) + 1e-9);
      }
    }
  }

  @Test
  void theTableIsThatOfTheExtremes() {
    HarmonicTide tide = tide(SEATTLE);
    Instant from = Instant.parse("2026-06-01T00:00:00Z");
    TideTable table = tide.table(from, from.plus(Duration.ofDays(7)));
    assertEquals(tide.extremes(from, from.plus(Duration.ofDays(7))).items(), table.events());
    assertEquals("mean lower low water", table.datum());
  }

  /** The step made this throw, since it brought a low water above the high water beside it. */
  @Test
  void aTableMayRunOverNewYear() {
    Instant from = Instant.parse("2052-12-01T00:00:00Z");
    Instant to = Instant.parse("2053-02-01T00:00:00Z");
    TideTable table = tide(BOSTON).table(from, to);
    assertEquals(238, table.events().size(), 2); // 62 days, 3.864 waters a day of the mean moon
  }

  /** Waters that come twice or upside down around midnight are as seldom as a year's own. */
  @Test
  void noNewYearBringsAPhantom() {
    for (String station : List.of(BOSTON, SEATTLE, PENSACOLA, ANCHORAGE, NAPLES)) {
      HarmonicTide tide = tide(station);
      for (int year = 1990; year < 2090; year++) {
        Instant newYear = Instant.parse(year + "-01-01T00:00:00Z");
        TideTable table =
            tide.table(newYear.minus(Duration.ofDays(3)), newYear.plus(Duration.ofDays(3)));
        TideEvent before = table.lastUpTo(newYear).orElseThrow();
        TideEvent after = table.firstAfter(newYear).orElseThrow();
        assertTrue(
            Duration.between(before.time(), after.time()).compareTo(Duration.ofMinutes(20)) > 0,
            () -> station + ": " + before + " and " + after);
      }
    }
  }

  @Test
  void theStepAtNewYearIsNoted() {
    HarmonicTide tide = tide(ANCHORAGE);
    List<Note> inSummer = tide.notesAt(Instant.parse("2025-07-01T00:00:00Z"));
    assertEquals(1, inSummer.size());
    assertEquals("harmonic.tide-only", inSummer.get(0).code());
    for (String near : List.of("2024-12-31T15:00:00Z", "2025-01-01T15:00:00Z")) {
      List<Note> notes = tide.notesAt(Instant.parse(near));
      assertEquals(2, notes.size());
      assertEquals("harmonic.new-year-step", notes.get(1).code());
    }
    assertTrue(tide.notesAt(Instant.parse("1799-01-01T00:00:00Z")).isEmpty());
  }

  @Test
  void aTimeWithoutDataHasNoHeight() {
    assertEquals(Optional.empty(), tide(SEATTLE).heightAt(Instant.parse("2300-01-01T00:00:00Z")));
  }

  @Test
  void aTideWithoutAPlaceIsRefused() {
    HarmonicConstants constants = UsStations.constants(SEATTLE);
    assertEquals(
        "place and datum of a tide must not be empty",
        assertThrows(
                IllegalArgumentException.class,
                () -> HarmonicTide.of(" ", "chart datum", constants, NodalConvention.MID_YEAR))
            .getMessage());
  }
}
