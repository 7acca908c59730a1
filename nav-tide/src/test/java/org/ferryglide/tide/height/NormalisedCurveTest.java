package org.ferryglide.tide.height;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.Note;
import org.ferryglide.testing.Seeds;
import org.ferryglide.tide.height.TideEvent.Kind;
import org.junit.jupiter.api.Test;

class NormalisedCurveTest {
  private static final double[] RISE = {0, 0.22, 0.62, 0.93, 1};
  private static final double[] FALL = {1, 0.96, 0.70, 0.24, 0};
  private static final NormalisedCurve SPRINGS = NormalisedCurve.ofEvenSteps(RISE, FALL);
  private static final NormalisedCurve NEAPS =
      NormalisedCurve.ofEvenSteps(new double[] {0, 0.1, 0.4, 0.8, 1}, new double[] {1, 0.5, 0});

  private static String refusal(double[] t, double[] h) {
    return assertThrows(
                IllegalArgumentException.class,
                () -> NormalisedCurve.of(t, h, new double[] {0, 1}, new double[] {1, 0}))
            .getMessage()
        + "";
  }

  @Test
  void theCurvePassesThroughItsPoints() {
    for (int i = 0; i < RISE.length; i++) {
      assertEquals(RISE[i], SPRINGS.risingFraction(i / 4.0), 1e-12);
      assertEquals(FALL[i], SPRINGS.fallingFraction(i / 4.0), 1e-12);
    }
    assertEquals(Double.NaN, SPRINGS.risingFraction(Double.NaN));
  }

  @Provide
  Arbitrary<double[]> points() {
    return Arbitraries.doubles().between(0.0, 1.0).ofScale(6).array(double[].class).ofSize(5);
  }

  @Property(seed = Seeds.SEED)
  void betweenTwoPointsTheCurveStaysBetweenThem(
      @ForAll("points") double[] inner, @ForAll("points") double[] shares) {
    double[] heights = {0, inner[0], inner[1], inner[2], inner[3], 1};
    MonotoneCubic cubic = new MonotoneCubic(new double[] {0, 0.1, 0.35, 0.4, 0.8, 1}, heights);
    double[] times = {0, 0.1, 0.35, 0.4, 0.8, 1};
    for (int i = 0; i < 5; i++) {
      double before = cubic.value(times[i] + 0.5 * shares[i] * (times[i + 1] - times[i]));
      double after = cubic.value(times[i + 1] - 0.4 * shares[i] * (times[i + 1] - times[i]));
      double sign = Math.signum(heights[i + 1] - heights[i]);
      assertTrue(sign * (after - before) >= -1e-12);
      assertTrue(sign * (before - heights[i]) >= -1e-12);
      assertTrue(sign * (heights[i + 1] - after) >= -1e-12);
    }
  }

  @Test
  void springsAndNeapsAreBlendedByTheRise() {
    // rises of 5 m, 3 m and 4 m against springs 5 m and neaps 3 m, each at a quarter of its time
    MeanRanges ranges = new MeanRanges(Distance.ofMetres(5.0), Distance.ofMetres(3.0));
    double[] risesOf = {5.0, 3.0, 4.0, 6.0, 2.0};
    double[] expected = {0.22, 0.1, 0.16, 0.22, 0.1}; // beyond both, as at springs and at neaps
    for (int i = 0; i < risesOf.length; i++) {
      TideTable table = Tables.ofHours("Skarra", 0, 0.0, 6, risesOf[i]);
      TideCurve curve = TableCurve.normalised(table, SPRINGS, NEAPS, ranges);
      assertEquals(
          expected[i] * risesOf[i], curve.heightAt(Tables.atHour(1.5)).get().metres(), 1e-9);
    }
  }

  @Test
  void aRiseBeyondSpringsIsNoted() {
    TideTable table = Tables.ofHours("Skarra", 0, 0.0, 6, 6.0);
    TideCurve curve =
        TableCurve.normalised(
            table, SPRINGS, NEAPS, new MeanRanges(Distance.ofMetres(5.0), Distance.ofMetres(3.0)));
    assertEquals(
        List.of("tide.own-curve", "tide.beyond-springs"),
        curve.notesAt(Tables.atHour(1)).stream().map(Note::code).toList());
  }

