package org.ferryglide.tide.height;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.ferryglide.tide.sheet.Sheet;

/** Reads the times of one sheet, each with its own offset or in the zone of the whole sheet. */
final class TideTimes {
  private static final Pattern FORM =
      Pattern.compile(
          "[0-9]{4}-[0-9]{2}-[0-9]{2}[T ][0-9]{2}:[0-9]{2}(:[0-9]{2}(\\.[0-9]{1,9})?)?"
              + "(Z|[-+][0-9]{2}:[0-9]{2})?");

  private final Optional<ZoneId> zone;

  private TideTimes(Optional<ZoneId> zone) {
    this.zone = zone;
  }

  /** Times of a sheet whose zone is stated by its identifier, or not at all if that is empty. */
  static TideTimes of(String zoneId, Sheet sheet) {
    if (zoneId.isEmpty()) {
      return new TideTimes(Optional.empty());
    }
    try {
      return new TideTimes(Optional.of(ZoneId.of(zoneId)));
    } catch (DateTimeException e) {
      sheet
          .rows()
          .get(0)
          .problem(
              "zone",
              "must be Z, an offset such as +01:00 or a region of the IANA time zone database,"
                  + " but was \""
                  + zoneId
                  + "\"");
      return new TideTimes(Optional.of(ZoneOffset.UTC)); // the sheet is refused before it is used
    }
  }

  /** The time of a field by its own clock; empty if it is none, which is recorded. */
  Optional<OffsetDateTime> read(Sheet.Row row, String heading) {
    String text = row.text(heading);
    if (!FORM.matcher(text).matches()) {
      row.problem(
          heading,
          "must be a date and time such as 2026-06-01T09:30Z, 2026-06-01T10:30+01:00 or"
              + " 2026-06-01T09:30, but was \""
              + text
              + "\"");
      return Optional.empty();
    }
    String iso = text.replace(' ', 'T');
    try {
      if (iso.endsWith("Z") || iso.lastIndexOf('+') > 0 || iso.lastIndexOf('-') > 7) {
        return Optional.of(OffsetDateTime.parse(iso));
      }
      return local(row, heading, LocalDateTime.parse(iso));
    } catch (DateTimeException e) {
      row.problem(heading, "must be a date and time that exist, but was \"" + text + "\"");
      return Optional.empty();
    }
  }

  private Optional<OffsetDateTime> local(Sheet.Row row, String heading, LocalDateTime time) {
    if (!zone.isPresent()) {
      row.problem(
          heading,
          "must state its offset, such as Z or +01:00, or the sheet its zone, but was \""
              + row.text(heading)
              + "\"");
      return Optional.empty();
    }
    List<ZoneOffset> offsets = zone.get().getRules().getValidOffsets(time);
    if (offsets.size() == 1) {
      return Optional.of(time.atOffset(offsets.get(0)));
    }
    row.problem(
        heading,
        (offsets.isEmpty() ? "is skipped by the clocks of " : "happens twice by the clocks of ")
            + zone.get().getId()
            + ", so it must state its offset, but was \""
            + row.text(heading)
            + "\"");
    return Optional.empty();
  }
}
