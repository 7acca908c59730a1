// Fix in fog: three bearings by a deck compass, each good to about 3 degrees.
// In nav-examples: java -cp target/ferryglide.jar scripts/FixInFog.java
import static org.ferryglide.examples.Shorthand.*;

import java.util.List;
import org.ferryglide.nav.bearing.MagneticBearing;
import org.ferryglide.nav.fix.BearingLine;
import org.ferryglide.nav.fix.FixSolver;
import org.ferryglide.nav.position.AngleForm;

public class FixInFog {
  static BearingLine line(String mark, String place, double magnetic) {
    var variation = variation(at(place), time("2026-06-14T12:00Z"));
    return BearingLine.ofMagnetic(
        mark, at(place), MagneticBearing.ofDegrees(magnetic), variation, 3);
  }

  public static void main(String[] args) {
    var fix =
        FixSolver.standard()
            .solve(
                List.of(
                    line("beacon", "46-11.80N 26-17.60W", 268),
                    line("cairn", "46-12.10N 26-13.00W", 95),
                    line("rock", "46-10.40N 26-15.40W", 184)))
            .orElseThrow();
    print(fix.position().text(AngleForm.DEGREES_MINUTES, 1));
    print("within " + Math.round(fix.region().reach().metres()) + " m in 95 of 100 cases");
  }
}
// Prints:
//   46°12.0'N 026°15.6'W
//   within 394 m in 95 of 100 cases
