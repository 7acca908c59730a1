package org.ferryglide.nav.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/**
 * The tableau is held by the order conditions of Runge-Kutta formulas, as far as they are linear in
 * the weights: Hairer, Nørsett and Wanner (1993), Solving Ordinary Differential Equations I, 2nd
 * edition, table II.2.1; the step by equations with solutions in closed form.
 */
class DormandPrinceTest {
  /** A few roundings of coefficients up to 12. */
  private static final double ROUNDING = 8.0 * Math.ulp(12.0);

  private static final double[] C = {
    0.0, DormandPrince.C2, DormandPrince.C3, DormandPrince.C4, DormandPrince.C5, 1.0, 1.0
  };
  private static final double[] B = {
    DormandPrince.B1, 0.0, DormandPrince.B3, DormandPrince.B4, DormandPrince.B5, DormandPrince.B6, 0
  };
  private static final double[] E = {
    DormandPrince.E1,
    0.0,
    DormandPrince.E3,
    DormandPrince.E4,
    DormandPrince.E5,
    DormandPrince.E6,
    DormandPrince.E7
  };
  private static final double[][] A = {
    {},
    {DormandPrince.A21},
    {DormandPrince.A31, DormandPrince.A32},
    {DormandPrince.A41, DormandPrince.A42, DormandPrince.A43},
    {DormandPrince.A51, DormandPrince.A52, DormandPrince.A53, DormandPrince.A54},
    {DormandPrince.A61, DormandPrince.A62, DormandPrince.A63, DormandPrince.A64, DormandPrince.A65},
    {DormandPrince.B1, 0.0, DormandPrince.B3, DormandPrince.B4, DormandPrince.B5, DormandPrince.B6}
  };

  @Test
  void everyStageIsTakenWhereItsRatesLead() {
    for (int stage = 0; stage < A.length; stage++) {
      double sum = 0.0;
      for (double a : A[stage]) {
        sum += a;
      }
      assertEquals(C[stage], sum, ROUNDING, "stage " + (stage + 1));
    }
  }

  @Test
  void theStepIsOfOrderFiveAndItsErrorOfOrderFour() {
    for (int power = 0; power <= 4; power++) {
      double step = 0.0;
      double difference = 0.0;
      for (int stage = 0; stage < C.length; stage++) {
        step += B[stage] * Math.pow(C[stage], power);
        difference += E[stage] * Math.pow(C[stage], power);
      }
      assertEquals(1.0 / (power + 1), step, ROUNDING, "power " + power);
      if (power < 4) {
        assertEquals(0.0, difference, ROUNDING, "power " + power);
      } else {
        assertTrue(Math.abs(difference) > 1e-4, "the error is seen at order five");
      }
    }
  }

  @Test
  void conditionsWithStagesOfStagesHold() {
    double twice = 0.0;
    double thrice = 0.0;
    for (int i = 0; i < A.length; i++) {
      for (int j = 0; j < A[i].length; j++) {
        twice += B[i] * A[i][j] * C[j];
        for (int k = 0; k < A[j].length; k++) {
          thrice += B[i] * A[i][j] * A[j][k] * C[k];
        }
      }
    }
    assertEquals(1.0 / 6.0, twice, ROUNDING);
    assertEquals(1.0 / 24.0, thrice, ROUNDING);
  }

  /** A point that goes round the origin once in 2π seconds. */
  private static class Round extends DormandPrince {
    int asked;

    @Override
    boolean rates(double time, double state0, double state1) {
      asked++;
      rate0 = -state1;
      rate1 = state0;
      return true;
    }

    double missAfter(double step) {
      state0 = 1.0;
      state1 = 0.0;
      ratesAt(0.0, 1.0, 0.0);
      startRate0 = rate0;
      startRate1 = rate1;
      assertTrue(tryStep(step));
      return Math.hypot(next0 - Math.cos(step), next1 - Math.sin(step));
    }
  }

  @Test
  void halfTheStepMakesASixtyFourthOfTheError() {
    double factor = new Round().missAfter(0.4) / new Round().missAfter(0.2);
    assertEquals(64.0, factor, 10.0); // order five: 2^6 for one step, less what higher orders add
  }

  @Test
  void theDifferenceIsLargerThanTheErrorAndStagesAreSeven() {
    Round round = new Round();
    double miss = round.missAfter(0.4);
    assertTrue(round.difference > miss);
    assertEquals(1 + 6, round.asked, "the first stage is the last of the step before");
  }

  @Test
  void stagesKeepWithinTheirBoundsAndStopWhereThereAreNoRates() {
    DormandPrince bounded =
        new DormandPrince() {
          @Override
          boolean rates(double at, double state0, double state1) {
            rate0 = 1.0;
            rate1 = 0.0;
            return at >= 1.0 && at <= 1.5;
          }
        };
    bounded.time = 1.0;
    bounded.startRate0 = 1.0;
    assertFalse(bounded.tryStep(1.0));
    bounded.latest = 1.5;
    assertTrue(bounded.tryStep(1.0));
    assertEquals(1.0, bounded.next0, ROUNDING);
    assertEquals(0.0, bounded.difference, ROUNDING);
  }
}
