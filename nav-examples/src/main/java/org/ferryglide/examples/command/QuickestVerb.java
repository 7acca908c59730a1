package org.ferryglide.examples.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ferryglide.examples.Findings;
import org.ferryglide.examples.files.Bytes;
import org.ferryglide.examples.page.Labels;
import org.ferryglide.examples.page.QuickestLeg;
import org.ferryglide.examples.page.QuickestPage;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Units;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.passage.WayPoint;
import org.ferryglide.nav.position.AngleForm;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.tide.folder.PassageFolder;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The quickest ways along a leg of a passage, and the checks of the passage by the first. */
@Command(
    name = "quickest",
    description = {
      "The quickest ways along a leg of a passage, with headings in steps: out of its dangers away",
      "from the leg's ends that are closed always or at stated times, and of its limits of stream",
      "and wind against stream. All checks are reported for the passage with this leg by the first",
      "way. Never a default: it seeks the hardest stream, and there the sea is worst."
    },
    footer = {
      "",
      "Exit status 5 where a check stops the passage by the first way or could not be made, 3 if",
      "it is not possible, 4 if the tables do not cover it.",
      "",
      "Example:",
      "  ferryglide quickest nav-examples/scenarios/ollen-skerries --leg 2"
          + " --page target/quickest.html"
    })
final class QuickestVerb extends FolderVerb {
  private static final Duration LONGEST = Duration.ofDays(2);

  @Option(
      names = "--leg",
      paramLabel = "N",
      defaultValue = "1",
      description = "Which leg, from 1 (1 if left out).")
  private int leg = 1;

  @Option(
      names = "--step",
      paramLabel = "MINUTES",
      defaultValue = "15",
      description = "How long each heading is held, 1 to 120 (15 if left out).")
  private int step = 15;

  @Option(
      names = "--ways",
      paramLabel = "N",
      defaultValue = "2",
      description = "How many ways at most, 1 to 5 (2 if left out).")
  private int most = 2;

  @Option(
      names = "--page",
      paramLabel = "FILE",
      description = "Also write a page with the lines of equal time, out and back.")
  private @Nullable Path page;

  @Option(
      names = "--by",
      paramLabel = "TIME",
      description = "With --page: by when the leg's end is to be made; as planned if left out.")
  private @Nullable OffsetDateTime by;

  @Option(
      names = "--back-to",
      paramLabel = "NAME",
      description =
          "With --page and --by: a way point or refuge to be made by then, not the leg's end.")
  private String backTo = "";

  @Option(
      names = "--units",
      paramLabel = "UNITS",
      description = "Units of the page: of km, mi, km/h, mph, m/s, ft those wished.")
  private String units = "";

  @Option(
      names = "--words",
      paramLabel = "FILE",
      description = "Words of the page in another language, by their keys.")
  private @Nullable Path words;

  @Override
  protected Answer answer() throws Exception {
    if (step < 1 || step > 120) {
      throw new InputRefused("--step must be in [1, 120] minutes, but was " + step);
    }
    if (most < 1 || most > 5) {
      throw new InputRefused("--ways must be in [1, 5], but was " + most);
    }
    if (page == null && (by != null || words != null || !backTo.isEmpty() || !units.isBlank())) {
      throw new InputRefused("--by, --back-to, --units and --words are of use with --page only");
    }
    if (by == null && !backTo.isEmpty()) {
      throw new InputRefused("--back-to needs --by, the time by when the place is to be made");
    }
    Units printed = units.isBlank() ? Units.NAUTICAL : InputRefused.given(() -> Units.parse(units));
    Labels labels = words == null ? Labels.english() : Labels.read(words);
    return during("quickest path", () -> worked(printed, labels));
  }

  private Answer worked(Units printed, Labels labels) throws IOException {
    PassageFolder folder = read();
    int legs = folder.passage().legs().size();
    if (leg < 1 || leg > legs) {
      throw new InputRefused("--leg must be in [1, " + legs + "], but was " + leg);
    }
    WayPoint goal = goal(folder.passage());
    ZoneOffset offset = folder.start().getOffset();
    Answer answer = new Answer().line(folder.name());
    var found =
        QuickestLeg.of(
            folder.passage(), folder.start().toInstant(), leg, Duration.ofMinutes(step), most);
    answer
        .value("name", folder.name())
        .value("leg", leg)
        .value("possible", found.isSolved())
        .status(status(found.map(QuickestLeg::plan)));
    Findings findings = Times.findings(offset);
    if (!found.isSolved()) {
      String why = findings.say(found.why().orElseThrow());
      return answer.row("not possible", why).value("why", why);
    }
    QuickestLeg quickest = found.orElseThrow();
    checks(answer, quickest.plan(), findings);
    told(answer, quickest, findings, offset);
    if (page != null) {
      Instant latest = by == null ? Times.ended(quickest.planned()) : by.toInstant();
      if (!latest.isAfter(quickest.leg().departure())) {
        throw new InputRefused("--by must be after the leg begins, but was " + by);
      }
      if (latest.isAfter(quickest.leg().departure().plus(LONGEST))) {
        throw new InputRefused("--by must be within 48 h after the leg begins, but was " + by);
      }
      QuickestPage written = QuickestPage.of(quickest, latest, printed, labels).backTo(goal);
      // a refuge may lie in what the ways are kept out of
      Bytes.write(page, backTo.isEmpty() ? written.html() : InputRefused.given(written::html));
      answer.line("wrote " + page).value("written", List.of(page.toString()));
    }
    return answer
        .line("Never a default: it seeks the hardest stream, and there the sea is worst.")
        .line("This is a sum, not a permission to go: official tables and forecasts come first.");
  }

