package org.ferryglide.examples.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ferryglide.examples.svg.HtmlFile;
import org.ferryglide.examples.svg.Markup;
import org.ferryglide.nav.passage.DeckCard;

/**
 * The sides of a deck card, four to an A4 sheet, to be printed from any browser and cut. On the
 * sides read afloat the heading is at least 10 mm high and every figure at least 5 mm.
 *
 * <pre>{@code
 * Files.writeString(Path.of("cards.html"), CardSheet.of(card, "Round the skerries").html());
 * }</pre>
 */
public final class CardSheet {
  private static final int TO_A_SHEET = 4;
  private static final Pattern HEADING = Pattern.compile("([0-9_]{3}°)(  ?[0-9]+ .*)");

  private final String name;
  private final DeckCard card;
  private final Labels labels;

  private CardSheet(DeckCard card, String name, Labels labels) {
    this.card = card;
    this.name = name;
    this.labels = labels;
  }

  /**
   * The sheets of a card.
   *
   * @param card the card
   * @param name of the passage, for the window's title
   * @return its sheets
   */
  public static CardSheet of(DeckCard card, String name) {
    return new CardSheet(card, name, Labels.english());
  }

  /**
   * The sheets of a passage's card.
   *
   * @param worked the passage
   * @return the sheets; empty if the passage is not possible
   */
  public static Optional<CardSheet> of(WorkedPassage worked) {
    return worked.card().map(card -> new CardSheet(card, worked.passage().name(), worked.labels()));
  }

  /**
   * The sheets as one file.
   *
   * @return HTML, to be written as UTF-8
   */
  public String html() {
    Markup body = new Markup();
    body.open("main").line();
    body.element("h1", labels.say("sheet.title", "passage", name), "class", "screen").line();
    body.element("p", labels.say("sheet.how"), "class", "screen").line();
    List<String> afloat = new ArrayList<>(card.summary());
    afloat.addAll(card.afloat());
    sheets(body, afloat, "afloat");
    sheets(body, card.further(), "further");
    body.close().line();
    return HtmlFile.of(
        labels.say("sheet.title", "passage", name),
        labels.say("language"),
        CardSheet.class,
        "sheet.css",
        body);
  }

  private void sheets(Markup body, List<String> sides, String kind) {
    for (int from = 0; from < sides.size(); from += TO_A_SHEET) {
      body.open("section", "class", "sheet " + kind);
      body.element("h2", labels.say("sheet." + kind), "class", "screen").line();
      for (String side : sides.subList(from, Math.min(sides.size(), from + TO_A_SHEET))) {
        body.open("pre", "class", "side", "tabindex", "0");
        side.lines().forEach(line -> line(body, line));
        body.close().line();
      }
      body.close().line();
    }
  }

  private static void line(Markup body, String line) {
    Matcher heading = HEADING.matcher(line);
    if (heading.matches()) {
      body.element("b", heading.group(1), "class", "heading").text(heading.group(2));
    } else {
      body.text(Labels.withNamesIsolated(line));
    }
    body.line();
  }
}
