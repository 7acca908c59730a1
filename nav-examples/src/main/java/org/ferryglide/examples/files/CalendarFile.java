package org.ferryglide.examples.files;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.nio.charset.StandardCharsets;
import java.util.Date;
import java.util.List;
import java.util.UUID;
import org.ferryglide.nav.water.Window;

/**
 * Windows of departure as iCalendar (RFC 5545), times in UTC.
 *
 * <pre>{@code
 * Files.writeString(file, CalendarFile.departures(passage.name(), when.windows().items()));
 * }</pre>
 *
 * <p>There are no alarms in it: they are wrong once the party leaves late.
 */
public final class CalendarFile {
  private CalendarFile() {}

  /**
   * An event for each window.
   *
   * @param name what the passage is called
   * @param windows in order
   * @return the text of an iCalendar file; the same windows give the same text, their stamp is the
   *     start of the first
   */
  public static String departures(String name, List<Window> windows) {
    ICalendar calendar = new ICalendar();
    calendar.setProductId("-//Ferryglide//departures//EN");
    for (Window window : windows) {
      VEvent event = new VEvent();
      String key = name + window.from() + window.until();
      event.setUid(
          UUID.nameUUIDFromBytes(key.getBytes(StandardCharsets.UTF_8)) + "@ferryglide.org");
      event.setDateTimeStamp(Date.from(windows.get(0).from()));
      event.setSummary("Departure window: " + name);
      event.setDescription(
          "No check of the folder stops a departure within it, though some may warn: the command"
              + " departures tells which. A sum, not a permission to go: official tables, forecasts"
              + " and the coastguard's advice come first.");
      event.setDateStart(Date.from(window.from()));
      event.setDateEnd(Date.from(window.until()));
      event.setTransparency(true);
      calendar.addEvent(event);
    }
    return Biweekly.write(calendar).go();
  }
}
