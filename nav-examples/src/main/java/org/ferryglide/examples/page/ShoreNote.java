package org.ferryglide.examples.page;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ferryglide.examples.svg.HtmlFile;
import org.ferryglide.examples.svg.Markup;
import org.ferryglide.nav.passage.PlannedLeg;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.passage.Variant;
import org.ferryglide.nav.passage.WayPoint;

/**
 * What is left with someone ashore: who goes where and when, when they count as overdue, and whom
 * to call then. Every time is by the clock of those ashore, with its date; what was not told is a
 * line to be filled in.
 *
 * <pre>{@code
 * System.out.println(ShoreNote.of(worked).text());
 * Files.writeString(Path.of("shore.html"), ShoreNote.of(worked).html());
 * }</pre>
 */
public final class ShoreNote {
  /** A heading of the note with its rows: a name and what stands beside it. */
  record Part(String title, List<Row> rows) {}

  /** One row; an empty name goes on with the row before. */
  record Row(String name, String words) {}

  private final WorkedPassage worked;
  private final Labels labels;
  private final Printed printed;

  private ShoreNote(WorkedPassage worked) {
    this.worked = worked;
    ZoneId clock = worked.shore().clock().orElse(worked.passage().zone());
    this.labels = worked.labels();
    this.printed = worked.printed(clock);
  }

  /**
   * The note of a passage.
   *
   * @param worked the passage
   * @return the note
   */
  public static ShoreNote of(WorkedPassage worked) {
    return new ShoreNote(worked);
  }

  /**
   * The latest that the last of the party is ashore: of the plan and every what-if that is
   * possible, and the latest of the plan by the error model.
   *
   * @return the time, unrounded; empty if the passage is not possible as planned
   */
  public Optional<Instant> latestAshore() {
    return worked.plan().solved().map(plan -> slowest(plan).ashore());
  }

  private record Slowest(String name, Instant ashore) {}

  private Slowest slowest(TimedPlan plan) {
    PlannedLeg last = plan.legs().get(plan.legs().size() - 1);
    Slowest slowest =
        new Slowest(
            labels.say("shore.model"), last.latest().plus(worked.passage().party().landing()));
    for (Variant variant : worked.variants()) {
      Instant ashore = variant.outcome().solved().map(TimedPlan::landed).orElse(Instant.MIN);
      if (ashore.isAfter(slowest.ashore())) {
        slowest = new Slowest(printed.say(variant.about()), ashore);
      }
    }
    return slowest;
  }

  /**
   * The note as plain text.
   *
   * @return lines, each ended by a line feed
   */
  public String text() {
    StringBuilder text = new StringBuilder();
    text.append(Caution.notChecked(worked, printed)).append('\n');
    text.append(title()).append('\n');
    text.append(labels.say("shore.clock", "clock", clock())).append('\n');
    for (Part part : parts()) {
      text.append('\n').append(part.title()).append('\n');
      for (Row row : part.rows()) {
        text.append("  ").append(row.name().isEmpty() ? "" : row.name() + ": ");
        text.append(row.words()).append('\n');
      }
    }
    return text.append('\n').append(labels.say("caution")).append('\n').toString();
  }

  /**
   * The note as a page of one file, to be printed on A5 or A4.
   *
   * @return HTML, to be written as UTF-8
   */
  public String html() {
    Markup body = new Markup();
    body.open("header").line();
    body.element("p", Caution.notChecked(worked, printed), "class", "open").line();
    body.element("h1", title()).line();
    body.element("p", labels.say("shore.clock", "clock", clock())).line();
    body.close().line();
    body.open("main").line();
    for (Part part : parts()) {
      body.open("section").element("h2", part.title()).open("dl").line();
      for (Row row : part.rows()) {
        if (!row.name().isEmpty()) {
          body.element("dt", row.name());
        }
        body.element("dd", row.words()).line();
      }
      body.close().close().line();
    }
    body.close().line();
    body.open("footer").element("p", labels.say("caution")).close().line();
    return HtmlFile.of(title(), labels.say("language"), ShoreNote.class, "page.css", body);
  }

  private String title() {
    return labels.say("shore.title", "passage", worked.passage().name());
  }

  private String clock() {
    return printed.offset(worked.departure())
        + (worked.shore().clock().isPresent() ? "" : " " + labels.say("shore.passage-clock"));
  }

