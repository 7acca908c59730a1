package org.ferryglide.tide.harmonic;

import java.util.ArrayList;
import java.util.List;

/** f exp(i (V + u)) of many constituents, at one time after another. */
final class Phasors {
  private final TermsMaker maker;
  private final Terms.Amplitudes amplitudes;
  private Terms terms;

  final double[] real;
  final double[] imaginary;

  Phasors(
      NodalScheme scheme,
      NodalConvention convention,
      List<Constituent> constituents,
      double firstSeconds) {
    List<HarmonicConstant> units = new ArrayList<>();
    for (Constituent constituent : constituents) {
      units.add(new HarmonicConstant(constituent, 1.0, 0.0));
    }
    maker = new TermsMaker(HarmonicConstants.of(scheme, 0.0, units), convention);
    amplitudes = new Terms.Amplitudes(units.size());
    terms = maker.around(firstSeconds);
    real = new double[units.size()];
    imaginary = new double[units.size()];
  }

  void moveTo(double seconds) {
    if (!terms.contains(seconds)) {
      terms = maker.around(seconds);
    }
    terms.amplitudes(seconds, amplitudes);
    for (int i = 0; i < real.length; i++) {
      double turns = terms.speeds[i] * (seconds - terms.epochSeconds);
      double cosine = Turns.cos(turns);
      double sine = Turns.sin(turns);
      real[i] = amplitudes.real[i] * cosine - amplitudes.imaginary[i] * sine;
      imaginary[i] = amplitudes.real[i] * sine + amplitudes.imaginary[i] * cosine;
    }
  }
}
