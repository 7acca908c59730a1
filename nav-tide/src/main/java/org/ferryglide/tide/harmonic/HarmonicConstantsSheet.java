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
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.Note;
import org.ferryglide.tide.sheet.Sheet;
import org.ferryglide.tide.sheet.TideJudgements;

/** Reads and writes constants as a sheet; {@link HarmonicConstants#read} tells its columns. */
final class HarmonicConstantsSheet {
  private static final String NAME = "constituent";
  private static final String METRES = "amplitude_m";
  private static final String METRES_PER_SECOND = "amplitude_m_s";
  private static final String KNOTS = "amplitude_kn";
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

  /** Units of the series in one unit of the sheet. */
  private final double unit;

  private HarmonicConstantsSheet(Sheet sheet, NodalScheme scheme, List<Constituent> own) {
    this.sheet = sheet;
    this.scheme = scheme;
    this.own = own;
    this.amplitudeHeading = onlyOneOf("one amplitude", METRES, METRES_PER_SECOND, KNOTS);
    this.unit = amplitudeHeading.equals(KNOTS) ? Speed.METRES_PER_SECOND_PER_KNOT : 1.0;
    this.lagHeading = onlyOneOf("one kind of phase lag", GREENWICH, BY_ZONE, LOCAL);
  }

  static HarmonicConstants read(
      String source, Reader reader, NodalScheme scheme, List<Constituent> own) throws IOException {
    Sheet sheet =
        Sheet.read(
            source,
            reader,
            List.of(NAME),
            List.of(METRES, METRES_PER_SECOND, KNOTS, GREENWICH, BY_ZONE, ZONE, LOCAL, LONGITUDE));
    return new HarmonicConstantsSheet(sheet, scheme, own).constants();
  }

  static void write(HarmonicConstants constants, Appendable out) throws IOException {
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
      if (isMean(name)) {
        mean = unit * row.number(amplitudeHeading, -GREATEST_MEAN, GREATEST_MEAN).orElse(0.0);
        if (!seen.add(MEAN)) {
          row.problem(NAME, "the mean Z0 must occur once");
        }
        continue;
      }
      Optional<Constituent> constituent = find(row, name);
      OptionalDouble given = row.number(amplitudeHeading, 0.0, GREATEST_AMPLITUDE);
      double amplitude = unit * given.orElse(0.0);
      doubt(row, amplitude);
      Optional<LagOf> lag = lag(row);
      if (constituent.isPresent() && !seen.add(constituent.get().name())) {
        row.problem(NAME, "each constituent must occur once, but " + name + " stands again");
      } else if (constituent.isPresent() && given.isPresent() && lag.isPresent()) {
        list.add(lag.get().constant(constituent.get(), amplitude));
      }
    }
    if (sheet.rows().stream().allMatch(row -> isMean(row.text(NAME)))) {
      sheet.problem("a sheet of constants must have at least one constituent");
    }
    sheet.refuseIfFaulty();
    return HarmonicConstants.of(scheme, mean, list).withNotes(sheet.doubts());
  }

  private static boolean isMean(String name) {
    return name.equalsIgnoreCase(MEAN);
  }

  private void doubt(Sheet.Row row, double amplitude) {
    if (amplitudeHeading.equals(METRES)) {
      if (amplitude > TideJudgements.AMPLITUDE_BEYOND_KNOWN.threshold()) {
        row.doubt(
            METRES,
            TideJudgements.AMPLITUDE_BEYOND_KNOWN,
            Note.information(
                    "doubt.amplitude",
                    amplitude + " m of one constituent make a larger tide than any known.")
                .with("amplitude", Double.toString(amplitude)));
      }
    } else if (Speed.ofMetresPerSecond(amplitude).knots()
        > TideJudgements.RATE_BEYOND_KNOWN.threshold()) {
      row.doubt(
          amplitudeHeading,
          TideJudgements.RATE_BEYOND_KNOWN,
          Note.information(
                  "doubt.constituent-rate",
                  row.text(amplitudeHeading)
                      + (amplitudeHeading.equals(KNOTS) ? " kn" : " m/s")
                      + " of one constituent make a faster stream than is likely.")
              .with("rate", row.text(amplitudeHeading))
              .with("rateUnit", amplitudeHeading.equals(KNOTS) ? "kn" : "m/s"));
    }
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

  /** A constant by the lag of a row, once constituent and amplitude are known. */
  private interface LagOf {
    HarmonicConstant constant(Constituent constituent, double amplitude);
  }

  private Optional<LagOf> lag(Sheet.Row row) {
    OptionalDouble given = row.number(lagHeading, -360.0, 720.0);
    double degrees = given.orElse(Double.NaN);
    if (lagHeading.equals(BY_ZONE)) {
      Optional<ZoneOffset> zone =
          row.read(ZONE, text -> Optional.of(ZoneOffset.of(text)), Optional.empty());
      return given.isPresent() && zone.isPresent()
          ? Optional.of((of, size) -> HarmonicConstant.ofZone(of, size, degrees, zone.get()))
          : Optional.empty();
    }
    if (lagHeading.equals(LOCAL)) {
      OptionalDouble longitude = row.number(LONGITUDE, -180.0, 180.0);
      return given.isPresent() && longitude.isPresent()
          ? Optional.of(
              (of, size) -> HarmonicConstant.ofLocal(of, size, degrees, longitude.getAsDouble()))
          : Optional.empty();
    }
    return given.isPresent()
        ? Optional.of((of, size) -> HarmonicConstant.ofGreenwich(of, size, degrees))
        : Optional.empty();
  }
}
