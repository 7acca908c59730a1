/**
 * Comma-separated sheets with a heading line, read so that a mistake is reported with its file,
 * line and column, and all mistakes at once.
 *
 * <p>Every table of this module is read through a {@link org.ferryglide.tide.sheet.Sheet}; readers
 * of other files (way points, logs) may use it too. Lines that start with {@code #} are comments,
 * where the source of the figures belongs; empty lines are passed over; fields may be quoted, and
 * end on their line.
 *
 * <pre>{@code
 * Sheet sheet = Sheet.read("tides.csv", reader, List.of("time", "height_m"), List.of("kind"));
 * for (Sheet.Row row : sheet.rows()) {
 *   OptionalDouble height = row.number("height_m", -20.0, 30.0);
 * }
 * sheet.refuseIfFaulty();
 * }</pre>
 */
@NullMarked
package org.ferryglide.tide.sheet;

import org.jspecify.annotations.NullMarked;
