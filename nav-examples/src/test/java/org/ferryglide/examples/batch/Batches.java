package org.ferryglide.examples.batch;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.note.InputProblem;

/** Runs batches over text, for tests. */
final class Batches {
  private Batches() {}

  /**
   * What a batch left behind.
   *
   * @param out all that was written
   * @param lines its lines
   * @param refusals the problems told
   * @param summary the counts
   */
  record Ran(String out, String[] lines, List<String> refusals, BatchSummary summary) {
    /** The fields of a row; the heading is row 0. */
    String[] row(int index) {
      return lines[index].split(",", -1);
    }

    double number(int index, int column) {
      return Double.parseDouble(row(index)[column]);
    }
  }

  static Ran run(String operation, BatchOptions options, String text) {
    return run(operation, options, text.getBytes(StandardCharsets.UTF_8));
  }

  static Ran run(String operation, BatchOptions options, byte[] text) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    List<String> refusals = new ArrayList<>();
    BatchListener listener =
        new BatchListener() {
          @Override
          public void refused(InputProblem problem) {
            refusals.add(problem.toString());
          }

          @Override
          public void progress(long rows, long rowsASecond) {}
        };
    try {
      BatchSummary summary =
          BatchRun.of(operation, options)
              .run("rows.csv", new ByteArrayInputStream(text), out, listener);
      String written = out.toString(StandardCharsets.UTF_8);
      return new Ran(written, written.split("\n", -1), refusals, summary);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static BatchOptions full() {
    return BatchOptions.standard().withFullPrecision(true);
  }

  /** Rows of a published table beside the tests of another module; comments left out. */
  static List<String[]> published(String module, String file) {
    Path path =
        Path.of("..", module, "src", "test", "resources", "org", "ferryglide").resolve(file);
    try {
      return Files.readAllLines(path).stream()
          .filter(line -> !line.isEmpty() && !line.startsWith("#"))
          .map(line -> line.split(",", -1))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Some columns of a table under a heading. */
  static String csv(String heading, List<String[]> rows, int... columns) {
    StringBuilder text = new StringBuilder(heading).append('\n');
    for (String[] row : rows) {
      for (int i = 0; i < columns.length; i++) {
        text.append(i == 0 ? "" : ",").append(row[columns[i]].trim());
      }
      text.append('\n');
    }
    return text.toString();
  }
}
