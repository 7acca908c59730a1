package org.ferryglide.benchmarks;

/**
 * The heap that every benchmark runs in: small, of fixed size, touched beforehand, collected by the
 * plainest collector.
 *
 * <p>A heap that may grow hands out pages nobody has touched yet, and on a virtual machine the
 * first touch of a page can cost more than all the objects on it: there whatever allocates seemed
 * five to ten times slower than it is, in proportion to its bytes.
 */
final class Heap {
  static final String FIRST_SIZE = "-Xms192m";
  static final String GREATEST_SIZE = "-Xmx192m";

  /** Of the size of a cache, so that new objects lie where the last ones did. */
  static final String YOUNG = "-Xmn24m";

  static final String TOUCHED = "-XX:+AlwaysPreTouch";
  static final String COLLECTOR = "-XX:+UseSerialGC";

  private Heap() {}
}
