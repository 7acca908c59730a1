package org.ferryglide.examples.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ferryglide.examples.Findings;
import org.ferryglide.examples.PassageReport;
import org.ferryglide.examples.files.Bytes;
import org.ferryglide.examples.files.GpxFile;
import org.ferryglide.examples.files.JsonText;
import org.ferryglide.examples.files.PlanGeoJson;
import org.ferryglide.examples.files.PlanJson;
import org.ferryglide.examples.page.CardSheet;
import org.ferryglide.examples.page.Labels;
import org.ferryglide.examples.page.PassagePage;
import org.ferryglide.examples.page.ShoreNote;
import org.ferryglide.examples.page.WorkedPassage;
import org.ferryglide.nav.measure.Units;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.passage.Variant;
import org.ferryglide.nav.steer.NotPossible;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.tide.folder.PassageFolder;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The main job: a passage laid off from its folder. */
@Command(
    name = "passage",
    description = "Lay off a passage: courses, headings, times, checks.",
    footer = {
      "",
      "Exit status 5 where a stop limit is passed or a check that the folder asks for could not be",
      "made, 3 where a leg is not possible, 4 where the tables do not cover it.",
      "",
      "Example:",
      "  ferryglide passage nav-examples/scenarios/ollen-skerries --card"
    })
final class PassageVerb extends FolderVerb {
  private static final int NAME_WIDTH = 31;

  @Option(names = "--card", description = "The deck card, in place of the whole text.")
  private boolean card;

  @Option(names = "--what-if", description = "The usual what-ifs of the departure, side by side.")
  private boolean whatIf;

  @Option(names = "--page", paramLabel = "FILE", description = "Also write a page to be printed.")
  private @Nullable Path page;

  @Option(
      names = "--sheet",
      paramLabel = "FILE",
      description = "Also write the cards, four to an A4 sheet.")
  private @Nullable Path sheet;

  @Option(
      names = "--shore",
      paramLabel = "FILE",
      description = "Also write the note that is left ashore.")
  private @Nullable Path shore;

  @Option(
      names = "--units",
      paramLabel = "UNITS",
      description = "Units of card, page and note: of km, mi, km/h, mph, m/s, ft those wished.")
  private String units = "";

  @Option(
      names = "--words",
      paramLabel = "FILE",
      description = "Words of text, card, page and note in another language, by their keys.")
  private @Nullable Path words;

  @Option(names = "--gpx", paramLabel = "FILE", description = "Also write the route as GPX 1.1.")
  private @Nullable Path gpx;

  @Option(
      names = "--track",
      description =
          "With --gpx: also the path over the ground as planned, as tracks without times.")
  private boolean track;

  @Option(names = "--geojson", paramLabel = "FILE", description = "Also write the plan as GeoJSON.")
  private @Nullable Path geoJson;

  @Override
  protected Answer answer() throws Exception {
    refuseWhatNothingUses();
    Units printed = units.isBlank() ? Units.NAUTICAL : InputRefused.given(() -> Units.parse(units));
    Labels labels = words == null ? Labels.english() : Labels.read(words);
    return during("passage", () -> worked(printed, labels));
  }

  private void refuseWhatNothingUses() {
    if (track && gpx == null) {
      throw new InputRefused("--track is of use with --gpx only");
    }
    if (card && whatIf) {
      throw new InputRefused("of --card and --what-if only one can be printed");
    }
    boolean isPrinted = card || page != null || sheet != null || shore != null;
    if (!isPrinted && !units.isBlank()) {
      throw new InputRefused("--units is of use with --card, --page, --sheet or --shore only");
    }
  }

  private Answer worked(Units printed, Labels labels) throws IOException {
    PassageFolder folder = read();
    PassageReport report = PassageReport.of(folder);
    Answer answer = new Answer().status(status(report.plan()));
    if (report.isWithoutData()) {
      answer.status(Status.DATA_MISSING);
    } else if (report.isNotPossible()) {
      answer.status(Status.NOT_POSSIBLE);
    }
    PlanJson.of(folder.name(), folder.start().toInstant(), report.plan()).forEach(answer::value);
    if (whatIf) {
      whatIf(answer, folder, labels);
    } else if (!card) {
      answer.text(report.text(labels));
    }
    List<Path> written = new ArrayList<>();
    if (card || page != null || sheet != null || shore != null) {
      WorkedPassage all =
          WorkedPassage.of(folder).withUnits(printed).withLabels(labels).withWayHome();
      if (card) {
        answer.text(PassageReport.card(all));
      }
      writePages(all, answer, written);
    }
    if (gpx != null) {
      write(gpx, gpxOf(folder, report.plan()), written);
    }
    if (geoJson != null) {
      write(geoJson, JsonText.of(PlanGeoJson.of(folder.passage(), report.plan())), written);
    }
    if (!written.isEmpty()) {
      written.forEach(file -> told(answer, "wrote " + file));
      answer.value("written", written.stream().map(Path::toString).toList());
    }
    return answer;
  }

  /** A card that is sent on to a file or a printer is nothing but the card. */
  private void told(Answer answer, String line) {
    if (card && !isJson()) {
      err().println(line);
    } else {
      answer.line(line);
    }
  }

  private String gpxOf(PassageFolder folder, Outcome<TimedPlan, NotPossible> plan) {
    Optional<TimedPlan> solved = plan.solved();
    return track && solved.isPresent()
        ? GpxFile.planned(folder.name(), folder.wayPoints(), solved.get())
        : GpxFile.route(folder.name(), folder.wayPoints());
  }

  private void writePages(WorkedPassage worked, Answer answer, List<Path> written)
      throws IOException {
    if (page != null) {
      write(page, PassagePage.of(worked).html(), written);
    }
    if (shore != null) {
      write(shore, ShoreNote.of(worked).html(), written);
    }
    if (sheet != null) {
      Optional<CardSheet> cards = CardSheet.of(worked);
      if (cards.isPresent()) {
        write(sheet, cards.get().html(), written);
      } else {
        told(answer, "no card sheet: the passage is not possible as planned");
      }
    }
  }

  private static void write(Path file, String text, List<Path> written) throws IOException {
    Bytes.write(file, text);
    written.add(file);
  }

  private static void whatIf(Answer answer, PassageFolder folder, Labels labels) {
    ZoneOffset offset = folder.start().getOffset();
    Findings findings = Times.findings(offset, labels);
    Passage passage = folder.passage();
    List<Variant> variants = Variant.sideBySide(passage, folder.start().toInstant());
    List<Verdict> asPlanned =
        variants.get(0).outcome().solved().map(TimedPlan::verdicts).orElse(List.of());
    answer.line(findings.notChecked(passage.notChecked(), asPlanned));
    List<Object> all = new ArrayList<>();
    for (Variant variant : variants) {
      String told =
          variant
              .outcome()
              .match(
                  plan ->
                      labels.say(
                          "text.what-if",
                          "time",
                          Times.minute(plan.arrival(), offset),
                          "told",
                          findings.told(plan.verdicts())),
                  why ->
                      labels.say(
                          why.isDataMissing() ? "text.if-not-known" : "text.if-not-possible",
                          "why",
                          findings.say(why)));
      answer.row(findings.say(variant.about()), NAME_WIDTH, told);
      Map<String, Object> value = new LinkedHashMap<>();
      value.put("name", variant.name());
      value.put("holds", variant.holds());
      value.put("told", told);
      all.add(value);
    }
    answer.value("whatIf", all);
  }
}
