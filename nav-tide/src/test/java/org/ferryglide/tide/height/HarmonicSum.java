package org.ferryglide.tide.height;

import java.time.Instant;
import java.util.List;
import org.ferryglide.nav.note.Note;

/** A sum of cosines in plain sight, as a curve to search that no table made. */
final class HarmonicSum implements TideCurve {
  private static final long serialVersionUID = 1L;

  private final double[] amplitudes;
  private final double[] radiansPerSecond;
  private final double[] phases;
  private final double start;
  private final double end;

  /** Speeds in degrees an hour, phases in degrees at 1970-01-01T00:00Z. */
  HarmonicSum(double[] amplitudes, double[] speeds, double[] phases, double start, double end) {
    this.amplitudes = amplitudes.clone();
    this.radiansPerSecond = new double[speeds.length];
    this.phases = new double[phases.length];
    for (int i = 0; i < speeds.length; i++) {
      radiansPerSecond[i] = Math.toRadians(speeds[i]) / 3600.0;
      this.phases[i] = Math.toRadians(phases[i]);
    }
    this.start = start;
    this.end = end;
  }

  static HarmonicSum endless(double[] amplitudes, double[] speeds, double[] phases) {
    return new HarmonicSum(
        amplitudes, speeds, phases, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  private boolean isOutside(double epochSeconds) {
    return !(epochSeconds >= start && epochSeconds <= end);
  }

  @Override
  public double heightMetres(double epochSeconds) {
    double height = isOutside(epochSeconds) ? Double.NaN : 0.0;
    for (int i = 0; i < amplitudes.length; i++) {
      height += amplitudes[i] * Math.cos(radiansPerSecond[i] * epochSeconds + phases[i]);
    }
    return height;
  }

  @Override
  public double slopeMetresPerSecond(double epochSeconds) {
    double slope = isOutside(epochSeconds) ? Double.NaN : 0.0;
    for (int i = 0; i < amplitudes.length; i++) {
      double w = radiansPerSecond[i];
      slope -= amplitudes[i] * w * Math.sin(w * epochSeconds + phases[i]);
    }
    return slope;
  }

  @Override
  public double greatestSlopeChange(double fromSeconds, double toSeconds) {
    double greatest = 0.0;
    for (int i = 0; i < amplitudes.length; i++) {
      greatest += Math.abs(amplitudes[i]) * radiansPerSecond[i] * radiansPerSecond[i];
    }
    return greatest;
  }

  @Override
  public double startSeconds() {
    return start;
  }

  @Override
  public double endSeconds() {
    return end;
  }

  @Override
  public String datum() {
    return "mean level";
  }

  @Override
  public List<Note> notesAt(Instant instant) {
    return List.of();
  }
}
