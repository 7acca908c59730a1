package org.ferryglide.tide.harmonic;

import java.io.IOException;
import java.io.Reader;
import java.io.Serializable;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.Note;
import org.ferryglide.tide.sheet.Sheet;

/**
 * The harmonic constants of one series at one place: its mean, and amplitude and phase lag of every
 * constituent, with the nodal scheme they were found with.
 *
 * <p>Heights have amplitudes in metres, a component of a stream in metres a second; the constants
 * do not record which.
 *
 * <pre>{@code
 * HarmonicConstants constants =
 *     HarmonicConstants.of(
 *         NodalScheme.schureman(),
 *         2.41,
 *         List.of(
 *             new HarmonicConstant(Constituents.M2, 1.52, 109.2),
 *             new HarmonicConstant(Constituents.S2, 0.53, 151.0)));
 * }</pre>
 */
public final class HarmonicConstants implements Serializable {

  private static final long serialVersionUID = 1L;

  private final NodalScheme scheme;
  private final double mean;

  @SuppressWarnings("serial") // List.copyOf gives a serializable list of serializable constants
  private final List<HarmonicConstant> list;

  @SuppressWarnings("serial") // List.copyOf gives a serializable list of serializable notes
  private final List<Note> notes;

  private HarmonicConstants(
      NodalScheme scheme, double mean, List<HarmonicConstant> list, List<Note> notes) {
    this.notes = List.copyOf(notes);
    this.scheme = Objects.requireNonNull(scheme, "scheme");
    this.mean = Arguments.finite(mean, "mean", "units of the series");
    this.list = List.copyOf(list);
    Set<String> names = new HashSet<>();
    for (HarmonicConstant constant : this.list) {
      Constituent constituent = constant.constituent();
      if (!names.add(constituent.name())) {
        throw new IllegalArgumentException(
            "each constituent must occur once, but " + constituent + " stands twice");
      }
      if (!scheme.knows(constituent)) {
        throw CompoundNodes.unknown(constituent, scheme);
      }
    }
  }

  /**
   * Puts constants together.
   *
   * @param scheme the nodal scheme they were found with
   * @param mean the mean of the series, in its unit: for heights, mean level above the datum
   * @param list amplitude and lag of every constituent, each constituent once
   * @return the constants
   * @throws IllegalArgumentException if {@code mean} is NaN or infinite, a constituent occurs
   *     twice, or the scheme does not know one
   */
  public static HarmonicConstants of(NodalScheme scheme, double mean, List<HarmonicConstant> list) {
    return new HarmonicConstants(scheme, mean, list, List.of());
  }

  /**
   * Reads a station's constants from a sheet: one line a constituent, the reference of its phase
   * lags in the heading.
   *
   * <pre>
   * constituent,amplitude_m,phase_lag_greenwich_deg
   * Z0,2.41,
   * M2,1.52,109.2
   * S2,0.53,151.0
   * </pre>
   *
   * <p>Columns: {@code constituent}, a name that the nodal scheme lists, or {@code Z0} for the
   * mean; {@code amplitude_m}, metres (for a component of a stream {@code amplitude_m_s}, metres a
   * second, or {@code amplitude_kn}, knots); and exactly one kind of phase lag in degrees: {@code
   * phase_lag_greenwich_deg}; or {@code phase_lag_zone_deg} with {@code zone}, the offset of its
   * clock, for example {@code -07:00}; or {@code phase_lag_local_deg} with {@code longitude_deg},
   * east positive. The mean has no phase lag; without a line for it the mean is 0. Amplitudes
   * larger than any known are doubted in {@link #notes}.
   *
   * @param source what to call the sheet in messages, usually the file's name
   * @param reader the sheet; left open
   * @param scheme the nodal scheme they were found with, which decides what names mean
   * @param own constituents that the scheme does not list but knows, found before listed ones
   * @return the constants
   * @throws IOException if the sheet cannot be read
   * @throws InputFormatException listing everything wrong with the sheet by line and column
   */
  public static HarmonicConstants read(
      String source, Reader reader, NodalScheme scheme, List<Constituent> own) throws IOException {
    return HarmonicConstantsSheet.read(source, reader, scheme, own);
  }

  /**
   * Reads a station's constants from a sheet of listed constituents.
   *
   * @param source what to call the sheet in messages, usually the file's name
   * @param reader the sheet; left open
   * @param scheme the nodal scheme they were found with, which decides what names mean
   * @return the constants
   * @throws IOException if the sheet cannot be read
   * @throws InputFormatException listing everything wrong with the sheet by line and column
   */
  public static HarmonicConstants read(String source, Reader reader, NodalScheme scheme)
      throws IOException {
    return read(source, reader, scheme, List.of());
  }

  /**
   * Reads a station's constants from a file in UTF-8.
   *
   * @param file the file; messages call it by its path
   * @param scheme the nodal scheme they were found with, which decides what names mean
   * @return the constants
   * @throws IOException if the file is not there or cannot be read
   * @throws InputFormatException listing everything wrong with the file by line and column
   */
  public static HarmonicConstants read(Path file, NodalScheme scheme) throws IOException {
    return read(file, scheme, List.of());
  }

  /**
   * Reads a station's constants from a file in UTF-8, of listed constituents and own ones.
   *
   * @param file the file; messages call it by its path
   * @param scheme the nodal scheme they were found with, which decides what names mean
   * @param own constituents that the scheme does not list but knows, found before listed ones
   * @return the constants
   * @throws IOException if the file is not there or cannot be read
   * @throws InputFormatException listing everything wrong with the file by line and column
   */
  public static HarmonicConstants read(Path file, NodalScheme scheme, List<Constituent> own)
      throws IOException {
    try (Reader reader = Sheet.open(file)) {
      return read(file.toString(), reader, scheme, own);
    }
  }

