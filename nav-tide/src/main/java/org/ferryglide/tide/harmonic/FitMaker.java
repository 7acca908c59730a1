package org.ferryglide.tide.harmonic;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.ferryglide.nav.basics.Angles;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.nav.note.Note;

/** Carries out one analysis. */
final class FitMaker {
  private static final double HOUR_SECONDS = 3600.0;
  private static final double YEAR_SECONDS = 365.25 * 86400.0;

  private final HarmonicAnalysis options;
  private final ObservedSeries record;

  /** Constituents that are fitted, then those inferred from them. */
  private final List<Constituent> chosen;

  private final Rayleigh rule;
  private final List<Inference> inferences;
  private final Phasors phasors;

  /** Columns before those of the constituents: the mean, and the trend. */
  private final int leading;

  private final double centre;

  /** f, and V + u in degrees, of chosen and inferred constituents at the centre. */
  private final double[] centreCorrections;

  FitMaker(
      HarmonicAnalysis options, ObservedSeries record, List<Constituent> chosen, Rayleigh rule) {
    this.rule = rule;
    this.options = options;
    this.record = record;
    this.chosen = chosen;
    this.inferences = options.inferences();
    this.leading = options.hasTrend() ? 2 : 1;
    this.centre = record.centreSeconds();
    List<Constituent> all = new ArrayList<>(chosen);
    inferences.forEach(inference -> all.add(inference.inferred()));
    NodalConvention convention =
        options.hasNodesOfTheCentre()
            ? NodalConvention.heldAt(record.centre())
            : NodalConvention.AT_INSTANT;
    this.phasors = new Phasors(options.scheme(), convention, all, record.epochSeconds(0));
    this.centreCorrections = new double[2 * all.size()];
    options.scheme().corrections(centre, all, centreCorrections);
    double[] angles = new double[MeanLongitudes.COUNT];
    options.scheme().meanLongitudes().at(centre, angles, 0);
    for (int i = 0; i < all.size(); i++) {
      centreCorrections[2 * i + 1] += all.get(i).argumentDegrees(angles);
    }
  }

  HarmonicFit fit() {
    int columns = leading + 2 * chosen.size();
    if (record.size() <= columns) {
      throw new IllegalArgumentException(
          "a record must have more values than there are figures to find, "
              + columns
              + ", but had "
              + record.size());
    }
    double[] values = new double[record.size()];
    for (int k = 0; k < values.length; k++) {
      values[k] = record.value(k);
    }
    LeastSquares squares = LeastSquares.solve(columns, values, this::row);
    double sum = 0.0;
    for (double residual : squares.residuals) {
      sum += residual * residual;
    }
    double variance = sum / (values.length - columns);
    NoiseBands noise = new NoiseBands(record, squares.residuals, variance, chosen);
    List<FittedConstant> fitted = new ArrayList<>();
    for (int i = 0; i < chosen.size(); i++) {
      addWithInferred(i, squares, variance * noise.strengthAbout(chosen.get(i)), fitted);
    }
    double halfSpan = 0.5 * record.spanSeconds();
    return new HarmonicFit(
        options.scheme(),
        squares.solution[0],
        options.hasTrend()
            ? OptionalDouble.of(squares.solution[1] / halfSpan * YEAR_SECONDS)
            : OptionalDouble.empty(),
        fitted,
        residuals(values, squares.residuals, sum),
        leftOut(),
        notes());
  }

  /** Columns of one value: 1, the time, and for each constituent cosine and sine. */
  private void row(int k, double[] x) {
    double seconds = record.epochSeconds(k);
    phasors.moveTo(seconds);
    x[0] = 1.0;
    if (options.hasTrend()) {
      x[1] = (seconds - centre) / (0.5 * record.spanSeconds());
    }
    for (int i = 0; i < chosen.size(); i++) {
      x[leading + 2 * i] = phasors.real[i];
      x[leading + 2 * i + 1] = phasors.imaginary[i];
    }
    if (!options.infersAfterFit()) {
      for (int j = 0; j < inferences.size(); j++) {
        Inference inference = inferences.get(j);
        int column = leading + 2 * chosen.indexOf(inference.from());
        double turn = Math.toRadians(inference.lagDifferenceDegrees());
        double cosine = inference.amplitudeRatio() * Math.cos(turn);
        double sine = inference.amplitudeRatio() * Math.sin(turn);
        double real = phasors.real[chosen.size() + j];
        double imaginary = phasors.imaginary[chosen.size() + j];
        x[column] += real * cosine + imaginary * sine;
        x[column + 1] += imaginary * cosine - real * sine;
      }
    }
  }

  private void addWithInferred(
      int i, LeastSquares squares, double variance, List<FittedConstant> fitted) {
    int column = leading + 2 * i;
    double a = squares.solution[column];
    double b = squares.solution[column + 1];
    double[][] inverse = squares.inverse;
    double amplitude = Math.hypot(a, b);
    double aa = inverse[column][column];
    double ab = inverse[column][column + 1];
    double bb = inverse[column + 1][column + 1];
    double cosine = amplitude == 0.0 ? 1.0 : a / amplitude;
    double sine = amplitude == 0.0 ? 0.0 : b / amplitude;
    double along = cosine * cosine * aa + 2.0 * cosine * sine * ab + sine * sine * bb;
    double across = sine * sine * aa - 2.0 * cosine * sine * ab + cosine * cosine * bb;
    double amplitudeError = Math.sqrt(variance * along);
    double lagError = Math.toDegrees(Math.sqrt(variance * across) / amplitude);
    double lag = Math.toDegrees(Math.atan2(b, a));
    if (options.infersAfterFit()) {
      double[] share = shareOfInferred(i);
      double size = Math.hypot(share[0], share[1]);
      amplitude /= size;
      amplitudeError /= size;
      lag += Math.toDegrees(Math.atan2(share[1], share[0]));
    }
    fitted.add(constant(chosen.get(i), i, amplitude, lag, amplitudeError, lagError, false));
    for (int j = 0; j < inferences.size(); j++) {
      Inference inference = inferences.get(j);
      if (inference.from().equals(chosen.get(i))) {
        double ratio = inference.amplitudeRatio();
        fitted.add(
            constant(
                inference.inferred(),
                chosen.size() + j,
                ratio * amplitude,
                lag + inference.lagDifferenceDegrees(),
                ratio * amplitudeError,
                lagError,
                true));
      }
    }
  }

