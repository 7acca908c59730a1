package org.ferryglide.tide.harmonic;

import java.io.IOException;
import java.io.Reader;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.tide.sheet.Sheet;

/**
 * A station's constants as a sheet: one line a constituent, the reference of its phase lags in the
 * heading.
 *
 * <pre>
 * constituent,amplitude_m,phase_lag_greenwich_deg
 * Z0,2.41,
 * M2,1.52,109.2
 * S2,0.53,151.0
 * </pre>
 *
 * <p>Columns: {@code constituent}, a name that the nodal scheme lists, or {@code Z0} for the mean;
 * {@code amplitude_m}, metres (for a component of a stream {@code amplitude_m_s}, metres a second);
 * and exactly one kind of phase lag in degrees: {@code phase_lag_greenwich_deg}; or {@code
 * phase_lag_zone_deg} with {@code zone}, the offset of its clock, for example {@code -07:00}; or
 * {@code phase_lag_local_deg} with {@code longitude_deg}, east positive. The mean has no phase lag;
 * without a line for it the mean is 0.
 *
 * <pre>{@code
 * HarmonicConstants constants =
 *     HarmonicConstantsSheet.read("skarra.csv", reader, NodalScheme.schureman(), List.of());
 * }</pre>
 */
public final class HarmonicConstantsSheet {
  private static final String NAME = "constituent";
  private static final String METRES = "amplitude_m";
  private static final String METRES_PER_SECOND = "amplitude_m_s";
  private static final String GREENWICH = "phase_lag_greenwich_deg";
  private static final String BY_ZONE = "phase_lag_zone_deg";
  private static final String ZONE = "zone";
  private static final String LOCAL = "phase_lag_local_deg";
  private static final String LONGITUDE = "longitude_deg";
  private static final String MEAN = "Z0";
  private static final double GREATEST_AMPLITUDE = 30.0;
  private static final double GREATEST_MEAN = 100.0;

  private final Sheet sheet;
  private final NodalScheme scheme;
  private final List<Constituent> own;
  private final String amplitudeHeading;
  private final String lagHeading;

  private HarmonicConstantsSheet(Sheet sheet, NodalScheme scheme, List<Constituent> own) {
    this.sheet = sheet;
    this.scheme = scheme;
    this.own = own;
    this.amplitudeHeading = onlyOneOf("one amplitude", METRES, METRES_PER_SECOND);
    this.lagHeading = onlyOneOf("one kind of phase lag", GREENWICH, BY_ZONE, LOCAL);
  }

  /**
   * Reads a sheet.
   *
   * @param source what to call the sheet in messages, usually the file's name
   * @param reader the sheet; left open
   * @param scheme the nodal scheme they were found with, which tells what names mean
   * @param own constituents that the scheme does not list but knows, found before listed ones
   * @return the constants
   * @throws IOException if the sheet cannot be read
   * @throws InputFormatException listing everything wrong with the sheet by line and column
   */
  public static HarmonicConstants read(
      String source, Reader reader, NodalScheme scheme, List<Constituent> own) throws IOException {
    Sheet sheet =
        Sheet.read(
            source,
            reader,
            List.of(NAME),
            List.of(METRES, METRES_PER_SECOND, GREENWICH, BY_ZONE, ZONE, LOCAL, LONGITUDE));
    return new HarmonicConstantsSheet(sheet, scheme, own).constants();
  }

  /**
   * Writes constants of heights as a sheet that {@link #read} reads, lags referred to Greenwich.
   *
   * <p>Numbers are written as they are held, so that reading gives equal amplitudes and Greenwich
   * lags back. Constituents that the scheme does not list are written by name, and reading them
   * takes the same constituents again.
   *
   * @param constants the constants, metres
   * @param out where to write; neither flushed nor closed
   * @throws IOException if it cannot be written
   */
  public static void write(HarmonicConstants constants, Appendable out) throws IOException {
    out.append(NAME + "," + METRES + "," + GREENWICH + "\n");
    out.append(MEAN + "," + constants.mean() + ",\n");
    for (HarmonicConstant constant : constants.list()) {
      out.append(constant.constituent().name())
          .append(",")
          .append(Double.toString(constant.amplitude()))
          .append(",")
          .append(Double.toString(constant.greenwichLagDegrees()))
          .append("\n");
    }
  }

  private String onlyOneOf(String what, String... headings) {
    List<String> used = new ArrayList<>();
    for (String heading : headings) {
      if (sheet.rows().stream().anyMatch(row -> row.has(heading))) {
        used.add(heading);
      }
    }
    if (used.size() != 1) {
      sheet.problem(
          "a sheet of constants must give "
              + what
              + " of "
              + List.of(headings)
              + ", but gave "
              + (used.isEmpty() ? "none" : used.toString()));
      sheet.refuseIfFaulty();
    }
    return used.get(0);
  }

  private HarmonicConstants constants() {
    List<HarmonicConstant> list = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    double mean = 0.0;
    for (Sheet.Row row : sheet.rows()) {
      String name = row.text(NAME);
      if (name.equals(MEAN)) {
        mean = row.number(amplitudeHeading, -GREATEST_MEAN, GREATEST_MEAN).orElse(0.0);
        if (!seen.add(MEAN)) {
          row.problem(NAME, "the mean Z0 must stand once");
        }
        continue;
      }
      Optional<Constituent> constituent = find(row, name);
      OptionalDouble amplitude = row.number(amplitudeHeading, 0.0, GREATEST_AMPLITUDE);
      Optional<PhaseLag> lag = lag(row);
      if (constituent.isPresent() && !seen.add(constituent.get().name())) {
        row.problem(NAME, "each constituent must stand once, but " + name + " stands again");
      } else if (constituent.isPresent() && amplitude.isPresent() && lag.isPresent()) {
        list.add(new HarmonicConstant(constituent.get(), amplitude.getAsDouble(), lag.get()));
      }
    }
    if (sheet.rows().stream().allMatch(row -> row.text(NAME).equals(MEAN))) {
      sheet.problem("a sheet of constants must have at least one constituent");
    }
    sheet.refuseIfFaulty();
    return HarmonicConstants.of(scheme, mean, list);
  }

  private Optional<Constituent> find(Sheet.Row row, String name) {
    Optional<Constituent> found = ConstituentNames.find(name, own);
    if (!found.isPresent()) {
      found = scheme.constituent(name);
    }
    if (!found.isPresent() || !scheme.knows(found.get())) {
      row.problem(
          NAME,
          "must be a constituent that the scheme of "
              + scheme.name()
              + " knows, but was \""
              + name
              + "\"");
      return Optional.empty();
    }
    return found;
  }

  private Optional<PhaseLag> lag(Sheet.Row row) {
    OptionalDouble degrees = row.number(lagHeading, -360.0, 720.0);
    if (lagHeading.equals(BY_ZONE)) {
      Optional<ZoneOffset> zone =
          row.read(ZONE, text -> Optional.of(ZoneOffset.of(text)), Optional.empty());
      return degrees.isPresent() && zone.isPresent()
          ? Optional.of(new ZonePhaseLag(degrees.getAsDouble(), zone.get()))
          : Optional.empty();
    }
    if (lagHeading.equals(LOCAL)) {
      OptionalDouble longitude = row.number(LONGITUDE, -180.0, 180.0);
      return degrees.isPresent() && longitude.isPresent()
          ? Optional.of(new LocalPhaseLag(degrees.getAsDouble(), longitude.getAsDouble()))
          : Optional.empty();
    }
    return degrees.isPresent()
        ? Optional.of(new GreenwichPhaseLag(degrees.getAsDouble()))
        : Optional.empty();
  }
}
