package org.standproud.api.problem;

import java.lang.reflect.Method;
import java.util.Objects;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Component;
import org.springframework.util.ReflectionUtils;
import org.springframework.web.ErrorResponse;
import org.springframework.web.method.annotation.ExceptionHandlerMethodResolver;
import org.standproud.assessment.RefusalRenderer;
import org.standproud.refusal.RefusalKind;

/** Renders the problem of a single request for one line of a batch. */
@Component
public final class ProblemRenderer implements RefusalRenderer {

  private final ProblemExceptionHandler answers;
  private final ExceptionHandlerMethodResolver handlers =
      new ExceptionHandlerMethodResolver(ProblemExceptionHandler.class);

  ProblemRenderer(ProblemExceptionHandler answers) {
    this.answers = answers;
  }

  @Override
  public Document render(Exception fault) {
    ProblemDetail problem = Objects.requireNonNull(answer(fault).getBody(), "a problem");
    return new Document(problem.getStatus(), problem);
  }

  /**
   * Returns the whole answer, with Retry-After.
   *
   * @param fault the exception
   */
  ResponseEntity<ProblemDetail> answer(Exception fault) {
    if (fault instanceof ErrorResponse refused) {
      RefusalKind kind = Problems.kind(refused.getStatusCode().value());
      return response(Problems.of(kind), HttpHeaders.EMPTY);
    }
    Method handler =
        Objects.requireNonNull(
            handlers.resolveMethod(fault), "the handler of every" + " exception");
    ReflectionUtils.makeAccessible(handler);
    Object answer = ReflectionUtils.invokeMethod(handler, answers, fault);
    return answer instanceof ResponseEntity<?> whole
            && whole.getBody() instanceof ProblemDetail problem
        ? response(problem, whole.getHeaders())
        : response(Problems.of(RefusalKind.INTERNAL), HttpHeaders.EMPTY);
  }

  private static ResponseEntity<ProblemDetail> response(
      ProblemDetail problem, HttpHeaders headers) {
    return ResponseEntity.status(problem.getStatus())
        .headers(headers)
        .contentType(MediaType.APPLICATION_PROBLEM_JSON)
        .body(problem);
  }
}
