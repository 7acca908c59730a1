/**
 * Map grids: from latitude and longitude to eastings, northings and grid references, and bearings
 * from a land map to the deck compass.
 *
 * <p>The one idea: a {@link MapGrid} is a datum, a projection and a false origin, and everything
 * asked of it comes back as one {@link GridPoint} that knows its figures, its position, which way
 * grid north lies there, how much the map stretches, and what a reader should be told about it.
 *
 * <pre>{@code
 * Position landing = Position.ofDegrees(50.105, -5.535);
 * GridPoint point = MapGrid.utm(UtmZone.containing(landing)).at(landing);
 * point.convergence(); // grid north lies 1.9° west of true north
 * Mgrs.reference(landing, GridPrecision.TEN_METRES);
 * LetteredGrid.BRITISH.reference(landing, GridPrecision.HUNDRED_METRES); // two letters, six figures
 * MapBearings here = MapBearings.at(landing, point.grid(), variation);
 * here.toMagnetic(GridBearing.ofDegrees(91, point.grid().name())); // what to set on the compass
 * }</pre>
 *
 * <p>Positions are WGS84; a grid on another datum shifts them by its {@link Datum}, and says in its
 * notes how good that is. Convergence is positive when grid north lies east of true north, so that
 * true = grid + convergence. Eastings and northings are metres. The arithmetic is in {@link
 * TransverseMercator} and {@code PolarStereographic}, which allocate nothing.
 *
 * <p>In the handbook: <a href="../teach/doc-files/laying-off.html">laying off</a>.
 */
@NullMarked
package org.ferryglide.nav.grid;

import org.jspecify.annotations.NullMarked;
