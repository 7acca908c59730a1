package org.ferryglide.nav.passage;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.stream.Collectors;
import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.magnetic.MagneticModel;
import org.ferryglide.nav.magnetic.RoseComparison;
import org.ferryglide.nav.magnetic.VariationSource;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Severity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.timing.Verdict;

/** What the passage is built from: tables plausible and near enough, a model in force. */
final class SourceChecks {
  /** Common practice, no source: heights of a port further off are another tide's. */
  static final double NEAR_ENOUGH_NAUTICAL_MILES = 20.0;

  private SourceChecks() {}

  /** What was doubted about the tables and places, and ports far from where they are used. */
  static final class Tables extends PassageCheck {
    private final Verdict verdict;

    Tables(Passage passage) {
      super(Note.information("check.tables", "tables and places"), passage);
      List<Note> notes = new ArrayList<>(passage.notes());
      for (WayPoint place : passage.wayPoints()) {
        addFar(passage, place, notes);
      }
      passage.refuges().forEach(place -> addFar(passage, place, notes));
      verdict = byWorst(about(), notes);
    }

    private static void addFar(Passage passage, WayPoint place, List<Note> notes) {
      Set<String> ports = Ports.askedFor(List.of(place), List.of(), null);
      for (String port : ports) {
        Position of = passage.level(port).position().orElse(place.position());
        double miles =
            of.equals(place.position())
                ? 0.0
                : RhumbLeg.between(of, place.position()).length().nauticalMiles();
        if (miles > NEAR_ENOUGH_NAUTICAL_MILES) {
          long away = Math.round(miles);
          notes.add(
              Note.caution("passage.far-port", port + " lies " + away + " NM from " + place.name())
                  .with("port", port)
                  .with("awayNauticalMiles", (double) away)
                  .with("place", place.name()));
        }
      }
    }

    @Override
    Verdict check(Candidate candidate) {
      return verdict;
    }
  }

  /** A model in force, a compass that works there, a rose that is not too old. */
  static final class Variation extends PassageCheck {
    private final ConcurrentMap<LocalDate, Verdict> days = new ConcurrentHashMap<>();

    Variation(Passage passage) {
      super(Findings.OPEN_VARIATION, passage);
    }

    @Override
    Verdict check(Candidate candidate) {
      LocalDate date = candidate.route.departure().atOffset(ZoneOffset.UTC).toLocalDate();
      return days.computeIfAbsent(date, this::on);
    }

    private Verdict on(LocalDate date) {
      VariationSource source = passage().variation().orElseThrow(IllegalStateException::new);
      List<Note> roses = new ArrayList<>();
      try {
        for (WayPoint place : passage().wayPoints()) {
          roses.addAll(source.at(place.position(), date).notes());
        }
      } catch (DateTimeException e) {
        return Verdict.notChecked(
            about(),
            Note.information("why.no-model", "no model is in force on " + date)
                .with("date", date.toString()));
      }
      // of equally grave notes the first is told: that a rose is old must not hide that it is wrong
      List<Note> notes = againstModel(source, date);
      notes.addAll(roses);
      return byWorst(about(), notes);
    }

    /**
     * A rose read with the wrong letter is no doubt of the rose's own: only a model tells. The
     * largest disagreement comes first.
     */
    private List<Note> againstModel(VariationSource source, LocalDate date) {
      MagneticModel model = MagneticModel.inForceOn(date);
      List<Position> places =
          passage().wayPoints().stream().map(WayPoint::position).collect(Collectors.toList());
      return source.comparedWith(model, places, date).stream()
          .filter(comparison -> !comparison.agrees())
          .map(comparison -> Math.abs(comparison.differenceDegreesEast()))
          .sorted(Comparator.reverseOrder())
          .map(Variation::unlike)
          .collect(Collectors.toCollection(ArrayList::new));
    }

    /**
     * A caution where {@link RoseComparison} warns: a warning would stop the plan, and a local
     * anomaly of which the chart tells sets a right rose apart from the model as well.
     */
    private static Note unlike(double differenceDegrees) {
      double degrees = Math.ceil(differenceDegrees);
      return Note.caution(
              "why.rose-unlike-model",
              "rose and model differ by " + (int) degrees + "°: check the rose's letters and year")
          .with("differenceDegrees", degrees);
    }
  }

  private static Verdict byWorst(Note about, List<Note> notes) {
    Note worst = null;
    for (Note note : notes) {
      if (worst == null || note.severity().compareTo(worst.severity()) > 0) {
        worst = note;
      }
    }
    if (worst == null || worst.severity() == Severity.INFORMATION) {
      return Verdict.within(about, Findings.NO_DOUBT);
    }
    return worst.severity() == Severity.WARNING
        ? Verdict.stopped(about, worst)
        : Verdict.warned(about, worst);
  }
}
