package org.ferryglide.nav.landfall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.plane.LocalPlane;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.Covariance;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.reckon.ErrorSimulation;
import org.ferryglide.nav.reckon.EstimatedPosition;
import org.ferryglide.nav.reckon.SteadyRun;
import org.junit.jupiter.api.Test;

/** Aiming off, finding the target, and what to do when it is not seen. */
class FindingTest {
  private static final Position SLIP = Position.ofDegrees(56.3, -6.2);
  private static final TrueBearing COURSE = TrueBearing.ofDegrees(70);
  private static final RhumbLeg LEG = RhumbLeg.from(SLIP, COURSE, Distance.ofNauticalMiles(5));

  /** The coast is a great circle and the fan is laid out in a plane. */
  private static final double TEN_METRES = 10;

  private static final Distance SIGMA = Distance.ofMetres(400);
  private static final Speed THREE_KNOTS = Speed.ofKnots(3);

  private static Distance metres(double metres) {
    return Distance.ofMetres(metres);
  }

  private static Offset right(double metres) {
    return Offset.of(Side.RIGHT, metres(metres));
  }

  private static Offset left(double metres) {
    return Offset.of(Side.LEFT, metres(metres));
  }

  private static Covariance covariance(double along, double across) {
    return Covariance.ofAxes(COURSE, metres(along), metres(across));
  }

  /** Source: 84.1, 93.3, 97.7 % for 1, 1.5 and 2 standard deviations, normal distribution. */
  @Test
  void aimingOffBySigmasGivesTheConfidenceOfTheTable() {
    double[][] table = {{0.841345, 1}, {0.933193, 1.5}, {0.977250, 2}};
    for (double[] row : table) {
      AimOff aim = AimOff.to(LEG, SIGMA, row[0], Side.LEFT);
      assertEquals(400 * row[1], aim.offset().distance().metres(), 0.01);
      double off = GeodesicLeg.between(LEG.end(), aim.aimingPoint()).length().metres();
      assertEquals(aim.offset().distance().metres(), off, 0.01);
    }
  }

  @Test
  void theStreamAtTheTargetChoosesTheSide() {
    Velocity south = Velocity.ofSetAndRate(TrueBearing.ofDegrees(180), Speed.ofKnots(1));
    AimOff aim = AimOff.upStream(LEG, SIGMA, 0.95, south);
    assertEquals(Side.LEFT, aim.side());
    assertEquals(Side.RIGHT, aim.side().opposite());
    assertTrue(aim.turnDegrees() < 0);
    assertEquals(
        -Math.toDegrees(Math.atan(aim.offset().distance().metres() / 9260)),
        aim.turnDegrees(),
        0.02);
    assertEquals(aim.turnDegrees(), COURSE.turnDegreesTo(aim.course()), 1e-6);
    AimOff other = AimOff.upStream(LEG, SIGMA, 0.95, south.times(-1));
    assertEquals(Side.RIGHT, other.side());
    assertEquals(-aim.turnDegrees(), other.turnDegrees(), 0.01);
    assertEquals(
        "confidence must be in [0.5, 1), but was 1.0",
        assertThrows(IllegalArgumentException.class, () -> AimOff.to(LEG, SIGMA, 1.0, Side.LEFT))
            .getMessage());
  }

  @Test
  void aTargetIsFoundOrMissedToOneSideOrTheOther() {
    TargetChance chance =
        TargetChance.of(covariance(300, 400), COURSE, metres(350)).withWidth(metres(100));
    assertEquals(0.683, chance.whenPassing(), 0.0005);
    assertEquals(0.1587, chance.missedTo(Side.LEFT), 0.0005);
    TargetChance aimed = chance.withOffset(right(600));
    double sum = aimed.whenPassing() + aimed.missedTo(Side.LEFT) + aimed.missedTo(Side.RIGHT);
    assertEquals(1.0, sum, 1e-12);
    assertTrue(aimed.missedTo(Side.LEFT) > aimed.missedTo(Side.RIGHT));
    assertTrue(aimed.whenPassing() < chance.whenPassing());
    assertTrue(chance.atArrival() < chance.whenPassing());
  }

