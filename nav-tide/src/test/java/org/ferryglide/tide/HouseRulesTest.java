package org.ferryglide.tide;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.belongToAnyOf;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import org.ferryglide.nav.reckon.ErrorModel;
import org.ferryglide.nav.reckon.ErrorSource;
import org.ferryglide.nav.reckon.Spread;
import org.ferryglide.testing.HouseRules;
import org.ferryglide.testing.PublicTypes;
import org.junit.jupiter.api.Test;

class HouseRulesTest extends HouseRules {
  /** Ground floor first: a room imports earlier rooms only. */
  private static final List<String> ROOMS =
      List.of("sheet", "height", "harmonic", "stream", "teach", "folder");

  /** Of both modules together without their topmost rooms. */
  private static final int MOST_TOP_LEVEL_TYPES = 210;

  private static final int MOST_TYPES = 237;

  HouseRulesTest() {
    super("org.ferryglide.tide", ROOMS);
  }

  @Test
  void theTwoModulesTogetherStaySmallEnoughToKnow() {
    JavaClasses both =
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("org.ferryglide.nav", "org.ferryglide.tide");
    List<String> all =
        PublicTypes.in(both).stream()
            .filter(name -> !name.startsWith("org.ferryglide.nav.passage."))
            .filter(name -> !name.contains(".teach."))
            .filter(name -> !name.startsWith("org.ferryglide.tide.folder."))
            .toList();
    long topLevel = all.stream().filter(name -> !name.contains("$")).count();
    assertTrue(all.contains("org.ferryglide.nav.position.Position"), "nav-core was not read");
    assertTrue(topLevel <= MOST_TOP_LEVEL_TYPES, () -> topLevel + " top-level types");
    assertTrue(all.size() <= MOST_TYPES, () -> all.size() + " types, nested ones counted");
  }

  @Test
  void steeringFixingAndPlanningAreImportedByTheTopFloorAlone() {
    noClasses()
        .that()
        .resideOutsideOfPackage("org.ferryglide.tide.folder..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "org.ferryglide.nav.steer..",
            "org.ferryglide.nav.timing..",
            "org.ferryglide.nav.reckon..",
            "org.ferryglide.nav.fix..",
            "org.ferryglide.nav.sight..",
            "org.ferryglide.nav.landfall..",
            "org.ferryglide.nav.passage..")
        .check(code());
  }

  /**
   * A folder becomes a passage, and knows what a passage is built of: craft and strategies, and
   * conditions. Of what else stands above streams it knows nothing.
   */
  @Test
  void foldersKnowThePassageAndItsPartsAlone() {
    noClasses()
        .that()
        .resideInAPackage("org.ferryglide.tide.folder..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "org.ferryglide.nav.fix..",
            "org.ferryglide.nav.sight..",
            "org.ferryglide.nav.landfall..")
        .check(code());
    // of reckoning it knows the errors, which are a part of the passage
    noClasses()
        .that()
        .resideInAPackage("org.ferryglide.tide.folder..")
        .should()
        .dependOnClassesThat(
            resideInAPackage("org.ferryglide.nav.reckon..")
                .and(not(belongToAnyOf(ErrorModel.class, ErrorSource.class, Spread.class))))
        .check(code());
  }
}
