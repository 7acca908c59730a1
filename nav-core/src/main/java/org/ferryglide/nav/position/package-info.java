/**
 * Where on the earth, in latitude and longitude.
 *
 * <p>A {@link Position} is a point on the WGS84 ellipsoid, which is what charts and satellite
 * receivers use; positions on other datums are converted in the package for map grids. Latitude is
 * positive north in [-90, 90], longitude positive east in [-180, 180); the date line is stored as
 * -180, and the longitude of a pole is kept, because a leg that leaves a pole leaves along some
 * meridian.
 *
 * <pre>{@code
 * Position landing = Position.parse("50°06.3'N 005°32.1'W");
 * Position same = Position.ofDegrees(50.105, -5.535);
 * }</pre>
 */
@NullMarked
package org.ferryglide.nav.position;

import org.jspecify.annotations.NullMarked;
