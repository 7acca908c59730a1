package org.ferryglide.tide.folder;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ferryglide.nav.bearing.CompassBearing;
import org.ferryglide.nav.bearing.Deviation;
import org.ferryglide.nav.bearing.DeviationTable;
import org.ferryglide.nav.bearing.HeadingDeviation;
import org.ferryglide.tide.sheet.Sheet;

/** Reads {@code deviation.csv}: the card of the compass on deck. */
final class DeviationSheet {
  private DeviationSheet() {}

  static DeviationTable read(FolderText file) throws IOException {
    Sheet sheet =
        Sheet.read(
            file.source(), file.reader(), List.of("compass_heading", "deviation"), List.of());
    List<HeadingDeviation> entries = new ArrayList<>();
    for (Sheet.Row row : sheet.rows()) {
      Optional<CompassBearing> heading =
          row.read(
              "compass_heading", text -> Optional.of(CompassBearing.parse(text)), Optional.empty());
      Optional<Deviation> deviation =
          row.read("deviation", text -> Optional.of(Deviation.parse(text)), Optional.empty());
      if (heading.isPresent() && deviation.isPresent()) {
        entries.add(new HeadingDeviation(heading.get(), deviation.get()));
      }
    }
    sheet.refuseIfFaulty();
    return DeviationTable.through(entries);
  }
}
