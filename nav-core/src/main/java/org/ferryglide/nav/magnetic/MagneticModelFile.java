package org.ferryglide.nav.magnetic;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads magnetic models from the text files their makers publish. */
final class MagneticModelFile {
  private MagneticModelFile() {}

  static MagneticModel readCof(Path path) throws IOException {
    try (BufferedReader reader = Files.newBufferedReader(path, StandardCharsets.UTF_8)) {
      return readCof(path.toString(), reader);
    }
  }

  static MagneticModel readCof(String source, Reader reader) throws IOException {
    return CofText.read(source, new BufferedReader(reader));
  }

  static MagneticModel readShc(Path path) throws IOException {
    try (BufferedReader reader = Files.newBufferedReader(path, StandardCharsets.UTF_8)) {
      return readShc(path.toString(), reader);
    }
  }

  static MagneticModel readShc(String source, Reader reader) throws IOException {
    return ShcText.read(source, new BufferedReader(reader));
  }
}
