package org.ferryglide.examples.batch;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SplittableRandom;
import org.ferryglide.examples.batch.Batches.Ran;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.grid.GridPrecision;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.testing.Refusal;
import org.junit.jupiter.api.Test;

/** How files go through a batch, whatever they hold. */
class BatchRunTest {
  private static final BatchOptions STANDARD = BatchOptions.standard();
  private static final String HEADING = "lat1,lon1,lat2,lon2\n";

  /**
   * A quarter of the meridian, 10001.965729 km: quoted in many places, GeographicLib's among them.
   */
  private static final String QUARTER = "0,0,90,0,0.000000,10001965.7293";

  private static Ran run(String text) {
    return Batches.run("rhumb-inverse", STANDARD, text);
  }

  private static String refusal(String text) {
    return Refusal.message(() -> run(text));
  }

  @Test
  void figuresComeBehindTheRow() {
    Ran ran = run(HEADING + "0,0,90,0\n");
    assertEquals("lat1,lon1,lat2,lon2,course_deg,distance_m\n" + QUARTER + "\n", ran.out());
    assertEquals(1, ran.summary().rows());
    assertEquals(0, ran.summary().exitStatus());
  }

  @Test
  void columnsAreFoundByNameAndOthersPassThrough() {
    Ran ran = run("name,lon2,lat2,\"lat1\", lon1 \n\"Ytre \"\"Holm\"\", north\",0,90,0,0\n");
    assertEquals(
        "name,lon2,lat2,\"lat1\", lon1 ,course_deg,distance_m\n"
            + "\"Ytre \"\"Holm\"\", north\",0,90,0,0,0.000000,10001965.7293\n",
        ran.out());
  }

  @Test
  void lineEndingsMarksAndBlankLinesPassThrough() {
    Ran ran = run("\uFEFF" + "lat1,lon1,lat2,lon2\r\n0,0,90,0\r\n\r\n0,0,90,0");
    assertEquals(
        "\uFEFF" + "lat1,lon1,lat2,lon2,course_deg,distance_m\r\n" + QUARTER + "\r\n\r\n" + QUARTER,
        ran.out());
    assertEquals(2, ran.summary().rows());
  }

  @Test
  void aQuotedFieldMayHoldLinesAndNumbersMayBeQuoted() {
    Ran ran =
        run(
            "lat1,lon1,lat2,lon2,note\n"
                + "\"0\",0,\"90\",0,\"two\n"
                + "lines, \"\"quoted\"\"\"\n"
                + "91,0,0,0,x\n");
    assertTrue(ran.out().contains("\"two\nlines, \"\"quoted\"\"\",0.000000,10001965.7293\n"));
    assertEquals(
        List.of(
            "rows.csv, line 4, column 1: lat1 must be a number in [-90, 90] degrees, but was"
                + " \"91\""),
        ran.refusals());
  }

  @Test
  void aBadRowPassesWithEmptyFiguresAndIsToldByItsLine() {
    Ran ran =
        run(
            HEADING
                + "0,0,90,0\nNaN,0,1,1\n0,0,,0\n0,0,90\n0,0,90,0,5\n0,0,\"9\"0,0\n0,361,0,0\n"
                + "0,0,90,0\n");
    assertEquals(
        "lat1,lon1,lat2,lon2,course_deg,distance_m\n"
            + QUARTER
            + "\nNaN,0,1,1,,\n0,0,,0,,\n0,0,90,,,\n0,0,90,0,5,,\n0,0,\"9\"0,0,,\n0,361,0,0,,\n"
            + QUARTER
            + "\n",
        ran.out());
    assertEquals(
        List.of(
            "rows.csv, line 3, column 1: lat1 must be a number in [-90, 90] degrees, but was"
                + " \"NaN\"",
            "rows.csv, line 4, column 3: lat2 must be a number in [-90, 90] degrees, but was \"\"",
            "rows.csv, line 5: the heading names 4 columns, but here are 3 fields",
            "rows.csv, line 6: the heading names 4 columns, but here are 5 fields",
            "rows.csv, line 7, column 3: only a comma may follow a closing quotation mark",
            "rows.csv, line 8, column 2: lon1 must be a number in [-180, 360] degrees, but was"
                + " \"361\""),
        ran.refusals());
    assertEquals(8, ran.summary().rows());
    assertEquals(6, ran.summary().refused());
    assertEquals(2, ran.summary().exitStatus());
  }

