package org.ferryglide.tide.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.magnetic.CompassRose;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.passage.TimedPlan;
import org.ferryglide.nav.position.Position;
import org.ferryglide.testing.Seeds;
import org.ferryglide.tide.height.MeanRanges;
import org.ferryglide.tide.height.TideEvent;
import org.ferryglide.tide.height.TideTable;
import org.ferryglide.tide.stream.StandardPort;
import org.ferryglide.tide.stream.StreamHour;
import org.ferryglide.tide.stream.StreamTable;
import org.junit.jupiter.api.Test;

/** What the library writes it reads back, and columns are found by their names alone. */
class ExchangeProperties {
  /** Names that a sheet may hold, among them what it must put in quotation marks. */
  @Provide
  Arbitrary<String> names() {
    return Arbitraries.strings()
        .withCharRange('A', 'z')
        .withCharRange('ß', 'ö')
        .withChars(" ,\"#'-=+@;0123456789°′")
        .ofMinLength(1)
        .ofMaxLength(12)
        .map(it -> "N" + it.trim());
  }

  private static Position somewhere(Random random) {
    return Position.ofDegrees(46.0 + random.nextDouble(), -26.0 - random.nextDouble());
  }

  private static StreamTable streams(String station, String port, Random random) {
    List<StreamHour> hours = new ArrayList<>();
    for (int hour = -6; hour <= 6; hour++) {
      double spring = random.nextInt(400) / 100.0;
      hours.add(
          new StreamHour(
              hour,
              TrueBearing.ofDegrees(360.0 * random.nextDouble()),
              Speed.ofKnots(spring),
              Speed.ofKnots(Math.rint(50.0 * spring) / 100.0)));
    }
    double neap = 1.0 + random.nextDouble();
    return StreamTable.of(
        station,
        somewhere(random),
        new StandardPort(
            port,
            TideEvent.Kind.LOW,
            new MeanRanges(
                Distance.ofMetres(neap + 1.0 + random.nextDouble()), Distance.ofMetres(neap))),
        hours);
  }

  @Property(seed = Seeds.SEED, tries = 100)
  void streamTablesAreReadBackAsTheyWereWritten(
      @ForAll("names") String station, @ForAll("names") String port, @ForAll long draw)
      throws IOException {
    Random random = new Random(draw);
    List<StreamTable> tables =
        List.of(streams(station + " a", port, random), streams(station + " bbbbbbb", port, random));
    StringBuilder sheet = new StringBuilder();
    StreamTable.writeAll(tables, sheet);
    assertEquals(tables, StreamTable.readAll("copy.csv", new StringReader(sheet.toString())));
  }

  @Property(seed = Seeds.SEED, tries = 40)
  void aFolderOfValuesIsReadBackAsItWasMade(
      @ForAll("names") String name, @ForAll("names") String port, @ForAll long draw) {
    Random random = new Random(draw);
    OffsetDateTime start = OffsetDateTime.parse("2026-06-14T11:40+01:00").plusSeconds(draw % 5000);
    List<PassageFolder.WayPoint> way =
        List.of(
            new PassageFolder.WayPoint(name + " 1", somewhere(random)),
            new PassageFolder.WayPoint(name + " 2", somewhere(random)));
    TideTable tides =
        TideTable.of(
            port,
            "chart datum",
            List.of(
                TideEvent.high(
                    start.minusHours(6).toInstant(), Distance.ofMetres(4.0 + random.nextDouble())),
                TideEvent.low(start.toInstant(), Distance.ofMetres(random.nextDouble())),
                TideEvent.high(
                    start.plusHours(6).toInstant(), Distance.ofMetres(4.0 + random.nextDouble()))));
    StreamTable stream = streams("Sound", port, random);
    PassageFolder made =
        PassageFolder.of(
            name,
            start,
            Speed.ofKnots(1.0 + random.nextInt(40) / 10.0),
            CompassRose.parse("8°50'W 2019 (8'E)"),
            way,
            List.of(tides),
            List.of(stream));
    PassageFolder read = PassageFolder.of(made.texts());
    assertEquals(name, read.name());
    assertEquals(start, read.start());
    assertEquals(made.speed(), read.speed());
    assertEquals(way, read.wayPoints());
    assertEquals(stream, read.streams().get(0).table());
    assertEquals(tides.events(), read.streams().get(0).tides().events());
    assertEquals(made.texts(), read.texts());
  }

  /** The columns of a sheet without quotation marks, in another order. */
  private static String shuffled(String text, Random random) {
    if (text.indexOf('"') >= 0) {
      return text;
    }
    List<Integer> order = new ArrayList<>();
    StringBuilder out = new StringBuilder();
    for (String line : text.split("\n")) {
      if (line.startsWith("#") || line.isEmpty()) {
        out.append(line).append('\n');
        continue;
      }
      String[] fields = line.split(",", -1);
      if (order.isEmpty()) {
        for (int i = 0; i < fields.length; i++) {
          order.add(i);
        }
        Collections.shuffle(order, random);
      }
      List<String> moved = new ArrayList<>();
      order.forEach(at -> moved.add(fields[at]));
      out.append(String.join(",", moved)).append('\n');
    }
    return out.toString();
  }

  private static List<String> told(PassageFolder folder) {
    List<String> told = new ArrayList<>();
    folder.wayPoints().forEach(it -> told.add(it.toString()));
    folder.notes().forEach(it -> told.add(it.text()));
    TimedPlan.of(folder.passage(), folder.start().toInstant())
        .solved()
        .ifPresent(
            plan -> {
              told.add(plan.arrival().toString());
              plan.verdicts().forEach(it -> told.add(it.answer() + " " + it.reason()));
            });
    return told;
  }

  @Property(seed = Seeds.SEED, tries = 10)
  void columnsInAnotherOrderSayTheSame(@ForAll long draw) {
    Random random = new Random(draw);
    Map<String, String> moved = new LinkedHashMap<>();
    Folders.whole().forEach((file, text) -> moved.put(file, shuffled(text, random)));
    List<String> expected = told(PassageFolder.of(Folders.whole()));
    assertTrue(expected.size() > 10, expected.toString());
    assertEquals(expected, told(PassageFolder.of(moved)));
  }

  /** Without its heading line, or with a heading of another name, no order is guessed. */
  @Test
  void columnsWithoutTheirNamesAreRefused() {
    Folders.whole()
        .forEach(
            (file, text) -> {
              Map<String, String> nameless = new LinkedHashMap<>(Folders.whole());
              String bare = text.replaceAll("(?m)^#.*\n", "");
              nameless.put(file, bare.substring(bare.indexOf('\n') + 1));
              String refusal =
                  assertThrows(InputFormatException.class, () -> PassageFolder.of(nameless), file)
                      .getMessage();
              assertTrue(refusal.startsWith(file + ", line 1, column 1: heading"), refusal);
            });
  }
}
