package org.ferryglide.examples.page;

/** Small figures that stand on pictures. */
final class SheetWords {
  private SheetWords() {}

  static String latitude(double degrees) {
    long minutes = Math.round(Math.abs(degrees) * 60.0);
    return minutes / 60 + "°" + Printed.two((int) (minutes % 60)) + "'" + (degrees < 0 ? "S" : "N");
  }
}
