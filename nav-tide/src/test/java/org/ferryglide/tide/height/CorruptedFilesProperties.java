package org.ferryglide.tide.height;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.InputProblem;
import org.ferryglide.testing.Seeds;

/** Whatever happens to a file, it is read or refused with its lines; nothing else is thrown. */
class CorruptedFilesProperties {
  private static final String TIDES =
      """
      # Skarra harbour office
      port,datum,zone,time,height_m,kind
      Skarra,chart datum,+01:00,2026-06-01T04:20,0.7,low
      ,,,2026-06-01T10:30,4.2,high
      ,,,2026-06-01T16:45,0.9,low
      ,,,2026-06-01T22:50:30Z,4.1,high
      """;

  private static final String CURVE =
      """
      part,time_fraction,height_fraction
      rise,0,0
      rise,0.25,0.22
      rise,1,1
      fall,0,1
      fall,1,0
      """;

  /** A stretch of text put in the place of another. */
  record Damage(double at, int removed, String added) {
    String doneTo(String text) {
      int from = (int) (at * text.length());
      int to = Math.min(text.length(), from + removed);
      return text.substring(0, from) + added + text.substring(to);
    }
  }

  @Provide
  Arbitrary<List<Damage>> damages() {
    Arbitrary<String> added =
        Arbitraries.oneOf(
            Arbitraries.of(
                "",
                ",",
                "\n",
                "\r\n",
                "\"",
                "#",
                ";",
                "-",
                "0",
                "9",
                "T",
                "Z",
                "+02:00",
                "NaN",
                "1e9",
                "\u0000",
                "\ufeff",
                "٣",
                "é",
                ",,,,,\n",
                "2026-06-01T10:30"),
            Arbitraries.strings().ofMaxLength(4));
    return Combinators.combine(
            Arbitraries.doubles().between(0.0, 1.0).ofScale(4),
            Arbitraries.integers().between(0, 12),
            added)
        .as(Damage::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(3);
  }

  private interface Reading {
    void of(String text) throws IOException;
  }

  private static void readOrRefused(String text, Reading reading) throws IOException {
    try {
      reading.of(text);
    } catch (InputFormatException refusal) {
      assertFalse(refusal.problems().isEmpty());
      for (InputProblem problem : refusal.problems()) {
        assertTrue(problem.line() <= text.split("\r\n|\r|\n", -1).length, problem::toString);
        assertTrue(problem.toString().startsWith("damaged.csv"), problem::toString);
      }
    }
  }

  private static String damaged(String text, List<Damage> damages) {
    String result = text;
    for (Damage damage : damages) {
      result = damage.doneTo(result);
    }
    return result;
  }

  @Property(seed = Seeds.SEED, tries = 2000)
  void aDamagedTideTableIsReadOrRefused(@ForAll("damages") List<Damage> damages)
      throws IOException {
    readOrRefused(
        damaged(TIDES, damages),
        text -> {
          TideTable table = TideTable.read("damaged.csv", new StringReader(text));
          assertTrue(table.events().size() >= 2);
        });
  }

  @Property(seed = Seeds.SEED, tries = 1000)
  void aDamagedCurveIsReadOrRefused(@ForAll("damages") List<Damage> damages) throws IOException {
    readOrRefused(
        damaged(CURVE, damages),
        text -> NormalisedCurve.read("damaged.csv", new StringReader(text)));
  }
}
