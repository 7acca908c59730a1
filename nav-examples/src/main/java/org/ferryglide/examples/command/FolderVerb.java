package org.ferryglide.examples.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.concurrent.Callable;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.tide.folder.PassageFolder;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A verb about a passage's folder. */
abstract class FolderVerb extends Verb {
  @Parameters(index = "0", paramLabel = "FOLDER", description = "The passage's folder.")
  private Path folder = Path.of("");

  @Option(
      names = "--depart",
      paramLabel = "TIME",
      description = "Another start than the folder's, as 2026-06-14T11:40+01:00.")
  private @Nullable OffsetDateTime depart;

  @Mixin private Progress progress = new Progress();

  /** Work of which the error stream tells. */
  final <T> T during(String what, Callable<T> work) throws Exception {
    return during(progress, what, work);
  }

  /** The folder as read, begun when it is asked to. */
  final PassageFolder read() throws IOException {
    PassageFolder read = PassageFolder.read(folder);
    return depart == null ? read : read.withStart(depart);
  }

  /** How a plan ends the verb: a check that stops, or that could not be made, is no yes. */
  static Status status(Outcome<TimedPlan, NotPossible> plan) {
    return plan.match(
        solved -> solved.holds() ? Status.DONE : Status.LIMIT_PASSED,
        why -> why.isDataMissing() ? Status.DATA_MISSING : Status.NOT_POSSIBLE);
  }
}
