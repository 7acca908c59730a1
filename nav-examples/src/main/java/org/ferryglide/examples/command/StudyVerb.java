package org.ferryglide.examples.command;

import java.nio.file.Path;
import org.ferryglide.examples.study.LegStudy;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The study of errors of legs. */
@Command(
    name = "study",
    description =
        "Rhumb lines beside geodesics, and what a compass, an old rose, a chart's edge, a map's"
            + " straight line, a sphere and a plane add: tables, pictures and a report into a"
            + " folder.",
    footer = {"", "Example:", "  ferryglide study nav-examples/target/study --seed 1 --legs 500"})
final class StudyVerb extends Verb {
  @Parameters(index = "0", paramLabel = "FOLDER", description = "Where the files go.")
  private Path folder = Path.of("");

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "What legs are drawn from; 1 by default.")
  private long seed = 1;

  @Option(names = "--legs", paramLabel = "N", description = "How many; 20000 by default.")
  private int legs = 20_000;

  @Mixin private Progress progress = new Progress();

  @Override
  protected Answer answer() throws Exception {
    LegStudy study = InputRefused.given(() -> LegStudy.ofSeed(seed).withLegs(legs));
    during(
        progress,
        "study of " + legs + " legs",
        () -> {
          study.writeTo(folder);
          return legs;
        });
    return new Answer()
        .line(folder.resolve("report.md") + " and its tables and pictures are written")
        .value("report", folder.resolve("report.md").toString())
        .value("legs", legs)
        .value("seed", seed);
  }
}
