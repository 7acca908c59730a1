package org.ferryglide.examples.teach;

import static org.ferryglide.nav.measure.Distance.ofMetres;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ferryglide.nav.bearing.CompassBearing;
import org.ferryglide.nav.bearing.Deviation;
import org.ferryglide.nav.bearing.GridBearing;
import org.ferryglide.nav.bearing.GridConvergence;
import org.ferryglide.nav.bearing.MagneticBearing;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.sight.ClearingBearing;
import org.ferryglide.nav.teach.BearingProblems;
import org.ferryglide.nav.teach.DistanceOffProblems;
import org.ferryglide.nav.teach.FixingProblems;
import org.ferryglide.nav.teach.LandfallProblems;
import org.ferryglide.nav.teach.Problem;
import org.ferryglide.nav.teach.ReckoningProblems;
import org.ferryglide.nav.teach.SteeringProblems;
import org.ferryglide.tide.height.ClockDifferences;
import org.ferryglide.tide.height.MeanRanges;
import org.ferryglide.tide.stream.StreamHour;
import org.ferryglide.tide.teach.SecondaryPortProblems;
import org.ferryglide.tide.teach.StreamProblems;
import org.ferryglide.tide.teach.TideProblems;

/** The problems that the handbook works and draws, by the name of the drawing. */
final class HandbookProblems {
  private HandbookProblems() {}

  static Map<String, Problem> all() {
    Map<String, Problem> all = new LinkedHashMap<>();
    all.put(
        "bearings-norths",
        BearingProblems.compassToTrue(
            CompassBearing.ofDegrees(70), Deviation.ofDegreesEast(5), Variation.ofDegreesWest(9)));
    all.put(
        "bearings-grid",
        BearingProblems.gridToMagnetic(
            new GridBearing(312, "UTM 29"),
            GridConvergence.ofDegreesEast(1.5, "UTM 29"),
            Variation.ofDegreesWest(3)));
    all.put(
        "steering-triangle",
        SteeringProblems.courseToSteer(
            TrueBearing.ofDegrees(75),
            Speed.ofKnots(10),
            stream(30, 2.5),
            Variation.ofDegreesWest(4)));
    all.put(
        "steering-hours",
        ReckoningProblems.hourlyVectors(
            TrueBearing.ofDegrees(60),
            Speed.ofKnots(3.5),
            List.of(stream(165, 0.8), stream(170, 1.6), stream(350, 0.4)),
            Variation.ofDegreesWest(4)));
    all.put(
        "steering-leeway",
        SteeringProblems.leeway(
            TrueBearing.ofDegrees(70), TrueBearing.ofDegrees(340), 8, Variation.ofDegreesWest(4)));
    all.put(
        "reckoning-estimated",
        ReckoningProblems.estimatedPosition(
            TrueBearing.ofDegrees(40), 5, Speed.ofKnots(3.4), 50, stream(110, 1.5)));
    all.put(
        "fixing-two",
        FixingProblems.twoBearings(
            TrueBearing.ofDegrees(110),
            Distance.ofNauticalMiles(1.8),
            MagneticBearing.ofDegrees(352),
            MagneticBearing.ofDegrees(58),
            Variation.ofDegreesWest(4)));
    all.put(
        "fixing-running",
        FixingProblems.runningFix(
            TrueBearing.ofDegrees(60),
            TrueBearing.ofDegrees(100),
            TrueBearing.ofDegrees(20),
            Distance.ofNauticalMiles(1.4),
            TrueBearing.ofDegrees(330),
            Distance.ofNauticalMiles(0.4)));
    all.put("fixing-bow", DistanceOffProblems.bowBearings(Distance.ofNauticalMiles(3), 40, 80));
    all.put(
        "fixing-clearing",
        LandfallProblems.clearingBearing(
            TrueBearing.ofDegrees(215),
            Distance.ofNauticalMiles(2.4),
            Distance.ofNauticalMiles(0.5),
            ClearingBearing.Danger.TO_PORT));
    all.put(
        "steering-astern",
        BearingProblems.backBearing(
            TrueBearing.ofDegrees(60), TrueBearing.ofDegrees(35), Variation.ofDegreesWest(4)));
    all.put(
        "landfall-aiming",
        LandfallProblems.aimOff(TrueBearing.ofDegrees(20), TrueBearing.ofDegrees(95), 9));
    TideProblems.Water low = new TideProblems.Water(370.0, ofMetres(1.2));
    TideProblems.Water high = new TideProblems.Water(742.0, ofMetres(5.4));
    all.put("tides-twelfths", TideProblems.byTwelfths(low, high, 540.0));
    all.put("tides-depth", TideProblems.depthOver(ofMetres(3.2), ofMetres(-1.7), ofMetres(2.9)));
    all.put(
        "tides-secondary",
        SecondaryPortProblems.time(
            18 * 60 + 46,
            ClockDifferences.of(LocalTime.of(15, 0), 51).and(LocalTime.of(21, 0), 44),
            60.0));
    all.put(
        "streams-rate",
        StreamProblems.rate(
            rows(),
            new MeanRanges(ofMetres(6.0), ofMetres(3.2)),
            new StreamProblems.Day(742.0, ofMetres(6.1), ofMetres(4.8), 700.0),
            870.0));
    return all;
  }

  private static Velocity stream(double set, double knots) {
    return Velocity.ofSetAndRate(TrueBearing.ofDegrees(set), Speed.ofKnots(knots));
  }

  private static List<StreamHour> rows() {
    double[] springs = {1.4, 0.3, 1.0, 1.9, 2.1, 1.6};
    List<StreamHour> rows = new ArrayList<>();
    for (int hour = -2; hour <= 3; hour++) {
      double rate = springs[hour + 2];
      rows.add(
          new StreamHour(
              hour,
              TrueBearing.ofDegrees(hour < 0 ? 230 : 55),
              Speed.ofKnots(rate),
              Speed.ofKnots(hour == 2 ? 1.0 : rate / 2.0)));
    }
    return rows;
  }
}
