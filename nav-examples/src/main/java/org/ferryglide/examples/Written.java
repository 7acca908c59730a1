package org.ferryglide.examples;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ferryglide.examples.page.CardSheet;
import org.ferryglide.examples.page.Labels;
import org.ferryglide.examples.page.PassagePage;
import org.ferryglide.examples.page.ShoreNote;
import org.ferryglide.examples.page.WorkedPassage;
import org.ferryglide.examples.svg.Raster;
import org.ferryglide.examples.svg.Svg;
import org.ferryglide.nav.measure.Units;
import org.ferryglide.tide.folder.PassageFolder;

/**
 * The files that the main job writes beside what it prints: page, card sheet, shore note, pictures.
 */
final class Written {
  static final String PAGE = "--page";
  static final String SHEET = "--sheet";
  static final String SHORE = "--shore";
  static final String PICTURES = "--pictures";
  static final String UNITS = "--units";
  static final String WORDS = "--words";

  private static final List<String> OPTIONS = List.of(PAGE, SHEET, SHORE, PICTURES);
  private static final double PIXELS_PER_UNIT = 3.0;

  private final Map<String, Path> files = new LinkedHashMap<>();
  private Units units = Units.NAUTICAL;
  private Labels labels = Labels.english();
  private boolean unitsGiven;

  /**
   * Takes an option with what follows it.
   *
   * @return false if this is none of the options
   * @throws IllegalArgumentException if nothing follows it, or it is no unit
   * @throws IOException if the words cannot be read
   */
  boolean takes(String option, Optional<String> value) throws IOException {
    boolean isFile = OPTIONS.contains(option);
    if (!isFile && !option.equals(UNITS) && !option.equals(WORDS)) {
      return false;
    }
    String given =
        value.orElseThrow(
            () ->
                new IllegalArgumentException(
                    option
                        + " must be followed by "
                        + (option.equals(UNITS) ? "units" : "a name")));
    if (option.equals(UNITS)) {
      units = Units.parse(given);
      unitsGiven = true;
    } else if (option.equals(WORDS)) {
      labels = Labels.read(Path.of(given));
    } else {
      files.put(option, Path.of(given));
    }
    return true;
  }

  /** The passage with its way home, in the words and units asked for. */
  WorkedPassage worked(PassageFolder folder) {
    return plain(folder).withWayHome();
  }

  private WorkedPassage plain(PassageFolder folder) {
    return WorkedPassage.of(folder).withUnits(units).withLabels(labels);
  }

  boolean isEmpty() {
    return files.isEmpty();
  }

  /** Whether units were given. */
  boolean isInUnits() {
    return unitsGiven;
  }

  Labels labels() {
    return labels;
  }

  /**
   * Works the passage out and writes what was asked for.
   *
   * @return whether the passage is possible, so that there is a card to write
   */
  boolean write(PassageFolder folder, PrintStream out) throws IOException {
    boolean home = files.containsKey(PAGE) || files.containsKey(SHEET);
    WorkedPassage worked = home ? worked(folder) : plain(folder);
    boolean all = true;
    for (Map.Entry<String, Path> one : files.entrySet()) {
      Path file = one.getValue();
      switch (one.getKey()) {
        case PAGE -> write(file, PassagePage.of(worked).html(), out);
        case SHORE -> write(file, ShoreNote.of(worked).html(), out);
        case SHEET -> {
          Optional<CardSheet> sheet = CardSheet.of(worked);
          if (sheet.isPresent()) {
            write(file, sheet.get().html(), out);
          } else {
            all = false;
            out.println("no card sheet: the passage is not possible as planned");
          }
        }
        default -> pictures(file, worked, out);
      }
    }
    return all;
  }

  private static void pictures(Path folder, WorkedPassage worked, PrintStream out)
      throws IOException {
    Files.createDirectories(folder);
    for (Svg picture : PassagePage.of(worked).pictures()) {
      write(folder.resolve(picture.name() + ".svg"), picture.file(), out);
      Path image = folder.resolve(picture.name() + ".png");
      Files.write(image, Raster.png(picture, PIXELS_PER_UNIT));
      out.println("wrote " + image);
    }
  }

  private static void write(Path file, String text, PrintStream out) throws IOException {
    Files.write(file, text.getBytes(StandardCharsets.UTF_8));
    out.println("wrote " + file);
  }
}
