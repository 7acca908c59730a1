package org.ferryglide.nav.quickest;

import java.util.List;
import java.util.Random;

/**
 * Kinds of random eddies about a leg of ten units, with the search for the quickest path among them
 * and the slow reference.
 */
enum EddyKind {
  ONE_STRONG(1, 1, 0.95, 1.5, 0.0),
  FEW(1, 4, 0.5, 1.5, 0.0),
  SEVERAL(5, 8, 0.5, 1.5, 0.0),
  MANY(8, 15, 0.3, 1.5, 0.0),
  FEW_TURNING(1, 4, 0.5, 1.5, 0.6),
  MANY_TURNING(5, 15, 0.3, 1.5, 0.6),
  WINDY(1, 7, 0.3, 1.2, 0.0),
  WINDY_TURNING(1, 7, 0.3, 1.2, 0.6),

  /** Stronger than the craft and turning: an earlier arrival at a place may be the worse one. */
  TORRENT_TURNING(1, 6, 1.05, 1.8, 0.6),
  TORRENT_WINDY(1, 4, 1.05, 1.6, 0.6);

  private static final double LEG = 10.0;
  private static final int STARTS = 10;
  private static final int WINDY_STARTS = 3; // each takes long
  private static final int SCREENED_STARTS = 4;
  private static final int SIDES = 320;

  private final int fewest;
  private final int most;
  private final double weakest;
  private final double strongest;
  private final double tide;

  EddyKind(int fewest, int most, double weakest, double strongest, double tide) {
    this.fewest = fewest;
    this.most = most;
    this.weakest = weakest;
    this.strongest = strongest;
    this.tide = tide;
  }

  Eddies eddies(int seed) {
    return Eddies.random(random(seed), fewest, most, weakest, strongest, tide);
  }

  /** Seeds that follow each other would begin with nearly the same numbers. */
  private static Random random(int seed) {
    return new Random(0x9E3779B97F4A7C15L * (seed + 1L));
  }

  boolean isTurning() {
    return tide != 0.0;
  }

  boolean isWindy() {
    return this == WINDY || this == WINDY_TURNING || this == TORRENT_WINDY;
  }

  /** In a wind of 2 to 5 craft speeds from anywhere: force 2 to 5 for a paddler. */
  WindyCraft craft(int seed) {
    Random random = random(-1 - seed);
    double angle = 2.0 * Math.PI * random.nextDouble();
    double speed = 2.0 + 3.0 * random.nextDouble();
    return new WindyCraft(eddies(seed), speed * Math.sin(angle), speed * Math.cos(angle));
  }

  ManyStarts reference(int seed) {
    return new ManyStarts(eddies(seed), isWindy() ? craft(seed)::madeGood : ManyStarts::calm, LEG);
  }

  double quickest(ManyStarts reference, int seed) {
    return reference.quickest(new Random(seed), starts(), SIDES);
  }

  /** By what share a time is at most longer than the reference, as {@link Screening} tells it. */
  double loss(int seed, double time) {
    return new Screening(reference(seed)).loss(time, new Random(seed), SCREENED_STARTS, SIDES);
  }

  private int starts() {
    return isWindy() ? WINDY_STARTS : STARTS;
  }

  /** How long the answer of the search takes, in units of the patch; infinite if there is none. */
  double answer(int seed) {
    return time(ways(seed));
  }

  static double time(List<FoundWay> ways) {
    return ways.isEmpty()
        ? Double.POSITIVE_INFINITY
        : ways.get(0).seconds() / PlanePatch.UNIT_METRES;
  }

  List<FoundWay> ways(int seed) {
    return new QuickestSearch(
            isWindy() ? craft(seed) : new CalmCraft(eddies(seed).field(), 1.0),
            Waters.open(),
            new double[] {0.0, 0.0},
            new double[] {0.0, PlanePatch.longitude(LEG)},
            0.0,
            86400.0)
        .ways(1);
  }
}
