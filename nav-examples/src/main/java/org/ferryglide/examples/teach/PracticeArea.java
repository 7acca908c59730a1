package org.ferryglide.examples.teach;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.bearing.CompassBearing;
import org.ferryglide.nav.bearing.Deviation;
import org.ferryglide.nav.bearing.DeviationTable;
import org.ferryglide.nav.bearing.HeadingDeviation;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.magnetic.AnnualChange;
import org.ferryglide.nav.magnetic.CompassRose;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import org.ferryglide.tide.height.ClockDifferences;
import org.ferryglide.tide.height.MeanRanges;
import org.ferryglide.tide.height.NormalisedCurve;
import org.ferryglide.tide.stream.StreamHour;
import org.ferryglide.tide.teach.TideProblems.Water;

/**
 * An invented stretch of coast to practise on: marks, a rose, a deviation card, a day of the tide
 * table, and the stream about high water. The same seed gives the same area everywhere.
 *
 * <pre>{@code
 * PracticeArea area = PracticeArea.of(7);
 * area.marks().get(0).name(); // an invented name
 * }</pre>
 */
public final class PracticeArea {
  private static final List<String> FIRST =
      List.of("Ullan", "Brathe", "Corvey", "Ostrel", "Vennick", "Harl", "Immer", "Tolvan", "Quern");
  private static final List<String> SECOND =
      List.of("Point", "Skerry", "Stack", "Ledge", "Holm", "Head", "Bar", "Perch", "Beacon");
  private static final int MARKS = 7;
  private static final int THIS_YEAR = 2026;

  private final Position centre;
  private final List<PracticeMark> marks;
  private final CompassRose rose;
  private final DeviationTable card;
  private final List<Water> waters;
  private final MeanRanges ranges;
  private final List<StreamHour> stream;
  private final ClockDifferences differences;

  private PracticeArea(SeededRandom random) {
    centre = Position.ofDegrees(tenth(random, 48, 60), tenth(random, -30, -22));
    marks = marks(random, centre);
    rose = rose(random);
    card = card(random);
    ranges =
        new MeanRanges(
            Distance.ofMetres(tenth(random, 4.0, 5.5)), Distance.ofMetres(tenth(random, 1.5, 2.4)));
    waters = waters(random, ranges);
    stream = stream(random);
    int minutes = random.nextInt(55, 90);
    differences =
        ClockDifferences.of(LocalTime.of(1, 0), minutes).and(LocalTime.of(7, 0), minutes - 48.0);
  }

  /**
   * The area of a seed.
   *
   * @param seed any number
   * @return the area
   */
  public static PracticeArea of(long seed) {
    return new PracticeArea(new SeededRandom(seed));
  }

  private static List<PracticeMark> marks(SeededRandom random, Position centre) {
    List<PracticeMark> marks = new ArrayList<>();
    List<String> first = new ArrayList<>(FIRST);
    List<String> second = new ArrayList<>(SECOND);
    double across = StrictMath.cos(Math.toRadians(centre.latitudeDegrees()));
    for (int i = 0; i < MARKS; i++) {
      String name =
          first.remove(random.nextInt(first.size()))
              + " "
              + second.remove(random.nextInt(second.size()));
      double angle = 360.0 / MARKS * i + random.nextDouble(-15.0, 15.0);
      double miles = random.nextDouble(1.2, 4.5);
      double north = miles * StrictMath.cos(Math.toRadians(angle)) / 60.0;
      double east = miles * StrictMath.sin(Math.toRadians(angle)) / 60.0 / across;
      marks.add(
          new PracticeMark(
              name,
              Position.ofDegrees(
                  thousandth(centre.latitudeDegrees() + north),
                  thousandth(centre.longitudeDegrees() + east)),
              5.0 * random.nextInt(4, 14)));
    }
    return List.copyOf(marks);
  }

  /** A rose old enough, and variations large enough, that forgetting any of them shows. */
  private static CompassRose rose(SeededRandom random) {
    while (true) {
      double east = Math.rint(random.nextDouble(-9.0, 9.0) * 4.0) / 4.0;
      int year = THIS_YEAR - random.nextInt(14, 24);
      int change = random.nextInt(8, 14) * (random.nextBoolean() ? 1 : -1);
      CompassRose drawn =
          new CompassRose(Variation.ofDegreesEast(east), year, AnnualChange.ofMinutesEast(change));
      double now = drawn.variationInYear(THIS_YEAR).degreesEast();
      if (Math.abs(now) > 3.4 && Math.abs(now - east) > 2.4 && Math.abs(east) > 2.4) {
        return drawn;
      }
    }
  }

