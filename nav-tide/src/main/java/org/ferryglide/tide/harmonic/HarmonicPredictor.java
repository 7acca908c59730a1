package org.ferryglide.tide.harmonic;

import java.io.Serializable;
import java.time.Instant;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicReference;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.ToDoubleFunction;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.basics.EpochSeconds;

/**
 * A series predicted from harmonic constants, prepared for many questions: heights of the tide, or
 * one component of a tidal stream, in the unit of its constants.
 *
 * <pre>{@code
 * HarmonicPredictor predictor = HarmonicPredictor.of(constants, NodalConvention.MID_YEAR);
 * double height = predictor.at(Instant.parse("2026-06-01T09:30:00Z"));
 * double[] minutes = new double[1440];
 * predictor.fill(epochSeconds, 60.0, minutes.length, minutes, 0);
 * }</pre>
 *
 * <p>It answers for the years 1800 to 2199 and gives NaN elsewhere. Immutable and safe to share; it
 * remembers what it prepared for the years asked about last.
 *
 * <p>Accuracy of the arithmetic, for constants of metres: single values agree with the sum of
 * cosines in the mid-year convention to 1e-10; values by {@link #fill} to 1e-9. At the instant's
 * nodes both agree to 1e-7 with corrections taken anew for every value. Measured over a year of 37
 * constituents of Anchorage, range 10 m. With corrections held at one instant, rounding grows to
 * 1e-9 some decades from it.
 */
public final class HarmonicPredictor implements Serializable {

  private static final long serialVersionUID = 1L;

  private static final double FIRST_SECONDS = CalendarYears.startSeconds(1800);
  private static final double END_SECONDS = CalendarYears.startSeconds(2200);

  /** How many stretches are remembered; a power of two. */
  private static final int REMEMBERED = 16;

  private final HarmonicConstants constants;
  private final NodalConvention convention;
  private final transient TermsMaker maker;
  private final transient AtomicReferenceArray<Terms> remembered;
  private final transient AtomicReference<EvenSampler> sampler;

  private HarmonicPredictor(HarmonicConstants constants, NodalConvention convention) {
    this.constants = constants;
    this.convention = Objects.requireNonNull(convention, "convention");
    this.maker = new TermsMaker(constants, convention);
    this.remembered = new AtomicReferenceArray<>(REMEMBERED);
    this.sampler = new AtomicReference<>();
  }

  /**
   * Prepares a prediction.
   *
   * @param constants the constants of the series
   * @param convention when its nodal corrections are taken
   * @return the predictor
   */
  public static HarmonicPredictor of(HarmonicConstants constants, NodalConvention convention) {
    return new HarmonicPredictor(constants, convention);
  }

  private Object readResolve() {
    return new HarmonicPredictor(constants, convention);
  }

  /**
   * What is predicted from.
   *
   * @return the constants
   */
  public HarmonicConstants constants() {
    return constants;
  }

  /**
   * When the nodal corrections are taken.
   *
   * @return the convention
   */
  public NodalConvention convention() {
    return convention;
  }

  /**
   * The earliest time with an answer.
   *
   * @return seconds since 1970-01-01T00:00:00Z
   */
  public double startSeconds() {
    return FIRST_SECONDS;
  }

  /**
   * The first time after all those with an answer.
   *
   * @return seconds since 1970-01-01T00:00:00Z
   */
  public double endSeconds() {
    return END_SECONDS;
  }

  /**
   * The series at an instant.
   *
   * @param instant when
   * @return in the unit of the constants
   * @throws IllegalArgumentException if the instant is outside the years 1800 to 2199
   */
  public double at(Instant instant) {
    double seconds = EpochSeconds.of(instant);
    if (!(seconds >= FIRST_SECONDS && seconds < END_SECONDS)) {
      throw new IllegalArgumentException(
          "instant must be in the years 1800 to 2199, but was " + instant);
    }
    return value(seconds);
  }

  /**
   * The series at a time, without allocation once its year is prepared.
   *
   * @param epochSeconds seconds since 1970-01-01T00:00:00Z
   * @return in the unit of the constants; NaN outside the years 1800 to 2199 and for NaN
   */
  public double value(double epochSeconds) {
    return epochSeconds >= FIRST_SECONDS && epochSeconds < END_SECONDS
        ? terms(epochSeconds).value(epochSeconds)
        : Double.NaN;
  }

