package org.ferryglide.examples.teach;

import java.time.LocalTime;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.ferryglide.nav.bearing.CompassBearing;
import org.ferryglide.nav.teach.Problem;
import org.ferryglide.tide.stream.StreamHour;

/**
 * Solves a question by its figures: on squared paper, by trying, by counting. It shares no code
 * with the problems.
 */
final class SlowSolver {
  private final Map<String, Double> figures;
  private final PracticeArea area;

  SlowSolver(Map<String, Double> figures, PracticeArea area) {
    this.figures = figures;
    this.area = area;
  }

  private double of(String name) {
    Double value = figures.get(name);
    if (value == null) {
      throw new IllegalArgumentException(name + " is not in " + figures);
    }
    return value;
  }

  boolean readsATable(Problem problem) {
    return problem.title().contains("card") || problem.title().contains("port's curve");
  }

  double solve(String title) {
    String kind = title.replaceAll("[0-9]+", "N");
    return switch (kind) {
      case "Magnetic course of a leg on the chart" -> of("True course") - of("Variation");
      case "Compass course by the deviation card" -> byCard();
      case "Depth over a sounding" -> of("Height") + of("Charted depth");
      case "Depth over a bank that dries" -> of("Height") - of("Dries");
      case "How far off by a small angle" -> of("Distance") / 60.0 * of("Angle");
      case "Daylight left on landing" -> of("Sunset") - of("Under way") - of("Departure");
      case "Aiming off up stream of a mark" -> upStream();
      case "Distance off by a vertical angle" -> vertical();
      case "Distance off a light that rises or dips" -> rising();
      case "Back bearing that holds the track" -> of("Track") + 180.0 - of("Variation");
      case "Heading that allows for leeway" -> leeway();
      case "True bearing from the deck compass" ->
          of("Compass bearing") + of("Deviation") + of("Variation");
      case "Magnetic course with a rose of N in N" -> rose();
      case "Magnetic course of a leg on the land map" ->
          of("Grid bearing") + of("Convergence") - of("Variation");
      case "Length of a leg on the chart" -> measured();
      case "Distance off by two bearings on the bow" -> bow();
      case "Height of the tide by twelfths" -> between(twelfths(share()));
      case "Height of the tide by the cosine" ->
          between(Math.pow(Math.sin(share() * Math.PI / 2), 2));
      case "Height of the tide by the port's curve" -> between(curve(share()));
      case "Time of a water at a secondary port" -> secondaryTime();
      case "Height of a water at a secondary port" -> secondaryHeight();
      case "Clearing bearing with the danger to port" -> clearing(-1.0);
      case "Clearing bearing with the danger to starboard" -> clearing(1.0);
      case "Rate of the stream from the table" -> rate(Math.rint(hours()));
      case "Stream between two hours of the table" -> betweenHours();
      case "Heading across a stream" -> triangle()[0] - of("Variation");
      case "Time of a leg in a stream" -> of("Distance") / triangle()[1] * 60.0;
      case "Fix by the bearings of two marks" -> twoBearings();
      case "Distance off by a running fix" -> runningFix();
      case "Estimated position from the start" -> estimated();
      case "One heading through N hours" -> throughHours();
      default -> throw new IllegalArgumentException(kind);
    };
  }

  private double byCard() {
    double magnetic = of("True course") - of("Variation");
    // try every compass heading: the one whose deviation, read between the printed rows, fits
    return search(
        compass -> turn(magnetic, compass + printedDeviation(compass)),
        magnetic - 20,
        magnetic + 20);
  }

  private double printedDeviation(double compass) {
    double heading = ((compass % 360.0) + 360.0) % 360.0;
    int row = ((int) (heading / 30.0)) * 30;
    double past = (heading - row) / 30.0;
    return (1.0 - past) * printed(row) + past * printed((row + 30) % 360);
  }

  private double printed(int heading) {
    double east = area.card().deviationOn(CompassBearing.ofDegrees(heading)).degreesEast();
    return Math.rint(east * 10.0) / 10.0;
  }

  private double upStream() {
    double one = of("Course") + of("Angle");
    double other = of("Course") - of("Angle");
    // the one that looks farther away from where the stream goes
    return Math.abs(turn(of("Set"), one)) > Math.abs(turn(of("Set"), other)) ? one : other;
  }

