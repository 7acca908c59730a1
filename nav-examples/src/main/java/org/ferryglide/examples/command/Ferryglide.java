package org.ferryglide.examples.command;

import java.io.FileDescriptor;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import org.ferryglide.nav.bearing.Deviation;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Option;

/**
 * The command {@code ferryglide}: reads its arguments, runs one verb, prints its answer.
 *
 * <pre>{@code
 * java -jar ferryglide.jar leg "46-10.0N 26-20.0W" "46-11.8N 26-17.6W"
 * }</pre>
 *
 * <p>Answers go to standard output, refusals to the error stream, one line each; both are UTF-8.
 */
@Command(
    name = "ferryglide",
    synopsisSubcommandLabel = "VERB",
    description = "Navigation for sea kayakers: bearings, legs, tides, streams, courses to steer.",
    footer = {
      "",
      "ferryglide VERB --help tells more, with an example. Positions are written 46-11.8N"
          + " 26-17.6W,",
      "46°11.8'N 026°17.6'W or 46.197,-26.293, in quotes where they hold blanks.",
      "",
      "Exit status: 0 done; 1 a fault of ours; 2 input refused; 3 not possible; 4 data missing;",
      "5 done, but a stop limit is passed or a check that was asked for could not be made.",
      "",
      "Official charts, tables, forecasts and the coastguard's advice come first; local rules and",
      "trained judgement decide. These are sums, not a permission to go."
    })
public final class Ferryglide implements Runnable {
  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help.")
  @SuppressWarnings("UnusedVariable") // picocli asks for it itself
  private boolean help;

  private final boolean onTerminal;

  private Ferryglide(boolean onTerminal) {
    this.onTerminal = onTerminal;
  }

  /**
   * Runs the command and exits with its status.
   *
   * @param args the verb and its arguments
   */
  public static void main(String[] args) {
    StandardStream out = new StandardStream(FileDescriptor.out);
    PrintWriter err = new StandardStream(FileDescriptor.err).writer();
    int status = run(args, out.writer(), err, Terminal.isErrors());
    if (out.isLost()) {
      err.println("standard output cannot be written");
      err.flush();
      status = Status.REFUSED.code();
    }
    if (status != Status.DONE.code()) {
      System.exit(status);
    }
  }

  /**
   * Runs the command with its streams, so that tests and programs can read them.
   *
   * @param args the verb and its arguments
   * @param out where answers go
   * @param err where refusals go
   * @return the exit status, see {@link Status}
   */
  public static int run(String[] args, PrintWriter out, PrintWriter err) {
    return run(args, out, err, false);
  }

  /** Runs the command, its error stream a terminal or not. */
  static int run(String[] args, PrintWriter out, PrintWriter err, boolean onTerminal) {
    boolean isVerb = args.length > 0 && Verbs.named(args[0]) != null;
    CommandLine line = line(isVerb ? List.of(args[0]) : Verbs.NAMES, onTerminal);
    Refusals refusals = new Refusals();
    line.setOut(out)
        .setErr(err)
        .registerConverter(Position.class, new ReadAs.Positions())
        .registerConverter(Speed.class, new ReadAs.Speeds())
        .registerConverter(Distance.class, new ReadAs.Distances())
        .registerConverter(TrueBearing.class, new ReadAs.TrueBearings())
        .registerConverter(Path.class, new ReadAs.Paths())
        .registerConverter(LocalDate.class, new ReadAs.Dates())
        .registerConverter(LocalTime.class, new ReadAs.Times())
        .registerConverter(OffsetDateTime.class, new ReadAs.DatesAndTimes())
        .registerConverter(ZoneId.class, new ReadAs.Zones())
        .registerConverter(Variation.class, new ReadAs.Variations())
        .registerConverter(Deviation.class, new ReadAs.Deviations())
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setExpandAtFiles(false) // an argument is what it is
        .setUsageHelpWidth(100)
        .setParameterExceptionHandler(refusals)
        .setExecutionExceptionHandler(refusals);
    if (!isColourful()) {
      line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
    }
    int status = executed(line, args, err);
    out.flush();
    err.flush();
    return status;
  }

  /** What is no exception but the end of the machine's means is told in one line too. */
  private static int executed(CommandLine line, String[] args, PrintWriter err) {
    try {
      return line.execute(args);
    } catch (OutOfMemoryError e) {
      err.println("ferryglide: out of memory: " + e.getMessage() + "; java -Xmx gives more");
    } catch (StackOverflowError e) {
      err.println("ferryglide: a fault of ours: calls nested too deeply; java -Xss gives more");
    }
    return Status.OUR_FAULT.code();
  }

  /** The command with some of its verbs; only theirs are loaded. */
  static CommandLine line(List<String> names, boolean onTerminal) {
    CommandLine line = new CommandLine(new Ferryglide(onTerminal));
    for (String name : names) {
      line.addSubcommand(Verbs.named(name));
    }
    return line;
  }

  /** Escapes go to terminals that know them only: to both streams or to none. */
  private static boolean isColourful() {
    @Nullable String terminal = System.getenv("TERM");
    return System.getenv("NO_COLOR") == null
        && terminal != null
        && !terminal.equals("dumb")
        && Terminal.isOutput()
        && Terminal.isErrors();
  }

  /** Whether the error stream is a terminal. */
  boolean isOnTerminal() {
    return onTerminal;
  }

  /** Comes here only without a verb. */
  @Override
  public void run() {
    throw new InputRefused("a verb is expected: " + String.join(", ", Verbs.NAMES));
  }
}
