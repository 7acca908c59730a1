package org.ferryglide.examples.svg;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Text with elements, well-formed as XML whatever it is given. HTML is written with it too: its
 * void elements as {@link #leaf}, all others with an end of their own.
 *
 * <pre>{@code
 * String item = new Markup().open("li", "class", "open").text("a < b").close().toString();
 * }</pre>
 */
public final class Markup {
  private final StringBuilder written = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();

  /** Begins with nothing written. */
  public Markup() {}

  /**
   * Begins an element.
   *
   * @param name of the element
   * @param attributes names and values in turn
   * @return this
   * @throws IllegalArgumentException if a name has no value
   */
  public Markup open(String name, String... attributes) {
    begin(name, attributes).append('>');
    open.push(name);
    return this;
  }

  /**
   * Ends the element begun last.
   *
   * @return this
   * @throws IllegalStateException if none is open
   */
  public Markup close() {
    if (open.isEmpty()) {
      throw new IllegalStateException("no element is open");
    }
    written.append("</").append(open.pop()).append('>');
    return this;
  }

  /**
   * An element with nothing in it.
   *
   * @param name of the element
   * @param attributes names and values in turn
   * @return this
   * @throws IllegalArgumentException if a name has no value
   */
  public Markup leaf(String name, String... attributes) {
    begin(name, attributes).append("/>");
    return this;
  }

  /**
   * An element with words in it.
   *
   * @param name of the element
   * @param words what stands in it
   * @param attributes names and values in turn
   * @return this
   * @throws IllegalArgumentException if a name has no value
   */
  public Markup element(String name, String words, String... attributes) {
    return open(name, attributes).text(words).close();
  }

  /**
   * Words, escaped.
   *
   * @param words what is to be read
   * @return this
   */
  public Markup text(String words) {
    written.append(escaped(words));
    return this;
  }

  /**
   * What was written elsewhere.
   *
   * @param finished markup of which no element is open
   * @return this
   */
  public Markup add(Markup finished) {
    written.append(finished);
    return this;
  }

  /**
   * A new line, for those who read the file itself.
   *
   * @return this
   */
  public Markup line() {
    written.append('\n');
    return this;
  }

  private StringBuilder begin(String name, String... attributes) {
    if (attributes.length % 2 != 0) {
      throw new IllegalArgumentException(
          "attributes of "
              + name
              + " must be names and values in turn, but were "
              + attributes.length);
    }
    written.append('<').append(name);
    for (int i = 0; i < attributes.length; i += 2) {
      written.append(' ').append(attributes[i]).append("=\"").append(escaped(attributes[i + 1]));
      written.append('"');
    }
    return written;
  }

  /**
   * Words as they stand in XML and HTML.
   *
   * @param words any text; what XML cannot hold, as control characters, becomes U+FFFD
   * @return the text with {@code & < > "} written as entities
   */
  public static String escaped(String words) {
    StringBuilder out = new StringBuilder(words.length() + 16);
    words.codePoints().forEach(c -> escape(c, out));
    return out.toString();
  }

  private static void escape(int c, StringBuilder out) {
    switch (c) {
      case '&' -> out.append("&amp;");
      case '<' -> out.append("&lt;");
      case '>' -> out.append("&gt;");
      case '"' -> out.append("&quot;");
      default -> out.appendCodePoint(isAllowed(c) ? c : 0xFFFD);
    }
  }

  /** The characters of XML 1.0, section 2.2, without those that HTML forbids beside them. */
  private static boolean isAllowed(int c) {
    boolean control = c < 0x20 ? c != '\t' && c != '\n' : c >= 0x7F && c < 0xA0;
    boolean surrogate = c >= 0xD800 && c < 0xE000;
    boolean none = (c & 0xFFFE) == 0xFFFE || (c >= 0xFDD0 && c < 0xFDF0);
    return !control && !surrogate && !none;
  }

  /**
   * What was written.
   *
   * @throws IllegalStateException if an element is still open
   */
  @Override
  public String toString() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("still open: " + open);
    }
    return written.toString();
  }
}
