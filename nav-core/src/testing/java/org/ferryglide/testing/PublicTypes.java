package org.ferryglide.testing;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.util.List;
import java.util.Set;

/** The types that a user can name. */
public final class PublicTypes {
  /**
   * Packages that no module exports, or to the other module alone, so that what is public there is
   * still not seen.
   */
  private static final Set<String> NOT_EXPORTED =
      Set.of(
          "org.ferryglide.nav.basics",
          "org.ferryglide.nav.reading",
          "org.ferryglide.nav.plane",
          "org.ferryglide.nav.quickest",
          "org.ferryglide.tide.sheet");

  private PublicTypes() {}

  /** Full names of the public types, nested ones too, in order. */
  public static List<String> in(JavaClasses classes) {
    return classes.stream()
        .filter(PublicTypes::isVisible)
        .map(JavaClass::getName)
        .sorted()
        .toList();
  }

  private static boolean isVisible(JavaClass type) {
    return !NOT_EXPORTED.contains(type.getPackageName())
        && type.getModifiers().contains(JavaModifier.PUBLIC)
        && type.getEnclosingClass().map(PublicTypes::isVisible).orElse(true);
  }
}
