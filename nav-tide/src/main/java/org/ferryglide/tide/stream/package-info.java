/**
 * Tidal streams: every source a paddler has, as one function of place and time.
 *
 * <p>The one idea to hold: a source says what happens at its own place hour by hour, and becomes a
 * {@link org.ferryglide.tide.stream.StreamCurve} once it is laid along the tides of its standard
 * port. Curves given their places answer for the water between them. Whatever the source, the
 * answer is a {@link org.ferryglide.nav.water.StreamField}, it is empty where there are no data,
 * and it can explain itself.
 *
 * <pre>{@code
 * List<StreamTable> tables = StreamTable.readAll("streams.csv", reader);
 * HourlyStream stream = tables.get(0).boundTo(tidesAtPortEnnor);
 * Optional<Velocity> atNine = stream.at(Instant.parse("2026-06-01T09:00:00Z"));
 * stream.explain(Instant.parse("2026-06-01T09:00:00Z")).notes(); // interpolated, beyond springs ...
 * StreamField field = StationField.nearest(List.of(stream.asStation()), Distance.ofNauticalMiles(3));
 * }</pre>
 *
 * <p>Sets are true and say where the water goes; rates are at least zero; hours count from the high
 * (or low) water of the standard port, negative before it. Times are instants, in kernels seconds
 * since 1970-01-01T00:00:00Z. Tables and rules are predictions: wind, pressure and rain move real
 * streams by half an hour and more, and inshore of the nearest table they can run the other way.
 *
 * <p>The handbook in {@link org.ferryglide.nav.teach} has streams with formula, limits, sources and
 * a worked example.
 */
@NullMarked
package org.ferryglide.tide.stream;

import org.jspecify.annotations.NullMarked;