  /**
   * How fast the series changes at a time, without allocation once its year is prepared.
   *
   * @param epochSeconds seconds since 1970-01-01T00:00:00Z
   * @return in the unit of the constants a second; NaN outside the years 1800 to 2199 and for NaN
   */
  public double rate(double epochSeconds) {
    return epochSeconds >= FIRST_SECONDS && epochSeconds < END_SECONDS
        ? terms(epochSeconds).rate(epochSeconds)
        : Double.NaN;
  }

  /**
   * Values at even steps, much faster than one by one: blocks of time are computed at a few
   * Chebyshev points and interpolated, with an error below 1e-9 for amplitudes of metres.
   *
   * @param startEpochSeconds time of the first value, seconds since 1970-01-01T00:00:00Z
   * @param stepSeconds time between values, seconds, above 0
   * @param count how many
   * @param out receives the values, in the unit of the constants; NaN for times outside the years
   *     1800 to 2199, or all of them if the start is NaN
   * @param offset index of the first value
   * @throws IllegalArgumentException if {@code stepSeconds} is NaN, infinite or not above 0
   * @throws IndexOutOfBoundsException if {@code out} has no room for them
   */
  public void fill(
      double startEpochSeconds, double stepSeconds, int count, double[] out, int offset) {
    Arguments.positive(stepSeconds, "step", "seconds");
    Objects.checkFromIndexSize(offset, count, out.length);
    int until = offset + count;
    EvenSampler last = sampler.get();
    if (last == null || last.stepSeconds() != stepSeconds) {
      last = EvenSampler.of(constants, stepSeconds);
      sampler.set(last);
    }
    int i = offset;
    while (i < until) {
      double time = startEpochSeconds + (i - offset) * stepSeconds;
      if (!(time >= FIRST_SECONDS && time < END_SECONDS)) {
        out[i++] = Double.NaN;
        continue;
      }
      Terms terms = terms(time);
      double room = Math.ceil((terms.endSeconds - time) / stepSeconds);
      int end = room < until - i ? i + Math.max(1, (int) room) : until;
      last.fill(terms, time, out, i, end);
      i = end;
    }
  }

  private double greatest(double fromSeconds, double toSeconds, ToDoubleFunction<Terms> bound) {
    double greatest = 0.0;
    double time = Math.max(fromSeconds, FIRST_SECONDS);
    while (time < Math.min(toSeconds, END_SECONDS)) {
      Terms terms = terms(time);
      greatest = Math.max(greatest, bound.applyAsDouble(terms));
      time = terms.endSeconds;
    }
    return greatest;
  }

  /**
   * A bound on how far the series can be from its mean.
   *
   * @param fromSeconds start of the span, seconds since 1970
   * @param toSeconds end of the span, seconds since 1970
   * @return upper bound, in the unit of the constants; it need not be reached
   */
  public double greatestSwing(double fromSeconds, double toSeconds) {
    return greatest(fromSeconds, toSeconds, Terms::greatestSwing);
  }

  /**
   * A bound on the second derivative of the series, from which a search for its turns knows where
   * none can be.
   *
   * @param fromSeconds start of the span, seconds since 1970
   * @param toSeconds end of the span, seconds since 1970
   * @return upper bound of the magnitude, in the unit of the constants per second squared
   */
  public double greatestRateChange(double fromSeconds, double toSeconds) {
    return greatest(fromSeconds, toSeconds, Terms::greatestRateChange);
  }

  /**
   * The next time at which the series makes a step.
   *
   * @param epochSeconds seconds since 1970-01-01T00:00:00Z
   * @return in the mid-year convention the next New Year, UTC, strictly later; otherwise positive
   *     infinity, as there is none
   */
  public double nextBreakAfter(double epochSeconds) {
    if (!convention.equals(NodalConvention.MID_YEAR)
        || !(epochSeconds >= FIRST_SECONDS && epochSeconds < END_SECONDS)) {
      return Double.POSITIVE_INFINITY;
    }
    return CalendarYears.startSeconds(CalendarYears.yearOf(epochSeconds) + 1);
  }

  /** Its constants and when their nodes are taken. */
  @Override
  public String toString() {
    return "prediction from " + constants + ", nodes " + convention;
  }

  private Terms terms(double seconds) {
    int slot = maker.roughIndex(seconds) & (REMEMBERED - 1);
    Terms terms = remembered.get(slot);
    if (terms != null && terms.contains(seconds)) {
      return terms;
    }
    Terms made = maker.around(seconds);
    remembered.set(slot, made);
    return made;
  }
}
