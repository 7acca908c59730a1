package org.ferryglide.tide.stream;

import java.io.Serializable;
import org.ferryglide.nav.note.Arguments;
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
 * @param neapRangeMetres mean neap range at the port, metres, at least 0
 * @param springRangeMetres mean spring range at the port, metres, above the neap range
 */
public record StandardPort(
    String name, TideEvent.Kind about, double neapRangeMetres, double springRangeMetres)
    implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Takes a port as a stream table names it.
   *
   * @param name the port's name, not empty
   * @param about whether hours are counted from high or low waters
   * @param neapRangeMetres mean neap range, metres, finite, at least 0
   * @param springRangeMetres mean spring range, metres, finite, above the neap range
   * @throws IllegalArgumentException if the name is empty, a range is not finite or negative, or
   *     the spring range is not above the neap range
   */
  public StandardPort {
    if (name.isEmpty()) {
      throw new IllegalArgumentException("name of a standard port must not be empty");
    }
    neapRangeMetres = Arguments.notNegative(neapRangeMetres, "neap range", "metres");
    springRangeMetres = Arguments.positive(springRangeMetres, "spring range", "metres");
    if (springRangeMetres <= neapRangeMetres) {
      throw new IllegalArgumentException(
          "spring range must be above the neap range of "
              + neapRangeMetres
              + " m, but was "
              + springRangeMetres
              + " m");
    }
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
