/**
 * Magnetic north: where it is, how fast it moves, and how far to trust it.
 *
 * <p>The angle from true to magnetic north, the {@link org.ferryglide.nav.bearing.Variation}, comes
 * from two places. A world model ({@link org.ferryglide.nav.magnetic.MagneticModel}) gives the
 * whole field anywhere on a date; the rose printed on the chart ({@link
 * org.ferryglide.nav.magnetic.CompassRose}) gives the variation for one year near one place, with
 * the yearly change to carry it forward. The one idea: a model is first moved to a date, and the
 * immutable {@link org.ferryglide.nav.magnetic.MagneticSnapshot} is then asked about places, by as
 * many threads as you like.
 *
 * <pre>{@code
 * LocalDate date = LocalDate.of(2026, 6, 1);
 * VariationReading fromModel = VariationSource.builtInModels().at(place, date);
 * VariationReading fromChart = CompassRose.parse("4°15'W 2019 (8'E)").at(place, date);
 * MagneticSnapshot today = MagneticModel.wmm2025().at(date); // for many places on one date
 * }</pre>
 *
 * <p>A reading comes with its doubts: a {@link org.ferryglide.nav.magnetic.VariationReading}
 * carries the variation, its standard error and the notes that may condemn it, whichever {@link
 * org.ferryglide.nav.magnetic.VariationSource} it is from.
 *
 * <p>Around these stand a model prepared for one place ({@link
 * org.ferryglide.nav.magnetic.MagneticPlace}), the variation along a leg ({@link
 * org.ferryglide.nav.magnetic.LegVariation}), several roses on one chart ({@link
 * org.ferryglide.nav.magnetic.ChartRoses}), a rose set beside a model ({@link
 * org.ferryglide.nav.magnetic.RoseComparison}), rounding to what can be steered ({@link
 * org.ferryglide.nav.magnetic.VariationReading#wholeDegree}) and other models read from their
 * published files ({@link org.ferryglide.nav.magnetic.MagneticModel#readShc(java.nio.file.Path)}).
 *
 * <p>Conventions: declination (the modeller's word for variation) is positive east, dip positive
 * down, field components in nanotesla along geographic north, east and down, heights in metres
 * above the WGS84 ellipsoid. Dates are explicit and count from midnight UTC. A date outside a
 * model's span is answered with a note, or refused, as the caller chose ({@link
 * org.ferryglide.nav.magnetic.MagneticModel#refusingOutsideSpan}).
 *
 * <p>A model knows the field of the Earth's core. It cannot know rocks, wrecks, power cables or
 * your own phone: local anomalies are charted, and deviation is yours to measure ({@link
 * org.ferryglide.nav.bearing.SwingFit}). Official charts come first.
 *
 * <p>In the handbook: <a href="../teach/doc-files/variation.html">variation</a>.
 */
@NullMarked
package org.ferryglide.nav.magnetic;

import org.jspecify.annotations.NullMarked;
