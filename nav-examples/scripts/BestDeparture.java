// Best departure of the days that the tables cover: all checks of the folder hold.
// In nav-examples: java -cp target/ferryglide.jar scripts/BestDeparture.java \
//   scenarios/ollen-skerries
import static org.ferryglide.examples.Shorthand.*;

import java.nio.file.Path;
import java.time.Duration;
import org.ferryglide.nav.passage.WhenToGo;
import org.ferryglide.tide.folder.PassageFolder;

public class BestDeparture {
  public static void main(String[] args) throws Exception {
    var passage = PassageFolder.read(Path.of(args[0])).passage();
    var from = time("2026-06-14T06:00+01:00"); // for a fortnight, and tables for it: 14 * 24
    var when =
        WhenToGo.search(passage, from, from.plus(Duration.ofHours(12)), Duration.ofMinutes(30));
    when.windows().forEach(it -> print(clock(it.from(), 1) + " to " + clock(it.until(), 1)));
    when.mostMargin().ifPresent(it -> print("most to spare at " + clock(it.time(), 1)));
    print("not checked: " + when.notChecked().stream().map(it -> it.text()).toList());
  }
}
// Prints:
//   2026-06-14 09:47 to 2026-06-14 10:32
//   2026-06-14 11:28 to 2026-06-14 11:41
//   2026-06-14 14:35 to 2026-06-14 17:01
//   most to spare at 2026-06-14 16:00
//   not checked: [land down wind]
