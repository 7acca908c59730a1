package org.ferryglide.nav.magnetic;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Reads magnetic models from the text files their makers publish, for a model that is not built in:
 * the next World Magnetic Model, or the International Geomagnetic Reference Field.
 *
 * <pre>{@code
 * MagneticModel igrf = MagneticModelFile.readShc(Path.of("igrf14coeffs.shc"));
 * igrf.at(LocalDate.of(1930, 1, 1)).variation(place);
 * }</pre>
 *
 * <p>A file with anything wrong in it is refused with every problem, its line and its field. A
 * model read from a file carries no error model until {@link MagneticModel#withErrorModel} gives it
 * one.
 */
public final class MagneticModelFile {
  private MagneticModelFile() {}

  /**
   * Reads a {@code .COF} file as the World Magnetic Model publishes it.
   *
   * @param path the file
   * @return the model
   * @throws IOException if the file cannot be read
   * @throws org.ferryglide.nav.note.InputFormatException if the file breaks the form described at
   *     {@link #readCof(String, Reader)}
   */
  public static MagneticModel readCof(Path path) throws IOException {
    try (BufferedReader reader = Files.newBufferedReader(path, StandardCharsets.UTF_8)) {
      return readCof(path.toString(), reader);
    }
  }

  /**
   * Reads text in the form of a {@code .COF} file of the World Magnetic Model: a line with epoch
   * and name (what follows, the date of the file, is neither epoch nor limit and is passed over);
   * then for each degree n and order m a line {@code n m g h change-of-g change-of-h}, complete up
   * to the highest degree; then a line of nines.
   *
   * <p>The form does not say how long the model holds; five years from its epoch are taken, as for
   * every World Magnetic Model so far.
   *
   * @param source what to call the text in messages
   * @param reader the text; left open
   * @return the model
   * @throws IOException if reading fails
   * @throws org.ferryglide.nav.note.InputFormatException if the text breaks that form
   */
  public static MagneticModel readCof(String source, Reader reader) throws IOException {
    return CofText.read(source, new BufferedReader(reader));
  }

  /**
   * Reads a {@code .shc} file as the International Geomagnetic Reference Field publishes it.
   *
   * @param path the file; its name without the ending becomes the model's name
   * @return the model
   * @throws IOException if the file cannot be read
   * @throws org.ferryglide.nav.note.InputFormatException if the file breaks the form described at
   *     {@link #readShc(String, Reader)}
   */
  public static MagneticModel readShc(Path path) throws IOException {
    try (BufferedReader reader = Files.newBufferedReader(path, StandardCharsets.UTF_8)) {
      return readShc(path.toString(), reader);
    }
  }

  /**
   * Reads text in the form of a {@code .shc} file: comment lines that begin with #; a line with the
   * lowest degree (1), the highest degree, the number of dates, the order of the spline (2:
   * straight lines between the dates; 1: a single date) and the number of steps (1); a line with
   * the dates as decimal years; then for each degree n and order m, negative for h, a line {@code n
   * m} with one value for each date, complete up to the highest degree.
   *
   * <p>The span is that of the dates. A single date gives a field that does not change, for that
   * moment alone.
   *
   * @param source what to call the text in messages; without folders and ending it becomes the
   *     model's name
   * @param reader the text; left open
   * @return the model
   * @throws IOException if reading fails
   * @throws org.ferryglide.nav.note.InputFormatException if the text breaks that form
   */
  public static MagneticModel readShc(String source, Reader reader) throws IOException {
    return ShcText.read(source, new BufferedReader(reader));
  }
}
