// Lay off a course: for a paddler with a chart and a compass.
// In nav-examples: java -cp target/ferryglide.jar scripts/LayOffACourse.java
import static org.ferryglide.examples.Shorthand.*;

public class LayOffACourse {
  public static void main(String[] args) {
    var leg = leg("46-10.0N 26-20.0W", "46-11.8N 26-17.6W");
    var variation = variation(leg.midpoint(), time("2026-06-14T11:40+01:00"));
    print(leg.length().inNauticalMiles(1) + ", course " + leg.course().threeDigits() + " true");
    print("by compass " + leg.course().toMagnetic(variation).threeDigits() + " magnetic");
    print(
        "looking back "
            + leg.course().reciprocal().toMagnetic(variation).threeDigits()
            + " magnetic");
  }
}
// Prints:
//   2.5 NM, course 043° true
//   by compass 051° magnetic
//   looking back 231° magnetic
