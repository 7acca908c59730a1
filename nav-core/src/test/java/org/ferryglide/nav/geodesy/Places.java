package org.ferryglide.nav.geodesy;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.DomainContextBase;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;

/** Positions over the whole earth, its seams included, and kayak legs. */
class Places extends DomainContextBase {

  /** A leg as a paddler has it, by start, course and length; the course has full precision. */
  record KayakLeg(Position start, TrueBearing course, Distance length) {}

  @Provide
  Arbitrary<Position> positions() {
    Arbitrary<Double> latitudes =
        Arbitraries.frequencyOf(
            net.jqwik.api.Tuple.of(
                1, Arbitraries.of(-90.0, 90.0, 0.0, 1e-12, -1e-9, 45.0, Math.nextDown(90.0))),
            net.jqwik.api.Tuple.of(9, Arbitraries.doubles().between(-90.0, 90.0).ofScale(12)));
    Arbitrary<Double> longitudes =
        Arbitraries.frequencyOf(
            net.jqwik.api.Tuple.of(
                1, Arbitraries.of(-180.0, Math.nextDown(180.0), 0.0, 1e-12, -1e-9, 90.0)),
            net.jqwik.api.Tuple.of(9, Arbitraries.doubles().between(-180.0, 179.9).ofScale(12)));
    return Combinators.combine(latitudes, longitudes).as(Position::ofDegrees);
  }

  @Provide
  Arbitrary<KayakLeg> kayakLegs() {
    Arbitrary<Position> starts =
        Combinators.combine(
                Arbitraries.doubles().between(-75.0, 75.0).ofScale(12),
                Arbitraries.doubles().between(-180.0, 179.999).ofScale(12))
            .as(Position::ofDegrees);
    Arbitrary<Double> courses =
        Arbitraries.oneOf(
            Arbitraries.of(0.0, 90.0, 180.0, 270.0, Math.nextDown(360.0), 1e-9),
            Arbitraries.doubles().between(0.0, 359.999).ofScale(12));
    Arbitrary<Double> lengths = Arbitraries.doubles().between(10.0, 40_000.0).ofScale(6);
    return Combinators.combine(starts, courses, lengths)
        .as(
            (start, course, metres) ->
                new KayakLeg(start, TrueBearing.ofDegrees(course), Distance.ofMetres(metres)));
  }

  /** How far a point is from a position, metres, over the ground. */
  static double metres(Position position, double lat, double lon) {
    double[] sight = new double[3];
    Geodesics.inverse(position.latitudeDegrees(), position.longitudeDegrees(), lat, lon, sight, 0);
    return sight[2];
  }

  static double metres(Position a, Position b) {
    return metres(a, b.latitudeDegrees(), b.longitudeDegrees());
  }
}
