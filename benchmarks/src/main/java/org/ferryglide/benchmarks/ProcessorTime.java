package org.ferryglide.benchmarks;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.util.Collection;
import java.util.List;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.infra.IterationParams;
import org.openjdk.jmh.profile.InternalProfiler;
import org.openjdk.jmh.results.AggregationPolicy;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.ScalarResult;

/**
 * Nanoseconds of a processor that an operation takes in the thread that runs the benchmark: what
 * the clock would show if no other program ran. For benchmarks of one thread only.
 */
public final class ProcessorTime implements InternalProfiler {
  /** The name of the result. */
  static final String LABEL = "processor.time";

  private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
  private long before;

  /** Called by JMH. */
  public ProcessorTime() {}

  @Override
  public String getDescription() {
    return "processor time of the benchmark's thread";
  }

  @Override
  public void beforeIteration(BenchmarkParams benchmark, IterationParams iteration) {
    before = workers();
  }

  @Override
  public Collection<? extends Result<?>> afterIteration(
      BenchmarkParams benchmark, IterationParams iteration, IterationResult result) {
    double taken = (double) (workers() - before) / result.getMetadata().getAllOps();
    return List.of(new ScalarResult(LABEL, taken, "ns/op", AggregationPolicy.AVG));
  }

  /** Nanoseconds taken so far by the threads that run benchmarks. */
  private long workers() {
    long sum = 0;
    for (long id : threads.getAllThreadIds()) {
      ThreadInfo thread = threads.getThreadInfo(id);
      if (thread != null && thread.getThreadName().contains("jmh-worker")) {
        sum += Math.max(0, threads.getThreadCpuTime(id));
      }
    }
    return sum;
  }
}
