package org.ferryglide.examples.spark;

import org.apache.spark.sql.SparkSession;

/** Sessions on this machine alone: no page to look at, nothing open to the outside. */
final class Sessions {
  private Sessions() {}

  /**
   * A session.
   *
   * @param name what it is called
   * @param threads how many threads work
   * @return the session
   */
  static SparkSession local(String name, int threads) {
    return SparkSession.builder()
        .master("local[" + threads + "]")
        .appName(name)
        .config("spark.ui.enabled", "false")
        .config("spark.driver.host", "127.0.0.1")
        .config("spark.driver.bindAddress", "127.0.0.1")
        .config("spark.sql.session.timeZone", "UTC")
        .config("spark.sql.shuffle.partitions", "8")
        .getOrCreate();
  }
}
