package org.ferryglide.nav.passage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.ferryglide.nav.reckon.Covariance;
import org.junit.jupiter.api.Test;

/**
 * The chances against a simulation that shares no code: plane vectors at steps of one second, a
 * random generator and errors of its own, the same figures as the usual errors written out.
 */
class PlanSpreadAgainstPlainSimulationTest {
  private static final int DRAWS = 1500;
  private static final int PLAIN = 2500;

  /** Four standard deviations of the difference of two shares of so many draws. */
  private static final double FOUR_SIGMA = 4.0 * Math.sqrt(0.25 / DRAWS + 0.25 / PLAIN);

  private static final double KNOT = 1852.0 / 3600.0;
  private static final double TIDE = 12.42 * 3600.0;
  private static final double HOURS_AFTER_NOON = 3600.0;
  private static final double RATE = 1.5 * KNOT;
  private static final double AFLOAT_MINUTES = 118.0;
  private static final double STREAM_LIMIT = 1.55;

  /** The legs on the plane, metres east and north; WGS84 radii at 46°12' by hand. */
  private static final double[][] LEGS = legs();

  private static double[][] legs() {
    double[][] ends = {{46 + 10 / 60.0, 20}, {46 + 12 / 60.0, 15}, {46 + 15 / 60.0, 13}};
    double[][] legs = new double[2][2];
    for (int i = 0; i < 2; i++) {
      double middle = Math.toRadians(0.5 * (ends[i][0] + ends[i + 1][0]));
      double w = Math.sqrt(1.0 - 0.00669437999 * Math.pow(Math.sin(middle), 2));
      double normal = 6378137.0 / w;
      double meridian = 6378137.0 * (1.0 - 0.00669437999) / (w * w * w);
      legs[i][0] = Math.toRadians((ends[i][1] - ends[i + 1][1]) / 60.0) * normal * Math.cos(middle);
      legs[i][1] = Math.toRadians(ends[i + 1][0] - ends[i][0]) * meridian;
    }
    return legs;
  }

  private final SplittableRandom random = new SplittableRandom(20260614L);

  private double gauss() {
    return Math.sqrt(-2.0 * Math.log(1.0 - random.nextDouble()))
        * Math.cos(2.0 * Math.PI * random.nextDouble());
  }

  /** What stays and what comes anew each hour. */
  private double[] hourly(double constant, double independent) {
    double[] hours = new double[12];
    double stays = constant * gauss();
    for (int i = 0; i < hours.length; i++) {
      hours[i] = stays + independent * gauss();
    }
    return hours;
  }

  @Test
  void chancesOfTimeAfloatAndStreamAgree() {
    TimedPlan plan = PlanSpreadTest.heldTrack(AFLOAT_MINUTES, STREAM_LIMIT);
    PlanSpread spread = PlanSpread.inParallel(plan, PlanErrors.usual(), DRAWS, 11L);
    Party party = plan.passage().party();
    double launchingAndLanding = party.launching().plus(party.landing()).toMillis() / 1000.0;
    int afloat = 0;
    int stream = 0;
    double[] underWay = new double[PLAIN];
    for (int draw = 0; draw < PLAIN; draw++) {
      double start = HOURS_AFTER_NOON + 600.0 * gauss();
      double late = 1200.0 * gauss();
      double[] speed = hourly(0.07, 0.07);
      double[] set = hourly(10.0, 10.0);
      double[] rate = hourly(0.20, 0.15);
      double[] eastward = hourly(0.05, 0.05);
      double[] northward = hourly(0.05, 0.05);
      double time = start;
      double strongest = 0.0;
      for (double[] leg : LEGS) {
        double length = Math.hypot(leg[0], leg[1]);
        double done = 0.0;
        while (done < length) {
          int hour = (int) ((time - start) / 3600.0);
          double flow = RATE * Math.cos(2.0 * Math.PI * (time - late) / TIDE) * (1.0 + rate[hour]);
          double east = flow * Math.sin(Math.toRadians(set[hour])) + eastward[hour];
          double north = flow * Math.cos(Math.toRadians(set[hour])) + northward[hour];
          strongest = Math.max(strongest, Math.hypot(east, north));
          double along = (east * leg[0] + north * leg[1]) / length;
          double across = (east * leg[1] - north * leg[0]) / length;
          double paddled = 3.5 * KNOT * (1.0 + speed[hour]);
          done += along + Math.sqrt(paddled * paddled - across * across);
          time += 1.0;
        }
      }
      underWay[draw] = time;
      afloat += time - start + launchingAndLanding <= 60.0 * AFLOAT_MINUTES ? 1 : 0;
      stream += strongest <= STREAM_LIMIT * KNOT ? 1 : 0;
    }
    double plainAfloat = afloat / (double) PLAIN;
    double plainStream = stream / (double) PLAIN;
    assertEquals(plainAfloat, spread.chances().get("time afloat without a stop"), FOUR_SIGMA);
    assertEquals(plainStream, spread.chances().get("stream"), FOUR_SIGMA);
    Arrays.sort(underWay);
    for (double share : new double[] {0.05, 0.5, 0.95}) {
      double plain = underWay[(int) (share * PLAIN)];
      double drawn =
          spread.arrival(2, share).orElseThrow().getEpochSecond() - Scenes.NOON.getEpochSecond();
      // the density of a normal spread of 15 minutes makes five hundredths of share two minutes
      assertEquals(plain, drawn, share == 0.5 ? 120.0 : 240.0, () -> "share " + share);
    }
  }

