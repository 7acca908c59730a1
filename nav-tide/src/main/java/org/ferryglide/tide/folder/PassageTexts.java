package org.ferryglide.tide.folder;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.passage.LegOptions;
import org.ferryglide.nav.passage.Passage;
import org.ferryglide.nav.passage.PassageLeg;
import org.ferryglide.nav.passage.PassageLimits;
import org.ferryglide.nav.passage.WayPoint;
import org.ferryglide.nav.water.WindField;
import org.ferryglide.tide.sheet.Sheet;

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
    if (!told(Passage::name) || !told(p -> p.party().craft().speed())) {
      texts.put(
          "passage.csv",
          sheet.withName(passage.name()).withSpeed(passage.party().craft().speed()).text());
    }
    if (!told(PassageTexts::placed)) {
      texts.put("waypoints.csv", wayPoints());
    }
    if (!told(Passage::wayPoints)) {
      texts.put("places.csv", PlaceSheets.text(passage.wayPoints()));
    }
    if (!told(PassageTexts::legs)) {
      texts.put("legs.csv", LegSheet.text(passage.legs(), folder.streams()));
    }
    if (!told(PassageTexts::day)) {
      texts.put("party.csv", day().text(passage.party()));
    }
    if (!told(PassageTexts::limits)) {
      texts.put("margins.csv", MarginSheet.text(passage.limits()));
      texts.put("limits.csv", today().text());
    }
    if (!told(Passage::errors)) {
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
    if (told(part)) {
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

  /** Whether the folder tells a part already. */
  private boolean told(Function<Passage, ?> part) {
    return Objects.equals(part.apply(before), part.apply(passage));
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
    parts.put("variation", Passage::variation);
    parts.put("deviation", Passage::deviation);
    parts.forEach(
        (what, part) -> {
          if (!part.apply(read).equals(part.apply(passage))) {
            throw new IllegalArgumentException(
                refusal(what, part.apply(passage).toString(), part.apply(read).toString()));
          }
        });
    return back;
  }

  /** Texts leave out what makes parts differ that look alike. */
  private static String refusal(String what, String wanted, String read) {
    return wanted.equals(read)
        ? "a folder cannot tell all of the " + what + " \"" + wanted + "\""
        : "a folder cannot tell the "
            + what
            + " \""
            + wanted
            + "\", which would read as \""
            + read
            + "\"";
  }

  private static List<Object> placed(Passage passage) {
    List<Object> all = new ArrayList<>();
    for (WayPoint place : passage.wayPoints()) {
      all.add(place.name());
      all.add(place.position());
    }
    return all;
  }

  private static List<LegOptions> legs(Passage passage) {
    return passage.legs().stream().map(PassageLeg::options).collect(Collectors.toList());
  }

  private static List<Object> day(Passage passage) {
    return List.of(passage.party(), passage.zone(), passage.visibility(), passage.swellFrom());
  }

  private static List<Object> limits(Passage passage) {
    return List.of(passage.limits(), passage.longestDuration());
  }

  /** Reach and latest arrival, which no passage tells, stay those of the folder. */
  private FolderLimits today() {
    PassageLimits wanted = passage.limits();
    Map<String, List<Double>> figures = wanted.figures();
    List<Double> shares = Objects.requireNonNull(figures.get("cross-stream share"));
    FolderLimits today =
        FolderLimits.USUAL
            .withReach(folder.limits().reach())
            .withLongestLeg(passage.longestDuration())
            .withCrossStreamShare(shares.get(1));
    today = wanted.light().map(today::withLight).orElse(today.withAnyLight());
    today = folder.limits().latestArrival().map(today::withLatestArrival).orElse(today);
    List<Double> stream = figures.get("stream");
    return stream == null
        ? today
        : today.withStrongestStream(Speed.ofMetresPerSecond(stream.get(1)));
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
