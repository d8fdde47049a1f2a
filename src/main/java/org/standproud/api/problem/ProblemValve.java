package org.standproud.api.problem;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ErrorReportValve;
import org.apache.coyote.AbstractProtocol;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.standproud.refusal.RefusalKind;

/**
 * Answers with a problem when the server refuses a request before the application sees it, such as
 * an invalid address. Public because the server creates it by class name.
 */
public class ProblemValve extends ErrorReportValve {

  /** Called by the server. */
  public ProblemValve() {}

  @Override
  protected void report(Request request, Response response, @Nullable Throwable fault) {
    int status = response.getStatus();
    if (status < 400 || response.getContentWritten() > 0 || !response.setErrorReported()) {
      return;
    }
    RefusalKind kind = Problems.kind(status);
    if (unread(request, status)) {
      kind = RefusalKind.STOPPING;
      response.setStatus(Problems.status(kind).value());
      response.setHeader(HttpHeaders.RETRY_AFTER, ProblemExceptionHandler.RETRY_SECONDS);
    }
    // Constants of this program, without quotes: nothing to escape.
    String problem =
        "{\"type\":\"%s\",\"title\":\"%s\",\"status\":%d,\"detail\":\"%s\"}"
            .formatted(kind.type(), kind.title(), response.getStatus(), kind.meaning());
    try {
      response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
      response.setHeader("X-Content-Type-Options", "nosniff");
      response.getOutputStream().write(problem.getBytes(StandardCharsets.UTF_8));
      response.finishResponse();
    } catch (IOException e) {
      container.getLogger().debug("the client disconnected", e);
    }
  }

  /**
   * Whether a request came in after shutdown began. Its headers are not read then, and the server,
   * finding no host, answers a valid request with 400, which its client would not retry.
   */
  private static boolean unread(Request request, int status) {
    return (status == 400 || status == 503)
        && request.getConnector().getProtocolHandler() instanceof AbstractProtocol<?> protocol
        && protocol.isPaused();
  }
}
