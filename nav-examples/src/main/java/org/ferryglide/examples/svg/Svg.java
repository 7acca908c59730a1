package org.ferryglide.examples.svg;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;

/**
 * A picture being drawn, in units of its own with the first of both axes at the upper left.
 *
 * <pre>{@code
 * Svg picture = Svg.of("leg", 100, 40, "A leg", "From west to east.");
 * picture.line(10, 20, 90, 20, "stroke", "#000");
 * picture.text(50, 14, "090°", "text-anchor", "middle");
 * }</pre>
 */
public final class Svg {
  private static final double HUNDREDTHS = 100.0;

  private final String name;
  private final double width;
  private final double height;
  private final String title;
  private final String description;
  private final Markup drawn = new Markup();
  private final Set<String> patterns = new HashSet<>();

  private Svg(String name, double width, double height, String title, String description) {
    this.name = name;
    this.width = width;
    this.height = height;
    this.title = title;
    this.description = description;
  }

  /**
   * Begins a picture.
   *
   * @param name unlike that of every other picture of its page; letters, digits and hyphens
   * @param width in units, above zero
   * @param height in units, above zero
   * @param title a few words that stand for the picture
   * @param description what it shows, with its figures, for those who cannot see it
   * @return the picture, empty
   * @throws IllegalArgumentException if the name has other characters or a side is not above zero
   */
  public static Svg of(String name, double width, double height, String title, String description) {
    if (!name.matches("[a-z][a-z0-9-]*")) {
      throw new IllegalArgumentException(
          "name of a picture must be letters, digits and hyphens, but was " + name);
    }
    if (!(width > 0.0 && height > 0.0)) {
      throw new IllegalArgumentException(
          "sides of a picture must be above 0, but were " + width + " and " + height);
    }
    return new Svg(name, width, height, title, description);
  }

  /**
   * What it is called.
   *
   * @return the name, for files and ids
   */
  public String name() {
    return name;
  }

  /**
   * How wide it is.
   *
   * @return units
   */
  public double width() {
    return width;
  }

  /**
   * How high it is.
   *
   * @return units
   */
  public double height() {
    return height;
  }

  /**
   * A few words that stand for it.
   *
   * @return the title
   */
  public String title() {
    return title;
  }

  /**
   * What it shows.
   *
   * @return the description
   */
  public String description() {
    return description;
  }

  /**
   * A number as pictures hold it, the same under every locale.
   *
   * @param value any finite number up to a million
   * @return at most two decimals, none that says nothing
   * @throws IllegalArgumentException if it is NaN, infinite or larger
   */
  public static String number(double value) {
    if (!(Math.abs(value) <= 1e6)) { // NaN too
      throw new IllegalArgumentException(
          "a coordinate must be within a million units, but was " + value);
    }
    long hundredths = Math.round(value * HUNDREDTHS);
    String text = Long.toString(Math.abs(hundredths) / 100);
    int rest = (int) (Math.abs(hundredths) % 100);
    if (rest != 0) {
      text += rest % 10 == 0 ? "." + rest / 10 : (rest < 10 ? ".0" : ".") + rest;
    }
    return hundredths < 0 ? "-" + text : text;
  }

  /**
   * Begins a group whose parts share attributes.
   *
   * @param attributes names and values in turn
   * @return this
   */
  public Svg group(String... attributes) {
    drawn.open("g", attributes);
    return this;
  }

  /**
   * Ends the group begun last.
   *
   * @return this
   */
  public Svg end() {
    drawn.close();
    return this;
  }

  /**
   * A straight line.
   *
   * @param x1 from, to the right
   * @param y1 from, down
   * @param x2 to, to the right
   * @param y2 to, down
   * @param attributes names and values in turn
   * @return this
   */
  public Svg line(double x1, double y1, double x2, double y2, String... attributes) {
    return leaf(
        "line", attributes, "x1", number(x1), "y1", number(y1), "x2", number(x2), "y2", number(y2));
  }

  /**
   * Straight lines from point to point.
   *
   * @param points to the right and down in turn
   * @param attributes names and values in turn
   * @return this
   */
  public Svg polyline(double[] points, String... attributes) {
    return leaf("polyline", attributes, "points", points(points));
  }

  /**
   * A closed outline.
   *
   * @param points to the right and down in turn
   * @param attributes names and values in turn
   * @return this
   */
  public Svg polygon(double[] points, String... attributes) {
    return leaf("polygon", attributes, "points", points(points));
  }

