package org.standproud.api.gate;

import jakarta.servlet.ServletException;
import java.io.IOException;
import java.nio.ByteBuffer;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ValveBase;
import org.apache.coyote.ActionCode;
import org.apache.tomcat.util.net.ApplicationBufferHandler;

/**
 * Limits how long the rest of a body is read after the request was answered. The server would read
 * it without a time limit, to reuse the connection. Here the answer is sent first, then the rest is
 * read for a short time and for a few callers at a time; a connection whose rest does not arrive is
 * closed.
 */
final class RefusedBodyValve extends ValveBase {

  /** What a client may have sent before it sees the refusal; the server's own limit. */
  private static final int MOST_BYTES = 2 << 20;

  /** Time for the rest to arrive; common practice, no source. */
  private static final long MOST_NANOS = 2_000_000_000L;

  private final StrangerBodies strangers;

  RefusedBodyValve(StrangerBodies strangers) {
    super(true);
    this.strangers = strangers;
  }

  @Override
  public void invoke(Request request, Response response) throws IOException, ServletException {
    getNext().invoke(request, response);
    if (request.isAsync() || request.isFinished()) {
      return;
    }
    response.finishResponse();
    if (!isDrained(request)) {
      request.getCoyoteRequest().action(ActionCode.DISABLE_SWALLOW_INPUT, null);
    }
  }

  private boolean isDrained(Request request) {
    try (StrangerBodies.Place place = strangers.place(request.getRemoteAddr())) {
      if (place == null) {
        return false;
      }
      // The request stream is closed with the response, so the rest is read below it.
      org.apache.coyote.Request connection = request.getCoyoteRequest();
      Discarded piece = new Discarded();
      long end = System.nanoTime() + MOST_NANOS;
      int left = MOST_BYTES;
      while (left > 0 && System.nanoTime() - end < 0) {
        int read = connection.doRead(piece);
        if (read < 0) {
          return true;
        }
        left -= read;
      }
      return false;
    } catch (IOException e) {
      return false;
    }
  }

  /** Holds the last piece read. */
  private static final class Discarded implements ApplicationBufferHandler {

    private ByteBuffer buffer = EMPTY_BUFFER;

    @Override
    public void setByteBuffer(ByteBuffer buffer) {
      this.buffer = buffer;
    }

    @Override
    public ByteBuffer getByteBuffer() {
      return buffer;
    }

    @Override
    public void expand(int size) {
      // The server reads into its own buffer.
    }
  }
}
