package org.ferryglide.examples.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ferryglide.nav.bearing.MagneticBearing;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.bearing.Variation;
import org.ferryglide.nav.fix.BearingLine;
import org.ferryglide.nav.fix.DistanceCircle;
import org.ferryglide.nav.fix.Fix;
import org.ferryglide.nav.fix.FixSolver;
import org.ferryglide.nav.fix.NoFix;
import org.ferryglide.nav.fix.PositionLine;
import org.ferryglide.nav.measure.Distance;
import org.ferryglide.nav.position.AngleForm;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.teach.Problem;
import org.ferryglide.tide.sheet.Sheet;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A fix from bearings and distances. */
@Command(
    name = "fix",
    description = "A position from bearings and distances of marks.",
    footer = {
      "",
      "FILE has the columns mark,position,bearing,distance_m,error: a bearing as 047T or 055M"
          + " (then",
      "--variation is needed), its standard error in degrees; or a distance, its error in metres.",
      "",
      "Example:",
      "  ferryglide fix nav-examples/scenarios/fix-in-fog.csv --variation 7.8W --working"
    })
final class FixVerb extends Verb {
  @Parameters(index = "0", paramLabel = "FILE", description = "A sheet, a row for each line.")
  private Path file = Path.of("");

  @Option(names = "--variation", paramLabel = "ANGLE", description = "For magnetic bearings.")
  private @Nullable Variation variation;

  @Option(
      names = "--near",
      paramLabel = "PLACE",
      description = "Roughly where, to choose between two places.")
  private @Nullable Position near;

  @Mixin private WorkingOption working = new WorkingOption();

  @Override
  protected Answer answer() throws IOException {
    Sheet sheet =
        Sheet.read(file, List.of("mark", "position", "error"), List.of("bearing", "distance_m"));
    List<PositionLine> lines = new ArrayList<>();
    for (Sheet.Row row : sheet.rows()) {
      Position mark = row.read("position", Position::parse, Position.ofDegrees(0.0, 0.0));
      OptionalDouble error = row.number("error", 0.01, 100_000.0);
      if (row.has("bearing") == row.has("distance_m")) {
        row.problem("bearing", "either a bearing or a distance_m must be given");
      } else if (row.has("bearing")) {
        TrueBearing bearing = row.read("bearing", this::bearing, TrueBearing.ofDegrees(0.0));
        if (error.isPresent() && error.getAsDouble() > 45.0) {
          row.problem("error", "of a bearing must be at most 45 degrees");
        } else if (sheet.isWhole()) {
          lines.add(BearingLine.of(row.text("mark"), mark, bearing, error.orElse(1.0)));
        }
      } else {
        double distance = row.number("distance_m", 1.0, 100_000.0).orElse(1.0);
        if (sheet.isWhole()) {
          lines.add(
              DistanceCircle.of(
                  row.text("mark"),
                  mark,
                  Distance.ofMetres(distance),
                  Distance.ofMetres(error.orElse(1.0))));
        }
      }
    }
    sheet.refuseIfFaulty();
    FixSolver solver = near == null ? FixSolver.standard() : FixSolver.standard().withNear(near);
    return solver.solve(lines).match(fix -> worked(found(fix), lines), FixVerb::none);
  }

  /** Two bearings by hand; in magnetic if that is how they were given. */
  private Answer worked(Answer answer, List<PositionLine> lines) {
    if (working.isWanted()) {
      List<BearingLine> bearings = new ArrayList<>();
      for (PositionLine line : lines) {
        if (line instanceof BearingLine bearing) {
          bearings.add(bearing);
        }
      }
      Variation applied = variation == null ? Variation.ofDegreesEast(0.0) : variation;
      Optional<Problem> worked = ByHand.fixed(bearings, applied);
      worked.ifPresent(it -> answer.working(it.working()));
      if (!worked.isPresent()) {
        answer.row("working", "none by hand: needs two bearings that cut");
      }
    }
    return answer;
  }

  private TrueBearing bearing(String text) {
    if (!text.endsWith("M")) {
      return TrueBearing.parse(text);
    }
    if (variation == null) {
      throw new IllegalArgumentException("a magnetic bearing needs --variation");
    }
    return MagneticBearing.parse(text).toTrue(variation);
  }

  private static Answer found(Fix fix) {
    Position position = fix.position();
    Answer answer =
        new Answer()
            .row("fix", position.text(AngleForm.DEGREES_MINUTES, 2))
            .row(
                "region",
                "95 in 100: within "
                    + Math.round(Math.ceil(fix.region().reach().metres()))
                    + " m of it, "
                    + Math.round(fix.region().areaSquareMetres() / 1e4)
                    + " hectares")
            .row("cut", Math.round(fix.cutDegrees()) + "°")
            .value("latitudeDegrees", position.latitudeDegrees())
            .value("longitudeDegrees", position.longitudeDegrees())
            .value("regionReachMetres", fix.region().reach().metres())
            .value("cutDegrees", fix.cutDegrees());
    List<Object> residuals = new ArrayList<>();
    for (Fix.Residual residual : fix.residuals()) {
      answer.row(
          "off", Math.round(residual.distance().metres()) + " m from " + residual.line().name());
      Map<String, Object> value = new LinkedHashMap<>();
      value.put("mark", residual.line().name());
      value.put("metres", residual.distance().metres());
      residuals.add(value);
    }
    return answer.value("possible", true).value("residuals", residuals).notes(fix.notes());
  }

  private static Answer none(NoFix why) {
    return new Answer()
        .line("no fix: " + why.message())
        .value("possible", false)
        .value("reason", why.reason().name())
        .value("message", why.message())
        .status(Status.NOT_POSSIBLE);
  }
}
