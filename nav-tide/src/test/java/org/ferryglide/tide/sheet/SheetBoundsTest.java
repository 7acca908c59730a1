package org.ferryglide.tide.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.OptionalDouble;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sheets that are too large, in another encoding, or hostile; and what is only doubted. */
class SheetBoundsTest {
  private static final List<String> REQUIRED = List.of("name", "height_m");

  @TempDir Path folder;

  private static Sheet read(String text) throws IOException {
    return Sheet.read("rocks.csv", new StringReader(text), REQUIRED, List.of());
  }

  private static String refusalOf(String text) {
    return assertThrows(InputFormatException.class, () -> read(text)).getMessage() + "";
  }

  private Path file(String name, byte[] bytes) throws IOException {
    return Files.write(folder.resolve(name), bytes);
  }

  private String refusalOf(Path file) {
    String message =
        assertThrows(InputFormatException.class, () -> Sheet.read(file, REQUIRED, List.of()))
                .getMessage()
            + "";
    return message.replace(folder + File.separator, "");
  }

  /** A pattern that tries every split of the digits took 2.5 s for half as many. */
  @Test
  void digitsFollowedByALetterAreReadOnce() throws IOException {
    Sheet sheet = read("name,height_m\nA," + "1".repeat(65_000) + "x\n");
    OptionalDouble number =
        assertTimeoutPreemptively(
            Duration.ofSeconds(2), () -> sheet.rows().get(0).number("height_m", 0.0, 1.0));
    assertFalse(number.isPresent());
    String refusal = assertThrows(InputFormatException.class, sheet::refuseIfFaulty).getMessage();
    assertEquals(
        "rocks.csv, line 2, column 2: height_m: must be a number in [0.0, 1.0], but was \""
            + "1".repeat(60)
            + "…\"",
        refusal);
  }

  @Test
  void aLineIsRefusedWhereItPassesTheLongest() {
    String expected =
        "rocks.csv, line 3: a line must have at most 65536 characters, field and comment alike,"
            + " but had more";
    assertEquals(expected, refusalOf("name,height_m\r\nA,1\r\nB," + "2".repeat(65_536)));
    assertEquals(expected, refusalOf("#\nname,height_m\n#" + "x".repeat(10_000_000)));
    assertEquals(expected, refusalOf("name,height_m\nA,1\n" + ",".repeat(70_000)));
  }

  @Test
  void aQuotationMarkThatSwallowsTheRestOfALongFileIsRefusedByLine() {
    String rows = "A,1\n".repeat(2_200_000); // more than the parser takes for one field
    assertEquals(
        "rocks.csv, line 2: a quotation mark is not closed here or on one of the lines that"
            + " follow",
        refusalOf("name,height_m\n\"A,1\n" + rows));
  }

  @Test
  void rowsAreCounted() {
    assertEquals(
        "rocks.csv, line 1000002: a sheet must have at most 1000000 rows, but had more",
        refusalOf("name,height_m\n" + "A,1\n".repeat(1_000_001)));
  }

  @Test
  void ofManyProblemsTheFirstHundredAreTold() throws IOException {
    Sheet sheet = read("name,height_m\n" + "A,1,2\n".repeat(5_000));
    InputFormatException refusal = assertThrows(InputFormatException.class, sheet::refuseIfFaulty);
    assertEquals(InputFormatException.MOST_KEPT, refusal.problems().size());
    assertEquals(2, refusal.problems().get(0).line());
    assertEquals(5_000, refusal.found());
  }

  @Test
  void controlCharactersDoNotReachTheTerminal() throws IOException {
    Sheet sheet = read("name,height_m\nA,1\u001b[31m\n");
    assertEquals(
        "rocks.csv, line 2, column 2: must not hold control or hidden characters, but has U+001B"
            + " as character 2",
        assertThrows(InputFormatException.class, sheet::refuseIfFaulty).getMessage());
    assertFalse(sheet.isWhole());
  }

