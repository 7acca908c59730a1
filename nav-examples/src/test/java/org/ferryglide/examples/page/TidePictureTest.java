package org.ferryglide.examples.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import org.ferryglide.examples.svg.Svg;
import org.ferryglide.tide.folder.PassageFolder;
import org.ferryglide.tide.height.TideEvent;
import org.junit.jupiter.api.Test;

/** The waters told beside the curve of a tide table are the table's own. */
class TidePictureTest {
  @Test
  void theWatersOfTheDayAreThoseOfTheTableToTheMinuteAndTheTenth() throws Exception {
    PassageFolder folder = PassageFolder.read(Path.of("scenarios", "ollen-skerries"));
    WorkedPassage worked = WorkedPassage.of(folder);
    Svg picture = TidePicture.all(worked, Labels.english()).get(0);
    assertEquals("Dunlathe", folder.landingTide().port());
    int told = 0;
    for (TideEvent water : folder.landingTide().events()) {
      OffsetDateTime local = water.time().atOffset(folder.start().getOffset());
      if (local.toLocalDate().equals(LocalDate.of(2026, 6, 14))) {
        String words =
            (water.isHigh() ? "High" : "Low")
                + " water "
                + local.toLocalTime()
                + ", "
                + water.height().metres()
                + " m.";
        assertTrue(picture.file().contains(words), words + "\n" + picture.file());
        told++;
      }
    }
    assertEquals(4, told, "high and low waters of the day");
  }
}
