package org.ferryglide.examples.command;

import java.io.PrintWriter;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.ferryglide.examples.files.JsonText;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/**
 * One verb of the command. Its class carries picocli's {@code @Command} with name, description and
 * a footer that holds an example; {@link #answer} does the work.
 *
 * <pre>{@code
 * @Command(name = "leg", description = "Course and distance of a leg.")
 * final class LegVerb extends Verb {
 *   @Override
 *   protected Answer answer() { … }
 * }
 * }</pre>
 */
public abstract class Verb implements Callable<Integer> {
  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help.")
  @SuppressWarnings("UnusedVariable") // picocli asks for it itself
  private boolean help;

  @Option(names = "--json", description = "Answer as JSON.")
  private boolean json;

  @Spec private @Nullable CommandSpec spec;

  /** Makes a verb. */
  protected Verb() {}

  /**
   * Does the work.
   *
   * @return the answer
   * @throws Exception if the input is refused ({@link IllegalArgumentException} with what was given
   *     and what is allowed, {@link java.time.DateTimeException}, {@link java.io.IOException});
   *     anything else counts as a fault of the program
   */
  protected abstract Answer answer() throws Exception;

  /**
   * Whether the answer goes out as JSON.
   *
   * @return true with {@code --json}
   */
  protected final boolean isJson() {
    return json;
  }

  @Override
  public final Integer call() throws Exception {
    Answer answer = answer();
    out().print(json ? JsonText.of(answer.values()) : answer.text());
    return answer.status().code();
  }

  /**
   * Where answers go.
   *
   * @return the writer of standard output
   */
  protected final PrintWriter out() {
    return Objects.requireNonNull(spec).commandLine().getOut();
  }

  /** Does long work; of work that takes its time the error stream tells, if people look there. */
  final <T> T during(Progress progress, String what, Callable<T> work) throws Exception {
    return progress.during(err(), isOnTerminal(), what, work);
  }

  /** Whether people look at the error stream. */
  final boolean isOnTerminal() {
    Object top = Objects.requireNonNull(spec).root().userObject();
    return top instanceof Ferryglide command && command.isOnTerminal();
  }

  /**
   * Where progress goes.
   *
   * @return the writer of the error stream
   */
  protected final PrintWriter err() {
    return Objects.requireNonNull(spec).commandLine().getErr();
  }
}