  @Test
  void aDoubleHighWaterIsFound() {
    NormalisedCurve twice =
        NormalisedCurve.of(
            new double[] {0, 0.6, 0.8, 1}, new double[] {0, 0.95, 0.9, 1},
            new double[] {0, 1}, new double[] {1, 0});
    TideTable table = Tables.ofHours("Skarra", 0, 0.0, 6, 4.0, 12, 0.0);
    List<TideEvent> waters =
        TableCurve.normalised(table, twice).extremes(table.start(), table.end()).items();
    assertEquals(
        List.of(Kind.HIGH, Kind.LOW, Kind.HIGH), waters.stream().map(TideEvent::kind).toList());
    assertEquals(Tables.atHour(3.6), waters.get(0).time());
    assertEquals(3.8, waters.get(0).height().metres(), 1e-9);
    assertEquals(Tables.atHour(4.8), waters.get(1).time());
    assertEquals(3.6, waters.get(1).height().metres(), 1e-9);
    assertEquals(Tables.atHour(6), waters.get(2).time());
  }

  @Test
  void aSheetIsRead() throws IOException {
    NormalisedCurve curve =
        NormalisedCurve.read(
            "curve.csv",
            new StringReader(
                """
                part,time_fraction,height_fraction
                rise,0,0
                fall,0,1
                rise,0.25,0.22
                rise,1,1
                fall,1,0
                """));
    assertEquals(0.22, curve.risingFraction(0.25), 1e-12);
    assertEquals(0.5, curve.fallingFraction(0.5), 1e-12);
  }

  @Test
  void aFaultySheetIsRefusedByLineAndColumn() {
    assertEquals(
        """
        curve.csv, line 3, column 2: time_fraction: must be later than the point before, 0.5, but \
        was 0.25
        curve.csv, line 4, column 1: part: must be rise or fall, but was "ebb"
        curve.csv, line 5, column 3: height_fraction: must be a number in [0.0, 1.0], but was \
        "1.2\"\
        """,
        assertThrows(
                InputFormatException.class,
                () ->
                    NormalisedCurve.read(
                        "curve.csv",
                        new StringReader(
                            """
                            part,time_fraction,height_fraction
                            fall,0.5,0.5
                            fall,0.25,0.5
                            ebb,0,1
                            rise,1,1.2
                            """)))
            .getMessage());
    assertEquals(
        "curve.csv: a rise must have at least 2 points, a time and a height each, but had 0 times"
            + " and 0 heights",
        assertThrows(
                InputFormatException.class,
                () ->
                    NormalisedCurve.read(
                        "curve.csv", new StringReader("part,time_fraction,height_fraction\n")))
            .getMessage());
  }

  @Test
  void pointsThatMakeNoCurveAreRefused() {
    assertEquals(
        "times of a rise must increase from 0 to 1, but time 2 was 0.0",
        refusal(new double[] {0, 0, 1}, new double[] {0, 0.5, 1}));
    assertEquals(
        "times of a rise must increase from 0 to 1, but time 1 was 0.1",
        refusal(new double[] {0.1, 1}, new double[] {0, 1}));
    assertEquals(
        "times of a rise must increase from 0 to 1, but time 2 was 0.9",
        refusal(new double[] {0, 0.9}, new double[] {0, 1}));
    assertEquals(
        "times of a rise must increase from 0 to 1, but time 2 was NaN",
        refusal(new double[] {0, Double.NaN, 1}, new double[] {0, 0.5, 1}));
    assertEquals(
        "heights of a rise must be in [0, 1] and run from 0 to 1, but height 2 was 1.1",
        refusal(new double[] {0, 0.5, 1}, new double[] {0, 1.1, 1}));
    assertEquals(
        "heights of a rise must be in [0, 1] and run from 0 to 1, but height 3 was 0.9",
        refusal(new double[] {0, 0.5, 1}, new double[] {0, 0.5, 0.9}));
    assertEquals(
        "a rise must have at least 2 points, a time and a height each, but had 2 times and 3"
            + " heights",
        refusal(new double[] {0, 1}, new double[] {0, 0.5, 1}));
    assertThrows(
        IllegalArgumentException.class,
        () -> NormalisedCurve.ofEvenSteps(new double[0], new double[] {1, 0}));
  }
}
