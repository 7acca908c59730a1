package org.ferryglide.examples.page;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ferryglide.tide.folder.PassageFolder;
import org.ferryglide.tide.sheet.Sheet;

/**
 * What those ashore are told beside the plan: who goes in what, whom to call, when, by which clock.
 * All of it may be left out and is then a blank line.
 *
 * <pre>{@code
 * ShoreDetails details =
 *     ShoreDetails.NONE.with("call", "the coastguard, by telephone").withOverdue(chosen);
 * }</pre>
 */
public final class ShoreDetails {
  /** Nothing told. */
  public static final ShoreDetails NONE = new ShoreDetails(Map.of());

  /** The file of a passage's folder that holds them, by item and value. */
  static final String FILE = "shore.csv";

  private static final String OVERDUE = "overdue";
  private static final String CLOCK = "contact's clock";
  private static final List<String> ITEMS =
      List.of("party", "craft", "carried", "call", OVERDUE, CLOCK, "remarks");

  private final Map<String, String> items;

  private ShoreDetails(Map<String, String> items) {
    this.items = items;
  }

  static ShoreDetails of(PassageFolder folder) {
    String text = folder.texts().get(FILE);
    if (text == null) {
      return NONE;
    }
    try {
      Sheet sheet = Sheet.read(FILE, new StringReader(text), List.of("item", "value"), List.of());
      ShoreDetails details = NONE;
      for (Sheet.Row row : sheet.rows()) {
        details = details.read(row);
      }
      sheet.refuseIfFaulty();
      return details;
    } catch (IOException e) {
      throw new UncheckedIOException(e); // a string does not fail
    }
  }

  private ShoreDetails read(Sheet.Row row) {
    String item = row.text("item");
    if (items.containsKey(item)) {
      row.problem("item", item + " stands there already");
      return this;
    }
    try {
      return with(item, row.text("value"));
    } catch (IllegalArgumentException | DateTimeException e) {
      row.problem(ITEMS.contains(item) ? "value" : "item", String.valueOf(e.getMessage()));
      return this;
    }
  }

  /**
   * The same details with one more.
   *
   * @param item party, craft, carried, call, overdue, contact's clock or remarks
   * @param value the words; nothing leaves it open
   * @return the changed details
   * @throws IllegalArgumentException if there is no such item, or a time has no offset
   * @throws DateTimeException if the clock is no known zone
   */
  public ShoreDetails with(String item, String value) {
    if (!ITEMS.contains(item)) {
      throw new IllegalArgumentException("must be one of " + ITEMS + ", but was " + item);
    }
    if (item.equals(OVERDUE) && !value.isEmpty()) {
      parsed(value);
    }
    if (item.equals(CLOCK) && !value.isEmpty()) {
      ZoneId.of(value);
    }
    Map<String, String> more = new LinkedHashMap<>(items);
    more.put(item, value);
    return new ShoreDetails(more);
  }

  private static Instant parsed(String time) {
    try {
      return OffsetDateTime.parse(time).toInstant();
    } catch (DateTimeException e) {
      throw new IllegalArgumentException(
          "must be a time with its offset as 2026-06-14T17:30+01:00, but was " + time, e);
    }
  }

  /**
   * Words of one item.
   *
   * @param item as for {@link #with}
   * @return the words; empty if they are left open
   */
  public Optional<String> words(String item) {
    return Optional.ofNullable(items.get(item)).filter(words -> !words.isEmpty());
  }

  /**
   * When the party counts as overdue, as it chose.
   *
   * @return the time; empty if it did not choose one
   */
  public Optional<Instant> overdue() {
    return words(OVERDUE).map(ShoreDetails::parsed);
  }

  /**
   * The clock of those ashore.
   *
   * @return the zone; empty if it was not told
   */
  public Optional<ZoneId> clock() {
    return words(CLOCK).map(ZoneId::of);
  }
}
