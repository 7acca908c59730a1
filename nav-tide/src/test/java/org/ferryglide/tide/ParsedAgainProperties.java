package org.ferryglide.tide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.InvocationTargetException;
import java.time.Instant;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ferryglide.nav.bearing.CompassBearing;
import org.ferryglide.nav.bearing.CompassPoint;
import org.ferryglide.nav.bearing.Deviation;
import org.ferryglide.nav.bearing.GridBearing;
import org.ferryglide.nav.bearing.GridConvergence;
import org.ferryglide.nav.bearing.MagneticBearing;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.grid.Hemisphere;
import org.ferryglide.nav.grid.UtmZone;
import org.ferryglide.nav.magnetic.AnnualChange;
import org.ferryglide.nav.magnetic.CompassRose;
import org.ferryglide.nav.measure.Beaufort;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.measure.TimeSpan;
import org.ferryglide.nav.measure.Units;
import org.ferryglide.nav.measure.Velocity;
import org.ferryglide.nav.position.Position;
import org.ferryglide.testing.Seeds;

/**
 * Every type of both modules with a {@code parse} of its own: what {@code toString} writes is read
 * back without loss, and what was given in few digits is written in few.
 */
class ParsedAgainProperties {
  private static final int A_DOUBLE = 24; // -1.2345678901234567E-308

  /** No value needs more: two doubles and the words between them. */
  private static final int LONGEST = 2 * A_DOUBLE + 30;

  /** What a text may gain when it is written again: {@code .0} twice. */
  private static final int GAIN = 4;

  private static final Map<Class<?>, Arbitrary<?>> VALUES =
      Map.ofEntries(
          Map.entry(TrueBearing.class, degrees(360).map(TrueBearing::ofDegrees)),
          Map.entry(MagneticBearing.class, degrees(360).map(MagneticBearing::ofDegrees)),
          Map.entry(CompassBearing.class, degrees(360).map(CompassBearing::ofDegrees)),
          Map.entry(
              GridBearing.class,
              Combinators.combine(degrees(360), grid()).as(GridBearing::ofDegrees)),
          Map.entry(
              GridConvergence.class,
              Combinators.combine(degrees(180), grid()).as(GridConvergence::ofDegreesEast)),
          Map.entry(Variation.class, degrees(180).map(Variation::ofDegreesEast)),
          Map.entry(Deviation.class, degrees(180).map(Deviation::ofDegreesEast)),
          Map.entry(CompassPoint.class, Arbitraries.of(CompassPoint.class)),
          Map.entry(
              CompassRose.class,
              Combinators.combine(
                      degrees(180), Arbitraries.integers().between(1500, 2999), degrees(21_600))
                  .as(
                      (variation, year, change) ->
                          new CompassRose(
                              Variation.ofDegreesEast(variation),
                              year,
                              AnnualChange.ofMinutesEast(change)))),
          Map.entry(
              Position.class,
              Combinators.combine(degrees(90), degrees(180)).as(Position::ofDegrees)),
          Map.entry(
              UtmZone.class,
              Combinators.combine(
                      Arbitraries.integers().between(1, 60), Arbitraries.of(Hemisphere.class))
                  .as(UtmZone::of)),
          Map.entry(
              Beaufort.class,
              Combinators.combine(
                      Arbitraries.integers().between(0, 12), Arbitraries.integers().between(0, 12))
                  .as(
                      (one, other) ->
                          Beaufort.ofForces(Math.min(one, other), Math.max(one, other)))),
          Map.entry(Distance.class, Arbitraries.doubles().map(Distance::ofMetres)),
          Map.entry(
              Speed.class, Arbitraries.doubles().greaterOrEqual(0.0).map(Speed::ofMetresPerSecond)),
          Map.entry(
              Velocity.class,
              Combinators.combine(degrees(1000), degrees(1000)).as(Velocity::ofEastAndNorth)),
          Map.entry(
              TimeSpan.class,
              Combinators.combine(instant(), instant())
                  .as(
                      (one, other) ->
                          one.isBefore(other) ? TimeSpan.of(one, other) : TimeSpan.of(other, one))),
          Map.entry(
              Units.class,
              Combinators.combine(
                      Arbitraries.of("NM", "km", "mi"),
                      Arbitraries.of("kn", "km/h", "mph", "m/s"),
                      Arbitraries.of("m", "ft"))
                  .as(Units::new)));

