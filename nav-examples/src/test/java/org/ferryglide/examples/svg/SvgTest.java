package org.ferryglide.examples.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;

class SvgTest {
  @Test
  void numbersHaveAPointAndNoMoreThanTwoDecimals() {
    assertEquals("0", Svg.number(-0.001));
    assertEquals("-0.01", Svg.number(-0.01));
    assertEquals("1.5", Svg.number(1.5));
    assertEquals("1234.57", Svg.number(1234.567));
    assertEquals("-3.05", Svg.number(-3.05));
    assertEquals("10", Svg.number(9.999));
    assertThrows(IllegalArgumentException.class, () -> Svg.number(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> Svg.number(1e7));
  }

  @Test
  void aPictureIsTheSameUnderEveryLocale() {
    Locale before = Locale.getDefault();
    String here = picture("a").file();
    try {
      for (String tag : new String[] {"de", "ar-EG-u-nu-arab", "tr"}) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertEquals(here, picture("a").file());
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  private static Svg picture(String title) {
    Svg svg = Svg.of("a-1", 100.5, 40, title, "what < it & \"shows\" \u0001\ud800");
    svg.hatch("h", 4, 45, "#000");
    svg.rectangle(0, 0, 50.25, 40, "fill", svg.fill("h"));
    svg.text(3, 20, title);
    return svg;
  }

  @Test
  void anyTextIsWellFormed() throws Exception {
    String hostile = "</title><script>&'\"]]>\u0000\ufffe\udc00 海";
    byte[] bytes = picture(hostile).file().getBytes(StandardCharsets.UTF_8);
    var document =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(bytes));
    assertEquals(
        "</title><script>&'\"]]>\ufffd\ufffd\ufffd 海",
        document.getElementsByTagName("title").item(0).getTextContent());
    assertEquals(0, document.getElementsByTagName("script").getLength());
  }

  @Test
  void aPatternAskedForTwiceStandsOnce() {
    Svg svg = Svg.of("a", 9, 9, "title", "words");
    svg.hatch("h", 4, 45, "#000").hatch("h", 4, 45, "#000");
    assertEquals(svg.file().indexOf("id=\"a-h\""), svg.file().lastIndexOf("id=\"a-h\""));
  }

  @Test
  void anElementLeftOpenIsRefused() {
    Svg svg = picture("b");
    svg.group("fill", "none");
    assertThrows(IllegalStateException.class, svg::file);
    assertThrows(IllegalStateException.class, () -> new Markup().close());
    assertThrows(IllegalArgumentException.class, () -> new Markup().leaf("br", "class"));
    assertThrows(IllegalArgumentException.class, () -> Svg.of("A b", 1, 1, "", ""));
    assertThrows(IllegalArgumentException.class, () -> Svg.of("a", 0, 1, "", ""));
  }

  @Test
  void anImageHasTheSizeAskedForAndIsDrawn() throws Exception {
    Svg svg = Svg.of("dot", 20, 10, "dot", "a dot").circle(10, 5, 4, "fill", "#ff0000");
    var image = ImageIO.read(new ByteArrayInputStream(Raster.png(svg, 2.0)));
    assertEquals(40, image.getWidth());
    assertEquals(20, image.getHeight());
    assertEquals(0xFFFF0000, image.getRGB(20, 10));
    assertEquals(0xFFFFFFFF, image.getRGB(1, 1));
    assertThrows(IllegalArgumentException.class, () -> Raster.png(svg, 0.0));
    assertThrows(IllegalArgumentException.class, () -> Raster.png(svg, 1e6));
    assertTrue(Raster.png(svg, 1.0).length > 50);
  }
}
