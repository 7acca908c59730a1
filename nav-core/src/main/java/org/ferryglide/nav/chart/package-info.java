/**
 * Chart work on paper: what a millimetre is worth, and what a ruler or a plotter leaves in error.
 *
 * <p>The one idea: a figure taken off paper is a length or a direction with an error of its own. A
 * {@link ChartScale} turns millimetres, or minutes of latitude between the dividers, into distance
 * at the latitude of the leg, and a {@link ChartTool} says how far off the bearing it gives may be,
 * and from which north it reads.
 *
 * <pre>{@code
 * ChartScale chart = ChartScale.mercator(75000, 50.0);
 * double drawn = chart.millimetres(leg); // the leg is straight on this chart
 * ChartTool.PARALLEL_RULES.typicalErrorDegrees(drawn); // of the bearing, one standard deviation
 * ChartScale.minutesOfLatitude(Distance.ofNauticalMiles(5.2), 50.0); // how far to open the dividers
 * }</pre>
 *
 * <p>Lengths on paper are millimetres, angles degrees. The figures of tools are common practice, no
 * source; give your own if you have measured them.
 *
 * <p>In the handbook: <a href="../teach/doc-files/laying-off.html">laying off</a>.
 */
@NullMarked
package org.ferryglide.nav.chart;

import org.jspecify.annotations.NullMarked;
