package org.ferryglide.nav.quickest;

import java.util.Arrays;

/** A binary heap of numbered labels by time. Not thread-safe. */
final class LabelQueue {
  private double[] times = new double[1024];
  private int[] labels = new int[1024];
  private int size;

  boolean isEmpty() {
    return size == 0;
  }

  void add(double time, int label) {
    if (size == times.length) {
      times = Arrays.copyOf(times, 2 * size);
      labels = Arrays.copyOf(labels, 2 * size);
    }
    int i = size++;
    while (i > 0) {
      int parent = (i - 1) >>> 1;
      if (times[parent] <= time) {
        break;
      }
      times[i] = times[parent];
      labels[i] = labels[parent];
      i = parent;
    }
    times[i] = time;
    labels[i] = label;
  }

  /** Takes out the earliest label. */
  int poll() {
    int first = labels[0];
    size--;
    double time = times[size];
    int label = labels[size];
    int i = 0;
    while (true) {
      int child = 2 * i + 1;
      if (child >= size) {
        break;
      }
      if (child + 1 < size && times[child + 1] < times[child]) {
        child++;
      }
      if (times[child] >= time) {
        break;
      }
      times[i] = times[child];
      labels[i] = labels[child];
      i = child;
    }
    times[i] = time;
    labels[i] = label;
    return first;
  }
}
