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
 * }</pre>
 *
 * <p>The files, all of them comma-separated text in UTF-8 with a heading line; lines that begin
 * with {@code #} are comments:
 *
 * <table>
 *   <caption>Files of a folder</caption>
 *   <tr><th>file</th><th>what it holds</th></tr>
 *   <tr><td>{@code passage.csv}</td><td>columns {@code item}, {@code value}: {@code name}, {@code
 *     start} with its offset, {@code paddling speed}, {@code printed rose}, {@code landing
 *     port}</td></tr>
 *   <tr><td>{@code waypoints.csv}</td><td>columns {@code name}, {@code position}, in the order in
 *     which they are passed</td></tr>
 *   <tr><td>{@code streams.csv}</td><td>hourly stream tables, see {@link
 *     org.ferryglide.tide.stream.StreamTable}</td></tr>
 *   <tr><td>{@code tides/}</td><td>a sheet for each port, see {@link
 *     org.ferryglide.tide.height.TideTableReader}</td></tr>
 *   <tr><td>{@code limits.csv}</td><td>may be left out: columns {@code item}, {@code value}, what
 *     the party asks of a passage, see {@link org.ferryglide.tide.folder.PassageLimits}</td></tr>
 * </table>
 */
@NullMarked
package org.ferryglide.tide.folder;

import org.jspecify.annotations.NullMarked;
