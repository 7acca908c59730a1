package org.ferryglide.examples.teach;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.ferryglide.nav.teach.Explanation;
import org.ferryglide.nav.teach.Marking;
import org.ferryglide.nav.teach.Problem;
import org.ferryglide.nav.teach.Quantity;
import org.ferryglide.nav.teach.Slip;
import org.ferryglide.testing.Seeds;
import org.junit.jupiter.api.Test;

/**
 * The slips that a marker of this trade must know (common practice, no source), each with the words
 * under which some problem knows it; and what every one of them must do.
 */
class SlipTableTest {
  /** Slips that move the answer by less have no effect at all. */
  private static final double NO_EFFECT = 1e-9;

  private static final Map<String, String> TABLE = new LinkedHashMap<>();

  static {
    TABLE.put("reversed by 180°", "reversed by 180°");
    TABLE.put("off by 90°", "90° too much");
    TABLE.put("off by 90°, the other way", "90° too little");
    TABLE.put("variation left out", "variation left out");
    TABLE.put("variation doubled", "variation applied twice");
    TABLE.put("variation with the wrong sign", "variation with the wrong sign");
    TABLE.put("convergence left out", "convergence left out");
    TABLE.put("wrong ring of the rose", "wrong ring of the rose");
    TABLE.put("the rose's year forgotten", "year of the rose forgotten");
    TABLE.put("deviation from the wrong heading", "wrong heading");
    TABLE.put("stream set reversed", "Set: reversed by 180°");
    TABLE.put("wind taken as where it goes", "wind taken as where it goes");
    TABLE.put("leeway to the wrong side", "leeway to the wrong side");
    TABLE.put("table hour off by one", "table hour off by one");
    TABLE.put("high water of the wrong port", "high water of the wrong port");
    TABLE.put("high water of the wrong day", "high water of the wrong day");
    TABLE.put("an hour's zone slip", "an hour late: zone or summer time");
    TABLE.put("an hour's zone slip, the other way", "an hour early: zone or summer time");
    TABLE.put("nautical and statute miles", "statute miles");
    TABLE.put("springs and neaps swapped", "springs and neaps swapped");
    TABLE.put("height from the wrong datum", "height from the wrong datum");
    TABLE.put("minutes taken as hundredths", "minutes taken as hundredths");
    TABLE.put("hundredths taken as minutes", "hundredths of an hour taken for minutes");
    TABLE.put("latitude scale at the wrong latitude", "latitude scale at the wrong latitude");
    TABLE.put("miles off the longitude scale", "miles off the longitude scale");
    TABLE.put("kilometres for miles", "kilometres taken for nautical miles");
    TABLE.put("end of the stream joined to the mark", "end of the stream joined to the mark");
    TABLE.put("stream of one hour, paddling of another time", "paddling of one hour with");
    TABLE.put("stream of an hour, paddling of half", "an hour of stream with half an hour");
    TABLE.put("paddling speed for speed made good", "paddling speed taken for it");
    TABLE.put("before and after high water swapped", "before and after high water swapped");
    TABLE.put("height taken for range", "height taken for range");
    TABLE.put("summer time before the differences", "summer time added before the difference");
    TABLE.put("a drying height added", "drying height added");
    TABLE.put("twelfths counted from the wrong water", "Twelfths gone: counted from the wrong");
    TABLE.put("a scale read backwards from its ten", "scale read backwards from its ten");
    TABLE.put("figures transposed", "digits transposed");
    TABLE.put("back bearing taken from the heading", "from the heading instead of the track");
    TABLE.put("aimed off down stream", "aimed off down stream");
    TABLE.put("first bearing not carried with the stream", "not carried with the stream");
  }

  private static List<Problem> problems(long seed) {
    return DrawnProblems.of(seed);
  }

  @Test
  void everySlipOfTheTableIsKnownToSomeProblemAndMovesItsAnswer() {
    TreeSet<String> missing = new TreeSet<>(TABLE.keySet());
    for (long seed = 1; seed <= 12; seed++) {
      for (Problem problem : problems(seed)) {
        for (Slip slip : problem.slips()) {
          if (moves(problem, slip)) {
            missing.removeIf(it -> slip.toString().contains(TABLE.get(it)));
          }
        }
      }
    }
    assertTrue(missing.isEmpty(), missing::toString);
  }

  private static boolean moves(Problem problem, Slip slip) {
    return Math.abs(
            problem
                .quantity(problem.asked())
                .difference(problem.answerAfter(slip), problem.answer()))
        > NO_EFFECT;
  }

  @Property(seed = Seeds.SEED, tries = 10 * Seeds.MORE_IN_THE_SOAK)
  void everySlipMadeIsFoundFirstOrAmongTies(@ForAll long seed) {
    for (Problem problem : problems(seed)) {
      Quantity quantity = problem.quantity(problem.asked());
      for (Slip slip : problem.slips()) {
        if (!moves(problem, slip)) {
          continue;
        }
        double wrong = problem.answerAfter(slip);
        Marking marking = problem.mark(wrong);
        assertFalse(marking.isRight(), () -> problem + " " + slip);
        assertTrue(
            marking.explanations().stream().anyMatch(found -> found.slips().equals(List.of(slip))),
            () -> problem + " " + slip + " " + marking);
        double likelihood = Double.POSITIVE_INFINITY;
        for (Explanation found : marking.explanations()) { // ties: none can be told from another
          assertEquals(1, found.slips().size(), () -> problem + " " + slip);
          assertTrue(found.slips().get(0).likelihood() <= likelihood, () -> problem + " " + slip);
          likelihood = found.slips().get(0).likelihood();
          assertEquals(
              0.0,
              quantity.difference(found.value(), wrong),
              quantity.tolerance() + NO_EFFECT,
              () -> problem + " " + slip);
        }
      }
    }
  }

  @Property(seed = Seeds.SEED, tries = 4 * Seeds.MORE_IN_THE_SOAK)
  void aSlipWrittenDownWithAllLaterFiguresIsNamedOnceWhereItWasMade(@ForAll long seed) {
    for (Problem problem : problems(seed)) {
      for (Slip slip : problem.slips()) {
        Map<String, Double> written = problem.figuresAfter(slip);
        double at =
            problem
                .quantity(slip.figure())
                .difference(written.get(slip.figure()), problem.exact(slip.figure()));
        boolean shows = Math.abs(at) > problem.quantity(slip.figure()).tolerance();
        if (!shows || written.containsValue(Double.NaN)) {
          continue; // too small to be seen at the figure itself
        }
        Marking marking = problem.mark(written);
        List<String> figures = new ArrayList<>();
        marking.explanations().forEach(found -> figures.add(found.figure()));
        assertTrue(figures.contains(slip.figure()), () -> problem + " " + slip + " " + marking);
        assertEquals(1, figures.stream().distinct().count(), () -> slip + " " + marking);
        assertTrue(marking.unexplained().isEmpty(), () -> slip + " " + marking);
      }
    }
  }
}
