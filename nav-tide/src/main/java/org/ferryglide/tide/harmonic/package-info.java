/**
 * The tide as a sum of cosines: predicting it from a station's harmonic constants, and finding the
 * constants from a record.
 *
 * <p>The one idea: every {@link org.ferryglide.tide.harmonic.Constituent} turns at a speed that
 * moon and sun set, the same everywhere; a place has only its amplitude and its phase lag, the
 * {@link org.ferryglide.tide.harmonic.HarmonicConstants}. The moon's node makes constituents grow,
 * shrink and run early or late over 18.6 years, and a {@link
 * org.ferryglide.tide.harmonic.NodalScheme} says by how much; constants belong to the scheme and
 * the {@link org.ferryglide.tide.harmonic.NodalConvention} that they were found with.
 *
 * <pre>{@code
 * HarmonicConstants constants =
 *     HarmonicConstants.read("skarra.csv", reader, NodalScheme.schureman());
 * HarmonicTide tide =
 *     HarmonicTide.of("Skarra", "chart datum", constants, NodalConvention.MID_YEAR);
 * Found<TideEvent> waters = tide.extremes(from, to);
 * }</pre>
 *
 * <p>Phase lags are degrees, and the method that takes them says by which clock and meridian they
 * are counted. Speeds are degrees an hour, times are UTC. The mean and amplitudes are in the unit
 * of the series: metres for heights, metres a second for a component of a stream.
 */
@NullMarked
package org.ferryglide.tide.harmonic;

import org.jspecify.annotations.NullMarked;
