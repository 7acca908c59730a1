// Leg-error study: how much shorter the geodesic is than the rhumb line, by latitude.
// In nav-examples: java -cp target/ferryglide.jar scripts/LegErrorStudy.java
import static org.ferryglide.examples.Shorthand.*;

import java.util.SplittableRandom;
import org.ferryglide.nav.geodesy.LegComparison;
import org.ferryglide.nav.position.Position;

public class LegErrorStudy {
  public static void main(String[] args) {
    var random = new SplittableRandom(1);
    for (int latitude = 0; latitude <= 70; latitude += 10) {
      double most = 0;
      for (int leg = 0; leg < 1000; leg++) { // legs of up to half a degree each way
        var end = Position.ofDegrees(latitude + random.nextDouble() / 2, random.nextDouble());
        var excess = LegComparison.between(Position.ofDegrees(latitude, 0), end).lengthExcess();
        most = Math.max(most, excess.metres());
      }
      print(latitude + "° to " + Math.round(most * 1000) + " mm");
    }
  }
}
// Prints:
//   0° to 0 mm
//   10° to 48 mm
//   20° to 173 mm
//   30° to 338 mm
//   40° to 529 mm
//   50° to 657 mm
//   60° to 722 mm
//   70° to 746 mm
