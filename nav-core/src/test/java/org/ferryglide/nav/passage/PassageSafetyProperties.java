package org.ferryglide.nav.passage;

import static org.ferryglide.nav.measure.Distance.ofMetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.timing.Departure;
import org.ferryglide.nav.timing.Verdict;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.nav.water.WaterLevel;
import org.ferryglide.nav.water.WindField;
import org.ferryglide.testing.Seeds;

/** What is missing never counts as holding; plans travel between machines and threads. */
class PassageSafetyProperties {
  /** Levels, winds and streams with holes in time, drawn; the rest of the passage is easy. */
  private static PassageBuilder withHoles(Random random, double[] holes) {
    for (int i = 0; i < holes.length; i += 2) {
      holes[i] = Scenes.NOON.getEpochSecond() + 20_000.0 * random.nextDouble();
      holes[i + 1] = holes[i] + 4000.0 * random.nextDouble();
    }
    StreamField stream =
        (lat, lon, time, out, at) -> {
          out[at] = 0.1;
          out[at + 1] = 0.2;
          return !(time > holes[0] && time < holes[1]);
        };
    WindField wind =
        (lat, lon, time, out, at) -> {
          out[at] = 1.0;
          out[at + 1] = -2.0;
          return !(time > holes[2] && time < holes[3]);
        };
    WaterLevel level = holed(holes[4], holes[5]);
    Landing landing =
        Landing.between("Bar", ofMetres(0.0), ofMetres(10.0))
            .withOpenSector(TrueBearing.ofDegrees(0), TrueBearing.ofDegrees(359));
    return Passage.builder("holes", ZoneOffset.UTC, Scenes.party(3.5))
        .from(WayPoint.of("Slip", Scenes.SLIP).withLanding(landing))
        .to(WayPoint.of("Skerry", Scenes.SKERRY))
        .to(WayPoint.of("Cove", Scenes.COVE).withLanding(landing))
        .stream(stream)
        .wind(wind)
        .level("Bar", level)
        .dangers(
            List.of(
                Danger.point("Rock", Scenes.SKERRY, ofMetres(100))
                    .closedAboveLevel("Bar", ofMetres(6.0))))
        .limits(
            PassageLimits.none()
                .withStream(Speed.ofKnots(2), Speed.ofKnots(3))
                .withWind(Speed.ofKnots(15), Speed.ofKnots(20))
                .withReserve(Speed.ofKnots(1), Speed.ofKnots(0.5))
                .withOnshoreWind(Speed.ofKnots(15), Speed.ofKnots(20)));
  }

  private static WaterLevel holed(double from, double until) {
    return new WaterLevel() {
      private static final long serialVersionUID = 1L;

      @Override
      public double heightMetres(double seconds) {
        return seconds > from && seconds < until ? Double.NaN : 5.0;
      }

      @Override
      public String datum() {
        return "chart datum";
      }
    };
  }

  /** A hole shorter than two looks may lie between them. */
  private static final double SEEN_SECONDS = 121.0;

  private static boolean meets(double[] holes, int at, double from, double until) {
    return Math.min(holes[at + 1], until) - Math.max(holes[at], from) > SEEN_SECONDS;
  }

  @Property(seed = Seeds.SEED, tries = 200)
  void aCheckThatCouldNotBeMadeNeverCountsAsHolding(@ForAll Random random) {
    double[] holes = new double[6];
    Passage passage = withHoles(random, holes).build();
    Instant departure = Scenes.NOON.plusSeconds(random.nextInt(14_000));
    TimedPlan plan = TimedPlan.of(passage, departure).solved().orElse(null);
    if (plan == null) {
      return; // nothing holds that is not possible
    }
    double from = departure.getEpochSecond();
    double until = plan.arrival().toEpochMilli() / 1000.0;
    boolean unknown = false;
    for (Verdict verdict : plan.verdicts()) {
      unknown |= verdict.answer() == Verdict.Answer.NOT_CHECKED;
    }
    assertFalse(unknown && plan.holds());
    if (meets(holes, 0, from, until) || meets(holes, 2, from, until)) {
      assertFalse(plan.holds(), () -> plan.verdicts().toString());
    }
    if (meets(holes, 4, from - 900.0, from) || meets(holes, 4, until, until + 600.0)) {
      assertFalse(plan.holds(), () -> plan.verdicts().toString());
    }
    if (unknown) {
      assertEquals(Verdict.Answer.NOT_CHECKED, plan.worst().orElseThrow().answer());
      WhenToGo search =
          WhenToGo.search(passage, departure, departure.plusSeconds(1), Duration.ofSeconds(1));
      assertFalse(search.choices().get(0).isFit());
    }
  }

