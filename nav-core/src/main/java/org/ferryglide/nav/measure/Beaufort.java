package org.ferryglide.nav.measure;

import java.io.Serializable;
import java.util.Locale;
import java.util.Optional;
import org.ferryglide.nav.note.TextFormatException;

/**
 * A force, or a range of forces, of the Beaufort wind scale, as forecasts give them.
 *
 * <pre>{@code
 * Beaufort forecast = Beaufort.parse("4 or 5");
 * forecast.highest(); // Optional[21.0 kn]: plan on it
 * Beaufort.of(Speed.ofKnots(13)).words(); // moderate breeze
 * }</pre>
 *
 * <p>Speeds are means over ten minutes at 10 m above open water; gusts are stronger. The bounds are
 * those in knots of the World Meteorological Organization's Manual on Codes (WMO-No. 306), volume
 * I.1, code table 1100: whole knots, so that a mean of 10.4 knots is force 3 and one of 10.5 knots
 * is force 4.
 *
 * @param least the lower force, in [0, 12]
 * @param greatest the higher force, in [{@code least}, 12]
 */
public record Beaufort(int least, int greatest) implements Serializable {

  private static final long serialVersionUID = 1L;

  /** Half a knot given in knots comes back from metres a second a rounding too small. */
  private static final double UNIT_ROUNDING_KNOTS = 1e-9;

  /** The highest force. */
  public static final int HURRICANE = 12;

  /** The lowest whole knots of each force. */
  private static final int[] FIRST_KNOTS = {0, 1, 4, 7, 11, 17, 22, 28, 34, 41, 48, 56, 64};

  private static final String[] WORDS = {
    "calm",
    "light air",
    "light breeze",
    "gentle breeze",
    "moderate breeze",
    "fresh breeze",
    "strong breeze",
    "near gale",
    "gale",
    "strong gale",
    "storm",
    "violent storm",
    "hurricane"
  };

  private static final String FORM =
      "a wind force is written as in 4 or 4 or 5 or 4-5, with forces from 0 to 12";

  /**
   * Takes both forces; {@link #ofForce} and {@link #ofForces} read better.
   *
   * @param least the lower force, in [0, 12]
   * @param greatest the higher force, in [{@code least}, 12]
   * @throws IllegalArgumentException if a force is out of range
   */
  public Beaufort {
    if (least < 0 || greatest > HURRICANE || least > greatest) {
      throw new IllegalArgumentException(
          "wind forces must be in [0, 12] and ascend, but were " + least + " and " + greatest);
    }
  }

  /**
   * Makes one force.
   *
   * @param force the force, in [0, 12]
   * @return the force
   * @throws IllegalArgumentException if the force is out of range
   */
  public static Beaufort ofForce(int force) {
    return new Beaufort(force, force);
  }

  /**
   * Makes a range of forces.
   *
   * @param least the lower force, in [0, 12]
   * @param greatest the higher force, in [{@code least}, 12]
   * @return the range
   * @throws IllegalArgumentException if a force is out of range
   */
  public static Beaufort ofForces(int least, int greatest) {
    return new Beaufort(least, greatest);
  }

  /**
   * The force of a wind.
   *
   * @param wind mean speed of the wind
   * @return the force of the speed rounded to whole knots, halves upward
   */
  public static Beaufort of(Speed wind) {
    long knots = Math.round(wind.knots() + UNIT_ROUNDING_KNOTS);
    int force = 0;
    while (force < HURRICANE && knots >= FIRST_KNOTS[force + 1]) {
      force++;
    }
    return ofForce(force);
  }

  /**
   * Reads a forecast's force: {@code 4}, {@code F4}, {@code force 4}, {@code 4 or 5}, {@code 4-5},
   * {@code 4 to 6}, and what {@link #toString} writes.
   *
   * @param text one force, or two in ascending order with "or", "to" or a hyphen between them
   * @return the force or range
   * @throws TextFormatException if the text is anything else
   */
  public static Beaufort parse(String text) {
    String words = text.toLowerCase(Locale.ROOT);
    int start = 0;
    if (words.startsWith("force ")) {
      start = 6;
    } else if (words.startsWith("f")) {
      start = 1;
    }
    int end = digits(words, start);
    int least = force(text, start, end);
    if (end == words.length()) {
      return ofForce(least);
    }
    int next = separator(text, words, end);
    int last = digits(words, next);
    int greatest = force(text, next, last);
    if (last != words.length()) {
      throw new TextFormatException(FORM, text, last);
    }
    if (greatest < least) {
      throw new TextFormatException("the higher force must come second", text, next);
    }
    return new Beaufort(least, greatest);
  }

  private static int digits(String text, int from) {
    int i = from;
    while (i < text.length() && text.charAt(i) >= '0' && text.charAt(i) <= '9') {
      i++;
    }
    return i;
  }

  private static int force(String text, int from, int to) {
    if (to == from || to - from > 2) {
      throw new TextFormatException(FORM, text, from);
    }
    int force = Integer.parseInt(text.substring(from, to));
    if (force > HURRICANE) {
      throw new TextFormatException(FORM, text, from);
    }
    return force;
  }

  private static int separator(String text, String words, int from) {
    for (String between : new String[] {" or ", " to ", "-", "–"}) {
      if (words.startsWith(between, from)) {
        return from + between.length();
      }
    }
    throw new TextFormatException(FORM, text, from);
  }

  /**
   * The least mean wind of the lower force.
   *
   * @return the speed in whole knots
   */
  public Speed lowest() {
    return Speed.ofKnots(FIRST_KNOTS[least]);
  }

  /**
   * The greatest mean wind of the higher force: the one to plan on.
   *
   * @return the speed in whole knots; empty for force 12, which has no upper bound
   */
  public Optional<Speed> highest() {
    return greatest == HURRICANE
        ? Optional.empty()
        : Optional.of(Speed.ofKnots(FIRST_KNOTS[greatest + 1] - 1));
  }

  /**
   * The middle of the range, between {@link #lowest} and {@link #highest}; for force 12, the lowest
   * wind of that force stands for the highest.
   *
   * @return half the sum of the two
   */
  public Speed middle() {
    double high = greatest == HURRICANE ? FIRST_KNOTS[HURRICANE] : FIRST_KNOTS[greatest + 1] - 1;
    return Speed.ofKnots(0.5 * (FIRST_KNOTS[least] + high));
  }

  /**
   * The scale's own words.
   *
   * @return for example {@code moderate breeze}, or {@code moderate breeze to fresh breeze}
   */
  public String words() {
    return least == greatest ? WORDS[least] : WORDS[least] + " to " + WORDS[greatest];
  }

  /** The force as forecasts write it: {@code 4}, {@code 4 or 5}, {@code 4 to 6}. */
  @Override
  public String toString() {
    if (least == greatest) {
      return Integer.toString(least);
    }
    return least + (greatest == least + 1 ? " or " : " to ") + greatest;
  }
}