  private double vertical() {
    double height = of("Charted height") + of("Level of heights") - of("Tide");
    return search(
        miles -> of("Angle") - Math.toDegrees(Math.atan(height / (miles * 1852.0))) * 60.0,
        0.001,
        60.0);
  }

  /** By Pythagoras on a globe made larger by a sixth for the bending of the ray. */
  private double rising() {
    double radius = 6371000.0 * 7.0 / 6.0;
    double metres = 0.0;
    for (String name : new String[] {"Height", "Eye"}) {
      double above = radius + of(name);
      metres += Math.sqrt(above * above - radius * radius);
    }
    return metres / 1852.0;
  }

  private double leeway() {
    double one = of("Water track") + of("Leeway");
    double other = of("Water track") - of("Leeway");
    double up =
        Math.abs(turn(of("Wind from"), one)) < Math.abs(turn(of("Wind from"), other)) ? one : other;
    return up - of("Variation");
  }

  private double rose() {
    double minutes = Math.rint(area.rose().variation().degreesEast() * 60.0);
    for (int year = area.rose().year(); year < area.year(); year++) {
      minutes += area.rose().annualChange().minutesEast();
    }
    return of("True course") - minutes / 60.0;
  }

  private double measured() {
    double east = of("East") * Math.cos(Math.toRadians(of("Middle latitude")));
    return Math.sqrt(of("North") * of("North") + east * east);
  }

  /** The mark stands where both lines of sight meet; paddled along the axis of north. */
  private double bow() {
    return search(
        off -> {
          double[] mark = step(new double[] {0.0, of("Run")}, of("Second angle"), off);
          return turn(bearing(new double[2], mark), of("First angle"));
        },
        1e-6,
        60.0);
  }

  private double share() {
    return (of("Time") - of("Water before")) / (of("Water after") - of("Water before"));
  }

  private double between(double gone) {
    return (1.0 - gone) * of("Height before") + gone * of("Height after");
  }

  private static double twelfths(double share) {
    double gone = 0.0;
    int[] parts = {1, 2, 3, 3, 2, 1};
    for (int i = 0; i < 6; i++) {
      gone += parts[i] * Math.max(0.0, Math.min(1.0, share * 6.0 - i));
    }
    return gone / 12.0;
  }

  private double curve(double share) {
    double[] rising = {0.0, 0.12, 0.34, 0.62, 0.85, 0.97, 1.0};
    double[] falling = {1.0, 0.93, 0.77, 0.52, 0.27, 0.08, 0.0};
    boolean rises = of("Height after") > of("Height before");
    double[] table = rises ? rising : falling;
    int row = (int) Math.min(5.0, share * 6.0);
    double level = table[row] + (share * 6.0 - row) * (table[row + 1] - table[row]);
    return rises ? level : 1.0 - level;
  }

  private double secondaryTime() {
    double clock = of("Standard port") % 720.0;
    double atOne = Math.rint(area.differences().minutesAt(LocalTime.of(1, 0)));
    double atSeven = Math.rint(area.differences().minutesAt(LocalTime.of(7, 0)));
    double past = clock < 60.0 ? clock + 720.0 : clock;
    double difference =
        past <= 420.0
            ? atOne + (past - 60.0) / 360.0 * (atSeven - atOne)
            : atSeven + (past - 420.0) / 360.0 * (atOne - atSeven);
    return of("Standard port") + difference + of("Summer time");
  }

  private double secondaryHeight() {
    double slope =
        (of("Difference at springs") - of("Difference at neaps")) / (of("Springs") - of("Neaps"));
    return of("Standard port")
        + of("Difference at springs")
        - slope * (of("Springs") - of("Standard port"));
  }

  /** The line from the mark that just touches the ring, found by turning it. */
  private double clearing(double side) {
    double half =
        search(
            angle -> of("Clearance") - of("Distance") * Math.sin(Math.toRadians(angle)), 0.0, 90.0);
    return of("Mark to danger") + side * half + 180.0;
  }

  private double hours() {
    return (of("Time") - of("High water")) / 60.0;
  }

  private double rate(double hour) {
    for (StreamHour row : area.stream()) {
      if (row.hour() == (int) hour) {
        double perMetre =
            (row.springRate().knots() - row.neapRate().knots())
                / (of("Spring range") - of("Neap range"));
        return Math.max(
            0.0, row.springRate().knots() - perMetre * (of("Spring range") - of("Range")));
      }
    }
    throw new IllegalArgumentException("no row " + hour);
  }

