package org.ferryglide.nav.steer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.ferryglide.nav.position.Position;
import org.ferryglide.testing.Seeds;

/** Quickest paths in wind with rests, among islands and an area that is closed for a time. */
class QuickestInWindProperties {
  private static final DrawnSea.Laid MIRRORED = new DrawnSea.Laid(0.0, -1.0, 1.0);

  /** An island's side is looked at this close to a place, units of the patch. */
  private static final double BESIDE = 0.02;

  /**
   * Corners are kept clear of by metres, which count for more in a smaller sea; half of this was
   * measured.
   */
  private static final double CLEAR_SHARE = 1e-3;

  /** What an answer says that it may lose. */
  private static double doubtSeconds(SteeredLeg path) {
    return path.notes().stream()
        .filter(note -> note.code().equals("steer.quickest-error"))
        .mapToDouble(note -> Double.parseDouble(note.data().get("errorSeconds")))
        .findFirst()
        .orElse(0.0);
  }

  /** By counting the edges that a meridian meets south of a place. */
  private static boolean contains(List<Position> outline, Position place) {
    boolean within = false;
    for (int i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
      Position a = outline.get(i);
      Position b = outline.get(j);
      boolean isBetween =
          a.longitudeDegrees() > place.longitudeDegrees()
              != b.longitudeDegrees() > place.longitudeDegrees();
      if (isBetween) {
        double share =
            (place.longitudeDegrees() - a.longitudeDegrees())
                / (b.longitudeDegrees() - a.longitudeDegrees());
        double met = a.latitudeDegrees() + share * (b.latitudeDegrees() - a.latitudeDegrees());
        within ^= met < place.latitudeDegrees();
      }
    }
    return within;
  }

  @Property(seed = Seeds.SEED, tries = 3 * Seeds.MORE_IN_THE_SOAK)
  void thePathKeepsOutAndTakesAsLongWithItsTracksHeld(@ForAll int seed) {
    DrawnSea sea = new DrawnSea(seed, DrawnSea.Laid.AS_DRAWN);
    Optional<SteeredLeg> found = sea.path();
    assertTrue(found.isPresent(), "an answer exists: islands and area can be gone round");
    SteeredLeg path = found.get();
    for (TrackPoint point : path.groundTrack().pointsEvery(1.0)) {
      for (List<Position> island : sea.islands) {
        assertFalse(contains(island, point.position()), () -> "in an island: " + point);
      }
      boolean closed =
          point.time().isAfter(sea.closed.from()) && point.time().isBefore(sea.closed.until());
      assertFalse(closed && contains(sea.area, point.position()), () -> "closed: " + point);
    }
    List<Position> places = new ArrayList<>();
    boolean waits = false;
    for (TrackPoint point : path.groundTrack().points()) {
      boolean stays = !places.isEmpty() && places.get(places.size() - 1).equals(point.position());
      waits |= stays;
      if (!stays) {
        places.add(point.position());
      }
    }
    if (!waits) {
      SteeredRoute held =
          sea.solver()
              .withStrategy(Strategy.trackHeld())
              .solve(Route.ofRhumbLegs(places.toArray(new Position[0])), DrawnSea.DEPARTURE)
              .orElseThrow();
      assertEquals(path.arrivalSeconds(), held.arrivalSeconds(), 1.0);
    }
  }

  /**
   * The grids lie otherwise and what is found may differ, but by no more than both answers say, and
   * a share of the time where another allowance is made.
   */
  private static void takesAsLong(int seed, DrawnSea.Laid laid, double share) {
    SteeredLeg one = new DrawnSea(seed, DrawnSea.Laid.AS_DRAWN).path().orElseThrow();
    SteeredLeg other = new DrawnSea(seed, laid).path().orElseThrow();
    double begun = DrawnSea.DEPARTURE.getEpochSecond();
    assertEquals(
        one.arrivalSeconds() - begun,
        (other.arrivalSeconds() - begun) / laid.factor(),
        doubtSeconds(one)
            + doubtSeconds(other) / laid.factor()
            + share * (one.arrivalSeconds() - begun));
  }

  @Property(seed = Seeds.SEED, tries = 2 * Seeds.MORE_IN_THE_SOAK)
  void theMirroredSeaTakesAsLong(@ForAll int seed) {
    takesAsLong(seed, MIRRORED, 0.0);
  }

  @Property(seed = Seeds.SEED, tries = 2 * Seeds.MORE_IN_THE_SOAK)
  void theSeaTurnedTakesAsLong(
      @ForAll int seed, @ForAll @DoubleRange(min = 0, max = 360) double degrees) {
    takesAsLong(seed, new DrawnSea.Laid(degrees, 1.0, 1.0), 0.0);
  }

  /** So much further in so much slower tides, so much longer. */
  @Property(seed = Seeds.SEED, tries = 2 * Seeds.MORE_IN_THE_SOAK)
  void theLargerSeaTakesLongerByAsMuch(
      @ForAll int seed, @ForAll @DoubleRange(min = 0.5, max = 2.0) double factor) {
    takesAsLong(seed, new DrawnSea.Laid(0.0, 1.0, factor), CLEAR_SHARE);
  }

  /** No way by a third place is quicker, waits and all. */
  @Property(seed = Seeds.SEED, tries = 2 * Seeds.MORE_IN_THE_SOAK)
  void noWayByAThirdPlaceIsQuicker(
      @ForAll int seed,
      @ForAll @DoubleRange(min = 0.1, max = 3.9) double x,
      @ForAll @DoubleRange(min = -1, max = 1) double y) {
    DrawnSea sea = new DrawnSea(seed, DrawnSea.Laid.AS_DRAWN);
    for (double[] beside : new double[][] {{-1, 0}, {1, 0}, {0, -1}, {0, 1}}) {
      Position near = sea.laid.place(x + BESIDE * beside[0], y + BESIDE * beside[1]);
      Assume.that(!contains(sea.area, near));
      sea.islands.forEach(island -> Assume.that(!contains(island, near)));
    }
    Position by = sea.laid.place(x, y);
    Position end = sea.laid.place(4, 0);
    SteeredLeg straight = sea.path().orElseThrow();
    SteeredLeg first = sea.path(sea.laid.place(0, 0), by, DrawnSea.DEPARTURE).orElseThrow();
    SteeredLeg second = sea.path(by, end, first.arrival()).orElseThrow();
    assertTrue(
        straight.arrivalSeconds() <= second.arrivalSeconds() + doubtSeconds(straight),
        () -> straight + " against " + first + " and " + second);
  }
}
