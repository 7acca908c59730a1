package org.ferryglide.examples.command;

import java.io.IOException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ferryglide.examples.Findings;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.InputProblem;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.note.Severity;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.tide.folder.PassageFolder;
import org.ferryglide.tide.height.TideTable;
import org.ferryglide.tide.stream.HourlyStream;
import picocli.CommandLine.Command;

/** All problems and doubts of a folder and of its planned start, nothing else. */
@Command(
    name = "check",
    description = "All problems and doubts of a passage's folder and its start, nothing else.",
    footer = {
      "",
      "Exit status 5 where a stop limit is passed or a check that the folder asks for could not be",
      "made, 3 where the start planned is not possible, 4 where the tables do not cover it.",
      "",
      "Example:",
      "  ferryglide check nav-examples/scenarios/ollen-skerries"
    })
final class CheckVerb extends FolderVerb {
  @Override
  protected Answer answer() throws IOException {
    try {
      PassageFolder read = read();
      List<Note> doubts = new ArrayList<>(read.notes());
      Outcome<TimedPlan, NotPossible> plan = TimedPlan.of(read.passage(), read.start().toInstant());
      Answer answer = new Answer().status(status(plan));
      plan.why()
          .ifPresent(
              why -> doubts.add(0, why.isDataMissing() ? withoutData(read, why) : no(read, why)));
      Findings findings = Times.findings(read.start().getOffset());
      plan.solved().map(TimedPlan::verdicts).orElse(List.of()).stream()
          .filter(verdict -> !verdict.holds())
          .map(verdict -> failed(findings, verdict))
          .forEach(doubts::add);
      plan.solved().map(TimedPlan::notes).orElse(List.of()).stream()
          .filter(note -> note.severity() != Severity.INFORMATION)
          .forEach(doubts::add);
      return answer
          .line(doubts.isEmpty() ? "no problem, no doubt" : "no problem; what looks wrong:")
          .value("problems", List.of())
          .value("found", 0)
          .notes(doubts);
    } catch (InputFormatException e) {
      if (!isJson()) {
        throw e;
      }
      List<Object> problems = new ArrayList<>();
      for (InputProblem problem : e.problems()) {
        Map<String, Object> value = new LinkedHashMap<>();
        value.put("file", problem.source());
        value.put("line", problem.line());
        value.put("column", problem.column());
        value.put("message", problem.message());
        problems.add(value);
      }
      return new Answer()
          .value("problems", problems)
          .value("found", e.found())
          .status(Status.REFUSED);
    }
  }

  /** That a check stops the start planned, or could not be made. */
  private static Note failed(Findings findings, Verdict verdict) {
    String told = findings.judged(verdict) + findings.at(verdict.when()) + ".";
    return verdict.answer() == Verdict.Answer.STOPPED
        ? Note.warning("check.stopped", told)
        : Note.caution("check.not-checked", told);
  }

  /** That the planned start cannot be answered, and for when the tables were given. */
  private static Note withoutData(PassageFolder folder, NotPossible why) {
    ZoneOffset offset = folder.start().getOffset();
    Set<String> given = new LinkedHashSet<>();
    for (HourlyStream stream : folder.streams()) {
      TideTable tides = stream.tides();
      if (why.when().filter(time -> isWithin(tides, time)).isPresent()) {
        continue; // what is missing is something else
      }
      given.add(
          tides.port()
              + " from "
              + Times.minute(tides.start(), offset)
              + " to "
              + Times.minute(tides.end(), offset));
    }
    return Note.warning(
        "check.without-data",
        "No answer for the start planned, "
            + Times.minute(folder.start().toInstant(), offset)
            + ": "
            + why.reason().note().text()
            + Times.findings(offset).at(why.when())
            + "."
            + (given.isEmpty() ? "" : " Tides are given of " + String.join(", ", given) + "."));
  }

  private static boolean isWithin(TideTable tides, Instant time) {
    return !time.isBefore(tides.start()) && !time.isAfter(tides.end());
  }

  /** That the planned start is not possible, and why. */
  private static Note no(PassageFolder folder, NotPossible why) {
    ZoneOffset offset = folder.start().getOffset();
    return Note.warning(
        "check.not-possible",
        "Not possible for the start planned, "
            + Times.minute(folder.start().toInstant(), offset)
            + ": "
            + Times.findings(offset).say(why)
            + ".");
  }
}
