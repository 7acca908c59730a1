package org.ferryglide.tide.height;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.water.Found;
import org.ferryglide.nav.water.Window;
import org.ferryglide.testing.Seeds;

class TableCurveProperties {
  /** Roundings of heights up to 16 m, and of times of 1.8e9 s against slopes of 0.02 m/s. */
  private static final double ROUNDING_METRES = 1e-8;

  @Provide
  Arbitrary<TideTable> tables() {
    return Tables.any();
  }

  @Provide
  Arbitrary<Double> shares() {
    return Arbitraries.oneOf(
        Arbitraries.of(0.0, 0.5, 1.0), Arbitraries.doubles().between(0.0, 1.0).ofScale(9));
  }

  private static double at(TideTable table, double share) {
    double start = table.seconds(0);
    return start + share * (table.seconds(table.segments()) - start);
  }

  @Property(seed = Seeds.SEED, tries = 200)
  void everyCurvePassesThroughTheWaters(@ForAll("tables") TideTable table) {
    for (TideCurve curve : Tables.curvesThrough(table)) {
      for (TideEvent water : table.events()) {
        assertEquals(
            water.height().metres(),
            curve.heightAt(water.time()).get().metres(),
            ROUNDING_METRES,
            curve::toString);
      }
    }
  }

  @Property(seed = Seeds.SEED, tries = 500)
  void noCurveTurnsBetweenTwoWaters(
      @ForAll("tables") TideTable table, @ForAll("shares") double a, @ForAll("shares") double b) {
    double first = at(table, Math.min(a, b));
    int segment = table.segmentAt(first);
    double second = Math.min(at(table, Math.max(a, b)), table.seconds(segment + 1));
    double sign = table.isHigh(segment + 1) ? 1.0 : -1.0;
    for (TideCurve curve : Tables.curvesThrough(table)) {
      double change = curve.heightMetres(second) - curve.heightMetres(first);
      assertTrue(sign * change >= -ROUNDING_METRES, curve + ": " + change);
    }
  }

  @Property(seed = Seeds.SEED, tries = 300)
  void slopesAreThoseOfTheHeights(
      @ForAll("tables") TideTable table, @ForAll("shares") double share) {
    double step = 1.0;
    double seconds = at(table, share);
    for (TideCurve curve : Tables.curvesThrough(table)) {
      if (seconds - step < curve.startSeconds()
          || seconds + step > curve.endSeconds()
          || curve.nextBreakAfter(seconds - step) <= seconds + step) {
        continue;
      }
      double measured =
          (curve.heightMetres(seconds + step) - curve.heightMetres(seconds - step)) / (2 * step);
      // a third derivative of 9 m in 20 minutes leaves up to 1e-6 m/s in two seconds
      assertEquals(measured, curve.slopeMetresPerSecond(seconds), 1e-6, curve::toString);
    }
  }

  @Property(seed = Seeds.SEED, tries = 300)
  void theSlopeNeverChangesFasterThanTheCurveSays(
      @ForAll("tables") TideTable table, @ForAll("shares") double a, @ForAll("shares") double b) {
    double first = at(table, Math.min(a, b));
    for (TideCurve curve : Tables.curvesThrough(table)) {
      double second = Math.min(at(table, Math.max(a, b)), curve.nextBreakAfter(first) - 1e-3);
      if (second <= first) {
        continue;
      }
      double change = curve.slopeMetresPerSecond(second) - curve.slopeMetresPerSecond(first);
      double most = curve.greatestSlopeChange(first, second) * (second - first);
      assertTrue(Math.abs(change) <= most * (1 + 1e-9) + 1e-9, curve + ": " + change);
    }
  }

  @Property(seed = Seeds.SEED, tries = 100)
  void theSearchFindsTheWatersOfTheTableAndNoOthers(@ForAll("tables") TideTable table) {
    List<TideEvent> inner = table.events().subList(1, table.events().size() - 1);
    for (TideCurve curve : Tables.curvesThrough(table)) {
      List<TideEvent> found = TideExtremes.between(curve, curve.startSeconds(), curve.endSeconds());
      assertEquals(inner.size(), found.size(), curve::toString);
      for (int i = 0; i < found.size(); i++) {
        assertEquals(inner.get(i).kind(), found.get(i).kind());
        // twelfths by the hour stand before a late water; the middle of the stand is given
        Duration apart = Duration.between(inner.get(i).time(), found.get(i).time()).abs();
        boolean stands = curve.toString().contains("by the clock");
        assertTrue(stands || apart.toMillis() <= 1, curve + " " + apart);
        assertEquals(
            inner.get(i).height().metres(), found.get(i).height().metres(), ROUNDING_METRES);
      }
    }
  }

  @Property(seed = Seeds.SEED, tries = 100)
  void theWatersBoundTheCurve(@ForAll("tables") TideTable table, @ForAll("shares") double share) {
    double height = TableCurve.smooth(table).heightMetres(at(table, share));
    double highest =
        table.events().stream().mapToDouble(water -> water.height().metres()).max().orElse(0);
    double lowest =
        table.events().stream().mapToDouble(water -> water.height().metres()).min().orElse(0);
    assertTrue(height <= highest + ROUNDING_METRES && height >= lowest - ROUNDING_METRES);
  }