  /** A correlated ellipse, off centre, a wide target: against plain simulation. */
  @Test
  void arrivalAgreesWithSimulation() {
    Covariance skewed = Covariance.ofAxes(TrueBearing.ofDegrees(20), metres(500), metres(150));
    Random random = new Random(4);
    int samples = 200_000;
    int near = 0;
    int nearWide = 0;
    double sine = Math.sin(Math.toRadians(70));
    double cosine = Math.cos(Math.toRadians(70));
    for (int i = 0; i < samples; i++) {
      double u = 500 * random.nextGaussian();
      double v = 150 * random.nextGaussian();
      double east = u * Math.sin(Math.toRadians(20)) + v * Math.cos(Math.toRadians(20));
      double north = u * Math.cos(Math.toRadians(20)) - v * Math.sin(Math.toRadians(20));
      double right = east * cosine - north * sine + 200;
      double ahead = east * sine + north * cosine;
      near += Math.hypot(right, ahead) <= 400 ? 1 : 0;
      nearWide += Math.hypot(Math.max(0, Math.abs(right) - 250), ahead) <= 400 ? 1 : 0;
    }
    TargetChance chance = TargetChance.of(skewed, COURSE, metres(400)).withOffset(right(200));
    double threeSigma = 3 * 0.5 / Math.sqrt(samples);
    assertEquals(near / (double) samples, chance.atArrival(), threeSigma);
    assertEquals(
        nearWide / (double) samples, chance.withWidth(metres(500)).atArrival(), threeSigma);
    assertEquals(chance.atArrival(), chance.withWidth(metres(1e-6)).atArrival(), 1e-6);
  }

  /** Without an error across, what counts is the error along alone, whatever rounding left. */
  @Test
  void aPositionSureAcrossIsFoundAsOftenAsItIsAlong() {
    for (double across : new double[] {0.0, 1e-9, 1e-6, 0.01, 1.0}) {
      TargetChance narrow = TargetChance.of(covariance(400, across), COURSE, metres(400));
      double alone = narrow.atArrival();
      assertEquals(0.6827, alone, 0.0001, "across " + across);
      assertEquals(alone, narrow.withWidth(metres(3000)).atArrival(), 1e-4, "across " + across);
    }
    Covariance edge = covariance(1000, 1.0);
    TargetChance wide = TargetChance.of(edge, COURSE, metres(500)).withWidth(metres(5000));
    assertEquals(0.3829, wide.atArrival(), 0.0001);
    assertEquals(0.3829, wide.withOffset(right(2000)).atArrival(), 0.0001);
    assertEquals(0.0, wide.withOffset(right(4000)).atArrival(), 1e-12);
  }

  @Test
  void notSeenHavingAimedOffMeansTheChosenSide() {
    Covariance at = covariance(500, 400);
    Duration grace = IfNotSeen.goOnFor(at, COURSE, THREE_KNOTS, 0.95);
    assertEquals(
        Math.ceil(500 * 1.644854 / THREE_KNOTS.metresPerSecond()), (double) grace.toSeconds(), 1);
    IfNotSeen right = IfNotSeen.after(grace, at, COURSE, THREE_KNOTS, metres(300), left(800));
    assertEquals(IfNotSeen.Advice.TURN_RIGHT, right.advice());
    assertTrue(right.toRight() > 0.9);
    IfNotSeen left = IfNotSeen.after(grace, at, COURSE, THREE_KNOTS, metres(300), right(800));
    assertEquals(IfNotSeen.Advice.TURN_LEFT, left.advice());
    assertEquals(right.toRight(), left.toLeft(), 1e-9);
    IfNotSeen straight =
        IfNotSeen.after(grace.multipliedBy(2), at, COURSE, THREE_KNOTS, metres(300), Offset.NONE);
    assertEquals(IfNotSeen.Advice.SEARCH, straight.advice());
    assertEquals(straight.toLeft(), straight.toRight(), 1e-9);
    IfNotSeen early =
        IfNotSeen.after(Duration.ofMinutes(-20), at, COURSE, THREE_KNOTS, metres(300), Offset.NONE);
    assertEquals(IfNotSeen.Advice.GO_ON, early.advice());
    for (IfNotSeen any : List.of(left, right, straight, early)) {
      assertEquals(1.0, any.ahead() + any.toLeft() + any.toRight(), 1e-12);
    }
  }

