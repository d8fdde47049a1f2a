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
 * Tells as a problem what the server refuses before the application sees it, such as an address
 * that is none. Named to the server by class, so public.
 */
public class ProblemValve extends ErrorReportValve {

  /** Made by the server. */
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
    // Constants of this program, free of quotes: there is nothing to escape.
    String problem =
        "{\"type\":\"%s\",\"title\":\"%s\",\"status\":%d,\"detail\":\"%s\"}"
            .formatted(kind.type(), kind.title(), response.getStatus(), kind.meaning());
    try {
      response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
      response.setHeader("X-Content-Type-Options", "nosniff");
      response.getOutputStream().write(problem.getBytes(StandardCharsets.UTF_8));
      response.finishResponse();
    } catch (IOException e) {
      container.getLogger().debug("the caller is gone", e);
    }
  }

  /**
   * Whether a request came in after the server was told to stop. Its headers are not read then, and
   * the server, finding no host among them, calls a sound request a bad one (400), which its sender
   * would not send again.
   */
  private static boolean unread(Request request, int status) {
    return (status == 400 || status == 503)
        && request.getConnector().getProtocolHandler() instanceof AbstractProtocol<?> protocol
        && protocol.isPaused();
  }
}
