package org.ferryglide.examples.command;

import java.io.IOException;
import java.nio.file.Path;
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
  @Parameters(index = "0", paramLabel = "FOLDER", description = "A folder that is not yet there.")
  private Path folder = Path.of("");

  @Option(names = "--gpx", paramLabel = "FILE", description = "A GPX 1.1 file with a route.")
  private @Nullable Path gpx;

  @Option(
      names = "--route",
      paramLabel = "N",
      defaultValue = "1",
      description = "Which route of the file (1 if left out).")
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
    if (route < 1 || route > content.routes().size()) {
      throw new InputRefused(
          file
              + ": holds "
              + content.routes().size()
              + " routes, but route "
              + route
              + " is asked for");
    }
    return content.routes().get(route - 1);
  }
}
