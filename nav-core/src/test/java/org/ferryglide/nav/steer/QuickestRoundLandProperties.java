package org.ferryglide.nav.steer;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.quickest.PlanePatch;
import org.ferryglide.nav.water.StreamField;
import org.ferryglide.testing.Seeds;

/**
 * Quickest paths round land in still water against the shortest way from corner to corner, by lines
 * of sight in the plane: channels narrow beside the leg, and groups of islands.
 */
class QuickestRoundLandProperties {
  private static final Instant DEPARTURE = Instant.parse("2026-06-14T10:00:00Z");
  private static final double SPEED = 1.5;

  /** Way points of a shortest way that keeps clear stand so far off corners, units of the patch. */
  private static final double CLEAR = 2.5e-3;

  /** The same of a way that nothing is shorter than. */
  private static final double CLOSE = 1e-6;

  private static final double LATE_SHARE = 1e-3;

  /** The patch is a plane to this share where legs of 30 km end. */
  private static final double EARLY_SHARE = 1e-5;

  /** A polygon as x and y of its corners in turn, anticlockwise. */
  private static final class Sea {
    final List<double[]> land = new ArrayList<>();
    final double end;

    Sea(Random random) {
      end = 2.0 * Math.pow(15.0, random.nextDouble());
    }

    static Sea channel(Random random) {
      Sea sea = new Sea(random);
      double wide = 0.03 + 0.12 * random.nextDouble();
      double x = sea.end * (0.3 + 0.4 * random.nextDouble());
      double y = 0.15 * sea.end * (random.nextDouble() - 0.5);
      double to = x + 0.05 + 0.6 * random.nextDouble();
      double up = y + 1.2 * (random.nextDouble() - 0.5) * (to - x);
      double far = 3.0 * sea.end;
      sea.land.add(new double[] {x, y + 0.5 * wide, to, up + 0.5 * wide, to, far, x, far});
      sea.land.add(new double[] {x, -far, to, -far, to, up - 0.5 * wide, x, y - 0.5 * wide});
      return sea;
    }

    static Sea islands(Random random) {
      Sea sea = new Sea(random);
      int islands = 15 + random.nextInt(30);
      for (int k = 0; k < islands; k++) {
        double x = sea.end * (0.06 + 0.88 * random.nextDouble());
        double y = 0.35 * sea.end * (random.nextDouble() - 0.5);
        double size = sea.end * (0.015 + 0.05 * random.nextDouble());
        double[] island = new double[2 * (3 + random.nextInt(7))];
        for (int c = 0; c < island.length; c += 2) {
          double angle = 2.0 * Math.PI * (c + 0.6 * random.nextDouble()) / island.length;
          double far = size * (0.6 + 0.8 * random.nextDouble());
          island[c] = x + far * Math.cos(angle);
          island[c + 1] = y + far * Math.sin(angle);
        }
        sea.land.add(island);
      }
      return sea;
    }

    boolean isLand(double x, double y) {
      for (double[] p : land) {
        boolean within = false;
        for (int i = 0, j = p.length - 2; i < p.length; j = i, i += 2) {
          within ^=
              p[i + 1] > y != p[j + 1] > y
                  && x < p[i] + (p[j] - p[i]) * (y - p[i + 1]) / (p[j + 1] - p[i + 1]);
        }
        if (within) {
          return true;
        }
      }
      return false;
    }

    /** Whether a line of sight crosses no side and no land. */
    boolean sees(double[] a, double[] b) {
      for (double[] p : land) {
        for (int i = 0, j = p.length - 2; i < p.length; j = i, i += 2) {
          boolean crosses =
              side(a[0], a[1], b[0], b[1], p[i], p[i + 1])
                          * side(a[0], a[1], b[0], b[1], p[j], p[j + 1])
                      < 0.0
                  && side(p[i], p[i + 1], p[j], p[j + 1], a[0], a[1])
                          * side(p[i], p[i + 1], p[j], p[j + 1], b[0], b[1])
                      < 0.0;
          if (crosses) {
            return false;
          }
        }
      }
      return !isLand(0.5 * (a[0] + b[0]), 0.5 * (a[1] + b[1]));
    }

    private static double side(double ax, double ay, double bx, double by, double x, double y) {
      return (bx - ax) * (y - ay) - (by - ay) * (x - ax);
    }

