package org.ferryglide.examples.teach;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.ferryglide.examples.svg.Svg;
import org.ferryglide.nav.chart.ChartTool;
import org.ferryglide.nav.teach.LayingOff;

/**
 * The drawings of the handbook in the javadoc, made from the library's own figures. Run from the
 * project's root, it draws them all again:
 *
 * <pre>{@code
 * HandbookDrawings.main(new String[] {"."});
 * }</pre>
 */
public final class HandbookDrawings {
  private static final String FOLDER = "nav-core/src/main/java/org/ferryglide/nav/teach/doc-files/";

  private HandbookDrawings() {}

  /**
   * Every drawing by the file it stands in.
   *
   * @return drawings by path from the project's root
   */
  public static Map<String, Svg> all() {
    Map<String, Svg> all = new LinkedHashMap<>();
    HandbookProblems.all()
        .forEach(
            (name, problem) ->
                WorkingPicture.of(name, problem).ifPresent(picture -> put(all, picture)));
    put(all, HandbookPictures.leg());
    put(all, HandbookPictures.rose());
    put(all, HandbookPictures.growth());
    put(all, HandbookPictures.day());
    tool(all, "laying-off-baseplate", ChartTool.BASEPLATE_COMPASS, LayingOff.Paper.CHART);
    tool(all, "laying-off-land-map", ChartTool.BASEPLATE_COMPASS, LayingOff.Paper.LAND_MAP);
    tool(all, "laying-off-plotter", ChartTool.TURNING_ROSE_PLOTTER, LayingOff.Paper.CHART);
    tool(all, "laying-off-rules", ChartTool.PARALLEL_RULES, LayingOff.Paper.CHART);
    tool(all, "laying-off-deck-plotter", ChartTool.DECK_PLOTTER, LayingOff.Paper.CHART);
    return all;
  }

  private static void tool(
      Map<String, Svg> all, String name, ChartTool tool, LayingOff.Paper paper) {
    put(all, ToolPicture.of(name, LayingOff.with(tool, paper)));
  }

  private static void put(Map<String, Svg> all, Svg picture) {

    all.put(FOLDER + picture.name() + ".svg", picture);
  }

  /**
   * Writes every drawing to its place.
   *
   * @param args the project's root
   * @throws IOException if a file cannot be written
   */
  public static void main(String[] args) throws IOException {
    for (Map.Entry<String, Svg> drawing : all().entrySet()) {
      Path file = Path.of(args[0]).resolve(drawing.getKey());
      Files.createDirectories(file.getParent());
      Files.write(file, drawing.getValue().file().getBytes(StandardCharsets.UTF_8));
    }
  }
}
