package org.ferryglide.examples.command;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.passage.Variant;
import org.ferryglide.nav.steer.NotPossible;
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
      description = "Words of card, page and note in another language, by their keys.")
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
    return during("passage", this::worked);
  }

  private Answer worked() throws IOException {
    PassageFolder folder = read();
    Instant departure = folder.start().toInstant();
    PassageReport report = PassageReport.of(folder);
    Outcome<TimedPlan, NotPossible> plan = TimedPlan.of(folder.passage(), departure);
    Answer answer = new Answer().status(status(plan));
    if (report.isWithoutData()) {
      answer.status(Status.DATA_MISSING);
    } else if (report.isNotPossible()) {
      answer.status(Status.NOT_POSSIBLE);
    }
    Optional<WorkedPassage> worked =
        card || page != null || sheet != null || shore != null
            ? Optional.of(worked(folder))
            : Optional.empty();
    if (whatIf) {
      whatIf(answer, folder, departure);
    } else {
      answer.text(card && worked.isPresent() ? PassageReport.card(worked.get()) : report.text());
    }
    PlanJson.of(folder.name(), departure, plan).forEach(answer::value);
    if (worked.isPresent()) {
      writePages(worked.get());
    }
    if (gpx != null) {
      Bytes.write(gpx, gpxOf(folder, plan));
    }
    if (geoJson != null) {
      Bytes.write(geoJson, JsonText.of(PlanGeoJson.of(folder.passage(), plan)));
    }
    return answer;
  }

  private WorkedPassage worked(PassageFolder folder) throws IOException {
    Units printed = units.isBlank() ? Units.NAUTICAL : InputRefused.given(() -> Units.parse(units));
    Labels labels = words == null ? Labels.english() : labels(words);
    return WorkedPassage.of(folder).withUnits(printed).withLabels(labels).withWayHome();
  }

  private static Labels labels(Path words) throws IOException {
    try (Reader reader = Files.newBufferedReader(words)) {
      return Labels.read(reader);
    }
  }

  private String gpxOf(PassageFolder folder, Outcome<TimedPlan, NotPossible> plan) {
    Optional<TimedPlan> solved = plan.solved();
    return track && solved.isPresent()
        ? GpxFile.planned(folder.name(), folder.wayPoints(), solved.get())
        : GpxFile.route(folder.name(), folder.wayPoints());
  }

  private void writePages(WorkedPassage worked) throws IOException {
    if (page != null) {
      Bytes.write(page, PassagePage.of(worked).html());
    }
    if (shore != null) {
      Bytes.write(shore, ShoreNote.of(worked).html());
    }
    Optional<CardSheet> cards = CardSheet.of(worked); // none where the passage is not possible
    if (sheet != null && cards.isPresent()) {
      Bytes.write(sheet, cards.get().html());
    }
  }

  private static void whatIf(Answer answer, PassageFolder folder, Instant departure) {
    List<Object> all = new ArrayList<>();
    for (Variant variant : Variant.sideBySide(folder.passage(), departure)) {
      String told =
          variant
              .outcome()
              .match(
                  plan ->
                      "arriving "
                          + Times.minute(plan.arrival(), folder.start().getOffset())
                          + plan.worst()
                              .filter(worst -> !plan.holds())
                              .map(worst -> "; " + worst.reason())
                              .orElse("; all checks hold"),
                  why ->
                      (why.isForWantOfData() ? "not known: " : "not possible: ") + why.message());
      answer.line(padded(variant.name()) + told);
      Map<String, Object> value = new LinkedHashMap<>();
      value.put("name", variant.name());
      value.put("holds", variant.holds());
      value.put("told", told);
      all.add(value);
    }
    answer.value("whatIf", all);
  }

  private static String padded(String name) {
    StringBuilder text = new StringBuilder(name);
    while (text.length() < 28) {
      text.append(' ');
    }
    return text.toString();
  }
}