  private static String points(double[] points) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i + 1 < points.length; i += 2) {
      text.append(i == 0 ? "" : " ").append(number(points[i])).append(',');
      text.append(number(points[i + 1]));
    }
    return text.toString();
  }

  /**
   * A circle.
   *
   * @param x of its middle
   * @param y of its middle
   * @param radius at least zero
   * @param attributes names and values in turn
   * @return this
   */
  public Svg circle(double x, double y, double radius, String... attributes) {
    return leaf("circle", attributes, "cx", number(x), "cy", number(y), "r", number(radius));
  }

  /**
   * An ellipse that may be turned.
   *
   * @param x of its middle
   * @param y of its middle
   * @param alongUp half the axis that points up before it is turned
   * @param across half the other
   * @param turnedDegrees how far it is turned clockwise
   * @param attributes names and values in turn
   * @return this
   */
  public Svg ellipse(
      double x,
      double y,
      double alongUp,
      double across,
      double turnedDegrees,
      String... attributes) {
    return leaf(
        "ellipse",
        attributes,
        "rx",
        number(across),
        "ry",
        number(alongUp),
        "transform",
        "translate(" + number(x) + " " + number(y) + ") rotate(" + number(turnedDegrees) + ")");
  }

  /**
   * An upright rectangle.
   *
   * @param x of its left side
   * @param y of its upper side
   * @param wide at least zero
   * @param high at least zero
   * @param attributes names and values in turn
   * @return this
   */
  public Svg rectangle(double x, double y, double wide, double high, String... attributes) {
    return leaf(
        "rect",
        attributes,
        "x",
        number(x),
        "y",
        number(y),
        "width",
        number(wide),
        "height",
        number(high));
  }

  /**
   * Words.
   *
   * @param x where they begin, or as {@code text-anchor} says
   * @param y of the line they stand on
   * @param words what is to be read
   * @param attributes names and values in turn
   * @return this
   */
  public Svg text(double x, double y, String words, String... attributes) {
    drawn.element("text", words, joined(attributes, "x", number(x), "y", number(y)));
    return this;
  }

  /**
   * A pattern of lines to fill areas with, so that they differ without colours; the first of an id
   * counts.
   *
   * @param id of the pattern, to be named as {@link #fill} tells
   * @param spacing from line to line
   * @param degrees how far the lines are turned from upright, clockwise
   * @param colour of the lines
   * @return this
   */
  public Svg hatch(String id, double spacing, double degrees, String colour) {
    if (!patterns.add(id)) {
      return this; // an id stands once in a page
    }
    drawn
        .open(
            "pattern",
            "id",
            name + "-" + id,
            "patternUnits",
            "userSpaceOnUse",
            "width",
            number(spacing),
            "height",
            number(spacing),
            "patternTransform",
            "rotate(" + number(degrees) + ")")
        .leaf("path", "d", "M0 0V" + number(spacing), "stroke", colour, "stroke-width", "1.2")
        .close();
    return this;
  }

  /**
   * A rectangle outside which what follows is not drawn.
   *
   * @param id of the rectangle
   * @param x of its left side
   * @param y of its upper side
   * @param wide at least zero
   * @param high at least zero
   * @return the attribute's value for {@code clip-path}
   */
  public String clip(String id, double x, double y, double wide, double high) {
    drawn.open("clipPath", "id", name + "-" + id);
    rectangle(x, y, wide, high);
    drawn.close();
    return fill(id);
  }

  /**
   * The fill that a pattern of this picture is.
   *
   * @param id of the pattern
   * @return the value of {@code fill}
   */
  public String fill(String id) {
    return "url(#" + name + "-" + id + ")";
  }

  private Svg leaf(String element, String[] attributes, String... own) {
    drawn.leaf(element, joined(attributes, own));
    return this;
  }

  private static String[] joined(String[] attributes, String... own) {
    String[] all = Arrays.copyOf(own, own.length + attributes.length);
    System.arraycopy(attributes, 0, all, own.length, attributes.length);
    return all;
  }

  /**
   * The picture for a page.
   *
   * @return the element, as wide as its place on the page
   */
  public Markup inline() {
    return written("width", "100%");
  }

  /**
   * The picture as a file of its own.
   *
   * @return an SVG file, to be written as UTF-8
   */
  public String file() {
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
        + written("width", number(width), "height", number(height))
        + "\n";
  }

  private Markup written(String... size) {
    return new Markup()
        .open(
            "svg",
            joined(
                size,
                "xmlns",
                "http://www.w3.org/2000/svg",
                "viewBox",
                "0 0 " + number(width) + " " + number(height),
                "role",
                "img",
                "aria-labelledby",
                name + "-title " + name + "-desc",
                "font-family",
                "sans-serif",
                "font-size",
                "10",
                "fill",
                "#101418"))
        .element("title", title, "id", name + "-title")
        .element("desc", description, "id", name + "-desc")
        .add(drawn)
        .close();
  }
}