  @Test
  void thePlaceOfThePrintedHeadingsAgrees() {
    TimedPlan plan =
        TimedPlan.of(Scenes.passage(3.5, 1.5).build(), Scenes.NOON.plusSeconds(3600)).orElseThrow();
    PlanSpread spread = PlanSpread.inParallel(plan, PlanErrors.usual(), DRAWS, 12L);
    double[] heading = new double[2];
    double[] seconds = new double[2];
    for (int i = 0; i < 2; i++) {
      heading[i] = plan.legs().get(i).heading().degrees();
      seconds[i] = plan.legs().get(i).duration().toMillis() / 1000.0;
    }
    double e = 0.0;
    double n = 0.0;
    double ee = 0.0;
    double nn = 0.0;
    for (int draw = 0; draw < PLAIN; draw++) {
      double start = HOURS_AFTER_NOON + 600.0 * gauss();
      double late = 1200.0 * gauss();
      double[] steered = hourly(Math.sqrt(1.0 + 0.25 + 4.0 + 4.0), Math.sqrt(4.0 + 4.0));
      double[] speed = hourly(0.07, 0.07);
      double[] set = hourly(10.0, 10.0);
      double[] rate = hourly(0.20, 0.15);
      double[] eastward = hourly(0.05, 0.05);
      double[] northward = hourly(0.05, 0.05);
      double east = 0.0;
      double north = 0.0;
      double gone = 0.0;
      for (int leg = 0; leg < 2; leg++) {
        for (double t = 0.0; t < seconds[leg]; t++) {
          int hour = (int) (gone / 3600.0);
          double flow =
              RATE
                  * Math.cos(2.0 * Math.PI * (start + gone + 0.5 - late) / TIDE)
                  * (1.0 + rate[hour]);
          double bow = Math.toRadians(heading[leg] + steered[hour]);
          double paddled = 3.5 * KNOT * (1.0 + speed[hour]);
          east +=
              paddled * Math.sin(bow) + flow * Math.sin(Math.toRadians(set[hour])) + eastward[hour];
          north +=
              paddled * Math.cos(bow)
                  + flow * Math.cos(Math.toRadians(set[hour]))
                  + northward[hour];
          gone++;
        }
      }
      double offEast = east - LEGS[0][0] - LEGS[1][0];
      double offNorth = north - LEGS[0][1] - LEGS[1][1];
      e += offEast / PLAIN;
      n += offNorth / PLAIN;
      ee += offEast * offEast;
      nn += offNorth * offNorth;
    }
    Covariance drawn = spread.covariance(2);
    double plainEast = Math.sqrt(ee / PLAIN - e * e);
    double plainNorth = Math.sqrt(nn / PLAIN - n * n);
    // so many draws tell a standard deviation to 1.8 and 1.4 in a hundred, their ratio to 2.3
    assertEquals(plainEast, Math.sqrt(drawn.eastVariance()), 0.06 * plainEast);
    assertEquals(plainNorth, Math.sqrt(drawn.northVariance()), 0.06 * plainNorth);
  }
}
