package org.ferryglide.nav.steer;

import java.util.Objects;
import java.util.function.ToDoubleFunction;

/** A condition made of a name, a unit and a function. */
record NamedCondition(String name, String unit, ToDoubleFunction<SteeredRoute> function)
    implements Condition {

  NamedCondition {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(function, "margin");
  }

  @Override
  public double margin(SteeredRoute passage) {
    return function.applyAsDouble(passage);
  }

  @Override
  public String toString() {
    return name;
  }
}
