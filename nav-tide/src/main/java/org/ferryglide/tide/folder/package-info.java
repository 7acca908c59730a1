/**
 * A passage's folder: what a paddler has on paper before launching, as plain text files.
 *
 * <p>The one idea: a folder is read whole. Either every file is sound, and one value holds all of
 * it, with cautions about what looks wrong; or the folder is refused, with every problem of every
 * file at once, by file, line and column, causes before what follows from them.
 *
 * <pre>{@code
 * PassageFolder folder = PassageFolder.read(Paths.get("my-passage"));
 * folder.wayPoints().get(0).position();
 * folder.notes().forEach(note -> System.out.println(note));
 * TimedPlan.of(folder.passage(), folder.start().toInstant()); // the plan it was made for
 * }</pre>
 *
 * <p>A folder may also be made of texts in memory, or of values; what was read is written back byte
 * for byte.
 *
 * <p>The files, all of them comma-separated text in UTF-8 with a heading line; lines that begin
 * with {@code #} are comments. Decimals have a point, directions are true degrees clockwise from
 * north, times have their offset ({@code 2026-06-14T11:40+01:00}), lengths of time are written
 * {@code 40 min} or {@code 1 h 20 min}, positions as {@link
 * org.ferryglide.nav.position.Position#parse} reads them. The first four make a folder; every other
 * may be left out, and what is then not known is said at the top of the plan.
 *
 * <table>
 *   <caption>Files of a folder</caption>
 *   <tr><th>file</th><th>what it holds</th></tr>
 *   <tr><td>{@code passage.csv}</td><td>columns {@code item}, {@code value}: {@code name}, {@code
 *     start} with its offset, {@code paddling speed}, {@code printed rose}, {@code landing
 *     port}</td></tr>
 *   <tr><td>{@code waypoints.csv}</td><td>columns {@code name}, {@code position}, in the order in
 *     which they are passed</td></tr>
 *   <tr><td>{@code streams.csv}</td><td>hourly stream tables, a row for each hour: {@code station},
 *     {@code latitude}, {@code longitude} (degrees), {@code port}, {@code neap_range_m}, {@code
 *     spring_range_m} (mean ranges of the port, the five in the first row of a station), {@code
 *     hour} (from high water), {@code set_deg}, {@code spring_rate_kn}, {@code neap_rate_kn}; more
 *     in {@link org.ferryglide.tide.stream.StreamTable}</td></tr>
 *   <tr><td>{@code tides/}</td><td>a sheet for each port, whatever its name: {@code port}, {@code
 *     datum} (in the first row), {@code time}, {@code height_m}, {@code kind} ({@code high} or
 *     {@code low}); more in {@link org.ferryglide.tide.height.TideTableReader}</td></tr>
 *   <tr><td>{@code limits.csv}</td><td>columns {@code item}, {@code value}, what the party asks of
 *     a passage: {@code light} ({@code daylight}, {@code civil twilight} or {@code any}), {@code
 *     latest arrival}, {@code strongest stream} (stops; warns from four fifths, unless {@code margins.csv} says otherwise), {@code largest cross-stream share} (as in {@code 80 %}), {@code reach of
 *     stations}, {@code longest leg} (a time, {@code 24 h} without it); see {@link
 *     org.ferryglide.tide.folder.FolderLimits}</td></tr>
 *   <tr><td>{@code places.csv}</td><td>what is known of way points: {@code place} (its name in
 *     {@code waypoints.csv}), and if wished {@code to_see}, {@code mark_height_m} (top of the mark
 *     above the datum of its port), {@code mark_port} (whose water rises round it; without it that
 *     of the landing, and where there is none the port with the highest water), {@code landing} (a port, or {@code any level}),
 *     {@code lowest_m} and {@code highest_m} (heights at that port between which it works), {@code
 *     open_from_deg} and {@code open_until_deg} (the sector it lies open to, clockwise), {@code
 *     stop} ({@code 40 min}, {@code until 2026-06-14T15:00+01:00}, {@code until 0.5 kn or less} for
 *     the stream, {@code until 2.5 m or more at Orrin Quay}, {@code until 1.0 m or less at Orrin
 *     Quay}; the wait ends so that its condition holds once the party has launched), {@code
 *     aim_off_for} (another way point: the place is aimed at on purpose to one side
 *     of it, and its mark is what is looked for). A row holds wherever the passage comes to the
 *     place</td></tr>
 *   <tr><td>{@code legs.csv}</td><td>legs that differ from the rest: {@code leg} (1 is the first),
 *     and if wished {@code strategy} ({@code constant heading}, {@code track held}, {@code new heading
 *     every 20 min}, {@code new headings at 2026-06-14T12:10+01:00 and 2026-06-14T12:50+01:00},
 *     {@code bow on target}, {@code quickest}, {@code quickest round Quill and Tarn}, names of
 *     {@code obstacles.csv}), {@code speed_kn}, {@code rests}
 *     ({@code none}), {@code stream} (the leg's own: {@code slack}, a set and rate as in {@code
 *     015° 0.4 kn}, or {@code station Hesk Sound}), {@code line} ({@code geodesic})</td></tr>
 *   <tr><td>{@code party.csv}</td><td>columns {@code item}, {@code value}: {@code slower speed},
 *     {@code rest each hour}, {@code launching}, {@code landing} (lengths of time), {@code load}
 *     ({@code loaded}, {@code ordinary} or {@code empty}: what the wind does, see {@link
 *     org.ferryglide.nav.steer.WindResponse.Trim}; without it the wind has no effect), {@code drift at rest} (of
 *     the wind's speed, as in {@code 3 %}), {@code eye height}, {@code clock} (a zone; the offset
 *     of the start without it), {@code visibility}, {@code swell from}</td></tr>
 *   <tr><td>{@code margins.csv}</td><td>columns {@code item}, {@code warning}, {@code stop}, where
 *     a warning begins and where the plan is stopped, see {@link
 *     org.ferryglide.nav.passage.PassageLimits}: speeds {@code stream}, {@code wind}, {@code wind
 *     against stream}, {@code reserve}, {@code onshore wind}; times {@code daylight left}, {@code
 *     time afloat}, {@code time to landing}; an angle {@code lane angle}; and with one value under
 *     {@code stop} {@code least stream that counts} (for wind against stream) and {@code error of
 *     the rate} (in per cent)</td></tr>
 *   <tr><td>{@code dangers.csv}</td><td>a row for each point, or three and more rows for the
 *     corners of an outline: {@code name}, {@code position}, {@code keep_off_m}, and if wished
 *     {@code port}, {@code closed_hours} about its high or low waters ({@code HW-2..HW+1}, {@code
 *     LW-1.5..LW and HW..HW+1}), {@code closed_above_stream_kn}, {@code closed_above_wind_kn},
 *     {@code closed_below_m}, {@code closed_above_m} (heights at the port), {@code closed_times} (spans in UTC as in {@code 2026-06-14T11:00:00Z/2026-06-14T12:30:00Z}, several parted by {@code and}). The first row of a name gives what is the same for all; later rows repeat it or leave it empty. Closed whenever one
 *     of them holds, and always if none is given; hours count as closed too where the tide table
 *     does not reach. A file without rows says that the party has looked and found none</td></tr>
 *   <tr><td>{@code obstacles.csv}</td><td>outlines for {@code quickest round} in {@code legs.csv},
 *     three and more rows each, drawn with the berth they need: {@code name}, {@code
 *     position}</td></tr>
 *   <tr><td>{@code lanes.csv}</td><td>lanes and fairways, a row for each point of the middle:
 *     {@code name}, {@code position}, {@code width_m} (in the first row)</td></tr>
 *   <tr><td>{@code coast.csv}</td><td>lines of the shore, as far as the party has drawn them, a row
 *     for each point: {@code name}, {@code position}. No station counts for the water behind them,
 *     and without them it is not checked whether there is land down wind</td></tr>
 *   <tr><td>{@code refuges.csv}</td><td>landings beside the way: {@code place}, {@code position},
 *     and the columns of {@code places.csv} but {@code stop}; {@code landing} must be given</td></tr>
 *   <tr><td>{@code wind.csv}</td><td>a forecast by hour and place: {@code place}, {@code position}
 *     (in the first row of a place), {@code time} (ascending), {@code from_deg} (where it comes
 *     from, true), {@code speed_kn}; see {@link
 *     org.ferryglide.tide.folder.ForecastWind#read}</td></tr>
 *   <tr><td>{@code deviation.csv}</td><td>the card of the compass on deck, four rows and more:
 *     {@code compass_heading} ({@code 045}), {@code deviation} ({@code 2°30'E})</td></tr>
 *   <tr><td>{@code errors.csv}</td><td>how wrong reckoning may be, as standard deviations with
 *     their units: {@code source}, {@code constant} (the same all day), {@code independent} (drawn
 *     anew). Sources {@code compass reading}, {@code variation}, {@code deviation}, {@code leeway},
 *     {@code set of the stream}, {@code plotted direction} ({@code 2°}), {@code speed}, {@code rate
 *     of the stream} ({@code 7 %}), {@code current not in the tables} ({@code 0.05 m/s}), {@code
 *     plotted position} ({@code 50 m}); and {@code drawn anew every} with a time under {@code
 *     constant}. What is left out is as in {@link org.ferryglide.nav.reckon.ErrorModel#usual}</td></tr>
 *   <tr><td>{@code shore.csv}</td><td>what those ashore are told; kept with the folder and read by
 *     what prints the note</td></tr>
 * </table>
 */
@NullMarked
package org.ferryglide.tide.folder;

import org.jspecify.annotations.NullMarked;
