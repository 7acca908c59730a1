package org.ferryglide.nav.bearing;

import java.io.Serializable;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.note.Note;

/**
 * A deviation table as a card to tape on deck: what to steer by compass for a magnetic heading, and
 * what a compass heading means.
 *
 * <pre>{@code
 * String card = DeviationCard.of(table).withTitle("Deck compass, stove aft").withStep(30).text();
 * }</pre>
 */
final class DeviationCard implements Serializable {
  private static final long serialVersionUID = 1L;

  private final DeviationTable table;
  private final String title;
  private final int stepDegrees;
  private final HandRounding rounding;

  private DeviationCard(
      DeviationTable table, String title, int stepDegrees, HandRounding rounding) {
    this.table = table;
    this.title = title;
    this.stepDegrees = stepDegrees;
    this.rounding = rounding;
  }

  /**
   * A card of a table: every 45°, in whole degrees.
   *
   * @param table the table
   * @return the card
   */
  static DeviationCard of(DeviationTable table) {
    return new DeviationCard(table, "Deviation", 45, HandRounding.WHOLE_DEGREE);
  }

  /**
   * The same card under another title: say which compass, which load, which date.
   *
   * @param title one line
   * @return the card
   */
  DeviationCard withTitle(String title) {
    return new DeviationCard(table, title, stepDegrees, rounding);
  }

  /**
   * The same card with another step between its headings.
   *
   * @param stepDegrees degrees, in [1, 90]
   * @return the card
   * @throws IllegalArgumentException if {@code stepDegrees} is out of range
   */
  DeviationCard withStep(int stepDegrees) {
    Arguments.within(stepDegrees, 1, 90, "step of a deviation card", "degrees");
    return new DeviationCard(table, title, stepDegrees, rounding);
  }

  /**
   * The same card written more finely.
   *
   * @param rounding how finely angles are written
   * @return the card
   */
  DeviationCard withRounding(HandRounding rounding) {
    return new DeviationCard(table, title, stepDegrees, rounding);
  }

  /**
   * The card.
   *
   * @return lines separated by {@code \n}: title, both tables side by side, the notes of the table,
   *     what to beware of
   */
  String text() {
    StringBuilder text = new StringBuilder(title);
    text.append("\nTo steer                     Reading the compass");
    text.append("\nMagnetic  Deviat.  Compass   Compass   Deviat.  Magnetic");
    for (int heading = 0; heading < 360; heading += stepDegrees) {
      MagneticBearing magnetic = MagneticBearing.ofDegrees(heading);
      CompassBearing compass = CompassBearing.ofDegrees(heading);
      text.append('\n');
      column(text, rounding.bearing(heading, 'M'), 10);
      column(text, rounding.eastWest(table.deviationOn(magnetic).degreesEast()), 9);
      column(text, rounding.bearing(table.toCompass(magnetic).degrees(), 'C'), 10);
      column(text, rounding.bearing(heading, 'C'), 10);
      column(text, rounding.eastWest(table.deviationOn(compass).degreesEast()), 9);
      text.append(rounding.bearing(table.toMagnetic(compass).degrees(), 'M'));
    }
    for (Note note : table.notes()) {
      text.append('\n').append(note);
    }
    return text.append("\nGood only for this compass with everything stowed as it was that day.")
        .toString();
  }

  private static void column(StringBuilder text, String value, int width) {
    text.append(value);
    for (int i = value.length(); i < width; i++) {
      text.append(' ');
    }
  }
}
