package org.ferryglide.tide.folder;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The text of one file, and where things stand in it.
 *
 * @param source the file as messages name it
 * @param text what it holds, sound UTF-8 without control characters
 */
record FolderText(String source, String text) {
  /** Ten years of tides take less than a megabyte. */
  static final long MOST_BYTES = 4_000_000;

  private static final char BYTE_ORDER_MARK = '\ufeff';

  /** A line and the number of a field in it, both from 1; 0 if not known. */
  record Place(int line, int column) {
    static final Place WHOLE_FILE = new Place(0, 0);
  }

  /** Reads a file; what is wrong with it as text is recorded, and nothing returned. */
  static Optional<FolderText> read(Path file, FolderProblems problems) {
    String source = file.toString();
    try {
      if (!Files.exists(file)) {
        problems.unreadable(source, 0, 0, "the file is missing");
      } else if (!Files.isRegularFile(file)) {
        problems.unreadable(source, 0, 0, "must be a file, but is a folder or a device");
      } else if (Files.size(file) > MOST_BYTES) {
        problems.unreadable(
            source,
            0,
            0,
            "must hold at most " + MOST_BYTES + " bytes, but has " + Files.size(file));
      } else {
        return decoded(source, Files.readAllBytes(file), problems);
      }
    } catch (AccessDeniedException e) {
      problems.unreadable(source, 0, 0, "may not be read by this user");
    } catch (IOException e) {
      problems.unreadable(source, 0, 0, "cannot be read: " + e.getMessage());
    }
    return Optional.empty();
  }

  /** A text that is there already. */
  static Optional<FolderText> of(String source, String text, FolderProblems problems) {
    int half = PlainCharacters.firstHalf(text);
    if (half < text.length()) {
      Place place = placeOf(text, half);
      problems.unreadable(
          source,
          place.line(),
          place.column(),
          "must not hold half a character, but has " + PlainCharacters.name(text.charAt(half)));
      return Optional.empty();
    }
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    if (bytes.length > MOST_BYTES) {
      problems.unreadable(
          source, 0, 0, "must hold at most " + MOST_BYTES + " bytes, but has " + bytes.length);
      return Optional.empty();
    }
    return decoded(source, bytes, problems);
  }

  private static Optional<FolderText> decoded(
      String source, byte[] bytes, FolderProblems problems) {
    String text;
    try {
      text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      Place place = firstNotUtf8(bytes);
      problems.unreadable(
          source,
          place.line(),
          place.column(),
          "the text must be in UTF-8, but here it is not; save the file as UTF-8");
      return Optional.empty();
    }
    for (int i = 0; i < text.length(); i++) {
      if (PlainCharacters.isRefused(text.charAt(i))
          && !(i == 0 && text.charAt(0) == BYTE_ORDER_MARK)) {
        Place place = placeOf(text, i);
        problems.unreadable(
            source,
            place.line(),
            place.column(),
            "must not hold control or hidden characters, but has "
                + PlainCharacters.name(text.charAt(i)));
        return Optional.empty();
      }
    }
    return Optional.of(new FolderText(source, text));
  }

  /** Where the first bytes stand that are no text in UTF-8. */
  private static Place firstNotUtf8(byte[] bytes) {
    String latin = new String(bytes, StandardCharsets.ISO_8859_1);
    int lineStart = 0;
    while (lineStart < latin.length()) {
      int lineEnd = latin.indexOf('\n', lineStart);
      lineEnd = lineEnd < 0 ? latin.length() : lineEnd + 1;
      ByteBuffer line = ByteBuffer.wrap(bytes, lineStart, lineEnd - lineStart);
      try {
        StandardCharsets.UTF_8.newDecoder().decode(line);
      } catch (CharacterCodingException e) {
        return placeOf(latin, line.position());
      }
      lineStart = lineEnd;
    }
    return Place.WHOLE_FILE;
  }