  /** From where the reach back is drawn. */
  private WayPoint goal(Passage passage) {
    if (backTo.isEmpty()) {
      return passage.legs().get(leg - 1).to();
    }
    List<WayPoint> places = new ArrayList<>(passage.wayPoints());
    places.addAll(passage.refuges());
    return places.stream()
        .filter(place -> place.name().equals(backTo))
        .findFirst()
        .orElseThrow(
            () ->
                new InputRefused(
                    "--back-to must be one of "
                        + places.stream().map(WayPoint::name).distinct().toList()
                        + ", but was "
                        + backTo));
  }

  /** What was not checked, and what is not within by the first way. */
  private static void checks(Answer answer, TimedPlan plan, Findings findings) {
    answer.line(findings.notChecked(plan.notChecked(), plan.verdicts()));
    answer.value("notChecked", plan.notChecked().stream().map(Note::text).toList());
    List<Object> values = new ArrayList<>();
    String label = "by way 1";
    for (Verdict verdict : plan.verdicts()) {
      if (verdict.answer() != Verdict.Answer.WITHIN) {
        answer.row(label, findings.judged(verdict) + findings.at(verdict.when()));
        label = "";
      }
      Map<String, Object> value = new LinkedHashMap<>();
      value.put("answer", verdict.answer().name());
      value.put("reason", findings.say(verdict));
      verdict.when().ifPresent(time -> value.put("when", time.toString()));
      values.add(value);
    }
    answer.value("checks", values).value("holds", plan.holds());
  }

  private void told(Answer answer, QuickestLeg quickest, Findings findings, ZoneOffset offset) {
    String from = quickest.leg().leg().from().name();
    String to = quickest.leg().leg().to().name();
    Instant leaving = quickest.leg().departure();
    answer
        .row("leg " + leg, from + " to " + to)
        .row("leaving", Times.early(leaving, offset))
        .row("as planned", "there " + Times.late(quickest.planned(), offset))
        .value("from", from)
        .value("to", to)
        .value("departure", leaving.toString())
        .value("arrivalAsPlanned", quickest.planned().toString());
    List<Object> values = new ArrayList<>();
    int number = 0;
    for (QuickestLeg.Way way : quickest.ways()) {
      number++;
      values.add(way(answer, quickest, way, number, findings, offset));
    }
    answer.value("ways", values);
  }

  private static Map<String, Object> way(
      Answer answer,
      QuickestLeg quickest,
      QuickestLeg.Way way,
      int number,
      Findings findings,
      ZoneOffset offset) {
    Map<String, Object> value = new LinkedHashMap<>();
    Instant arrival = way.path().arrival();
    answer.row("way " + number, "there " + Times.late(arrival, offset));
    value.put("arrival", arrival.toString());
    value.put("durationSeconds", way.path().duration().toMillis() / 1e3);
    way.doubtSeconds()
        .ifPresent(
            seconds -> {
              long whole = (long) Math.ceil(seconds);
              answer.row("", "the search's own doubt is " + whole + " s");
              value.put("doubtSeconds", seconds);
            });
    way.greatestStreamAt().ifPresent(time -> stream(answer, value, way, time, offset));
    way.steps().solved().ifPresent(steps -> steps(answer, value, quickest, way, steps, offset));
    way.steps()
        .why()
        .map(findings::say)
        .ifPresent(
            why -> {
              answer.row("", "not in steps: " + why);
              value.put("stepsNotPossible", why);
            });
    return value;
  }

  private static void stream(
      Answer answer,
      Map<String, Object> value,
      QuickestLeg.Way way,
      Instant time,
      ZoneOffset offset) {
    Speed rate = Speed.ofMetresPerSecond(way.greatestStreamMetresPerSecond());
    Position where = way.path().groundTrack().at(time);
    answer.row(
        "",
        "greatest stream "
            + Speed.ofKnots(Math.ceil(10.0 * rate.knots() - 1e-9) / 10.0).inKnots(1)
            + " at "
            + Times.early(time, offset)
            + " near "
            + where.text(AngleForm.DEGREES_MINUTES, 1));
    value.put("greatestStreamKnots", rate.knots());
    value.put("greatestStreamAt", time.toString());
    value.put("greatestStreamNear", where.toString());
  }

  private static void steps(
      Answer answer,
      Map<String, Object> value,
      QuickestLeg quickest,
      QuickestLeg.Way way,
      SteeredRoute steps,
      ZoneOffset offset) {
    List<Object> values = new ArrayList<>();
    for (SteeredLeg each : steps.legs()) {
      Map<String, Object> one = new LinkedHashMap<>();
      one.put("from", each.departure().toString());
      one.put("headingTrueDegrees", each.courseToSteer().degrees());
      String magnetic =
          quickest
              .leg()
              .magnetic(each.courseToSteer())
              .map(
                  it -> {
                    one.put("headingMagneticDegrees", it.degrees());
                    return ", " + it.threeDigits() + " magnetic";
                  })
              .orElse("");
      answer.row(
          "",
          Times.early(each.departure(), offset)
              + "  steer "
              + each.courseToSteer().threeDigits()
              + " true"
              + magnetic);
      values.add(one);
    }
    double lost = Duration.between(way.path().arrival(), steps.arrival()).toMillis() / 1e3;
    answer.row("", "steering in steps costs " + Math.max(0L, (long) Math.ceil(lost)) + " s");
    value.put("timeLostSeconds", lost);
    value.put("steps", values);
  }
}
