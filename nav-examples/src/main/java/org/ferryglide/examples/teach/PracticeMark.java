package org.ferryglide.examples.teach;

import org.ferryglide.nav.position.Position;

/**
 * An invented mark of a {@link PracticeArea}.
 *
 * @param name its name
 * @param position where it stands
 * @param heightMetres height of its top above high water, metres
 */
public record PracticeMark(String name, Position position, double heightMetres) {}
