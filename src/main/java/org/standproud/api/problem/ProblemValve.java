package org.standproud.api.problem;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ErrorReportValve;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;

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
    ProblemKind kind = ProblemKind.of(status);
    // Constants of this program, free of quotes: there is nothing to escape.
    String problem =
        "{\"type\":\"%s\",\"title\":\"%s\",\"status\":%d,\"detail\":\"%s\"}"
            .formatted(kind.type(), kind.title(), status, kind.meaning());
    try {
      response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
      response.setHeader("X-Content-Type-Options", "nosniff");
      response.getOutputStream().write(problem.getBytes(StandardCharsets.UTF_8));
      response.finishResponse();
    } catch (IOException e) {
      container.getLogger().debug("the caller is gone", e);
    }
  }
}
