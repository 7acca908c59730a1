package org.ferryglide.examples.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import org.ferryglide.tide.height.TideTable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A verb about a tide table over a stretch of time. */
abstract class TableVerb extends Verb {
  @Parameters(
      index = "0",
      paramLabel = "TABLE",
      description = "A tide table: port,datum,time,height_m,kind.")
  private Path table = Path.of("");

  @Option(
      names = "--from",
      paramLabel = "TIME",
      description = "Begin of the search, as 2026-06-14T06:00+01:00; the table's if left out.")
  private @Nullable OffsetDateTime from;

  @Option(
      names = "--days",
      paramLabel = "N",
      description = "How long; to the table's end if left out.")
  private @Nullable Integer days;

  final TideTable read() throws IOException {
    if (days != null && (days < 1 || days > 366)) {
      throw new InputRefused("--days must be in [1, 366], but was " + days);
    }
    return TideTable.read(table);
  }

  final Instant from(TideTable read) {
    return from == null ? read.start() : from.toInstant();
  }

  final Instant until(TideTable read) {
    return days == null ? read.end() : from(read).plusSeconds(86_400L * days);
  }

  final ZoneOffset offset() {
    return from == null ? ZoneOffset.UTC : from.getOffset();
  }
}
