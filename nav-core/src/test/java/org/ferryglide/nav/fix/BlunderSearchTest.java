package org.ferryglide.nav.fix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.geodesy.GeodesicLeg;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.EstimatedPosition;
import org.junit.jupiter.api.Test;

class BlunderSearchTest {
  private static final Position HERE = Position.ofDegrees(56.3, -6.2);
  private static final Variation WEST = Variation.ofDegreesWest(9);

  private static Mark mark(String name, double bearing, double miles) {
    return new Mark(
        name,
        GeodesicLeg.from(HERE, TrueBearing.ofDegrees(bearing), Distance.ofNauticalMiles(miles))
            .end());
  }

  private static final List<Mark> MARKS =
      List.of(
          mark("tower", 20, 2),
          mark("chapel", 95, 3),
          mark("beacon", 150, 1.5),
          mark("cairn", 310, 2.5));

  private static BlunderSearch among(List<Mark> charted) {
    BlunderSearch search = BlunderSearch.standard();
    for (Mark mark : charted) {
      search = search.withMark(mark.name(), mark.position());
    }
    return search;
  }

  /** Magnetic bearings of the marks by this variation, each off by a degree or so, as typed in. */
  private static List<PositionLine> observed(Variation truth, Variation applied) {
    double[] errors = {0.8, -1.0, 0.5, -0.4};
    List<PositionLine> lines = new ArrayList<>();
    for (int i = 0; i < MARKS.size(); i++) {
      Mark mark = MARKS.get(i);
      TrueBearing bearing = GeodesicLeg.between(HERE, mark.position()).initialCourse();
      lines.add(
          BearingLine.ofMagnetic(
              mark.name(),
              mark.position(),
              truth.toMagnetic(bearing.turnedBy(errors[i])),
              applied,
              2.0));
    }
    return lines;
  }

  private static void replace(List<PositionLine> lines, int index, PositionLine instead) {
    lines.set(index, instead);
  }

  @Test
  void honestLinesAreNotSuspected() {
    assertEquals(List.of(), among(MARKS).look(FixSolver.standard(), observed(WEST, WEST)));
  }

  @Test
  void aReversedBearingIsNamed() {
    List<PositionLine> lines = observed(WEST, WEST);
    replace(lines, 1, ((BearingLine) lines.get(1)).turnedBy(180));
    Suspicion first = BlunderSearch.standard().look(FixSolver.standard(), lines).get(0);
    assertEquals(Suspicion.Kind.REVERSED, first.kind());
    assertEquals("the bearing of chapel was read at the wrong end", first.text());
    assertTrue(off(first) < 150);
  }

  @Test
  void aVariationAppliedTheWrongWayIsNamed() {
    List<PositionLine> lines = observed(WEST, Variation.ofDegreesEast(9));
    List<Suspicion> all = among(MARKS).look(FixSolver.standard(), lines);
    assertEquals(Suspicion.Kind.VARIATION_WRONG_WAY, all.get(0).kind());
    assertTrue(off(all.get(0)) < 150);
    Fix wrong = FixSolver.standard().solve(lines).orElseThrow();
    assertEquals("fix.shared-error", wrong.notes().get(0).code());
    assertEquals("fix.disagreement", wrong.notes().get(1).code());
    assertEquals(18.0, wrong.cockedHat().orElseThrow().sharedErrorDegrees().orElseThrow(), 1.5);
  }

  @Test
  void aVariationAppliedToTrueBearingsIsNamed() {
    List<PositionLine> lines = observed(Variation.ZERO, WEST);
    assertEquals(
        Suspicion.Kind.VARIATION_NOT_NEEDED,
        BlunderSearch.standard().look(FixSolver.standard(), lines).get(0).kind());
  }

