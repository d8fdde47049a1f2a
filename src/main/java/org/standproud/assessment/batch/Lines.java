package org.standproud.assessment.batch;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import org.jspecify.annotations.Nullable;

/** Reads lines of bytes up to a limit, one at a time. */
final class Lines {

  private final InputStream in;
  private final int limitBytes;
  private long number;

  /**
   * Creates a reader.
   *
   * @param in the stream
   * @param limitBytes most bytes in a line; the rest of a longer line is skipped
   */
  Lines(InputStream in, int limitBytes) {
    this.in = new BufferedInputStream(in);
    this.limitBytes = limitBytes;
  }

  /**
   * A line.
   *
   * @param number its number, from 1, counting blank lines
   * @param bytes its bytes, without the line end
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

  /** The next line that is not blank; null after the last. */
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
