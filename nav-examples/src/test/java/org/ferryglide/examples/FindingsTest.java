package org.ferryglide.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class FindingsTest {
  private final Findings findings = Findings.by(Object::toString);

  @Test
  void whereNothingWasCheckedNoCheckIsSaidToHold() {
    assertEquals("nothing was checked", findings.told(List.of()));
  }
}
