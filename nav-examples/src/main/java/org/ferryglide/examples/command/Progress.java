package org.ferryglide.examples.command;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import picocli.CommandLine.Option;

/**
 * Tells on the error stream that long work goes on: on a terminal a line that is written over, or
 * lines where {@code --progress} asks for them; else nothing.
 */
final class Progress {
  /** Work that is done sooner needs no word. */
  private static final long EVERY_MILLISECONDS = 1000;

  @Option(
      names = "--progress",
      description = "Tell on the error stream that work goes on, though it is no terminal.")
  private boolean asked;

  /** Whether anything is told. */
  boolean isTold(boolean onTerminal) {
    return asked || onTerminal;
  }

  /** Does the work and tells of it, with what it is, second by second. */
  <T> T during(PrintWriter err, boolean onTerminal, String what, Callable<T> work)
      throws Exception {
    if (!isTold(onTerminal)) {
      return work.call();
    }
    CountDownLatch done = new CountDownLatch(1);
    Thread teller = new Thread(() -> tell(err, onTerminal, what, done), "progress");
    teller.setDaemon(true);
    teller.start();
    try {
      return work.call();
    } finally {
      done.countDown();
      teller.join();
    }
  }

  private static void tell(PrintWriter err, boolean onTerminal, String what, CountDownLatch done) {
    long begin = System.nanoTime();
    String shown = "";
    try {
      while (!done.await(EVERY_MILLISECONDS, TimeUnit.MILLISECONDS)) {
        shown = what + ": " + TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - begin) + " s";
        err.print(onTerminal ? "\r" + shown : shown + "\n");
        err.flush();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    if (onTerminal && !shown.isEmpty()) {
      err.print("\r" + " ".repeat(shown.length()) + "\r");
      err.flush();
    }
  }
}
