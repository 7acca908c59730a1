package org.ferryglide.nav.magnetic;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import org.ferryglide.nav.position.Position;

/** The models inside the jar, each read once, when first asked for. */
final class BuiltInModels {
  private BuiltInModels() {}

  /** One value, so that it is the same object after serialization. */
  enum InForce implements VariationSource {
    ON_EACH_DATE;

    @Override
    public VariationReading at(Position place, LocalDate date) {
      return MagneticModel.inForceOn(date).at(place, date);
    }

    @Override
    public String toString() {
      return "built-in magnetic models";
    }
  }

  static final class Wmm2025 {
    static final MagneticModel MODEL = read("wmm2025.txt");

    private Wmm2025() {}
  }

  static final class Wmm2020 {
    static final MagneticModel MODEL = read("wmm2020.txt");

    private Wmm2020() {}
  }

  static final class Wmm2015v2 {
    static final MagneticModel MODEL = read("wmm2015v2.txt");

    private Wmm2015v2() {}
  }

  private static MagneticModel read(String resource) {
    try (InputStream stream = BuiltInModels.class.getResourceAsStream(resource)) {
      if (stream == null) {
        throw new IllegalStateException("the jar lacks its own resource " + resource);
      }
      return read(new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The library's own file, which the tests check: any problem is an error here. */
  private static MagneticModel read(BufferedReader reader) throws IOException {
    String name = "";
    double from = 0.0;
    double to = 0.0;
    MagneticErrorModel errors = null;
    CoefficientTable values = new CoefficientTable(0);
    CoefficientTable changes = values;
    for (String line = reader.readLine(); line != null; line = reader.readLine()) {
      String[] words = line.split(" ", -1);
      switch (words[0]) {
        case "#" -> {}
        case "model" -> name = words[1];
        case "span" -> {
          from = Double.parseDouble(words[1]);
          to = Double.parseDouble(words[2]);
        }
        case "degree" -> {
          values = new CoefficientTable(Integer.parseInt(words[1]));
          changes = new CoefficientTable(values.degree);
        }
        case "errors" ->
            errors =
                new MagneticErrorModel(
                    Double.parseDouble(words[1]),
                    Double.parseDouble(words[2]),
                    Double.parseDouble(words[3]),
                    Double.parseDouble(words[4]),
                    Double.parseDouble(words[5]),
                    Double.parseDouble(words[6]),
                    Double.parseDouble(words[7]),
                    Double.parseDouble(words[8]));
        default -> {
          int n = Integer.parseInt(words[0]);
          int m = Integer.parseInt(words[1]);
          values.g[n][m] = Double.parseDouble(words[2]);
          values.h[n][m] = Double.parseDouble(words[3]);
          changes.g[n][m] = Double.parseDouble(words[4]);
          changes.h[n][m] = Double.parseDouble(words[5]);
        }
      }
    }
    return new MagneticModel(
        name,
        values.degree,
        new double[] {from},
        to,
        new double[][] {values.packed()},
        new double[][] {changes.packed()},
        errors);
  }
}
