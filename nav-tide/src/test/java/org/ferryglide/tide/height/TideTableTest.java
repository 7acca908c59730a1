package org.ferryglide.tide.height;

import static org.ferryglide.nav.measure.Distance.ofMetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Severity;
import org.ferryglide.tide.height.TideEvent.Kind;
import org.junit.jupiter.api.Test;

class TideTableTest {
  /** Low 03:20 0.7, high 09:30 4.2, low 15:45 0.9, high 21:50 4.1. */
  private static final TideTable TABLE =
      Tables.ofHours("Skarra", 3 + 1 / 3.0, 0.7, 9.5, 4.2, 15.75, 0.9, 21 + 5 / 6.0, 4.1);

  private static final TideEvent FIRST_LOW = TABLE.events().get(0);
  private static final TideEvent FIRST_HIGH = TABLE.events().get(1);
  private static final TideEvent SECOND_LOW = TABLE.events().get(2);
  private static final TideEvent SECOND_HIGH = TABLE.events().get(3);

  private static Instant at(String time) {
    return Instant.parse("2026-06-01T" + time + "Z");
  }

  private static String refusalOf(List<TideEvent> events) {
    return assertThrows(
                IllegalArgumentException.class, () -> TideTable.of("Skarra", "chart datum", events))
            .getMessage()
        + "";
  }

  @Test
  void aTableIsFoundByItsPort() {
    TideTable one = Tables.ofHours("Skarra", 0, 1, 6, 5);
    TideTable two = Tables.ofHours("Ennor", 0, 1, 6, 5);
    assertEquals(two, TideTable.named(List.of(one, two), "Ennor"));
    assertEquals(
        "there is no tide table \"ennor\"; there are [Skarra, Ennor]",
        assertThrows(
                IllegalArgumentException.class, () -> TideTable.named(List.of(one, two), "ennor"))
            .getMessage());
  }

  @Test
  void highAndLowWatersAreListedInOrder() {
    assertEquals(List.of(FIRST_HIGH, SECOND_HIGH), TABLE.highWaters());
    assertEquals(List.of(FIRST_LOW, SECOND_LOW), TABLE.lowWaters());
    assertEquals(at("03:20:00"), TABLE.start());
    assertEquals(at("21:50:00"), TABLE.end());
    assertThrows(UnsupportedOperationException.class, () -> TABLE.events().clear());
  }

  @Test
  void theWaterUpToATimeIncludesOneAtThatTimeAndTheWaterAfterDoesNot() {
    assertEquals(Optional.of(FIRST_HIGH), TABLE.lastUpTo(at("09:30:00")));
    assertEquals(Optional.of(SECOND_LOW), TABLE.firstAfter(at("09:30:00")));
    assertEquals(Optional.of(FIRST_LOW), TABLE.lastUpTo(at("09:29:59")));
    assertEquals(Optional.of(FIRST_HIGH), TABLE.firstAfter(at("09:29:59")));
  }

  @Test
  void beyondTheTableThereIsNoWater() {
    assertEquals(Optional.empty(), TABLE.lastUpTo(at("03:19:59")));
    assertEquals(Optional.of(FIRST_LOW), TABLE.firstAfter(at("00:00:00")));
    assertEquals(Optional.empty(), TABLE.firstAfter(at("21:50:00")));
    assertEquals(Optional.of(SECOND_HIGH), TABLE.lastUpTo(at("23:59:00")));
    assertEquals(Optional.empty(), TABLE.firstAfter(at("16:00:00"), Kind.LOW));
    assertEquals(Optional.empty(), TABLE.lastUpTo(at("04:00:00"), Kind.HIGH));
  }

  @Test
  void aWaterOfOneKindIsLookedUpPastTheOther() {
    assertEquals(Optional.of(SECOND_HIGH), TABLE.firstAfter(at("10:00:00"), Kind.HIGH));
    assertEquals(Optional.of(SECOND_LOW), TABLE.firstAfter(at("10:00:00"), Kind.LOW));
    assertEquals(Optional.of(FIRST_HIGH), TABLE.lastUpTo(at("16:00:00"), Kind.HIGH));
    assertEquals(Optional.of(SECOND_LOW), TABLE.lastUpTo(at("16:00:00"), Kind.LOW));
  }

