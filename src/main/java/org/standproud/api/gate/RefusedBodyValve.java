package org.standproud.api.gate;

import jakarta.servlet.ServletException;
import java.io.IOException;
import java.io.InputStream;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ValveBase;
import org.apache.coyote.ActionCode;

/**
 * Ends a connection whose request was refused while its body still arrives. The server would read
 * the rest for as long as it takes, so that the next request can follow; here only what is on its
 * way already is read, so that the caller sees the answer, and only for so many callers at a time.
 */
final class RefusedBodyValve extends ValveBase {

  /**
   * What a caller may have sent before it could know that it is refused; the server's own limit.
   */
  private static final int MOST_BYTES = 2 << 20;

  private static final int PIECE_BYTES = 8_192;

  /** How long the rest may take to arrive; common practice, no source. */
  private static final long MOST_NANOS = 2_000_000_000L;

  private final StrangerBodies strangers;

  RefusedBodyValve(StrangerBodies strangers) {
    super(true);
    this.strangers = strangers;
  }

  @Override
  public void invoke(Request request, Response response) throws IOException, ServletException {
    getNext().invoke(request, response);
    if (request.isAsync() || response.getStatus() < 300 || request.isFinished()) {
      return;
    }
    response.finishResponse();
    if (!drained(request)) {
      request.getCoyoteRequest().action(ActionCode.DISABLE_SWALLOW_INPUT, null);
    }
  }

  private boolean drained(Request request) {
    try (StrangerBodies.Place place = strangers.place(request.getRemoteAddr())) {
      if (place == null) {
        return false;
      }
      long end = System.nanoTime() + MOST_NANOS;
      InputStream in = request.getStream();
      byte[] piece = new byte[PIECE_BYTES];
      int left = MOST_BYTES;
      while (left > 0 && System.nanoTime() - end < 0) {
        int read = in.read(piece, 0, Math.min(PIECE_BYTES, left));
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
}
