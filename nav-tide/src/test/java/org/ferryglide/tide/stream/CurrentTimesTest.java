package org.ferryglide.tide.stream;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CurrentTimesTest {

  @Test
  void navyExampleOfVelocityAtAnyTime() {
    // Source: US Navy NAVEDTRA 14220, p. 7-22 (form OPNAV 3530/41), public domain: 1 h 29 min of
    // 2 h 28 min from slack to a maximum of 0.66 kn; printed factor 0.8, printed answer 0.5 kn
    double rate = CurrentTimes.rate(0.66, 89, 148);
    assertEquals(0.8, rate / 0.66, 0.05);
    assertEquals(0.5, rate, 0.05);
    assertEquals(0.534773, rate, 5e-7); // by arithmetic
  }

  // By arithmetic, 2 (6 h / π) arcsin(limit) in whole minutes; common practice, no source
  @ParameterizedTest
  @CsvSource({"0.1, 23", "0.2, 46", "0.3, 70", "0.4, 94", "0.5, 120"})
  void durationOfSlackForAMaximumOfOneKnot(double limit, double minutes) {
    assertEquals(minutes, CurrentTimes.slackDuration(360, limit, 1.0), 0.5);
  }

  @Test
  void aMaximumBelowTheLimitIsSlackThroughout() {
    assertEquals(360, CurrentTimes.slackDuration(360, 0.5, 0.4));
    assertEquals(360, CurrentTimes.slackDuration(360, 0.5, 0.5));
    assertEquals(180, CurrentTimes.timeToReach(180, 0.0, 0.0));
  }

  @Test
  void timeToReachIsTheInverseOfTheRate() {
    double time = CurrentTimes.timeToReach(180, 1.3, 3.7);
    assertEquals(1.3, CurrentTimes.rate(3.7, time, 180), 1e-14);
  }

  @Test
  void nanGoesThrough() {
    assertTrue(Double.isNaN(CurrentTimes.rate(1, Double.NaN, 180)));
    assertTrue(Double.isNaN(CurrentTimes.slackDuration(Double.NaN, 0.5, 1)));
    assertTrue(Double.isNaN(CurrentTimes.timeToReach(180, Double.NaN, 1)));
  }
}
