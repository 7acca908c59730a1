package org.ferryglide.testing;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.TimeZone;
import java.util.UUID;
import java.util.concurrent.ThreadLocalRandom;
import java.util.stream.Stream;
import net.jqwik.api.Property;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.TestInstance;
import org.junit.platform.commons.annotation.Testable;

/**
 * The rules that every module of the library keeps; a module's own test names its package and its
 * rooms, and adds what holds for it alone.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS) // reading the classes takes longer than the rules
public abstract class HouseRules {
  /** A room with more types than this holds more than one idea. */
  private static final int MOST_PUBLIC_TYPES_IN_A_ROOM = 25;

  private final String root;
  private final List<String> rooms;
  private final JavaClasses code;
  private final JavaClasses tests;

  /**
   * Takes the plan of a module.
   *
   * @param root the module's package
   * @param rooms its rooms, ground floor first
   */
  protected HouseRules(String root, List<String> rooms) {
    this.root = root;
    this.rooms = rooms;
    this.code =
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages(root);
    this.tests =
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.ONLY_INCLUDE_TESTS)
            .importPackages(root);
  }

  /** The module's own code, without its tests. */
  protected final JavaClasses code() {
    return code;
  }

  /** Lower floors never import higher ones. */
  @TestFactory
  public Stream<DynamicTest> lowerFloorsNeverImportHigherOnes() {
    return rooms.stream()
        .map(
            room ->
                DynamicTest.dynamicTest(
                    room,
                    () ->
                        noClasses()
                            .that()
                            .resideInAPackage(inside(room))
                            .should()
                            .dependOnClassesThat()
                            .resideInAnyPackage(above(room))
                            .allowEmptyShould(true)
                            .check(code)));
  }

  private String inside(String room) {
    return root + "." + room + "..";
  }

  private String[] above(String room) {
    return rooms.subList(rooms.indexOf(room) + 1, rooms.size()).stream()
        .map(this::inside)
        .toArray(String[]::new);
  }

  /** Every package is a room of the plan. */
  @Test
  public void everyPackageIsARoomOfThePlan() {
    String[] allowed = rooms.stream().map(room -> root + "." + room).toArray(String[]::new);
    classes()
        .that()
        .haveSimpleNameNotEndingWith("module-info")
        .should()
        .resideInAnyPackage(allowed)
        .check(code);
  }

  /** No room is crowded. */
  @TestFactory
  public Stream<DynamicTest> noRoomIsCrowded() {
    return rooms.stream()
        .map(
            room ->
                DynamicTest.dynamicTest(
                    room,
                    () -> {
                      JavaClasses inside = code.that(resideInAPackage(root + "." + room));
                      List<String> names = PublicTypes.in(inside);
                      assertTrue(
                          names.size() <= MOST_PUBLIC_TYPES_IN_A_ROOM,
                          () ->
                              room
                                  + " may hold "
                                  + MOST_PUBLIC_TYPES_IN_A_ROOM
                                  + " public types, nested ones counted, but holds "
                                  + names.size()
                                  + ": "
                                  + names);
                    }));
  }

  /** Nothing needs a desktop or a streaming xml parser. */
  @Test
  public void nothingNeedsADesktopOrAStreamingXmlParser() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "java.awt..", "javax.swing..", "javax.xml..", "org.apache.commons.math3.geometry..")
        .check(code);
  }

  /** Nothing prints or logs. */
  @Test
  public void nothingPrintsOrLogs() {
    noClasses().should().accessField(System.class, "out").check(code);
    noClasses().should().accessField(System.class, "err").check(code);
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.util.logging..", "org.slf4j..")
        .check(code);
  }

  /** No hidden clock, zone or locale. */
  @Test
  public void noHiddenClockZoneOrLocale() {
    for (Class<?> type :
        List.of(Instant.class, LocalDate.class, LocalDateTime.class, ZonedDateTime.class)) {
      noClasses().should().callMethod(type, "now").check(code);
    }
    noClasses().should().callMethod(Clock.class, "systemUTC").check(code);
    noClasses().should().callMethod(Clock.class, "systemDefaultZone").check(code);
    noClasses().should().callMethod(System.class, "currentTimeMillis").check(code);
    noClasses().should().callMethod(ZoneId.class, "systemDefault").check(code);
    noClasses().should().callMethod(TimeZone.class, "getDefault").check(code);
    noClasses().should().callMethod(Locale.class, "getDefault").check(code);
    noClasses().should().callMethod(String.class, "toLowerCase").check(code);
    noClasses().should().callMethod(String.class, "toUpperCase").check(code);
    noClasses()
        .should()
        .callMethod(String.class, "format", String.class, Object[].class)
        .check(code);
  }

  /** A property without the shared seed makes the gate a matter of luck. */
  @Test
  public void everyPropertyTakesTheSharedSeed() {
    List<String> others =
        tests.stream()
            .flatMap(type -> type.getMethods().stream())
            .filter(method -> method.isAnnotatedWith(Property.class))
            .filter(method -> !method.getAnnotationOfType(Property.class).seed().equals(Seeds.SEED))
            .map(JavaMethod::getFullName)
            .toList();
    assertEquals(List.of(), others, "write @Property(seed = Seeds.SEED, tries = …)");
  }

  /** Surefire runs by name: a test class with another ending would never run, and nobody notice. */
  @Test
  public void everyTestClassIsNamedSoThatItRuns() {
    List<String> others =
        tests.stream()
            .filter(type -> type.getMethods().stream().anyMatch(HouseRules::isTest))
            .map(JavaClass::getName)
            .filter(name -> !name.matches(".*(Test|Properties)(\\$.*)?"))
            .toList();
    assertEquals(List.of(), others, "let the name end in Test or Properties");
  }

  private static boolean isTest(JavaMethod method) {
    return method.isMetaAnnotatedWith(Testable.class);
  }

  /** Tests draw from generators with a seed of their own, so that a failure comes again. */
  @Test
  public void noTestDrawsWithoutASeed() {
    noClasses().should().callConstructor(Random.class).check(tests);
    noClasses().should().callConstructor(SplittableRandom.class).check(tests);
    noClasses().should().callMethod(Math.class, "random").check(tests);
    noClasses().should().callMethod(UUID.class, "randomUUID").check(tests);
    noClasses()
        .should()
        .dependOnClassesThat()
        .areAssignableTo(ThreadLocalRandom.class)
        .check(tests);
  }
}
