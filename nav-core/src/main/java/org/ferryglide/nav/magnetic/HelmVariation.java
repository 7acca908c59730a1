package org.ferryglide.nav.magnetic;

import java.util.Objects;
import org.ferryglide.nav.bearing.HandRounding;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;

/**
 * A variation rounded to the whole degree that a paddler can use, with what the rounding costs.
 *
 * <p>Nobody holds a kayak to a fraction of a degree. Rounding once, at the end, is better than
 * rounding the variation and then the bearing; this is for those who take the whole degree to every
 * bearing of the day, and says what that costs.
 *
 * <pre>{@code
 * HelmVariation helm = HelmVariation.of(Variation.parse("3°16'W"));
 * helm.rounded(); // 3.0°W
 * helm.crossTrack(Distance.ofNauticalMiles(1)); // 8.6 m
 * }</pre>
 *
 * @param exact the variation before rounding
 */
record HelmVariation(Variation exact) {
  /** Nearer to the half than this, the other whole degree is as good. */
  private static final double NEARLY_HALF_DEGREES = 0.4;

  /**
   * Takes the variation; {@link #of} reads better.
   *
   * @param exact the variation before rounding
   */
  public HelmVariation {
    Objects.requireNonNull(exact, "exact");
  }

  /**
   * Rounds a variation.
   *
   * @param exact the variation
   * @return the advice
   */
  public static HelmVariation of(Variation exact) {
    return new HelmVariation(exact);
  }

  /**
   * The variation to use.
   *
   * @return to the nearest whole degree, halves away from zero
   */
  public Variation rounded() {
    return Variation.ofDegreesEast(HandRounding.WHOLE_DEGREE.round(exact.degreesEast()));
  }

  /**
   * What the rounding leaves out.
   *
   * @return exact less rounded, degrees, east positive, in [-0.5, 0.5]
   */
  public double leftOverDegreesEast() {
    return exact.degreesEast() - rounded().degreesEast();
  }

  /**
   * How far off its line a boat comes by the rounding alone.
   *
   * @param run distance run through the water
   * @return distance to one side
   */
  public Distance crossTrack(Distance run) {
    return run.times(Math.sin(Math.toRadians(Math.abs(leftOverDegreesEast()))));
  }

  /**
   * The advice in words.
   *
   * @return a note of code {@code helm.rounded}
   */
  public Note note() {
    double left = leftOverDegreesEast();
    StringBuilder text = new StringBuilder("Steer with ");
    text.append(HandRounding.WHOLE_DEGREE.eastWest(rounded().degreesEast())).append(" for ");
    text.append(exact.degreesAndMinutes()).append(": ");
    text.append(Math.round(crossTrack(Distance.ofNauticalMiles(1)).metres()));
    text.append(" m off the line in each nautical mile, less than a hand can hold.");
    if (Math.abs(left) > NEARLY_HALF_DEGREES) {
      double other = rounded().degreesEast() + Math.copySign(1.0, left);
      text.append(' ')
          .append(HandRounding.WHOLE_DEGREE.eastWest(other))
          .append(" would serve as well.");
    }
    text.append(" Round once, at the end.");
    return Note.information("helm.rounded", text.toString())
        .with("variationDegreesEast", exact.degreesEast())
        .with("roundedDegreesEast", rounded().degreesEast())
        .with("leftOverDegreesEast", left);
  }
}
