package org.ferryglide.testing;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.util.List;

/** The types that a user can name. */
public final class PublicTypes {
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
    return type.getModifiers().contains(JavaModifier.PUBLIC)
        && type.getEnclosingClass().map(PublicTypes::isVisible).orElse(true);
  }
}
