package org.standproud.assessment.batch;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import org.jspecify.annotations.Nullable;

/** Lines of bytes, none longer than a limit, of which one at a time is held. */
final class Lines {

  private final InputStream in;
  private final int limitBytes;
  private long number;

  /**
   * Lines of a stream.
   *
   * @param in the stream
   * @param limitBytes most bytes in a line; what follows them in a longer one is skipped
   */
  Lines(InputStream in, int limitBytes) {
    this.in = new BufferedInputStream(in);
    this.limitBytes = limitBytes;
  }

  /**
   * A line.
   *
   * @param number its number, from 1, blank ones counted
   * @param bytes what stands in it, without its end
   * @param cut whether it was longer than the limit
   */
  record Line(long number, byte[] bytes, boolean cut) {

    private boolean blank() {
      for (byte b : bytes) {
        if (b != ' ' && b != '\t' && b != '\r') {
          return false;
        }
      }
      return !cut;
    }
  }

  /** The next line that is not blank, null after the last. */
  @Nullable Line next() throws IOException {
    for (Line line; (line = any()) != null; ) {
      if (!line.blank()) {
        return line;
      }
    }
    return null;
  }

  private @Nullable Line any() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    boolean cut = false;
    int b = in.read();
    if (b < 0) {
      return null;
    }
    for (; b >= 0 && b != '\n'; b = in.read()) {
      if (bytes.size() < limitBytes) {
        bytes.write(b);
      } else {
        cut = true;
      }
    }
    return new Line(++number, bytes.toByteArray(), cut);
  }
}
