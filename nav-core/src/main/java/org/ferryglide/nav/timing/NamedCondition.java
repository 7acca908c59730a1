package org.ferryglide.nav.timing;

import java.util.function.Function;
import org.ferryglide.nav.steer.SteeredRoute;

/** A condition made of a name and a function. */
record NamedCondition(String name, Function<SteeredRoute, Verdict> function) implements Condition {
  @Override
  public Verdict check(SteeredRoute passage) {
    return function.apply(passage);
  }

  @Override
  public String toString() {
    return name;
  }
}
