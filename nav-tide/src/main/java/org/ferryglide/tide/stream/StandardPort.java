package org.ferryglide.tide.stream;

import java.io.Serializable;
import java.util.Objects;
import org.ferryglide.tide.height.MeanRanges;
import org.ferryglide.tide.height.TideEvent;
import org.ferryglide.tide.height.TideTable;

/**
 * The port whose tides a stream table follows, and the two ranges its rates are printed for.
 *
 * <pre>{@code
 * StandardPort port = StandardPort.aboutHighWater("Port Ennor", 2.3, 4.9);
 * }</pre>
 *
 * @param name the port's name, as its tide table has it
 * @param about whether hours are counted from the port's high or low waters
 * @param meanRanges mean neap and mean spring range at the port, between which rates are placed
 */
public record StandardPort(String name, TideEvent.Kind about, MeanRanges meanRanges)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes a port as a stream table names it.
   *
   * @param name the port's name, not empty
   * @param about whether hours are counted from high or low waters
   * @param meanRanges mean neap and mean spring range
   * @throws IllegalArgumentException if the name is empty
   */
  public StandardPort {
    if (name.isEmpty()) {
      throw new IllegalArgumentException("name of a standard port must not be empty");
    }
    Objects.requireNonNull(about, "about");
    Objects.requireNonNull(meanRanges, "meanRanges");
  }

  /**
   * Takes a port with its two ranges.
   *
   * @param name the port's name, not empty
   * @param about whether hours are counted from high or low waters
   * @param neapRangeMetres mean neap range, metres, finite, at least 0
   * @param springRangeMetres mean spring range, metres, finite, above the neap range
   * @throws IllegalArgumentException if the name is empty, a range is not finite or negative, or
   *     the spring range is not above the neap range
   */
  public StandardPort(
      String name, TideEvent.Kind about, double neapRangeMetres, double springRangeMetres) {
    this(name, about, new MeanRanges(springRangeMetres, neapRangeMetres));
  }

  /**
   * A port whose high waters are the hours' origin, the commonest kind.
   *
   * @param name the port's name, not empty
   * @param neapRangeMetres mean neap range, metres, finite, at least 0
   * @param springRangeMetres mean spring range, metres, finite, above the neap range
   * @return the port
   * @throws IllegalArgumentException as the constructor does
   */
  public static StandardPort aboutHighWater(
      String name, double neapRangeMetres, double springRangeMetres) {
    return new StandardPort(name, TideEvent.Kind.HIGH, neapRangeMetres, springRangeMetres);
  }

  /**
   * The mean neap range.
   *
   * @return metres, at least 0
   */
  public double neapRangeMetres() {
    return meanRanges.neapMetres();
  }

  /**
   * The mean spring range.
   *
   * @return metres, above the neap range
   */
  public double springRangeMetres() {
    return meanRanges.springMetres();
  }

  /**
   * The mark of the hour from which the others are counted.
   *
   * @return {@code HW} or {@code LW}
   */
  public String mark() {
    return about == TideEvent.Kind.HIGH ? "HW" : "LW";
  }

  /** Refuses the tides of another port. */
  void refuseOther(TideTable tides, String whose) {
    if (!tides.port().equals(name)) {
      throw new IllegalArgumentException(
          whose
              + " must be bound to the tides of "
              + name
              + ", but was given those of "
              + tides.port());
    }
  }
}
