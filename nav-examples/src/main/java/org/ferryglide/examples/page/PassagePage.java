package org.ferryglide.examples.page;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.examples.svg.HtmlFile;
import org.ferryglide.examples.svg.Markup;
import org.ferryglide.examples.svg.Svg;
import org.ferryglide.nav.passage.TimedPlan;

/**
 * A passage as one page: to be read on a phone, printed on A5 or A4 and pinned up. One file, no
 * script, nothing from elsewhere.
 *
 * <pre>{@code
 * PassagePage page = PassagePage.of(WorkedPassage.of(folder).withWayHome());
 * Files.writeString(Path.of("passage.html"), page.html());
 * for (Svg picture : page.pictures()) {
 *   Files.writeString(Path.of(picture.name() + ".svg"), picture.file());
 *   Files.write(Path.of(picture.name() + ".png"), Raster.png(picture, 3.0));
 * }
 * }</pre>
 */
public final class PassagePage {
  /** As large as the page may be, bytes: what a phone with a poor signal still loads. */
  private static final int MOST_BYTES = 300_000;

  private final WorkedPassage worked;
  private final Labels labels;

  private PassagePage(WorkedPassage worked) {
    this.worked = worked;
    this.labels = worked.labels();
  }

  /**
   * The page of a passage.
   *
   * @param worked the passage
   * @return the page
   */
  public static PassagePage of(WorkedPassage worked) {
    return new PassagePage(worked);
  }

  /**
   * Its pictures singly, in the order of the page.
   *
   * @return each with a name unlike the others'
   */
  public List<Svg> pictures() {
    List<Svg> pictures = new ArrayList<>();
    pictures.add(PlottingSheet.of(worked, labels));
    worked
        .plan()
        .solved()
        .ifPresent(
            plan ->
                plan.legs()
                    .forEach(
                        leg -> TrianglePicture.of(worked, plan, leg).ifPresent(pictures::add)));
    pictures.addAll(TidePicture.all(worked, labels));
    pictures.add(StreamPicture.of(worked, labels));
    pictures.add(DaylightPicture.of(worked, labels));
    pictures.add(DeparturePicture.of(worked, labels));
    return pictures;
  }

  /**
   * The page: with very many legs without their vectors, and then without their hours, so that it
   * stays below 300 kB; it says so.
   *
   * @return HTML, to be written as UTF-8
   */
  public String html() {
    String html = html(LegParts.Detail.ALL);
    for (LegParts.Detail less : LegParts.Detail.values()) {
      html =
          html.getBytes(StandardCharsets.UTF_8).length <= MOST_BYTES || less == LegParts.Detail.ALL
              ? html
              : html(less);
    }
    return html;
  }

  private String html(LegParts.Detail detail) {
    Markup body = new Markup();
    head(body);
    body.open("main").line();
    TimedPlan plan = worked.plan().solved().orElse(null);
    LegParts legs = new LegParts(worked, labels);
    DayParts day = new DayParts(worked, labels);
    if (plan == null) {
      legs.notPossible(body);
    } else {
      legs.summary(body, plan);
      day.first(body, plan);
    }
    section(body, "page.sheet");
    figure(body, PlottingSheet.of(worked, labels));
    body.close().line();
    if (plan != null) {
      legs.legs(body, plan, detail);
    }
    section(body, "page.tide");
    List<Svg> tides = TidePicture.all(worked, labels);
    tides.forEach(tide -> figure(body, tide));
    if (tides.isEmpty()) {
      body.element("p", labels.say("page.no-tide")).line();
    }
    body.close().line();
    section(body, "page.stream");
    figure(body, StreamPicture.of(worked, labels));
    body.close().line();
    section(body, "page.daylight");
    figure(body, DaylightPicture.of(worked, labels));
    body.close().line();
    section(body, "page.departures");
    figure(body, DeparturePicture.of(worked, labels));
    day.departures(body);
    body.close().line();
    if (plan != null) {
      day.turning(body);
      day.landings(body, plan);
      day.whatIf(body);
      day.positions(body, plan);
      day.checks(body, plan);
    }
    day.notes(body);
    body.close().line();
    body.open("footer").element("p", labels.say("caution")).close().line();
    return HtmlFile.of(
        worked.passage().name(), labels.say("language"), PassagePage.class, "page.css", body);
  }

  private void head(Markup body) {
    body.open("header").line();
    body.element("p", Caution.notChecked(worked, worked.printed()), "class", "open").line();
    body.element("h1", worked.passage().name()).line();
    Printed printed = worked.printed();
    body.element(
            "p",
            labels.say(
                "page.day", "date", printed.date(), "clock", printed.offset(worked.departure())))
        .line();
    if (worked.isClockChanged()) {
      String clock = printed.offset(worked.departure());
      body.element("p", labels.say("card.clock-stays", "clock", clock), "class", "stop").line();
    }
    body.element("p", labels.say("caution")).close().line();
  }

  private void section(Markup body, String key) {
    body.open("section").element("h2", labels.say(key)).line();
  }

  static void figure(Markup body, Svg picture) {
    body.open("figure").add(picture.inline()).close().line();
  }
}
