package org.ferryglide.tide.harmonic;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.ferryglide.nav.basics.EpochSeconds;
import org.ferryglide.tide.height.TideEvent;

/**
 * Takes out of a list of waters what only the step between two years' predictions makes. Two things
 * can go wrong there. One water may come in both years, before midnight in the old and after it in
 * the new, with a false turn at midnight between them. And the step may lift a low water above the
 * high water after it.
 */
final class NewYearWaters {
  /** How far apart two years' times of one water may be; of a stand they are hours apart. */
  private static final Duration SAME_WATER = Duration.ofHours(3);

  /** Turns at the step are placed there to within this, seconds. */
  private static final double AT_STEP_SECONDS = 0.01;

  private NewYearWaters() {}

  static List<TideEvent> without(List<TideEvent> waters, HarmonicPredictor predictor) {
    List<TideEvent> kept = new ArrayList<>(waters);
    for (int i = 0; i < kept.size(); i++) {
      double seconds = EpochSeconds.of(kept.get(i).time());
      double step = predictor.nextBreakAfter(seconds - AT_STEP_SECONDS);
      boolean atStep = Math.abs(step - seconds) <= AT_STEP_SECONDS;
      if (atStep && i > 0 && i + 1 < kept.size() && isOneWater(kept.get(i - 1), kept.get(i + 1))) {
        kept.subList(i, i + 2).clear(); // the old year's time stays
        i--;
      } else if (i + 1 < kept.size()
          && step <= EpochSeconds.of(kept.get(i + 1).time())
          && isUpsideDown(kept.get(i), kept.get(i + 1))) {
        kept.subList(i, i + 2).clear();
        i = Math.max(-1, i - 2);
      }
    }
    return kept;
  }

  private static boolean isOneWater(TideEvent before, TideEvent after) {
    return Duration.between(before.time(), after.time()).compareTo(SAME_WATER) < 0;
  }

  private static boolean isUpsideDown(TideEvent one, TideEvent next) {
    return one.isHigh()
        ? one.height().metres() < next.height().metres()
        : one.height().metres() > next.height().metres();
  }
}