  /**
   * What a fit for one constituent alone finds in the place of it and those inferred from it, as a
   * complex multiple: the inferred ones count less as they drift apart over the record.
   */
  private double[] shareOfInferred(int i) {
    double[] share = {1.0, 0.0};
    double hours = (record.spanSeconds() + record.medianStepSeconds()) / HOUR_SECONDS;
    for (int j = 0; j < inferences.size(); j++) {
      Inference inference = inferences.get(j);
      if (!inference.from().equals(chosen.get(i))) {
        continue;
      }
      int inferred = chosen.size() + j;
      double drift =
          Math.toRadians(
              0.5
                  * hours
                  * (inference.inferred().speedDegreesPerHour()
                      - inference.from().speedDegreesPerHour()));
      double size =
          inference.amplitudeRatio()
              * centreCorrections[2 * inferred]
              / centreCorrections[2 * i]
              * (drift == 0.0 ? 1.0 : Math.sin(drift) / drift);
      double turn =
          Math.toRadians(
              centreCorrections[2 * inferred + 1]
                  - centreCorrections[2 * i + 1]
                  - inference.lagDifferenceDegrees());
      share[0] += size * Math.cos(turn);
      share[1] += size * Math.sin(turn);
    }
    return share;
  }

  private FittedConstant constant(
      Constituent constituent,
      int index,
      double amplitude,
      double lag,
      double amplitudeError,
      double lagError,
      boolean inferred) {
    return new FittedConstant(
        constituent,
        amplitude,
        Angles.reduced(lag),
        amplitudeError,
        lagError,
        amplitude * centreCorrections[2 * index],
        Angles.reduced(lag - centreCorrections[2 * index + 1]),
        inferred);
  }

  private Residuals residuals(double[] values, double[] residuals, double sum) {
    double mean = 0.0;
    for (double value : values) {
      mean += value / values.length;
    }
    double total = 0.0;
    double neighbours = 0.0;
    int largest = 0;
    for (int k = 0; k < values.length; k++) {
      total += (values[k] - mean) * (values[k] - mean);
      if (k > 0) {
        neighbours += residuals[k] * residuals[k - 1];
      }
      if (Math.abs(residuals[k]) > Math.abs(residuals[largest])) {
        largest = k;
      }
    }
    return new Residuals(
        values.length,
        Math.sqrt(sum / values.length),
        residuals[largest],
        EpochSeconds.toInstant(record.epochSeconds(largest)),
        sum == 0.0 ? 0.0 : neighbours / sum,
        total == 0.0 ? 1.0 : 1.0 - sum / total);
  }

  private List<Constituent> leftOut() {
    List<Constituent> left = new ArrayList<>(options.candidates());
    left.removeAll(chosen);
    inferences.forEach(inference -> left.remove(inference.inferred()));
    return List.copyOf(left);
  }

  private List<Note> notes() {
    List<Note> notes = new ArrayList<>();
    if (!leftOut().isEmpty()) {
      notes.add(
          Note.warning(
                  "analysis.left-out",
                  "The record cannot tell some constituents apart; they are left out, and what is"
                      + " found holds their share too, for which its standard error does not"
                      + " allow.")
              .with("constituents", names(leftOut()))
              .with("runTogether", String.join(", ", rule.runTogether)));
    }
    if (!rule.tooFast.isEmpty()) {
      notes.add(
          Note.warning(
                  "analysis.aliased",
                  "The readings are too far apart for some constituents, which turn by more than"
                      + " half a turn between them and look like slower ones or like the mean.")
              .with("tooFast", names(rule.tooFast))
              .with("looksLike", String.join(", ", rule.aliased))
              .with("stepHours", record.medianStepSeconds() / HOUR_SECONDS));
    }
    List<Constituent> close = new ArrayList<>();
    for (int i = 0; i < chosen.size(); i++) {
      double speed = chosen.get(i).speedDegreesPerHour();
      boolean apart = isApart(speed, 0.0);
      for (int j = 0; j < chosen.size() && apart; j++) {
        apart = i == j || isApart(speed, chosen.get(j).speedDegreesPerHour());
      }
      if (!apart) {
        close.add(chosen.get(i));
      }
    }
    if (!close.isEmpty()) {
      notes.add(
          Note.caution(
                  "analysis.close",
                  "Some constituents, or one and the mean, drift apart by less than a turn over the"
                      + " record: noise goes from one to the other.")
              .with("constituents", names(close)));
    }
    return List.copyOf(notes);
  }

  private boolean isApart(double oneSpeed, double otherSpeed) {
    return Rayleigh.turnsApart(
            oneSpeed, otherSpeed, record.spanSeconds() + record.medianStepSeconds())
        >= Rayleigh.TELLS_APART;
  }

  private static String names(List<Constituent> constituents) {
    StringBuilder names = new StringBuilder();
    for (Constituent constituent : constituents) {
      names.append(names.length() == 0 ? "" : " ").append(constituent.name());
    }
    return names.toString();
  }
}
