package org.ferryglide.examples;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.tide.folder.PassageFolder;

/**
 * The main job: reads a passage's folder and lays off its passage, leg by leg.
 *
 * <p>Exit status 0 when the passage was laid off, possible or not; 2 when the folder could not be
 * read, with what is wrong and where on the error stream; 3 when the tables do not cover the
 * passage, so that there is no answer.
 */
public final class LayOff {
  private static final int LAID_OFF = 0;
  private static final int REFUSED = 2;
  private static final int NO_DATA = 3;

  private static final String HELP =
      """
      Lays off a passage from a folder of plain text files: courses, distances, headings to steer
      in the stream, times, daylight, the height of tide at the landing.

        LayOff [--card | --when] [folder]
        LayOff [--page FILE] [--sheet FILE] [--shore FILE] [--pictures FOLDER] [folder]
        LayOff [--words FILE] with any of these, [--units UNITS] with what is written and the card

      With --card the deck card of the passage is printed, with --when the departures of its day
      for which no check stops. With --page the passage is written as one HTML page to be read on a
      phone, printed and pinned up; with --sheet its cards, four to an A4 sheet; with --shore the
      note that is left ashore; with --pictures the page's pictures singly, as SVG and PNG. These and
      the card work out the way home too and take some seconds. --units prints them in other units
      than nautical miles, knots and metres: of km, mi, km/h, mph, m/s and ft those wished, as
      km,km/h; --words in another language, from a file of keys and words. Without a folder the
      example passage is laid off. A folder whose name holds blanks may be given as it is. The folder holds

        passage.csv     items name, start, paddling speed, printed rose, landing port
        waypoints.csv   name and position of every way point, in order
        streams.csv     hourly stream tables
        tides/*.csv     high and low waters of every port named
        limits.csv      may be left out: light, latest arrival, strongest stream,
                        largest cross-stream share, reach of stations
        shore.csv       may be left out: party, craft, carried, call, overdue, contact's clock,
                        remarks, for the note that is left ashore
        places.csv, legs.csv, party.csv, margins.csv, dangers.csv, lanes.csv, coast.csv,
                        refuges.csv, wind.csv
                        may be left out: what is known beyond that, for checks and card

      The example in nav-examples/scenarios/ollen-skerries shows each of them; copy it.
      With Maven: ./mvnw -q -pl nav-examples -am compile exec:java -Dexec.args="my folder"

      Exit status: 0 laid off, possible or not (a card sheet needs a passage that is possible: else 3); 2 the folder is refused, with every problem by file,
      line and column; 3 the tables do not cover the passage.
      """;

  private LayOff() {}

  /**
   * Runs the main job.
   *
   * @param args options as {@code --help} tells them, then the passage's folder or nothing for the
   *     example passage
   */
  public static void main(String[] args) {
    PrintStream out = utf8(FileDescriptor.out);
    PrintStream err = utf8(FileDescriptor.err);
    int status = run(args, out, err);
    if (status != LAID_OFF) {
      System.exit(status);
    }
  }

  /** The main job with its streams, so that tests can read them. */
  static int run(String[] args, PrintStream out, PrintStream err) {
    if (args.length == 1 && (args[0].equals("--help") || args[0].equals("-h"))) {
      out.print(HELP);
      return LAID_OFF;
    }
    boolean card = false;
    boolean when = false;
    Written written = new Written();
    int next = 0;
    try {
      for (; next < args.length && args[next].startsWith("--"); next++) {
        Optional<String> file =
            next + 1 < args.length ? Optional.of(args[next + 1]) : Optional.empty();
        if (written.takes(args[next], file)) {
          next++;
        } else if (args[next].equals("--card")) {
          card = true;
        } else if (args[next].equals("--when")) {
          when = true;
        } else {
          break; // a folder may be called anything
        }
      }
      if (written.isInUnits() && written.isEmpty() && !card) {
        throw new IllegalArgumentException(
            Written.UNITS + " is for --card, --page, --sheet, --shore or --pictures");
      }
      String[] folder = Arrays.copyOfRange(args, next, args.length);
      return run(folder, card, when, written, out, err);
    } catch (InvalidPathException e) {
      err.println("must be the name of a file or folder; --help tells more");
    } catch (IllegalArgumentException e) {
      err.println(e.getMessage());
    } catch (IOException e) {
      tell(e, err);
    }
    return REFUSED;
  }

  private static int run(
      String[] args,
      boolean card,
      boolean when,
      Written written,
      PrintStream out,
      PrintStream err) {
    try {
      // Maven parts its arguments at blanks
      Path folder = args.length == 0 ? example() : Path.of(String.join(" ", args));
      if (args.length > 1 && !Files.isDirectory(folder)) {
        err.println("one scenario folder is expected, but there were " + args.length);
        return REFUSED;
      }
      PassageFolder read = PassageFolder.read(folder);
      if (!written.isEmpty()) {
        return written.write(read, out) ? LAID_OFF : NO_DATA;
      }
      if (card || when) {
        out.print(
            card
                ? PlanPrinter.card(written.worked(read))
                : PlanPrinter.windows(read, written.labels()));
        return LAID_OFF;
      }
      LaidOffPassage passage = LaidOffPassage.of(read);
      out.print(PassagePrinter.print(passage, written.labels()));
      return passage.isWithoutData() ? NO_DATA : LAID_OFF;
    } catch (InputFormatException e) {
      err.println(e.getMessage());
    } catch (IOException e) {
      tell(e, err);
    }
    return REFUSED;
  }

  private static void tell(IOException why, PrintStream err) {
    if (why instanceof NotDirectoryException file) {
      err.println(file.getFile() + ": must be a folder, but is a file");
    } else if (why instanceof FileSystemException file) {
      String reason = file.getReason() == null ? "cannot be read or written" : file.getReason();
      err.println(file.getFile() + ": " + reason);
    } else {
      err.println("cannot be read: " + why.getMessage());
    }
  }

  /** The example stands in the module's folder, from wherever the build was started. */
  private static Path example() {
    Path inModule = Path.of("scenarios", "ollen-skerries");
    return Files.isDirectory(inModule)
        ? inModule
        : Path.of("nav-examples", "scenarios", "ollen-skerries");
  }

  /** Degree signs come out right even where the machine's own charset lacks them. */
  private static PrintStream utf8(FileDescriptor descriptor) {
    return new PrintStream(new FileOutputStream(descriptor), true, StandardCharsets.UTF_8);
  }
}
