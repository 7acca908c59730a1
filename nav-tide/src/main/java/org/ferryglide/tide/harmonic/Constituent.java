package org.ferryglide.tide.harmonic;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.ferryglide.nav.basics.Arguments;

/**
 * One cosine of the tide: an angle that turns at a steady speed, made of the mean longitudes of the
 * moon and the sun.
 *
 * <p>The angle, V, is a sum of six angles in whole multiples (mean lunar time τ and the mean
 * longitudes s of the moon, h of the sun, p of the lunar perigee, N′ of the node with its sign
 * changed and p₁ of the solar perigee), and of whole quarter turns. Constituents are equal when
 * name, angle and node factor are.
 *
 * <pre>{@code
 * Constituent m2 = Constituents.M2;
 * double degreesPerHour = m2.speedDegreesPerHour(); // 28.9841042
 * Constituent sigma1 = Constituent.ofDoodson("SIG1", "127.555", 3, Constituents.O1);
 * Constituent shallow =
 *     Constituent.compound("2MS6", Constituents.M2.times(2), Constituents.S2.times(1));
 * }</pre>
 */
public final class Constituent implements Serializable {

  private static final long serialVersionUID = 1L;

  /** 2000-01-01T12:00:00Z in seconds since 1970: speeds are taken then. */
  private static final double SPEED_EPOCH_SECONDS = 946728000.0;

  /** Digits of a Doodson number; X and E stand for ten and eleven. */
  private static final String DIGITS = "0123456789XE";

  private static final int DOODSON_ADDED = 5;
  private static final int GREATEST_MULTIPLE = 40;

  private final String name;

  /** Multiples of τ, s, h, p, N′ and p₁. */
  private final int[] multiples;

  private final int quarterTurns;
  private final NodeFamily family;

  @SuppressWarnings("serial") // List.copyOf gives a serializable list of serializable parts
  private final List<Part> parts;

  private final double speedDegreesPerHour;

  private Constituent(
      String name, int[] multiples, int quarterTurns, NodeFamily family, List<Part> parts) {
    if (name.trim().isEmpty()) {
      throw new IllegalArgumentException("name of a constituent must not be empty");
    }
    for (int multiple : multiples) {
      Arguments.within(
          multiple, -GREATEST_MULTIPLE, GREATEST_MULTIPLE, "multiple of an angle", "turns");
    }
    this.name = name;
    this.multiples = multiples;
    this.quarterTurns = Math.floorMod(quarterTurns, 4);
    this.family = Objects.requireNonNull(family, "family");
    this.parts = parts;
    double[] rates = new double[MeanLongitudes.COUNT];
    MeanLongitudes.SCHUREMAN.ratesAt(SPEED_EPOCH_SECONDS, rates, 0);
    double speed = perigeeInNodalAngle() * rates[MeanLongitudes.P];
    for (int i = 0; i < rates.length; i++) {
      speed += multiples[i] * rates[i];
    }
    this.speedDegreesPerHour = speed;
  }

  /**
   * Makes a constituent from the multiples of its six angles.
   *
   * @param name what to call it
   * @param multiples multiples of τ, s, h, p, N′ and p₁, six numbers in [-40, 40]
   * @param quarterTurns quarter turns to add to the angle, any whole number; 1 is +90°, 3 is -90°
   * @param like a constituent that is no compound and whose node factor it shares in Schureman's
   *     scheme: O1 for σ1, a tide of the sun such as S2 for one that the moon's node does not
   *     touch; Foreman's scheme knows a constituent by its multiples
   * @return the constituent
   * @throws IllegalArgumentException if the name is empty, {@code like} is a compound, or there are
   *     not six multiples in range
   */
  public static Constituent ofMultiples(
      String name, int[] multiples, int quarterTurns, Constituent like) {
    return ofMultiples(name, multiples, quarterTurns, like.simpleFamily());
  }

