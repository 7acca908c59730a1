package org.ferryglide.examples.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.ferryglide.examples.svg.Markup;

/** A file of HTML that needs nothing beside it: no script, and its style within. */
final class HtmlFile {
  private HtmlFile() {}

  /**
   * The file.
   *
   * @param title for the reader's window
   * @param language of its words
   * @param style name of the style beside this class
   * @param body what stands in the body
   */
  static String of(String title, String language, String style, Markup body) {
    Markup file =
        new Markup()
            .open("html", "lang", language)
            .line()
            .open("head")
            .leaf("meta", "charset", "utf-8")
            .leaf("meta", "name", "viewport", "content", "width=device-width, initial-scale=1")
            .element("title", title)
            .line()
            .element("style", style(style))
            .close()
            .line()
            .open("body")
            .line()
            .add(body)
            .close()
            .close()
            .line();
    return "<!DOCTYPE html>\n" + file;
  }

  /** A style of ours holds none of the characters that would need escaping. */
  private static String style(String name) {
    try (InputStream in = HtmlFile.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(name + " is missing beside HtmlFile");
      }
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      if (!Markup.escaped(text).equals(text)) {
        throw new IllegalStateException(name + " must not hold & < > or quotation marks");
      }
      return text;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
