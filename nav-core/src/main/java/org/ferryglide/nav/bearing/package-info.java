/**
 * Directions at sea: which north, and how to get from one to another.
 *
 * <p>A bearing is only useful with its north. {@link TrueBearing} is measured from the meridian,
 * {@link MagneticBearing} from the local magnetic meridian, {@link GridBearing} from the upright
 * lines of a named map grid, {@link CompassBearing} from where one particular compass points on one
 * heading. They are different types, and what turns one into another is a {@link Variation}, a
 * {@link Deviation} and a {@link GridConvergence} that the caller supplies:
 *
 * <pre>{@code
 * Variation variation = Variation.ofDegreesEast(-3.85); // 3.85° W
 * MagneticBearing steer = TrueBearing.ofDegrees(45).toMagnetic(variation); // 48.85°M
 * }</pre>
 *
 * <p>All angles are degrees, clockwise positive, bearings in [0, 360). Variation, deviation and
 * convergence are positive east, so that true = magnetic + variation, magnetic = compass +
 * deviation, true = grid + convergence. All types are immutable.
 *
 * <p>The deviation of a compass on every heading is a {@link DeviationTable}, laid through the
 * lines of a table or fitted to a swing ({@link SwingFit}). {@link BearingWorking} writes a
 * conversion out step by step, as a learner would.
 *
 * <p>In the handbook: <a href="../teach/doc-files/bearings.html">bearings and their norths</a>.
 */
@NullMarked
package org.ferryglide.nav.bearing;

import org.jspecify.annotations.NullMarked;
