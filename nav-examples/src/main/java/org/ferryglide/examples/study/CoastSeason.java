package org.ferryglide.examples.study;

import java.io.Serializable;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.geodesy.Ellipsoid;
import org.ferryglide.nav.geodesy.RhumbLines;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.steer.Arrivals;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.Route;
import org.ferryglide.tide.harmonic.Constituent;
import org.ferryglide.tide.harmonic.Constituents;
import org.ferryglide.tide.harmonic.HarmonicConstant;
import org.ferryglide.tide.harmonic.HarmonicConstants;
import org.ferryglide.tide.harmonic.NodalConvention;
import org.ferryglide.tide.harmonic.NodalScheme;
import org.ferryglide.tide.stream.HarmonicStream;
import org.ferryglide.tide.stream.StationField;
import org.ferryglide.tide.stream.StreamStation;

/**
 * A season of departures along an invented coast of stations: from each to the next, every half
 * hour. Each departure is worked by its number alone, so that any part of them can be worked
 * anywhere, in any order, and is the same.
 *
 * <p>The stations stand 3 to 5 NM apart on a winding line; each has a stream of five constituents
 * along the coast, of 0.5 to 4.5 kn at mean springs, that turns later from one to the next.
 *
 * <pre>{@code
 * CoastSeason season = new CoastSeason(1, 40, 183);
 * double[] figures = new double[CoastSeason.WIDTH];
 * season.worker().work(4_711, figures, 0);
 * }</pre>
 *
 * @param seed what the coast is drawn from
 * @param stations how many stations, in [2, 1000]
 * @param days how many days from 1 April 2026, 00:00 UTC, in [1, 366]
 */
public record CoastSeason(long seed, int stations, int days) implements Serializable {
  private static final long serialVersionUID = 1L;

  /** Where {@link Worker#work} writes the number of the station left, from 0. */
  public static final int STATION = 0;

  /** Where it writes the departure, seconds since 1970-01-01T00:00:00Z. */
  public static final int DEPARTURE = 1;

  /** Where it writes the hours to the next station; NaN if it cannot be reached. */
  public static final int HOURS = 2;

  /** Where it writes the greatest share of the speed spent across, in [0, 1]; NaN likewise. */
  public static final int CROSS_STREAM_SHARE = 3;

  /** Where it writes the least speed to spare, knots; NaN likewise. */
  public static final int RESERVE = 4;

  /** How many figures a departure takes. */
  public static final int WIDTH = 5;

  private static final double FIRST = EpochSeconds.of(Instant.parse("2026-04-01T00:00:00Z"));
  private static final double STEP_SECONDS = 1800.0;
  private static final int STEPS_A_DAY = 48;
  private static final double REACH_NM = 9.0;

  /** Shares of the principal constituent, of the size they have on a semidiurnal coast. */
  private static final List<Constituent> CONSTITUENTS =
      List.of(Constituents.M2, Constituents.S2, Constituents.N2, Constituents.K1, Constituents.O1);

  private static final double[] SHARES = {0.75, 0.25, 0.15, 0.06, 0.05};

  /**
   * Refuses what cannot be a season.
   *
   * @throws IllegalArgumentException if a number is out of range
   */
  public CoastSeason {
    if (stations < 2 || stations > 1000) {
      throw new IllegalArgumentException("stations must be in [2, 1000], but were " + stations);
    }
    if (days < 1 || days > 366) {
      throw new IllegalArgumentException("days must be in [1, 366], but were " + days);
    }
  }

  /**
   * How many departures there are.
   *
   * @return legs times departures of each
   */
  public long departures() {
    return (stations - 1L) * days * STEPS_A_DAY;
  }

  /**
   * A workspace for one thread.
   *
   * @return the worker
   */
  public Worker worker() {
    return new Worker(this);
  }

  /** Works departures, on one thread. */
  public static final class Worker {
    private final long perStation;
    private final List<Route> legs = new ArrayList<>();
    private final Arrivals arrivals;
    private final double[] figures = new double[Arrivals.WIDTH];

    private Worker(CoastSeason season) {
      perStation = (long) season.days * STEPS_A_DAY;
      SplittableRandom random = new SplittableRandom(season.seed);
      List<StreamStation> streams = new ArrayList<>();
      double[] place = {46.0, -26.0};
      for (int i = 0; i < season.stations; i++) {
        Position here = Position.ofDegrees(place[0], place[1]);
        double along = random.nextDouble(-20.0, 70.0);
        double miles = random.nextDouble(3.0, 5.0);
        RhumbLines.direct(
            Ellipsoid.WGS84,
            place[0],
            place[1],
            along,
            miles * Distance.METRES_PER_NAUTICAL_MILE,
            place,
            0);
        streams.add(stream(i, along, random).atPosition(here));
        if (i > 0) {
          legs.add(Route.ofRhumbLegs(streams.get(i - 1).position(), here));
        }
      }
      arrivals =
          Arrivals.of(
              CourseToSteer.with(
                  Craft.ofSpeed(Speed.ofKnots(3.5)),
                  StationField.inverseDistance(streams, Distance.ofNauticalMiles(REACH_NM))));
    }

    private static HarmonicStream stream(int number, double axis, SplittableRandom random) {
      double springs = random.nextDouble(0.5, 4.5) * Speed.METRES_PER_SECOND_PER_KNOT;
      double later = random.nextDouble(4.0, 8.0) * number; // degrees; M2 turns two minutes a degree
      List<HarmonicConstant> constants = new ArrayList<>();
      for (int k = 0; k < SHARES.length; k++) {
        constants.add(
            HarmonicConstant.ofGreenwich(
                CONSTITUENTS.get(k), SHARES[k] * springs, 40.0 * k + later));
      }
      return HarmonicStream.alongAxis(
          "station " + number,
          TrueBearing.ofDegrees(axis),
          HarmonicConstants.of(NodalScheme.schureman(), 0.0, constants),
          NodalConvention.MID_YEAR);
    }

    /**
     * Works one departure.
     *
     * @param number which, in [0, {@link CoastSeason#departures})
     * @param out receives {@value CoastSeason#WIDTH} figures
     * @param offset where in {@code out} to write
     */
    public void work(long number, double[] out, int offset) {
      int station = (int) (number / perStation);
      double departure = FIRST + STEP_SECONDS * (number % perStation);
      boolean possible = arrivals.measure(legs.get(station), departure, figures, 0).isEmpty();
      out[offset + STATION] = station;
      out[offset + DEPARTURE] = departure;
      out[offset + HOURS] =
          possible ? (figures[Arrivals.ARRIVAL] - departure) / 3600.0 : Double.NaN;
      out[offset + CROSS_STREAM_SHARE] = figures[Arrivals.CROSS_STREAM_SHARE];
      out[offset + RESERVE] = figures[Arrivals.RESERVE] / Speed.METRES_PER_SECOND_PER_KNOT;
    }
  }
}
