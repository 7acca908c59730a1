/**
 * What every answer and every refusal is made of: notes that travel with a result, and errors that
 * say what was given, what is allowed, and where.
 *
 * <p>An answer that rests on something the reader should know (a value continued beyond its table,
 * a rule of thumb, a chart rose twenty years old) carries {@link org.ferryglide.nav.note.Note}s
 * rather than a log line. Input that cannot be read is refused with the character it stumbled on
 * ({@link org.ferryglide.nav.note.TextFormatException}) or, for a file, with every problem found
 * and where ({@link org.ferryglide.nav.note.InputFormatException}, gathered by {@link
 * org.ferryglide.nav.reading.InputProblems}, which bounds their number). Input that can be read but
 * looks wrong is let through with the note of a {@link org.ferryglide.nav.reading.Judgement}, which
 * names its threshold and who says so.
 *
 * <pre>{@code
 * for (Note note : answer.notes()) {
 *   System.out.println(note.severity() + ": " + note.text());
 * }
 * }</pre>
 *
 * <p>How a figure was worked out is shown on request by a {@link org.ferryglide.nav.note.Working}:
 * the lines a learner would write, and the same facts as data.
 */
@NullMarked
package org.ferryglide.nav.note;

import org.jspecify.annotations.NullMarked;