  private static DeviationTable card(SeededRandom random) {
    double size = random.nextDouble(4.0, 7.0);
    double turn = random.nextDouble(0.0, 360.0);
    List<HeadingDeviation> entries = new ArrayList<>();
    for (int heading = 0; heading < 360; heading += 30) {
      double east = Math.rint(size * StrictMath.sin(Math.toRadians(heading + turn)) * 2.0) / 2.0;
      entries.add(
          new HeadingDeviation(CompassBearing.ofDegrees(heading), Deviation.ofDegreesEast(east)));
    }
    return DeviationTable.through(entries);
  }

  private static List<Water> waters(SeededRandom random, MeanRanges ranges) {
    List<Water> waters = new ArrayList<>();
    double minutes = random.nextInt(10, 200);
    boolean high = random.nextBoolean();
    double range =
        tenth(random, ranges.neap().metres() + 0.4, Math.max(ranges.neap().metres() + 0.6, 4.2));
    double low = tenth(random, 0.6, 1.6);
    while (minutes < 1440.0) {
      waters.add(
          new Water(
              minutes,
              Distance.ofMetres(tidy(low + (high ? range : 0.0) + random.nextInt(-1, 2) / 10.0))));
      minutes += 372 + random.nextInt(-12, 13);
      high = !high;
    }
    return List.copyOf(waters);
  }

  private static List<StreamHour> stream(SeededRandom random) {
    double peak = tenth(random, 2.0, 3.4);
    int flood = 5 * random.nextInt(0, 72);
    List<StreamHour> rows = new ArrayList<>();
    for (int hour = -6; hour <= 6; hour++) {
      double wave = StrictMath.cos(2.0 * Math.PI * (hour + 2.3) / 12.4);
      double rate = Math.max(0.1, tidy(peak * Math.abs(wave)));
      TrueBearing set = TrueBearing.ofDegrees(wave >= 0.0 ? flood : flood + 180.0);
      rows.add(new StreamHour(hour, set, Speed.ofKnots(rate), Speed.ofKnots(tidy(rate * 0.5))));
    }
    return List.copyOf(rows);
  }

  private static double tenth(SeededRandom random, double from, double to) {
    return tidy(random.nextDouble(from, to));
  }

  static double tidy(double value) {
    return Math.rint(value * 10.0) / 10.0;
  }

  private static double thousandth(double degrees) {
    return Math.rint(degrees * 1000.0) / 1000.0;
  }

  /**
   * The middle of the area.
   *
   * @return a position in open ocean, where no such coast is
   */
  public Position centre() {
    return centre;
  }

  /**
   * The marks.
   *
   * @return marks round the middle
   */
  public List<PracticeMark> marks() {
    return marks;
  }

  /**
   * The rose printed on the chart.
   *
   * @return a rose some years old
   */
  public CompassRose rose() {
    return rose;
  }

  /**
   * The deviation card of the deck compass.
   *
   * @return the card
   */
  public DeviationTable card() {
    return card;
  }

  /**
   * The waters of the day.
   *
   * @return high and low waters in order, three or four
   */
  public List<Water> waters() {
    return waters;
  }

  /**
   * The mean ranges of the standard port.
   *
   * @return ranges
   */
  public MeanRanges ranges() {
    return ranges;
  }

  /**
   * The stream about high water.
   *
   * @return thirteen rows
   */
  public List<StreamHour> stream() {
    return stream;
  }

  /**
   * The differences of a secondary port.
   *
   * @return differences by the clock of the standard port
   */
  public ClockDifferences differences() {
    return differences;
  }

  /**
   * The port's curve: it rises quicker than it falls.
   *
   * @return the curve
   */
  public NormalisedCurve curve() {
    return NormalisedCurve.ofEvenSteps(
        new double[] {0.0, 0.12, 0.34, 0.62, 0.85, 0.97, 1.0},
        new double[] {1.0, 0.93, 0.77, 0.52, 0.27, 0.08, 0.0});
  }

  /**
   * The year of the exercises.
   *
   * @return the year
   */
  public int year() {
    return THIS_YEAR;
  }
}
