package org.ferryglide.tide.folder;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.reckon.ErrorSource;
import org.ferryglide.nav.reckon.Spread;
import org.ferryglide.tide.sheet.Sheet;

/** Reads and writes {@code errors.csv}: standard deviations of what reckoning goes by. */
final class ErrorSheet {
  /** How long an independent error lasts before it is another. */
  private static final String INTERVAL = "drawn anew every";

  private static final Pattern NUMBER_AND_UNIT = Pattern.compile(Words.NUMBER + " ?(°|%|m/s|m)");

  private static final Map<String, ErrorSource> SOURCES = sources();

  private ErrorSheet() {}

  private static Map<String, ErrorSource> sources() {
    Map<String, ErrorSource> sources = new LinkedHashMap<>();
    for (ErrorSource source : ErrorSource.values()) {
      if (source != ErrorSource.START) {
        sources.put(source.text(), source);
      }
    }
    return sources;
  }

  /** Sources left out keep the errors of {@link ErrorModel#usual}. */
  static ErrorModel read(FolderText file) throws IOException {
    Sheet sheet =
        Sheet.read(
            file.source(), file.reader(), List.of("source", "constant", "independent"), List.of());
    List<String> known = new ArrayList<>(SOURCES.keySet());
    known.add(INTERVAL);
    Set<String> seen = new HashSet<>();
    ErrorModel model = ErrorModel.usual();
    for (Sheet.Row row : sheet.rows()) {
      String name = row.text("source");
      if (!known.contains(name)) {
        row.problem(
            "source",
            "must be one of "
                + known
                + ", but was \""
                + name
                + "\""
                + NearName.question(name, known));
      } else if (!seen.add(name)) {
        row.problem("source", name + " stands twice");
      } else {
        model = name.equals(INTERVAL) ? interval(row, model) : spread(row, name, model);
      }
    }
    sheet.refuseIfFaulty();
    return model;
  }

  private static ErrorModel interval(Sheet.Row row, ErrorModel model) {
    if (row.has("independent")) {
      row.problem(
          "independent", "must be empty, since " + INTERVAL + " has one value, under constant");
    }
    return row.read("constant", text -> model.withInterval(Words.duration(text)), model);
  }

  private static ErrorModel spread(Sheet.Row row, String name, ErrorModel model) {
    ErrorSource source = Objects.requireNonNull(SOURCES.get(name));
    Function<String, Optional<Double>> parser =
        text -> Optional.of(number(text, source.unitSign()));
    Optional<Double> constant = row.read("constant", parser, Optional.empty());
    Optional<Double> independent = row.read("independent", parser, Optional.empty());
    return constant.isPresent() && independent.isPresent()
        ? row.read(
            "constant",
            text -> model.with(source, Spread.of(constant.get(), independent.get())),
            model)
        : model;
  }

  private static double number(String text, String unit) {
    Matcher matcher = NUMBER_AND_UNIT.matcher(text);
    if (!matcher.matches() || !matcher.group(2).equals(unit)) {
      throw new IllegalArgumentException(
          "must be a number with its unit, as in "
              + (unit.equals("°") ? "2°" : "2 " + unit)
              + ", but was \""
              + text
              + "\"");
    }
    BigDecimal number = new BigDecimal(matcher.group(1));
    return (unit.equals("%") ? number.movePointLeft(2) : number).doubleValue();
  }

  /** The file that reads as a model. */
  static String text(ErrorModel model) {
    StringBuilder rows = new StringBuilder("source,constant,independent\n");
    SOURCES.forEach(
        (name, source) -> {
          Spread spread = model.spread(source);
          rows.append(name)
              .append(',')
              .append(told(spread.constant(), source.unitSign()))
              .append(',')
              .append(told(spread.independent(), source.unitSign()))
              .append('\n');
        });
    return rows.append(INTERVAL)
        .append(',')
        .append(minutes(model.interval()))
        .append(",\n")
        .toString();
  }

  private static String told(double value, String unit) {
    BigDecimal number = BigDecimal.valueOf(value);
    String plain =
        (unit.equals("%") ? number.movePointRight(2) : number).stripTrailingZeros().toPlainString();
    return unit.equals("°") ? plain + unit : plain + " " + unit;
  }

  /** A share as {@link Words#share} reads it. */
  static String perCent(double share) {
    return told(share, "%");
  }

  /** A length of time as {@link Words#duration} reads it. */
  static String minutes(Duration duration) {
    if (!duration.equals(Duration.ofMinutes(duration.toMinutes()))) {
      throw new IllegalArgumentException(
          "times in a folder must be whole minutes, but one was " + duration);
    }
    long minutes = duration.toMinutes();
    return minutes < 60 ? minutes + " min" : minutes / 60 + " h " + minutes % 60 + " min";
  }
}
