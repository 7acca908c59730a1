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
  private final Note about;

  /** The heading as it is printed, degrees, at even parts of the leg. */
  private final long[] printed = new long[PARTS + 1];

  HeadingHolds(int leg, PlannedLeg planned, int marks) {
    this.leg = leg;
    this.planned = planned;
    about =
        Note.information("check.printed-heading", "printed heading of leg " + (leg + 1))
            .with("printedLeg", leg + 1);
    for (int part = 0; part <= PARTS; part++) {
      printed[part] = CardText.nearestMark(shown(heading(planned.steered(), part)), marks);
    }
  }

  @Override
  public String name() {
    return about.text();
  }

  @Override
  public Note about() {
    return about;
  }

  @Override
  public Verdict check(SteeredRoute route) {
    SteeredLeg other = route.legs().get(leg);
    return Verdict.of(
            about,
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
      double turn = Math.IEEEremainder(shown(heading(other, part)) - printed[part], 360.0);
      worst = Math.max(worst, Math.abs(turn));
    }
    return worst;
  }

  /** A true heading as a card prints it: by the compass, else magnetic, else true. */
  private double shown(double trueDegrees) {
    TrueBearing heading = TrueBearing.ofDegrees(trueDegrees);
    return AfloatSides.byCompass(planned, heading).orElse(heading.degrees());
  }

  private static double heading(SteeredLeg leg, int part) {
    double share = part / (double) PARTS;
    double from = EpochSeconds.of(leg.departure());
    double until = EpochSeconds.of(leg.arrival());
    double[] place = new double[3];
    leg.groundTrack().at(from + share * (until - from), place, 0);
    return place[2];
  }
}
