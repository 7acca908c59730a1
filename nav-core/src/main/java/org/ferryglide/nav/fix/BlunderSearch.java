package org.ferryglide.nav.fix;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ferryglide.nav.basics.Arguments;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.position.Position;

/**
 * Looks for the mistake that explains why position lines disagree.
 *
 * <p>A mistake is not an error of measurement: averaging does not help, and least squares spread it
 * over all lines. Each likely one is undone in turn, and those with which all lines agree again are
 * named. To notice anything there must be something left over: three lines, or two and a reckoned
 * position ( {@link FixSolver#withPrior}). With three bearings several mistakes often explain the
 * same disagreement; all are returned, the best first, and a further bearing decides. A variation
 * that was not applied, the commonest slip, comes before all others where it explains the lines.
 *
 * <pre>{@code
 * BlunderSearch search =
 *     BlunderSearch.standard().withMark("tower", tower).withMark("beacon", beacon);
 * for (Suspicion suspicion : search.look(FixSolver.standard(), lines)) {
 *   System.out.println(suspicion.text());
 * }
 * }</pre>
 */
public final class BlunderSearch implements Serializable {

  private static final long serialVersionUID = 1L;

  /** Below this agreement lines are suspicious, above it they are explained. */
  public static final double USUAL_AGREEMENT = 0.05;

  private static final double HALF_CIRCLE = 180.0;

  /** Variation and deviation together are hardly larger than this where anybody paddles. */
  private static final double LARGEST_VARIATION = 45.0;

  /** Turning by the error found so often leaves less than a hundredth of a degree. */
  private static final int TURNS = 4;

  private final List<Mark> candidates;
  private final double agreement;

  private BlunderSearch(List<Mark> candidates, double agreement) {
    this.candidates = List.copyOf(candidates);
    this.agreement = agreement;
  }

  /**
   * A search that knows no marks beside those observed.
   *
   * @return the search
   */
  public static BlunderSearch standard() {
    return new BlunderSearch(List.of(), USUAL_AGREEMENT);
  }

  /**
   * The same search, which also asks whether this mark was taken for another.
   *
   * @param name what the paddler calls it
   * @param position where it is; it may be one of those observed
   * @return a search that knows one more mark
   */
  public BlunderSearch withMark(String name, Position position) {
    List<Mark> more = new ArrayList<>(candidates);
    more.add(new Mark(name, position));
    return new BlunderSearch(more, agreement);
  }

  /**
   * The same search, more or less suspicious.
   *
   * @param chance the agreement ({@link Fix#agreement}) below which lines are suspicious and above
   *     which they are explained, in [0, 1]
   * @return a search with everything else the same
   * @throws IllegalArgumentException if {@code chance} is NaN or outside [0, 1]
   */
  public BlunderSearch withAgreement(double chance) {
    return new BlunderSearch(
        candidates, Arguments.within(chance, 0.0, 1.0, "agreement", "(no unit)"));
  }

  /**
   * Names the mistakes that would explain these lines.
   *
   * @param solver how to make the fix
   * @param lines the position lines as observed
   * @return suspicions, the one that explains the lines best first; empty if the lines agree as
   *     they are or nothing looked for explains them; unmodifiable
   */
  public List<Suspicion> look(FixSolver solver, List<? extends PositionLine> lines) {
    List<PositionLine> observed = List.copyOf(lines);
    if (solver.solve(observed).solved().filter(fix -> fix.agreement() >= agreement).isPresent()) {
      return List.of();
    }
    List<Suspicion> found = new ArrayList<>();
    List<Suspicion> first = new ArrayList<>();
    trySharedError(solver, observed, first);
    for (int i = 0; i < observed.size(); i++) {
      if (observed.get(i) instanceof BearingLine bearing) {
        tryInstead(
            solver,
            replaced(observed, i, bearing.turnedBy(HALF_CIRCLE)),
            Suspicion.Kind.REVERSED,
            "the bearing of " + bearing.name() + " was read at the wrong end",
            found);
        tryOtherMarks(solver, observed, i, bearing, found);
      }
    }
    tryInstead(
        solver,
        withVariationTimes(observed, -1.0),
        Suspicion.Kind.VARIATION_WRONG_WAY,
        "the variation was applied the wrong way to every bearing",
        found);
    tryInstead(
        solver,
        withVariationTimes(observed, 0.0),
        Suspicion.Kind.VARIATION_NOT_NEEDED,
        "the variation was applied to bearings that were true already",
        found);
    if (found.isEmpty() && first.isEmpty()) {
      tryWithoutEach(solver, observed, found);
    }
    found.sort(
        Comparator.comparingDouble((Suspicion suspicion) -> suspicion.fix().agreement())
            .reversed());
    first.addAll(found);
    return List.copyOf(first);
  }

