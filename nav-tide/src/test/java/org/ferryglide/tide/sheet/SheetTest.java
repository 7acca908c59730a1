package org.ferryglide.tide.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.ferryglide.nav.note.InputFormatException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SheetTest {

  private static Sheet read(String text) throws IOException {
    return Sheet.read(
        "rocks.csv", new StringReader(text), List.of("name", "height_m"), List.of("kind"));
  }

  private static Sheet.Row onlyRow(String text) throws IOException {
    Sheet sheet = read("name,height_m\n" + text + "\n");
    sheet.refuseIfFaulty();
    assertEquals(1, sheet.rows().size());
    return sheet.rows().get(0);
  }

  private static String refusalOf(Sheet sheet) {
    return assertThrows(InputFormatException.class, sheet::refuseIfFaulty).getMessage() + "";
  }

  private static String refusalOf(String text) {
    return assertThrows(InputFormatException.class, () -> read(text)).getMessage() + "";
  }

  @Test
  void fieldsAreFoundByTheirHeadingInAnyOrder() throws IOException {
    Sheet sheet = read("height_m,kind,name\n1.5,drying,Gull Rock\n");
    Sheet.Row row = sheet.rows().get(0);
    assertEquals("Gull Rock", row.text("name"));
    assertEquals("drying", row.text("kind"));
    assertEquals(OptionalDouble.of(1.5), row.number("height_m", 0.0, 10.0));
    sheet.refuseIfFaulty();
  }

  @Test
  void anOptionalColumnThatIsNotThereIsEmpty() throws IOException {
    Sheet.Row row = onlyRow("Gull Rock,1.5");
    assertEquals("", row.text("kind"));
    assertFalse(row.has("kind"));
    assertTrue(row.has("name"));
  }

  @Test
  void linesAreCountedWithCommentsAndEmptyLines() throws IOException {
    Sheet sheet =
        read("# Source: a survey\n\nname,height_m\n# more, with commas\nA,1\n\n   \nB,2\n");
    assertEquals(5, sheet.rows().get(0).line());
    assertEquals(8, sheet.rows().get(1).line());
    assertEquals(2, sheet.rows().size());
    sheet.refuseIfFaulty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"name,height_m\r\nA,1\r\n", "name,height_m\rA,1\r", "name,height_m\nA,1"})
  void anyLineEndWillDo(String text) throws IOException {
    Sheet sheet = read(text);
    assertEquals("A", sheet.rows().get(0).text("name"));
    assertEquals(2, sheet.rows().get(0).line());
    sheet.refuseIfFaulty();
  }

  @Test
  void aByteOrderMarkIsPassedOverEvenBeforeAComment() throws IOException {
    assertEquals("A", read("\ufeffname,height_m\nA,1\n").rows().get(0).text("name"));
    assertEquals("A", read("\ufeff# x\nname,height_m\nA,1\n").rows().get(0).text("name"));
  }

  @Test
  void spacesRoundAFieldAreTakenOff() throws IOException {
    assertEquals("A", onlyRow("  A , 1 ").text("name"));
    assertEquals(1, read(" name , height_m \nA,1\n").rows().size());
  }

  @Test
  void quotedFieldsMayHoldCommasAndQuotes() throws IOException {
    assertEquals("Rock, north", onlyRow("\"Rock, north\",1").text("name"));
    assertEquals("the \"Tooth\"", onlyRow("\"the \"\"Tooth\"\"\",1").text("name"));
    assertEquals("#1", onlyRow("\"#1\",1").text("name"));
  }

  @Test
  void aQuoteThatIsNotClosedOnItsLineIsRefusedWhereItOpens() throws IOException {
    assertEquals(
        "rocks.csv, line 3, column 2: a field must end on its own line, but its quotation mark was"
            + " not closed there",
        refusalOf(read("name,height_m\nA,1\nB,\"2\nC,3\n")));
    assertEquals(
        "rocks.csv, line 2, column 1: a field must end on its own line, but its quotation mark was"
            + " not closed there",
        refusalOf(read("name,height_m\n\"A\nB\",2\n")));
    assertEquals(
        "rocks.csv, line 1, column 2: a field must end on its own line, but its quotation mark was"
            + " not closed there",
        refusalOf("name,\"height_m\nA,1\n"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "\n\n", "# only a comment\n", "   \n", "\ufeff"})
  void aSheetWithoutHeadingsIsRefused(String text) {
    assertEquals("rocks.csv: a heading line must come first: [name, height_m]", refusalOf(text));
  }

  @Test
  void everyWrongHeadingIsNamed() {
    assertEquals(
        """
        rocks.csv, line 2, column 1: heading must be one of [name, height_m, kind], but was "Name"; \
        did you mean name?
        rocks.csv, line 2, column 3: heading kind stands twice
        rocks.csv, line 2, column 4: heading must be one of [name, height_m, kind], but was ""
        rocks.csv, line 2, column 5: heading name is missing
        rocks.csv, line 2, column 5: heading height_m is missing\
        """,
        refusalOf("# x\nName,kind,kind,\n"));
  }

  @Test
  void aRowOfTheWrongWidthIsRefusedByItsLineAndNotListed() throws IOException {
    Sheet sheet = read("name,height_m\nA\nB,2\nC,3,4\n");
    assertEquals(1, sheet.rows().size());
    assertEquals(
        """
        rocks.csv, line 2, column 2: a row must have 2 fields like the heading line, but had 1
        rocks.csv, line 4, column 3: a row must have 2 fields like the heading line, but had 3; a \
        field with a comma in it must stand between quotation marks, and a decimal has a point\
        """,
        refusalOf(sheet));
  }

  @ParameterizedTest
  @CsvSource({
    "1, 1",
    "+1.5, 1.5",
    "-2, -2",
    ".5, 0.5",
    "5., 5",
    "1e1, 10",
    "2.5E-1, 0.25",
    "-20, -20",
    "30, 30"
  })
  void numbersAreReadInAnyPlainForm(String text, double expected) throws IOException {
    assertEquals(OptionalDouble.of(expected), onlyRow("A," + text).number("height_m", -20.0, 30.0));
  }

  @Test
  void negativeZeroBecomesZero() throws IOException {
    double zero = onlyRow("A,-0.0").number("height_m", -1.0, 1.0).getAsDouble();
    assertEquals(0L, Double.doubleToRawLongBits(zero));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        ".",
        "-",
        "e5",
        "NaN",
        "Infinity",
        "1f",
        "1d",
        "0x10",
        "1_0",
        "4.2m",
        "30.1",
        "-20.1",
        "1e400",
        "٣",
        "1 2",
        "--1"
      })
  void whatIsNoNumberInTheRangeIsRefusedAsItStands(String text) throws IOException {
    Sheet sheet = read("name,height_m\nA," + text + "\n");
    assertEquals(OptionalDouble.empty(), sheet.rows().get(0).number("height_m", -20.0, 30.0));
    assertEquals(
        "rocks.csv, line 2, column 2: height_m: must be a number in [-20.0, 30.0], but was \""
            + text
            + "\"",
        refusalOf(sheet));
  }

  @Test
  void aDecimalCommaMakesARowTooWideRatherThanAWrongNumber() throws IOException {
    assertEquals(
        "rocks.csv, line 2, column 3: a row must have 2 fields like the heading line, but had 3; a"
            + " field with a comma in it must stand between quotation marks, and a decimal has a"
            + " point",
        refusalOf(read("name,height_m\nA,4,2\n")));
  }

  @Test
  void valuesAreReadByTheirOwnParserWithItsMessage() throws IOException {
    Sheet sheet = read("name,height_m\n2026-06-01,1\n2026-06-31,2\n");
    LocalDate fallback = LocalDate.MIN;
    assertEquals(
        LocalDate.of(2026, 6, 1), sheet.rows().get(0).read("name", LocalDate::parse, fallback));
    assertSame(fallback, sheet.rows().get(1).read("name", LocalDate::parse, fallback));
    String message = refusalOf(sheet);
    assertTrue(message.startsWith("rocks.csv, line 3, column 1: name: "), message);
    assertTrue(message.contains("2026-06-31"), message);
  }

  @Test
  void problemsAreListedByLineAndColumnHoweverTheyWereFound() throws IOException {
    Sheet sheet = read("name,height_m\nA,1\nB,2\n");
    sheet.rows().get(1).problem("height_m", "too high");
    sheet.rows().get(1).problem("name", "too long");
    sheet.rows().get(0).problem("kind", "must be given");
    sheet.problem("too short");
    assertEquals(
        """
        rocks.csv: too short
        rocks.csv, line 2: kind: must be given
        rocks.csv, line 3, column 1: name: too long
        rocks.csv, line 3, column 2: height_m: too high\
        """,
        refusalOf(sheet));
  }

  @Test
  void aFaultlessSheetIsNotRefused() throws IOException {
    Sheet sheet = read("name,height_m\n");
    sheet.refuseIfFaulty();
    assertTrue(sheet.rows().isEmpty());
    assertEquals("rocks.csv", sheet.source());
    assertThrows(UnsupportedOperationException.class, () -> sheet.rows().clear());
  }

  @Test
  void troubleWithTheTextItselfComesThroughUnchanged() {
    IOException trouble = new IOException("disk gone");
    Reader broken =
        new Reader() {
          private int given;

          @Override
          public int read(char[] buffer, int offset, int length) throws IOException {
            if (given > 0) {
              throw trouble;
            }
            buffer[offset] = 'n';
            given = 1;
            return 1;
          }

          @Override
          public void close() {}
        };
    assertSame(
        trouble,
        assertThrows(IOException.class, () -> Sheet.read("x", broken, List.of("name"), List.of())));
  }

  @Test
  void theTextIsLeftOpen() throws IOException {
    boolean[] closed = {false};
    Reader reader =
        new StringReader("name,height_m\nA,1\n") {
          @Override
          public void close() {
            closed[0] = true;
          }
        };
    Sheet.read("x", reader, List.of("name", "height_m"), List.of());
    assertFalse(closed[0]);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"name;height_m|semicolons", "'name\theight_m'|tabs"})
  void aSheetPartedByAnythingElseIsToldSoOnce(String heading, String parted) {
    assertEquals(
        "rocks.csv, line 1, column 1: fields must be separated by commas, and decimals by points,"
            + " but the heading line is separated by "
            + parted,
        refusalOf(heading + "\nA 1\n"));
  }
}
