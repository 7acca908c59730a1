package org.ferryglide.tide.folder;

import java.io.IOException;
import java.io.Serializable;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.passage.Party;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.WindResponse;
import org.jspecify.annotations.Nullable;

/**
 * What {@code party.csv} says of the party and of the day; null is what it leaves out.
 *
 * @param slowerSpeed speed of the slower what-if
 * @param rest rest in each hour
 * @param launching time to launch
 * @param landing time to land
 * @param wind what the wind does to the craft
 * @param eyeHeight height of eye
 * @param zone zone of the clock
 * @param visibility how far one can see
 * @param swellFrom where the swell comes from
 */
record PartySheet(
    @Nullable Speed slowerSpeed,
    Duration rest,
    Duration launching,
    Duration landing,
    WindResponse wind,
    @Nullable Distance eyeHeight,
    @Nullable ZoneId zone,
    @Nullable Distance visibility,
    @Nullable TrueBearing swellFrom)
    implements Serializable {
  private static final long serialVersionUID = 1L;

  /** A folder without the file. */
  static final PartySheet NONE =
      new PartySheet(
          null,
          Duration.ZERO,
          Duration.ZERO,
          Duration.ZERO,
          WindResponse.none(),
          null,
          null,
          null,
          null);

  private static final List<String> ITEMS =
      List.of(
          "slower speed",
          "rest each hour",
          "launching",
          "landing",
          "load",
          "drift at rest",
          "eye height",
          "clock",
          "visibility",
          "swell from");

  static PartySheet read(FolderText file, Known known) throws IOException {
    ItemSheet items = ItemSheet.read(file, List.of(), ITEMS);
    WindResponse wind = items.read("load", PartySheet::load, WindResponse.none());
    double drift = items.read("drift at rest", Words::share, 0.0);
    PartySheet party =
        new PartySheet(
            one(items, "slower speed", text -> slower(text, known)),
            items.read("rest each hour", PartySheet::rest, Duration.ZERO),
            items.read("launching", Words::duration, Duration.ZERO),
            items.read("landing", Words::duration, Duration.ZERO),
            items.read("drift at rest", text -> wind.withDrift(drift), wind),
            one(items, "eye height", PartySheet::eyeHeight),
            one(items, "clock", PartySheet::zone),
            one(items, "visibility", PartySheet::visibility),
            one(items, "swell from", TrueBearing::parse));
    items.refuseIfFaulty();
    return party;
  }

  /** The same with other items of the day. */
  PartySheet onDay(
      @Nullable ZoneId clock, @Nullable Distance seen, @Nullable TrueBearing swellComesFrom) {
    return new PartySheet(
        slowerSpeed, rest, launching, landing, wind, eyeHeight, clock, seen, swellComesFrom);
  }

  /** The file that tells a party, with the day's items of this one. */
  String text(Party party) {
    Craft craft = party.craft();
    StringBuilder rows = new StringBuilder("item,value\n");
    add(rows, "slower speed", party.slowerSpeed());
    add(rows, "rest each hour", ErrorSheet.minutes(craft.restEachHour()));
    add(rows, "launching", ErrorSheet.minutes(party.launching()));
    add(rows, "landing", ErrorSheet.minutes(party.landing()));
    WindResponse response = craft.windResponse();
    for (WindResponse.Trim trim : WindResponse.Trim.values()) {
      if (WindResponse.commonPractice(trim).withDrift(response.driftFraction()).equals(response)) {
        add(rows, "load", trim.name().toLowerCase(Locale.ROOT));
        break;
      }
    }
    add(rows, "drift at rest", ErrorSheet.perCent(response.driftFraction()));
    add(rows, "eye height", party.eyeHeight());
    add(rows, "clock", zone);
    add(rows, "visibility", visibility);
    add(rows, "swell from", swellFrom == null ? null : swellFrom.degrees() + "°");
    return rows.toString();
  }

  private static void add(StringBuilder rows, String item, @Nullable Object value) {
    if (value != null) {
      rows.append(item).append(',').append(value).append('\n');
    }
  }

  private static <T> @Nullable T one(ItemSheet items, String name, Function<String, T> parser) {
    Optional<T> none = Optional.empty();
    return items.read(name, text -> Optional.of(parser.apply(text)), none).orElse(null);
  }

  private static Speed slower(String text, Known known) {
    Speed speed = Speed.parse(text);
    Speed planned = known.speed().orElse(speed);
    if (!(speed.knots() > 0.0) || speed.compareTo(planned) > 0) {
      throw new IllegalArgumentException(
          "must be above 0 and at most the paddling speed of "
              + planned.inKnots(1)
              + ", but was "
              + text);
    }
    return speed;
  }

  private static Duration rest(String text) {
    Duration rest = Words.duration(text);
    if (rest.compareTo(Duration.ofHours(1)) >= 0) {
      throw new IllegalArgumentException("must be less than 60 min, but was " + text);
    }
    return rest;
  }

  private static WindResponse load(String text) {
    for (WindResponse.Trim trim : WindResponse.Trim.values()) {
      if (trim.name().toLowerCase(Locale.ROOT).equals(text)) {
        return WindResponse.commonPractice(trim);
      }
    }
    throw new IllegalArgumentException(
        "must be loaded, ordinary or empty, but was \"" + text + "\"");
  }

  private static Distance eyeHeight(String text) {
    Distance height = Distance.parse(text);
    if (!(height.metres() >= 0.0 && height.metres() <= 20.0)) {
      throw new IllegalArgumentException("must be in [0, 20] m, but was " + text);
    }
    return height;
  }

  private static Distance visibility(String text) {
    Distance visibility = Distance.parse(text);
    if (!(visibility.metres() > 0.0 && visibility.nauticalMiles() <= 60.0)) {
      throw new IllegalArgumentException("must be above 0 and at most 60 NM, but was " + text);
    }
    return visibility;
  }

  private static ZoneId zone(String text) {
    try {
      return ZoneId.of(text);
    } catch (DateTimeException e) {
      throw new IllegalArgumentException(
          "must be a zone as in Atlantic/Azores, +01:00 or Z, but was \"" + text + "\"", e);
    }
  }

  /** The party at its paddling speed. */
  Party at(Speed paddling) {
    Party party =
        Party.of(Craft.ofSpeed(paddling).withRestEachHour(rest).withWindResponse(wind))
            .withLaunching(launching)
            .withLanding(landing);
    party = slowerSpeed == null ? party : party.withSlowerSpeed(slowerSpeed);
    return eyeHeight == null ? party : party.withEyeHeight(eyeHeight);
  }
}