  /** What people give: a few figures, in every unit that the types are given in on the water. */
  private static final Map<Class<?>, Arbitrary<String>> GIVEN =
      Map.of(
          TrueBearing.class, tenths(3599).map(x -> x + "°T"),
          Variation.class, figures(179, 599, (whole, tenths) -> whole + minutes(tenths) + "W"),
          Deviation.class, figures(20, 599, (whole, tenths) -> whole + minutes(tenths) + "E"),
          CompassRose.class,
              figures(90, 59, (whole, minutes) -> whole + "°" + minutes + "'W 2019 (7.5'E)"),
          Position.class,
              figures(
                  89,
                  59_999,
                  (whole, thousandths) ->
                      (whole + "°" + thousandths / 1000.0 + "'N ")
                          + ("0" + whole + "°" + (59_999 - thousandths) / 1000.0 + "'W")),
          Distance.class,
              Combinators.combine(tenths(9999), Arbitraries.of(" NM", " km", " m"))
                  .as((number, unit) -> number + unit),
          Speed.class,
              Combinators.combine(tenths(500), Arbitraries.of(" kn", " km/h", " m/s"))
                  .as((number, unit) -> number + unit),
          Velocity.class, figures(359, 99, (set, tenths) -> set + "° " + tenths / 10.0 + " kn"));

  private static Arbitrary<Double> degrees(double most) {
    double least = most == 360 ? 0.0 : -most;
    return Arbitraries.doubles().between(least, true, most, most != 360).ofScale(15);
  }

  private static Arbitrary<String> grid() {
    return Arbitraries.of("UTM 30N", "Island grid", "G");
  }

  private static Arbitrary<Instant> instant() {
    return Arbitraries.longs()
        .between(0, 4_000_000_000_000L)
        .map(millis -> Instant.ofEpochMilli(millis).plusNanos(millis % 7 == 0 ? 123 : 0));
  }

  private static Arbitrary<Double> tenths(int most) {
    return Arbitraries.integers().between(0, most).map(x -> x / 10.0);
  }

  private static String minutes(int tenths) {
    return "°" + (tenths < 100 ? "0" : "") + tenths / 10.0 + "'";
  }

  private static Arbitrary<String> figures(
      int most, int mostSmall, Combinators.F2<Integer, Integer, String> writer) {
    return Combinators.combine(
            Arbitraries.integers().between(10, most), Arbitraries.integers().between(0, mostSmall))
        .as(writer);
  }

  @Example
  void everyTypeThatReadsItselfIsHeld() {
    TreeSet<String> found =
        new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("org.ferryglide.nav", "org.ferryglide.tide")
                .stream()
                .filter(type -> type.getModifiers().contains(JavaModifier.PUBLIC))
                .flatMap(type -> type.getMethods().stream())
                .filter(ParsedAgainProperties::readsItsOwnType)
                .map(method -> method.getOwner().getName())
                .collect(Collectors.toCollection(TreeSet::new));
    TreeSet<String> held =
        VALUES.keySet().stream().map(Class::getName).collect(Collectors.toCollection(TreeSet::new));
    assertEquals(found, held);
    assertTrue(VALUES.keySet().containsAll(GIVEN.keySet()));
  }

  private static boolean readsItsOwnType(JavaMethod method) {
    JavaClass owner = method.getOwner();
    return method.getName().equals("parse")
        && method.getModifiers().contains(JavaModifier.PUBLIC)
        && method.getModifiers().contains(JavaModifier.STATIC)
        && method.getRawReturnType().equals(owner)
        && method.getRawParameterTypes().size() == 1
        && method.getRawParameterTypes().get(0).isEquivalentTo(String.class);
  }

  @Provide
  Arbitrary<Object> values() {
    return Arbitraries.of(inOrder(VALUES).values()).flatMap(one -> one.map(Function.identity()));
  }

  @Property(seed = Seeds.SEED, tries = 4000)
  void whatIsWrittenIsReadWithoutLossAndShort(@ForAll("values") Object value) throws Throwable {
    String text = value.toString();
    assertEquals(value, read(value.getClass(), text), text);
    assertTrue(text.length() <= LONGEST, text);
  }

  @Provide
  Arbitrary<Map.Entry<Class<?>, String>> given() {
    return Arbitraries.of(inOrder(GIVEN).entrySet())
        .flatMap(one -> one.getValue().map(text -> Map.entry(one.getKey(), text)));
  }

  @Property(seed = Seeds.SEED, tries = 4000)
  void fewFiguresStayFew(@ForAll("given") Map.Entry<Class<?>, String> given) throws Throwable {
    String text = read(given.getKey(), given.getValue()).toString();
    assertTrue(
        text.length() <= given.getValue().length() + GAIN, () -> given.getValue() + " -> " + text);
  }

  /** By name, so that a seed draws the same values in every run. */
  private static <V> Map<Class<?>, V> inOrder(Map<Class<?>, V> map) {
    TreeMap<Class<?>, V> sorted = new TreeMap<>((a, b) -> a.getName().compareTo(b.getName()));
    sorted.putAll(map);
    return sorted;
  }

  private static Object read(Class<?> type, String text) throws Throwable {
    Class<?> declared = type.isEnum() || !type.isAnonymousClass() ? type : type.getSuperclass();
    try {
      return declared.getMethod("parse", String.class).invoke(null, text);
    } catch (InvocationTargetException e) {
      throw e.getCause();
    }
  }
}
