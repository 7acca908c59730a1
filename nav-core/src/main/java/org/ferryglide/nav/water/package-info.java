/**
 * What the water and the air do, as functions of place and time.
 *
 * <p>These are the interfaces that steering, planning and fixing ask, and that tide tables, stream
 * tables, harmonic constants and forecasts answer. The one idea to hold: no data is not the same as
 * no stream. A field that does not reach a place or a time says so with an empty answer, and never
 * with zero.
 *
 * <pre>{@code
 * StreamField stream = StreamField.steady(Velocity.ofSetAndRate(set, rate));
 * Optional<Velocity> here = stream.at(position, instant);
 * }</pre>
 *
 * <p>Times are instants; in the kernel forms, seconds since 1970-01-01T00:00:00Z.
 *
 * <p>In the handbook: <a href="../teach/doc-files/streams.html">streams</a> and <a
 * href="../teach/doc-files/tides.html">tides</a>.
 */
@NullMarked
package org.ferryglide.nav.water;

import org.jspecify.annotations.NullMarked;