  @Test
  void anOpenQuotationMarkSwallowsNoRowsBelow() {
    Ran atEnd = run(HEADING + "0,0,90,\"0\n0,0,90,0\n0,0,90,0\n");
    assertEquals(1, atEnd.summary().refused());
    assertEquals(3, atEnd.summary().rows());
    assertTrue(atEnd.out().endsWith(QUARTER + "\n" + QUARTER + "\n"));
    Ran closedByAnother = run(HEADING + "\"0,0,90,0\n0,0,90,0\n\"0\",0,90,0\n");
    assertEquals(1, closedByAnother.summary().refused());
    assertTrue(closedByAnother.out().endsWith(QUARTER + "\n\"0\",0,90,0,0.000000,10001965.7293\n"));
  }

  @Test
  void anOpenQuotationMarkFarFromTheEndIsGivenUpAfterAMebibyte() {
    StringBuilder text = new StringBuilder(HEADING).append("0,0,\"90,0\n");
    int rows = 130_000; // 1.2 MB
    text.append("0,0,90,0\n".repeat(rows));
    Ran ran = run(text.toString());
    assertEquals(rows + 1, ran.summary().rows());
    assertEquals(List.of("rows.csv, line 2: a quotation mark is not closed"), ran.refusals());
  }

  @Test
  void hugeFieldsPassAndLongerLinesAreRefusedWithoutLosingTheRest() {
    String big = "x".repeat(900_000);
    String tooBig = "y".repeat(3_000_000);
    String text =
        "lat1,lon1,lat2,lon2,note\n0,0,90,0," + big + "\n0,0,90,0," + tooBig + "\n0,0,90,0,z\n";
    Ran ran = run(text);
    String figures = ",0.000000,10001965.7293\n";
    assertEquals(
        "lat1,lon1,lat2,lon2,note,course_deg,distance_m\n0,0,90,0,"
            + big
            + figures
            + "0,0,90,0,"
            + tooBig
            + ",,\n0,0,90,0,z"
            + figures,
        ran.out());
    assertEquals(
        List.of("rows.csv, line 3: a row must be shorter than 1048576 bytes, but is longer"),
        ran.refusals());
    assertEquals(3, ran.summary().rows());
  }

  @Test
  void aLineTooLongAtTheVeryEndIsStillARefusedRow() {
    for (int length : new int[] {1 << 20, 1 << 21, (1 << 21) + 7}) {
      Ran ran = run(HEADING + "z".repeat(length));
      assertEquals(1, ran.summary().refused(), () -> "" + length);
      assertTrue(ran.out().endsWith("z,,") || ran.out().endsWith("z,,,,,"), () -> "" + length);
    }
  }

  @Test
  void whatHasNoHeadingIsRefusedByName() {
    assertEquals(
        "rows.csv, line 1: the first row must name the columns, but it is empty", refusal(""));
    assertEquals(
        "rows.csv, line 1: the first row must name the columns, but it is empty", refusal("\n1"));
    assertTrue(
        refusal("0,0,90,0\n").contains("column lat1 is missing; the first row must name the"));
    assertTrue(refusal("lat1;lon1;lat2;lon2\n").contains("columns must be separated by commas"));
    assertTrue(refusal("Lat1,lon1,lat2,lon2\n").contains("\"Lat1\" is written otherwise"));
    assertTrue(refusal("lat1,lon1,lat2,lon2,lat1\n").contains("column lat1 stands twice"));
    assertTrue(refusal("lat1,lon1,\"lat2,lon2\n").contains("a quotation mark is not closed"));
    byte[] utf16 = "lat1,lon1,lat2,lon2\n".getBytes(StandardCharsets.UTF_16);
    assertTrue(
        Refusal.message(() -> Batches.run("rhumb-inverse", STANDARD, utf16))
            .contains("must be UTF-8"));
    InputFormatException all = assertThrows(InputFormatException.class, () -> run("a,b\n1,2\n"));
    assertEquals(4, all.problems().size());
  }

