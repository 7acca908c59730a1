package org.ferryglide.examples.batch;

import java.io.IOException;
import java.io.InputStream;
import java.io.InterruptedIOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Objects;
import java.util.Queue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import org.ferryglide.nav.note.InputFormatException;
import org.ferryglide.nav.note.InputProblem;

/**
 * One operation over every row of a comma-separated stream.
 *
 * <p>The first row names the columns; those that the operation needs are found by name, in any
 * order. Each row is written as it came, byte for byte, with the added figures behind it. Fields
 * may stand in quotation marks by RFC 4180, and hold commas, line breaks and doubled marks; a row
 * may be a mebibyte long; lines end with a line feed, with or without a carriage return; a
 * byte-order mark and blank lines pass through.
 *
 * <p>A row that cannot be worked passes with empty figures and is told to the listener by its line.
 * The rows share out over threads by chunks; a queue of bounded length keeps their order and the
 * memory constant.
 *
 * <p>Figures are rounded to the nearest: positions to nine decimals of a degree (0.1 mm),
 * directions to six, lengths to a tenth of a millimetre, excess and separation to a micrometre.
 * With full precision each reads back to the same double.
 *
 * <pre>{@code
 * BatchRun run = BatchRun.of("geodesic-inverse", BatchOptions.standard());
 * BatchSummary summary = run.run("legs.csv", in, out, BatchListener.printingTo(errors));
 * }</pre>
 */
public final class BatchRun {
  /** What is read at once; large beside a row, small beside the memory of any machine. */
  static final int CHUNK_BYTES = 1 << 18;

  private static final double SECONDS_BETWEEN_PROGRESS = 1.0;

  private final Operation operation;
  private final BatchOptions options;

  private BatchRun(Operation operation, BatchOptions options) {
    this.operation = operation;
    this.options = options;
  }

  /**
   * Prepares a run.
   *
   * @param operation its name, one of {@link BatchOperations#names}
   * @param options how it is run
   * @return the run
   * @throws IllegalArgumentException if there is no such operation, or it lacks an option
   */
  public static BatchRun of(String operation, BatchOptions options) {
    return new BatchRun(
        BatchOperations.find(operation, Objects.requireNonNull(options, "options")), options);
  }

  /**
   * The columns that must be there.
   *
   * @return their names, unmodifiable
   */
  public List<String> reads() {
    return operation.reads();
  }

  /**
   * The columns that are added.
   *
   * @return their names, unmodifiable
   */
  public List<String> adds() {
    return operation.adds().stream()
        .map(added -> options.prefix() + added.name())
        .collect(Collectors.toUnmodifiableList());
  }

  /**
   * Works every row.
   *
   * @param source what to call the input in messages, usually the file's name
   * @param in the rows; left open
   * @param out where they go; flushed, left open
   * @param listener hears of refused rows and of progress
   * @return how many rows were read and refused
   * @throws IOException if reading or writing fails
   * @throws InputFormatException if the input has no heading, or it lacks a column
   */
  public BatchSummary run(String source, InputStream in, OutputStream out, BatchListener listener)
      throws IOException {
    long begin = System.nanoTime();
    ChunkReader reader = new ChunkReader(in, CHUNK_BYTES);
    Heading heading = heading(source, reader.first(), out);
    ChunkReader.Cut cut =
        operation.isGrouped() ? new GroupCut(source, heading) : ChunkReader::lastRowEnd;
    Tally tally = new Tally(source, out, listener, options.isStopAtRefusal(), begin);
    ExecutorService threads = Executors.newFixedThreadPool(options.threads());
    try {
      Queue<Future<ChunkWork.Result>> underWay = new ArrayDeque<>();
      int most = 2 * options.threads() + 2;
      boolean more = true;
      while (!tally.stopped && (more || !underWay.isEmpty())) {
        while (!underWay.isEmpty()
            && (!more || underWay.size() >= most || underWay.element().isDone())) {
          tally.take(result(underWay.remove()));
          if (tally.stopped) {
            break;
          }
        }
        Chunk chunk = more && !tally.stopped ? reader.next(cut) : null;
        more = chunk != null;
        if (chunk != null) {
          underWay.add(threads.submit(() -> work(chunk, heading)));
        }
      }
    } finally {
      threads.shutdownNow();
    }
    out.flush();
    return tally.end();
  }

