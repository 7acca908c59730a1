package org.ferryglide.tide.height;

import java.io.Serializable;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;

/**
 * A port whose tides are published as differences from those of a standard port.
 *
 * <p>Both usual forms are covered. Differences that depend on the clock time of the standard port's
 * water and on its height, as European tables print them; and one time difference with a height
 * ratio or difference, as tables of the United States print them.
 *
 * <pre>{@code
 * SecondaryPort port =
 *     SecondaryPort.of("Lunna Pool", "chart datum", "Skarra")
 *         .withHighWaterTimes(
 *             ClockDifferences.of(LocalTime.of(0, 0), 35).and(LocalTime.of(6, 0), 23))
 *         .withLowWaterTimes(
 *             ClockDifferences.of(LocalTime.of(5, 0), 47).and(LocalTime.of(11, 0), 4))
 *         .withHighWaterHeights(HeightCorrection.difference(Distance.ofMetres(0.9)))
 *         .withLowWaterHeights(
 *             HeightCorrection.betweenLevels(
 *                 Distance.ofMetres(0.4), Distance.ofMetres(0.1), // at springs
 *                 Distance.ofMetres(1.1), Distance.ofMetres(0.2))); // at neaps
 * TideTable table = port.tableFrom(skarra);
 * }</pre>
 *
 * <p>Time differences, printed to a minute or to five, are applied to the second without rounding;
 * heights likewise. The answer is no better than the printed figures: where one is off by a
 * decimetre, so is the other.
 */
