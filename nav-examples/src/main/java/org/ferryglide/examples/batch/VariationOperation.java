package org.ferryglide.examples.batch;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import org.ferryglide.nav.magnetic.CompassZone;
import org.ferryglide.nav.magnetic.MagneticErrorModel;
import org.ferryglide.nav.magnetic.MagneticModel;
import org.ferryglide.nav.magnetic.MagneticSnapshot;

/**
 * The magnetic field at a place, height and date, from the built-in model made for that date.
 *
 * <p>A date that no built-in model covers is refused, since there is no column to doubt it in.
 */
final class VariationOperation implements Operation.Solver {
  private static final List<MagneticModel> MODELS =
      List.of(MagneticModel.wmm2015v2(), MagneticModel.wmm2020(), MagneticModel.wmm2025());

  private final double[] out = new double[MagneticSnapshot.ELEMENTS];
  private byte[] date = {};
  private MagneticSnapshot snapshot = MODELS.get(0).atDecimalYear(2015.0);
  private MagneticErrorModel errors = errors(MODELS.get(0));

  private VariationOperation() {}

  static Operation operation() {
    return Operation.ofRows(
        "variation",
        List.of("date", "lat", "lon", "height_m"),
        List.of(
            Added.number("variation_deg", 6),
            Added.number("uncertainty_deg", 4),
            Added.number("dip_deg", 6),
            Added.number("horizontal_nt", 3),
            Added.number("total_nt", 3),
            Added.word("zone")),
        VariationOperation::new);
  }

  @Override
  public void solve(Row row, Figures figures) {
    if (!row.isSame(0, date) || date.length == 0) {
      moveTo(row);
    }
    double height = row.number(3, -10_000.0, 850_000.0, "metres");
    snapshot.elements(row.latitude(1), row.longitude(2), height, out, 0);
    double horizontal = out[MagneticSnapshot.HORIZONTAL];
    figures.add(out[MagneticSnapshot.DECLINATION]);
    figures.add(errors.declinationDegrees(horizontal));
    figures.add(out[MagneticSnapshot.DIP]);
    figures.add(horizontal);
    figures.add(out[MagneticSnapshot.TOTAL]);
    figures.add(CompassZone.ofHorizontal(horizontal).name());
  }

  private void moveTo(Row row) {
    double year = row.numberOrNan(0);
    if (Double.isNaN(year)) {
      try {
        year = MagneticModel.decimalYear(LocalDate.parse(row.word(0)));
      } catch (DateTimeParseException e) {
        throw row.refused(0, "must be a date such as 2026-06-14 or a decimal year such as 2026.45");
      }
    }
    MagneticModel model = null;
    for (MagneticModel each : MODELS) {
      if (each.covers(year)) {
        model = each; // where two meet, the later
      }
    }
    if (model == null) {
      throw row.refused(
          0,
          "must be in ["
              + MODELS.get(0).validFromYear()
              + ", "
              + MODELS.get(MODELS.size() - 1).validToYear()
              + "], which the built-in models cover");
    }
    snapshot = model.atDecimalYear(year);
    errors = errors(model);
    date = row.copy(0);
  }

  private static MagneticErrorModel errors(MagneticModel model) {
    return model.errorModel().orElseThrow();
  }
}
