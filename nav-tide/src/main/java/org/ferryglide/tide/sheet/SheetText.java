package org.ferryglide.tide.sheet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.StringReader;
import java.nio.Buffer;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.InputProblem;

/** Text of sheets: from files, and into messages. */
final class SheetText {
  /** How much of a field a message quotes. */
  private static final int LONGEST_QUOTE = 60;

  private static final int LONGEST_MESSAGE = 1000;

  /** Of what has no size of its own, as a pipe or a device. */
  private static final long MOST_OF_A_DEVICE = 16L << 20;

  private SheetText() {}

  /** The text of a file in UTF-8; refused by line and column where it is not. */
  static Reader open(String source, Path file) throws IOException {
    if (Files.isDirectory(file)) {
      throw refusal(source, 0, 0, "must be a file, but is a folder");
    }
    byte[] bytes = bytes(source, file);
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder(); // reports what is malformed
    ByteBuffer input = ByteBuffer.wrap(bytes);
    CharBuffer text = CharBuffer.allocate(bytes.length);
    CoderResult result = decoder.decode(input, text, true);
    ((Buffer) text).flip(); // Android 8 knows it of Buffer alone
    if (result.isError()) {
      throw notUtf8(source, text, bytes[input.position()]);
    }
    return new StringReader(text.toString());
  }

  /** All bytes of a file, or of a pipe that ends. */
  private static byte[] bytes(String source, Path file) throws IOException {
    long most = Files.isRegularFile(file) ? BoundedReader.MOST_CHARACTERS : MOST_OF_A_DEVICE;
    if (Files.size(file) > most) {
      throw tooLarge(source, most, Long.toString(Files.size(file)));
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream((int) Files.size(file) + 1);
    byte[] some = new byte[8192];
    try (InputStream in = Files.newInputStream(file)) {
      for (int count = in.read(some); count >= 0; count = in.read(some)) {
        bytes.write(some, 0, count);
        if (bytes.size() > most) {
          throw tooLarge(source, most, "more");
        }
      }
    }
    return bytes.toByteArray();
  }

  private static InputFormatException tooLarge(String source, long most, String given) {
    return refusal(source, 0, 0, "must have at most " + most + " bytes, but had " + given);
  }

  private static InputFormatException notUtf8(String source, CharSequence before, byte found) {
    int line = 1;
    int column = 1;
    for (int i = 0; i < before.length(); i++) {
      char character = before.charAt(i);
      if (character == '\n' || (character == '\r' && !isFollowedByNewline(before, i))) {
        line++;
        column = 1;
      } else if (character == ',') {
        column++;
      }
    }
    return refusal(
        source,
        line,
        column,
        "must be text in UTF-8, but has the byte 0x"
            + Integer.toHexString(found & 0xff)
            + "; save it again in that encoding");
  }

  private static boolean isFollowedByNewline(CharSequence text, int index) {
    return index + 1 < text.length() && text.charAt(index + 1) == '\n';
  }

  static InputFormatException refusal(String source, int line, int column, String message) {
    return new InputFormatException(new InputProblem(source, line, column, message));
  }

  /** A field between quotation marks, shortened, as messages give it. */
  static String quote(String field) {
    return "\""
        + (field.length() <= LONGEST_QUOTE ? field : field.substring(0, LONGEST_QUOTE) + "…")
        + "\"";
  }

  /** A hint at the word nearest to one that is not allowed, empty if none is near. */
  static String didYouMean(String word, List<String> allowed) {
    String wanted = word.toLowerCase(Locale.ROOT);
    if (wanted.isEmpty() || wanted.length() > LONGEST_QUOTE) {
      return "";
    }
    String nearest = "";
    int fewest = Math.max(1, wanted.length() / 3) + 1;
    for (String candidate : allowed) {
      int changes = changes(wanted, candidate.toLowerCase(Locale.ROOT));
      if (changes < fewest) {
        fewest = changes;
        nearest = candidate;
      }
    }
    return nearest.isEmpty() ? "" : "; did you mean " + nearest + "?";
  }

  /** How many letters must be changed, added or taken out to make one word of another. */
  private static int changes(String from, String to) {
    int[] above = new int[to.length() + 1];
    for (int j = 0; j < above.length; j++) {
      above[j] = j;
    }
    for (int i = 1; i <= from.length(); i++) {
      int[] row = new int[above.length];
      row[0] = i;
      for (int j = 1; j < row.length; j++) {
        int swap = above[j - 1] + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(swap, 1 + Math.min(above[j], row[j - 1]));
      }
      above = row;
    }
    return above[above.length - 1];
  }

  /** A message that a terminal can take: without control characters, and of bounded length. */
  static String printable(String message) {
    StringBuilder text = new StringBuilder();
    int length = Math.min(message.length(), LONGEST_MESSAGE);
    for (int i = 0; i < length; i++) {
      char character = message.charAt(i);
      if (Character.isISOControl(character)) {
        text.append("\\u").append(Integer.toHexString(0x10000 + character).substring(1));
      } else {
        text.append(character);
      }
    }
    return length < message.length() ? text.append('…').toString() : text.toString();
  }

  /**
   * Whether a text is a decimal number: digits with at most one point, a sign before them, an
   * exponent after them. Narrower than Double.parseDouble, which reads "NaN", "Infinity", "1f" and
   * hexadecimal; and read once from left to right, however long it is.
   */
  static boolean isDecimal(String text) {
    int length = text.length();
    int i = isSign(text, 0) ? 1 : 0;
    int digits = 0;
    boolean point = false;
    for (; i < length; i++) {
      char character = text.charAt(i);
      if (isDigit(character)) {
        digits++;
      } else if (character == '.' && !point) {
        point = true;
      } else {
        break;
      }
    }
    if (digits == 0 || i == length) {
      return digits > 0;
    }
    if (text.charAt(i) != 'e' && text.charAt(i) != 'E') {
      return false;
    }
    i += isSign(text, i + 1) ? 2 : 1;
    int exponent = i;
    while (i < length && isDigit(text.charAt(i))) {
      i++;
    }
    return i == length && i > exponent;
  }

  private static boolean isSign(String text, int index) {
    return index < text.length() && (text.charAt(index) == '-' || text.charAt(index) == '+');
  }

  private static boolean isDigit(char character) {
    return character >= '0' && character <= '9';
  }
}