  @Property(seed = Seeds.SEED, tries = 5)
  void aSearchInParallelFindsWhatOneThreadFinds(@ForAll Random random) {
    Passage passage = withHoles(random, new double[6]).build();
    Instant until = Scenes.NOON.plus(Duration.ofHours(5));
    Duration step = Duration.ofMinutes(5);
    WhenToGo one = WhenToGo.search(passage, Scenes.NOON, until, step);
    WhenToGo all = WhenToGo.searchInParallel(passage, Scenes.NOON, until, step);
    assertEquals(one.windows().items(), all.windows().items());
    assertEquals(one.whyNot(), all.whyNot());
    assertEquals(one.choices().size(), all.choices().size());
    for (int i = 0; i < one.choices().size(); i++) {
      Departure here = one.choices().get(i);
      assertEquals(here.time(), all.choices().get(i).time());
      assertEquals(here.verdicts(), all.choices().get(i).verdicts());
    }
  }

  @Example
  void passagesAndPlansAreTheSameAfterTheirJourney() throws Exception {
    LegOptions inshore = LegOptions.usual().withStream(Told.stream(80, 0.7));
    Passage passage =
        Passage.builder("travels", ZoneOffset.UTC, Scenes.party(3.5))
            .from(WayPoint.of("Slip", Scenes.SLIP))
            .to(
                WayPoint.of("Skerry", Scenes.SKERRY)
                    .withMark(ofMetres(12))
                    .withStop(Stop.untilLevelAtMost("Bar", ofMetres(3.0))))
            .to(
                WayPoint.of("Cove", Scenes.COVE)
                    .withLanding(Landing.between("Bar", ofMetres(0), ofMetres(5))),
                inshore)
            .stream(Told.stream(20, 1))
            .wind(Told.wind(270, 10))
            .level("Bar", Scenes.level())
            .visibility(Distance.ofNauticalMiles(2))
            .dangers(
                List.of(
                    Danger.point("Rock", Scenes.COVE, ofMetres(100))
                        .closedDuring(
                            List.of(TimeSpan.of(Scenes.NOON, Scenes.NOON.plusSeconds(60))))
                        .closedAboveStream(Speed.ofKnots(2))))
            .lanes(List.of(Lane.along("Fairway", List.of(Scenes.SLIP, Scenes.COVE), ofMetres(50))))
            .shores(List.of(List.of(Scenes.SLIP, Scenes.COVE)))
            .build();
    TimedPlan plan = TimedPlan.of(passage, Scenes.NOON).orElseThrow();
    TimedPlan back = copy(plan);
    assertEquals(plan, back);
    assertEquals(plan.verdicts(), back.verdicts());
    assertEquals(plan.drifts(), back.drifts());
    assertEquals(plan, TimedPlan.of(copy(passage), Scenes.NOON).orElseThrow());
    assertEquals(
        Told.stream(80, 0.7), copy(passage).legs().get(1).options().stream().orElseThrow());
    assertTrue(back.passage().dangers().orElseThrow().equals(passage.dangers().orElseThrow()));
  }

  @SuppressWarnings({"unchecked", "BanSerializableRead"}) // the test's own bytes
  private static <T> T copy(T value) throws Exception {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(value);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      return (T) in.readObject();
    }
  }
}
