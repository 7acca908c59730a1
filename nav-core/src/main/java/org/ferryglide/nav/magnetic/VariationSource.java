package org.ferryglide.nav.magnetic;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.List;
import org.ferryglide.nav.position.Position;

/**
 * Anything that gives the variation at a place and date: a model, a printed rose, the roses of a
 * chart.
 *
 * <pre>{@code
 * VariationSource source = chartHasRose ? CompassRose.parse(text) : VariationSource.builtInModels();
 * VariationReading reading = source.at(place, LocalDate.of(2026, 6, 1));
 * }</pre>
 */
@FunctionalInterface
public interface VariationSource extends Serializable {
  /**
   * The variation with its standard error and notes.
   *
   * @param place the place
   * @param date the date; its midnight in UTC is meant
   * @return the reading
   * @throws java.time.DateTimeException if the date lies outside a model's span and the model
   *     refuses such dates
   */
  VariationReading at(Position place, LocalDate date);

  /**
   * How the printed roses behind this source compare with a model.
   *
   * @param model the model
   * @param places where the source is used
   * @param date the date
   * @return a comparison for each rose and place that can be compared; by default none, for a
   *     source without roses
   */
  default List<RoseComparison> comparedWith(
      MagneticModel model, List<Position> places, LocalDate date) {
    return List.of();
  }

  /**
   * The built-in models, of which each date gets the one made for it.
   *
   * @return a source that answers as {@link MagneticModel#inForceOn} of the date does
   */
  static VariationSource builtInModels() {
    return BuiltInModels.InForce.ON_EACH_DATE;
  }
}
