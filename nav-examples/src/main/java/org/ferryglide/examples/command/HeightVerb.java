package org.ferryglide.examples.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.tide.height.TableCurve;
import org.ferryglide.tide.height.TideEvent;
import org.ferryglide.tide.height.TideTable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The height of tide at a time. */
@Command(
    name = "height",
    description = "Height of tide at a time, from a table of high and low waters.",
    footer = {
      "",
      "Example:",
      "  ferryglide height nav-examples/scenarios/ollen-skerries/tides/dunlathe.csv --at"
          + " 2026-06-14T14:17+01:00 --working"
    })
final class HeightVerb extends Verb {
  @Parameters(
      index = "0",
      paramLabel = "TABLE",
      description = "A tide table: port,datum,time,height_m,kind.")
  private Path table = Path.of("");

  @Option(
      names = "--at",
      required = true,
      paramLabel = "TIME",
      description = "When, as 2026-06-14T14:17+01:00.")
  private @Nullable OffsetDateTime at;

  @Mixin private WorkingOption working = new WorkingOption();

  @Override
  protected Answer answer() throws IOException {
    TideTable read = TideTable.read(table);
    OffsetDateTime when = Objects.requireNonNull(at);
    Instant time = when.toInstant();
    ZoneOffset offset = when.getOffset();
    TableCurve cosine = TableCurve.cosine(read);
    Optional<Distance> height = cosine.heightAt(time);
    Answer answer =
        new Answer()
            .row("port", read.port())
            .value("port", read.port())
            .value("datum", read.datum())
            .value("time", time.toString())
            .value("known", height.isPresent());
    if (height.isEmpty()) {
      return answer
          .line(
              "no data: the table is from "
                  + Times.minute(read.start(), offset)
                  + " to "
                  + Times.minute(read.end(), offset))
          .status(Status.DATA_MISSING);
    }
    double twelfths = TableCurve.twelfths(read).heightAt(time).orElseThrow().metres();
    answer
        .row("height", metres(height.get().metres()) + " above " + read.datum() + ", by the cosine")
        .row("", metres(twelfths) + " by the rule of twelfths")
        .value("heightMetres", height.get().metres())
        .value("heightMetresByTwelfths", twelfths);
    read.lastUpTo(time).ifPresent(water -> answer.row("after", words(water, offset)));
    read.firstAfter(time).ifPresent(water -> answer.row("before", words(water, offset)));
    working.adding(
        answer,
        it -> ByHand.heights(read, time, offset).forEach(each -> it.working(each.working())));
    return answer.notes(cosine.notesAt(time));
  }

  /** Down, since what is asked is whether there is water enough. */
  private static String metres(double height) {
    return Math.floor(height * 10.0 + 1e-9) / 10.0 + " m";
  }

  private static String words(TideEvent water, ZoneOffset offset) {
    return (water.isHigh() ? "high water " : "low water ")
        + Times.minute(water.time(), offset)
        + ", "
        + water.height().metres()
        + " m";
  }
}
