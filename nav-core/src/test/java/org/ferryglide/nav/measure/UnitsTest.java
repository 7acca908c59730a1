package org.ferryglide.nav.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Map;
import java.util.function.BiFunction;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Words;
import org.junit.jupiter.api.Test;

class UnitsTest {
  private static final double ONE_ROUNDING = 1e-12;
  private static final Words WORDS =
      Words.of(
          Map.of(
              "unit.NM",
              "NM",
              "unit.kn",
              "kn",
              "unit.m",
              "m",
              "unit.km",
              "km",
              "unit.km/h",
              "km/h",
              "unit.knots",
              "{speed}",
              "unit.minutes",
              "min"));

  /**
   * NIST Special Publication 811 (2008), appendix B.8: statute mile 1609.344 m, mile an hour 0.447
   * 04 m/s, foot 0.3048 m, kilometre an hour 0.277 777 8 m/s, knot 0.514 444 4 m/s.
   */
  @Test
  void unitsAreThoseOfTheTables() {
    Units other = Units.parse("mi mph ft");
    assertEquals(1.0, other.distance(1609.344), ONE_ROUNDING);
    assertEquals(1.0, other.speed(0.44704), ONE_ROUNDING);
    assertEquals(1.0, other.height(0.3048), ONE_ROUNDING);
    assertEquals(1.0, Units.parse("km/h").speed(0.2777778), 1e-7); // as many digits as printed
    assertEquals(1.0, Units.NAUTICAL.speed(0.5144444), 1e-7);
    assertEquals(2.5, Units.parse("m/s").speed(2.5), 0.0);
  }

  @Test
  void whatIsNotChosenStaysNautical() {
    assertEquals(new Units("km", "kn", "m"), Units.parse("km"));
    assertEquals(new Units("km", "km/h", "ft"), Units.parse("FT, KM/H,km"));
    assertEquals(Units.NAUTICAL, Units.parse(Units.NAUTICAL.toString()));
  }

  @Test
  void twoForOneThingAndUnknownOnesAreRefused() {
    for (String bad : new String[] {"km mi", "furlongs", ""}) {
      assertEquals(
          "units must be one of [NM, km, mi], one of [kn, km/h, mph, m/s] and one of [m, ft], or"
              + " some of these, but were "
              + bad,
          assertThrows(IllegalArgumentException.class, () -> Units.parse(bad)).getMessage());
    }
    assertThrows(IllegalArgumentException.class, () -> new Units("kn", "kn", "m"));
  }

  private static Note finding(double figure, double warn, double stop, String unit) {
    return Note.caution("finding.warned", "-")
        .with("figure", figure)
        .with("unit", unit)
        .with("warn", warn)
        .with("stop", stop);
  }

  /** A stream is worse the faster it is, a time to spare the shorter it is. */
  @Test
  void findingsAreRoundedToTheWorseSideAndTheirLimitsToTheOther() {
    BiFunction<Note, String, String> nautical = Units.NAUTICAL.printing(WORDS, Object::toString);
    Note stream = finding(1.52, 1.52, 3.04, "knots");
    assertEquals("1.6", nautical.apply(stream, "figure"));
    assertEquals("1.5", nautical.apply(stream, "warn"));
    assertEquals("3", nautical.apply(stream, "stop"));
    assertEquals("kn", nautical.apply(stream, "unit"));
    Note spare = finding(12.9, 20.0, 0.0, "minutes");
    assertEquals("12", nautical.apply(spare, "figure"));
    assertEquals("20", nautical.apply(spare, "warn"));
    BiFunction<Note, String, String> metric =
        Units.parse("km km/h").printing(WORDS, Object::toString);
    assertEquals("2.9", metric.apply(stream, "figure")); // 1.52 kn are 2.815 km/h
    assertEquals("2.8", metric.apply(stream, "warn"));
  }

  @Test
  void figuresOfNotesTakeTheirUnitFromTheirName() {
    BiFunction<Note, String, String> metric =
        Units.parse("km km/h").printing(WORDS, Object::toString);
    Note note =
        Note.caution("any", "-")
            .with("rateKnots", 1.0)
            .with("nearMetres", 12.34)
            .with("farMetres", 2345.0)
            .with("awayNauticalMiles", 10.0)
            .with("name", "Ness");
    assertEquals("1.9 km/h", metric.apply(note, "rateKnots"));
    assertEquals("12.3 m", metric.apply(note, "nearMetres"));
    assertEquals("2.3 km", metric.apply(note, "farMetres"));
    assertEquals("18.5 km", metric.apply(note, "awayNauticalMiles"));
    assertEquals("Ness", metric.apply(note, "name"));
    assertEquals(null, metric.apply(note, "nothing"));
  }
}
