package org.ferryglide.nav.note;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.StringReader;
import java.util.Map;
import org.junit.jupiter.api.Test;

class WordsTest {
  private static final Note WHY = Note.information("why.far", "too far").with("miles", 9.0);
  private static final Note NOTE =
      Note.caution("finding", "the skerry: too far").with("place", "the skerry").with("why", WHY);

  private static String plain(Words words, Note note) {
    return words.say(note, (of, name) -> of.data().get(name));
  }

  @Test
  void aPartIsSaidInTheWordsOfItsOwnCodeWithItsOwnFigures() {
    Words words =
        Words.of(
            Map.of("note.finding", "{place} : {why}", "note.why.far", "trop loin, {miles} milles"));
    assertEquals("the skerry : trop loin, 9.0 milles", plain(words, NOTE));
    assertEquals(
        "trop loin, 9.0 milles", words.sayPart(NOTE, "why", (of, name) -> of.data().get(name)));
  }

  @Test
  void aPartWithoutWordsStaysEnglish() {
    assertEquals(
        "the skerry : too far", plain(Words.of(Map.of("note.finding", "{place} : {why}")), NOTE));
    assertEquals("the skerry: too far", plain(Words.of(Map.of()), NOTE));
  }

  /** A translation that is wrong must not take a warning away. */
  @Test
  void wordsThatNameWhatANoteHasNotGiveWayToItsOwnEnglish() {
    Words words = Words.of(Map.of("note.finding", "{depth} of water"));
    assertEquals("the skerry: too far", plain(words, NOTE));
  }

  @Test
  void laterWordsStandInPlaceOfEarlierOnes() throws Exception {
    Words words =
        Words.of(Map.of("a", "one", "b", "two")).with(Words.read(new StringReader("b = deux {n}")));
    assertEquals("one", words.say("a"));
    assertEquals("deux 2", words.say("b", "n", "2"));
    assertThrows(IllegalArgumentException.class, () -> words.say("b"));
    assertThrows(IllegalArgumentException.class, () -> words.say("c"));
  }
}
