// Course to steer every ten minutes along a leg, the track held.
// In nav-examples: java -cp target/ferryglide.jar scripts/CourseEveryTenMinutes.java \
//   scenarios/ollen-skerries
import static org.ferryglide.examples.Shorthand.*;

import java.nio.file.Path;
import java.time.Duration;
import org.ferryglide.nav.steer.CourseToSteer;
import org.ferryglide.nav.steer.Craft;
import org.ferryglide.nav.steer.Strategy;
import org.ferryglide.tide.folder.PassageFolder;

public class CourseEveryTenMinutes {
  public static void main(String[] args) throws Exception {
    var stream = PassageFolder.read(Path.of(args[0])).passage().stream();
    var leg = leg("46-11.8N 26-17.6W", "46-12.1N 26-13.0W");
    var solver = CourseToSteer.with(Craft.ofSpeed(knots(3.5)), stream);
    solver
        .withStrategy(Strategy.newHeadingEvery(Duration.ofMinutes(10)))
        .solve(leg, time("2026-06-14T12:15+01:00"))
        .match(
            steered -> {
              steered
                  .headings()
                  .forEach(it -> print(clock(it.time(), 1) + " " + it.heading().threeDigits()));
              return steered;
            },
            why -> {
              print("not possible: " + why.message());
              return why;
            });
  }
}
// Prints:
//   2026-06-14 12:15 106°
//   2026-06-14 12:25 108°
//   2026-06-14 12:35 109°
//   2026-06-14 12:45 111°
//   2026-06-14 12:55 112°
//   2026-06-14 13:05 113°
