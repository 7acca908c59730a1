package org.ferryglide.tide.folder;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.ferryglide.nav.passage.LegOptions;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.PassageLeg;
import org.ferryglide.nav.passage.WayPoint;
import org.ferryglide.nav.water.WindField;
import org.ferryglide.tide.sheet.Sheet;
import org.ferryglide.tide.stream.HourlyStream;

/** Writes what a passage tells into the files of a folder; what a file tells already stays. */
final class PassageTexts {
  private final PassageFolder folder;
  private final Passage before;
  private final Passage passage;
  private final Map<String, String> texts;

  private PassageTexts(PassageFolder folder, Passage passage) {
    this.folder = folder;
    this.before = folder.passage();
    this.passage = passage;
    this.texts = new LinkedHashMap<>(folder.texts());
  }

  /** The files of a folder, changed where the passage tells something else. */
  static Map<String, String> of(PassageFolder folder, Passage passage, PassageSheet sheet) {
    PassageTexts made = new PassageTexts(folder, passage);
    made.write(sheet);
    return made.texts;
  }

  private void write(PassageSheet sheet) {
    if (!told("name", before, Passage::name)
        || !told("speed", before, p -> p.party().craft().speed())) {
      texts.put(
          "passage.csv",
          sheet.withName(passage.name()).withSpeed(passage.party().craft().speed()).text());
    }
    if (!told("places", before, PassageTexts::placed)) {
      texts.put("waypoints.csv", wayPoints());
    }
    if (!told("way points", before, Passage::wayPoints)) {
      texts.put("places.csv", PlaceSheets.text(passage.wayPoints()));
    }
    if (!told("legs", before, PassageTexts::legs)) {
      texts.put("legs.csv", LegSheet.text(passage.legs(), folder.streams()));
    }
    if (!told("party and day", before, PassageTexts::day)) {
      texts.put("party.csv", day().text(passage.party()));
    }
    if (!told("limits", before, PassageTexts::limits)) {
      texts.put("margins.csv", MarginSheet.text(passage.limits()));
      FolderLimits limits =
          folder
              .limits()
              .withCrossStreamShare(
                  Objects.requireNonNull(passage.limits().figures().get("cross-stream share"))
                      .get(1))
              .withLongestLeg(passage.longestDuration());
      texts.put(
          "limits.csv",
          passage.limits().light().map(limits::withLight).orElse(limits.withAnyLight()).text());
    }
    if (!told("errors", before, Passage::errors)) {
      texts.put("errors.csv", ErrorSheet.text(passage.errors()));
    }
    put("dangers.csv", Passage::dangers, DangerSheet::text);
    put("lanes.csv", Passage::lanes, DangerSheet::laneText);
    put("coast.csv", Passage::shores, DangerSheet::coastText);
    put(
        "refuges.csv",
        one -> one.refuges().isEmpty() ? Optional.empty() : Optional.of(one.refuges()),
        PlaceSheets::refugeText);
    put("wind.csv", Passage::wind, PassageTexts::wind);
  }

  /** A file that may be left out; gone where the passage has nothing of it. */
  private <T> void put(
      String name, Function<Passage, Optional<T>> part, Function<T, String> writer) {
    if (told(name, before, part)) {
      return;
    }
    Optional<T> wanted = part.apply(passage);
    if (wanted.isPresent()) {
      texts.put(name, writer.apply(wanted.get()));
    } else {
      texts.remove(name);
    }
  }

  private static String wind(WindField wind) {
    if (wind instanceof ForecastWind forecast) {
      return forecast.text();
    }
    throw new IllegalArgumentException(
        "the wind of a folder must be a ForecastWind, but was " + wind);
  }

  private boolean told(String what, Passage there, Function<Passage, ?> part) {
    return Objects.requireNonNull(part.apply(there), what).equals(part.apply(passage));
  }

  /** Refuses what the files cannot tell: what is read back otherwise. */
  static PassageFolder read(PassageFolder back, Passage passage) {
    Passage read = back.passage();
    Map<String, Function<Passage, Object>> parts = new LinkedHashMap<>();
    parts.put("name", Passage::name);
    parts.put("way points", Passage::wayPoints);
    parts.put("legs", PassageTexts::legs);
    parts.put("party and day", PassageTexts::day);
    parts.put("limits", PassageTexts::limits);
    parts.put("errors", Passage::errors);
    parts.put("dangers", Passage::dangers);
    parts.put("lanes", Passage::lanes);
    parts.put("shores", Passage::shores);
    parts.put("refuges", Passage::refuges);
    parts.put("wind", Passage::wind);
    parts.put("deviation", Passage::deviation);
    parts.forEach(
        (what, part) -> {
          if (!part.apply(read).equals(part.apply(passage))) {
            throw new IllegalArgumentException(
                "a folder cannot tell the "
                    + what
                    + " \""
                    + part.apply(passage)
                    + "\", which would read as \""
                    + part.apply(read)
                    + "\"");
          }
        });
    return back;
  }

  private static List<Object> placed(Passage passage) {
    List<Object> all = new ArrayList<>();
    for (WayPoint place : passage.wayPoints()) {
      all.add(place.name());
      all.add(place.position());
    }
    return all;
  }

  /** Legs are paddled alike if they are in the stream of equal tables. */
  private static List<Object> legs(Passage passage) {
    List<Object> all = new ArrayList<>();
    for (PassageLeg leg : passage.legs()) {
      LegOptions options = leg.options();
      all.add(options.strategy());
      all.add(options.speed());
      all.add(options.isWithoutRests());
      all.add(options.isGeodesic());
      all.add(options.stream().map(own -> own instanceof HourlyStream h ? h.table() : own));
    }
    return all;
  }

  private static List<Object> day(Passage passage) {
    return List.of(passage.party(), passage.zone(), passage.visibility(), passage.swellFrom());
  }

  private static List<Object> limits(Passage passage) {
    return List.of(passage.limits(), passage.longestDuration());
  }

  private PartySheet day() {
    ZoneId zone = passage.zone();
    return PartySheet.NONE.onDay(
        zone.equals(folder.start().getOffset()) ? null : zone,
        passage.visibility().orElse(null),
        passage.swellFrom().orElse(null));
  }

  private String wayPoints() {
    StringBuilder rows = new StringBuilder("name,position\n");
    for (WayPoint place : passage.wayPoints()) {
      rows.append(Sheet.field("name of a way point", place.name()))
          .append(',')
          .append(Sheet.field("position", place.position().toString()))
          .append('\n');
    }
    return rows.toString();
  }
}
