package org.ferryglide.nav.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WindField;
import org.junit.jupiter.api.Test;

class HeadingCorrectionTest {
  /** A few roundings of figures up to a few thousand. */
  private static final double ROUNDING = 1e-9;

  @Test
  void aShiftIsUndoneByTheMatrixItself() {
    EndShift shift = new EndShift();
    double heading = Math.toRadians(30.0);
    shift.set(heading, 1.0, 2.0);
    shift.undo(10.0, -20.0);
    double east = shift.swing() * Math.cos(heading) + shift.seconds() * 1.0;
    double north = -shift.swing() * Math.sin(heading) + shift.seconds() * 2.0;
    assertEquals(-10.0, east, ROUNDING);
    assertEquals(20.0, north, ROUNDING);
  }

  @Test
  void whatWasLearntGivesTheShiftThatWasSeen() {
    EndShift shift = new EndShift();
    shift.set(0.0, 0.0, 1.0);
    shift.undo(3.0, 4.0);
    double swing = shift.swing();
    double seconds = shift.seconds();
    shift.learn(-2.0, -5.0);
    shift.undo(2.0, 5.0);
    assertEquals(swing, shift.swing(), ROUNDING);
    assertEquals(seconds, shift.seconds(), ROUNDING);
  }

  private static Motion motion(double knots) {
    Velocity stream = Velocity.ofSetAndRate(TrueBearing.ofDegrees(90), Speed.ofKnots(knots));
    return new Motion(
        Craft.ofSpeed(Speed.ofKnots(3)), StreamField.steady(stream), WindField.calm());
  }

  @Test
  void aPoorGuessIsCorrectedOntoTheTarget() {
    Motion motion = motion(1.0);
    HeadingPath path = new HeadingPath(motion);
    HeadingCorrection correction = new HeadingCorrection(motion, path);
    Stretch stretch = new Stretch();
    stretch.set(0.0, 50.0, -5.0, 50.05, -5.0); // 3 NM due north
    assertTrue(correction.settles(stretch, 0.0, 3000.0, 86_400.0));
    assertTrue(correction.wasEasy());
    double aTenthOfADegree = 0.1; // the plane's triangle on the ellipsoid
    assertEquals(
        -Math.toDegrees(Math.asin(1.0 / 3.0)), correction.headingDegrees(), aTenthOfADegree);
    double millimetre = 1e-3;
    assertEquals(0.0, stretch.northOfTarget(path.state0()), millimetre);
    assertEquals(0.0, stretch.eastOfTarget(path.state1()), millimetre);
    assertEquals(path.time(), correction.arrival());
  }

  @Test
  void whatArrivesTooLateDoesNotSettle() {
    Motion motion = motion(1.0);
    HeadingCorrection correction = new HeadingCorrection(motion, new HeadingPath(motion));
    Stretch stretch = new Stretch();
    stretch.set(0.0, 50.0, -5.0, 50.05, -5.0);
    assertFalse(correction.settles(stretch, 0.0, 3000.0, 3600.0));
  }
}
