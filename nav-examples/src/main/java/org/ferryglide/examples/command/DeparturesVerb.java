package org.ferryglide.examples.command;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ferryglide.examples.files.Bytes;
import org.ferryglide.examples.files.CalendarFile;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.passage.WhenToGo;
import org.ferryglide.nav.timing.Departure;
import org.ferryglide.nav.water.Window;
import org.ferryglide.tide.folder.PassageFolder;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** When to go: the windows in which no check of a folder stops. */
@Command(
    name = "departures",
    description =
        "Windows of departure in which no check of a passage stops, with what warns in them.",
    footer = {
      "",
      "Example:",
      "  ferryglide departures nav-examples/scenarios/ollen-skerries --days 1"
    })
final class DeparturesVerb extends FolderVerb {
  private static final int MOST_DAYS = 31;

  @Option(
      names = "--from",
      paramLabel = "DATE",
      description = "First day; the start's if left out.")
  private @Nullable LocalDate from;

  @Option(
      names = "--days",
      paramLabel = "N",
      defaultValue = "1",
      description = "How many days, 1 to 31 (1 if left out).")
  private int days = 1;

  @Option(
      names = "--step",
      paramLabel = "MINUTES",
      defaultValue = "10",
      description = "Minutes between departures tried, 1 to 120 (10 if left out).")
  private int step = 10;

  @Option(
      names = "--ics",
      paramLabel = "FILE",
      description = "Also write the windows as iCalendar.")
  private @Nullable Path ics;

  @Override
  protected Answer answer() throws Exception {
    if (days < 1 || days > MOST_DAYS) {
      throw new InputRefused("--days must be in [1, 31], but was " + days);
    }
    if (step < 1 || step > 120) {
      throw new InputRefused("--step must be in [1, 120] minutes, but was " + step);
    }
    PassageFolder folder = read();
    ZoneOffset offset = folder.start().getOffset();
    LocalDate first = from == null ? folder.start().toLocalDate() : from;
    Instant begin = first.atStartOfDay(offset).toInstant();
    Instant end = first.plusDays(days).atStartOfDay(offset).toInstant();
    WhenToGo when =
        during(
            "departures of " + days + (days == 1 ? " day" : " days"),
            () -> WhenToGo.search(folder.passage(), begin, end, Duration.ofMinutes(step)));
    List<Window> windows = when.windows().items();
    Answer answer = new Answer().line(folder.name());
    List<String> open = when.notChecked().stream().map(Note::text).toList();
    if (!open.isEmpty()) {
      answer.line("not checked: " + String.join(", ", open));
    }
    List<Object> values = new ArrayList<>();
    for (Window window : windows) {
      answer.row("window", Times.inside(window.span(), offset));
      Map<String, Object> value = new LinkedHashMap<>();
      value.put("from", window.from().toString());
      value.put("until", window.until().toString());
      Map<String, Integer> warnings = new LinkedHashMap<>();
      when.warnings(window)
          .forEach(
              (check, count) -> {
                answer.row("", "WARNING for " + count + " departures in it: " + check.text());
                warnings.merge(check.text(), count, Integer::sum);
              });
      if (when.choices().stream().noneMatch(tried -> window.contains(tried.time()))) {
        answer.row("", "no departure tried lies in it: whether checks warn tells a smaller --step");
      }
      value.put("warnings", warnings);
      values.add(value);
    }
    answer.value("name", folder.name()).value("windows", values);
    if (windows.isEmpty()) {
      none(answer, when);
    }
    when.leastTime().ifPresent(best -> told(answer, "least time", "leastTime", best, offset));
    when.mostMargin().ifPresent(best -> told(answer, "best margin", "bestMargin", best, offset));
    when.leastBad().ifPresent(least -> told(answer, "least bad", "leastBad", least, offset));
    Map<String, Integer> against = new LinkedHashMap<>();
    when.whyNot()
        .forEach(
            (why, count) -> {
              answer.row("against", count + " departures: " + why.text());
              against.merge(why.text(), count, Integer::sum);
            });
    answer
        .value("against", against)
        .value("notChecked", open)
        .line("This is a sum, not a permission to go: official tables and forecasts come first.");
    if (ics != null) {
      Bytes.write(ics, CalendarFile.departures(folder.name(), inWholeMinutes(windows)));
    }
    return answer;
  }

  private static List<Window> inWholeMinutes(List<Window> windows) {
    return windows.stream().flatMap(window -> window.inWholeMinutes().stream()).toList();
  }

  /** Without data for some departures an empty answer is no "never". */
  private static void none(Answer answer, WhenToGo when) {
    boolean known = when.choices().stream().allMatch(Departure::isKnown);
    answer
        .row("windows", known ? "none in which no check stops" : "none known; data are missing")
        .status(known ? Status.NOT_POSSIBLE : Status.DATA_MISSING);
  }

  private static void told(
      Answer answer, String label, String name, Departure departure, ZoneOffset offset) {
    Map<String, Object> value = new LinkedHashMap<>();
    value.put("departure", departure.time().toString());
    departure
        .outcome()
        .solved()
        .ifPresent(route -> value.put("arrival", route.arrival().toString()));
    WhenToGo.worst(departure)
        .ifPresent(worst -> value.put("worst", Times.findings(offset).say(worst)));
    answer.row(label, words(departure, offset)).value(name, value);
  }

  private static String words(Departure departure, ZoneOffset offset) {
    return Times.minute(departure.time(), offset)
        + departure
            .outcome()
            .solved()
            .map(route -> ", arriving " + Times.minute(route.arrival(), offset))
            .orElse("")
        + WhenToGo.worst(departure)
            .map(worst -> "; " + Times.findings(offset).worst(worst))
            .orElse("");
  }
}
