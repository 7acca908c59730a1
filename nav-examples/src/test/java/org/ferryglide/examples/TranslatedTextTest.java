package org.ferryglide.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.ferryglide.examples.page.Labels;
import org.ferryglide.examples.page.TrialTranslation;
import org.ferryglide.tide.folder.PassageFolder;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** The plain text of the main job in a trial translation: no word of its own stays English. */
class TranslatedTextTest {
  /** Of these the departures of the day too, which take longer than all else. */
  private static final Set<String> WITH_DEPARTURES = Set.of("as it comes", "without tides");

  private static PassageFolder folder(String... edits) throws Exception {
    PassageFolder folder = PassageFolder.read(Path.of("scenarios", "ollen-skerries"));
    for (int i = 0; i < edits.length; i += 3) {
      String text = folder.texts().get(edits[i]);
      assertTrue(text.contains(edits[i + 1]), edits[i + 1]);
      folder = folder.withFile(edits[i], text.replace(edits[i + 1], edits[i + 2]));
    }
    return folder;
  }

  /** Folders that between them print nearly all labels of the text. */
  private static Map<String, PassageFolder> folders() throws Exception {
    Map<String, PassageFolder> folders = new LinkedHashMap<>();
    folders.put("as it comes", folder());
    folders.put("doubtful", TrialTranslation.doubtful());
    folders.put("without tides", folder("passage.csv", "2026-06-14", "2026-07-14"));
    folders.put(
        "not possible",
        folder(
            "streams.csv",
            "-4,006,1.7,0.8",
            "-4,006,9.7,6.8",
            "streams.csv",
            "-3,005,2.1,1.0",
            "-3,005,9.1,6.0"));
    folders.put(
        "too slow", folder("party.csv", "3.0 kn", "1.5 kn", "passage.csv", "3.5 kn", "1.9 kn"));
    folders.put("by night", folder("passage.csv", "T11:40+01:00", "T22:40+01:00"));
    folders.put("out of reach", folder("limits.csv", "6.0 NM", "3.0 NM"));
    folders.put("far station", folder("streams.csv", "46.235,-26.17", "46.235,26.17"));
    folders.put("old model", folder("passage.csv", "2026-06-14", "2031-06-14"));
    folders.put("stop", folder("places.csv", ",0.4,4.2,200,290,", ",0.4,4.2,200,290,60 min"));
    folders.put(
        "too late",
        folder(
            "places.csv",
            ",0.4,4.2,200,290,",
            ",0.4,4.2,200,290,60 min",
            "limits.csv",
            "strongest stream",
            "latest arrival,2026-06-14T14:57+01:00\nstrongest stream"));
    return folders;
  }

  @TestFactory
  Stream<DynamicTest> nothingOfTheTextStaysEnglish() throws Exception {
    Labels translation = TrialTranslation.labels();
    return folders().entrySet().stream()
        .map(
            it ->
                DynamicTest.dynamicTest(
                    it.getKey(),
                    () -> {
                      PassageFolder folder = it.getValue();
                      PassageReport report = PassageReport.of(folder);
                      List<String> more = new ArrayList<>();
                      folder
                          .streams()
                          .forEach(
                              stream ->
                                  more.addAll(
                                      List.of(stream.table().station(), stream.tides().port())));
                      List<String> given =
                          TrialTranslation.given(folder.passage(), folder.notes(), more);
                      assertEquals(
                          Set.of(), TrialTranslation.roman(given, report.text(translation)));
                      if (WITH_DEPARTURES.contains(it.getKey())) {
                        assertEquals(
                            Set.of(),
                            TrialTranslation.roman(given, report.departures(translation)));
                      }
                    }));
  }
}
