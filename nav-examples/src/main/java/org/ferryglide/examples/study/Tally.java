package org.ferryglide.examples.study;

/** Mean and greatest of some figures. */
final class Tally {
  private long count;
  private double sum;
  private double greatest;

  void add(double value) {
    if (!Double.isNaN(value)) { // what was not worked does not count
      count++;
      sum += value;
      greatest = Math.max(greatest, value);
    }
  }

  long count() {
    return count;
  }

  double mean() {
    return sum / count;
  }

  double greatest() {
    return greatest;
  }
}
