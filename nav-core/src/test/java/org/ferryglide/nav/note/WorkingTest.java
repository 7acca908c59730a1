package org.ferryglide.nav.note;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import org.junit.jupiter.api.Test;

class WorkingTest {
  private static final Figure COURSE = new Figure("True bearing", 45.0, 45.0, "degrees", "045°T");
  private static final Figure VARIATION =
      new Figure("Variation", -4.25, -4.0, "degrees east", "4°W");
  private static final Figure MAGNETIC =
      new Figure("Magnetic bearing", 49.25, 49.0, "degrees", "049°M");

  private static Working working() {
    return Working.titled("True to magnetic")
        .given("", COURSE)
        .given("from the rose", VARIATION)
        .then("variation is west: add it to true", MAGNETIC, COURSE, VARIATION);
  }

  @Test
  void linesStandInColumnsAndTheExactResultBelow() {
    assertEquals(
        """
        True to magnetic
          True bearing      045°T
          Variation         4°W    from the rose
          Magnetic bearing  049°M  variation is west: add it to true
          without rounding on the way: 49.25 degrees\
        """,
        working().toString());
  }

  /** By the other lines' clock, to a tenth of a minute: 167.5333 minutes are 2 h 47.5 min. */
  @Test
  void anExactTimeOfDayIsPrintedAsAClockShowsIt() {
    double[] minutes = {167.5333, 1172.6056, 1439.96, -0.5, 1500.25};
    String[] printed = {"02:47.5", "19:32.6", "00:00.0", "23:59.5", "01:00.3"};
    for (int i = 0; i < minutes.length; i++) {
      Figure time =
          new Figure("Time", minutes[i], minutes[i] + 0.5, Figure.MINUTES_OF_THE_DAY, "02:48");
      String text = Working.titled("Time").given("", time).toString();
      assertTrue(text.endsWith("without rounding on the way: " + printed[i]), text);
    }
  }

  @Test
  void theSameFactsAreThereAsData() {
    Step last = working().steps().get(2);
    assertEquals("Magnetic bearing", last.name());
    assertEquals("variation is west: add it to true", last.rule());
    assertEquals(List.of(COURSE, VARIATION), last.inputs());
    assertEquals(49.25, last.result().exact());
    assertEquals(49.0, last.result().byHand());
    assertEquals("degrees", last.result().unit());
    assertTrue(working().steps().get(0).isGiven());
    assertEquals(MAGNETIC, working().result());
    assertEquals("Magnetic bearing 049°M: variation is west: add it to true", last.toString());
  }

  @Test
  void addingALineLeavesTheOldWorkingAlone() {
    Working start = Working.titled("Sum");
    Working longer = start.given("", COURSE);
    assertEquals(0, start.steps().size());
    assertEquals(1, longer.steps().size());
    assertEquals("Sum", start.toString());
    assertEquals(longer, start.plus(longer));
    assertEquals(longer.hashCode(), start.plus(longer).hashCode());
  }

  @Test
  void emptyNamesAndMissingRulesAreRefused() {
    assertEquals(
        "title of a working must not be empty",
        assertThrows(IllegalArgumentException.class, () -> Working.titled("")).getMessage());
    assertEquals(
        "a step that uses figures must name its rule",
        assertThrows(
                IllegalArgumentException.class,
                () -> working().then("", MAGNETIC, COURSE, VARIATION))
            .getMessage());
    assertEquals(
        "name and text of a figure must not be empty",
        assertThrows(
                IllegalArgumentException.class, () -> new Figure("", 1.0, 1.0, "degrees", "1°"))
            .getMessage());
    assertEquals(
        "Rate must be a finite number of knots, but was NaN",
        assertThrows(
                IllegalArgumentException.class,
                () -> new Figure("Rate", Double.NaN, 1.0, "knots", "1"))
            .getMessage());
    assertEquals(
        "the working \"Sum\" has no lines yet",
        assertThrows(IllegalStateException.class, () -> Working.titled("Sum").result())
            .getMessage());
  }

  @Test
  void aWorkingCanBeShipped() throws Exception {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(working());
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      assertEquals(working(), in.readObject());
    }
  }
}