  /**
   * Writes constants of heights as a sheet that {@link #read} reads, lags referred to Greenwich.
   *
   * <p>Numbers are written as they are held, so that reading gives equal amplitudes and Greenwich
   * lags back. Constituents that the scheme does not list are written by name, and reading them
   * takes the same constituents again. Notes are not written.
   *
   * @param out where to write; neither flushed nor closed
   * @throws IOException if it cannot be written
   */
  public void write(Appendable out) throws IOException {
    HarmonicConstantsSheet.write(this, out);
  }

  /**
   * The same constants with more notes.
   *
   * @param more notes to add
   * @return constants whose notes are these and {@code more}
   */
  public HarmonicConstants withNotes(List<Note> more) {
    List<Note> all = new ArrayList<>(notes);
    all.addAll(more);
    return new HarmonicConstants(scheme, mean, list, all);
  }

  /**
   * What a user of the constants should know: what looked wrong in their sheet, what an analysis
   * warned of.
   *
   * @return unmodifiable list
   */
  public List<Note> notes() {
    return notes;
  }

  /**
   * The nodal scheme that the constants belong to.
   *
   * @return the scheme
   */
  public NodalScheme scheme() {
    return scheme;
  }

  /**
   * The mean of the series.
   *
   * @return in the unit of the series
   */
  public double mean() {
    return mean;
  }

  /**
   * All constants in the order they were given.
   *
   * @return unmodifiable list
   */
  public List<HarmonicConstant> list() {
    return list;
  }

  /**
   * The constituents in the order of {@link #list}.
   *
   * @return unmodifiable list
   */
  public List<Constituent> constituents() {
    return List.copyOf(
        list.stream().map(HarmonicConstant::constituent).collect(Collectors.toList()));
  }

  /**
   * The constant of one constituent.
   *
   * @param name name of the constituent, as the scheme understands it
   * @return the constant; empty if there is none
   */
  public Optional<HarmonicConstant> constant(String name) {
    return ConstituentNames.find(name, constituents())
        .map(found -> list.get(constituents().indexOf(found)));
  }

  /**
   * The amplitude of one constituent.
   *
   * @param name name of the constituent
   * @return in the unit of the series; 0 if the constituent is not among the constants
   */
  public double amplitude(String name) {
    return constant(name).map(HarmonicConstant::amplitude).orElse(0.0);
  }

  /**
   * The same constants about another mean.
   *
   * @param newMean the mean of the series, in its unit
   * @return the constants
   * @throws IllegalArgumentException if {@code newMean} is NaN or infinite
   */
  public HarmonicConstants withMean(double newMean) {
    return new HarmonicConstants(scheme, newMean, list, notes);
  }

  /**
   * The same constants without some of the constituents; SA and SSA are mostly weather, and a
   * prediction of the tide alone leaves them out.
   *
   * @param names names of the constituents to leave out; names not among the constants are ignored
   * @return the constants that are left
   */
  public HarmonicConstants without(String... names) {
    List<HarmonicConstant> left = new ArrayList<>(list);
    for (String name : names) {
      constant(name).ifPresent(left::remove);
    }
    return new HarmonicConstants(scheme, mean, left, notes);
  }

  /**
   * The series made larger or smaller, its mean as well.
   *
   * @param factor what to multiply by, not negative
   * @return the constants
   * @throws IllegalArgumentException if {@code factor} is NaN, infinite or negative
   */
  public HarmonicConstants scaledBy(double factor) {
    Arguments.notNegative(factor, "factor", "times");
    List<HarmonicConstant> scaled = new ArrayList<>();
    for (HarmonicConstant c : list) {
      scaled.add(
          new HarmonicConstant(c.constituent(), factor * c.amplitude(), c.greenwichLagDegrees()));
    }
    return new HarmonicConstants(scheme, factor * mean, scaled, notes);
  }

  /**
   * The sum of two series, constituent by constituent.
   *
   * @param other constants of the same scheme
   * @return constants that predict the sum of what the two predict
   * @throws IllegalArgumentException if the schemes differ
   */
  public HarmonicConstants plus(HarmonicConstants other) {
    if (!scheme.equals(other.scheme)) {
      throw new IllegalArgumentException(
          "constants must be of the scheme of "
              + scheme.name()
              + ", but were of "
              + other.scheme.name());
    }
    Map<Constituent, double[]> sums = new LinkedHashMap<>();
    for (HarmonicConstants one : List.of(this, other)) {
      for (HarmonicConstant c : one.list) {
        double[] sum = sums.computeIfAbsent(c.constituent(), none -> new double[2]);
        double lag = Math.toRadians(c.greenwichLagDegrees());
        sum[0] += c.amplitude() * Math.cos(lag);
        sum[1] += c.amplitude() * Math.sin(lag);
      }
    }
    List<HarmonicConstant> added = new ArrayList<>();
    sums.forEach(
        (constituent, sum) ->
            added.add(
                new HarmonicConstant(
                    constituent,
                    Math.hypot(sum[0], sum[1]),
                    Math.toDegrees(Math.atan2(sum[1], sum[0])))));
    return new HarmonicConstants(scheme, mean + other.mean, added, notes).withNotes(other.notes);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof HarmonicConstants that
        && scheme.equals(that.scheme)
        && Double.compare(mean, that.mean) == 0
        && list.equals(that.list)
        && notes.equals(that.notes);
  }

  @Override
  public int hashCode() {
    return Objects.hash(mean, list);
  }

  /** Number of constituents, scheme and mean; not the constants themselves. */
  @Override
  public String toString() {
    return list.size() + " constituents of the scheme of " + scheme.name() + " about " + mean;
  }
}