  /** As {@link #ofMultiples(String, int[], int, Constituent)}, by the node factor itself. */
  static Constituent ofMultiples(
      String name, int[] multiples, int quarterTurns, NodeFamily family) {
    if (multiples.length != MeanLongitudes.COUNT) {
      throw new IllegalArgumentException(
          "multiples of a constituent must be 6, of tau, s, h, p, N' and p1, but were "
              + multiples.length);
    }
    return new Constituent(name, multiples.clone(), quarterTurns, family, List.of());
  }

  /**
   * Makes a constituent from its Doodson number.
   *
   * @param name what to call it
   * @param doodsonNumber six digits as in {@code 255.555}, with or without the point: the multiple
   *     of τ as it stands, the others with 5 added; X is ten and E eleven
   * @param quarterTurns quarter turns to add to the angle, which a Doodson number does not give
   * @param like a constituent that is no compound and whose node factor it shares in Schureman's
   *     scheme: O1 for σ1, a tide of the sun such as S2 for one that the moon's node does not
   *     touch; Foreman's scheme knows a constituent by its multiples
   * @return the constituent
   * @throws IllegalArgumentException if the name is empty, {@code like} is a compound, or the
   *     number cannot be read
   */
  public static Constituent ofDoodson(
      String name, String doodsonNumber, int quarterTurns, Constituent like) {
    return ofDoodson(name, doodsonNumber, quarterTurns, like.simpleFamily());
  }

  /** As {@link #ofDoodson(String, String, int, Constituent)}, by the node factor itself. */
  static Constituent ofDoodson(
      String name, String doodsonNumber, int quarterTurns, NodeFamily family) {
    String digits = doodsonNumber.replace(".", "");
    int[] multiples = new int[MeanLongitudes.COUNT];
    boolean readable = digits.length() == multiples.length;
    for (int i = 0; readable && i < multiples.length; i++) {
      multiples[i] = DIGITS.indexOf(digits.charAt(i)) - (i == 0 ? 0 : DOODSON_ADDED);
      readable = DIGITS.indexOf(digits.charAt(i)) >= 0;
    }
    if (!readable) {
      throw new IllegalArgumentException(
          "Doodson number must be six digits like 255.555, but was \"" + doodsonNumber + "\"");
    }
    return new Constituent(name, multiples, quarterTurns, family, List.of());
  }

  /**
   * Makes a compound, as shallow water does: angles add up, and node factors multiply.
   *
   * @param name what to call it
   * @param parts its parts, at least one; a negative number of times subtracts the angle
   * @return the constituent; it is known to every nodal scheme that knows its parts
   * @throws IllegalArgumentException if the name is empty or there are no parts
   */
  public static Constituent compound(String name, Part... parts) {
    if (parts.length == 0) {
      throw new IllegalArgumentException("a compound must have parts, but " + name + " had none");
    }
    int[] multiples = new int[MeanLongitudes.COUNT];
    int quarterTurns = 0;
    List<Part> simple = new ArrayList<>();
    for (Part part : parts) {
      Constituent of = part.constituent;
      for (int i = 0; i < multiples.length; i++) {
        multiples[i] += part.times * of.multiples[i];
      }
      quarterTurns += part.times * of.quarterTurns;
      if (of.isCompound()) {
        of.parts.forEach(p -> simple.add(new Part(part.times * p.times, p.constituent)));
      } else {
        simple.add(part);
      }
    }
    return new Constituent(name, multiples, quarterTurns, NodeFamily.NONE, List.copyOf(simple));
  }

  /**
   * This constituent as a part of a compound.
   *
   * @param times how often it goes into the compound, in [-20, 20], not 0
   * @return the part
   * @throws IllegalArgumentException if {@code times} is out of range
   */
  public Part times(int times) {
    return new Part(times, this);
  }

  /**
   * What it is called.
   *
   * @return the name, such as {@code M2}
   */
  public String name() {
    return name;
  }

  /**
   * How often one of the six angles goes into V.
   *
   * @param angle index of the angle, in [0, 5]: τ, s, h, p, N′, p₁
   * @return the multiple
   * @throws IndexOutOfBoundsException if {@code angle} is not in [0, 5]
   */
  public int multiple(int angle) {
    return multiples[Objects.checkIndex(angle, MeanLongitudes.COUNT)];
  }

