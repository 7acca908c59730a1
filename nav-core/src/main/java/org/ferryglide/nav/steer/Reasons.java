package org.ferryglide.nav.steer;

import org.ferryglide.nav.plane.SteadyTriangle;

/** From what a kernel found to the reason it stands for. */
final class Reasons {
  private Reasons() {}

  /**
   * The reason of a finding of {@link SteadyTriangle}; {@code solved} if it found nothing amiss.
   */
  static Reason of(int finding, Reason solved) {
    return switch (finding) {
      case SteadyTriangle.SOLVED -> solved;
      case SteadyTriangle.CROSS_STREAM -> Reason.CROSS_STREAM;
      case SteadyTriangle.ADVERSE_STREAM -> Reason.ADVERSE_STREAM;
      case SteadyTriangle.NO_PROGRESS -> Reason.NO_PROGRESS;
      default -> Reason.NO_DATA;
    };
  }
}
