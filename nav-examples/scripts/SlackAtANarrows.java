// Slack at a narrows these days: when less than half a knot runs.
// In nav-examples: java -cp target/ferryglide.jar scripts/SlackAtANarrows.java \
//   scenarios/ollen-skerries
import static org.ferryglide.examples.Shorthand.*;

import java.nio.file.Path;
import org.ferryglide.nav.water.LocalStream;
import org.ferryglide.tide.folder.PassageFolder;

public class SlackAtANarrows {
  public static void main(String[] args) throws Exception {
    var stream = PassageFolder.read(Path.of(args[0])).passage().stream();
    var narrows = LocalStream.of(stream, at("46-12.0N 26-15.0W"));
    var from = time("2026-06-14T00:00+01:00");
    var found = narrows.slackWindows(knots(0.5), from, from.plusSeconds(2 * 86400));
    found.forEach(it -> print(clock(it.from(), 1) + " to " + clock(it.until(), 1)));
    print(found.isWhole() ? "nothing left out" : "without " + found.unseen());
  }
}
// Prints:
//   2026-06-14 04:21 to 2026-06-14 05:30
//   2026-06-14 10:19 to 2026-06-14 11:04
//   2026-06-14 16:42 to 2026-06-14 17:48
//   2026-06-14 22:39 to 2026-06-14 23:22
//   2026-06-15 05:02 to 2026-06-15 06:06
//   2026-06-15 10:59 to 2026-06-15 11:40
//   2026-06-15 17:22 to 2026-06-15 18:24
//   2026-06-15 23:19 to 2026-06-15 23:58
//   nothing left out
