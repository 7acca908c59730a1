package org.ferryglide.tide.height;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.tide.height.TideEvent.Kind;
import org.junit.jupiter.api.Test;

class TideExtremesTest {
  private static final double M2 = 28.9841042;
  private static final double DAY = 86_400.0;

  /** What the search promises. */
  private static final double ONE_SECOND = 1.0;

  @Test
  void aSingleCosineTurnsEveryHalfPeriod() {
    HarmonicSum curve =
        HarmonicSum.endless(new double[] {2.0}, new double[] {M2}, new double[] {0});
    double half = 180.0 / M2 * 3600.0;
    List<TideEvent> waters = TideExtremes.between(curve, 1.0, 30 * DAY);
    assertEquals((int) (30 * DAY / half), waters.size());
    for (int i = 0; i < waters.size(); i++) {
      TideEvent water = waters.get(i);
      assertEquals((i + 1) * half, EpochSeconds.of(water.time()), 1e-3); // a secant does better
      assertEquals(i % 2 == 0 ? Kind.LOW : Kind.HIGH, water.kind());
      assertEquals(i % 2 == 0 ? -2.0 : 2.0, water.height().metres(), 1e-12);
    }
  }

  @Test
  void aTurnAtTheVeryStartOrEndIsNotGiven() {
    HarmonicSum curve =
        HarmonicSum.endless(new double[] {2.0}, new double[] {M2}, new double[] {0});
    double half = 180.0 / M2 * 3600.0;
    assertEquals(List.of(), TideExtremes.between(curve, 0.0, half));
    assertEquals(List.of(), TideExtremes.between(curve, 5.0, 5.0));
  }

  @Test
  void aDoubleHighWaterWithADipOfAMillimetreIsFoundWhole() {
    // cos x - a cos 2x has a flat top at a = 1/4; with more it dips by 2 (a - 1/4)² / a
    double beyond = 0.016;
    double fourth = 0.25 + beyond;
    HarmonicSum curve =
        HarmonicSum.endless(
            new double[] {1.0, fourth}, new double[] {M2, 2 * M2}, new double[] {0, 180});
    double period = 360.0 / M2 * 3600.0;
    List<TideEvent> waters = TideExtremes.between(curve, -0.5 * period + 1, 0.5 * period - 1);
    assertEquals(
        List.of(Kind.HIGH, Kind.LOW, Kind.HIGH), waters.stream().map(TideEvent::kind).toList());
    double dip = waters.get(0).height().metres() - waters.get(1).height().metres();
    assertEquals(2.0 * beyond * beyond / fourth, dip, 1e-6);
    assertTrue(dip < 0.002, "dip " + dip);
    double half = Math.acos(1.0 / (4.0 * fourth)) / Math.toRadians(M2) * 3600.0;
    assertEquals(-half, EpochSeconds.of(waters.get(0).time()), ONE_SECOND);
    assertEquals(0.0, EpochSeconds.of(waters.get(1).time()), ONE_SECOND);
    assertEquals(half, EpochSeconds.of(waters.get(2).time()), ONE_SECOND);
  }

  @Test
  void aStandWithoutADipIsOneTurn() {
    // at a = 1/4 slope and curvature are both nought at the top: a stand, and one turn
    HarmonicSum curve =
        HarmonicSum.endless(
            new double[] {1.0, 0.25}, new double[] {M2, 2 * M2}, new double[] {0, 180});
    double period = 360.0 / M2 * 3600.0;
    List<TideEvent> waters = TideExtremes.between(curve, -0.5 * period + 1, 0.5 * period - 1);
    assertEquals(1, waters.size());
    assertEquals(Kind.HIGH, waters.get(0).kind());
    // so flat that its slope is below rounding for seconds: its height is what can be told
    assertEquals(0.75, waters.get(0).height().metres(), 1e-9);
  }

  @Test
  void aFlatStandGivesItsMiddle() {
    NormalisedCurve standing =
        NormalisedCurve.of(
            new double[] {0, 0.75, 1}, new double[] {0, 1, 1},
            new double[] {0, 0.25, 1}, new double[] {1, 1, 0});
    TideTable table = Tables.ofHours("Skarra", 0, 0.0, 6, 4.0, 12, 0.0);
    TideCurve curve = TableCurve.normalised(table, standing);
    List<TideEvent> waters = TideExtremes.between(curve, curve.startSeconds(), curve.endSeconds());
    assertEquals(1, waters.size());
    assertEquals(table.events().get(1), waters.get(0));
  }

  @Test
  void aLevelSeaHasNoWaters() {
    TideTable table = Tables.ofHours("Skarra", 0, 1.0, 6, 1.0, 12, 1.0, 18, 1.0);
    for (TideCurve curve : Tables.curvesThrough(table)) {
      assertEquals(
          List.of(), TideExtremes.between(curve, curve.startSeconds(), curve.endSeconds()));
    }
  }

