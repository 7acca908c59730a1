package org.ferryglide.tide;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The floors of the house plan: a room imports earlier rooms only. */
class HouseRulesTest {
  /** Ground floor first. */
  private static final List<String> ROOMS = List.of("sheet", "height", "harmonic", "stream");

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("org.ferryglide.tide");

  @TestFactory
  List<DynamicTest> lowerFloorsNeverImportHigherOnes() {
    return ROOMS.stream()
        .map(
            room ->
                DynamicTest.dynamicTest(
                    room,
                    () ->
                        noClasses()
                            .that()
                            .resideInAPackage("org.ferryglide.tide." + room + "..")
                            .should()
                            .dependOnClassesThat()
                            .resideInAnyPackage(above(room))
                            .allowEmptyShould(true)
                            .check(CLASSES)))
        .toList();
  }

  private static String[] above(String room) {
    return ROOMS.subList(ROOMS.indexOf(room) + 1, ROOMS.size()).stream()
        .map(higher -> "org.ferryglide.tide." + higher + "..")
        .toArray(String[]::new);
  }

  @Test
  void everyPackageIsARoomOfThePlan() {
    String[] allowed =
        ROOMS.stream().map(room -> "org.ferryglide.tide." + room).toArray(String[]::new);
    com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes()
        .that()
        .haveSimpleNameNotEndingWith("module-info")
        .should()
        .resideInAnyPackage(allowed)
        .check(CLASSES);
  }

  @Test
  void steeringFixingAndPlanningAreNeverImported() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "org.ferryglide.nav.steer..",
            "org.ferryglide.nav.reckon..",
            "org.ferryglide.nav.fix..",
            "org.ferryglide.nav.sight..",
            "org.ferryglide.nav.landfall..",
            "org.ferryglide.nav.passage..")
        .check(CLASSES);
  }

  @Test
  void nothingNeedsADesktopOrAStreamingXmlParser() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "java.awt..", "javax.swing..", "javax.xml..", "org.apache.commons.math3.geometry..")
        .check(CLASSES);
  }

  @Test
  void nothingPrintsOrLogs() {
    noClasses().should().accessField(System.class, "out").check(CLASSES);
    noClasses().should().accessField(System.class, "err").check(CLASSES);
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.util.logging..", "org.slf4j..")
        .check(CLASSES);
  }

  @Test
  void noHiddenClockZoneOrLocale() {
    for (Class<?> type : Arrays.asList(java.time.Instant.class, java.time.LocalDate.class)) {
      noClasses().should().callMethod(type, "now").check(CLASSES);
    }
    noClasses().should().callMethod(java.time.LocalDateTime.class, "now").check(CLASSES);
    noClasses().should().callMethod(java.time.ZonedDateTime.class, "now").check(CLASSES);
    noClasses().should().callMethod(Clock.class, "systemUTC").check(CLASSES);
    noClasses().should().callMethod(Clock.class, "systemDefaultZone").check(CLASSES);
    noClasses().should().callMethod(System.class, "currentTimeMillis").check(CLASSES);
    noClasses().should().callMethod(ZoneId.class, "systemDefault").check(CLASSES);
    noClasses().should().callMethod(TimeZone.class, "getDefault").check(CLASSES);
    noClasses().should().callMethod(Locale.class, "getDefault").check(CLASSES);
    noClasses().should().callMethod(String.class, "toLowerCase").check(CLASSES);
    noClasses().should().callMethod(String.class, "toUpperCase").check(CLASSES);
    noClasses()
        .should()
        .callMethod(String.class, "format", String.class, Object[].class)
        .check(CLASSES);
  }
}
