package org.ferryglide.examples.teach;

import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;

/** Draws figures such as the sheet can print without rounding. */
final class Draws {
  private final PracticeArea area;
  private final SeededRandom random;

  Draws(PracticeArea area, SeededRandom random) {
    this.area = area;
    this.random = random;
  }

  PracticeArea area() {
    return area;
  }

  /** A whole number, {@code to} left out. */
  int whole(int from, int to) {
    return random.nextInt(from, to);
  }

  /** The same on one side or the other of nothing. */
  int eitherSide(int from, int to) {
    return whole(from, to) * (coin() ? 1 : -1);
  }

  boolean coin() {
    return random.nextBoolean();
  }

  double between(double from, double to) {
    return random.nextDouble(from, to);
  }

  double tenths(double from, double to) {
    return PracticeArea.tidy(between(from, to));
  }

  /** The variation of this year in quarters of a degree. */
  Variation now() {
    double east = area.rose().variationInYear(area.year()).degreesEast();
    return Variation.ofDegreesEast(Math.rint(east * 4.0) / 4.0);
  }

  TrueBearing bearing() {
    return TrueBearing.ofDegrees(random.nextInt(360));
  }

  PracticeMark mark() {
    return area.marks().get(random.nextInt(area.marks().size()));
  }

  Distance miles(double from, double to) {
    return Distance.ofNauticalMiles(tenths(from, to));
  }

  Speed knots(double from, double to) {
    return Speed.ofKnots(tenths(from, to));
  }

  Velocity flow() {
    return Velocity.ofSetAndRate(bearing(), Speed.ofKnots(tenths(0.6, 2.2)));
  }
}