    /** Start, end, and a place off each convex corner. */
    List<double[]> places(double clear) {
      List<double[]> places = new ArrayList<>();
      places.add(new double[] {0.0, 0.0});
      places.add(new double[] {end, 0.0});
      for (double[] p : land) {
        int n = p.length;
        for (int i = 0; i < n; i += 2) {
          double[] in = unit(p[i] - p[(i + n - 2) % n], p[i + 1] - p[(i + n - 1) % n]);
          double[] out = unit(p[(i + 2) % n] - p[i], p[(i + 3) % n] - p[i + 1]);
          if (in[0] * out[1] - in[1] * out[0] > 0.0) {
            double dx = in[0] - out[0];
            double dy = in[1] - out[1];
            double length = Math.hypot(dx, dy);
            double off = clear / Math.sqrt(Math.max(0.04, 1.0 - 0.25 * length * length)) / length;
            places.add(new double[] {p[i] + off * dx, p[i + 1] + off * dy});
          }
        }
      }
      return places;
    }

    private static double[] unit(double x, double y) {
      double length = Math.hypot(x, y);
      return new double[] {x / length, y / length};
    }

    /** How long the shortest way takes, by Dijkstra's method; infinite if there is no way. */
    double seconds(double clear) {
      List<double[]> places = places(clear);
      double[] far = new double[places.size()];
      Arrays.fill(far, Double.POSITIVE_INFINITY);
      far[0] = 0.0;
      boolean[] done = new boolean[far.length];
      while (true) {
        int next = -1;
        for (int i = 0; i < far.length; i++) {
          next = !done[i] && (next < 0 || far[i] < far[next]) ? i : next;
        }
        if (next == 1 || next < 0 || far[next] == Double.POSITIVE_INFINITY) {
          return far[1] * PlanePatch.UNIT_METRES / SPEED;
        }
        done[next] = true;
        double[] from = places.get(next);
        for (int i = 0; i < far.length; i++) {
          double[] to = places.get(i);
          double all = far[next] + Math.hypot(to[0] - from[0], to[1] - from[1]);
          if (!done[i] && all < far[i] && sees(from, to)) {
            far[i] = all;
          }
        }
      }
    }

    double seconds() {
      List<List<Position>> obstacles = new ArrayList<>();
      for (double[] p : land) {
        List<Position> corners = new ArrayList<>();
        for (int i = 0; i < p.length; i += 2) {
          corners.add(PlanePatch.at(p[i], p[i + 1]));
        }
        obstacles.add(corners);
      }
      SteeredLeg leg =
          CourseToSteer.with(Craft.ofSpeed(Speed.ofMetresPerSecond(SPEED)), StreamField.slack())
              .withStrategy(Strategy.quickestAround(obstacles))
              .withLimits(SteeringLimits.NONE)
              .solve(RhumbLeg.between(PlanePatch.at(0.0, 0.0), PlanePatch.at(end, 0.0)), DEPARTURE)
              .orElseThrow();
      return leg.arrivalSeconds() - DEPARTURE.getEpochSecond();
    }
  }

  private static void takesAsLongAsTheShortestWay(Sea sea) {
    Assume.that(!sea.isLand(0.0, 0.0) && !sea.isLand(sea.end, 0.0));
    double clear = sea.seconds(CLEAR);
    Assume.that(clear < Double.POSITIVE_INFINITY);
    double seconds = sea.seconds();
    assertTrue(seconds <= (1.0 + LATE_SHARE) * clear, () -> seconds + " s against " + clear);
    double least = sea.seconds(CLOSE);
    assertTrue(seconds >= (1.0 - EARLY_SHARE) * least, () -> seconds + " s against " + least);
  }

  @Property(seed = Seeds.SEED, tries = 10 * Seeds.MORE_IN_THE_SOAK)
  void narrowChannelsAreFound(@ForAll long seed) {
    takesAsLongAsTheShortestWay(Sea.channel(new Random(seed)));
  }

  @Property(seed = Seeds.SEED, tries = 10 * Seeds.MORE_IN_THE_SOAK)
  void islandsAreGoneRoundByTheShortestWay(@ForAll long seed) {
    takesAsLongAsTheShortestWay(Sea.islands(new Random(seed)));
  }
}
