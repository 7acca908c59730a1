package org.ferryglide.examples.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import org.ferryglide.nav.passage.Variant;
import org.ferryglide.tide.folder.PassageFolder;
import org.junit.jupiter.api.Test;

class ShoreNoteTest {
  private static final Path SCENARIO = Path.of("scenarios", "ollen-skerries");

  private static WorkedPassage oneLeg() {
    return WorkedPassage.of(PageScenes.oneLeg(), PageScenes.NOON);
  }

  @Test
  void overdueIsPrintedExactlyAsChosenByTheContactsClockWithItsDate() {
    ShoreDetails details =
        ShoreDetails.NONE
            .with("overdue", "2026-06-15T00:10:30+01:00")
            .with("contact's clock", "+02:00")
            .with("call", "the coastguard");
    String text = ShoreNote.of(oneLeg().withShore(details)).text();
    assertTrue(text.contains("overdue from: 01:10:30 15 Jun 2026, UTC+02:00\n"), text);
    assertTrue(text.contains("then call: the coastguard\n"), text);
    assertFalse(text.contains("CAUTION"), text);
  }

  @Test
  void anOverdueBeforeTheLatestArrivalIsCautioned() {
    ShoreNote note = ShoreNote.of(oneLeg());
    Instant latest = note.latestAshore().orElseThrow();
    for (int seconds = -1; seconds <= 1; seconds += 2) {
      ShoreDetails details = ShoreDetails.NONE.with("overdue", latest.plusSeconds(seconds) + "");
      String text = ShoreNote.of(oneLeg().withShore(details)).text();
      assertEquals(seconds < 0, text.contains("CAUTION: "), text);
    }
  }

  @Test
  void theLatestIsNotBeforeAnyWhatIf() {
    WorkedPassage worked = oneLeg();
    Instant latest = ShoreNote.of(worked).latestAshore().orElseThrow();
    for (Variant variant : worked.variants()) {
      variant
          .outcome()
          .solved()
          .ifPresent(plan -> assertFalse(latest.isBefore(plan.landed()), variant.name()));
    }
    assertFalse(
        latest.isBefore(worked.plan().orElseThrow().legs().get(0).latest()), latest.toString());
  }

  @Test
  void whatWasNotToldIsLeftOpen() {
    String text = ShoreNote.of(oneLeg()).text();
    for (String name :
        new String[] {
          "party",
          "craft",
          "carried",
          "remarks",
          "overdue from",
          "then call",
          "landed elsewhere, at",
          "called at"
        }) {
      assertTrue(text.contains("  " + name + ": ______________\n"), name + "\n" + text);
    }
  }

  @Test
  void theFolderTellsThoseAshore() throws Exception {
    WorkedPassage worked = WorkedPassage.of(PassageFolder.read(SCENARIO));
    String text = ShoreNote.of(worked).text();
    assertTrue(text.contains("craft: two single sea kayaks\n"), text);
    assertTrue(text.contains("overdue from: 16:30 14 Jun 2026, UTC\n"), text);
    assertTrue(text.contains("under way: 10:40 14 Jun 2026\n"), text); // 11:40 by the party's clock
    assertTrue(text.contains("degrees true from "), text);
  }

  @Test
  void badDetailsAreRefused() {
    assertEquals(
        "must be a time with its offset as 2026-06-14T17:30+01:00, but was half past five",
        assertThrows(
                IllegalArgumentException.class,
                () -> ShoreDetails.NONE.with("overdue", "half past five"))
            .getMessage());
    assertThrows(IllegalArgumentException.class, () -> ShoreDetails.NONE.with("phone", "1"));
    assertThrows(
        java.time.DateTimeException.class,
        () -> ShoreDetails.NONE.with("contact's clock", "Nowhere"));
  }
}
