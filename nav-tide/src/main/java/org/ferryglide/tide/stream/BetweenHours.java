package org.ferryglide.tide.stream;

/**
 * What an hourly table says between its hours.
 *
 * <pre>{@code
 * HourlyStream byHand = stream.withBetweenHours(BetweenHours.HOURLY_STEPS);
 * }</pre>
 */
enum BetweenHours {
  /**
   * East and north parts change along straight lines from hour to hour, which keeps clear of the
   * fault of averaging 359° and 1°. Neither part ever leaves the span of its two neighbours.
   */
  COMPONENTS,

  /**
   * Each row holds for the half hour before and after its hour, as in hand work. Between two tides
   * the rows meet halfway between the two high (or low) waters.
   */
  HOURLY_STEPS,

  /**
   * East and north parts follow a smooth curve through the printed rows (a cubic through each pair
   * of rows whose slope at a row comes from the rows on both sides), periodic where the tides are.
   * It can pass the larger of the two rates beside it by at most 5 per cent, as a stream does whose
   * greatest rate falls between two printed hours.
   */
  SMOOTH
}