  @Test
  void aMarkTakenForAnotherIsNamed() {
    List<PositionLine> lines = observed(WEST, WEST);
    Mark pole = mark("pole", 130, 2.8);
    replace(lines, 2, ((BearingLine) lines.get(2)).toMark("pole", pole.position()));
    List<Mark> charted = new ArrayList<>(MARKS);
    charted.add(pole);
    Suspicion first = among(charted).look(FixSolver.standard(), lines).get(0);
    assertEquals(Suspicion.Kind.MARK_MISIDENTIFIED, first.kind());
    assertEquals("the mark taken for pole was beacon", first.text());
    assertTrue(off(first) < 150);
    Suspicion unknown = BlunderSearch.standard().look(FixSolver.standard(), lines).get(0);
    assertEquals(Suspicion.Kind.ONE_LINE_WRONG, unknown.kind());
    assertEquals("the line of pole does not go with the others", unknown.text());
  }

  @Test
  void twoBearingsThatMeetAsternAreExplained() {
    List<PositionLine> lines = observed(WEST, WEST).subList(0, 2);
    List<PositionLine> wrong = List.of(lines.get(0), ((BearingLine) lines.get(1)).turnedBy(180));
    List<Suspicion> found = BlunderSearch.standard().look(FixSolver.standard(), wrong);
    assertTrue(
        found.stream()
            .anyMatch(s -> s.text().equals("the bearing of chapel was read at the wrong end")));
  }

  @Test
  void aReckonedPositionRevealsTheMistakeOfTwoBearings() {
    List<PositionLine> lines = observed(WEST, WEST);
    List<PositionLine> wrong =
        List.of(
            lines.get(0), ((BearingLine) lines.get(1)).toMark("cairn", MARKS.get(3).position()));
    FixSolver reckoned =
        FixSolver.standard().withPrior(EstimatedPosition.of(HERE, Distance.ofMetres(400)));
    Suspicion first = among(MARKS).look(reckoned, wrong).get(0);
    assertEquals("the mark taken for cairn was chapel", first.text());
  }

  /** Bearings by compass given as true: named first, whatever else would explain it as well. */
  @Test
  void aVariationNotAppliedIsSuspectedFirst() {
    Variation forgotten = Variation.ofDegreesWest(12);
    List<PositionLine> all = new ArrayList<>();
    for (PositionLine line : observed(forgotten, forgotten)) {
      all.add(
          BearingLine.of(
              line.name(), ((BearingLine) line).mark(), ((BearingLine) line).bearing(), 2.0));
    }
    List<PositionLine> magnetic = new ArrayList<>();
    for (PositionLine line : all) {
      magnetic.add(((BearingLine) line).turnedBy(12));
    }
    for (int n = 3; n <= 4; n++) {
      Suspicion first = among(MARKS).look(FixSolver.standard(), magnetic.subList(0, n)).get(0);
      assertEquals(Suspicion.Kind.VARIATION_NOT_APPLIED, first.kind());
      assertTrue(first.text().contains("as if the variation"), first.text());
      assertTrue(n == 3 || off(first) < 250, () -> first + " " + off(first));
    }
    Fix wrong = FixSolver.standard().solve(magnetic).orElseThrow();
    assertEquals("fix.shared-error", wrong.notes().get(0).code());
    List<PositionLine> exact = new ArrayList<>();
    for (Mark mark : List.of(MARKS.get(0), MARKS.get(2), MARKS.get(3))) { // all around
      TrueBearing bearing = GeodesicLeg.between(HERE, mark.position()).initialCourse();
      exact.add(BearingLine.of(mark.name(), mark.position(), bearing.turnedBy(12), 2.0));
    }
    Suspicion only = BlunderSearch.standard().look(FixSolver.standard(), exact).get(0);
    assertEquals(
        "every bearing is 12.0° too large, as if the variation or deviation had not been applied",
        only.text());
    assertTrue(off(only) < 1, only.toString());
    assertEquals(List.of(), BlunderSearch.standard().look(FixSolver.standard(), all));
  }

  private static double off(Suspicion suspicion) {
    return GeodesicLeg.between(HERE, suspicion.fix().position()).length().metres();
  }
}
