/**
 * Files for others: what is computed goes out in formats that other programs read, and what they
 * wrote comes in after a strict look at it.
 */
@NullMarked
package org.ferryglide.examples.files;

import org.jspecify.annotations.NullMarked;
