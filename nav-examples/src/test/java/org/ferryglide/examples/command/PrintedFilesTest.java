package org.ferryglide.examples.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
    assertEquals(
        List.of("page.html", "shore.html", "sheet.html").stream()
            .map(name -> "wrote " + folder.resolve(name))
            .toList(),
        ran.err().lines().toList());
    assertFalse(ran.out().contains("wrote "), ran.out());
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
  void whatIsWrittenIsTold() {
    String file = folder.resolve("route.gpx").toString();
    Ran written = Ran.of("passage", SCENARIO, "--gpx", file);
    assertTrue(written.out().endsWith("wrote " + file + "\n"), written.out());
  }

  @ParameterizedTest
  @CsvSource({
    "--track, --track is of use with --gpx only",
    "--units km, '--units is of use with --card, --page, --sheet or --shore only'",
    "--what-if --units km, '--units is of use with --card, --page, --sheet or --shore only'",
    "--what-if --card --units km, of --card and --what-if only one can be printed",
    "--what-if --card, of --card and --what-if only one can be printed"
  })
  void whatNothingUsesIsRefusedForItsOwnReason(String useless, String why) {
    Ran ran = Ran.line("passage " + SCENARIO + " " + useless);
    assertEquals(2, ran.status(), ran.out());
    assertEquals(why, ran.err().lines().findFirst().orElse(""));
  }

  @Test
  void wordsReachTheTextAndTheWhatIfsToo() throws Exception {
    String words = folder.resolve("words.properties").toString();
    Files.writeString(
        Path.of(words), "text.notes = Anmerkungen\nnote.what-if.slower = langsamer\n");
    Ran text = Ran.of("passage", SCENARIO, "--words", words);
    assertTrue(text.out().contains("\nAnmerkungen\n"), text.out());
    Ran whatIf = Ran.of("passage", SCENARIO, "--what-if", "--words", words);
    assertTrue(whatIf.out().contains("\nlangsamer  "), whatIf.out());
  }

  @Test
  void whatIfsAndWindowsTellTheirWarnings() {
    Ran whatIf = Ran.of("passage", SCENARIO, "--what-if");
    assertTrue(whatIf.out().startsWith("not checked: land down wind\n"), whatIf.out());
    assertTrue(
        whatIf.out().contains("WARNING: stream: 2.3 kn, beyond 2, where it warns; 1 more"),
        whatIf.out());
    String help = Ran.of("departures", "--help").out();
    assertTrue(help.contains("in which no check of a passage stops"), help);
    Ran windows = Ran.of("departures", SCENARIO, "--step", "60");
    assertTrue(
        windows.out().matches("(?s).*window .*\n +WARNING for [0-9]+ departures in it: .*"),
        windows.out());
  }

  @Test
  void wordsThatCannotBeReadAreRefusedWithTheirFile() throws Exception {
    Path words = folder.resolve("words.properties");
    Files.write(words, new byte[] {'a', '=', (byte) 0xe9, '\n'});
    Ran ran = Ran.of("passage", SCENARIO, "--card", "--words", words.toString());
    assertEquals(2, ran.status(), ran.out());
    assertEquals(words + ": must be text in UTF-8, but is not\n", ran.err());
    Files.writeString(words, "a = \\u12\n");
    ran = Ran.of("passage", SCENARIO, "--card", "--words", words.toString());
    assertEquals(2, ran.status(), ran.out());
    assertTrue(ran.err().startsWith(words + ": Malformed"), ran.err());
  }

  @Test
  void unitsThatNobodyPrintsAreRefused() {
    Ran ran = Ran.of("passage", SCENARIO, "--card", "--units", "furlongs");
    assertEquals(2, ran.status(), ran.err());
    assertTrue(ran.err().contains("units must be one of [NM, km, mi]"), ran.err());
  }
}
