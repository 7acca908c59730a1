package org.ferryglide.tide.height;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;
import org.ferryglide.testing.Seeds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TideTableWriterTest {
  private static String written(TideTable table) throws IOException {
    StringBuilder out = new StringBuilder();
    table.write(out);
    return out.toString();
  }

  @Test
  void aTableIsWrittenAsItIsRead() throws IOException {
    TideTable table =
        Tables.ofHours("Skarra, \"inner\"", 0, 1.0, 6, 5.25)
            .withNotes(List.of(Note.caution("tide.doubt.height", "Line 3\nlooks wrong.")));
    String text =
        """
        # CAUTION: Line 3 looks wrong.
        port,datum,time,height_m,kind
        "Skarra, ""inner""\",chart datum,2026-06-01T00:00:00Z,1.0,low
        ,,2026-06-01T06:00:00Z,5.25,high
        """;
    assertEquals(
        text.replace("CAUTION", table.notes().get(0).severity().toString()), written(table));
  }

  @Test
  void aTableIsReadFromItsFile(@TempDir Path folder) throws IOException {
    TideTable table = Tables.ofHours("Skarra", 0, 1.0, 6, 5.25, 12, 1.25);
    Path file = folder.resolve("skarra.csv");
    Files.writeString(file, written(table));
    assertEquals(table, TideTable.read(file));
  }

  @Provide
  Arbitrary<TideTable> tables() {
    Arbitrary<Double> heights = Arbitraries.doubles().between(0.0, 12.0).ofScale(17);
    Arbitrary<Long> nanos = Arbitraries.longs().between(1, 11L * 3600 * 1_000_000_000L);
    return Combinators.combine(heights.list().ofSize(12), nanos.list().ofSize(12))
        .as(
            (up, apart) -> {
              List<TideEvent> events = new ArrayList<>();
              Instant time = Instant.parse("2026-01-01T00:00:00Z");
              for (int i = 0; i < up.size(); i++) {
                time = time.plus(Duration.ofNanos(apart.get(i)));
                events.add(
                    i % 2 == 0
                        ? TideEvent.low(time, Distance.ofMetres(-up.get(i) / 3.0))
                        : TideEvent.high(time, Distance.ofMetres(up.get(i) / 3.0)));
              }
              return TideTable.of("Skarra #1", "mean level", events);
            });
  }

  @Property(seed = Seeds.SEED, tries = 300)
  void whatIsWrittenIsReadBackToTheLastDigit(@ForAll("tables") TideTable table) throws IOException {
    TideTable read = TideTable.read("copy.csv", new StringReader(written(table)));
    assertEquals(table.events(), read.events());
    assertEquals(table.port(), read.port());
    assertEquals(table.datum(), read.datum());
  }

  @Test
  void whatCannotBeReadBackIsNotWritten() {
    TideTable name = Tables.ofHours("Skar\nra", 0, 1.0, 6, 5.0);
    assertEquals(
        "name of a port must not hold control or hidden characters, but has U+000A as character 5",
        assertThrows(IllegalArgumentException.class, () -> written(name)).getMessage());
    Instant far = Instant.parse("+10000-01-01T00:00:00Z");
    TideTable late =
        TideTable.of(
            "Skarra",
            "chart datum",
            List.of(
                TideEvent.low(far, Distance.ofMetres(1.0)),
                TideEvent.high(far.plusSeconds(20_000), Distance.ofMetres(2.0))));
    assertEquals(
        "a water must be in the years 0 to 9999 to be written, but was at +10000-01-01T00:00:00Z",
        assertThrows(IllegalArgumentException.class, () -> written(late)).getMessage());
  }
}
