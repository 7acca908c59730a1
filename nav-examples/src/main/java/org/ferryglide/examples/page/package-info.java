/**
 * What a paddler pins up, carries and leaves ashore: a page of one file, card sheets to be cut, and
 * a note for those who stay.
 *
 * <pre>{@code
 * WorkedPassage worked = WorkedPassage.of(PassageFolder.read(folder));
 * Files.writeString(page, PassagePage.of(worked).html());
 * Files.writeString(note, ShoreNote.of(worked).html());
 * CardSheet.of(worked).ifPresent(sheet -> Files.writeString(cards, sheet.html()));
 * }</pre>
 *
 * <p>All three print the figures of one {@link org.ferryglide.nav.passage.TimedPlan}, rounded as
 * the deck card rounds them: each to the side on which its own check is worse. What is not known is
 * a visible blank; what was not checked stands in the first line. Every word of theirs is in {@code
 * labels.properties}, notes by their codes.
 */
@NullMarked
package org.ferryglide.examples.page;

import org.jspecify.annotations.NullMarked;