  private static Place placeOf(String text, int index) {
    int line = 1;
    int column = 1;
    boolean quoted = false;
    for (int i = 0; i < index; i++) {
      char c = text.charAt(i);
      boolean endsLine = c == '\n' || (c == '\r' && !text.startsWith("\n", i + 1));
      if (endsLine) {
        line++;
        column = 1;
        quoted = false;
      } else if (c == '"') {
        quoted = !quoted;
      } else if (c == ',' && !quoted) {
        column++;
      }
    }
    return new Place(line, column);
  }

  /** The text again, for a reader of sheets. */
  Reader reader() {
    return new StringReader(text);
  }

  /** A text beneath a heading, and where it stands. */
  record Field(String text, Place place) {}

  /** The different texts beneath a heading, each where it stands first; also of a refused sheet. */
  List<Field> under(String heading) {
    String[][] rows = rows();
    int column = column(rows, heading);
    List<Field> fields = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    boolean isHeading = true;
    for (int i = 0; i < rows.length; i++) {
      String text = column >= 0 && column < rows[i].length ? rows[i][column] : "";
      if (!isHeading && !text.isEmpty() && seen.add(text)) {
        fields.add(new Field(text, new Place(i + 1, column + 1)));
      }
      isHeading = isHeading && rows[i].length == 0;
    }
    return fields;
  }

  /** The text in a row that has a key in its first column; empty if there is none. */
  Optional<Field> beside(String key, String heading) {
    String[][] rows = rows();
    int column = column(rows, heading);
    for (int i = 0; i < rows.length; i++) {
      if (rows[i].length > 0 && rows[i][0].equals(key) && column > 0 && column < rows[i].length) {
        return Optional.of(new Field(rows[i][column], new Place(i + 1, column + 1)));
      }
    }
    return Optional.empty();
  }

  /**
   * Where a field of the first row stands that has a text in a column, as a station's port does.
   * Every row counts if the text is empty.
   */
  Place find(String keyHeading, String key, String wanted) {
    String[][] rows = rows();
    int keyColumn = column(rows, keyHeading);
    int wantedColumn = column(rows, wanted);
    boolean heading = true;
    for (int i = 0; i < rows.length; i++) {
      if (rows[i].length == 0) {
        continue;
      }
      if (!heading
          && keyColumn >= 0
          && wantedColumn >= 0
          && keyColumn < rows[i].length
          && (key.isEmpty() || rows[i][keyColumn].equals(key))) {
        return new Place(i + 1, wantedColumn + 1);
      }
      heading = false;
    }
    return Place.WHOLE_FILE;
  }

  private static int column(String[][] rows, String heading) {
    for (String[] row : rows) {
      if (row.length > 0) {
        for (int i = 0; i < row.length; i++) {
          if (row[i].equals(heading)) {
            return i;
          }
        }
        return -1;
      }
    }
    return -1;
  }

  /** The fields of every line; none for comments and empty lines. */
  private String[][] rows() {
    String bare = text.startsWith(String.valueOf(BYTE_ORDER_MARK)) ? text.substring(1) : text;
    String[] lines = bare.split("\r\n|\n|\r", -1);
    String[][] rows = new String[lines.length][];
    for (int i = 0; i < lines.length; i++) {
      boolean empty = lines[i].trim().isEmpty() || lines[i].startsWith("#");
      rows[i] = empty ? new String[0] : fields(lines[i]);
    }
    return rows;
  }

  private static String[] fields(String line) {
    List<String> fields = new ArrayList<>();
    boolean quoted = false;
    int start = 0;
    for (int i = 0; i <= line.length(); i++) {
      boolean ends = i == line.length();
      if (!ends && line.charAt(i) == '"') {
        quoted = !quoted;
      } else if (ends || (line.charAt(i) == ',' && !quoted)) {
        fields.add(unquoted(line.substring(start, i).trim()));
        start = i + 1;
      }
    }
    return fields.toArray(new String[0]);
  }

  private static String unquoted(String field) {
    boolean quoted = field.length() > 1 && field.startsWith("\"") && field.endsWith("\"");
    return quoted ? field.substring(1, field.length() - 1).replace("\"\"", "\"").trim() : field;
  }
}
