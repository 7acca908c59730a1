package org.ferryglide.examples.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The flags of the command that write what is printed, all in one run: it takes its time. */
class PrintedFilesTest {
  private static final String SCENARIO = "scenarios/ollen-skerries";

  @TempDir Path folder;

  @Test
  void cardPageSheetAndNoteAreWrittenInTheUnitsAndWordsAskedFor() throws Exception {
    Path words = folder.resolve("words.properties");
    Files.writeString(words, "card.void = heute allein\npage.tide = Gezeit\nshore.who = Wer\n");
    Ran ran =
        Ran.of(
            "passage",
            SCENARIO,
            "--card",
            "--page",
            folder.resolve("page.html").toString(),
            "--sheet",
            folder.resolve("sheet.html").toString(),
            "--shore",
            folder.resolve("shore.html").toString(),
            "--units",
            "km,km/h",
            "--words",
            words.toString());
    assertEquals("", ran.err());
    assertTrue(ran.out().contains("heute allein"), ran.out());
    assertTrue(ran.out().contains("WAY HOME"), ran.out());
    assertTrue(ran.out().contains(" km/h"), ran.out());
    String page = Files.readString(folder.resolve("page.html"));
    assertTrue(page.contains("<h2>Gezeit</h2>"), page);
    // 7.4 NM and more of legs are printed as kilometres, the radio's positions stay in miles
    assertFalse(page.matches("(?s).*[0-9] (NM|kn)\\b.*"), page);
    assertTrue(page.matches("(?s).*[0-9.]+ km in [0-9]+ min, [0-9.]+ km/h made good.*"), page);
    assertTrue(page.contains("degrees true from"), page);
    assertTrue(Files.readString(folder.resolve("sheet.html")).contains("heute allein"));
    assertTrue(Files.readString(folder.resolve("shore.html")).contains("<h2>Wer</h2>"));
  }

  @Test
  void unitsThatNobodyPrintsAreRefused() {
    Ran ran = Ran.of("passage", SCENARIO, "--card", "--units", "furlongs");
    assertEquals(2, ran.status(), ran.err());
    assertTrue(ran.err().contains("units must be one of [NM, km, mi]"), ran.err());
  }
}
