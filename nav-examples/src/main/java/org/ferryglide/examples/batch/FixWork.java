package org.ferryglide.examples.batch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.ferryglide.nav.bearing.TrueBearing;
import org.ferryglide.nav.fix.BearingLine;
import org.ferryglide.nav.fix.Fix;
import org.ferryglide.nav.fix.FixSolver;
import org.ferryglide.nav.fix.NoFix;
import org.ferryglide.nav.note.Outcome;
import org.ferryglide.nav.position.Position;
import org.ferryglide.nav.reckon.ErrorEllipse;
import org.jspecify.annotations.Nullable;

/**
 * A fix from true bearings: one row out for the rows of one id, which stand together.
 *
 * <p>The outcome is OK; or why there is no fix, with empty figures; or, with figures, what the fix
 * is doubted for, as {@code POOR_CUT} or {@code DISAGREEMENT}, several separated by spaces. {@code
 * REFUSED} stands where a row of the id was refused, since the other bearings alone would make
 * another fix.
 */
final class FixWork extends ChunkWork {
  private static final String REFUSED = "REFUSED";

  private final double chance;
  private final List<BearingLine> lines = new ArrayList<>();
  private byte @Nullable [] id;
  private String name = "";
  private byte[] lineEnding = {'\n'};
  private boolean isRefused;
  private boolean isStray;
  private boolean inRow;

  private FixWork(Heading heading, List<Added> adds, BatchOptions options) {
    super(heading, adds, options);
    this.chance = options.chance();
  }

  static Operation operation() {
    List<Added> adds =
        List.of(
            Added.latitude("lat"),
            Added.longitude("lon"),
            Added.number("semi_major_m", 3),
            Added.number("semi_minor_m", 3),
            Added.direction("axis_deg"),
            Added.word("outcome"));
    return new Operation(
        "fix",
        List.of("id", "mark_lat", "mark_lon", "bearing_deg", "sigma_deg"),
        adds,
        true,
        (heading, options) -> new FixWork(heading, adds, options));
  }

  @Override
  void work(Row row, byte[] bytes, int start, int content, int end) {
    inRow = true;
    if (id == null || !row.isSame(0, id)) {
      write();
      id = row.copy(0);
      name = row.text(0);
      isRefused = isStray;
    }
    isStray = false;
    if (end > content) {
      lineEnding = Arrays.copyOfRange(bytes, content, end);
    }
    lines.add(
        BearingLine.of(
            "mark " + (lines.size() + 1),
            Position.ofDegrees(row.latitude(1), row.longitude(2)),
            TrueBearing.ofDegrees(row.direction(3)),
            row.number(4, 1e-6, 180.0, "degrees")));
    inRow = false;
  }

  @Override
  void refused(RefusedRow why, byte[] bytes, int start, int content, int end) {
    isRefused = true;
    isStray = !inRow; // a row without an id may belong to the fix before or behind it
    inRow = false;
  }

  @Override
  void blank(byte[] bytes, int start, int end) {}

  @Override
  void ended(long lines) {
    write();
  }

  private void write() {
    if (id == null) {
      return;
    }
    byte[] written = Csv.quoted(name);
    figures().start(written, 0, written.length);
    if (isRefused) {
      outcome(REFUSED);
    } else {
      Outcome<Fix, NoFix> outcome = FixSolver.standard().solve(lines);
      outcome.match(
          fix -> {
            solved(fix);
            return fix;
          },
          noFix -> {
            outcome(noFix.reason().name());
            return noFix;
          });
    }
    figures().end(lineEnding, 0, lineEnding.length);
    lines.clear();
    isRefused = false;
  }

  private void outcome(String word) {
    for (int i = 0; i < 5; i++) {
      figures().skip();
    }
    figures().add(word);
  }

  private void solved(Fix fix) {
    ErrorEllipse ellipse = fix.covariance().ellipse(chance);
    figures().add(fix.position().latitudeDegrees());
    figures().add(fix.position().longitudeDegrees());
    figures().add(ellipse.semiMajorAxis().metres());
    figures().add(ellipse.semiMinorAxis().metres());
    figures().add(ellipse.direction().degrees());
    String doubts =
        fix.notes().stream()
            .map(note -> note.code().substring(note.code().indexOf('.') + 1))
            .map(code -> code.replace('-', '_').toUpperCase(Locale.ROOT))
            .distinct()
            .collect(Collectors.joining(" "));
    figures().add(doubts.isEmpty() ? "OK" : doubts);
  }
}
