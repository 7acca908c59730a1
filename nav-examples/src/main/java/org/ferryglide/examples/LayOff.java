package org.ferryglide.examples;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.ferryglide.nav.note.InputFormatException;

/**
 * The main job: reads a scenario folder and lays off its passage, leg by leg.
 *
 * <p>Exit status 0 when the passage was laid off, possible or not; 2 when the folder could not be
 * read, with what is wrong and where on the error stream.
 */
public final class LayOff {
  private LayOff() {}

  /**
   * Runs the main job.
   *
   * @param args the scenario folder; without one the example passage
   */
  public static void main(String[] args) {
    PrintStream out = utf8(FileDescriptor.out);
    PrintStream err = utf8(FileDescriptor.err);
    int status = run(args, out, err);
    if (status != 0) {
      System.exit(status);
    }
  }

  /** The main job with its streams, so that tests can read them. */
  static int run(String[] args, PrintStream out, PrintStream err) {
    if (args.length > 1) {
      err.println("one scenario folder is expected, but there were " + args.length);
      return 2;
    }
    try {
      Scenario scenario = Scenario.read(args.length == 1 ? Path.of(args[0]) : example());
      new PassagePrinter(out, scenario.start().getOffset())
          .print(scenario, LaidOffLeg.all(scenario));
      return 0;
    } catch (InputFormatException e) {
      err.println(e.getMessage());
    } catch (FileSystemException e) {
      err.println(e.getFile() + ": " + (e.getReason() == null ? "cannot be read" : e.getReason()));
    } catch (IOException e) {
      err.println("cannot read the scenario: " + e.getMessage());
    }
    return 2;
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
