package org.ferryglide.nav.passage;

import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.timing.Condition;
import org.ferryglide.nav.timing.Verdict;

/** Whether a leg of another departure may be paddled by the printed heading of the plan. */
final class HeadingHolds implements Condition {
  private static final int PARTS = 20;

  private final int leg;
  private final PlannedLeg planned;
  private final int marks;

  HeadingHolds(int leg, PlannedLeg planned, int marks) {
    this.leg = leg;
    this.planned = planned;
    this.marks = marks;
  }

  @Override
  public String name() {
    return about().text();
  }

  @Override
  public Note about() {
    return Note.information("check.printed-heading", "printed heading of leg " + (leg + 1))
        .with("printedLeg", leg + 1);
  }

  @Override
  public Verdict check(SteeredRoute route) {
    SteeredLeg other = route.legs().get(leg);
    return Verdict.of(
            about(),
            worstTurn(other),
            "degrees out",
            0.5 * LaunchInterval.HEADING_DEGREES,
            LaunchInterval.HEADING_DEGREES)
        .at(other.departure());
  }

  /** Greatest turn from a heading as it is printed to the one that the other leg needs, degrees. */
  private double worstTurn(SteeredLeg other) {
    double worst = 0.0;
    for (int part = 0; part <= PARTS; part++) {
      double share = part / (double) PARTS;
      long printed = CardText.nearestMark(shown(heading(planned.steered(), share)), marks);
      double turn = Math.IEEEremainder(shown(heading(other, share)) - printed, 360.0);
      worst = Math.max(worst, Math.abs(turn));
    }
    return worst;
  }

  /** A true heading as a card prints it: by the compass, else magnetic, else true. */
  private double shown(double trueDegrees) {
    TrueBearing heading = TrueBearing.ofDegrees(trueDegrees);
    return AfloatSides.byCompass(planned, heading).orElse(heading.degrees());
  }

  private static double heading(SteeredLeg leg, double share) {
    double from = EpochSeconds.of(leg.departure());
    double until = EpochSeconds.of(leg.arrival());
    double[] place = new double[3];
    leg.groundTrack().at(from + share * (until - from), place, 0);
    return place[2];
  }
}
