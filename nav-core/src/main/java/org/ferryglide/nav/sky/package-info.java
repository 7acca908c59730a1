/**
 * Daylight and moon: how long a paddler can see, and when springs are due.
 *
 * <p>A calendar day at a place is a {@link SunDay}. It says when the sun crosses each {@link
 * SunThreshold} (sunrise and sunset, civil and nautical twilight), and on a day without a crossing
 * whether the sun stays up or stays down, which are opposite answers and never the same empty one:
 *
 * <pre>{@code
 * SunDay day =
 *     SunDay.of(LocalDate.of(2026, 6, 21), ZoneId.of("UTC+01:00"), Position.ofDegrees(56.2, -6.4));
 * day.daylight().set(); // Optional[2026-06-21T21:17:00Z]
 * day.civilTwilight().isUpAllDay(); // false: it grows dark
 * }</pre>
 *
 * <p>{@link Moon} gives the instants of new moon, quarters and full moon, and the moon's age.
 * Spring tides follow new and full moon by the age of the tide, which nav-tide knows for each port.
 *
 * <p>The date is a calendar date in a zone that the caller names; answers are instants on the whole
 * minute, because refraction near the horizon is not known better, rounded so that no light is
 * promised that is not there. {@link Sun} gives the sun's azimuth, to check a compass by. There is
 * no moonrise, no star and no illumination of the moon here. An open sea horizon and an eye at sea
 * level are assumed: behind hills it is dark earlier. The sun is computed with commons-suncalc.
 *
 * <p>In the handbook: <a href="../teach/doc-files/planning.html">planning</a>.
 */
@NullMarked
package org.ferryglide.nav.sky;

import org.jspecify.annotations.NullMarked;
