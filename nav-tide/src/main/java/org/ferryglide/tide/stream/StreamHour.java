package org.ferryglide.tide.stream;

import java.io.Serializable;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Speed;

/**
 * One row of an hourly stream table: where the water goes, and how fast at springs and at neaps.
 *
 * <pre>{@code
 * StreamHour row = new StreamHour(-3, TrueBearing.ofDegrees(62), Speed.ofKnots(2.4), Speed.ofKnots(1.1));
 * StreamHour.ofAtlas(-3, TrueBearing.ofDegrees(62), "11,24"); // the same, as an atlas prints it
 * }</pre>
 *
 * @param hour hours after the high (or low) water of the standard port, negative before it, in [-7,
 *     7]
 * @param set where the stream goes, the same at springs and neaps
 * @param springRate the rate when the tide has its mean spring range
 * @param neapRate the rate when the tide has its mean neap range
 */
public record StreamHour(int hour, TrueBearing set, Speed springRate, Speed neapRate)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /** The furthest row from the standard port's high (or low) water that is accepted, hours. */
  public static final int FURTHEST_HOUR = 7;

  /**
   * Takes a row as printed.
   *
   * @param hour hours after high (or low) water, in [-7, 7]
   * @param set where the stream goes
   * @param springRate the rate at mean springs
   * @param neapRate the rate at mean neaps; usually the smaller, but not required to be
   * @throws IllegalArgumentException if {@code hour} is out of range
   */
  public StreamHour {
    Arguments.within(hour, -FURTHEST_HOUR, FURTHEST_HOUR, "hour", "hours");
  }

  /**
   * A row of slack water, for which tables print no set.
   *
   * @param hour hours after high (or low) water, in [-7, 7]
   * @return a row with no rate; its set is given as north
   * @throws IllegalArgumentException if {@code hour} is out of range
   */
  public static StreamHour slack(int hour) {
    return new StreamHour(hour, TrueBearing.ofDegrees(0.0), Speed.ZERO, Speed.ZERO);
  }

  /**
   * A row as a stream atlas prints it beside an arrow: mean neap and mean spring rate in tenths of
   * a knot, the neap rate first.
   *
   * @param hour hours after high (or low) water, in [-7, 7]
   * @param set the direction of the arrow, true
   * @param figures the two figures, for example {@code 11,24} for 1.1 kn at neaps and 2.4 kn at
   *     springs
   * @return the row
   * @throws IllegalArgumentException if {@code hour} is out of range
   * @throws org.ferryglide.nav.note.TextFormatException if {@code figures} is anything else
   */
  public static StreamHour ofAtlas(int hour, TrueBearing set, String figures) {
    AtlasFigures rates = AtlasFigures.parse(figures);
    return new StreamHour(hour, set, rates.springRate(), rates.neapRate());
  }

  /**
   * The row's name as it is pencilled on a chart.
   *
   * @param mark the mark of the hour itself, usually {@code HW} or {@code LW}
   * @return for example {@code HW}, {@code +1} or {@code -3}
   */
  public String label(String mark) {
    return label(hour, mark);
  }

  static String label(int hour, String mark) {
    return hour == 0 ? mark : hour > 0 ? "+" + hour : Integer.toString(hour);
  }
}
