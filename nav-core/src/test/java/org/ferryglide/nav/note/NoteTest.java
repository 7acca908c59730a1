package org.ferryglide.nav.note;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import org.junit.jupiter.api.Test;

class NoteTest {
  @Test
  void figuresKeepTheirOrderAndTheNoteItsText() {
    Note note =
        Note.caution("rose.old", "The rose is 20 years old.")
            .with("ageYears", 20)
            .with("rose", "4°15'W");
    assertEquals("CAUTION: The rose is 20 years old.", note.toString());
    assertEquals(List.of("ageYears", "rose"), List.copyOf(note.data().keySet()));
    assertThrows(UnsupportedOperationException.class, () -> note.data().put("more", "1"));
  }

  @Test
  void aNoteWithoutCodeOrTextIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Note.information("", "text"));
    assertThrows(IllegalArgumentException.class, () -> Note.warning("code", ""));
  }

  @Test
  void aNoteCrossesAStream() throws Exception {
    Note note = Note.warning("a.b", "text").with("x", 1.5);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(note);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      assertEquals(note, in.readObject());
    }
  }

  @Test
  void aFileIsRefusedWithEveryProblem() {
    InputFormatException refusal =
        new InputFormatException(
            List.of(
                new InputProblem("tides.csv", 7, 3, "height must be a number"),
                new InputProblem("tides.csv", 0, 0, "no high water")));
    assertEquals(
        "tides.csv, line 7, column 3: height must be a number\ntides.csv: no high water",
        refusal.getMessage());
    assertEquals(2, refusal.problems().size());
    assertThrows(IllegalArgumentException.class, () -> new InputFormatException(List.of()));
  }
}
