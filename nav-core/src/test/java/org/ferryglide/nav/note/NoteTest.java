package org.ferryglide.nav.note;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.Collections;
import java.util.List;
import org.ferryglide.nav.reading.InputProblems;
import org.ferryglide.nav.reading.Judgement;
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

  @Test
  void figuresAreNumbersByName() {
    Note note = Note.caution("a.b", "text").with("ageYears", 20.25).with("rose", "4°15'W");
    assertEquals(20.25, note.figures().get("ageYears"));
    assertEquals(List.of("ageYears"), List.copyOf(note.figures().keySet()));
    assertEquals("20.25", note.data().get("ageYears"));
    assertTrue(note.with("ageYears", "unknown").figures().isEmpty());
  }

  @Test
  void aFileOfNothingButMistakesIsRefusedInFewLines() {
    InputProblems problems = new InputProblems("tides.csv");
    for (int line = 1_000_000; line > 0; line--) {
      problems.add(line, 1, "height must be a number");
    }
    assertTrue(problems.isFull());
    InputFormatException refusal = assertThrows(InputFormatException.class, problems::refuseIfAny);
    assertEquals(InputFormatException.MOST_KEPT, refusal.problems().size());
    assertEquals(1_000_000, refusal.found());
    String message = String.valueOf(refusal.getMessage());
    assertTrue(message.endsWith("\nand 999900 more problems"), message);
    // kept are the first told, in the order of the file
    assertEquals(999_901, refusal.problems().get(0).line());
    assertEquals(
        100,
        new InputFormatException(Collections.nCopies(5000, refusal.problems().get(0)))
            .problems()
            .size());
  }

  @Test
  void nothingWrongIsNotRefused() {
    InputProblems problems = new InputProblems("tides.csv");
    assertTrue(problems.isEmpty());
    problems.refuseIfAny();
  }

  @Test
  void aLongFieldIsNotQuotedWhole() {
    String digits = "7".repeat(1_000_000);
    assertTrue(new InputProblem("a", 1, 1, "was " + digits + " there").message().length() < 1100);
    TextFormatException refusal = new TextFormatException("no number", digits + "x", 1_000_000);
    assertTrue(String.valueOf(refusal.getMessage()).length() < 400);
    assertEquals(1_000_001, refusal.input().length());
    assertEquals(
        "no number: at character 2 ('b') of \"abc\"",
        new TextFormatException("no number", "abc", 1).getMessage());
  }

  @Test
  void aJudgementLeavesItsThresholdAndSourceBesideTheDoubt() {
    Judgement swift =
        new Judgement("stream.swift", Severity.CAUTION, 8.0, "knots", "common practice, no source");
    Note note = swift.note("9.4 kn looks too swift.", 9.4);
    assertEquals("CAUTION: 9.4 kn looks too swift.", note.toString());
    assertEquals("stream.swift", note.code());
    assertEquals(9.4, note.figures().get("found"));
    assertEquals(8.0, note.figures().get("threshold"));
    assertEquals("common practice, no source", note.data().get("source"));
    assertThrows(
        IllegalArgumentException.class,
        () -> new Judgement("a", Severity.CAUTION, Double.NaN, "knots", "x"));
    assertThrows(
        IllegalArgumentException.class,
        () -> new Judgement("a", Severity.CAUTION, 1.0, "knots", ""));
  }
}
