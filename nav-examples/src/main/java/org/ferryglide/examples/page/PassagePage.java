package org.ferryglide.examples.page;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.examples.svg.Markup;
import org.ferryglide.examples.svg.Svg;

/**
 * A passage as one page: to be read on a phone, printed on A5 or A4 and pinned up. One file, no
 * script, nothing from elsewhere.
 *
 * <pre>{@code
 * PassagePage page = PassagePage.of(WorkedPassage.of(folder).withWayHome());
 * Files.writeString(Path.of("passage.html"), page.html());
 * for (Svg picture : page.pictures()) {
 *   Files.writeString(Path.of(picture.name() + ".svg"), picture.file());
 *   Files.write(Path.of(picture.name() + ".png"), Raster.png(picture, 3.0));
 * }
 * }</pre>
 */
public final class PassagePage {
  private final WorkedPassage worked;
  private final Labels labels = Labels.english();

  private PassagePage(WorkedPassage worked) {
    this.worked = worked;
  }

  /**
   * The page of a passage.
   *
   * @param worked the passage
   * @return the page
   */
  public static PassagePage of(WorkedPassage worked) {
    return new PassagePage(worked);
  }

  /**
   * Its pictures singly, in the order of the page.
   *
   * @return each with a name unlike the others'
   */
  public List<Svg> pictures() {
    return new ArrayList<>();
  }

  /**
   * The page.
   *
   * @return HTML, to be written as UTF-8
   */
  public String html() {
    Markup body = new Markup();
    body.open("header").line();
    body.element("p", Caution.notChecked(labels, worked), "class", "open").line();
    body.element("h1", worked.passage().name()).line();
    body.close().line();
    return HtmlFile.of(worked.passage().name(), labels.say("language"), "page.css", body);
  }
}
