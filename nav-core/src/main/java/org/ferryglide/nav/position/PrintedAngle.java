package org.ferryglide.nav.position;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * An angle rounded once, in the unit of its last part, and only then split: so that 59.96 minutes
 * becomes the next degree rather than 60.0 minutes.
 */
final class PrintedAngle {
  private final long degrees;
  private final long minutes;
  private final String last;
  private final boolean negative;

  PrintedAngle(double angle, AngleForm form, int decimals) {
    if (decimals < 0 || decimals > 9) {
      throw new IllegalArgumentException("decimals must be in [0, 9], but was " + decimals);
    }
    int units = form.unitsInDegree();
    // the exact binary value, so that the rounding does not depend on a product's last bit
    BigDecimal total =
        new BigDecimal(angle)
            .abs()
            .multiply(BigDecimal.valueOf(units))
            .setScale(decimals, RoundingMode.HALF_UP);
    BigDecimal lastInDegree = BigDecimal.valueOf(units > 60 ? 60 : units);
    BigDecimal rest = units == 1 ? total : total.remainder(lastInDegree);
    long wholes =
        units == 1 ? 0 : total.subtract(rest).divideToIntegralValue(lastInDegree).longValue();
    degrees = units == 1 ? 0 : units == 60 ? wholes : wholes / 60;
    minutes = units == 3600 ? wholes % 60 : 0;
    last = rest.toPlainString();
    // what rounds to nothing has no side, and the date line is named one way only
    boolean dateLine = total.compareTo(BigDecimal.valueOf(180L * units)) == 0;
    negative = (angle < 0.0 && total.signum() > 0) || dateLine;
  }

  boolean negative() {
    return negative;
  }

  /** The parts with the marks given, degrees padded to a width, the rest to two digits. */
  String join(
      AngleForm form, int degreeWidth, String degreeMark, String minuteMark, String secondMark) {
    return switch (form) {
      case DEGREES -> padded(last, degreeWidth) + degreeMark;
      case DEGREES_MINUTES ->
          padded(Long.toString(degrees), degreeWidth) + degreeMark + padded(last, 2) + minuteMark;
      case DEGREES_MINUTES_SECONDS ->
          padded(Long.toString(degrees), degreeWidth)
              + degreeMark
              + padded(Long.toString(minutes), 2)
              + minuteMark
              + padded(last, 2)
              + secondMark;
    };
  }

  private static String padded(String number, int width) {
    int point = number.indexOf('.');
    StringBuilder text = new StringBuilder();
    for (int i = point < 0 ? number.length() : point; i < width; i++) {
      text.append('0');
    }
    return text.append(number).toString();
  }
}
