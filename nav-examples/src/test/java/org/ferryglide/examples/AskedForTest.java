package org.ferryglide.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.ferryglide.examples.page.Labels;
import org.ferryglide.tide.folder.PassageFolder;
import org.junit.jupiter.api.Test;

/**
 * What is asked of a passage is asked of it with its stops and with its legs as they are paddled.
 */
class AskedForTest {
  private static final Path EXAMPLE = Path.of("scenarios", "ollen-skerries");

  /** The example is there at 14:17 by its clock, forty minutes before this. */
  private static final String LATEST = "latest arrival,2026-06-14T14:57+01:00\n";

  private static PassageFolder landedBy(String stop) throws IOException {
    String places = Files.readString(EXAMPLE.resolve("places.csv"));
    String row =
        "Quill Island,twin hills with a cairn on the north one,38,Dunlathe,0.4,4.2,200,290,";
    assertTrue(places.contains(row), places);
    String limits = Files.readString(EXAMPLE.resolve("limits.csv"));
    return PassageFolder.read(EXAMPLE)
        .withFile("places.csv", places.replace(row, row + stop))
        .withFile("limits.csv", limits + LATEST);
  }

  private static AskedFor asked(PassageFolder folder) {
    Page page =
        new Page(folder.start().getOffset(), folder.start().toLocalDate(), Labels.english());
    return new AskedFor(LaidOffPassage.of(folder), page);
  }

  @Test
  void withoutAStopThePartyLandsInTime() throws IOException {
    assertEquals(List.of(), asked(landedBy("")).brokenAsPlanned());
  }

  @Test
  void timeAshoreCountsForTheLatestLanding() throws IOException {
    PassageFolder folder = landedBy("60 min");
    AskedFor asked = asked(folder);
    List<String> broken = asked.brokenAsPlanned();
    assertEquals(1, broken.size(), broken::toString);
    assertTrue(broken.get(0).startsWith("landed by"), broken::toString);
    assertTrue(asked.nextDeparture().contains("but not landed by"), asked.nextDeparture());
    // the speed that it names is there in time with the stop, a tenth of a knot less is not
    double knots = Double.parseDouble(asked.speedThatWouldDo().split(" ", 2)[0]);
    Instant latest = folder.limits().latestArrival().orElseThrow().toInstant();
    assertFalse(arrival(folder, knots).isAfter(latest));
    assertTrue(arrival(folder, knots - 0.1).isAfter(latest));
  }

  /** By the plan of the passage itself. */
  private static Instant arrival(PassageFolder folder, double knots) throws IOException {
    String sheet = Files.readString(EXAMPLE.resolve("passage.csv"));
    double tenths = Math.round(10.0 * knots) / 10.0;
    PassageFolder faster = folder.withFile("passage.csv", sheet.replace("3.5 kn", tenths + " kn"));
    return LaidOffPassage.of(faster).plan().orElseThrow().arrival();
  }
}
