package org.ferryglide.examples.teach;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.ferryglide.examples.svg.Markup;
import org.ferryglide.nav.chart.ChartTool;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.Step;
import org.ferryglide.nav.teach.Problem;
import org.ferryglide.nav.teach.Quantity;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class WorksheetTest {
  private static final Exercises EXERCISES = Exercises.of(7, 20);

  @Test
  void bothSheetsAreWellFormedAndNeedNothingBesideThem() throws Exception {
    Worksheet sheet = Worksheet.of(EXERCISES);
    for (String html : List.of(sheet.questions(), sheet.answers())) {
      Document read =
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(new InputSource(new StringReader(html.replace("<!DOCTYPE html>", ""))));
      assertEquals("en", read.getDocumentElement().getAttribute("lang"));
      assertEquals(0, read.getElementsByTagName("script").getLength());
      assertEquals(0, read.getElementsByTagName("link").getLength());
      assertEquals(1, read.getElementsByTagName("h1").getLength());
      assertTrue(html.length() < 300_000);
    }
  }

  @Test
  void theQuestionsHoldEveryExerciseAndNoAnswer() {
    String questions = Worksheet.of(EXERCISES).questions();
    String answers = Worksheet.of(EXERCISES).answers();
    for (Exercise exercise : EXERCISES.list()) {
      String words = exercise.story().replace("\"", "&quot;");
      assertTrue(questions.contains(words), words);
      assertFalse(questions.contains(exercise.answer()), exercise.answer());
      assertTrue(answers.contains(exercise.answer()), exercise.answer());
    }
  }

  @Test
  void theAnswersShowEveryStepAndItsPictureAndTheQuestionsEveryTool() {
    String questions = Worksheet.of(EXERCISES).questions();
    String answers = Worksheet.of(EXERCISES).answers();
    for (Exercise exercise : EXERCISES.list()) {
      for (Step step : exercise.problem().working().steps()) {
        assertTrue(answers.contains(Markup.escaped(step.rule())), step.rule());
      }
      String name = "exercise-" + exercise.number();
      boolean drawn = WorkingPicture.of(name, exercise.problem()).isPresent();
      assertEquals(drawn, answers.contains("id=\"" + name + "-title\""), name);
    }
    for (ChartTool tool : ChartTool.all()) {
      assertTrue(questions.contains("Laying off with " + tool.name()), tool.name());
    }
  }

  @Test
  void theRightAnswersWrittenOutAreMarkedRight() {
    List<String> lines = new ArrayList<>(List.of("# all right"));
    for (Exercise exercise : EXERCISES.list()) {
      Problem problem = exercise.problem();
      Quantity quantity = problem.quantity(problem.figures().get(problem.figures().size() - 1));
      lines.add(exercise.number() + "," + quantity.text(quantity.rounded(problem.answer())));
    }
    MarkedSheet marked = MarkedSheet.of(EXERCISES, "answers", lines);
    assertEquals(20, marked.markings().size());
    assertEquals(20, marked.right(), marked::toString);
  }

  @Test
  void allBadLinesAreToldAtOnce() {
    InputFormatException refused =
        assertThrows(
            InputFormatException.class,
            () ->
                MarkedSheet.of(
                    EXERCISES, "answers", List.of("1,400", "21,3", "1", "2,Nothing,3", "1,x")));
    assertEquals(5, refused.problems().size());
    assertEquals(3, refused.problems().get(2).line());
    assertTrue(refused.problems().get(0).message().contains("bearing"));
  }

  @Test
  void figuresAreReadAsTheyAreWritten() {
    assertEquals(49.0, WrittenFigure.read(Quantity.MAGNETIC_BEARING, "049°M"));
    assertEquals(845.0, WrittenFigure.read(Quantity.CLOCK, " 14:05 "));
    assertEquals(65.0, WrittenFigure.read(Quantity.MINUTES, "1 h 05 min"));
    assertEquals(65.0, WrittenFigure.read(Quantity.MINUTES, "65"));
    assertEquals(-5.0, WrittenFigure.read(Quantity.MINUTES, "-5 min"));
    assertEquals(3.4, WrittenFigure.read(Quantity.NAUTICAL_MILES, "3.4 NM"));
    assertEquals(-4.25, WrittenFigure.read(Quantity.EAST_WEST, "4°15'W"));
    for (String wrong : List.of("", "h", "25:00", "12:60", "NaN", "1e3")) {
      assertThrows(IllegalArgumentException.class, () -> WrittenFigure.read(Quantity.CLOCK, wrong));
      assertThrows(IllegalArgumentException.class, () -> WrittenFigure.read(Quantity.KNOTS, wrong));
    }
  }

  @Test
  void noLegGoesFromAMarkToItself() {
    for (long seed = 0; seed < 40; seed++) {
      Exercise first = Exercises.of(seed, 10).list().get(0);
      String[] marks = first.story().split(" from | to | on the sheet", -1);
      if (first.story().startsWith("Lay off")) {
        assertFalse(marks[1].equals(marks[2]), first.story());
      }
    }
  }
}