  /**
   * The commonest slip of all, and so named first: bearings by compass given as true. One error
   * taken off all of them makes them meet.
   */
  private void trySharedError(
      FixSolver solver, List<PositionLine> observed, List<Suspicion> found) {
    if (!observed.stream().allMatch(BlunderSearch::isBearingWithoutVariation)) {
      return;
    }
    List<PositionLine> turned = observed;
    double total = 0.0;
    for (int i = 0; i < TURNS; i++) { // the first answer is that of straight lines
      Optional<Fix> fix = solver.solve(turned).solved();
      OptionalDouble shared =
          fix.flatMap(Fix::cockedHat)
              .map(CockedHat::sharedErrorDegrees)
              .orElse(OptionalDouble.empty());
      if (!shared.isPresent()) {
        return;
      }
      total += shared.getAsDouble();
      if (!(Math.abs(total) <= LARGEST_VARIATION)) {
        return;
      }
      turned = turned(observed, -total);
    }
    String degrees = Math.round(Math.abs(total) * 10.0) / 10.0 + "°";
    tryInstead(
        solver,
        turned,
        Suspicion.Kind.VARIATION_NOT_APPLIED,
        "every bearing is "
            + degrees
            + (total > 0.0 ? " too large" : " too small")
            + ", as if the variation or deviation had not been applied",
        found);
  }

  private static boolean isBearingWithoutVariation(PositionLine line) {
    return line instanceof BearingLine bearing
        && bearing.variation().map(v -> v.degreesEast() == 0.0).orElse(true);
  }

  private static List<PositionLine> turned(List<PositionLine> lines, double degrees) {
    List<PositionLine> turned = new ArrayList<>();
    for (PositionLine line : lines) {
      turned.add(line instanceof BearingLine bearing ? bearing.turnedBy(degrees) : line);
    }
    return turned;
  }

  private void tryOtherMarks(
      FixSolver solver,
      List<PositionLine> observed,
      int index,
      BearingLine bearing,
      List<Suspicion> found) {
    for (Mark candidate : candidates) {
      if (!candidate.position().equals(bearing.mark())) {
        tryInstead(
            solver,
            replaced(observed, index, bearing.toMark(candidate.name(), candidate.position())),
            Suspicion.Kind.MARK_MISIDENTIFIED,
            "the mark taken for " + bearing.name() + " was " + candidate.name(),
            found);
      }
    }
  }

  private void tryWithoutEach(
      FixSolver solver, List<PositionLine> observed, List<Suspicion> found) {
    if (observed.size() < 4) {
      return; // what is left would always agree, or nearly so
    }
    for (int i = 0; i < observed.size(); i++) {
      List<PositionLine> rest = new ArrayList<>(observed);
      PositionLine left = rest.remove(i);
      tryInstead(
          solver,
          rest,
          Suspicion.Kind.ONE_LINE_WRONG,
          "the line of " + left.name() + " does not go with the others",
          found);
    }
  }

  private void tryInstead(
      FixSolver solver,
      List<PositionLine> lines,
      Suspicion.Kind kind,
      String text,
      List<Suspicion> found) {
    if (lines.isEmpty()) {
      return;
    }
    solver
        .solve(lines)
        .solved()
        .filter(fix -> fix.agreement() >= agreement)
        .ifPresent(fix -> found.add(new Suspicion(kind, text, fix)));
  }

  private static List<PositionLine> replaced(
      List<PositionLine> lines, int index, PositionLine instead) {
    List<PositionLine> changed = new ArrayList<>(lines);
    changed.set(index, instead);
    return changed;
  }

  /**
   * The lines with their variation counted so many times instead of once; empty if there is none.
   */
  private static List<PositionLine> withVariationTimes(List<PositionLine> lines, double times) {
    List<PositionLine> changed = new ArrayList<>(lines);
    boolean any = false;
    for (int i = 0; i < changed.size(); i++) {
      if (changed.get(i) instanceof BearingLine bearing && bearing.variation().isPresent()) {
        Variation variation = bearing.variation().get();
        changed.set(i, bearing.turnedBy((times - 1.0) * variation.degreesEast()));
        any |= variation.degreesEast() != 0.0;
      }
    }
    return any ? changed : List.of();
  }
}