  @Test
  void aColumnThatWouldStandTwiceNeedsAPrefix() {
    String text = "lat1,lon1,course_deg,distance_m,lat2,lon2\n0,0,0,10001965.7293,90,0\n";
    assertTrue(
        Refusal.message(() -> Batches.run("rhumb-direct", STANDARD, text))
            .contains("column lat2 stands here already"));
    Ran ran = Batches.run("rhumb-direct", STANDARD.withPrefix("again_"), text);
    assertEquals("again_lat2", ran.row(0)[6]);
    assertTrue(Refusal.message(() -> STANDARD.withPrefix("a,b")).contains("a,b"));
  }

  @Test
  void stopsAtTheFirstRefusedRowIfToldTo() {
    Ran ran =
        Batches.run(
            "rhumb-inverse",
            STANDARD.withStopAtRefusal(true),
            HEADING + "0,0,90,0\nbad,0,0,0\n0,0,90,0\nworse,0,0,0\n");
    assertEquals("lat1,lon1,lat2,lon2,course_deg,distance_m\n" + QUARTER + "\n", ran.out());
    assertEquals(1, ran.refusals().size());
    assertTrue(ran.summary().stopped());
    assertEquals(2, ran.summary().exitStatus());
  }

  @Test
  void theFirstHundredRefusalsAreToldAndAllCounted() {
    Ran ran = run(HEADING + "x,0,0,0\n".repeat(50_000));
    assertEquals(BatchListener.MOST_TOLD, ran.refusals().size());
    assertEquals(50_000, ran.summary().refused());
    assertTrue(ran.refusals().get(99).startsWith("rows.csv, line 101,"));
  }

  /** Rows enough for several chunks, with fields of every length and some bad rows. */
  private static String manyRows(int count) {
    SplittableRandom random = new SplittableRandom(17);
    StringBuilder text = new StringBuilder("id,").append(HEADING);
    for (int i = 0; i < count; i++) {
      text.append(i).append(',').append(random.nextDouble(-80, 80)).append(',');
      text.append(random.nextDouble(-180, 180)).append(',').append(random.nextDouble(-80, 80));
      text.append(',').append(i % 997 == 0 ? "?" : random.nextDouble(-180, 180)).append('\n');
    }
    return text.toString();
  }

  @Test
  void orderAndBytesDoNotDependOnThreads() {
    String text = manyRows(15_000);
    Ran one = Batches.run("rhumb-inverse", STANDARD.withThreads(1), text);
    Ran two = Batches.run("rhumb-inverse", STANDARD.withThreads(2), text);
    Ran seven = Batches.run("rhumb-inverse", STANDARD.withThreads(7), text);
    assertEquals(one.out(), two.out());
    assertEquals(one.out(), seven.out());
    assertEquals(one.refusals(), two.refusals());
    String[] lines = one.out().split("\n");
    assertEquals(15_001, lines.length);
    for (int i = 1; i < lines.length; i += 371) {
      assertTrue(lines[i].startsWith((i - 1) + ","));
    }
  }

  @Test
  void bytesDoNotDependOnHowTheyArrive() {
    byte[] text = manyRows(5_000).getBytes(StandardCharsets.UTF_8);
    Ran whole = Batches.run("rhumb-inverse", STANDARD, text);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayInputStream bytes = new ByteArrayInputStream(text);
    InputStream dribble =
        new InputStream() {
          private int turn;

          @Override
          public int read() {
            return bytes.read();
          }

          @Override
          public int read(byte[] into, int offset, int length) {
            turn = (turn + 331) % 977;
            return bytes.read(into, offset, Math.min(length, 1 + turn));
          }
        };
    assertDoesRun(dribble, out);
    assertArrayEquals(whole.out().getBytes(StandardCharsets.UTF_8), out.toByteArray());
  }

