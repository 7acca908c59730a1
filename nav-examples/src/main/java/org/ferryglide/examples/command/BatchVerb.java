package org.ferryglide.examples.command;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.ferryglide.examples.batch.BatchListener;
import org.ferryglide.examples.batch.BatchOperations;
import org.ferryglide.examples.batch.BatchOptions;
import org.ferryglide.examples.batch.BatchRun;
import org.ferryglide.examples.batch.BatchSummary;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.grid.GridPrecision;
import org.ferryglide.nav.note.InputProblem;
import org.ferryglide.tide.harmonic.HarmonicConstants;
import org.ferryglide.tide.harmonic.HarmonicTide;
import org.ferryglide.tide.harmonic.NodalConvention;
import org.ferryglide.tide.harmonic.NodalScheme;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** One operation over every row of a comma-separated file. */
@Command(
    name = "batch",
    description = {
      "One operation over every row of a comma-separated file; columns are added at the end.",
      "",
      "Operations: " + BatchOperations.HELP,
      "",
      "Columns are found by their names in the first row; others pass through. A row that cannot be"
          + " worked passes with empty figures and is told by its line; the status is then 2."
          + " Figures are rounded: positions to nine decimals of a degree, directions to six,"
          + " lengths to a tenth of a millimetre."
    },
    footer = {
      "",
      "Example:",
      "  ferryglide batch rhumb-inverse nav-examples/batch/legs.csv --out"
          + " nav-examples/target/laid-off.csv",
      "reads leg,lat1,lon1,lat2,lon2 and adds course_deg,distance_m."
    })
final class BatchVerb extends Verb {
  private static final Path STANDARD_INPUT = Path.of("-");

  @Parameters(index = "0", paramLabel = "OPERATION", description = "What to work.")
  private String operation = "";

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "FILE",
      description = "The rows; standard input where it is left out or is -.")
  private Path file = STANDARD_INPUT;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Where the rows go; standard output by default.")
  private @Nullable Path outFile;

  @Option(names = "--reverse", description = "From the grid to the position, for grids.")
  private boolean reverse;

  @Option(names = "--full-precision", description = "Figures that read back to the same double.")
  private boolean fullPrecision;

  @Option(names = "--stop", description = "Stop at the first row that cannot be worked.")
  private boolean stop;

  @Option(names = "--threads", paramLabel = "N", description = "Every processor by default.")
  private @Nullable Integer threads;

  @Option(
      names = "--prefix",
      paramLabel = "TEXT",
      description = "Text before the name of each column added.")
  private String prefix = "";

  @Option(
      names = "--ellipsoid",
      paramLabel = "A,1/F",
      description =
          "Semi-major axis in metres and inverse flattening, 0 for a sphere; WGS84"
              + " by default.")
  private @Nullable String ellipsoid;

  @Option(names = "--geodesic", description = "cross-track: from the geodesic, not the rhumb line.")
  private boolean geodesic;

  @Option(
      names = "--precision",
      paramLabel = "METRES",
      description = "mgrs: side of the square, 1, 10 … 100000; 1 by default.")
  private int precision = 1;

  @Option(
      names = "--constants",
      paramLabel = "FILE",
      description = "tide-height: the station's harmonic constants.")
  private @Nullable Path constants;

  @Option(
      names = "--chance",
      paramLabel = "P",
      description = "fix: chance that the ellipse holds the true position; 0.95 by default.")
  private double chance = 0.95;

  @Mixin private Progress progress = new Progress();

  @Override
  protected Answer answer() throws IOException {
    if (isJson() && outFile == null) {
      throw new InputRefused("--json tells the counts, so --out must say where rows go");
    }
    BatchOptions options = options();
    BatchRun run = InputRefused.given(() -> BatchRun.of(operation, options));
    BatchListener listener = new OnErrorStream(err(), progress.isTold(isOnTerminal()));
    BatchSummary summary;
    try (InputStream in = input();
        OutputStream rows =
            outFile == null ? new WriterStream(out()) : Files.newOutputStream(outFile)) {
      summary =
          run.run(file.equals(STANDARD_INPUT) ? "standard input" : name(), in, rows, listener);
    }
    Answer answer = new Answer();
    if (outFile == null) { // the rows have standard output to themselves
      err().println(summary);
    } else {
      answer.line(summary.toString());
    }
    return answer
        .value("rows", summary.rows())
        .value("refused", summary.refused())
        .value("rowsASecond", summary.rowsASecond())
        .status(summary.refused() == 0 ? Status.DONE : Status.REFUSED);
  }

  /** Refused rows always, progress where it is wanted. */
  private record OnErrorStream(PrintWriter err, boolean isProgressTold) implements BatchListener {
    @Override
    public void refused(InputProblem problem) {
      err.println(problem);
      err.flush();
    }

    @Override
    public void progress(long rows, long rowsASecond) {
      if (isProgressTold) {
        err.println(rows + " rows, " + rowsASecond + " rows a second");
        err.flush();
      }
    }
  }

  private String name() {
    return String.valueOf(file.getFileName());
  }

  private InputStream input() throws IOException {
    if (Files.isDirectory(file)) {
      throw new InputRefused(file + ": must be a file, but is a folder");
    }
    return file.equals(STANDARD_INPUT)
        ? new BufferedInputStream(System.in)
        : Files.newInputStream(file);
  }

  private BatchOptions options() throws IOException {
    BatchOptions options = InputRefused.given(this::plainOptions);
    if (constants != null) {
      String station = String.valueOf(constants.getFileName());
      options =
          options.withTide(
              HarmonicTide.of(
                  station,
                  "the datum of the constants",
                  HarmonicConstants.read(constants, NodalScheme.schureman()),
                  NodalConvention.MID_YEAR));
    }
    return options;
  }

  private BatchOptions plainOptions() {
    BatchOptions options =
        BatchOptions.standard()
            .withReverse(reverse)
            .withFullPrecision(fullPrecision)
            .withStopAtRefusal(stop)
            .withPrefix(prefix)
            .withGeodesicLine(geodesic)
            .withPrecision(gridPrecision())
            .withChance(chance);
    if (threads != null) {
      options = options.withThreads(threads);
    }
    return ellipsoid == null ? options : options.withEllipsoid(ellipsoid(ellipsoid));
  }

  private GridPrecision gridPrecision() {
    for (GridPrecision each : GridPrecision.values()) {
      if (each.sideMetres() == precision) {
        return each;
      }
    }
    throw new InputRefused(
        "--precision must be 1, 10, 100, 1000, 10000 or 100000 metres, but was " + precision);
  }

  private static Ellipsoid ellipsoid(String text) {
    String[] parts = text.split(",", -1);
    try {
      double axis = Double.parseDouble(parts[0]);
      double inverse = Double.parseDouble(parts[1]);
      return parts.length > 2
          ? refuse(text)
          : inverse == 0.0 ? Ellipsoid.sphere(axis) : Ellipsoid.ofInverseFlattening(axis, inverse);
    } catch (NumberFormatException | ArrayIndexOutOfBoundsException e) {
      return refuse(text);
    }
  }

  private static Ellipsoid refuse(String text) {
    throw new InputRefused(
        "--ellipsoid must be two numbers as 6378137,298.257223563, but was \"" + text + "\"");
  }
}
