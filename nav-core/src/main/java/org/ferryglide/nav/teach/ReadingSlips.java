package org.ferryglide.nav.teach;

import java.util.ArrayList;
import java.util.List;

/** The slips of reading and writing that can befall any figure of a kind. */
final class ReadingSlips {
  private static final double KILOMETRES_IN_MILE = 1.852;

  /** International statute mile, 1609.344 m. */
  private static final double STATUTE_MILES_IN_MILE = 1.852 / 1.609344;

  private ReadingSlips() {}

  static List<SlipRule> of(String figure, Quantity quantity, boolean given) {
    List<SlipRule> slips = new ArrayList<>();
    if (quantity.isBearing()) {
      slips.add(slip(figure, "reversed by 180°", Slip.COMMON, f -> f.of(figure) + 180.0));
      if (given) {
        slips.add(
            slip(
                figure,
                "scale read backwards from its ten, the one below",
                Slip.SOMETIMES,
                f -> backwards(f.of(figure), 0.0)));
        slips.add(
            slip(
                figure,
                "scale read backwards from its ten, the one above",
                Slip.SOMETIMES,
                f -> backwards(f.of(figure), 10.0)));
      } else {
        slips.add(slip(figure, "90° too much", Slip.RARE, f -> f.of(figure) + 90.0));
        slips.add(slip(figure, "90° too little", Slip.RARE, f -> f.of(figure) - 90.0));
      }
      slips.add(slip(figure, "last two digits transposed", Slip.RARE, f -> lastTwo(f.of(figure))));
      slips.add(
          slip(figure, "first two digits transposed", Slip.RARE, f -> firstTwo(f.of(figure))));
    }
    switch (quantity) {
      case NAUTICAL_MILES -> {
        if (given) {
          slips.add(
              slip(
                  figure,
                  "kilometres taken for nautical miles",
                  Slip.SOMETIMES,
                  f -> f.of(figure) * KILOMETRES_IN_MILE));
          slips.add(
              slip(
                  figure,
                  "statute miles taken for nautical miles",
                  Slip.SOMETIMES,
                  f -> f.of(figure) * STATUTE_MILES_IN_MILE));
        }
      }
      case MINUTES -> {
        slips.add(
            slip(
                figure,
                "hundredths of an hour taken for minutes",
                Slip.SOMETIMES,
                f -> hundredths(f.of(figure))));
        slips.add(
            slip(
                figure,
                "minutes taken as hundredths of an hour",
                Slip.SOMETIMES,
                f -> ofHundredths(f.of(figure))));
      }
      case CLOCK -> {
        slips.add(
            slip(figure, "an hour late: zone or summer time", Slip.COMMON, f -> f.of(figure) + 60));
        slips.add(
            slip(
                figure, "an hour early: zone or summer time", Slip.COMMON, f -> f.of(figure) - 60));
      }
      default -> {}
    }
    return slips;
  }

  private static SlipRule slip(String figure, String text, double likelihood, Rule rule) {
    return new SlipRule(new Slip(figure, text, likelihood), rule);
  }

  /** 263 read as 257, counted down from 260; or 257 as 263, counted up from 260. */
  static double backwards(double degrees, double above) {
    double ten = Math.floor(degrees / 10.0) * 10.0 + above;
    return ten + (ten - degrees);
  }

  /** The digits change places, what lies between two degrees stays. */
  static double lastTwo(double degrees) {
    long whole = (long) Math.floor(degrees);
    return whole / 100 * 100 + whole % 10 * 10 + whole / 10 % 10 + (degrees - whole);
  }

  static double firstTwo(double degrees) {
    long whole = (long) Math.floor(degrees);
    return whole / 10 % 10 * 100 + whole / 100 * 10 + whole % 10 + (degrees - whole);
  }

  /** One hour fifty, written 1.50 h and read as an hour and fifty minutes of what was 1 h 30. */
  static double hundredths(double minutes) {
    double hours = Math.floor(minutes / 60.0);
    return hours * 60.0 + (minutes - hours * 60.0) / 60.0 * 100.0;
  }

  /**
   * The other way: an hour and thirty minutes keyed in as 1.30 h, which is an hour and eighteen.
   */
  static double ofHundredths(double minutes) {
    double hours = Math.floor(minutes / 60.0);
    return hours * 60.0 + (minutes - hours * 60.0) * 0.6;
  }
}
