package org.ferryglide.tide.folder;

import java.io.IOException;
import java.io.Serializable;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import org.ferryglide.nav.magnetic.CompassRose;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.tide.sheet.Sheet;

/**
 * What {@code passage.csv} says.
 *
 * @param name what the passage is called
 * @param start when the first way point is left
 * @param speed paddling speed through still water
 * @param rose the printed rose
 * @param landingPort the port whose tide holds at the last way point
 */
record PassageSheet(
    String name, OffsetDateTime start, Speed speed, CompassRose rose, String landingPort)
    implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final List<String> ITEMS =
      List.of("name", "start", "paddling speed", "printed rose", "landing port");

  /** Faster than any kayak is paddled over a passage: more is a slip. */
  private static final double FASTEST_KNOTS = 12.0;

  /** Stands in for what could not be read until the file is refused. */
  private static final CompassRose NO_ROSE = CompassRose.parse("0°00' 2000 (nil)");

  static PassageSheet read(FolderText file) throws IOException {
    ItemSheet items = ItemSheet.read(file, ITEMS, List.of());
    PassageSheet passage =
        new PassageSheet(
            items.read("name", PassageSheet::notEmpty, ""),
            items.read("start", PassageSheet::dateAndTime, OffsetDateTime.MIN),
            items.read("paddling speed", PassageSheet::movingSpeed, Speed.ZERO),
            items.read("printed rose", CompassRose::parse, NO_ROSE),
            items.read("landing port", PassageSheet::notEmpty, ""));
    items.refuseIfFaulty();
    return passage;
  }

  PassageSheet withStart(OffsetDateTime other) {
    return new PassageSheet(name, checked(other), speed, rose, landingPort);
  }

  PassageSheet withName(String other) {
    return new PassageSheet(other, start, speed, rose, landingPort);
  }

  PassageSheet withSpeed(Speed other) {
    return new PassageSheet(name, start, other, rose, landingPort);
  }

  /** The file that reads as this does. */
  String text() {
    return "item,value\n"
        + ("name," + Sheet.field("name of a passage", name) + "\n")
        + ("start," + start + "\n")
        + ("paddling speed," + speed + "\n")
        + ("printed rose," + Sheet.field("rose", rose.toString()) + "\n")
        + ("landing port," + Sheet.field("landing port", landingPort) + "\n");
  }

  private static String notEmpty(String text) {
    if (text.isEmpty()) {
      throw new IllegalArgumentException("must not be empty");
    }
    return text;
  }

  static OffsetDateTime dateAndTime(String text) {
    try {
      return checked(OffsetDateTime.parse(text));
    } catch (DateTimeParseException e) {
      throw new IllegalArgumentException(
          "must be a date and time with its offset, as in 2026-06-14T11:40+01:00, but was \""
              + text
              + "\"",
          e);
    }
  }

  private static OffsetDateTime checked(OffsetDateTime time) {
    if (time.getYear() < 1900 || time.getYear() > 2100) {
      throw new IllegalArgumentException("the year must be in [1900, 2100], but was " + time);
    }
    return time;
  }

  private static Speed movingSpeed(String text) {
    Speed speed = Speed.parse(text);
    if (!(speed.knots() > 0.0 && speed.knots() <= FASTEST_KNOTS)) {
      throw new IllegalArgumentException(
          "a paddling speed must be above 0 and at most 12 kn, but was " + text);
    }
    return speed;
  }
}
