package org.ferryglide.examples.teach;

import static org.ferryglide.examples.teach.Plot.along;

import java.time.Duration;
import java.util.List;
import org.ferryglide.examples.page.Ink;
import org.ferryglide.examples.svg.Svg;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.ClosestPoint;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.ErrorBudget;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.reckon.SteadyRun;

/** Pictures of the handbook that are of no problem; their figures are the library's own. */
final class HandbookPictures {
  private HandbookPictures() {}

  /** A leg and a rock beside it, where the rock is abeam. */
  static Svg leg() {
    RhumbLeg leg =
        RhumbLeg.between(
            Position.parse("46°11.8'N 026°17.6'W"), Position.parse("46°15.0'N 026°12.0'W"));
    Position rock = Position.parse("46°13.08'N 026°13.5'W");
    ClosestPoint closest = leg.closestTo(rock);
    double course = leg.course().degrees();
    double[] mark = along(course, leg.length().nauticalMiles());
    double[] abeam = along(course, closest.alongTrack().nauticalMiles());
    double[] off = Plot.sum(abeam, along(course + 90.0, closest.crossTrack().nauticalMiles()));
    return new Plot()
        .vector(
            new double[] {0.0, 0.0},
            mark,
            2,
            leg.course().threeDigits() + "T " + leg.length().inNauticalMiles(2))
        .line(abeam, off, closest.crossTrack().inNauticalMiles(2) + " to the right")
        .spot(new double[] {0.0, 0.0}, "start")
        .spot(mark, "mark")
        .spot(off, "rock")
        .note(abeam, "abeam after " + closest.alongTrack().inNauticalMiles(2))
        .drawn(
            "legs-closest",
            "A leg and a rock beside it",
            "A leg on "
                + leg.course().threeDigits()
                + " true, "
                + leg.length().inNauticalMiles(2)
                + " long; the rock is "
                + closest.crossTrack().inNauticalMiles(2)
                + " to its right.",
            "NM");
  }

  /** A rose as charts print it: true outside, magnetic of its year inside. */
  static Svg rose() {
    Svg svg =
        Svg.of(
            "variation-rose",
            Ink.WIDTH,
            210,
            "A printed rose",
            "Two rings. The outer counts from true north. The inner is turned 12 degrees to the"
                + " west: it counts from magnetic north of the printed year. Beside it stands"
                + " 12°00'W 2016 (9'E).");
    svg.rectangle(0, 0, Ink.WIDTH, 210, "fill", "#fff");
    RosePicture.ring(svg, 120, 105, 92, 0.0);
    RosePicture.ring(svg, 120, 105, 62, -12.0);
    RosePicture.needle(svg, 120, 105, 40, -12.0);
    svg.circle(120, 105, 2, "fill", Ink.BLACK);
    Ink.words(svg, 226, 60, "outer ring: true", Ink.TEXT);
    svg.line(224, 57, 205, 70, "stroke", Ink.BLACK);
    Ink.words(svg, 226, 100, "inner ring: magnetic", Ink.TEXT);
    Ink.words(svg, 226, 113, "of the printed year", Ink.TEXT);
    svg.line(224, 97, 182, 100, "stroke", Ink.BLACK);
    Ink.words(svg, 226, 150, "12°00'W 2016 (9'E)", Ink.TEXT, "font-weight", "700");
    Ink.words(svg, 226, 164, "9' less westerly a year", Ink.SMALL);
    return svg;
  }

  /** How the ring that holds the party in 95 of 100 cases grows from hour to hour. */
  static Svg growth() {
    Velocity stream = Velocity.ofSetAndRate(TrueBearing.ofDegrees(140), Speed.ofKnots(1.2));
    SteadyRun hour =
        new SteadyRun(Duration.ofHours(1), TrueBearing.ofDegrees(60), Speed.ofKnots(3.2), stream);
    Plot plot = new Plot().spot(new double[] {0.0, 0.0}, "start");
    double[] at = {0.0, 0.0};
    double track = hour.overGround().set().degrees();
    double speed = hour.overGround().rate().knots();
    for (int hours = 1; hours <= 3; hours++) {
      double[] next = along(track, hours * speed);
      double reach =
          ErrorBudget.of(List.of(hour.lasting(Duration.ofHours(hours))), ErrorModel.usual())
              .covariance()
              .ellipse(0.95)
              .semiMajorAxis()
              .nauticalMiles();
      plot.vector(at, next, 2, "")
          .ring(next, reach, hours + " h: " + Svg.number(Math.rint(reach * 10) / 10) + " NM");
      at = next;
    }
    return plot.drawn(
        "uncertainty-growth",
        "How uncertainty grows",
        "Dead reckoning for three hours; about each hour's place a ring that holds the party in 95"
            + " of 100 cases, wider every hour.",
        "NM");
  }

  /** What a day leaves: daylight, water at both landings, the stream that helps, the passage. */
  static Svg day() {
    String[] names = {"daylight", "water at the start", "water at the mark", "stream with us"};
    double[][] spans = {{5.5, 21.0}, {7.0, 13.0}, {9.5, 18.5}, {8.5, 14.25}};
    Svg svg =
        Svg.of(
            "planning-day",
            Ink.WIDTH,
            186,
            "What leaves a window",
            "Bands through a day: daylight 05:30 to 21:00, water enough at the start 07:00 to"
                + " 13:00, water at the mark 09:30 to 18:30, stream with us 08:30 to 14:15. A"
                + " passage of three hours fits in all of them if it leaves from 08:30 to 11:15.");
    svg.rectangle(0, 0, Ink.WIDTH, 186, "fill", "#fff");
    svg.hatch("good", 5, 45, Ink.WATER);
    for (int hour = 4; hour <= 22; hour += 2) {
      double x = x(hour);
      svg.line(x, 14, x, 160, "stroke", Ink.PALE);
      svg.text(x, 172, (hour < 10 ? "0" : "") + hour, "font-size", "8", "text-anchor", "middle");
    }
    for (int row = 0; row < names.length; row++) {
      double y = 18 + row * 26;
      svg.rectangle(
          x(spans[row][0]),
          y,
          x(spans[row][1]) - x(spans[row][0]),
          14,
          "fill",
          svg.fill("good"),
          "stroke",
          Ink.BLACK);
      Ink.words(svg, 4, y + 10, names[row], Ink.SMALL);
    }
    Ink.words(svg, 4, 132, "leave within", Ink.SMALL, "font-weight", "700");
    svg.rectangle(x(8.5), 122, x(11.25) - x(8.5), 14, "fill", Ink.BLACK);
    Ink.words(svg, 4, 154, "latest passage", Ink.SMALL);
    svg.rectangle(x(11.25), 144, x(14.25) - x(11.25), 14, "fill", "#fff", "stroke", Ink.BLACK);
    return svg;
  }

  private static double x(double hour) {
    return 96.0 + (hour - 4.0) * 14.0;
  }
}
