package org.ferryglide.examples.command;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.fix.BearingLine;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.teach.AnswerProblems;
import org.ferryglide.nav.teach.ChartProblems;
import org.ferryglide.nav.teach.Problem;
import org.ferryglide.nav.teach.SteeringProblems;
import org.ferryglide.tide.height.TideEvent;
import org.ferryglide.tide.height.TideTable;
import org.ferryglide.tide.stream.HourlyStream;
import org.ferryglide.tide.teach.TableProblems;
import org.ferryglide.tide.teach.TideProblems;

/** The problems that somebody would solve by hand for what a verb answers. */
final class ByHand {
  /** Beyond these nobody measures a leg on one chart with dividers. */
  private static final double LONGEST_MILES = 60.0;

  private static final double FURTHEST_LATITUDE = 75.0;

  private ByHand() {}

  /** The leg measured on the chart; none where it is too long or too far north for that. */
  static Optional<Problem> measured(RhumbLeg leg) {
    double from = leg.start().latitudeDegrees();
    double to = leg.end().latitudeDegrees();
    double middle = Math.abs(from + to) / 2.0;
    double miles = leg.length().nauticalMiles();
    if (middle > FURTHEST_LATITUDE || miles > LONGEST_MILES || miles == 0.0) {
      return Optional.empty();
    }
    double east =
        Math.IEEEremainder(leg.end().longitudeDegrees() - leg.start().longitudeDegrees(), 360.0);
    return Optional.of(
        ChartProblems.measuredLeg(
            60.0 * (to - from), 60.0 * east, middle, Math.max(Math.abs(from), Math.abs(to))));
  }

  /** Heading, if the variation is known, and time in a stream that makes the leg possible. */
  static List<Problem> steered(
      RhumbLeg leg, Speed speed, Velocity stream, Optional<Variation> variation) {
    List<Problem> problems = new ArrayList<>();
    TrueBearing course = leg.course();
    variation.ifPresent(
        it -> problems.add(SteeringProblems.courseToSteer(course, speed, stream, it)));
    problems.add(SteeringProblems.timeInStream(course, leg.length(), speed, stream));
    return problems;
  }

  /** The two bearings of the widest cut; none where no two cut on the side of the party. */
  static Optional<Problem> fixed(List<BearingLine> lines, Variation variation) {
    double widest = 0.0;
    Optional<Problem> problem = Optional.empty();
    for (int i = 0; i < lines.size(); i++) {
      for (int j = i + 1; j < lines.size(); j++) {
        double turn = lines.get(i).bearing().turnDegreesTo(lines.get(j).bearing());
        double cut = Math.abs(Math.sin(Math.toRadians(turn)));
        if (cut > widest) {
          Optional<Problem> pair = fixed(lines.get(i), lines.get(j), variation);
          problem = pair.isPresent() ? pair : problem;
          widest = pair.isPresent() ? cut : widest;
        }
      }
    }
    return problem;
  }

  private static Optional<Problem> fixed(BearingLine one, BearingLine two, Variation variation) {
    try {
      return Optional.of(AnswerProblems.of(one, two, variation));
    } catch (IllegalArgumentException e) { // they do not cut where a party could be
      return Optional.empty();
    }
  }

  /** By twelfths and by the cosine between the waters about a time; none outside of the table. */
  static List<Problem> heights(TideTable table, Instant time, ZoneOffset offset) {
    return table.lastUpTo(time).isPresent() && table.firstAfter(time).isPresent()
        ? List.of(
            TableProblems.twelfths(table, time, offset), TableProblems.cosine(table, time, offset))
        : List.of();
  }

  /** The stream of a table at a time; none where its hours do not reach. */
  static Optional<Problem> stream(HourlyStream stream, Instant time, ZoneOffset offset) {
    try {
      return Optional.of(TableProblems.stream(stream, time, offset));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** The depth at the highest water of the table. */
  static Problem depth(TideTable table, double chartedMetres) {
    double highest = Double.NEGATIVE_INFINITY;
    double sum = 0.0;
    for (TideEvent water : table.events()) {
      highest = Math.max(highest, water.height().metres());
      sum += water.height().metres();
    }
    double mean = Math.rint(10.0 * sum / table.events().size()) / 10.0;
    return TideProblems.depthOver(
        Distance.ofMetres(highest), Distance.ofMetres(chartedMetres), Distance.ofMetres(mean));
  }
}