  private double set(double hour) {
    for (StreamHour row : area.stream()) {
      if (row.hour() == (int) hour) {
        return row.set().degrees();
      }
    }
    throw new IllegalArgumentException("no row " + hour);
  }

  private double betweenHours() {
    double hour = Math.floor(hours());
    double past = hours() - hour;
    double[] first = step(new double[2], set(hour), rate(hour) * (1.0 - past));
    double[] both = step(first, set(hour + 1), rate(hour + 1) * past);
    return Math.sqrt(both[0] * both[0] + both[1] * both[1]);
  }

  /** Water track and speed made good: try every water track within a right angle of the course. */
  private double[] triangle() {
    double[] drift = step(new double[2], of("Set"), of("Rate"));
    return swung(drift, of("Paddling speed"));
  }

  private double[] swung(double[] drift, double paddled) {
    double course = of("Course");
    double track =
        search(t -> across(step(drift, t, paddled), course), course - 89.9, course + 89.9);
    double[] reached = step(drift, track, paddled);
    return new double[] {track, Math.sqrt(reached[0] * reached[0] + reached[1] * reached[1])};
  }

  private double throughHours() {
    double[] drift = new double[2];
    int hours = 0;
    while (figures.containsKey("Set " + (hours + 1))) {
      hours++;
      drift = step(drift, of("Set " + hours), of("Rate " + hours));
    }
    return swung(drift, of("Paddling speed") * hours)[0] - of("Variation");
  }

  private double twoBearings() {
    double one = of("First bearing") + of("Variation");
    double two = of("Second bearing") + of("Variation");
    double[] second = step(new double[2], of("First to second mark"), of("Distance between marks"));
    // back off the first mark along its line until the second bears as it was taken
    return search(
        off -> turn(bearing(step(new double[2], one + 180.0, off), second), two), 1e-6, 200.0);
  }

  private double runningFix() {
    double[] moved =
        step(step(new double[2], of("Water track"), of("Run")), of("Set"), of("Drift"));
    // the mark lies on the second line so far off that it bore at first as it was taken
    return search(
        off ->
            turn(
                bearing(new double[2], step(moved, of("Second bearing"), off)),
                of("First bearing")),
        1e-6,
        200.0);
  }

  private double estimated() {
    double[] at = new double[2];
    int steps = 1000;
    for (int i = 0; i < steps; i++) {
      double hours = of("Time") / 60.0 / steps;
      at = step(at, of("Heading") + of("Leeway"), of("Paddling speed") * hours);
      at = step(at, of("Set"), of("Rate") * hours);
    }
    return bearing(new double[2], at);
  }

  private static double[] step(double[] from, double degrees, double length) {
    double radians = degrees * Math.PI / 180.0;
    return new double[] {
      from[0] + length * Math.sin(radians), from[1] + length * Math.cos(radians)
    };
  }

  private static double bearing(double[] from, double[] to) {
    return Math.atan2(to[0] - from[0], to[1] - from[1]) * 180.0 / Math.PI;
  }

  private static double across(double[] point, double course) {
    double radians = course * Math.PI / 180.0;
    return point[0] * Math.cos(radians) - point[1] * Math.sin(radians);
  }

  private static double turn(double from, double to) {
    double turned = (to - from) % 360.0;
    return turned > 180.0 ? turned - 360.0 : turned <= -180.0 ? turned + 360.0 : turned;
  }

  /** Where a function passes through nothing: a scan for the change of sign, then halving. */
  private static double search(DoubleUnaryOperator function, double from, double to) {
    int steps = 20000;
    double best = Double.NaN;
    for (int i = 0; i < steps && Double.isNaN(best); i++) {
      double low = from + (to - from) * i / steps;
      double high = from + (to - from) * (i + 1) / steps;
      double atLow = function.applyAsDouble(low);
      double atHigh = function.applyAsDouble(high);
      if (atLow == 0.0) {
        return low;
      }
      if (atLow < 0.0 != atHigh < 0.0 && Math.abs(atLow - atHigh) < 90.0) {
        best = halved(function, low, high, atLow < 0.0);
      }
    }
    return best;
  }

  private static double halved(
      DoubleUnaryOperator function, double from, double to, boolean negative) {
    double low = from;
    double high = to;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2.0;
      if (function.applyAsDouble(middle) < 0.0 == negative) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2.0;
  }
}