  @Test
  void theNearestHighWaterIsTheLaterOfTwoEquallyNear() {
    assertEquals(FIRST_HIGH, TABLE.highWaterNearest(at("15:39:59")));
    assertEquals(SECOND_HIGH, TABLE.highWaterNearest(at("15:40:00")));
    assertEquals(FIRST_HIGH, TABLE.highWaterNearest(at("00:00:00")));
    assertEquals(SECOND_HIGH, TABLE.highWaterNearest(at("23:00:00")));
    assertEquals(FIRST_HIGH, TABLE.highWaterNearest(at("09:30:00")));
  }

  @Test
  void theRangeIsTheMeanOfTheRiseBeforeAndTheFallAfter() {
    assertEquals(3.4, TABLE.range(FIRST_HIGH).metres(), 1e-12);
    assertFalse(TABLE.isRangeOneSided(FIRST_HIGH));
  }

  @Test
  void atTheEdgeOfTheTableTheRangeIsTheOneSideThatIsThere() {
    assertEquals(3.2, TABLE.range(SECOND_HIGH).metres(), 1e-12);
    assertTrue(TABLE.isRangeOneSided(SECOND_HIGH));
    TideTable falling = Tables.ofHours("Skarra", 0, 4.0, 6, 1.0);
    assertEquals(3.0, falling.range(falling.events().get(0)).metres(), 1e-12);
    assertTrue(falling.isRangeOneSided(falling.events().get(0)));
  }

  @Test
  void theLargerOfRiseAndFallRulesBesideADoubleHighWater() {
    // up 3.0 m, a dip of 0.2 m, up 0.1 m, down 2.9 m: the mean about the first would be 1.6 m
    TideTable table =
        Tables.ofHours("Lunna", 0, 1.0, 5, 4.0, 6.5, 3.8, 8, 3.9, 12.5, 1.0, 17.5, 4.0);
    List<TideEvent> highs = table.highWaters();
    assertEquals(3.0, table.range(highs.get(0)).metres(), 1e-12);
    assertEquals(2.9, table.range(highs.get(1)).metres(), 1e-12);
    Note note = table.notesFor(highs.get(0)).get(0);
    assertEquals("tide.doubt.unequal-range", note.code());
    assertEquals(Severity.CAUTION, note.severity());
    assertTrue(TABLE.notesFor(FIRST_HIGH).isEmpty());
    assertTrue(table.notesFor(highs.get(2)).isEmpty(), "one side only is not unequal");
  }

  @Test
  void theRangeOfAnythingElseIsRefused() {
    assertEquals(
        "must be a high water of the table of Skarra, but was " + FIRST_LOW,
        assertThrows(IllegalArgumentException.class, () -> TABLE.range(FIRST_LOW).metres())
            .getMessage());
    TideEvent other = TideEvent.high(FIRST_HIGH.time(), ofMetres(9.9));
    assertThrows(IllegalArgumentException.class, () -> TABLE.range(other).metres());
    TideEvent earlier = TideEvent.high(at("00:00:00"), ofMetres(4.0));
    assertThrows(IllegalArgumentException.class, () -> TABLE.isRangeOneSided(earlier));
  }

  @Test
  void aDiurnalTideHasOneHighWaterADay() {
    TideTable table = Tables.ofHours("Lunna", 0, 0.1, 12.4, 0.7, 24.8, 0.1, 37.2, 0.6);
    assertEquals(2, table.highWaters().size());
    assertEquals(0.4, TableCurve.cosine(table).heightAt(Tables.atHour(6.2)).get().metres(), 1e-9);
  }

  @Test
  void fewerThanTwoWatersAreRefused() {
    assertEquals(
        "a tide table must have at least 2 waters, but had 1", refusalOf(List.of(FIRST_LOW)));
  }

