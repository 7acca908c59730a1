package org.ferryglide.examples.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.ferryglide.examples.files.FolderStart;
import org.ferryglide.examples.files.GpxContent;
import org.ferryglide.examples.files.GpxFile;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A new passage's folder, its way points from a GPX route if there is one. */
@Command(
    name = "begin",
    description = "Begin a passage's folder, its way points from a GPX route if one is given.",
    footer = {
      "",
      "What is missing is marked in the files; ferryglide check FOLDER tells it.",
      "",
      "Example:",
      "  ferryglide begin target/my-passage --gpx nav-examples/scenarios/ollen-skerries.gpx"
    })
final class BeginVerb extends Verb {
  /** What of a GPX file becomes the way points. */
  enum Of {
    ROUTE,
    WAYPOINTS,
    TRACK
  }

  /** A track of more is where somebody was, and no list of way points. */
  private static final int MOST_OF_A_TRACK = 50;

  @Parameters(index = "0", paramLabel = "FOLDER", description = "A folder that is not yet there.")
  private Path folder = Path.of("");

  @Option(names = "--gpx", paramLabel = "FILE", description = "A GPX 1.1 file with a route.")
  private @Nullable Path gpx;

  @Option(
      names = "--of",
      description = "route (if left out), waypoints, or a track of 50 points at most.")
  private Of of = Of.ROUTE;

  @Option(
      names = "--route",
      paramLabel = "N",
      defaultValue = "1",
      description = "Which route, or which track, of the file (1 if left out).")
  private int route = 1;

  @Override
  protected Answer answer() throws IOException {
    FolderStart start;
    if (gpx == null) {
      start = FolderStart.empty();
    } else {
      GpxContent.Line route = route(gpx);
      start = InputRefused.given(() -> FolderStart.of(route));
    }
    start.write(folder);
    return new Answer()
        .line(
            "begun "
                + folder
                + "; fill in what is marked MISSING, then: ferryglide check "
                + folder)
        .value("folder", folder.toString())
        .value("missing", start.missing());
  }

  private GpxContent.Line route(Path file) throws IOException {
    GpxContent content = GpxFile.read(file);
    if (of == Of.WAYPOINTS) {
      return new GpxContent.Line("", content.wayPoints());
    }
    List<GpxContent.Line> lines = of == Of.ROUTE ? content.routes() : content.tracks();
    String what = of == Of.ROUTE ? "route" : "track";
    if (route < 1 || route > lines.size()) {
      throw new InputRefused(
          file
              + ": holds "
              + lines.size()
              + " "
              + what
              + "s, but "
              + what
              + " "
              + route
              + " is asked for");
    }
    GpxContent.Line line = lines.get(route - 1);
    if (of == Of.TRACK && line.points().size() > MOST_OF_A_TRACK) {
      throw new InputRefused(
          file
              + ": a track must have at most 50 points to be way points, but has "
              + line.points().size());
    }
    return line;
  }
}
