package org.ferryglide.tide.stream;

import java.io.Serializable;
import java.util.Objects;
import org.ferryglide.tide.height.MeanRanges;
import org.ferryglide.tide.height.TideEvent;
import org.ferryglide.tide.height.TideTable;

/**
 * The port whose tides a stream table follows, and the mean ranges its rates are printed for.
 *
 * <pre>{@code
 * MeanRanges ranges = new MeanRanges(Distance.ofMetres(4.9), Distance.ofMetres(2.3));
 * StandardPort port = StandardPort.aboutHighWater("Port Ennor", ranges);
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
   * A port from whose high waters the hours are counted, the commonest kind.
   *
   * @param name the port's name, not empty
   * @param meanRanges mean neap and mean spring range
   * @return the port
   * @throws IllegalArgumentException if the name is empty
   */
  public static StandardPort aboutHighWater(String name, MeanRanges meanRanges) {
    return new StandardPort(name, TideEvent.Kind.HIGH, meanRanges);
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