  /** Aimed off to the left, the target lies to the right: whatever is handed on, side and all. */
  @Test
  void theOffsetHandedOnKeepsItsSide() {
    AimOff aim = AimOff.to(LEG, SIGMA, 0.95, Side.LEFT);
    IfNotSeen answer =
        IfNotSeen.after(
            Duration.ofMinutes(20),
            covariance(500, 400),
            COURSE,
            THREE_KNOTS,
            metres(200),
            aim.offset());
    assertEquals(IfNotSeen.Advice.TURN_RIGHT, answer.advice());
    assertTrue(answer.toRight() > 0.9);
    MissedTarget missed =
        MissedTarget.of(LEG, SIGMA, metres(100), Distance.ofNauticalMiles(1))
            .aimedOff(aim.offset());
    assertTrue(missed.uncaught(Side.LEFT) > 10 * missed.uncaught(Side.RIGHT));
    assertEquals(aim.offset(), Offset.of(Side.LEFT, aim.offset().distance()));
    assertEquals("658 m to the left", aim.offset().toString());
    assertThrows(IllegalArgumentException.class, () -> Offset.of(Side.LEFT, metres(-1)));
  }

  @Test
  void aimingOffKeepsTheLinesGivenBefore() {
    Position beyond = RhumbLeg.from(LEG.end(), COURSE, Distance.ofNauticalMiles(1)).end();
    List<Position> coast =
        List.of(
            RhumbLeg.from(beyond, COURSE.turnedBy(90), Distance.ofNauticalMiles(9)).end(),
            RhumbLeg.from(beyond, COURSE.turnedBy(-90), Distance.ofNauticalMiles(9)).end());
    MissedTarget caught =
        MissedTarget.of(LEG, SIGMA, metres(200), Distance.ofNauticalMiles(2))
            .caughtBy("coast", coast)
            .aimedOff(left(660));
    assertEquals(1, caught.catches().size());
    assertEquals(0.0, caught.uncaught(Side.LEFT));
  }

  /** The shares of a passage simulated error by error, on the course aimed off. */
  @Test
  void inAStreamTheConfidenceIsThatOfTheCourseAimedOff() {
    SteadyRun like =
        new SteadyRun(
            Duration.ZERO,
            COURSE,
            THREE_KNOTS,
            Velocity.ofSetAndRate(TrueBearing.ofDegrees(130), Speed.ofKnots(1.5)));
    ErrorModel errors = ErrorModel.usual();
    for (Side side : Side.values()) {
      AimOff aim = AimOff.inStream(LEG, like, errors, Covariance.ZERO, 0.95, side).orElseThrow();
      double made = sideShare(aim, like, errors);
      assertEquals(0.95, made, 0.01, side.toString()); // three times the noise of 20 000 passages
    }
    assertEquals(
        Optional.empty(),
        AimOff.inStream(
            LEG,
            new SteadyRun(
                Duration.ZERO,
                COURSE,
                THREE_KNOTS,
                Velocity.ofSetAndRate(COURSE.turnedBy(90), Speed.ofKnots(3.5))),
            errors,
            Covariance.ZERO,
            0.95,
            Side.LEFT));
  }

  private static double sideShare(AimOff aim, SteadyRun like, ErrorModel errors) {
    RhumbLeg aimed = RhumbLeg.between(SLIP, aim.aimingPoint());
    double across = like.stream().acrossMetresPerSecond(aimed.course());
    double speed = like.speed().metresPerSecond();
    double made =
        Math.sqrt(speed * speed - across * across)
            + like.stream().alongMetresPerSecond(aimed.course());
    SteadyRun run =
        new SteadyRun(
            Duration.ofSeconds(Math.round(aimed.length().metres() / made)),
            aimed.course().turnedBy(-Math.toDegrees(Math.asin(across / speed))),
            like.speed(),
            like.stream());
    ErrorSimulation passages = ErrorSimulation.of(List.of(run), errors, 20_000, 5L);
    double sign = aim.side() == Side.RIGHT ? 1.0 : -1.0;
    int there = 0;
    for (int i = 0; i < passages.samples(); i++) {
      double right =
          passages.eastMetres(i) * Math.cos(Math.toRadians(70))
              - passages.northMetres(i) * Math.sin(Math.toRadians(70));
      there += sign * right + aim.offset().distance().metres() > 0.0 ? 1 : 0;
    }
    return there / (double) passages.samples();
  }

