package org.ferryglide.nav.geodesy;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.ferryglide.nav.position.Position;
import org.ferryglide.testing.Seeds;

/** Laws of rhumb lines; the tolerances are twice the promised 15 nanometres, there and back. */
@Domain(Places.class)
@Domain(DomainContext.Global.class)
class RhumbLinesProperties {
  private static final double THERE_AND_BACK_METRES = 40e-9;

  @Property(seed = Seeds.SEED, tries = 2000)
  void directUndoesInverse(@ForAll Position from, @ForAll Position to) {
    double[] line = inverse(from, to);
    double[] end = new double[2];
    RhumbLines.direct(from.latitudeDegrees(), from.longitudeDegrees(), line[0], line[1], end, 0);
    boolean pole = Math.abs(to.latitudeDegrees()) == 90.0;
    double lon = pole || Double.isNaN(end[1]) ? to.longitudeDegrees() : end[1];
    // Within metres of a pole the longitude winds so fast that the last bit of the course, 2.5e-16
    // radians, is worth more than the tolerance at the equator.
    Assume.that(Math.abs(from.latitudeDegrees()) < 89.9);
    assertEquals(0.0, Places.metres(to, end[0], lon), THERE_AND_BACK_METRES);
  }

  @Property(seed = Seeds.SEED, tries = 2000)
  void theWayBackIsAsLongAndReciprocal(@ForAll Position from, @ForAll Position to) {
    double[] there = inverse(from, to);
    double[] back = inverse(to, from);
    assertEquals(there[1], back[1], THERE_AND_BACK_METRES);
    boolean halfRound =
        Math.abs(from.longitudeDegrees() - to.longitudeDegrees()) == 180.0; // both go east
    if (there[1] > 0.0 && !halfRound) {
      assertEquals(0.0, Math.IEEEremainder(there[0] - back[0] - 180.0, 360.0), 1e-13);
    }
  }

  @Property(seed = Seeds.SEED, tries = 2000)
  void theOtherHemisphereIsAMirror(@ForAll Position from, @ForAll Position to) {
    double[] line = inverse(from, to);
    double[] south = new double[2];
    RhumbLines.inverse(
        -from.latitudeDegrees(),
        from.longitudeDegrees(),
        -to.latitudeDegrees(),
        to.longitudeDegrees(),
        south,
        0);
    assertEquals(line[1], south[1], 0.0);
    if (line[1] > 0.0) {
      assertEquals(0.0, Math.IEEEremainder(line[0] + south[0] - 180.0, 360.0), 1e-13);
    }
  }

  @Property(seed = Seeds.SEED, tries = 2000)
  void eastAndWestAreMirrors(@ForAll Position from, @ForAll Position to) {
    Assume.that(Math.abs(from.longitudeDegrees() - to.longitudeDegrees()) != 180.0);
    double[] line = inverse(from, to);
    double[] mirror = new double[2];
    RhumbLines.inverse(
        from.latitudeDegrees(),
        -from.longitudeDegrees(),
        to.latitudeDegrees(),
        -to.longitudeDegrees(),
        mirror,
        0);
    assertEquals(line[1], mirror[1], 0.0);
    assertEquals(0.0, Math.IEEEremainder(line[0] + mirror[0], 360.0), 1e-13);
  }

  @Property(seed = Seeds.SEED, tries = 2000)
  void turningTheEarthChangesNothing(@ForAll Position from, @ForAll Position to) {
    double[] line = inverse(from, to);
    double[] turned = new double[2];
    RhumbLines.inverse(
        from.latitudeDegrees(),
        from.longitudeDegrees() + 360.0,
        to.latitudeDegrees(),
        to.longitudeDegrees() - 720.0,
        turned,
        0);
    // Adding 720 degrees costs a rounding of 5.7e-14 degrees of longitude, 6.3 nanometres.
    assertEquals(line[1], turned[1], 2 * THERE_AND_BACK_METRES);
  }

  @Property(seed = Seeds.SEED, tries = 1000)
  void lengthsAddUpAlongALine(@ForAll Position from, @ForAll Position to) {
    Assume.that(Math.abs(from.latitudeDegrees()) < 90.0 && Math.abs(to.latitudeDegrees()) < 90.0);
    double[] line = inverse(from, to);
    Line prepared = RhumbLeg.between(from, to).line();
    double[] middle = new double[3];
    prepared.pointAt(0.3 * line[1], middle, 0);
    double[] first = new double[2];
    RhumbLines.inverse(
        from.latitudeDegrees(), from.longitudeDegrees(), middle[0], middle[1], first, 0);
    double[] second = new double[2];
    RhumbLines.inverse(
        middle[0], middle[1], to.latitudeDegrees(), to.longitudeDegrees(), second, 0);
    assertEquals(line[1], first[1] + second[1], 3 * THERE_AND_BACK_METRES);
  }

  private static double[] inverse(Position from, Position to) {
    double[] out = new double[2];
    RhumbLines.inverse(
        from.latitudeDegrees(),
        from.longitudeDegrees(),
        to.latitudeDegrees(),
        to.longitudeDegrees(),
        out,
        0);
    return out;
  }
}