  private static void assertDoesRun(InputStream in, OutputStream out) {
    try {
      BatchRun.of("rhumb-inverse", STANDARD)
          .run("rows.csv", in, out, BatchListener.printingTo(new PrintWriter(new StringWriter())));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  /** A long stream of rows must not be held at once. */
  @Test
  @SuppressWarnings("InputStreamSlowMultibyteRead") // one byte after another counts them
  void aLongStreamIsNeverHeldWhole() throws IOException {
    byte[] heading = HEADING.getBytes(StandardCharsets.UTF_8);
    byte[] row = "50.105,-5.535,50.2,-5.43\n".getBytes(StandardCharsets.UTF_8);
    int rows = 100_000;
    long[] ahead = {0, 0};
    InputStream in =
        new InputStream() {
          private long place;

          @Override
          public int read() {
            long length = heading.length + (long) rows * row.length;
            if (place >= length) {
              return -1;
            }
            byte next =
                place < heading.length
                    ? heading[(int) place]
                    : row[(int) ((place - heading.length) % row.length)];
            place++;
            ahead[0] = Math.max(ahead[0], place - ahead[1]);
            return next;
          }
        };
    OutputStream out =
        new OutputStream() {
          @Override
          public void write(int one) {
            ahead[1]++;
          }

          @Override
          public void write(byte[] bytes, int offset, int length) {
            ahead[1] += length;
          }
        };
    assertDoesRun(in, out);
    assertTrue(ahead[1] > (long) rows * row.length);
    // two chunks a thread and two more are under way; what is written is longer than what is read
    int most = (2 * Runtime.getRuntime().availableProcessors() + 4) * BatchRun.CHUNK_BYTES;
    assertTrue(ahead[0] < most, () -> ahead[0] + " bytes read and not yet written");
  }

  @Test
  void aPipeThatBreaksIsNotSwallowed() {
    OutputStream broken =
        new OutputStream() {
          @Override
          public void write(int one) throws IOException {
            throw new IOException("broken pipe");
          }
        };
    InputStream in = new ByteArrayInputStream(manyRows(10).getBytes(StandardCharsets.UTF_8));
    IOException told =
        assertThrows(
            IOException.class,
            () ->
                BatchRun.of("rhumb-inverse", STANDARD)
                    .run(
                        "rows.csv",
                        in,
                        broken,
                        BatchListener.printingTo(new PrintWriter(new StringWriter()))));
    assertEquals("broken pipe", told.getMessage());
  }

  @Test
  void operationsAreRefusedByName() {
    assertTrue(
        Refusal.message(() -> BatchRun.of("rhumb", STANDARD))
            .contains("rhumb-inverse, rhumb-direct"));
    assertEquals(
        "the reverse is for utm, british-grid, irish-grid, itm, mgrs, but was asked of fix",
        Refusal.message(() -> BatchRun.of("fix", STANDARD.withReverse(true))));
    assertEquals(
        "a chance is for fix, but was asked of utm",
        Refusal.message(() -> BatchRun.of("utm", STANDARD.withChance(0.5))));
    assertEquals(
        "a geodesic line is for cross-track, but was asked of leg-errors",
        Refusal.message(() -> BatchRun.of("leg-errors", STANDARD.withGeodesicLine(true))));
    assertEquals(
        "a precision is for mgrs, but was asked of utm",
        Refusal.message(() -> BatchRun.of("utm", STANDARD.withPrecision(GridPrecision.KILOMETRE))));
    assertTrue(
        Refusal.message(
                () -> BatchRun.of("variation", STANDARD.withEllipsoid(Ellipsoid.sphere(6.371e6))))
            .startsWith("another ellipsoid is for rhumb-inverse, "));
    assertTrue(Refusal.message(() -> BatchRun.of("tide-height", STANDARD)).contains("constants"));
    for (String name : BatchOperations.names()) {
      if (!name.equals("tide-height")) {
        assertTrue(BatchRun.of(name, STANDARD).adds().size() > 0);
      }
    }
  }
}
