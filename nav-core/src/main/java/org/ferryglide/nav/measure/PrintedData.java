package org.ferryglide.nav.measure;

import java.time.Instant;
import java.util.Map;
import java.util.function.Function;
import org.ferryglide.nav.note.Note;
import org.ferryglide.nav.note.Words;
import org.jspecify.annotations.Nullable;

/** The data of notes as they are printed in units of one's choice. */
final class PrintedData {
  /** A figure that is whole but for the rounding of its arithmetic stays as it is. */
  private static final double ROUNDING = 1e-9;

  /** Longer distances in metres are printed in the unit of distances. */
  private static final double SHORT_METRES = 1000.0;

  private static final String[] WHOLE = {"Minutes", "Hours", "Percent", "Leg", "Number"};

  private final Units units;
  private final Words words;
  private final Function<Instant, String> clock;

  PrintedData(Units units, Words words, Function<Instant, String> clock) {
    this.units = units;
    this.words = words;
    this.clock = clock;
  }

  @Nullable String printed(Note note, String name) {
    String text = note.data().get(name);
    if (text == null) {
      return null;
    }
    if (name.equals("unit")) {
      return unit(text);
    }
    if (name.endsWith("Time")) {
      return clock.apply(Instant.parse(text));
    }
    if (name.startsWith("spoken")) {
      return spoken(text);
    }
    Double value = note.figures().get(name);
    if (value == null) {
      return text;
    }
    String unit = note.data().get("unit");
    if (unit != null && (name.equals("figure") || name.equals("warn") || name.equals("stop"))) {
      return ofAFinding(note.figures(), name, value, unit);
    }
    return figure(name, value);
  }

  private String figure(String name, double value) {
    if (name.endsWith("Knots")) {
      double metresPerSecond = value * Speed.METRES_PER_SECOND_PER_KNOT;
      return tenths(units.speed(metresPerSecond), true) + " " + symbol(units.speedSymbol());
    }
    if (name.endsWith("MetresPerSecond")) {
      return tenths(units.speed(value), true) + " " + symbol(units.speedSymbol());
    }
    if (name.endsWith("Share")) {
      return (long) Math.ceil(value * 100.0 - ROUNDING) + " %";
    }
    boolean miles = name.endsWith("NauticalMiles");
    if (miles || name.endsWith("Metres")) {
      double metres = miles ? value * Distance.METRES_PER_NAUTICAL_MILE : value;
      return miles || Math.abs(metres) > SHORT_METRES
          ? near(units.distance(metres)) + " " + symbol(units.distanceSymbol())
          : near(units.height(metres)) + " " + symbol(units.heightSymbol());
    }
    for (String ending : WHOLE) {
      if (name.endsWith(ending)) {
        return Long.toString((long) Math.ceil(value - ROUNDING));
      }
    }
    return trimmed(Math.round(value * 1000.0) / 1000.0);
  }

  /** The figure to the side of the limit that stops, the limits to the other. */
  private String ofAFinding(Map<String, Double> figures, String name, double value, String unit) {
    boolean largeIsWorse = number(figures, "stop") > number(figures, "warn");
    boolean up = largeIsWorse == name.equals("figure");
    double shown = value;
    if (unit.startsWith("knots")) {
      shown = units.speed(value * Speed.METRES_PER_SECOND_PER_KNOT);
    } else if (unit.startsWith("metres")) {
      shown = units.height(value);
    } else if (unit.startsWith("minutes")) {
      return trimmed(up ? Math.ceil(shown - ROUNDING) : Math.floor(shown + ROUNDING));
    } else if (!words.templates().containsKey(key(unit))) {
      return trimmed(rounded(shown * 100.0, up) / 100.0); // a unit of the caller's own
    }
    return name.equals("figure") ? tenths(shown, up) : trimmed(rounded(shown * 10.0, up) / 10.0);
  }

  private static double number(Map<String, Double> figures, String name) {
    Double figure = figures.get(name);
    return figure == null ? Double.NaN : figure;
  }

  private static double rounded(double value, boolean up) {
    return up ? Math.ceil(value - ROUNDING) : Math.floor(value + ROUNDING);
  }

  private static String tenths(double value, boolean up) {
    return Double.toString(rounded(value * 10.0, up) / 10.0 + 0.0);
  }

  private static String near(double value) {
    return Double.toString(Math.rint(value * 10.0) / 10.0 + 0.0);
  }

  /** Whole numbers without a decimal point. */
  private static String trimmed(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e15
        ? Long.toString((long) value)
        : Double.toString(value);
  }

  private static String key(String unit) {
    return "unit." + unit.replace(' ', '-');
  }

  /** The unit of a finding, in the words of the file if they are known. */
  private String unit(String unit) {
    return words.templates().containsKey(key(unit))
        ? words.say(
            key(unit), "speed", symbol(units.speedSymbol()), "height", symbol(units.heightSymbol()))
        : unit;
  }

  private String symbol(String symbol) {
    return words.say("unit." + symbol);
  }

  /** Figures one by one. */
  private String spoken(String figures) {
    StringBuilder spoken = new StringBuilder();
    for (int i = 0; i < figures.length(); i++) {
      spoken.append(i == 0 ? "" : " ").append(words.say("figure." + figures.charAt(i)));
    }
    return spoken.toString();
  }
}