  @Property(seed = Seeds.SEED, tries = 200)
  void aLaterTableIsTheSameTideLater(
      @ForAll("tables") TideTable table, @ForAll("shares") double share) {
    Duration later = Duration.ofMinutes(12_345);
    List<TideEvent> moved = new ArrayList<>();
    for (TideEvent event : table.events()) {
      moved.add(new TideEvent(event.time().plus(later), event.height(), event.kind()));
    }
    TideTable movedTable = TideTable.of("Skarra", "chart datum", moved);
    double seconds = at(table, share);
    for (int i = 0; i < 4; i++) {
      assertEquals(
          Tables.curvesThrough(table).get(i).heightMetres(seconds),
          Tables.curvesThrough(movedTable).get(i).heightMetres(seconds + later.toSeconds()),
          ROUNDING_METRES);
    }
  }

  @Property(seed = Seeds.SEED, tries = 200)
  void aTideOfTwiceTheRangeAndAnotherDatumIsTheSameTideScaled(
      @ForAll("tables") TideTable table, @ForAll("shares") double share) {
    List<TideEvent> scaled = new ArrayList<>();
    for (TideEvent event : table.events()) {
      scaled.add(
          new TideEvent(
              event.time(), Distance.ofMetres(2.0 * event.height().metres() + 0.7), event.kind()));
    }
    TideTable scaledTable = TideTable.of("Skarra", "another datum", scaled);
    double seconds = at(table, share);
    for (int i = 0; i < 4; i++) {
      assertEquals(
          2.0 * Tables.curvesThrough(table).get(i).heightMetres(seconds) + 0.7,
          Tables.curvesThrough(scaledTable).get(i).heightMetres(seconds),
          ROUNDING_METRES);
    }
  }

  @Property(seed = Seeds.SEED, tries = 200)
  void theSmoothCurveHasOneCurvatureAtAWater(@ForAll("tables") TideTable table) {
    TideCurve curve = TableCurve.smooth(table);
    double step = 0.5;
    for (int i = 1; i < table.segments(); i++) {
      double water = table.seconds(i);
      double before = -curve.slopeMetresPerSecond(water - step) / step;
      double after = curve.slopeMetresPerSecond(water + step) / step;
      // half a second of a third derivative, at most 60 m in the cube of 1224 s
      assertEquals(before, after, 2e-7 * 9.0);
    }
  }

  @Property(seed = Seeds.SEED, tries = 300)
  void breakPointsComeStrictlyLaterAndEndWithTheTable(@ForAll("tables") TideTable table) {
    for (TideCurve curve : Tables.curvesThrough(table)) {
      double seconds = curve.startSeconds() - 1.0;
      int breaks = 0;
      while (seconds < curve.endSeconds()) {
        double next = curve.nextBreakAfter(seconds);
        assertTrue(next > seconds, curve::toString);
        seconds = next;
        breaks++;
      }
      assertEquals(curve.endSeconds(), seconds);
      assertEquals(Double.POSITIVE_INFINITY, curve.nextBreakAfter(seconds));
      assertTrue(
          breaks > table.segments() && breaks <= 18 * table.segments() + 1, breaks + " breaks");
    }
  }

  @Property(seed = Seeds.SEED, tries = 150)
  void insideAWindowTheTideIsOnTheSideAskedFor(
      @ForAll("tables") TideTable table,
      @ForAll("shares") double height,
      @ForAll("shares") double inside) {
    double level = -3.0 + 9.0 * height;
    for (TideCurve curve : Tables.curvesThrough(table)) {
      for (Window window :
          curve.windowsAtLeast(Distance.ofMetres(level), table.start(), table.end())) {
        assertTrue(curve.heightMetres(within(window, inside)) >= level - 1e-4);
      }
      for (Window window :
          curve.windowsAtMost(Distance.ofMetres(level), table.start(), table.end())) {
        assertTrue(curve.heightMetres(within(window, inside)) <= level + 1e-4);
      }
    }
  }

  private static double within(Window window, double share) {
    double opens = EpochSeconds.of(window.from());
    return opens + share * (EpochSeconds.of(window.until()) - opens);
  }

  @Property(seed = Seeds.SEED, tries = 150)
  void aboveAndBelowFillTheTable(
      @ForAll("tables") TideTable table, @ForAll("shares") double height) {
    double level = -3.0 + 9.0 * height;
    Instant from = table.start();
    Instant to = table.end();
    for (TideCurve curve : Tables.curvesThrough(table)) {
      if (curve.toString().contains("by the clock")) {
        continue; // a stand exactly at the level counts for both
      }
      Found<Window> above = curve.windowsAtLeast(Distance.ofMetres(level), from, to);
      Found<Window> below = curve.windowsAtMost(Distance.ofMetres(level), from, to);
      double gap =
          Duration.between(from, to).minus(length(above)).minus(length(below)).toNanos() * 1e-9;
      assertEquals(0.0, gap, 0.005 * (above.items().size() + below.items().size() + 1));
      long edges =
          above.items().stream().filter(w -> !w.openBefore()).count()
              + above.items().stream().filter(w -> !w.openAfter()).count();
      assertEquals(edges, Tables.crossings(curve, level, from, to).items().size());
    }
  }

  private static Duration length(Found<Window> windows) {
    return windows.items().stream().map(Window::duration).reduce(Duration.ZERO, Duration::plus);
  }
}
