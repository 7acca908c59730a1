package org.ferryglide.tide.stream;

import static org.ferryglide.nav.measure.Distance.ofMetres;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.tide.height.MeanRanges;
import org.ferryglide.tide.height.TideEvent;
import org.ferryglide.tide.height.TideTable;

/** Invented tides and tables for the tests of this room. */
final class StreamSamples {
  static final Position SKARRA = Position.ofDegrees(50.11, -5.52);
  static final StandardPort ENNOR =
      StandardPort.aboutHighWater("Port Ennor", new MeanRanges(ofMetres(5.0), ofMetres(2.0)));
  static final Instant FIRST_HIGH = Instant.parse("2026-06-01T06:00:00Z");

  /** Sets and rates of an ordinary rectilinear channel, -6 to 6. */
  private static final double[] SETS = {245, 61, 62, 60, 58, 63, 70, 240, 245, 243, 244, 246, 245};

  private static final double[] SPRING = {
    0.8, 0.4, 1.9, 2.8, 2.6, 1.4, 0.2, 1.0, 2.1, 3.0, 2.7, 1.8, 1.0
  };

  private StreamSamples() {}

  static StreamTable table() {
    return table("Skarra Sound", SKARRA, ENNOR);
  }

  static StreamTable table(String station, Position position, StandardPort port) {
    List<StreamHour> hours = new ArrayList<>();
    for (int i = 0; i < 13; i++) {
      hours.add(row(i - 6, SETS[i], SPRING[i], SPRING[i] / 2));
    }
    return StreamTable.of(station, position, port, hours);
  }

  static StreamHour row(int hour, double set, double spring, double neap) {
    return new StreamHour(
        hour, TrueBearing.ofDegrees(set), Speed.ofKnots(spring), Speed.ofKnots(neap));
  }

  /** Low, high, low ...: highs the given minutes apart from the first, all ranges alike. */
  static TideTable tides(double rangeMetres, int... minutesBetweenHighs) {
    List<TideEvent> events = new ArrayList<>();
    Instant high = FIRST_HIGH;
    events.add(TideEvent.low(high.minusSeconds(6 * 3600), ofMetres(0.5)));
    events.add(TideEvent.high(high, ofMetres(0.5 + rangeMetres)));
    for (int minutes : minutesBetweenHighs) {
      events.add(TideEvent.low(high.plusSeconds(minutes * 30L), ofMetres(0.5)));
      high = high.plusSeconds(minutes * 60L);
      events.add(TideEvent.high(high, ofMetres(0.5 + rangeMetres)));
    }
    events.add(TideEvent.low(high.plusSeconds(6 * 3600), ofMetres(0.5)));
    return TideTable.of("Port Ennor", "chart datum", events);
  }

  static Instant afterHigh(double hours) {
    return FIRST_HIGH.plusMillis(Math.round(hours * 3600e3));
  }
}
