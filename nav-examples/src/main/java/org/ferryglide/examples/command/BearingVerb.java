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
      "  ferryglide bearing 047 --from true --to compass --variation 7W --deviation 3E",
      "  ferryglide bearing 112 --from grid --to magnetic --at \"46-11.8N 26-17.6W\" --date"
          + " 2026-06-14"
    })
final class BearingVerb extends Verb {
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

  @Override
  protected Answer answer() {
    if (!(degrees >= 0.0 && degrees <= 360.0)) {
      throw new IllegalArgumentException(
          "a bearing must be in [0, 360] degrees, but was " + degrees);
    }
    Answer answer = new Answer();
    double inTrue = toTrue(answer);
    double result = fromTrue(answer, TrueBearing.ofDegrees(inTrue));
    return answer
        .value("degrees", degrees)
        .value("from", from.name().toLowerCase(Locale.ROOT))
        .value("to", to.name().toLowerCase(Locale.ROOT))
        .value("resultDegrees", result);
  }

  private double toTrue(Answer answer) {
    BearingWorking working = BearingWorking.inWholeDegrees();
    switch (from) {
      case TRUE -> {
        return degrees;
      }
      case MAGNETIC -> {
        MagneticBearing given = MagneticBearing.ofDegrees(degrees);
        shown(answer, working.magneticToTrue(given, variation()));
        return given.toTrue(variation()).degrees();
      }
      case COMPASS -> {
        CompassBearing given = CompassBearing.ofDegrees(degrees);
        shown(answer, working.compassToTrue(given, deviation(), variation()));
        return given.toMagnetic(deviation()).toTrue(variation()).degrees();
      }
      case GRID -> {
        GridConvergence grid = convergence();
        GridBearing given = GridBearing.ofDegrees(degrees, grid.grid());
        shown(answer, working.gridToTrue(given, grid));
        return given.toTrue(grid).degrees();
      }
    }
    throw new IllegalStateException("no such north: " + from);
  }

  private double fromTrue(Answer answer, TrueBearing bearing) {
    BearingWorking working = BearingWorking.inWholeDegrees();
    switch (to) {
      case TRUE -> {
        answer.row("result", bearing.threeDigits() + " true");
        return bearing.degrees();
      }
      case MAGNETIC -> {
        MagneticBearing result = bearing.toMagnetic(variation());
        shown(answer, working.trueToMagnetic(bearing, variation()));
        answer.row("result", result.threeDigits() + " magnetic");
        return result.degrees();
      }
      case COMPASS -> {
        CompassBearing result = bearing.toMagnetic(variation()).toCompass(deviation());
        shown(answer, working.trueToCompass(bearing, variation(), deviation()));
        answer.row("result", result.threeDigits() + " compass");
        return result.degrees();
      }
      case GRID -> {
        GridConvergence grid = convergence();
        GridBearing result = bearing.toGrid(grid);
        shown(answer, working.trueToGrid(bearing, grid));
        answer.row("result", result.threeDigits() + " grid, " + grid.grid());
        return result.degrees();
      }
    }
    throw new IllegalStateException("no such north: " + to);
  }

  private static void shown(Answer answer, Working working) {
    answer.line(working.toString()).line("");
  }

  private Variation variation() {
    if (variation != null) {
      return variation;
    }
    if (place == null || date == null) {
      throw new IllegalArgumentException("--variation is needed, or --at and --date for it");
    }
    return VariationSource.builtInModels().at(place, date).variation();
  }

  private Deviation deviation() {
    if (deviation == null) {
      throw new IllegalArgumentException("--deviation is needed");
    }
    return deviation;
  }

  private GridConvergence convergence() {
    if (convergence != null) {
      return GridConvergence.ofDegreesEast(convergence.degreesEast(), "grid");
    }
    if (place == null) {
      throw new IllegalArgumentException("--convergence is needed, or --at for it");
    }
    return MapGrid.universal(place).convergence(place);
  }
}
