/**
 * Exercises without end: an invented area with its tables, questions drawn from it by a seed, a
 * worksheet to print and its answer sheet.
 */
@NullMarked
package org.ferryglide.examples.teach;

import org.jspecify.annotations.NullMarked;
