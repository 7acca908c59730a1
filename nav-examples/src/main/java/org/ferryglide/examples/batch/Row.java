package org.ferryglide.examples.batch;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * One row of a file and the fields of it that an operation reads, in the operation's own order.
 *
 * <p>One object serves all rows of a chunk. A field that does not fit is thrown as {@link
 * RefusedRow}.
 */
final class Row {
  private static final int LONGEST_SHOWN = 60;

  private final Heading heading;
  private final int[] starts;
  private final int[] ends;
  private byte[] bytes = {};

  Row(Heading heading) {
    this.heading = heading;
    this.starts = new int[heading.reads()];
    this.ends = new int[heading.reads()];
  }

  /**
   * Moves to a row.
   *
   * @param bytes where it stands
   * @param from where it starts
   * @param to where it ends, without its line ending
   * @throws RefusedRow if it has another number of fields than the heading, or a quotation mark
   *     where none may stand
   */
  void moveTo(byte[] bytes, int from, int to) {
    this.bytes = bytes;
    int field = 0;
    int place = from;
    while (true) {
      int start = place;
      int end;
      if (place < to && bytes[place] == '"') {
        start++;
        end = RowEnds.closingQuote(bytes, start, to);
        if (end == RowEnds.OPEN_QUOTE) {
          throw new RefusedRow(field + 1, "a quotation mark is not closed");
        }
        place = end + 1;
        if (place < to && bytes[place] != ',') {
          throw new RefusedRow(field + 1, "only a comma may follow a closing quotation mark");
        }
      } else {
        while (place < to && bytes[place] != ',') {
          place++;
        }
        end = place;
      }
      int wanted = heading.slot(field);
      if (wanted >= 0) {
        starts[wanted] = start;
        ends[wanted] = end;
      }
      field++;
      if (place >= to) {
        break;
      }
      place++; // the comma
    }
    if (field != heading.width()) {
      throw new RefusedRow(
          0,
          "the heading names " + heading.width() + " columns, but here are " + field + " fields");
    }
  }

  /** How many fields a row has, for one that is refused. */
  static int fields(byte[] bytes, int from, int to) {
    int fields = 1;
    for (int i = from; i < to; i++) {
      if (bytes[i] == '"' && (i == from || bytes[i - 1] == ',')) {
        int close = RowEnds.closingQuote(bytes, i + 1, to);
        if (close == RowEnds.OPEN_QUOTE) {
          return fields;
        }
        i = close;
      } else if (bytes[i] == ',') {
        fields++;
      }
    }
    return fields;
  }

  /** The text of a field, quotation marks off. */
  String text(int slot) {
    String text =
        new String(bytes, starts[slot], ends[slot] - starts[slot], StandardCharsets.UTF_8);
    return text.indexOf('"') < 0 ? text : text.replace("\"\"", "\"");
  }

  /** The text of a field without spaces round it, which may not be empty. */
  String word(int slot) {
    String word = text(slot).trim();
    if (word.isEmpty()) {
      throw refused(slot, "must not be empty");
    }
    return word;
  }

  /** Whether a field has the same bytes as given, for what is remembered from row to row. */
  boolean isSame(int slot, byte[] before) {
    return Arrays.equals(bytes, starts[slot], ends[slot], before, 0, before.length);
  }

  /** A copy of the bytes of a field. */
  byte[] copy(int slot) {
    return Arrays.copyOfRange(bytes, starts[slot], ends[slot]);
  }

  /** The number of a field; NaN where the field is no number. */
  double numberOrNan(int slot) {
    return Decimals.parse(bytes, starts[slot], ends[slot]);
  }

  /** The number of a field within bounds. */
  double number(int slot, double least, double greatest, String unit) {
    double value = numberOrNan(slot);
    if (!(value >= least && value <= greatest)) { // written so that NaN fails
      throw refused(
          slot,
          "must be a number in ["
              + bound(least)
              + ", "
              + bound(greatest)
              + "]"
              + (unit.isEmpty() ? "" : " " + unit));
    }
    return value;
  }

  private static String bound(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e15
        ? Long.toString((long) value)
        : Double.toString(value);
  }

  double latitude(int slot) {
    return number(slot, -90.0, 90.0, "degrees");
  }

  /** A longitude, east positive; files that count on to 360 are read as well. */
  double longitude(int slot) {
    double degrees = number(slot, -180.0, 360.0, "degrees");
    return degrees > 180.0 ? degrees - 360.0 : degrees;
  }

  /** A direction, which may be given with a sign or as 360. */
  double direction(int slot) {
    return number(slot, -360.0, 360.0, "degrees");
  }

  /** A refusal that names a column, what is allowed and what was given. */
  RefusedRow refused(int slot, String allowed) {
    String given = text(slot);
    if (given.length() > LONGEST_SHOWN) {
      given = given.substring(0, LONGEST_SHOWN) + "…";
    }
    return new RefusedRow(
        heading.column(slot) + 1,
        heading.name(slot) + " " + allowed + ", but was \"" + given + "\"");
  }
}