  /** The shares against a simulation in which the craft either has seen the target or has not. */
  @Test
  void notSeenAgreesWithSimulation() {
    Random random = new Random(9);
    int unseen = 0;
    int left = 0;
    int ahead = 0;
    double gone = 600 * THREE_KNOTS.metresPerSecond();
    for (int i = 0; i < 200_000; i++) {
      double x = 300 + 400 * random.nextGaussian();
      double y = gone + 500 * random.nextGaussian();
      boolean near = Math.abs(x) < 250;
      double from = near ? -Math.sqrt(250 * 250 - x * x) : 0;
      if (y < from || !near) {
        unseen++;
        ahead += y < from ? 1 : 0;
        left += y >= from && x > 0 ? 1 : 0;
      }
    }
    IfNotSeen answer =
        IfNotSeen.after(
            Duration.ofMinutes(10),
            covariance(500, 400),
            COURSE,
            THREE_KNOTS,
            metres(250),
            right(300));
    double threeSigma = 0.005;
    assertEquals(left / (double) unseen, answer.toLeft(), threeSigma);
    assertEquals(ahead / (double) unseen, answer.ahead(), threeSigma);
  }

  /**
   * An island short of a coast: a coast across the course is a backstop, one along it a handrail.
   */
  @Test
  void handrailsAndBackstopsCatchTheMiss() {
    Position beyond = RhumbLeg.from(LEG.end(), COURSE, Distance.ofNauticalMiles(1)).end();
    Position leftEnd =
        RhumbLeg.from(beyond, COURSE.turnedBy(-90), Distance.ofNauticalMiles(4)).end();
    List<Position> coast = List.of(beyond, leftEnd);
    Position rightStart = RhumbLeg.from(LEG.end(), COURSE.turnedBy(90), metres(500)).end();
    Position rightEnd =
        RhumbLeg.from(rightStart, COURSE.turnedBy(12), Distance.ofNauticalMiles(3)).end();
    List<Position> reef = List.of(rightStart, rightEnd);
    MissedTarget missed = MissedTarget.of(LEG, SIGMA, metres(200), Distance.ofNauticalMiles(2));
    assertEquals(0.3085, missed.uncaught(Side.LEFT), 0.002);
    assertEquals(0.3085, missed.uncaught(Side.RIGHT), 0.002);
    MissedTarget caught = missed.caughtBy("reef edge", reef).caughtBy("coast", coast);
    assertEquals(0, caught.uncaught(Side.LEFT));
    assertTrue(caught.uncaught(Side.RIGHT) > 0.05);
    MissedTarget.Catch first = caught.catches().get(0);
    assertEquals("coast", first.name());
    assertFalse(first.handrail());
    assertEquals(0.3085, first.left(), 0.002);
    // The furthest passage that is caught: the last but half a one of the 999, five miles on.
    double sigmas = 3.29 / 5 / 1852 * 400; // 999 even chances end at 3.29 standard deviations
    assertEquals((6 * Math.hypot(1, sigmas) - 5) * 1852, first.furthestRun().metres(), TEN_METRES);
    MissedTarget.Catch second = caught.catches().get(1);
    assertTrue(second.handrail());
    assertEquals(0, second.left());
    double all =
        first.left()
            + first.right()
            + second.left()
            + second.right()
            + caught.uncaught(Side.LEFT)
            + caught.uncaught(Side.RIGHT);
    assertEquals(0.617, all, 0.003);
    MissedTarget aimed = missed.aimedOff(left(660)).caughtBy("coast", coast);
    assertTrue(aimed.uncaught(Side.RIGHT) < 0.02);
    assertThrows(IllegalArgumentException.class, () -> missed.caughtBy("point", List.of(SLIP)));
  }

