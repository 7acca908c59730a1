package org.ferryglide.examples.spark;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.apache.spark.api.java.function.MapPartitionsFunction;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructField;
import org.apache.spark.sql.types.StructType;
import scala.Tuple2;

/**
 * What the jobs share. Only numbers of blocks travel to the threads; each part works its blocks
 * with the same kernels as a single machine, into arrays of its own.
 */
final class Jobs {
  /** Parts for each thread, so that one that is late holds nobody up for long. */
  private static final int PARTS_A_THREAD = 4;

  private Jobs() {}

  /** What a part of a job does with the figures of one block. */
  @FunctionalInterface
  interface OfBlock<T> {
    /**
     * Makes the answers of a block.
     *
     * @param block its number
     * @param rows how many rows it has
     * @param figures their figures, row after row
     * @param answers receives what is made of them
     */
    void answer(long block, int rows, double[] figures, List<T> answers);
  }

  /**
   * A session on this machine alone: no page to look at, nothing open to the outside.
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

  /**
   * The numbers of the blocks, shared out over the threads of the session.
   *
   * @param spark the session
   * @param rows what is worked
   * @return the numbers
   */
  static Dataset<Long> blocks(SparkSession spark, NumberedRows rows) {
    int parts = PARTS_A_THREAD * spark.sparkContext().defaultParallelism();
    return spark.range(0, rows.blocks(), 1, parts);
  }

  /** Works blocks in turn, and makes something of each. */
  static <T> Iterator<T> work(NumberedRows rows, Iterator<Long> blocks, OfBlock<T> ofBlock) {
    NumberedRows.Worker worker = rows.worker();
    double[] figures = new double[rows.columns().size() * rows.atATime()];
    List<T> answers = new ArrayList<>();
    return new Iterator<>() {
      private int next;

      @Override
      public boolean hasNext() {
        while (next == answers.size() && blocks.hasNext()) {
          answers.clear();
          next = 0;
          long block = blocks.next();
          worker.work(block * rows.atATime(), rows.rowsOf(block), figures);
          ofBlock.answer(block, rows.rowsOf(block), figures, answers);
        }
        return next < answers.size();
      }

      @Override
      public T next() {
        if (!hasNext()) {
          throw new NoSuchElementException("all blocks are worked");
        }
        return answers.get(next++);
      }
    };
  }

  /**
   * All rows, for whoever wants to ask them more: a number, then the figures.
   *
   * @param spark the session
   * @param rows what is worked
   * @return the rows
   */
  static Dataset<Row> rows(SparkSession spark, NumberedRows rows) {
    List<StructField> fields = new ArrayList<>();
    fields.add(DataTypes.createStructField("number", DataTypes.LongType, false));
    for (String column : rows.columns()) {
      fields.add(DataTypes.createStructField(column, DataTypes.DoubleType, false));
    }
    StructType type = DataTypes.createStructType(fields);
    MapPartitionsFunction<Long, Row> work =
        blocks -> work(rows, blocks, (block, n, figures, out) -> asRows(rows, block, figures, out));
    return blocks(spark, rows).mapPartitions(work, Encoders.row(type));
  }

  private static void asRows(NumberedRows rows, long block, double[] figures, List<Row> out) {
    int width = rows.columns().size();
    for (int i = 0; i < rows.rowsOf(block); i++) {
      Object[] row = new Object[1 + width];
      row[0] = block * rows.atATime() + i;
      for (int k = 0; k < width; k++) {
        row[1 + k] = figures[width * i + k];
      }
      out.add(RowFactory.create(row));
    }
  }

  /**
   * How many blocks of rows differ from those of a single machine. Every bit of every row goes into
   * a digest of 64 bits for each block, so that nothing needs to be brought together.
   *
   * @param spark the session
   * @param rows what is worked by the session
   * @param single what is worked without the engine
   * @return 0 if all rows are the same to the last bit
   */
  static long differing(SparkSession spark, NumberedRows rows, NumberedRows single) {
    MapPartitionsFunction<Long, Tuple2<Long, Long>> digests = blocks -> digests(rows, blocks);
    Map<Long, Long> job = new HashMap<>();
    long differing = 0;
    for (Tuple2<Long, Long> block :
        blocks(spark, rows)
            .mapPartitions(digests, Encoders.tuple(Encoders.LONG(), Encoders.LONG()))
            .collectAsList()) {
      differing += job.put(block._1(), block._2()) == null ? 0 : 1; // none may come twice
    }
    for (Tuple2<Long, Long> block : single(single)) {
      Long other = job.remove(block._1());
      differing += other != null && other.equals(block._2()) ? 0 : 1;
    }
    return differing + job.size();
  }

  /** The digests by this machine's own threads, without the engine. */
  private static List<Tuple2<Long, Long>> single(NumberedRows rows) {
    int parts = PARTS_A_THREAD * Runtime.getRuntime().availableProcessors();
    return LongStream.range(0, parts)
        .parallel()
        .mapToObj(
            part ->
                LongStream.range(rows.blocks() * part / parts, rows.blocks() * (part + 1) / parts))
        .flatMap(
            blocks -> {
              List<Tuple2<Long, Long>> digests = new ArrayList<>();
              digests(rows, blocks.iterator()).forEachRemaining(digests::add);
              return digests.stream();
            })
        .collect(Collectors.toList());
  }

  private static Iterator<Tuple2<Long, Long>> digests(NumberedRows rows, Iterator<Long> blocks) {
    return work(
        rows,
        blocks,
        (block, n, figures, out) ->
            out.add(new Tuple2<>(block, digest(figures, n * rows.columns().size()))));
  }

  /** The finishing of SplitMix64 (Steele, Lea and Flood 2014) over the bits in turn. */
  private static long digest(double[] figures, int length) {
    long digest = length;
    for (int i = 0; i < length; i++) {
      long z = 31 * digest + Double.doubleToRawLongBits(figures[i]) + 0x9E3779B97F4A7C15L;
      z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
      z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
      digest = z ^ (z >>> 31);
    }
    return digest;
  }

  /** How long something takes, by the clock and of all processors together. */
  static final class Watch {
    private final long begin = System.nanoTime();
    private final Duration processors = processors();

    double seconds() {
      return tenths((System.nanoTime() - begin) * 1e-9);
    }

    /** Tells of a job, and of what went before it. */
    String told(String what, String threads, Watch before) {
      double worked = processors().minus(processors).toMillis() * 1e-3;
      return what
          + ", threads "
          + threads
          + ": "
          + seconds()
          + " s, "
          + tenths(worked)
          + " s of processors, after "
          + tenths((begin - before.begin) * 1e-9)
          + " s of opening";
    }

    private static Duration processors() {
      return ProcessHandle.current().info().totalCpuDuration().orElse(Duration.ZERO);
    }

    private static double tenths(double seconds) {
      return Math.round(10.0 * seconds) / 10.0;
    }
  }
}
