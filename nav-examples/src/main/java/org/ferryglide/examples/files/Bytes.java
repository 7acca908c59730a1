package org.ferryglide.examples.files;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.InputProblem;

/**
 * Files read up to a bound and written whole, whatever they are: a pipe and a device have no size.
 *
 * <pre>{@code
 * String text = Bytes.text(Path.of("answers.csv"), 1_000_000);
 * Bytes.write(Path.of("copy.csv"), text);
 * }</pre>
 */
public final class Bytes {
  private Bytes() {}

  /**
   * Reads a file or a pipe.
   *
   * @param file the file
   * @param most how many bytes it may hold
   * @return what it holds
   * @throws InputFormatException if it is a folder or holds more
   * @throws IOException if it cannot be read
   */
  public static byte[] of(Path file, int most) throws IOException {
    if (Files.isDirectory(file)) {
      throw refused(file, "must be a file, but is a folder");
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (InputStream in = Files.newInputStream(file)) {
      byte[] some = new byte[8192];
      for (int count = in.read(some); count >= 0; count = in.read(some)) {
        bytes.write(some, 0, count);
        if (bytes.size() > most) {
          throw refused(file, "must hold at most " + most + " bytes, but has more");
        }
      }
    }
    return bytes.toByteArray();
  }

  /**
   * Reads a file or a pipe as text.
   *
   * @param file the file
   * @param most how many bytes it may hold
   * @return its text
   * @throws InputFormatException if it is a folder, holds more, or is no UTF-8
   * @throws IOException if it cannot be read
   */
  public static String text(Path file, int most) throws IOException {
    byte[] bytes = of(file, most);
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(java.nio.ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      throw refused(file, "must be text in UTF-8, but is not");
    }
  }

  private static InputFormatException refused(Path file, String message) {
    return new InputFormatException(new InputProblem(file.toString(), 0, 0, message));
  }

  /**
   * Writes a text as UTF-8.
   *
   * @param file the file; what stands in it is lost
   * @param text the text
   * @throws IOException if it cannot be written, with the file
   */
  public static void write(Path file, String text) throws IOException {
    try {
      Files.write(file, text.getBytes(StandardCharsets.UTF_8));
    } catch (FileSystemException e) {
      throw e;
    } catch (IOException e) { // as on a full disk
      throw (IOException)
          new FileSystemException(file.toString(), null, e.getMessage()).initCause(e);
    }
  }
}