  @Test
  void whatASpreadsheetWouldRunIsRefused() throws IOException {
    for (String formula :
        List.of(
            "=1+1",
            "@SUM(A1)",
            "+SUM(A1)",
            "-cmd",
            "-2+3+cmd|' /C calc'!A0",
            "+1=2",
            "\"=HYPERLINK(\"\"x\"\",\"\"y\"\")\"")) {
      Sheet sheet = read("name,height_m\n" + formula + ",1\n");
      String told = assertThrows(InputFormatException.class, sheet::refuseIfFaulty).getMessage();
      assertTrue(told.startsWith("rocks.csv, line 2, column 1: must not begin with "), told);
      assertThrows(IllegalArgumentException.class, () -> Sheet.field("name", "=1+1"));
    }
    for (String sound : List.of("-3.5", "+01:00", "-1 NM", "-", "+.5", "a=b", "--1")) {
      read("name,height_m\n" + sound + ",1\n").refuseIfFaulty();
      assertEquals(sound, Sheet.field("name", sound));
    }
  }

  @Test
  void aSheetThatLostARowIsNotWhole() throws IOException {
    assertTrue(read("name,height_m\nA,1\n").isWhole());
    assertFalse(read("name,height_m\nA,1,2\n").isWhole());
    assertFalse(read("name,height_m\n\"A\nB\",2\n").isWhole());
  }

  @Test
  void aFileIsReadInUtf8() throws IOException {
    Path file = file("rocks.csv", "\ufeffname,height_m\nFlæk,1\n".getBytes(StandardCharsets.UTF_8));
    assertEquals("Flæk", Sheet.read(file, REQUIRED, List.of()).rows().get(0).text("name"));
    try (Reader reader = Sheet.open(file)) {
      assertEquals(1, Sheet.read("rocks", reader, REQUIRED, List.of()).rows().size());
    }
  }

  @Test
  void anotherEncodingIsRefusedByLineAndColumn() throws IOException {
    Path file =
        file(
            "rocks.csv",
            "height_m,name\r\n1,A\r\n2,Fl\u00e6k\r\n".getBytes(StandardCharsets.ISO_8859_1));
    assertEquals(
        "rocks.csv, line 3, column 2: must be text in UTF-8, but has the byte 0xe6; save it again"
            + " in that encoding",
        refusalOf(file));
  }

  @Test
  void aFolderIsNoFile() throws IOException {
    Path rocks = Files.createDirectory(folder.resolve("rocks.csv"));
    assertEquals("rocks.csv: must be a file, but is a folder", refusalOf(rocks));
    assertThrows(
        NoSuchFileException.class,
        () -> Sheet.read(folder.resolve("none.csv"), REQUIRED, List.of()));
  }

  private static Note what(String text) {
    return Note.information("doubt.test", text);
  }

  @Test
  void aDoubtNamesItsPlaceItsThresholdAndWhereThatIsFrom() throws IOException {
    Sheet sheet = read("name,height_m\nA,1\nB,99\n");
    sheet.rows().get(1).doubt("height_m", TideJudgements.HEIGHT_FAR, what("99 m is far."));
    sheet.doubt(TideJudgements.RATES_SWAPPED, what("rates look swapped."));
    Note note = sheet.doubts().get(0);
    assertEquals("tide.doubt.height", note.code());
    assertEquals(Severity.CAUTION, note.severity());
    assertEquals(
        "rocks.csv, line 3, height_m: 99 m is far. Compare the official table.", note.text());
    assertEquals("3", note.data().get("line"));
    assertEquals("rocks.csv", note.data().get("file"));
    assertEquals(0.25, note.figures().get("threshold"));
    assertEquals(TideJudgements.HEIGHT_FAR.source(), note.data().get("source"));
    assertEquals(
        "rocks.csv: rates look swapped. Compare the official table.", sheet.doubts().get(1).text());
    sheet.refuseIfFaulty(); // a doubt is no refusal
  }

  @Test
  void ofManyDoubtsOfAKindTenAreTold() throws IOException {
    Sheet sheet = read("name,height_m\n" + "A,1\n".repeat(25));
    for (Sheet.Row row : sheet.rows()) {
      row.doubt("height_m", TideJudgements.HEIGHT_FAR, what("is far."));
    }
    List<Note> doubts = sheet.doubts();
    assertEquals(11, doubts.size());
    assertEquals(
        "rocks.csv: 15 more rows look wrong like these. Compare the official table.",
        doubts.get(10).text());
  }
}
