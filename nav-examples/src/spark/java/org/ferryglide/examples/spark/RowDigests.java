package org.ferryglide.examples.spark;

import java.util.HashMap;
import java.util.Iterator;
import java.util.Map;
import java.util.function.LongFunction;
import org.apache.spark.api.java.function.MapPartitionsFunction;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import scala.Tuple2;

/**
 * Holds the rows of a job, too many to bring together, against those of a single machine: every bit
 * of every row goes into a digest of 64 bits for each thousand rows, which are added, so that a row
 * that comes thrice is no row that comes once.
 */
final class RowDigests {
  private static final long THOUSAND = 1000L;

  private RowDigests() {}

  /**
   * How many thousands of rows differ.
   *
   * @param rows a number, then figures
   * @param count how many rows there must be, numbered from 0
   * @param single the figures of a row, worked by this thread alone
   * @return 0 if all rows are the same to the last bit
   */
  static long differing(Dataset<Row> rows, long count, LongFunction<double[]> single) {
    Map<Long, Long> job = new HashMap<>();
    MapPartitionsFunction<Row, Tuple2<Long, Long>> digests = RowDigests::digests;
    for (Tuple2<Long, Long> block :
        rows.mapPartitions(digests, Encoders.tuple(Encoders.LONG(), Encoders.LONG()))
            .collectAsList()) {
      job.merge(block._1(), block._2(), Long::sum);
    }
    long differing = 0;
    for (long block = 0; block * THOUSAND < count; block++) {
      long digest = 0;
      for (long i = block * THOUSAND; i < Math.min(count, (block + 1) * THOUSAND); i++) {
        digest += digest(i, single.apply(i));
      }
      Long other = job.remove(block);
      differing += other != null && other == digest ? 0 : 1;
    }
    return differing + job.size();
  }

  private static Iterator<Tuple2<Long, Long>> digests(Iterator<Row> rows) {
    Map<Long, Long> blocks = new HashMap<>();
    while (rows.hasNext()) {
      Row row = rows.next();
      double[] figures = new double[row.size() - 1];
      for (int i = 0; i < figures.length; i++) {
        figures[i] = row.getDouble(i + 1);
      }
      blocks.merge(row.getLong(0) / THOUSAND, digest(row.getLong(0), figures), Long::sum);
    }
    return blocks.entrySet().stream()
        .map(block -> new Tuple2<>(block.getKey(), block.getValue()))
        .iterator();
  }

  /** The finishing of SplitMix64 (Steele, Lea and Flood 2014) over number and bits in turn. */
  private static long digest(long number, double[] figures) {
    long digest = mixed(number + 1);
    for (double figure : figures) {
      digest = mixed(31 * digest + Double.doubleToRawLongBits(figure));
    }
    return digest;
  }

  private static long mixed(long bits) {
    long z = bits + 0x9E3779B97F4A7C15L;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }
}
