package org.ferryglide.examples.teach;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.examples.svg.HtmlFile;
import org.ferryglide.examples.svg.Markup;
import org.ferryglide.nav.bearing.CompassBearing;
import org.ferryglide.nav.bearing.HandRounding;
import org.ferryglide.nav.chart.ChartTool;
import org.ferryglide.nav.teach.LayingOff;
import org.ferryglide.nav.teach.Quantity;
import org.ferryglide.tide.stream.StreamHour;
import org.ferryglide.tide.teach.TideProblems.Water;

/**
 * A worksheet as one file of HTML without scripts, to be printed on A4: the tables and the sheet to
 * lay off on, the exercises with lines to write on; and its answer sheet with every working.
 *
 * <pre>{@code
 * Worksheet sheet = Worksheet.of(Exercises.of(7, 10));
 * Files.writeString(path, sheet.questions());
 * Files.writeString(otherPath, sheet.answers());
 * }</pre>
 */
public final class Worksheet {
  private static final String CAUTION =
      "Invented area, for practice only. On the water, official charts, tables, forecasts and the"
          + " coastguard's advice come first; local rules and trained judgement decide.";

  private final Exercises exercises;

  private Worksheet(Exercises exercises) {
    this.exercises = exercises;
  }

  /**
   * The worksheet of some exercises.
   *
   * @param exercises the exercises
   * @return the worksheet
   */
  public static Worksheet of(Exercises exercises) {
    return new Worksheet(exercises);
  }

  /**
   * The sheet the learner gets.
   *
   * @return a whole file of HTML
   */
  public String questions() {
    Markup body = new Markup().open("main");
    body.element("h1", "Exercises").line();
    body.element("p", CAUTION, "class", "caution").line();
    body.element("h2", "Tables").open("div", "class", "tables");
    tables(body);
    body.close().line();
    body.open("section", "class", "sheet").element("h2", "Sheet to lay off on");
    body.element(
        "p",
        "Not a chart: only the marks of the exercises are shown. A minute of latitude, up the side,"
            + " is a nautical mile.");
    body.add(new PracticeSheet(exercises.area()).drawn().inline()).close().line();
    body.open("section", "class", "sheet").element("h2", "Questions").line();
    for (Exercise exercise : exercises.list()) {
      body.open("div", "class", "exercise");
      body.element("p", exercise.number() + ". " + exercise.story());
      body.open("div", "class", "write").close().close().line();
    }
    body.close().line();
    tools(body);
    body.close();
    return file("Exercises", body);
  }

  /**
   * The sheet the teacher keeps.
   *
   * @return a whole file of HTML
   */
  public String answers() {
    Markup body = new Markup().open("main");
    body.element("h1", "Answers and working").line();
    body.element("p", CAUTION, "class", "caution").line();
    for (Exercise exercise : exercises.list()) {
      body.open("div", "class", "exercise");
      body.element("h2", exercise.number() + ". " + exercise.answer());
      body.element("p", exercise.story());
      body.add(WorkingTable.of(exercise.problem().working())).line();
      WorkingPicture.of("exercise-" + exercise.number(), exercise.problem())
          .ifPresent(picture -> body.add(picture.inline()));
      body.close().line();
    }
    body.close();
    return file("Answers and working", body);
  }

  private void tables(Markup body) {
    PracticeArea area = exercises.area();
    body.element("p", "Rose: " + area.rose().printed() + ". This year is " + area.year() + ".");
    List<List<String>> tide = new ArrayList<>();
    for (Water water : area.waters()) {
      tide.add(
          List.of(
              Quantity.CLOCK.text(water.clockMinutes()),
              Quantity.METRES.text(water.height().metres())));
    }
    table(body, "Standard port, its zone", List.of("Time", "Height"), tide);
    table(
        body,
        "Mean ranges",
        List.of("Springs", "Neaps"),
        List.of(
            List.of(
                Quantity.METRES.text(area.ranges().spring().metres()),
                Quantity.METRES.text(area.ranges().neap().metres()))));
    table(
        body,
        "Secondary port, by standard port's time",
        List.of("01:00 and 13:00", "07:00 and 19:00"),
        List.of(List.of(difference(area, 1), difference(area, 7))));
    List<List<String>> stream = new ArrayList<>();
    for (StreamHour row : area.stream()) {
      stream.add(
          List.of(
              row.label("HW"),
              row.set().threeDigits(),
              Quantity.KNOTS.text(row.springRate().knots()),
              Quantity.KNOTS.text(row.neapRate().knots())));
    }
    table(body, "Stream", List.of("Hour", "Set", "Springs", "Neaps"), stream);
    List<List<String>> card = new ArrayList<>();
    for (int heading = 0; heading < 360; heading += 30) {
      CompassBearing compass = CompassBearing.ofDegrees(heading);
      card.add(
          List.of(
              compass.threeDigits(),
              HandRounding.TENTH_OF_DEGREE.eastWest(
                  area.card().deviationOn(compass).degreesEast())));
    }
    table(body, "Deviation of the deck compass", List.of("By compass", "Deviation"), card);
    List<List<String>> curve = new ArrayList<>();
    for (int sixth = 0; sixth <= 6; sixth++) {
      curve.add(
          List.of(
              sixth + "/6",
              Quantity.SHARE.text(area.curve().risingFraction(sixth / 6.0)),
              Quantity.SHARE.text(area.curve().fallingFraction(sixth / 6.0))));
    }
    table(
        body,
        "Port's curve: share above low water",
        List.of("Of the interval", "Rising", "Falling"),
        curve);
  }

  private static String difference(PracticeArea area, int hour) {
    double minutes = area.differences().minutesAt(LocalTime.of(hour, 0));
    return (minutes < 0 ? "" : "+") + Math.round(minutes) + " min";
  }

  private static void tools(Markup body) {
    body.open("section", "class", "sheet").element("h2", "Laying off, tool by tool");
    for (ChartTool tool : ChartTool.all()) {
      LayingOff plan = LayingOff.with(tool, LayingOff.Paper.CHART);
      body.open("div", "class", "exercise").element("h3", tool.name() + " on a chart");
      String picture = "tool-" + tool.name().replace(' ', '-');
      body.open("div", "class", "picture").add(ToolPicture.of(picture, plan).inline()).close();
      body.open("ol");
      for (String step : plan.steps()) {
        body.element("li", step);
      }
      body.close()
          .element("p", "Read: " + plan.northRead() + ". Still to apply: " + plan.remains());
      body.open("ul");
      for (String wrong : plan.canGoWrong()) {
        body.element("li", wrong);
      }
      body.close().close().line();
    }
    body.close().line();
  }

  private static void table(
      Markup body, String caption, List<String> head, List<List<String>> rows) {
    body.open("table").element("caption", caption).open("thead").open("tr");
    for (String name : head) {
      body.element("th", name, "scope", "col");
    }
    body.close().close().open("tbody");
    for (List<String> row : rows) {
      body.open("tr");
      for (String cell : row) {
        body.element("td", cell);
      }
      body.close();
    }
    body.close().close().line();
  }

  private static String file(String title, Markup body) {
    return HtmlFile.of(title, "en", Worksheet.class, "worksheet.css", body);
  }
}
