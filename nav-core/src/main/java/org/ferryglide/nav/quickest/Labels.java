package org.ferryglide.nav.quickest;

import java.util.Arrays;

/**
 * The labels of a front: for each the node, the time, the label from which it came and whether the
 * craft waited for it; and the queue of those that are not yet settled. Not thread-safe.
 */
final class Labels {
  private final LabelQueue queue = new LabelQueue();
  private int[] nodes = new int[4096];
  private double[] times = new double[4096];
  private int[] before = new int[4096];
  private boolean[] waited = new boolean[4096];
  private int count;

  /** Adds a label and puts it into the queue. */
  void add(int node, double time, int from, boolean waiting) {
    if (count == nodes.length) {
      int longer = 2 * count;
      nodes = Arrays.copyOf(nodes, longer);
      times = Arrays.copyOf(times, longer);
      before = Arrays.copyOf(before, longer);
      waited = Arrays.copyOf(waited, longer);
    }
    nodes[count] = node;
    times[count] = time;
    before[count] = from;
    waited[count] = waiting;
    queue.add(time, count++);
  }

  boolean isEmpty() {
    return queue.isEmpty();
  }

  /** Takes the earliest label out of the queue. */
  int poll() {
    return queue.poll();
  }

  int node(int label) {
    return nodes[label];
  }

  double time(int label) {
    return times[label];
  }

  /** The time of the label from which one came. */
  double timeBefore(int label) {
    return times[before[label]];
  }

  /** Whether the craft waited at the node until the time of the label. */
  boolean waited(int label) {
    return waited[label];
  }

  /** Whether it waited at any label up to one. */
  boolean waitedUpTo(int label) {
    for (int l = label; l >= 0; l = before[l]) {
      if (waited[l]) {
        return true;
      }
    }
    return false;
  }

  /** The label from which one came; -1 for the first. */
  int before(int label) {
    return before[label];
  }

  /** The nodes of the labels from the first to one, in order of time. */
  int[] nodes(int label) {
    int[] chain = chain(label);
    for (int i = 0; i < chain.length; i++) {
      chain[i] = nodes[chain[i]];
    }
    return chain;
  }

  /** When the labels from the first to one were waited for; 0 for those that were not. */
  double[] waits(int label) {
    int[] chain = chain(label);
    double[] waits = new double[chain.length];
    for (int i = 0; i < chain.length; i++) {
      waits[i] = waited[chain[i]] ? times[chain[i]] : 0.0;
    }
    return waits;
  }

  private int[] chain(int label) {
    int n = 0;
    for (int l = label; l >= 0; l = before[l]) {
      n++;
    }
    int[] chain = new int[n];
    for (int l = label; l >= 0; l = before[l]) {
      chain[--n] = l;
    }
    return chain;
  }
}
