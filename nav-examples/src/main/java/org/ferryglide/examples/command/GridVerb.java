package org.ferryglide.examples.command;

import org.ferryglide.nav.grid.GridPoint;
import org.ferryglide.nav.grid.GridPrecision;
import org.ferryglide.nav.grid.GridSquare;
import org.ferryglide.nav.grid.LetteredGrid;
import org.ferryglide.nav.grid.MapGrid;
import org.ferryglide.nav.grid.Mgrs;
import org.ferryglide.nav.position.AngleForm;
import org.ferryglide.nav.position.Position;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A position as a grid reference, or a grid reference as a position. */
@Command(
    name = "grid",
    description = "A position as a grid reference, or a grid reference as a position.",
    footer = {
      "",
      "Examples:",
      "  ferryglide grid \"46-11.8N 26-17.6W\"",
      "  ferryglide grid \"26T NS 54521 16194\"",
      "  ferryglide grid --of british \"HU 396 753\""
    })
final class GridVerb extends Verb {
  /** Which references. */
  enum Of {
    MGRS,
    BRITISH,
    IRISH
  }

  @Parameters(index = "0", paramLabel = "PLACE", description = "Position or grid reference.")
  private String place = "";

  @Option(names = "--of", description = "mgrs (if left out), british or irish.")
  private Of of = Of.MGRS;

  @Override
  protected Answer answer() {
    return InputRefused.given(this::worked);
  }

  private Answer worked() {
    Position position;
    @Nullable GridSquare square = null;
    if (looksLikeReference(place)) {
      square = of == Of.MGRS ? Mgrs.parse(place) : lettered().parse(place);
      position = square.centre().position();
    } else {
      position = Position.parse(place);
    }
    GridPoint point =
        of == Of.MGRS ? MapGrid.universal(position).at(position) : lettered().grid().at(position);
    String reference =
        of == Of.MGRS
            ? Mgrs.reference(position, GridPrecision.METRE)
            : lettered().reference(position, GridPrecision.METRE);
    Answer answer = new Answer();
    if (square != null) {
      answer.row("square", square + ", its middle:");
    }
    answer
        .row("position", position.text(AngleForm.DEGREES_MINUTES, 4))
        .row("reference", reference)
        .row(
            "grid point",
            "E "
                + Math.round(point.easting().metres())
                + " N "
                + Math.round(point.northing().metres())
                + ", "
                + point.grid().name())
        .row("convergence", convergence(point.convergence().degreesEast()))
        .value("latitudeDegrees", position.latitudeDegrees())
        .value("longitudeDegrees", position.longitudeDegrees())
        .value("reference", reference)
        .value("eastingMetres", point.easting().metres())
        .value("northingMetres", point.northing().metres())
        .value("grid", point.grid().name())
        .value("convergenceDegreesEast", point.convergence().degreesEast())
        .value("scale", point.scale());
    return answer.notes(square == null ? point.notes() : square.notes());
  }

  private static String convergence(double degreesEast) {
    return Math.rint(Math.abs(degreesEast) * 100.0) / 100.0 + (degreesEast < 0.0 ? "°W" : "°E");
  }

  private LetteredGrid lettered() {
    return of == Of.BRITISH ? LetteredGrid.BRITISH : LetteredGrid.IRISH;
  }

  /** A reference holds two letters side by side; a position never does. */
  private static boolean looksLikeReference(String text) {
    for (int at = 1; at < text.length(); at++) {
      if (Character.isLetter(text.charAt(at)) && Character.isLetter(text.charAt(at - 1))) {
        return true;
      }
    }
    return false;
  }
}