  List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    parts.add(overdue());
    parts.add(who());
    worked
        .plan()
        .match(
            plan -> {
              parts.add(times(plan));
              parts.add(route(plan));
              parts.add(landings());
              parts.add(positions(plan));
              return true;
            },
            why -> {
              parts.add(
                  new Part(
                      labels.say("shore.times"),
                      List.of(new Row(labels.say("shore.none"), printed.say(why.note())))));
              return false;
            });
    parts.add(
        new Part(
            labels.say("shore.elsewhere"),
            List.of(
                new Row(labels.say("shore.landed-elsewhere"), blank()),
                new Row(labels.say("shore.called-at"), blank()))));
    return parts;
  }

  private Part overdue() {
    List<Row> rows = new ArrayList<>();
    Optional<Instant> overdue = worked.shore().overdue();
    rows.add(
        new Row(labels.say("shore.overdue"), overdue.map(this::exactly).orElseGet(this::blank)));
    rows.add(new Row(labels.say("shore.call"), words("call")));
    worked
        .plan()
        .solved()
        .ifPresent(
            plan -> {
              Slowest slowest = slowest(plan);
              rows.add(
                  new Row(
                      labels.say("shore.latest"),
                      labels.say(
                          "shore.latest-of",
                          "time",
                          printed.dated(Printed.laterMinute(slowest.ashore())),
                          "name",
                          slowest.name())));
              if (overdue.isPresent() && overdue.get().isBefore(slowest.ashore())) {
                rows.add(new Row(labels.say("shore.caution"), labels.say("shore.earlier")));
              }
            });
    for (Variant variant : worked.variants()) {
      variant
          .outcome()
          .why()
          .ifPresent(
              why ->
                  rows.add(
                      new Row(
                          labels.say("shore.what-if", "name", printed.say(variant.about())),
                          printed.say(why.note()))));
    }
    return new Part(labels.say("shore.if-overdue"), rows);
  }

  /** A chosen time is printed as it was chosen, to the second where it has seconds. */
  private String exactly(Instant time) {
    int seconds = time.atZone(printed.zone()).getSecond();
    String dated = printed.dated(time);
    String offset = printed.offset(time);
    String exact =
        seconds == 0
            ? dated
            : dated.substring(0, 5) + ":" + Printed.two(seconds) + dated.substring(5);
    return exact.endsWith(offset) ? exact : exact + ", " + offset;
  }

  private Part who() {
    List<Row> rows = new ArrayList<>();
    for (String item : List.of("party", "craft", "carried", "remarks")) {
      rows.add(new Row(labels.say("shore." + item), words(item)));
    }
    return new Part(labels.say("shore.who"), rows);
  }

  private String words(String item) {
    return worked.shore().words(item).orElseGet(this::blank);
  }

  private String blank() {
    return labels.say("blank");
  }

  private Part times(TimedPlan plan) {
    return new Part(
        labels.say("shore.times"),
        List.of(
            new Row(labels.say("first-afloat"), early(plan.launch())),
            new Row(labels.say("under-way"), late(plan.departure())),
            new Row(labels.say("last-ashore"), late(plan.landed()))));
  }

  private String early(Instant time) {
    return printed.dated(time.truncatedTo(java.time.temporal.ChronoUnit.MINUTES));
  }

  private String late(Instant time) {
    return printed.dated(Printed.laterMinute(time));
  }

  private Part route(TimedPlan plan) {
    List<Row> rows = new ArrayList<>();
    WayPoint start = plan.legs().get(0).leg().from();
    rows.add(new Row(start.name(), Printed.place(start.position())));
    for (PlannedLeg leg : plan.legs()) {
      rows.add(
          new Row(
              leg.leg().to().name(),
              labels.say(
                  "shore.leg",
                  "place",
                  Printed.place(leg.leg().to().position()),
                  "likely",
                  late(leg.arrival()),
                  "earliest",
                  printed.early(leg.earliest()),
                  "latest",
                  printed.late(leg.latest()))));
      leg.leg().to().stop().ifPresent(stop -> rows.add(new Row("", printed.say(stop.about()))));
    }
    return new Part(labels.say("shore.route"), rows);
  }

  private Part landings() {
    List<Row> rows = new ArrayList<>();
    List<WayPoint> places = new ArrayList<>(worked.passage().wayPoints());
    places.addAll(worked.passage().refuges());
    for (WayPoint place : places) {
      if (place.landing().isPresent()) {
        String seen = place.toSee().isEmpty() ? "" : ", " + place.toSee();
        Row row = new Row(place.name(), Printed.place(place.position()) + seen);
        if (!rows.contains(row)) {
          rows.add(row);
        }
      }
    }
    if (rows.isEmpty()) {
      rows.add(new Row(labels.say("shore.landings"), blank()));
    }
    return new Part(labels.say("shore.landings"), rows);
  }

  private Part positions(TimedPlan plan) {
    List<Row> rows = new ArrayList<>();
    for (Instant time : WorkedPassage.hours(plan)) {
      rows.add(
          new Row(
              late(time),
              printed.say(plan.radioPosition(time)) + "; " + Printed.place(plan.route().at(time))));
    }
    return new Part(labels.say("shore.positions"), rows);
  }
}
