package org.ferryglide.tide.harmonic;

import java.io.Serializable;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.note.Note;
import org.ferryglide.tide.height.MeanRanges;

/**
 * What kind of tide a place has, from its four main constituents: how diurnal it is, how late its
 * springs come, and how large spring and neap ranges are.
 *
 * <pre>{@code
 * TideCharacter character = TideCharacter.of(constants);
 * boolean twelfthsMayBeUsed = character.kind() == TideCharacter.Kind.SEMI_DIURNAL;
 * Found<SpringNeap> dates =
 *     SpringNeap.fromMoon(character.ageOfTide().orElse(Duration.ofDays(2)), from, until);
 * }</pre>
 */
public final class TideCharacter implements Serializable {

  private static final long serialVersionUID = 1L;

  private final double formNumber;
  private final double m2;
  private final double s2;

  /** Hours from new or full moon to springs; NaN without M2 or S2. */
  private final double ageHours;

  private TideCharacter(double formNumber, double m2, double s2, double ageHours) {
    this.formNumber = formNumber;
    this.m2 = m2;
    this.s2 = s2;
    this.ageHours = ageHours;
  }

  /**
   * The character of a place.
   *
   * @param constants its constants of heights
   * @return the character; what the constants lack counts as 0
   * @throws IllegalArgumentException if M2, S2, K1 and O1 are all lacking or 0
   */
  public static TideCharacter of(HarmonicConstants constants) {
    double m2 = constants.amplitude("M2");
    double s2 = constants.amplitude("S2");
    double diurnal = constants.amplitude("K1") + constants.amplitude("O1");
    if (m2 + s2 + diurnal == 0.0) {
      throw new IllegalArgumentException(
          "constants must have one of M2, S2, K1 and O1 to tell the character of a tide");
    }
    double age = Double.NaN;
    if (m2 > 0.0 && s2 > 0.0) {
      double lead = lag(constants, "S2") - lag(constants, "M2");
      age =
          Math.IEEEremainder(lead, 360.0)
              / (Constituents.S2.speedDegreesPerHour() - Constituents.M2.speedDegreesPerHour());
    }
    return new TideCharacter(diurnal / (m2 + s2), m2, s2, age);
  }

  private static double lag(HarmonicConstants constants, String name) {
    return constants.constant(name).map(HarmonicConstant::greenwichLagDegrees).orElse(Double.NaN);
  }

  /**
   * The form number, (K1 + O1) / (M2 + S2).
   *
   * @return not negative; infinite for a tide without M2 and S2
   */
  public double formNumber() {
    return formNumber;
  }

  /**
   * The kind of tide by its form number.
   *
   * @return the kind
   */
  public Kind kind() {
    for (Kind kind : Kind.values()) {
      if (formNumber <= kind.greatestFormNumber) {
        return kind;
      }
    }
    return Kind.DIURNAL;
  }

  /**
   * The age of the tide: how long after new and full moon springs come on average, (lag of S2 less
   * lag of M2) divided by the difference of their speeds.
   *
   * @return the age to the nearest minute, within ±7.4 days, negative where springs come before the
   *     moon; empty without M2 or S2
   */
  public Optional<Duration> ageOfTide() {
    return Double.isNaN(ageHours)
        ? Optional.empty()
        : Optional.of(Duration.ofMinutes(Math.round(60.0 * ageHours)));
  }

  /**
   * The mean ranges at springs and neaps, 2 (M2 + S2) and 2 |M2 - S2|.
   *
   * @return the ranges; empty without M2 or S2
   */
  public Optional<MeanRanges> meanRanges() {
    return m2 > 0.0 && s2 > 0.0
        ? Optional.of(
            new MeanRanges(
                Distance.ofMetres(2.0 * (m2 + s2)), Distance.ofMetres(2.0 * Math.abs(m2 - s2))))
        : Optional.empty();
  }

  /**
   * What a user of these figures should know.
   *
   * @return a caution where the tide is not semi-diurnal; unmodifiable
   */
  public List<Note> notes() {
    return kind() == Kind.SEMI_DIURNAL
        ? List.of()
        : List.of(
            Note.caution(
                    "tide.not-semi-diurnal",
                    "The diurnal tide is large here: springs and neaps by the moon's phase, mean"
                        + " ranges and the rule of twelfths mislead.")
                .with("formNumber", formNumber));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TideCharacter that
        && Double.compare(formNumber, that.formNumber) == 0
        && Double.compare(m2, that.m2) == 0
        && Double.compare(s2, that.s2) == 0
        && Double.compare(ageHours, that.ageHours) == 0;
  }

  @Override
  public int hashCode() {
    return Objects.hash(formNumber, m2, s2, ageHours);
  }

  /** The form number. */
  @Override
  public String toString() {
    return "tide of form number " + formNumber;
  }

  /**
   * Kinds of tide by form number, with the limits in general use: 0.25, 1.5 and 3 (common practice,
   * no source).
   *
   * <pre>{@code
   * boolean tablesOnly = character.kind() == TideCharacter.Kind.DIURNAL;
   * }</pre>
   */
  public enum Kind {
    /** Two high waters a day of nearly the same height; form number up to 0.25. */
    SEMI_DIURNAL(0.25),
    /** Two high waters a day of different height; form number up to 1.5. */
    MIXED_MAINLY_SEMI_DIURNAL(1.5),
    /** Sometimes one high water a day, sometimes two very different ones; form number up to 3. */
    MIXED_MAINLY_DIURNAL(3.0),
    /** One high water a day as a rule; form number above 3. */
    DIURNAL(Double.POSITIVE_INFINITY);

    private final double greatestFormNumber;

    Kind(double greatestFormNumber) {
      this.greatestFormNumber = greatestFormNumber;
    }
  }
}
