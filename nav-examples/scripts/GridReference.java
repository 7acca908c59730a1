// Grid reference from a receiver's position, and back.
// In nav-examples: java -cp target/ferryglide.jar scripts/GridReference.java
import static org.ferryglide.examples.Shorthand.*;

import org.ferryglide.nav.geodesy.RhumbLeg;
import org.ferryglide.nav.grid.GridPrecision;
import org.ferryglide.nav.grid.MapGrid;
import org.ferryglide.nav.grid.Mgrs;

public class GridReference {
  public static void main(String[] args) {
    var place = at("4611.800,N,02617.600,W");
    String reference = Mgrs.reference(place, GridPrecision.TEN_METRES);
    print(reference);
    double east = MapGrid.universal(place).convergence(place).degreesEast();
    print("grid north is " + Math.round(east * 10) / 10.0 + "° east of true north");
    var back = Mgrs.parse(reference).centre().position();
    double off = RhumbLeg.between(place, back).length().metres();
    print("the middle of its square is " + Math.round(off) + " m off");
  }
}
// Prints:
//   26TNS54521614
//   grid north is 0.5° east of true north
//   the middle of its square is 3 m off
