package org.ferryglide.nav.magnetic;

import org.ferryglide.nav.bearing.HandRounding;
import org.ferryglide.nav.note.Figure;
import org.ferryglide.nav.note.Working;

/** The steps of carrying a rose forward by whole years, as a learner would write them. */
final class RoseWorking {
  private static final String DEGREES_EAST = "degrees east";
  private static final String MINUTES_EAST = "minutes of arc east";

  private RoseWorking() {}

  static Working of(CompassRose rose, int year) {
    Figure printed = variation("Variation " + rose.year(), rose.variation().degreesEast());
    double perYear = rose.annualChange().minutesEast();
    // tenths as they are printed: rounded first, seven years of 7.6' would be two minutes off
    double handChange = Math.copySign(Math.floor(Math.abs(perYear) * 10.0 + 0.5) / 10.0, perYear);
    Figure change =
        new Figure("Annual change", perYear, handChange, MINUTES_EAST, printed(handChange));
    int elapsed = year - rose.year();
    Figure years = new Figure("Years", elapsed, elapsed, "years", Integer.toString(elapsed));
    double exactTotal = change.exact() * elapsed;
    double handTotal = Math.rint(change.byHand() * elapsed * 10.0) / 10.0;
    Figure total = new Figure("Change", exactTotal, handTotal, MINUTES_EAST, printed(handTotal));
    double hand = printed.byHand() + handTotal / 60.0;
    Figure result =
        new Figure(
            "Variation " + year,
            rose.variationInYear(year).degreesEast(),
            hand,
            DEGREES_EAST,
            HandRounding.MINUTE.eastWest(hand));
    return Working.titled("Variation carried from " + rose.year() + " to " + year)
        .given("from the rose", printed)
        .given("from the rose", change)
        .then(
            "from " + rose.year() + " to " + year,
            years,
            new Figure("Year of the rose", rose.year(), rose.year(), "years", "" + rose.year()),
            new Figure("Year", year, year, "years", Integer.toString(year)))
        .then("annual change times years", total, change, years)
        .then(rule(printed.byHand(), handTotal), result, printed, total);
  }

  private static Figure variation(String name, double degreesEast) {
    double hand = HandRounding.MINUTE.round(degreesEast);
    return new Figure(name, degreesEast, hand, DEGREES_EAST, HandRounding.MINUTE.eastWest(hand));
  }

  /** Whole minutes where they are whole, else with their tenth. */
  private static String printed(double minutesEast) {
    long tenths = Math.round(Math.abs(minutesEast) * 10.0);
    if (tenths == 0) {
      return "nil";
    }
    return tenths / 10
        + (tenths % 10 == 0 ? "" : "." + tenths % 10)
        + "'"
        + (minutesEast > 0 ? "E" : "W");
  }

  private static String rule(double variation, double change) {
    if (change == 0.0) {
      return "nothing to add";
    }
    if (variation == 0.0) {
      return "the change is all there is";
    }
    if (Math.signum(variation) == Math.signum(change)) {
      return "same letters: add";
    }
    return Math.abs(change) / 60.0 <= Math.abs(variation)
        ? "letters differ: take away"
        : "letters differ: take away, past zero, so the letter changes";
  }
}
