// Tide window for a bar: when half a metre of water stands over a ledge that dries 1.2 m.
// In nav-examples: java -cp target/ferryglide.jar scripts/TideWindowForABar.java \
//   scenarios/ollen-skerries/tides/dunlathe.csv
import static org.ferryglide.examples.Shorthand.*;

import java.nio.file.Path;
import org.ferryglide.nav.water.ChartedDepth;
import org.ferryglide.tide.height.TableCurve;
import org.ferryglide.tide.height.TideTable;

public class TideWindowForABar {
  public static void main(String[] args) throws Exception {
    var table = TideTable.read(Path.of(args[0]));
    var bar = ChartedDepth.ofDryingHeight(metres(1.2), table.datum());
    var day = time("2026-06-14T00:00+01:00");
    var needed = metres(0.5);
    var margin = metres(0.2);
    for (var window :
        TableCurve.cosine(table).windowsOver(bar, needed, margin, day, day.plusSeconds(86400))) {
      print(clock(window.from(), 1) + " to " + clock(window.until(), 1));
    }
  }
}
// Prints:
//   2026-06-14 01:30 to 2026-06-14 09:21
//   2026-06-14 13:55 to 2026-06-14 21:36
