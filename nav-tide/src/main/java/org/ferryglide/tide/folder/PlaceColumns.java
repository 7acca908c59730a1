package org.ferryglide.tide.folder;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.passage.Landing;
import org.ferryglide.nav.passage.Stop;
import org.ferryglide.nav.passage.WayPoint;
import org.ferryglide.tide.sheet.Sheet;

/** The columns that tell what is to be known of a place beside its position. */
final class PlaceColumns {
  static final List<String> OF_EVERY_PLACE =
      List.of(
          "to_see",
          "mark_height_m",
          "landing",
          "lowest_m",
          "highest_m",
          "open_from_deg",
          "open_until_deg",
          "mark_port");

  /** Stands for a landing that works at every level. */
  private static final String ANY_LEVEL = "any level";

  private static final double LOWEST_METRES = -20.0;
  private static final double HIGHEST_METRES = 30.0;

  private PlaceColumns() {}

  /** A way point with everything its row tells. */
  static WayPoint complete(WayPoint bare, Sheet.Row row, Known known) {
    WayPoint place = row.has("to_see") ? bare.withToSee(row.text("to_see")) : bare;
    OptionalDouble mark = Words.number(row, "mark_height_m", LOWEST_METRES, 1000.0);
    if (mark.isPresent()) {
      Distance height = Distance.ofMetres(mark.getAsDouble());
      String port = row.text("mark_port");
      place = port.isEmpty() ? place.withMark(height) : place.withMark(height, port);
    }
    if (row.has("mark_port")) {
      known.requirePort(row, "mark_port", row.text("mark_port"));
      if (!row.has("mark_height_m")) {
        row.problem("mark_port", "must be empty where no mark_height_m is given");
      }
    }
    Optional<Landing> landing = landing(row, known);
    if (landing.isPresent()) {
      place = place.withLanding(landing.get());
    }
    Optional<Stop> stop = Words.of(row, "stop", Words::stop);
    Words.portOfStop(row.text("stop")).ifPresent(port -> known.requirePort(row, "stop", port));
    return stop.isPresent() ? place.withStop(stop.get()) : place;
  }

  private static Optional<Landing> landing(Sheet.Row row, Known known) {
    String port = row.text("landing");
    boolean atAnyLevel = port.equals(ANY_LEVEL);
    for (String heading : PlaceColumns.OF_EVERY_PLACE.subList(3, 7)) {
      boolean level = heading.endsWith("_m");
      if (row.has(heading) && (port.isEmpty() || (level && atAnyLevel))) {
        row.problem(
            heading,
            port.isEmpty()
                ? "describes a landing, but the column landing is empty"
                : "must be empty beside \"" + ANY_LEVEL + "\", but was " + row.text(heading));
      }
    }
    if (port.isEmpty()) {
      return Optional.empty();
    }
    Optional<Landing> landing =
        atAnyLevel ? Optional.of(Landing.atAnyLevel()) : betweenLevels(row, known, port);
    Optional<TrueBearing> from = Words.direction(row, "open_from_deg");
    Optional<TrueBearing> until = Words.direction(row, "open_until_deg");
    if (row.has("open_from_deg") != row.has("open_until_deg")) {
      String missing = row.has("open_from_deg") ? "open_until_deg" : "open_from_deg";
      row.problem(missing, "must be given with the other edge of the open sector");
    }
    return from.isPresent() && until.isPresent()
        ? landing.map(one -> one.withOpenSector(from.get(), until.get()))
        : landing;
  }

  private static Optional<Landing> betweenLevels(Sheet.Row row, Known known, String port) {
    known.requirePort(row, "landing", port);
    OptionalDouble lowest = row.number("lowest_m", LOWEST_METRES, HIGHEST_METRES);
    OptionalDouble highest = row.number("highest_m", LOWEST_METRES, HIGHEST_METRES);
    if (!lowest.isPresent() || !highest.isPresent()) {
      return Optional.empty();
    }
    return row.read(
        "highest_m",
        text ->
            Optional.of(
                Landing.between(
                    port,
                    Distance.ofMetres(lowest.getAsDouble()),
                    Distance.ofMetres(highest.getAsDouble()))),
        Optional.empty());
  }

  /** The fields of {@link #OF_EVERY_PLACE} that read as a place. */
  static List<String> text(WayPoint place) {
    Optional<Landing> landing = place.landing();
    Optional<Landing> between = landing.filter(its -> its.port().isPresent());
    return List.of(
        place.toSee(),
        place.markHeight().map(Numbers::of).orElse(""),
        landing.map(its -> its.port().orElse(ANY_LEVEL)).orElse(""),
        between.flatMap(Landing::lowest).map(Numbers::of).orElse(""),
        between.flatMap(Landing::highest).map(Numbers::of).orElse(""),
        landing.flatMap(Landing::openFrom).map(PlaceColumns::degrees).orElse(""),
        landing.flatMap(Landing::openUntil).map(PlaceColumns::degrees).orElse(""),
        place.markHeight().flatMap(height -> place.markPort()).orElse(""));
  }

  private static String degrees(TrueBearing bearing) {
    return Numbers.of(bearing.degrees());
  }
}
