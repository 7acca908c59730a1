package org.ferryglide.examples.command;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import org.ferryglide.nav.bearing.Deviation;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.measure.Speed;
import org.ferryglide.nav.position.Position;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Arguments read as the library reads them, its refusals handed on as they are. */
final class ReadAs {
  /** What stands in place of a character that the machine's character set lacks. */
  private static final char LOST = '\uFFFD';

  private ReadAs() {}

  private static TypeConversionException refusal(String text, IllegalArgumentException why) {
    return new TypeConversionException(
        text.indexOf(LOST) < 0
            ? why.getMessage()
            : "the terminal's character set lost a sign such as ° or ′; write 46-11.8N 26-17.6W, or"
                + " set LC_ALL=C.UTF-8");
  }

  /** Positions in every form that charts use. */
  static final class Positions implements ITypeConverter<Position> {
    @Override
    public Position convert(String text) {
      try {
        return Position.parse(text);
      } catch (IllegalArgumentException e) {
        if (text.matches("[^ ,;]*[0-9.][NSns]")) { // the shell parted it at its blank
          throw new TypeConversionException(
              e.getMessage() + "; a position with blanks stands in quotes");
        }
        throw refusal(text, e);
      }
    }
  }

  /** Speeds with their unit, or plain knots. */
  static final class Speeds implements ITypeConverter<Speed> {
    @Override
    public Speed convert(String text) {
      try {
        return isPlainNumber(text) ? Speed.ofKnots(Double.parseDouble(text)) : Speed.parse(text);
      } catch (IllegalArgumentException e) {
        throw refusal(text, e);
      }
    }
  }

  /** Distances with their unit, or plain nautical miles. */
  static final class Distances implements ITypeConverter<Distance> {
    @Override
    public Distance convert(String text) {
      try {
        return isPlainNumber(text)
            ? Distance.ofNauticalMiles(Double.parseDouble(text))
            : Distance.parse(text);
      } catch (IllegalArgumentException e) {
        throw refusal(text, e);
      }
    }
  }

  /** As the library reads them. */
  static final class TrueBearings implements ITypeConverter<TrueBearing> {
    @Override
    public TrueBearing convert(String text) {
      try {
        return TrueBearing.parse(text);
      } catch (IllegalArgumentException e) {
        throw refusal(text, e);
      }
    }
  }

  /** As the library reads them. */
  static final class Variations implements ITypeConverter<Variation> {
    @Override
    public Variation convert(String text) {
      try {
        return Variation.parse(text);
      } catch (IllegalArgumentException e) {
        throw refusal(text, e);
      }
    }
  }

  /** As the library reads them. */
  static final class Deviations implements ITypeConverter<Deviation> {
    @Override
    public Deviation convert(String text) {
      try {
        return Deviation.parse(text);
      } catch (IllegalArgumentException e) {
        throw refusal(text, e);
      }
    }
  }

  /** Names of files and folders, none of them empty. */
  static final class Paths implements ITypeConverter<Path> {
    @Override
    public Path convert(String text) {
      try {
        if (!text.trim().isEmpty()) {
          return Path.of(text);
        }
      } catch (InvalidPathException e) {
        throw new TypeConversionException("must be the name of a file or folder: " + e.getReason());
      }
      throw new TypeConversionException("must be the name of a file or folder, but was empty");
    }
  }

  static final class Dates implements ITypeConverter<LocalDate> {
    @Override
    public LocalDate convert(String text) {
      try {
        LocalDate date = LocalDate.parse(text);
        refuseFarYears(date.getYear(), text);
        return date;
      } catch (DateTimeException e) {
        throw new TypeConversionException(
            "must be a date such as 2026-06-14, but was \"" + text + "\"");
      }
    }
  }

  static final class Times implements ITypeConverter<LocalTime> {
    @Override
    public LocalTime convert(String text) {
      try {
        return LocalTime.parse(text);
      } catch (DateTimeException e) {
        throw new TypeConversionException(
            "must be a time of day such as 16:40, but was \"" + text + "\"");
      }
    }
  }

  static final class DatesAndTimes implements ITypeConverter<OffsetDateTime> {
    @Override
    public OffsetDateTime convert(String text) {
      try {
        OffsetDateTime time = OffsetDateTime.parse(text);
        refuseFarYears(time.getYear(), text);
        return time;
      } catch (DateTimeException e) {
        throw new TypeConversionException(
            "must be a date and time with its offset such as 2026-06-14T11:40+01:00, but was \""
                + text
                + "\"");
      }
    }
  }

  static final class Zones implements ITypeConverter<ZoneId> {
    @Override
    public ZoneId convert(String text) {
      try {
        return ZoneId.of(text);
      } catch (DateTimeException e) {
        throw new TypeConversionException(
            "must be a zone such as +01:00 or Europe/London, but was \"" + text + "\"");
      }
    }
  }

  /** No table and no model is of other years, and times beyond overflow. */
  private static void refuseFarYears(int year, String text) {
    if (year < 1900 || year > 2100) {
      throw new TypeConversionException(
          "the year must be in [1900, 2100], but was \"" + text + "\"");
    }
  }

  static boolean isPlainNumber(String text) {
    for (int at = 0; at < text.length(); at++) {
      char c = text.charAt(at);
      if ((c < '0' || c > '9') && c != '.' && !(at == 0 && c == '-')) {
        return false;
      }
    }
    return !text.isEmpty();
  }
}