  @Test
  void watersOutOfOrderAreRefused() {
    assertEquals(
        "water 2: must be later than the water before, at 2026-06-01T09:30:00Z, but was"
            + " 2026-06-01T03:20:00Z",
        refusalOf(List.of(FIRST_HIGH, FIRST_LOW)));
    assertEquals(
        "water 2: must be later than the water before, at 2026-06-01T03:20:00Z, but was"
            + " 2026-06-01T03:20:00Z",
        refusalOf(List.of(FIRST_LOW, TideEvent.high(FIRST_LOW.time(), ofMetres(4.0)))));
  }

  @Test
  void twoWatersOfAKindInTurnAreRefused() {
    assertEquals(
        "water 3: high and low waters must alternate, but two high waters follow each other",
        refusalOf(List.of(FIRST_LOW, FIRST_HIGH, SECOND_HIGH)));
    assertEquals(
        "water 2: high and low waters must alternate, but two low waters follow each other",
        refusalOf(List.of(FIRST_LOW, SECOND_LOW)));
  }

  @Test
  void aHighWaterBelowTheLowWaterBesideItIsRefused() {
    assertEquals(
        "water 2: a high water must not be lower than the low water beside it, but was 0.6 m"
            + " beside 0.7 m",
        refusalOf(List.of(FIRST_LOW, TideEvent.high(FIRST_HIGH.time(), ofMetres(0.6)))));
  }

  @Test
  void aHighWaterLevelWithTheLowWaterIsATideThatVanishes() {
    TideTable table =
        TideTable.of(
            "Lunna",
            "chart datum",
            List.of(FIRST_LOW, TideEvent.high(FIRST_HIGH.time(), ofMetres(0.7))));
    assertEquals(0.0, table.range(table.highWaters().get(0)).metres());
  }

  @Test
  void aDayAndAnHourWithoutAWaterIsAGap() {
    TideEvent late = TideEvent.high(FIRST_LOW.time().plusSeconds(25 * 3600 + 1), ofMetres(4.0));
    assertEquals(
        "water 2: a water seems to be missing: waters must be at most 25 hours apart, but the water"
            + " before was at 2026-06-01T03:20:00Z",
        refusalOf(List.of(FIRST_LOW, late)));
  }

  @Test
  void namesMustNotBeEmpty() {
    assertEquals(
        "port of a tide table must not be empty",
        assertThrows(
                IllegalArgumentException.class,
                () -> TideTable.of(" ", "chart datum", TABLE.events()))
            .getMessage());
    assertEquals(
        "datum of a tide table must not be empty",
        assertThrows(
                IllegalArgumentException.class, () -> TideTable.of("Skarra", "", TABLE.events()))
            .getMessage());
  }

  @Test
  void tablesWithTheSameWatersAreEqual() {
    TideTable same = TideTable.of("Skarra", "chart datum", TABLE.events());
    assertEquals(TABLE, same);
    assertEquals(TABLE.hashCode(), same.hashCode());
    assertNotEquals(TABLE, TideTable.of("Lunna", "chart datum", TABLE.events()));
    assertNotEquals(TABLE, TABLE.withNotes(List.of(Note.information("x", "y"))));
    assertEquals(
        "Skarra, 4 waters from 2026-06-01T03:20:00Z to 2026-06-01T21:50:00Z", TABLE.toString());
  }

  @Test
  void notesAddUp() {
    Note one = Note.information("one", "One.");
    Note two = Note.information("two", "Two.");
    assertEquals(List.of(one, two), TABLE.withNotes(List.of(one)).withNotes(List.of(two)).notes());
    assertEquals(List.of(), TABLE.notes());
  }

  @Test
  void tablesAndCurvesTravelBetweenMachines() throws IOException, ClassNotFoundException {
    TideTable table = TABLE.withNotes(List.of(Note.information("one", "One.")));
    assertEquals(table, roundTrip(table));
    for (TableCurve curve : Tables.curvesThrough(table)) {
      TableCurve copy = (TableCurve) roundTrip(curve);
      Instant noon = at("12:00:00");
      assertEquals(curve.heightAt(noon), copy.heightAt(noon));
      assertEquals(curve.notesAt(noon), copy.notesAt(noon));
    }
  }

  private static Object roundTrip(Object value) throws IOException, ClassNotFoundException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(value);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      return in.readObject();
    }
  }
}
