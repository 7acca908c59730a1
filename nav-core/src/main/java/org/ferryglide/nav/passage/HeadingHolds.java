package org.ferryglide.nav.passage;

import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.steer.SteeredLeg;
import org.ferryglide.nav.steer.SteeredRoute;
import org.ferryglide.nav.timing.Condition;
import org.ferryglide.nav.timing.Verdict;

/** Whether a leg of another departure may be paddled by the printed heading of the plan. */
final class HeadingHolds implements Condition {
  private static final int PARTS = 20;

  private final int leg;
  private final SteeredLeg planned;

  HeadingHolds(int leg, SteeredLeg planned) {
    this.leg = leg;
    this.planned = planned;
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
            worstTurn(planned, other),
            "degrees out",
            0.5 * LaunchInterval.HEADING_DEGREES,
            LaunchInterval.HEADING_DEGREES)
        .at(other.departure());
  }

  /** Greatest turn from a printed heading, in whole degrees, to the other leg's, degrees. */
  static double worstTurn(SteeredLeg planned, SteeredLeg other) {
    double worst = 0.0;
    for (int part = 0; part <= PARTS; part++) {
      double share = part / (double) PARTS;
      double printed = Math.rint(heading(planned, share));
      double turn = Math.IEEEremainder(heading(other, share) - printed, 360.0);
      worst = Math.max(worst, Math.abs(turn));
    }
    return worst;
  }

  private static double heading(SteeredLeg leg, double share) {
    double from = EpochSeconds.of(leg.departure());
    double until = EpochSeconds.of(leg.arrival());
    double[] place = new double[3];
    leg.groundTrack().at(from + share * (until - from), place, 0);
    return place[2];
  }
}
