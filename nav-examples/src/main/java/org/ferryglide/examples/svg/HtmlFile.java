package org.ferryglide.examples.svg;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * A file of HTML that needs nothing beside it: no script, and its style within.
 *
 * <pre>{@code
 * String file = HtmlFile.of("Answers", "en", Worksheet.class, "worksheet.css", body);
 * }</pre>
 */
public final class HtmlFile {
  private HtmlFile() {}

  /**
   * The file.
   *
   * @param title for the reader's window
   * @param language of its words
   * @param beside a class that the style stands beside
   * @param style name of the style there
   * @param body what stands in the body
   * @return the whole file
   * @throws IllegalStateException if the style is missing, or holds what would need escaping
   */
  public static String of(
      String title, String language, Class<?> beside, String style, Markup body) {
    Markup file =
        new Markup()
            .open("html", "lang", language)
            .line()
            .open("head")
            .leaf("meta", "charset", "utf-8")
            .leaf("meta", "name", "viewport", "content", "width=device-width, initial-scale=1")
            .element("title", title)
            .line()
            .element("style", style(beside, style))
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
  private static String style(Class<?> beside, String name) {
    try (InputStream in = beside.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(name + " is missing beside " + beside.getSimpleName());
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
