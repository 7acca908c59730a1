package org.ferryglide.nav.magnetic;

import org.ferryglide.nav.note.Note;

/** What is said of a date outside a model's span. */
final class SpanText {
  /** Past the span by no more than this, the answer is only slightly worse than inside. */
  private static final double SLIGHTLY_PAST_YEARS = 1.0;

  private SpanText() {}

  static Note note(MagneticModel model, double decimalYear, String asGiven) {
    double years = model.yearsOutside(decimalYear);
    boolean before = decimalYear < model.validFromYear();
    String text =
        outside(model, decimalYear, asGiven)
            + ". The variation drifts from the truth as the years pass: use "
            + (before ? "the model made for that time." : "a newer model.");
    Note note =
        years <= SLIGHTLY_PAST_YEARS
            ? Note.caution("magnetic.outside-span", text)
            : Note.warning("magnetic.outside-span", text);
    return note.with("model", model.name())
        .with("validFromYear", model.validFromYear())
        .with("validToYear", model.validToYear())
        .with("yearsOutside", years);
  }

  static String outside(MagneticModel model, double decimalYear, String asGiven) {
    return model.name()
        + " is made for "
        + model.validFromYear()
        + " to "
        + model.validToYear()
        + ", but the date was "
        + asGiven
        + ", "
        + tenths(model.yearsOutside(decimalYear))
        + " years "
        + (decimalYear < model.validFromYear() ? "before it begins" : "after it ends");
  }

  /** Rounded up, so that a day is not reported as no time at all. */
  private static double tenths(double years) {
    return Math.ceil(years * 10.0) / 10.0;
  }
}
