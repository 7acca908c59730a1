package org.ferryglide.tide.stream;

import java.io.Serializable;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.TextFormatException;

/**
 * The pair of figures beside an arrow of a stream atlas: mean neap rate and mean spring rate in
 * tenths of a knot.
 *
 * <pre>{@code
 * AtlasFigures figures = AtlasFigures.parse("07,19");
 * figures.neapRate().knots(); // 0.7
 * figures.springRate().knots(); // 1.9
 * }</pre>
 *
 * <p>That the neap figure comes first, and that both are tenths of a knot, is how official atlases
 * explain their arrows.
 *
 * @param neapRate rate at mean neaps
 * @param springRate rate at mean springs
 */
record AtlasFigures(Speed neapRate, Speed springRate) implements Serializable {

  private static final long serialVersionUID = 1L;

  /**
   * Reads two whole numbers of tenths of a knot, neaps first, between them a comma, a full stop or
   * a hyphen as different atlases print them. Each has at least two digits, so that 1.9 is not
   * taken for 0.1 and 0.9 kn.
   *
   * @param text for example {@code 07,19}; two or three digits each
   * @return the rates
   * @throws TextFormatException if the text is anything else, or the neap figure is the larger,
   *     which is how a swapped pair shows
   */
  public static AtlasFigures parse(String text) {
    int mark = digitsEnd(text, 0);
    if (mark >= text.length() || ",.-".indexOf(text.charAt(mark)) < 0) {
      throw new TextFormatException(
          "a comma must separate the neap figure from the spring figure", text, mark);
    }
    int end = digitsEnd(text, mark + 1);
    if (end < text.length()) {
      throw new TextFormatException("nothing may follow the spring figure", text, end);
    }
    int neap = Integer.parseInt(text.substring(0, mark));
    int spring = Integer.parseInt(text.substring(mark + 1, end));
    if (neap > spring) {
      throw new TextFormatException(
          "the neap figure comes first and must not exceed the spring figure", text, 0);
    }
    return new AtlasFigures(Speed.ofKnots(neap / 10.0), Speed.ofKnots(spring / 10.0));
  }

  private static int digitsEnd(String text, int from) {
    int i = from;
    while (i < text.length() && i < from + 3 && text.charAt(i) >= '0' && text.charAt(i) <= '9') {
      i++;
    }
    if (i == from + 1) {
      throw new TextFormatException(
          "a figure in tenths of a knot must have two or three digits, as in 07", text, from);
    }
    if (i == from) {
      throw new TextFormatException("a figure in tenths of a knot must stand here", text, from);
    }
    return i;
  }

  /**
   * The figures as an atlas prints them.
   *
   * @return neap then spring rate in whole tenths of a knot, rounded half up: {@code 07,19}
   */
  public String inTenthsOfKnots() {
    return twoDigits(neapRate) + "," + twoDigits(springRate);
  }

  private static String twoDigits(Speed rate) {
    long tenths = Math.round(rate.knots() * 10.0);
    return tenths < 10 ? "0" + tenths : Long.toString(tenths);
  }
}
