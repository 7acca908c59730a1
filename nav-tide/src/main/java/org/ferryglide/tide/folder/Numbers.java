package org.ferryglide.tide.folder;

import java.math.BigDecimal;
import java.math.MathContext;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;

/** Writes measures as the bare numbers of columns whose headings tell the unit. */
final class Numbers {
  private static final int MOST_DIGITS = 17;

  private Numbers() {}

  static String of(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  /** Metres. */
  static String of(Distance distance) {
    return of(distance.metres());
  }

  /** The fewest digits of knots that read as the speed; the nearest where none do. */
  static String knots(Speed speed) {
    BigDecimal knots = BigDecimal.valueOf(speed.knots());
    for (int digits = 1; digits <= MOST_DIGITS; digits++) {
      BigDecimal rounded = knots.round(new MathContext(digits));
      if (Speed.ofKnots(rounded.doubleValue()).equals(speed)) {
        return rounded.stripTrailingZeros().toPlainString();
      }
    }
    return knots.toPlainString();
  }
}
