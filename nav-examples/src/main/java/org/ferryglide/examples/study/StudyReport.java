package org.ferryglide.examples.study;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.geodesy.LegComparisons;

/** The report of a study. Every figure in it comes from the run. */
final class StudyReport {
  private static final int SHORT_LEG = 2; // 2 to 5 km
  private static final int LONG_LEG = 7; // 100 to 200 km

  private StudyReport() {}

  static String text(long seed, StudyFigures figures) {
    StringBuilder text = new StringBuilder("# Errors of legs\n\n");
    text.append(figures.legs()).append(" legs drawn from seed ").append(seed);
    text.append(
        ": starts to 75° of latitude, courses all round, lengths from 0.5 to 200 km spread evenly"
            + " over the logarithm. Each error is told as metres off the rhumb line on WGS84 at the"
            + " worst place of the leg. The line on a map is worked for every tenth leg. All"
            + " figures stand in `errors.csv`; `differences.csv` has both lines at even"
            + " steps.\n\n");
    text.append("## Mean error by length, metres\n\n| length, km |");
    for (ErrorKind kind : ErrorKind.values()) {
      text.append(' ').append(kind.column()).append(" |");
    }
    text.append("\n|---|").append("---|".repeat(ErrorKind.values().length)).append('\n');
    for (int length = 0; length < StudyFigures.LENGTHS.length; length++) {
      text.append("| ").append(lengths(length)).append(" |");
      for (ErrorKind kind : ErrorKind.values()) {
        Tally tally = figures.at(kind, length);
        text.append(' ').append(tally.count() == 0 ? "" : digits(tally.mean())).append(" |");
      }
      text.append('\n');
    }
    text.append("\nWhat each is:\n\n");
    for (ErrorKind kind : ErrorKind.values()) {
      text.append("- ").append(kind.column()).append(": ").append(kind.words()).append('\n');
    }
    differences(text);
    text.append("\n## What follows\n\n");
    ratio(text, figures, SHORT_LEG);
    ratio(text, figures, LONG_LEG);
    text.append("\n## Check against closed forms\n\nA rhumb line is bent by k = sin(course)");
    text.append(" tan(latitude) / N, so it stands k L² / 8 off the geodesic and is k² L³ / 24");
    text.append(" longer, to first order. Over ").append(figures.separationOff().count());
    text.append(" legs of 2 to 20 km from 30 to 60° of latitude, courses not within 30° of a");
    text.append(" meridian, the separation is off this by at most ");
    text.append(digits(100.0 * figures.separationOff().greatest()));
    text.append(" %, the excess by at most ");
    text.append(digits(1e9 * figures.excessOff().greatest())).append(" nanometres.\n");
    literature(text, figures);
    return text.toString();
  }

  /** Both lines side by side, by latitude and by course. */
  private static void differences(StringBuilder text) {
    text.append("\n## How rhumb line and geodesic differ\n\nOver 20 km eastward by latitude, and");
    text.append(" from 60° of latitude by course; on WGS84, and on the sphere in brackets.\n\n");
    text.append("| latitude, degrees | course, degrees | rhumb line longer, mm |");
    text.append(
        " greatest separation, m | first courses apart, degrees |\n|---|---|---|---|---|\n");
    for (int latitude = 0; latitude <= 70; latitude += 10) {
      difference(text, latitude, 90);
    }
    for (int course = 0; course < 90; course += 15) {
      difference(text, 60, course);
    }
  }

  private static void difference(StringBuilder text, int latitude, int course) {
    double[] earth = StudyTables.difference(Ellipsoid.WGS84, latitude, course, 20e3);
    double[] sphere = StudyTables.difference(LegErrors.SPHERE, latitude, course, 20e3);
    text.append("| ").append(latitude).append(" | ").append(course).append(" |");
    pair(text, 1e3, earth, sphere, LegComparisons.EXCESS);
    pair(text, 1.0, earth, sphere, LegComparisons.SEPARATION);
    pair(text, 1.0, earth, sphere, LegComparisons.INITIAL_COURSE_DIFFERENCE);
    text.append('\n');
  }

  private static void pair(
      StringBuilder text, double unit, double[] earth, double[] sphere, int figure) {
    text.append(' ').append(small(unit * earth[figure])).append(" (");
    text.append(small(unit * sphere[figure])).append(") |");
  }

  /** Three figures that count, and 0 for less than a ten-thousandth of the unit. */
  private static String small(double value) {
    return Math.abs(value) < 1e-4 ? "0" : digits(value);
  }

  private static void literature(StringBuilder text, StudyFigures figures) {
    text.append("\n## Figures of the literature, worked here\n\n");
    text.append(
        "| what | unit | published | here | within | source |\n|---|---|---|---|---|---|\n");
    for (PublishedFigures.Figure figure : PublishedFigures.all()) {
      text.append("| ").append(figure.what()).append(" | ").append(figure.unit()).append(" | ");
      text.append(plain(figure.published(), 12)).append(" | ").append(plain(figure.here(), 12));
      text.append(" | ").append(plain(figure.tolerance(), 2));
      text.append(figure.isMet() ? "" : ", **not met**");
      text.append(" | ").append(figure.source()).append(" |\n");
    }
    text.append("\nA length on a sphere is said to be off by about 0.27 % (Tobler) or 0.5 %");
    text.append(" (Earle), both as quoted by Tseng, Guo and Liu (2013), J. Marine Science and");
    text.append(" Technology 21(3), 287. On these legs, with a sphere of mean radius, it is ");
    text.append(digits(100.0 * figures.sphereShare().mean())).append(" % on average and ");
    text.append(digits(100.0 * figures.sphereShare().greatest())).append(" % at most.\n");
  }

  private static String plain(double value, int figures) {
    return new BigDecimal(value)
        .round(new MathContext(figures, RoundingMode.HALF_EVEN))
        .stripTrailingZeros()
        .toPlainString();
  }

  private static void ratio(StringBuilder text, StudyFigures figures, int length) {
    double geodesic = figures.at(ErrorKind.GEODESIC, length).mean();
    double compass = figures.at(ErrorKind.COMPASS, length).mean();
    text.append("- On legs of ")
        .append(lengths(length))
        .append(" km a compass one degree off costs ");
    text.append(digits(compass / geodesic));
    text.append(" times as much as the difference of rhumb line and geodesic: ");
    text.append(digits(compass))
        .append(" m beside ")
        .append(digits(geodesic))
        .append(" m (means; the lines differ by ");
    text.append(digits(figures.at(ErrorKind.GEODESIC, length).greatest()))
        .append(" m at worst).\n");
  }

  static String lengths(int length) {
    double from = length == 0 ? DrawnLegs.SHORTEST_METRES : StudyFigures.LENGTHS[length - 1];
    return kilometres(from) + " to " + kilometres(StudyFigures.LENGTHS[length]);
  }

  static String kilometres(double metres) {
    return BigDecimal.valueOf(metres / 1000.0).stripTrailingZeros().toPlainString();
  }

  /** Three figures that count. */
  static String digits(double value) {
    return plain(value, 3);
  }
}
