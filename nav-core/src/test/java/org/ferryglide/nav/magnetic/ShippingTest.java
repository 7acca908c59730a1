package org.ferryglide.nav.magnetic;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.bearing.BearingWorking;
import org.ferryglide.nav.bearing.CompassBearing;
import org.ferryglide.nav.bearing.Deviation;
import org.ferryglide.nav.bearing.DeviationTable;
import org.ferryglide.nav.bearing.HeadingDeviation;
import org.ferryglide.nav.bearing.SwingFit;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.position.Position;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A batch engine ships these values; they must arrive as they were sent. */
class ShippingTest {
  static List<Object> values() {
    LocalDate date = LocalDate.of(2026, 6, 1);
    Position place = Position.ofDegrees(57, -7);
    MagneticSnapshot snapshot = MagneticModel.wmm2025().at(date);
    CompassRose rose = CompassRose.parse("4°15'W 2019 (8'E)");
    ChartRoses roses = ChartRoses.of(List.of(new PlacedRose(place, rose)));
    List<HeadingDeviation> sights = new ArrayList<>();
    for (int heading = 0; heading < 360; heading += 45) {
      sights.add(
          new HeadingDeviation(
              CompassBearing.ofDegrees(heading), Deviation.ofDegreesEast(heading / 100.0)));
    }
    SwingFit fit = SwingFit.of(sights);
    DeviationTable spline = DeviationTable.through(sights);
    return List.of(
        MagneticModel.wmm2025(),
        snapshot,
        snapshot.field(place),
        MagneticModel.wmm2025().place(place),
        rose,
        rose.workingInYear(2026),
        roses.between(place, date),
        RoseComparison.of(rose, MagneticModel.wmm2025(), place, date).orElseThrow(),
        LegVariation.of(snapshot, RhumbLeg.between(place, Position.ofDegrees(58, -3))),
        fit,
        fit.table(),
        spline,
        BearingWorking.inWholeDegrees()
            .compassToTrue(CompassBearing.ofDegrees(46), spline, rose.variation()));
  }

  @ParameterizedTest
  @MethodSource("values")
  void whatArrivesIsWhatWasSent(Object value) throws IOException, ClassNotFoundException {
    assertEquals(value.toString(), shipped(value).toString());
  }

  private static Object shipped(Object value) throws IOException, ClassNotFoundException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(value);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      return in.readObject();
    }
  }
}
