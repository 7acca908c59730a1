package org.ferryglide.tide.stream;

import static org.ferryglide.tide.stream.StreamSamples.afterHigh;
import static org.ferryglide.tide.stream.StreamSamples.tides;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Collectors;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.TextFormatException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PilotStreamTest {
  private static final double ROUNDING = 1e-12;
  private static final TrueBearing SOUTH = TrueBearing.ofDegrees(180);
  private static final TrueBearing NORTH = TrueBearing.ofDegrees(0);

  private static final PilotTurn SOUTH_GOING = PilotTurn.begins("-0430", SOUTH, Speed.ofKnots(2.5));
  private static final PilotTurn NORTH_GOING =
      PilotTurn.begins("+0145", NORTH, Speed.ofKnots(3)).withNeapRate(Speed.ofKnots(1.4));

  private static final PilotRemarks REMARKS =
      PilotRemarks.of(
          "Tarn Head",
          StreamSamples.SKARRA,
          StreamSamples.ENNOR,
          List.of(NORTH_GOING, SOUTH_GOING));

  private static double knotsNorth(StreamCurve stream, double hours) {
    return stream.at(afterHigh(hours)).get().northMetresPerSecond() * 3600 / 1852;
  }

  private static List<String> codes(StreamCurve curve, Instant instant) {
    return curve.explain(instant).notes().stream().map(Note::code).collect(Collectors.toList());
  }

  @Test
  void theStreamTurnsAtTheRemarksTimes() {
    StreamCurve stream = REMARKS.boundTo(tides(5.0, 745, 745));
    assertEquals(0.0, knotsNorth(stream, -4.5), ROUNDING);
    assertEquals(0.0, knotsNorth(stream, 1.75), ROUNDING);
    assertTrue(knotsNorth(stream, -4.4) < 0);
    assertTrue(knotsNorth(stream, 1.7) < 0);
    assertTrue(knotsNorth(stream, 1.8) > 0);
    // the north-going stream lasts until the next tide's -0430: 745 - 270 - 105 = 370 minutes
    double next = 745 / 60.0 - 4.5;
    assertTrue(knotsNorth(stream, next - 0.1) > 0);
    assertTrue(knotsNorth(stream, next + 0.1) < 0);
  }

  @Test
  void remarksThatLookWrongAreDoubtedInEveryStreamOfThem() {
    assertEquals(List.of(), REMARKS.notes());
    assertEquals(List.of("stream.doubt.never-turns"), doubted(SOUTH_GOING, turn("+0145", 180, 3)));
    assertEquals(
        List.of("stream.doubt.neap-above-spring"),
        doubted(SOUTH_GOING.withNeapRate(Speed.ofKnots(2.6)), NORTH_GOING));
    assertEquals(List.of("stream.doubt.fastest"), doubted(SOUTH_GOING, turn("+0145", 0, 17.5)));
  }

  private static PilotTurn turn(String time, double set, double knots) {
    return PilotTurn.begins(time, TrueBearing.ofDegrees(set), Speed.ofKnots(knots));
  }

  private static List<String> doubted(PilotTurn... turns) {
    PilotRemarks remarks =
        PilotRemarks.of("Tarn Head", StreamSamples.SKARRA, StreamSamples.ENNOR, List.of(turns));
    List<String> told = codes(remarks.boundTo(tides(5.0, 745, 745)), afterHigh(0));
    List<String> own = remarks.notes().stream().map(Note::code).collect(Collectors.toList());
    assertTrue(told.containsAll(own), told::toString);
    assertTrue(remarks.notes().get(0).text().startsWith("Tarn Head"));
    return own;
  }

  @Test
  void eachStreamIsStrongestHalfwayAtItsOwnRate() {
    StreamCurve springs = REMARKS.boundTo(tides(5.0, 745, 745));
    assertEquals(-2.5, knotsNorth(springs, (-4.5 + 1.75) / 2), ROUNDING);
    double northGoing = 1.75 + 370 / 120.0;
    assertEquals(3.0, knotsNorth(springs, northGoing), 1e-9);
    StreamCurve neaps = REMARKS.boundTo(tides(2.0, 745, 745));
    assertEquals(1.4, knotsNorth(neaps, northGoing), 1e-9);
    // no neap rate is printed for the south-going stream: in proportion to the range
    assertEquals(-2.5 * 2.0 / 5.0, knotsNorth(neaps, (-4.5 + 1.75) / 2), ROUNDING);
    assertEquals(3.0, springs.maxRate().get().knots(), ROUNDING);
  }

  @Test
  void notesSayRoughAndAssumed() {
    StreamCurve stream = REMARKS.boundTo(tides(4.0, 745, 745));
    assertEquals(
        List.of("stream.neap-rate-assumed", "stream.rough-rule"), codes(stream, afterHigh(0)));
    assertEquals(List.of("stream.rough-rule"), codes(stream, afterHigh(4)));
    assertEquals(List.of("stream.no-data"), codes(stream, afterHigh(-5)));
    assertTrue(
        codes(REMARKS.withRange(Distance.ofMetres(5.5)).boundTo(tides(4.0, 745, 745)), afterHigh(4))
            .contains("stream.beyond-springs"));
    assertEquals("Tarn Head", stream.source());
  }

  @Test
  void shapesCanBeChosen() {
    StreamCurve stream = REMARKS.withShape(FlowShape.FIFTY_NINETY).boundTo(tides(5.0, 745));
    double quarter = (1.75 + 4.5) / 2;
    assertEquals(-1.25, knotsNorth(stream, -4.5 + quarter / 3), 1e-9);
    assertEquals(-2.25, knotsNorth(stream, -4.5 + 2 * quarter / 3), 1e-9);
  }

  @Test
  void noTurnOnBothSidesMeansNoData() {
    StreamCurve stream = REMARKS.boundTo(tides(5.0, 25 * 60));
    assertTrue(stream.at(afterHigh(1.7)).isPresent());
    assertFalse(stream.at(afterHigh(6)).isPresent(), "a stream of 18 h is a hole in the tides");
    assertTrue(stream.at(afterHigh(22)).isPresent());
    assertFalse(stream.at(afterHigh(27)).isPresent());
  }

  @Test
  void turnsOfTwoTidesMustNotCross() {
    PilotRemarks late =
        PilotRemarks.of(
            "Late Head",
            StreamSamples.SKARRA,
            StreamSamples.ENNOR,
            List.of(
                PilotTurn.begins("-0600", SOUTH, Speed.ofKnots(1)),
                PilotTurn.begins("+0600", NORTH, Speed.ofKnots(1))));
    assertEquals(
        "the last turn of one tide must come before the first of the next, but at Late Head it"
            + " comes 20 minutes after it",
        message(() -> late.boundTo(tides(5.0, 700))));
  }

  @ParameterizedTest
  @CsvSource({
    "-0430, -270",
    "+0145, 105",
    "0145, 105",
    "0000, 0",
    "-4:30, -270",
    "\u22120430, -270",
    "130, 90"
  })
  void timesAboutTheWaterAreRead(String text, int minutes) {
    assertEquals(
        Duration.ofMinutes(minutes), PilotTurn.begins(text, SOUTH, Speed.ZERO).afterWater());
  }

  @ParameterizedTest
  @CsvSource({"'', 0", "-, 1", "-4.5, 1", "+0160, 1", "-1400, 1", "HW, 0", "--0430, 1"})
  void otherTimesAreRefusedAtTheirCharacter(String text, int index) {
    TextFormatException refusal =
        assertThrows(TextFormatException.class, () -> PilotTurn.begins(text, SOUTH, Speed.ZERO));
    assertEquals(index, refusal.index());
  }

  @Test
  void badRemarksAreRefused() {
    assertEquals(
        "pilot remarks on A must have at least 2 turns, but had 1",
        message(
            () ->
                PilotRemarks.of(
                    "A", StreamSamples.SKARRA, StreamSamples.ENNOR, List.of(SOUTH_GOING))));
    assertEquals(
        "pilot remarks on A must not have two turns at PT-4H-30M",
        message(
            () ->
                PilotRemarks.of(
                    "A",
                    StreamSamples.SKARRA,
                    StreamSamples.ENNOR,
                    List.of(SOUTH_GOING, SOUTH_GOING))));
  }

  @Test
  void turnsAreValues() {
    assertEquals(SOUTH_GOING, PilotTurn.begins("-4:30", SOUTH, Speed.ofKnots(2.5)));
    assertEquals(
        SOUTH_GOING.hashCode(), PilotTurn.begins("-4:30", SOUTH, Speed.ofKnots(2.5)).hashCode());
    assertFalse(SOUTH_GOING.neapRate().isPresent());
    assertEquals(1.4, NORTH_GOING.neapRate().get().knots(), ROUNDING);
  }

  private static String message(org.junit.jupiter.api.function.Executable call) {
    return String.valueOf(assertThrows(IllegalArgumentException.class, call).getMessage());
  }
}