  @Test
  void theSearchKeepsToTheDataOfTheCurve() {
    HarmonicSum curve =
        new HarmonicSum(
            new double[] {2.0}, new double[] {M2}, new double[] {0}, 2.0 * DAY, 4.0 * DAY);
    List<TideEvent> waters = TideExtremes.between(curve, 0.0, 30 * DAY);
    assertEquals(8, waters.size()); // half periods 8 to 15, from 49.7 to 93.2 hours
    assertEquals(List.of(), TideExtremes.between(curve, 0.0, DAY));
    assertEquals(List.of(), TideExtremes.between(curve, 5.0 * DAY, 6.0 * DAY));
  }

  @Test
  void aJumpAtABreakPointIsATurnWhenTheTideTurnsThere() {
    TideCurve sawtooth = new Sawtooth();
    List<TideEvent> waters = TideExtremes.between(sawtooth, -10_000.0, 10_000.0);
    assertEquals(1, waters.size());
    assertEquals(Instant.EPOCH, waters.get(0).time());
    assertEquals(Kind.HIGH, waters.get(0).kind());
  }

  /** Rises by a millimetre a second until 1970, then falls, half a metre higher. */
  private static final class Sawtooth implements TideCurve {
    private static final long serialVersionUID = 1L;

    @Override
    public double heightMetres(double t) {
      return t < 0 ? 1e-3 * t : 0.5 - 1e-3 * t;
    }

    @Override
    public double slopeMetresPerSecond(double t) {
      return t < 0 ? 1e-3 : -1e-3;
    }

    @Override
    public double nextBreakAfter(double t) {
      return t < 0 ? 0.0 : Double.POSITIVE_INFINITY;
    }

    @Override
    public double greatestSlopeChange(double from, double to) {
      return 0.0;
    }

    @Override
    public double startSeconds() {
      return Double.NEGATIVE_INFINITY;
    }

    @Override
    public double endSeconds() {
      return Double.POSITIVE_INFINITY;
    }

    @Override
    public String datum() {
      return "mean level";
    }

    @Override
    public List<org.ferryglide.nav.note.Note> notesAt(Instant instant) {
      return List.of();
    }
  }

  @Test
  void aJumpIsPassedByTheLevelSearchToo() {
    TideCurve sawtooth = new Sawtooth();
    Instant from = Instant.EPOCH.minusSeconds(1000);
    Instant to = Instant.EPOCH.plusSeconds(1000);
    List<TideCrossing> crossings = Tables.crossings(sawtooth, 0.25, from, to).items();
    assertEquals(2, crossings.size());
    assertEquals(new TideCrossing(Instant.EPOCH, true), crossings.get(0));
    assertEquals(250.0, EpochSeconds.of(crossings.get(1).time()), 1e-3);
    assertEquals(false, crossings.get(1).rising());
  }

  @Test
  void aSearchThatRunsBackwardsIsRefused() {
    HarmonicSum curve =
        HarmonicSum.endless(new double[] {2.0}, new double[] {M2}, new double[] {0});
    assertEquals(
        "end of a search must not be before its start, but start was 5.0 and end 4.0 seconds since"
            + " 1970",
        assertThrows(IllegalArgumentException.class, () -> TideExtremes.between(curve, 5.0, 4.0))
            .getMessage());
    assertThrows(
        IllegalArgumentException.class, () -> TideExtremes.between(curve, Double.NaN, 4.0));
  }

  @Test
  void theNextWaterIsFoundAndNoneBeyondTheData() {
    HarmonicSum curve =
        new HarmonicSum(new double[] {2.0}, new double[] {M2}, new double[] {0}, 0.0, 2.0 * DAY);
    Instant noon = Instant.EPOCH.plus(Duration.ofHours(12));
    assertEquals(
        360.0 / M2 * 3600.0,
        EpochSeconds.of(curve.nextWater(noon, Kind.HIGH).orElseThrow().time()),
        ONE_SECOND);
    assertEquals(
        540.0 / M2 * 3600.0,
        EpochSeconds.of(curve.nextWater(noon, Kind.LOW).orElseThrow().time()),
        ONE_SECOND);
    assertTrue(curve.nextWater(Instant.EPOCH.plus(Duration.ofDays(3)), Kind.HIGH).isEmpty());
  }

  @Test
  void theNextWaterOfASlowTideIsFoundDaysAhead() {
    // a fortnightly tide, as in a lake behind a barrage
    HarmonicSum curve =
        HarmonicSum.endless(new double[] {0.1}, new double[] {1.0158958}, new double[] {0});
    assertEquals(
        360.0 / 1.0158958 * 3600.0,
        EpochSeconds.of(curve.nextWater(Instant.EPOCH, Kind.HIGH).orElseThrow().time()),
        ONE_SECOND);
  }
}
