package org.ferryglide.nav.timing;

import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.steer.SteeredRoute;

/** A condition made of a name and a function. */
record NamedCondition(Note about, Function<SteeredRoute, Verdict> function) implements Condition {
  /** A figure against its two limits; not known where it is NaN. */
  static Condition of(
      Note about, String unit, double warn, double stop, ToDoubleFunction<SteeredRoute> figure) {
    Limits.refuseBad(about.text(), unit, warn, stop);
    return new NamedCondition(
        about,
        passage -> {
          double found = figure.applyAsDouble(passage);
          return Double.isNaN(found)
              ? Verdict.notChecked(
                  about, Note.information("why.no-figure", "its figure is not known"))
              : Verdict.of(about, found, unit, warn, stop);
        });
  }

  @Override
  public String name() {
    return about.text();
  }

  @Override
  public Verdict check(SteeredRoute passage) {
    return function.apply(passage);
  }

  @Override
  public String toString() {
    return name();
  }
}
