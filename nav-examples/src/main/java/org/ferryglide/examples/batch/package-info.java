/**
 * Computing by the million: one operation over every row of a comma-separated file.
 *
 * <p>A file goes in and comes out with columns added at the end of each row, in order. It is read
 * in chunks which share out over the processors and are written in the order read, so that memory
 * does not grow with the file and the bytes written do not depend on the number of threads. A row
 * that cannot be worked is reported by its line and passes through with empty figures.
 *
 * <pre>{@code
 * BatchRun run = BatchRun.of("rhumb-inverse", BatchOptions.standard());
 * try (InputStream legs = Files.newInputStream(Path.of("legs.csv"));
 *     OutputStream out = Files.newOutputStream(Path.of("laid-off.csv"))) {
 *   BatchSummary summary = run.run("legs.csv", legs, out, BatchListener.printingTo(errors));
 *   System.exit(summary.exitStatus());
 * }
 * }</pre>
 *
 * <p>Angles are degrees, lengths metres unless a column's name says otherwise; north and east are
 * positive. Nothing here knows a command line.
 */
@NullMarked
package org.ferryglide.examples.batch;

import org.jspecify.annotations.NullMarked;
