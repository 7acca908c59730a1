package org.ferryglide.examples.svg;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import javax.imageio.ImageIO;

/**
 * Pictures as points of colour, for programs that read no SVG.
 *
 * <pre>{@code
 * Files.write(Path.of("sheet.png"), Raster.png(picture, 3.0));
 * }</pre>
 */
public final class Raster {
  private static final double MOST_PIXELS = 40e6;

  private Raster() {}

  /**
   * A picture as PNG, on white.
   *
   * @param picture the picture
   * @param pixelsPerUnit above zero; 3 prints well over the width of an A5 page
   * @return the bytes of the file
   * @throws IllegalArgumentException if {@code pixelsPerUnit} is not above zero or the image would
   *     have more than 40 million pixels
   */
  public static byte[] png(Svg picture, double pixelsPerUnit) {
    double width = Math.ceil(picture.width() * pixelsPerUnit);
    double height = Math.ceil(picture.height() * pixelsPerUnit);
    if (!(pixelsPerUnit > 0.0 && width * height <= MOST_PIXELS)) {
      throw new IllegalArgumentException(
          "pixels per unit must be above 0 and give at most 40 million pixels, but was "
              + pixelsPerUnit);
    }
    byte[] text = picture.file().getBytes(StandardCharsets.UTF_8);
    SVGDocument document =
        Objects.requireNonNull(
            new SVGLoader()
                .load(new ByteArrayInputStream(text), null, LoaderContext.createDefault()),
            "a picture of our own");
    BufferedImage image = new BufferedImage((int) width, (int) height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, (int) width, (int) height);
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    document.render(
        (java.awt.Component) null, graphics, new ViewBox(0, 0, (float) width, (float) height));
    graphics.dispose();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "png", out);
    } catch (IOException e) {
      throw new UncheckedIOException(e); // memory does not fail
    }
    return out.toByteArray();
  }
}
