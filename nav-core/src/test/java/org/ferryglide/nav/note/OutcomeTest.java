package org.ferryglide.nav.note;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class OutcomeTest {
  private record TooShallow(double lackingMetres) implements Why {
    private static final long serialVersionUID = 1L;

    @Override
    public String message() {
      return "too shallow by " + lackingMetres + " m";
    }
  }

  private static final TooShallow SHALLOW = new TooShallow(0.5);
  private static final Outcome<Integer, TooShallow> SOLVED = Outcome.ofSolved(42);
  private static final Outcome<Integer, TooShallow> NOT = Outcome.ofUnsolved(SHALLOW);

  @Test
  void bothCasesAreMet() {
    assertEquals("42", SOLVED.match(Object::toString, Why::message));
    assertEquals("too shallow by 0.5 m", NOT.match(Object::toString, Why::message));
    assertNull(SOLVED.<Object>match(n -> null, Why::message), "a match may make null");
  }

  @Test
  void mapAndOrElseReadInOneLine() {
    assertEquals("n 42", SOLVED.map(n -> "n " + n).orElse(Why::message));
    assertEquals("too shallow by 0.5 m", NOT.map(n -> "n " + n).orElse(Why::message));
    assertEquals(0.5, NOT.map(n -> (double) n).orElse(TooShallow::lackingMetres));
  }

  @Test
  void eachCaseTellsItself() {
    assertTrue(SOLVED.isSolved());
    assertFalse(NOT.isSolved());
    assertEquals(Optional.of(42), SOLVED.solved());
    assertEquals(Optional.empty(), SOLVED.why());
    assertEquals(Optional.empty(), NOT.solved());
    assertEquals(Optional.of(SHALLOW), NOT.why());
  }

  @Test
  void throwingCarriesTheReason() {
    assertEquals(42, SOLVED.orElseThrow());
    NoAnswerException thrown = assertThrows(NoAnswerException.class, NOT::orElseThrow);
    assertSame(SHALLOW, thrown.why());
  }
}