  private ChunkWork.Result work(Chunk chunk, Heading heading) {
    return chunk.kind() == Chunk.Kind.ROWS
        ? operation.solvers().work(heading, options).work(chunk.bytes(), chunk.length())
        : LongLines.result(chunk, operation);
  }

  private static ChunkWork.Result result(Future<ChunkWork.Result> future) throws IOException {
    try {
      return future.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw (IOException) new InterruptedIOException("interrupted").initCause(e);
    } catch (ExecutionException e) {
      throw new IllegalStateException("a chunk could not be worked", e.getCause());
    }
  }

  private Heading heading(String source, byte[] first, OutputStream out) throws IOException {
    int mark =
        first.length >= 3
                && first[0] == (byte) 0xEF
                && first[1] == (byte) 0xBB
                && first[2] == (byte) 0xBF
            ? 3
            : 0;
    int content = ChunkWork.withoutEnding(first, mark, first.length);
    if (content == mark) {
      throw refused(source, "the first row must name the columns, but it is empty");
    }
    for (int i = mark; i < content; i++) {
      if (first[i] == 0 || first[i] == (byte) 0xFF || first[i] == (byte) 0xFE) {
        throw refused(source, "the text must be UTF-8, but its first row holds bytes of another");
      }
    }
    List<String> adds = adds();
    Heading heading =
        Heading.find(
            source,
            first,
            mark,
            content,
            operation.reads(),
            operation.isGrouped() ? List.of() : adds);
    StringBuilder line = new StringBuilder();
    if (operation.isGrouped()) {
      line.append(operation.reads().get(0));
      out.write(first, 0, mark);
    } else {
      out.write(first, 0, content);
    }
    adds.forEach(name -> line.append(',').append(name));
    out.write(line.toString().getBytes(StandardCharsets.UTF_8));
    if (content == first.length) {
      out.write('\n');
    } else {
      out.write(first, content, first.length - content);
    }
    return heading;
  }

  private static InputFormatException refused(String source, String message) {
    return new InputFormatException(new InputProblem(source, 1, 0, message));
  }

  /** Writes results in order and counts. */
  private static final class Tally {
    private final String source;
    private final OutputStream out;
    private final BatchListener listener;
    private final boolean stopAtRefusal;
    private final long begin;
    private double told;
    private long rows;
    private long lines = 1; // the heading
    private long refused;
    private boolean stopped;

    Tally(
        String source,
        OutputStream out,
        BatchListener listener,
        boolean stopAtRefusal,
        long begin) {
      this.source = source;
      this.out = out;
      this.listener = listener;
      this.stopAtRefusal = stopAtRefusal;
      this.begin = begin;
    }

    void take(ChunkWork.Result result) throws IOException {
      stopped = stopAtRefusal && result.refused() > 0;
      out.write(result.bytes(), 0, stopped ? result.lengthBeforeRefusal() : result.length());
      for (ChunkWork.Refusal refusal : result.refusals()) {
        if (refused++ < BatchListener.MOST_TOLD) {
          long line = lines + 1 + refusal.line();
          listener.refused(
              new InputProblem(
                  source,
                  (int) Math.min(line, Integer.MAX_VALUE),
                  refusal.why().column(),
                  refusal.why().reason()));
        }
        if (stopped) {
          return;
        }
      }
      refused += result.refused() - result.refusals().size();
      rows += result.rows();
      lines += result.lines();
      double now = seconds();
      if (now - told >= SECONDS_BETWEEN_PROGRESS) {
        told = now;
        listener.progress(rows, Math.round(rows / now));
      }
    }

    private double seconds() {
      return (System.nanoTime() - begin) * 1e-9;
    }

    BatchSummary end() {
      return new BatchSummary(rows, refused, stopped, seconds());
    }
  }
}
