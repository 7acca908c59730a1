/**
 * A small writer of pictures: text that is well-formed whatever names it is given, numbers that are
 * the same under every locale, and a title and description in each picture for those who cannot see
 * it.
 *
 * <pre>{@code
 * Svg picture = Svg.of("dot", 20, 20, "A dot", "A black dot in the middle of the picture.");
 * picture.circle(10, 10, 4, "fill", "#000");
 * Files.writeString(file, picture.file());
 * Files.write(image, Raster.png(picture, 2.0));
 * }</pre>
 */
@NullMarked
package org.ferryglide.examples.svg;

import org.jspecify.annotations.NullMarked;
