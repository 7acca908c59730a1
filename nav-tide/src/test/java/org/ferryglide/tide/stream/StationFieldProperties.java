package org.ferryglide.tide.stream;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.water.Explanation;
import org.ferryglide.testing.Seeds;

class StationFieldProperties {
  private static final double ROUNDING = 1e-12;
  private static final double T = EpochSeconds.of(StreamSamples.afterHigh(0));

  @Provide
  Arbitrary<List<StreamStation>> stations() {
    Arbitrary<List<Double>> one =
        Combinators.combine(
                Arbitraries.doubles().between(50.0, 50.2).ofScale(4), // eleven metres at least
                Arbitraries.doubles().between(-5.3, -5.0).ofScale(4),
                Arbitraries.doubles().between(0, 359.9).ofScale(6),
                Arbitraries.doubles().between(0, 9).ofScale(6))
            .as(List::of);
    return one.list()
        .ofMinSize(3)
        .ofMaxSize(12)
        .uniqueElements(station -> station.get(0))
        .map(
            list -> {
              List<StreamStation> stations = new ArrayList<>();
              for (List<Double> s : list) {
                StreamTable table =
                    StreamTable.of(
                        "S" + stations.size(),
                        Position.ofDegrees(s.get(0), s.get(1)),
                        StreamSamples.ENNOR,
                        List.of(
                            StreamSamples.row(0, s.get(2), s.get(3), s.get(3)),
                            StreamSamples.row(1, s.get(2), s.get(3), s.get(3))));
                stations.add(table.boundTo(StreamSamples.tides(4.0)).asStation());
              }
              return stations;
            });
  }

  private static List<StationField> fields(List<StreamStation> stations) {
    List<StationField> fields = new ArrayList<>();
    fields.add(StationField.nearest(stations, Distance.ofNauticalMiles(8)));
    fields.add(StationField.inverseDistance(stations, Distance.ofNauticalMiles(8)));
    try {
      fields.add(StationField.triangles(stations, Distance.ofNauticalMiles(40)));
    } catch (IllegalArgumentException e) {
      // all in line
    }
    return fields;
  }

  @Property(seed = Seeds.SEED, tries = 150)
  void everyStationIsMetExactlyAndEveryAnswerLiesInTheSpanOfTheStations(
      @ForAll("stations") List<StreamStation> stations,
      @ForAll @DoubleRange(min = 49.95, max = 50.25) @Scale(6) double latitude,
      @ForAll @DoubleRange(min = -5.35, max = -4.95) @Scale(6) double longitude) {
    double[] out = new double[2];
    double[] own = new double[2];
    double[] least = {9e9, 9e9};
    double[] greatest = {-9e9, -9e9};
    for (StreamStation station : stations) {
      assertTrue(station.curve().sample(T, own, 0));
      for (int axis = 0; axis < 2; axis++) {
        least[axis] = Math.min(least[axis], own[axis]);
        greatest[axis] = Math.max(greatest[axis], own[axis]);
      }
    }
    for (StationField field : fields(stations)) {
      for (StreamStation station : stations) {
        station.curve().sample(T, own, 0);
        Position p = station.position();
        if (field.sample(p.latitudeDegrees(), p.longitudeDegrees(), T, out, 0)) {
          assertEquals(own[0], out[0], 1e-9);
          assertEquals(own[1], out[1], 1e-9);
        }
      }
      if (field.sample(latitude, longitude, T, out, 0)) {
        for (int axis = 0; axis < 2; axis++) {
          assertTrue(out[axis] >= least[axis] - ROUNDING && out[axis] <= greatest[axis] + ROUNDING);
        }
        assertTrue(
            Math.hypot(out[0], out[1]) <= field.maxRate().get().metresPerSecond() + ROUNDING);
      }
    }
  }

  @Property(seed = Seeds.SEED, tries = 150)
  void theExplanationRebuildsTheAnswer(
      @ForAll("stations") List<StreamStation> stations,
      @ForAll @DoubleRange(min = 49.95, max = 50.25) @Scale(6) double latitude,
      @ForAll @DoubleRange(min = -5.35, max = -4.95) @Scale(6) double longitude) {
    double[] out = new double[2];
    double[] own = new double[2];
    for (StationField field : fields(stations)) {
      Explanation explanation =
          field.explain(Position.ofDegrees(latitude, longitude), StreamSamples.afterHigh(0));
      boolean data = field.sample(latitude, longitude, T, out, 0);
      assertEquals(data, !explanation.sources().isEmpty());
      if (data) {
        double east = 0;
        double north = 0;
        double sum = 0;
        for (Explanation.Source source : explanation.sources()) {
          for (StreamStation station : stations) {
            if (station.name().equals(source.name())) {
              station.curve().sample(T, own, 0);
              east += source.weight() * own[0];
              north += source.weight() * own[1];
              sum += source.weight();
            }
          }
        }
        assertEquals(1.0, sum, ROUNDING);
        assertEquals(out[0], east, ROUNDING * 10);
        assertEquals(out[1], north, ROUNDING * 10);
      }
    }
  }

  @Property(seed = Seeds.SEED, tries = 150)
  void weightedFieldsHaveNoStepsInSpace(
      @ForAll("stations") List<StreamStation> stations,
      @ForAll @DoubleRange(min = 49.95, max = 50.25) @Scale(6) double latitude,
      @ForAll @DoubleRange(min = -5.35, max = -4.95) @Scale(6) double longitude) {
    double[] here = new double[2];
    double[] beside = new double[2];
    for (StationField field : fields(stations).subList(1, 2)) {
      // a tenth of a millimetre aside, stations at least eleven metres apart
      if (field.sample(latitude, longitude, T, here, 0)
          && field.sample(latitude + 1e-9, longitude, T, beside, 0)) {
        assertEquals(here[0], beside[0], 1e-3);
        assertEquals(here[1], beside[1], 1e-3);
      }
    }
  }
}