  @Test
  void theSquareExpandsUntilTheChanceIsReached() {
    EstimatedPosition likeliest = new EstimatedPosition(SLIP, covariance(600, 300));
    ExpandingSquare square = ExpandingSquare.about(likeliest, metres(250), 0.9);
    double spacing = 450;
    assertEquals(spacing, square.trackSpacing().metres(), 1e-9);
    double[] multiples = {1, 1, 2, 2, 3, 3, 4, 4};
    double[] courses = {70, 160, 250, 340, 70, 160, 250, 340};
    for (int i = 0; i < Math.min(8, square.legs().size()); i++) {
      assertEquals(multiples[i] * spacing, square.legs().get(i).length().metres(), 0.01);
      assertEquals(courses[i], square.legs().get(i).course().degrees(), 0.1);
    }
    assertTrue(square.chance() >= 0.9);
    assertTrue(square.length().metres() > 3000);
    assertEquals(simulated(square, 250), square.chance(), 0.01);
    ExpandingSquare fog = ExpandingSquare.about(likeliest, metres(50), 0.9);
    assertTrue(fog.length().metres() > 3 * square.length().metres());
    ExpandingSquare clear = ExpandingSquare.about(likeliest, metres(5000), 0.9);
    assertEquals(List.of(), clear.legs());
    assertEquals("0 legs, 0.0 NM, finds the target with chance 100 %", clear.toString());
  }

  private static double simulated(ExpandingSquare square, double sight) {
    Random random = new Random(6);
    int found = 0;
    int samples = 20_000;
    double sine = Math.sin(Math.toRadians(70));
    double cosine = Math.cos(Math.toRadians(70));
    double[][] corners = new double[square.legs().size() + 1][];
    corners[0] = new double[] {0, 0};
    for (int i = 0; i < square.legs().size(); i++) {
      corners[i + 1] = LocalPlane.toPlane(SLIP, square.legs().get(i).end());
    }
    for (int i = 0; i < samples; i++) {
      double along = 600 * random.nextGaussian();
      double across = 300 * random.nextGaussian();
      double east = along * sine + across * cosine;
      double north = along * cosine - across * sine;
      boolean seen = false;
      for (int k = 1; k < corners.length && !seen; k++) {
        double dx = corners[k][0] - corners[k - 1][0];
        double dy = corners[k][1] - corners[k - 1][1];
        double px = east - corners[k - 1][0];
        double py = north - corners[k - 1][1];
        double share = Math.max(0, Math.min(1, (px * dx + py * dy) / (dx * dx + dy * dy)));
        seen = Math.hypot(px - share * dx, py - share * dy) <= sight;
      }
      found += seen ? 1 : 0;
    }
    return found / (double) samples;
  }

  @Test
  void theLongestLegKeepsTheChance() {
    SteadyRun run =
        new SteadyRun(
            Duration.ZERO,
            COURSE,
            THREE_KNOTS,
            Velocity.ofSetAndRate(TrueBearing.ofDegrees(170), Speed.ofKnots(0.8)));
    Covariance start = Covariance.ofCircle(metres(20));
    LongestLeg fog = LongestLeg.of(run, ErrorModel.usual(), start, metres(200), 0.9).orElseThrow();
    LongestLeg haze = LongestLeg.of(run, ErrorModel.usual(), start, metres(800), 0.9).orElseThrow();
    assertTrue(fog.limited() && haze.limited());
    assertTrue(haze.distance().metres() > 2.5 * fog.distance().metres());
    assertEquals(0.9, fog.chance(), 0.001);
    LongestLeg endless =
        LongestLeg.of(run, ErrorModel.none(), start, metres(200), 0.9).orElseThrow();
    assertFalse(endless.limited());
    assertEquals(LongestLeg.HORIZON, endless.duration());
    assertEquals(
        Optional.empty(),
        LongestLeg.of(run, ErrorModel.usual(), Covariance.ofCircle(metres(900)), metres(200), 0.9));
  }
}
