package org.ferryglide.nav.water;

import static org.ferryglide.nav.measure.Distance.ofMetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Instant;
import java.util.Optional;
import org.ferryglide.nav.basics.EpochSeconds;
import org.junit.jupiter.api.Test;

class ChartedDepthTest {
  private static final ChartedDepth BAR = ChartedDepth.ofDryingHeight(ofMetres(1.6), "chart datum");
  private static final ChartedDepth SOUNDING =
      ChartedDepth.ofSounding(ofMetres(2.0), "chart datum");
  private static final Instant START = Instant.parse("2026-06-01T00:00:00Z");

  /** Three metres for twelve hours. */
  private static final class Still implements WaterLevel {
    private static final long serialVersionUID = 1L;

    @Override
    public double heightMetres(double epochSeconds) {
      double hours = (epochSeconds - EpochSeconds.of(START)) / 3600.0;
      return hours >= 0.0 && hours <= 12.0 ? 3.0 : Double.NaN;
    }

    @Override
    public String datum() {
      return "chart datum";
    }
  }

  private static final WaterLevel TIDE = new Still();

  @Test
  void aSoundingAddsToTheTideAndADryingHeightTakesFromIt() {
    assertEquals(5.5, SOUNDING.depth(ofMetres(3.5)).metres(), 1e-12);
    assertEquals(1.9, BAR.depth(ofMetres(3.5)).metres(), 1e-12);
    assertEquals(-0.6, BAR.depth(ofMetres(1.0)).metres(), 1e-12);
  }

  @Test
  void theTideNeededLeavesTheDepthAndTheMargin() {
    assertEquals(2.4, BAR.tideNeeded(ofMetres(0.3), ofMetres(0.5)).metres(), 1e-12);
    assertEquals(-1.2, SOUNDING.tideNeeded(ofMetres(0.3), ofMetres(0.5)).metres(), 1e-12);
  }

  @Test
  void theDepthAtATimeIsEmptyWhereTheTideIsUnknown() {
    assertEquals(1.4, BAR.depthAt(TIDE, START.plusSeconds(10_800)).get().metres(), 1e-9);
    assertEquals(Optional.empty(), BAR.depthAt(TIDE, START.plusSeconds(46_800)));
  }

  @Test
  void anotherDatumIsRefused() {
    ChartedDepth other = ChartedDepth.ofSounding(ofMetres(2.0), "mean sea level");
    assertEquals(
        "tide must be measured from the depth's datum, \"mean sea level\", but is measured from"
            + " \"chart datum\"",
        assertThrows(
                IllegalArgumentException.class,
                () -> other.depthAt(TIDE, START.plusSeconds(10_800)))
            .getMessage());
    assertThrows(IllegalArgumentException.class, () -> other.requireSameDatum(TIDE));
  }

  @Test
  void valuesThatAreNoneAreRefused() {
    assertEquals(
        "drying height must be a finite number of metres, at least 0, but was -1.0",
        assertThrows(
                IllegalArgumentException.class,
                () -> ChartedDepth.ofDryingHeight(ofMetres(-1.0), "x"))
            .getMessage());
    assertEquals(
        "margin must be a finite number of metres, at least 0, but was -0.1",
        assertThrows(
                IllegalArgumentException.class, () -> BAR.tideNeeded(ofMetres(0.3), ofMetres(-0.1)))
            .getMessage());
    assertThrows(
        IllegalArgumentException.class, () -> BAR.tideNeeded(ofMetres(-0.3), ofMetres(0.1)));
    assertThrows(IllegalArgumentException.class, () -> ChartedDepth.ofSounding(ofMetres(1.0), ""));
    assertThrows(
        IllegalArgumentException.class, () -> ChartedDepth.ofSounding(ofMetres(-1.0), "x"));
  }
}
