package org.ferryglide.tide.stream;

import java.io.Serializable;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;

/**
 * A subordinate current station: four time differences and two rate ratios on a reference station,
 * as published current tables list them.
 *
 * <pre>{@code
 * CurrentTable local =
 *     SubordinateCurrent.at("Tarn Gut", position, TrueBearing.ofDegrees(195), TrueBearing.ofDegrees(15))
 *         .withTimeDifferences(
 *             Duration.ofMinutes(-41), Duration.ofMinutes(-47),
 *             Duration.ofMinutes(-30), Duration.ofMinutes(-25))
 *         .withRatios(1.1, 0.8)
 *         .from(reference);
 * }</pre>
 */
public final class SubordinateCurrent implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String name;
  private final Position position;
  private final TrueBearing floodSet;
  private final TrueBearing ebbSet;
  private final Duration slackBeforeFlood;
  private final Duration flood;
  private final Duration slackBeforeEbb;
  private final Duration ebb;
  private final double floodRatio;
  private final double ebbRatio;

  private SubordinateCurrent(
      String name,
      Position position,
      TrueBearing floodSet,
      TrueBearing ebbSet,
      List<Duration> differences,
      double floodRatio,
      double ebbRatio) {
    this.name = name;
    this.position = position;
    this.floodSet = floodSet;
    this.ebbSet = ebbSet;
    this.slackBeforeFlood = differences.get(0);
    this.flood = differences.get(1);
    this.slackBeforeEbb = differences.get(2);
    this.ebb = differences.get(3);
    this.floodRatio = floodRatio;
    this.ebbRatio = ebbRatio;
  }

  /**
   * A station whose current turns and runs as the reference's does.
   *
   * @param name the station's name, not empty
   * @param position where it is
   * @param floodSet where the flood goes there, true
   * @param ebbSet where the ebb goes there, true
   * @return a station without time differences, with ratios of 1
   * @throws IllegalArgumentException if the name is empty
   */
  public static SubordinateCurrent at(
      String name, Position position, TrueBearing floodSet, TrueBearing ebbSet) {
    if (name.isEmpty()) {
      throw new IllegalArgumentException("name of a subordinate station must not be empty");
    }
    List<Duration> none = List.of(Duration.ZERO, Duration.ZERO, Duration.ZERO, Duration.ZERO);
    return new SubordinateCurrent(name, position, floodSet, ebbSet, none, 1.0, 1.0);
  }

  /**
   * The same station with time differences, later positive.
   *
   * @param beforeFlood on the slack before the flood
   * @param maximumFlood on the maximum flood
   * @param beforeEbb on the slack before the ebb
   * @param maximumEbb on the maximum ebb
   * @return a changed copy
   */
  public SubordinateCurrent withTimeDifferences(
      Duration beforeFlood, Duration maximumFlood, Duration beforeEbb, Duration maximumEbb) {
    return new SubordinateCurrent(
        name,
        position,
        floodSet,
        ebbSet,
        List.of(beforeFlood, maximumFlood, beforeEbb, maximumEbb),
        floodRatio,
        ebbRatio);
  }

  /**
   * The same station with ratios of its maximum rates to those of the reference.
   *
   * @param ofFlood ratio of flood rates, finite, at least 0
   * @param ofEbb ratio of ebb rates, finite, at least 0
   * @return a changed copy
   * @throws IllegalArgumentException if a ratio is not finite or negative
   */
  public SubordinateCurrent withRatios(double ofFlood, double ofEbb) {
    return new SubordinateCurrent(
        name,
        position,
        floodSet,
        ebbSet,
        List.of(slackBeforeFlood, flood, slackBeforeEbb, ebb),
        Arguments.notNegative(ofFlood, "flood ratio", "times the reference's rate"),
        Arguments.notNegative(ofEbb, "ebb ratio", "times the reference's rate"));
  }

  /**
   * The current table of this station.
   *
   * @param reference the reference station's table
   * @return the table, one line for each of the reference's; the last slack, with no maximum after
   *     it, is taken to lead to the opposite of the maximum before it
   * @throws IllegalArgumentException if the differences would put two lines out of order
   */
  public CurrentTable from(CurrentTable reference) {
    List<CurrentEvent> events = reference.events();
    List<CurrentEvent> local = new ArrayList<>();
    for (int i = 0; i < events.size(); i++) {
      CurrentEvent event = events.get(i);
      Instant time = event.time();
      switch (event.kind()) {
        case FLOOD ->
            local.add(
                CurrentEvent.flood(time.plus(flood), floodSet, scaled(event.rate(), floodRatio)));
        case EBB ->
            local.add(CurrentEvent.ebb(time.plus(ebb), ebbSet, scaled(event.rate(), ebbRatio)));
        case SLACK ->
            local.add(
                CurrentEvent.slack(
                    time.plus(
                        reference.leadsTo(i) == CurrentEvent.Kind.FLOOD
                            ? slackBeforeFlood
                            : slackBeforeEbb)));
      }
    }
    return CurrentTable.of(name, position, local, "", List.of(), reference.notes());
  }

  private static Speed scaled(Speed rate, double ratio) {
    return rate.times(ratio);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof SubordinateCurrent that
        && name.equals(that.name)
        && position.equals(that.position)
        && floodSet.equals(that.floodSet)
        && ebbSet.equals(that.ebbSet)
        && slackBeforeFlood.equals(that.slackBeforeFlood)
        && flood.equals(that.flood)
        && slackBeforeEbb.equals(that.slackBeforeEbb)
        && ebb.equals(that.ebb)
        && Double.compare(floodRatio, that.floodRatio) == 0
        && Double.compare(ebbRatio, that.ebbRatio) == 0;
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        name,
        position,
        floodSet,
        ebbSet,
        slackBeforeFlood,
        flood,
        slackBeforeEbb,
        ebb,
        floodRatio,
        ebbRatio);
  }

  /** Name and place, differences and ratios. */
  @Override
  public String toString() {
    return name
        + " at "
        + position
        + ", slack before flood "
        + slackBeforeFlood
        + ", flood "
        + flood
        + " x"
        + floodRatio
        + ", slack before ebb "
        + slackBeforeEbb
        + ", ebb "
        + ebb
        + " x"
        + ebbRatio;
  }
}
