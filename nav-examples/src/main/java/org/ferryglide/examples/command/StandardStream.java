package org.ferryglide.examples.command;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** A standard stream that remembers why it could not be written, which a writer forgets. */
final class StandardStream extends FilterOutputStream {
  private @Nullable IOException failure;

  /** Nothing more can be written; why, the stream itself knows. */
  static final class Closed extends IOException {
    private static final long serialVersionUID = 1L;

    Closed() {
      super("standard output cannot be written");
    }
  }

  StandardStream(FileDescriptor descriptor) {
    this(new FileOutputStream(descriptor));
  }

  StandardStream(OutputStream to) {
    super(to);
  }

  /** A writer of UTF-8: degree signs come out right where the machine's own charset lacks them. */
  PrintWriter writer() {
    return new PrintWriter(new OutputStreamWriter(this, StandardCharsets.UTF_8), false);
  }

  @Override
  public void write(byte[] bytes, int offset, int length) throws IOException {
    try {
      out.write(bytes, offset, length);
    } catch (IOException e) {
      failure = failure == null ? e : failure;
      throw e;
    }
  }

  @Override
  public void write(int one) throws IOException {
    write(new byte[] {(byte) one}, 0, 1);
  }

  /**
   * Whether what was written is lost to somebody who wanted it, as on a full disk. A reader that
   * had enough and closed its pipe, as {@code head} does, did not.
   */
  boolean isLost() {
    return failure != null
        && !String.valueOf(failure.getMessage()).toLowerCase(Locale.ROOT).contains("broken pipe");
  }
}
