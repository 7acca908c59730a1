/**
 * The height of the tide at any time: from a table of high and low waters, through a curve between
 * them, to the times when a sill, a bar or a landing has water enough.
 *
 * <p>The one idea to hold: a {@link org.ferryglide.tide.height.TideTable} knows only the turning
 * points of the tide; everything between them is a {@link org.ferryglide.tide.height.TideCurve},
 * and each curve says what it is worth. The rule of twelfths and the cosine are guesses at the
 * shape; harmonic constants are better.
 *
 * <pre>{@code
 * TideTable table = TideTable.read("skarra.csv", reader);
 * TideCurve curve = TableCurve.smooth(table);
 * Optional<Distance> height = curve.heightAt(Instant.parse("2026-06-01T09:30:00Z"));
 * ChartedDepth bar = ChartedDepth.ofDryingHeight(Distance.ofMetres(1.6), "chart datum");
 * Distance draught = Distance.ofMetres(0.3);
 * Found<Window> overTheBar =
 *     curve.windowsOver(bar, draught, Distance.ofMetres(0.5), from, to); // 0.5 m margin
 * }</pre>
 *
 * <p>A {@link org.ferryglide.tide.height.SecondaryPort} makes a table from that of its standard
 * port; {@link org.ferryglide.tide.height.SpringNeap} says when the range is largest; the high and
 * low waters of any curve are found for certain.
 *
 * <p>Heights are metres above the table's datum, up positive. Times are instants; in the kernel
 * forms, seconds since 1970-01-01T00:00:00Z. Tables predict the tide alone: wind and air pressure
 * raise or lower the sea by decimetres, so leave a margin.
 *
 * <p>The handbook in {@link org.ferryglide.nav.teach} has tides with formula, limits, sources and a
 * worked example.
 */
@NullMarked
package org.ferryglide.tide.height;

import org.jspecify.annotations.NullMarked;