  /**
   * How often it rises and falls in a lunar day: 0 long-period, 1 diurnal, 2 semi-diurnal.
   *
   * @return the multiple of τ
   */
  public int species() {
    return multiples[MeanLongitudes.TAU];
  }

  /**
   * Quarter turns in V besides the six angles.
   *
   * @return 0, 1, 2 or 3; 1 is +90°
   */
  public int quarterTurns() {
    return quarterTurns;
  }

  /** Its node factor in Schureman's scheme; NONE for a compound, which takes those of its parts. */
  NodeFamily family() {
    return family;
  }

  private NodeFamily simpleFamily() {
    if (isCompound()) {
      throw new IllegalArgumentException(
          "a node factor must be that of a constituent of the moon or sun itself, but "
              + name
              + " is a compound");
    }
    return family;
  }

  /**
   * What a compound is made of.
   *
   * @return the parts, none of them a compound; empty for a constituent of the moon or sun itself
   */
  public List<Part> parts() {
    return parts;
  }

  /**
   * Whether it is made of other constituents.
   *
   * @return true for a compound
   */
  public boolean isCompound() {
    return !parts.isEmpty();
  }

  /**
   * How fast it turns, at noon UTC on 1 January 2000; a century changes it by less than 3e-8.
   *
   * <p>For Schureman's M1 this is the speed 14.4966939 at which official predictions advance it,
   * not that of its V alone: the angle Q in its nodal correction follows the moon's perigee.
   *
   * @return degrees an hour
   */
  public double speedDegreesPerHour() {
    return speedDegreesPerHour;
  }

  /** Its angle V at Greenwich, degrees, in [0, 360), without nodal correction. */
  double argumentDegrees(MeanLongitudes longitudes, double epochSeconds) {
    double[] angles = new double[MeanLongitudes.COUNT];
    longitudes.at(epochSeconds, angles, 0);
    double argument = argumentDegrees(angles);
    return argument - 360.0 * Math.floor(argument / 360.0);
  }

  /** V of six angles in degrees, not reduced. */
  double argumentDegrees(double[] angles) {
    double sum = 90.0 * quarterTurns;
    for (int i = 0; i < multiples.length; i++) {
      sum += multiples[i] * angles[i];
    }
    return sum;
  }

  /** How often the moon's perigee goes into the nodal angle in the long run. */
  int perigeeInNodalAngle() {
    return family == NodeFamily.M1 ? 1 : 0;
  }

  /** Whether another constituent's V is made of the same six multiples. */
  boolean hasMultiplesOf(Constituent other) {
    return Arrays.equals(multiples, other.multiples);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Constituent that
        && name.equals(that.name)
        && Arrays.equals(multiples, that.multiples)
        && quarterTurns == that.quarterTurns
        && family == that.family
        && parts.equals(that.parts);
  }

  @Override
  public int hashCode() {
    return 31 * name.hashCode() + Arrays.hashCode(multiples);
  }

  /** The name. */
  @Override
  public String toString() {
    return name;
  }

  /**
   * A constituent and how often it goes into a compound.
   *
   * <pre>{@code
   * Constituent.Part twice = Constituents.M2.times(2);
   * }</pre>
   *
   * @param times how often, in [-20, 20], not 0
   * @param constituent which constituent
   */
  public record Part(int times, Constituent constituent) implements Serializable {

    private static final long serialVersionUID = 1L;
    private static final int GREATEST = 20;

    /**
     * Takes both parts.
     *
     * @param times how often
     * @param constituent which constituent
     * @throws IllegalArgumentException if {@code times} is 0 or out of range
     */
    public Part {
      Objects.requireNonNull(constituent, "constituent");
      if (times == 0 || Math.abs(times) > GREATEST) {
        throw new IllegalArgumentException(
            "times of a part must be in [-20, 20] and not 0, but was " + times);
      }
    }
  }
}
