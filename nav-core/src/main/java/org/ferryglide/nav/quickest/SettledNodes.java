package org.ferryglide.nav.quickest;

import java.util.Arrays;

/** Which nodes a front has settled: when first and last, how often, and by which label first. */
final class SettledNodes {
  private final double[] first;
  private final double[] last;
  private final byte[] times;
  private final int[] firstLabel;

  /** The nodes in the order in which they were first settled. */
  private final int[] order;

  private int count;

  SettledNodes(int nodes) {
    first = new double[nodes];
    last = new double[nodes];
    Arrays.fill(first, Double.POSITIVE_INFINITY);
    Arrays.fill(last, Double.POSITIVE_INFINITY);
    times = new byte[nodes];
    firstLabel = new int[nodes];
    Arrays.fill(firstLabel, -1);
    order = new int[nodes];
  }

  void settle(int node, double time, int label) {
    if (!has(node)) {
      first[node] = time;
      firstLabel[node] = label;
      order[count++] = node;
    }
    last[node] = time;
    times[node]++;
  }

  boolean has(int node) {
    return firstLabel[node] >= 0;
  }

  /** Infinite before the node is settled. */
  double first(int node) {
    return first[node];
  }

  /** Infinite before the node is settled. */
  double last(int node) {
    return last[node];
  }

  /** How often a node was settled. */
  int times(int node) {
    return times[node];
  }

  /** The label by which a node was first settled; -1 if it was not. */
  int firstLabel(int node) {
    return firstLabel[node];
  }

  int nodes() {
    return count;
  }

  /** The node that was settled as the one of a number, from 0 on. */
  int node(int number) {
    return order[number];
  }
}
