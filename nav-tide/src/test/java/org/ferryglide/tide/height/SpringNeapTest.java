package org.ferryglide.tide.height;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.water.Found;
import org.ferryglide.tide.height.SpringNeap.Kind;
import org.junit.jupiter.api.Test;

class SpringNeapTest {
  private static final double M2 = 28.9841042;
  private static final double S2 = 30.0;

  /** From springs to springs: 360 degrees at the difference of the two speeds. */
  private static final double FORTNIGHT_HOURS = 360.0 / (S2 - M2);

  private static final Instant FROM = Instant.parse("2026-06-10T00:00:00Z");
  private static final Instant TO = Instant.parse("2026-07-10T00:00:00Z");

  @Test
  void springsFollowNewAndFullMoonByTheAgeOfTheTide() {
    // June 2026, regression values of the phases that nav-core holds against an almanac: new moon
    // on the 15th at 02:54, first quarter
    // on the 21st at 21:55, full on the 29th at 23:57 UT; last quarter on 7 July at 19:29
    Found<SpringNeap> found = SpringNeap.fromMoon(Duration.ofHours(36), FROM, TO);
    assertTrue(found.isWhole());
    List<SpringNeap> turns = found.items();
    assertEquals(
        List.of(Kind.SPRINGS, Kind.NEAPS, Kind.SPRINGS, Kind.NEAPS),
        turns.stream().map(SpringNeap::kind).toList());
    String[] moon = {
      "2026-06-15T02:54:00Z", "2026-06-21T21:55:00Z", "2026-06-29T23:57:00Z", "2026-07-07T19:29:00Z"
    };
    for (int i = 0; i < moon.length; i++) {
      Instant expected = Instant.parse(moon[i]).plus(Duration.ofHours(36));
      Duration apart = Duration.between(expected, turns.get(i).time()).abs();
      assertTrue(apart.compareTo(Duration.ofMinutes(2)) <= 0, "off by " + apart);
      assertEquals(Duration.ofDays(3), turns.get(i).within());
    }
  }

  @Test
  void anUnknownAgeIsTwoDaysAndLessCertain() {
    SpringNeap known = SpringNeap.fromMoon(Duration.ofDays(2), FROM, TO).items().get(0);
    SpringNeap unknown = SpringNeap.fromMoon(FROM, TO).items().get(0);
    assertEquals(known.time(), unknown.time());
    assertTrue(unknown.within().compareTo(known.within()) > 0);
  }

  @Test
  void aNegativeAgePutsSpringsBeforeTheMoon() {
    Instant without = SpringNeap.fromMoon(Duration.ZERO, FROM, TO).items().get(0).time();
    Instant with = SpringNeap.fromMoon(Duration.ofHours(-5), FROM, TO).items().get(0).time();
    assertEquals(Duration.ofHours(-5), Duration.between(without, with));
  }

  @Test
  void anAgeOfMoreThanTenDaysIsRefused() {
    assertEquals(
        "age of the tide must be within 10 days, but was PT264H",
        assertThrows(
                IllegalArgumentException.class,
                () -> SpringNeap.fromMoon(Duration.ofDays(11), FROM, TO))
            .getMessage());
  }

  @Test
  void aTableTurnsWhereItsTwoWavesMeetAndPart() {
    // M2 and S2 in step at hour 100 since 1970, then every fortnight
    HarmonicSum tide =
        HarmonicSum.endless(
            new double[] {2.0, 0.7}, new double[] {M2, S2}, new double[] {-100 * M2, -100 * S2});
    Instant to = Instant.EPOCH.plus(Duration.ofDays(60));
    List<TideEvent> waters = tide.extremes(Instant.EPOCH, to).items();
    TideTable table = TideTable.of("Skarra", "mean level", waters);
    Found<SpringNeap> found = SpringNeap.of(table);
    assertEquals(
        TimeSpan.of(waters.get(0).time(), waters.get(waters.size() - 1).time()), found.asked());
    for (TimeSpan unseen : found.unseen()) { // five days, and the range of the first two tides
      assertTrue(unseen.duration().compareTo(Duration.ofDays(6)) < 0, unseen::toString);
      assertTrue(unseen.duration().compareTo(Duration.ofDays(5)) >= 0, unseen::toString);
    }
    assertEquals(2, found.unseen().size());
    List<SpringNeap> turns = found.items();
    assertEquals(6, turns.size()); // neaps at 277 h, and half a fortnight on until 1320 h
    for (int i = 0; i < turns.size(); i++) {
      double expected = 100.0 + FORTNIGHT_HOURS * 0.5 * (i + 1);
      assertEquals(i % 2 == 0 ? Kind.NEAPS : Kind.SPRINGS, turns.get(i).kind());
      double hours = Duration.between(Instant.EPOCH, turns.get(i).time()).toMillis() / 3.6e6;
      assertEquals(expected, hours, (double) turns.get(i).within().toHours());
    }
  }

  @Test
  void aShortTableIsNotKnownToHaveNone() {
    Found<SpringNeap> found =
        SpringNeap.of(Tables.ofHours("Skarra", 0, 1, 6, 5, 12, 1, 18, 5, 24, 1));
    assertTrue(found.isEmpty());
    assertFalse(found.isNever());
    assertEquals("search.not-seen", found.notes().get(0).code());
  }

  @Test
  void aNegativeUncertaintyIsRefused() {
    assertEquals(
        "within must not be negative, but was PT-1H",
        assertThrows(
                IllegalArgumentException.class,
                () -> new SpringNeap(Kind.SPRINGS, FROM, Duration.ofHours(-1)))
            .getMessage());
  }
}
