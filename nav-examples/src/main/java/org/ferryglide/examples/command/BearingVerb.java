package org.ferryglide.examples.command;

import java.time.LocalDate;
import java.util.Locale;
import org.ferryglide.nav.bearing.BearingWorking;
import org.ferryglide.nav.bearing.CompassBearing;
import org.ferryglide.nav.bearing.Deviation;
import org.ferryglide.nav.bearing.GridBearing;
import org.ferryglide.nav.bearing.GridConvergence;
import org.ferryglide.nav.bearing.MagneticBearing;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.grid.MapGrid;
import org.ferryglide.nav.magnetic.VariationSource;
import org.ferryglide.nav.note.Figure;
import org.ferryglide.nav.note.Working;
import org.ferryglide.nav.position.Position;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A bearing turned from one north to another, with the working. */
@Command(
    name = "bearing",
    description = "Turn a bearing between true, magnetic, grid and compass, with the working.",
    footer = {
      "",
      "Examples:",
      "  ferryglide bearing 047 --from true --to compass --variation 7W --deviation 3E --working",
      "  ferryglide bearing 112 --from grid --to magnetic --at \"46-11.8N 26-17.6W\" --date"
          + " 2026-06-14"
    })
final class BearingVerb extends Verb {
  /** Degrees; the figures are told to tenths. */
  private static final double LEAST_TOLD = 0.05;

  /** Which north. */
  enum North {
    TRUE,
    MAGNETIC,
    GRID,
    COMPASS
  }

  @Parameters(index = "0", paramLabel = "DEGREES", description = "The bearing, 0 to 360 degrees.")
  private double degrees;

  @Option(names = "--from", required = true, description = "true, magnetic, grid or compass.")
  private North from = North.TRUE;

  @Option(names = "--to", required = true, description = "true, magnetic, grid or compass.")
  private North to = North.TRUE;

  @Option(names = "--variation", paramLabel = "ANGLE", description = "As 7W or 7°50'W.")
  private @Nullable Variation variation;

  @Option(names = "--deviation", paramLabel = "ANGLE", description = "As 3E.")
  private @Nullable Deviation deviation;

  @Option(names = "--convergence", paramLabel = "ANGLE", description = "Of the grid, as 1.2E.")
  private @Nullable Variation convergence;

  @Option(
      names = "--at",
      paramLabel = "PLACE",
      description = "Where, for variation (with --date) and convergence of the UTM grid.")
  private @Nullable Position place;

  @Option(names = "--date", paramLabel = "DATE", description = "When, for the variation.")
  private @Nullable LocalDate date;

  @Option(names = "--working", description = "The working in the JSON too; the text has it anyway.")
  private boolean inJson;

  @Override
  protected Answer answer() {
    if (!(degrees >= 0.0 && degrees <= 360.0)) {
      throw new InputRefused("a bearing must be in [0, 360] degrees, but was " + degrees);
    }
    Answer answer = new Answer();
    if (from == to) {
      answer.row("result", rounded(degrees) + words());
      return told(answer, degrees, degrees);
    }
    Working working = working();
    if (inJson) {
      answer.workingValue(working);
    }
    Figure result = working.result();
    answer.line(working.toString()).line("").row("result", rounded(result.byHand()) + words());
    if (Math.abs(Math.IEEEremainder(result.byHand() - result.exact(), 360.0)) >= LEAST_TOLD) {
      double tenths = Math.rint(result.exact() * 10.0) / 10.0 % 360.0;
      answer.row("", tenths + "° without rounding on the way");
    }
    return told(answer, result.exact(), result.byHand());
  }

  private Answer told(Answer answer, double exact, double byHand) {
    return answer
        .value("degrees", degrees)
        .value("from", from.name().toLowerCase(Locale.ROOT))
        .value("to", to.name().toLowerCase(Locale.ROOT))
        .value("resultDegrees", exact % 360.0)
        .value("resultByHandDegrees", byHand % 360.0);
  }

  private static String rounded(double degrees) {
    return TrueBearing.ofDegrees(degrees).threeDigits();
  }

  private String words() {
    return " "
        + to.name().toLowerCase(Locale.ROOT)
        + (to == North.GRID && from != to ? ", " + convergence().grid() : "");
  }

  private Working working() {
    BearingWorking by = BearingWorking.inWholeDegrees();
    return switch (from) {
      case TRUE -> fromTrue(by, TrueBearing.ofDegrees(degrees));
      case MAGNETIC -> fromMagnetic(by, MagneticBearing.ofDegrees(degrees));
      case COMPASS -> fromCompass(by, CompassBearing.ofDegrees(degrees));
      case GRID -> fromGrid(by, GridBearing.ofDegrees(degrees, convergence().grid()));
    };
  }

  private Working fromTrue(BearingWorking by, TrueBearing given) {
    return switch (to) {
      case MAGNETIC -> by.trueToMagnetic(given, variation());
      case COMPASS -> by.trueToCompass(given, variation(), deviation());
      case GRID -> by.trueToGrid(given, convergence());
      case TRUE -> throw new IllegalStateException("nothing to turn");
    };
  }

  private Working fromMagnetic(BearingWorking by, MagneticBearing given) {
    return switch (to) {
      case TRUE -> by.magneticToTrue(given, variation());
      case COMPASS -> by.magneticToCompass(given, deviation());
      case GRID -> by.magneticToGrid(given, variation(), convergence());
      case MAGNETIC -> throw new IllegalStateException("nothing to turn");
    };
  }

  private Working fromCompass(BearingWorking by, CompassBearing given) {
    return switch (to) {
      case TRUE -> by.compassToTrue(given, deviation(), variation());
      case MAGNETIC -> by.compassToMagnetic(given, deviation());
      case GRID -> by.compassToGrid(given, deviation(), variation(), convergence());
      case COMPASS -> throw new IllegalStateException("nothing to turn");
    };
  }

  private Working fromGrid(BearingWorking by, GridBearing given) {
    return switch (to) {
      case TRUE -> by.gridToTrue(given, convergence());
      case MAGNETIC -> by.gridToMagnetic(given, convergence(), variation());
      case COMPASS -> by.gridToCompass(given, convergence(), variation(), deviation());
      case GRID -> throw new IllegalStateException("nothing to turn");
    };
  }

  private Variation variation() {
    if (variation != null) {
      return variation;
    }
    if (place == null || date == null) {
      throw new InputRefused("--variation is needed, or --at and --date for it");
    }
    Position where = place;
    LocalDate when = date;
    return InputRefused.given(() -> VariationSource.builtInModels().at(where, when).variation());
  }

  private Deviation deviation() {
    if (deviation == null) {
      throw new InputRefused("--deviation is needed");
    }
    return deviation;
  }

  private GridConvergence convergence() {
    if (convergence != null) {
      double east = convergence.degreesEast();
      return InputRefused.given(() -> GridConvergence.ofDegreesEast(east, "grid"));
    }
    if (place == null) {
      throw new InputRefused("--convergence is needed, or --at for it");
    }
    Position where = place;
    return InputRefused.given(() -> MapGrid.universal(where).convergence(where));
  }
}
