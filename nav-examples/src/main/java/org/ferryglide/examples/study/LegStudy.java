package org.ferryglide.examples.study;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.ferryglide.examples.svg.Raster;
import org.ferryglide.examples.svg.Svg;

/**
 * The study of errors of legs: so many legs drawn from a seed, each error of each worked, told by
 * length and latitude.
 *
 * <pre>{@code
 * LegStudy study = LegStudy.ofSeed(1).withLegs(20_000);
 * study.writeTo(Path.of("study"));
 * }</pre>
 *
 * <p>The same seed and number of legs give the same bytes.
 */
public final class LegStudy {
  private static final int USUAL_LEGS = 20_000;
  private static final int MOST_LEGS = 100_000_000;
  private static final double PIXELS_A_UNIT = 2.0;

  private final long seed;
  private final int legs;

  private LegStudy(long seed, int legs) {
    this.seed = seed;
    this.legs = legs;
  }

  /**
   * A study of 20 000 legs.
   *
   * @param seed what they are drawn from
   * @return the study
   */
  public static LegStudy ofSeed(long seed) {
    return new LegStudy(seed, USUAL_LEGS);
  }

  /**
   * A study of another size.
   *
   * @param count how many legs, in [100, 100 000 000]
   * @return a study with everything else the same
   * @throws IllegalArgumentException if {@code count} is out of range
   */
  public LegStudy withLegs(int count) {
    if (count < 100 || count > MOST_LEGS) {
      throw new IllegalArgumentException(
          "legs of a study must be in [100, " + MOST_LEGS + "], but were " + count);
    }
    return new LegStudy(seed, count);
  }

  /**
   * Works the study.
   *
   * @return its figures
   */
  StudyFigures work() {
    return StudyFigures.of(new DrawnLegs(seed), legs);
  }

  /**
   * Works the study and writes {@code report.md}, {@code differences.csv}, {@code errors.csv} and
   * four pictures, each as SVG and PNG.
   *
   * @param folder where they go; made if it is not there
   * @throws IOException if a file cannot be written
   */
  public void writeTo(Path folder) throws IOException {
    StudyFigures figures = work();
    Files.createDirectories(folder);
    write(folder, "errors.csv", StudyTables.errors(figures));
    write(folder, "differences.csv", StudyTables.differences());
    write(folder, "report.md", StudyReport.text(seed, figures));
    for (Svg picture : StudyPictures.all(figures)) {
      write(folder, picture.name() + ".svg", picture.file());
      Files.write(folder.resolve(picture.name() + ".png"), Raster.png(picture, PIXELS_A_UNIT));
    }
  }

  private static void write(Path folder, String name, String text) throws IOException {
    Files.write(folder.resolve(name), text.getBytes(StandardCharsets.UTF_8));
  }
}
