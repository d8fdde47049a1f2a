package org.standproud.api.assessments;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import org.apache.catalina.connector.ClientAbortException;
import org.apache.coyote.BadRequestException;

/**
 * The bytes of a body as they come. What goes wrong with them is the caller's doing, told apart so
 * from what goes wrong with a disk: the server throws whatever the socket threw.
 */
final class CallersBytes extends FilterInputStream {

  CallersBytes(InputStream bytes) {
    super(bytes);
  }

  @Override
  public int read() throws IOException {
    try {
      return super.read();
    } catch (IOException e) {
      throw brokenOff(e);
    }
  }

  @Override
  public int read(byte[] into, int from, int most) throws IOException {
    try {
      return super.read(into, from, most);
    } catch (IOException e) {
      throw brokenOff(e);
    }
  }

  private static IOException brokenOff(IOException e) {
    return e instanceof ClientAbortException || e instanceof BadRequestException
        ? e
        : new ClientAbortException(e);
  }
}