public final class SecondaryPort implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final String datum;
  private final String standardPort;
  private final ZoneId standardZone;
  private final Waters highWaters;
  private final Waters lowWaters;
  private final SeasonalChange standardSeason;
  private final SeasonalChange ownSeason;

  /** Differences for the waters of one kind. */
  private static final class Waters implements Serializable {
    private static final long serialVersionUID = 1L;
    final ClockDifferences times;
    final HeightCorrection heights;

    Waters(ClockDifferences times, HeightCorrection heights) {
      this.times = times;
      this.heights = heights;
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Waters that
          && times.equals(that.times)
          && heights.equals(that.heights);
    }

    @Override
    public int hashCode() {
      return 31 * times.hashCode() + heights.hashCode();
    }
  }

  private SecondaryPort(
      String name,
      String datum,
      String standardPort,
      ZoneId standardZone,
      Waters highWaters,
      Waters lowWaters,
      SeasonalChange standardSeason,
      SeasonalChange ownSeason) {
    this.name = name;
    this.datum = datum;
    this.standardPort = standardPort;
    this.standardZone = standardZone;
    this.highWaters = highWaters;
    this.lowWaters = lowWaters;
    this.standardSeason = standardSeason;
    this.ownSeason = ownSeason;
  }

  /**
   * A port with the tides of its standard port; the {@code with} methods add its differences.
   *
   * @param name name of the port
   * @param datum name of the level that the port's heights are measured from
   * @param standardPort name of the standard port, as its table has it
   * @return the port
   * @throws IllegalArgumentException if a name is empty
   */
  public static SecondaryPort of(String name, String datum, String standardPort) {
    if (name.isEmpty() || datum.isEmpty() || standardPort.isEmpty()) {
      throw new IllegalArgumentException("port, datum and standard port must not be empty");
    }
    Waters none =
        new Waters(ClockDifferences.always(0.0), HeightCorrection.difference(Distance.ZERO));
    return new SecondaryPort(
        name,
        datum,
        standardPort,
        ZoneOffset.UTC,
        none,
        none,
        SeasonalChange.NONE,
        SeasonalChange.NONE);
  }

  /**
   * The same port, its differences looked up by clock times in another zone than UTC.
   *
   * @param zone zone of the standard port's clock times as the differences are printed for them,
   *     which is seldom one with daylight saving
   * @return the port
   */
  public SecondaryPort withStandardZone(ZoneId zone) {
    return new SecondaryPort(
        name, datum, standardPort, zone, highWaters, lowWaters, standardSeason, ownSeason);
  }

  /**
   * The same port with other time differences of its high waters.
   *
   * @param times the differences
   * @return the port
   */
  public SecondaryPort withHighWaterTimes(ClockDifferences times) {
    return with(new Waters(times, highWaters.heights), lowWaters);
  }

  /**
   * The same port with other time differences of its low waters.
   *
   * @param times the differences
   * @return the port
   */
  public SecondaryPort withLowWaterTimes(ClockDifferences times) {
    return with(highWaters, new Waters(times, lowWaters.heights));
  }

  /**
   * The same port with another correction of its high waters' heights.
   *
   * @param heights the correction
   * @return the port
   */
  public SecondaryPort withHighWaterHeights(HeightCorrection heights) {
    return with(new Waters(highWaters.times, heights), lowWaters);
  }

  /**
   * The same port with another correction of its low waters' heights.
   *
   * @param heights the correction
   * @return the port
   */
  public SecondaryPort withLowWaterHeights(HeightCorrection heights) {
    return with(highWaters, new Waters(lowWaters.times, heights));
  }

  private SecondaryPort with(Waters high, Waters low) {
    return new SecondaryPort(
        name, datum, standardPort, standardZone, high, low, standardSeason, ownSeason);
  }

  /**
   * The same port with the seasonal changes of mean level of both ports: how far the sea stands
   * above its yearly mean on the first day of every month (UTC), from January to December,
   * interpolated linearly between.
   *
   * @param standardMetres twelve changes at the standard port, metres, each in [-5, 5], taken off
   *     before the differences are looked up; the standard port's table includes them
   * @param ownMetres twelve changes at this port, metres, each in [-5, 5], added afterwards
   * @return the port
   * @throws IllegalArgumentException if there are not twelve of each, or one is NaN or outside [-5,
   *     5]
   */
  public SecondaryPort withSeasonalChange(double[] standardMetres, double[] ownMetres) {
    return new SecondaryPort(
        name,
        datum,
        standardPort,
        standardZone,
        highWaters,
        lowWaters,
        SeasonalChange.ofMonths(standardMetres),
        SeasonalChange.ofMonths(ownMetres));
  }

  /**
   * Name of the port.
   *
   * @return the name
   */
  public String name() {
    return name;
  }

  /**
   * Name of the standard port.
   *
   * @return the name, as the standard port's table has it
   */
  public String standardPort() {
    return standardPort;
  }

  /**
   * The high or low water at this port that belongs to one of the standard port's.
   *
   * @param standard a high or low water of the standard port
   * @return the water at this port, its time to the nearest second
   */
  public TideEvent waterFrom(TideEvent standard) {
    Waters waters = standard.isHigh() ? highWaters : lowWaters;
    LocalTime clockTime = standard.time().atZone(standardZone).toLocalTime();
    Instant time =
        standard.time().plusSeconds(Math.round(60.0 * waters.times.minutesAt(clockTime)));
    double height =
        waters.heights.height(meanLevelHeight(standard)).metres() + ownSeason.metresAt(time);
    return new TideEvent(time, Distance.ofMetres(height), standard.kind());
  }

  private Distance meanLevelHeight(TideEvent standard) {
    return standard.height().minus(Distance.ofMetres(standardSeason.metresAt(standard.time())));
  }

  /**
   * The tide table of this port.
   *
   * @param standard the standard port's table
   * @return this port's table, with the notes of the standard port's and its own: {@code
   *     tide.secondary}, and {@code tide.secondary.beyond} if height differences were extrapolated
   *     beyond springs or neaps
   * @throws IllegalArgumentException if the table is of another port, or the differences bring the
   *     waters out of order
   */
  public TideTable tableFrom(TideTable standard) {
    if (!standard.port().equals(standardPort)) {
      throw new IllegalArgumentException(
          "table must be that of the standard port, \""
              + standardPort
              + "\", but was that of \""
              + standard.port()
              + "\"");
    }
    List<TideEvent> events = new ArrayList<>();
    int beyond = 0;
    for (TideEvent event : standard.events()) {
      events.add(waterFrom(event));
      HeightCorrection heights = (event.isHigh() ? highWaters : lowWaters).heights;
      beyond += heights.isBeyondLevels(meanLevelHeight(event)) ? 1 : 0;
    }
    List<Note> notes = new ArrayList<>(standard.notes());
    notes.add(
        Note.information("tide.secondary", "Tides by differences from a standard port.")
            .with("standardPort", standardPort));
    if (beyond > 0) {
      notes.add(
          Note.information(
                  "tide.secondary.beyond",
                  "Some heights lie beyond mean springs or neaps; their differences are"
                      + " extrapolated.")
              .with("waters", Integer.toString(beyond)));
    }
    return TideTable.of(name, datum, events).withNotes(notes);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SecondaryPort that
        && name.equals(that.name)
        && datum.equals(that.datum)
        && standardPort.equals(that.standardPort)
        && standardZone.equals(that.standardZone)
        && highWaters.equals(that.highWaters)
        && lowWaters.equals(that.lowWaters)
        && standardSeason.equals(that.standardSeason)
        && ownSeason.equals(that.ownSeason);
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        name, datum, standardPort, standardZone, highWaters, lowWaters, standardSeason, ownSeason);
  }

  /** The port and its standard port. */
  @Override
  public String toString() {
    return name + " on " + standardPort;
  }
}
