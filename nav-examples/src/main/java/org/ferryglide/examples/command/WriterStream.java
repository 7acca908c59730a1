package org.ferryglide.examples.command;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * Bytes of UTF-8 into the command's writer of standard output. Bytes that are no UTF-8 become the
 * replacement character; into a file they go as they are.
 */
final class WriterStream extends OutputStream {
  private static final int MOST_BYTES = 1 << 13;

  private final PrintWriter out;
  private final CharsetDecoder decoder =
      StandardCharsets.UTF_8
          .newDecoder()
          .onMalformedInput(CodingErrorAction.REPLACE)
          .onUnmappableCharacter(CodingErrorAction.REPLACE);
  private final ByteBuffer bytes = ByteBuffer.allocate(MOST_BYTES);
  private final CharBuffer chars = CharBuffer.allocate(MOST_BYTES);

  WriterStream(PrintWriter out) {
    this.out = out;
  }

  @Override
  public void write(int one) throws IOException {
    write(new byte[] {(byte) one}, 0, 1);
  }

  @Override
  public void write(byte[] source, int offset, int length) throws IOException {
    int place = offset;
    int end = offset + length;
    while (place < end) {
      int count = Math.min(end - place, bytes.remaining());
      bytes.put(source, place, count);
      place += count;
      decode(false);
    }
    if (out.checkError()) { // which flushes; a pipe may have closed
      throw new StandardStream.Closed();
    }
  }

  private void decode(boolean last) {
    bytes.flip();
    decoder.decode(bytes, chars, last);
    bytes.compact(); // what is left is the beginning of a character
    chars.flip();
    out.append(chars);
    chars.clear();
  }

  @Override
  public void close() {
    decode(true);
    out.flush();
  }
}
