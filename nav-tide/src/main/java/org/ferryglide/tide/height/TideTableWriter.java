package org.ferryglide.tide.height;

import java.io.IOException;
import org.ferryglide.nav.note.Note;
import org.ferryglide.tide.sheet.Sheet;

/** Writes a tide table in the form that {@link TideTableReader} takes. */
final class TideTableWriter {
  private TideTableWriter() {}

  static void write(TideTable table, Appendable out) throws IOException {
    StringBuilder text = new StringBuilder();
    for (Note note : table.notes()) {
      text.append("# ").append(onOneLine(note.toString())).append('\n');
    }
    text.append("port,datum,time,height_m,kind\n");
    String names =
        Sheet.field("name of a port", table.port())
            + ","
            + Sheet.field("name of a datum", table.datum());
    for (TideEvent water : table.events()) {
      String time = water.time().toString();
      if (!Character.isDigit(time.charAt(0))) { // a sign stands before years of other lengths
        throw new IllegalArgumentException(
            "a water must be in the years 0 to 9999 to be written, but was at " + time);
      }
      text.append(names)
          .append(',')
          .append(time)
          .append(',')
          .append(water.height().metres())
          .append(water.isHigh() ? ",high\n" : ",low\n");
      names = ",";
    }
    out.append(text);
  }

  private static String onOneLine(String text) {
    return text.replace('\n', ' ').replace('\r', ' ');
  }
}
