package org.ferryglide.tide.height;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.OptionalDouble;
import org.ferryglide.nav.note.Note;
import org.junit.jupiter.api.Test;

class ChartedDepthTest {
  private static final ChartedDepth BAR = ChartedDepth.ofDryingHeight(1.6, "chart datum");
  private static final ChartedDepth SOUNDING = ChartedDepth.ofSounding(2.0, "chart datum");
  private static final TideCurve TIDE =
      TableCurve.cosine(Tables.ofHours("Skarra", 0, 1.0, 6, 5.0, 12, 1.0));

  @Test
  void aSoundingAddsToTheTideAndADryingHeightTakesFromIt() {
    assertEquals(5.5, SOUNDING.depthMetres(3.5), 1e-12);
    assertEquals(1.9, BAR.depthMetres(3.5), 1e-12);
    assertEquals(-0.6, BAR.depthMetres(1.0), 1e-12);
    assertEquals(Double.NaN, BAR.depthMetres(Double.NaN));
  }

  @Test
  void theTideNeededLeavesTheDepthAndTheMargin() {
    assertEquals(2.4, BAR.tideNeededMetres(0.3, 0.5), 1e-12);
    assertEquals(-1.2, SOUNDING.tideNeededMetres(0.3, 0.5), 1e-12);
  }

  @Test
  void theDepthAtATimeIsEmptyWhereTheTideIsUnknown() {
    assertEquals(1.4, BAR.depthMetresAt(TIDE, Tables.atHour(3)).getAsDouble(), 1e-9);
    assertEquals(OptionalDouble.empty(), BAR.depthMetresAt(TIDE, Tables.atHour(13)));
  }

  @Test
  void windowsOpenAndCloseAtTheDepthNeeded() {
    // 3 m is half tide: from three hours to nine
    TideWindows windows = BAR.windows(TIDE, 0.4, 1.0, Tables.atHour(0), Tables.atHour(12));
    assertEquals(1, windows.windows().size());
    TideWindow window = windows.windows().get(0);
    assertTrue(Duration.between(Tables.atHour(3), window.opens()).abs().toMillis() <= 1);
    assertTrue(Duration.between(Tables.atHour(9), window.closes()).abs().toMillis() <= 1);
    assertEquals(List.of("tide.cosine"), windows.notes().stream().map(Note::code).toList());
  }

  @Test
  void anotherDatumIsRefused() {
    ChartedDepth other = ChartedDepth.ofSounding(2.0, "mean sea level");
    assertEquals(
        "tide must be measured from the depth's datum, \"mean sea level\", but is measured from"
            + " \"chart datum\"",
        assertThrows(
                IllegalArgumentException.class, () -> other.depthMetresAt(TIDE, Tables.atHour(3)))
            .getMessage());
    assertThrows(
        IllegalArgumentException.class,
        () -> other.windows(TIDE, 0.3, 0.5, Tables.atHour(0), Tables.atHour(12)));
  }

  @Test
  void valuesThatAreNoneAreRefused() {
    assertEquals(
        "drying height must be a finite number of metres, at least 0, but was -1.0",
        assertThrows(IllegalArgumentException.class, () -> ChartedDepth.ofDryingHeight(-1.0, "x"))
            .getMessage());
    assertEquals(
        "margin must be a finite number of metres, at least 0, but was -0.1",
        assertThrows(IllegalArgumentException.class, () -> BAR.tideNeededMetres(0.3, -0.1))
            .getMessage());
    assertThrows(IllegalArgumentException.class, () -> BAR.tideNeededMetres(Double.NaN, 0.1));
    assertThrows(IllegalArgumentException.class, () -> ChartedDepth.ofSounding(1.0, ""));
    assertThrows(IllegalArgumentException.class, () -> ChartedDepth.ofSounding(Double.NaN, "x"));
  }
}
