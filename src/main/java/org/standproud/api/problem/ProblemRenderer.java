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

/** The problem that a request would be answered with, for one line of many. */
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
   * The whole answer, with when to come again.
   *
   * @param fault what was thrown
   */
  ResponseEntity<ProblemDetail> answer(Exception fault) {
    if (fault instanceof ErrorResponse refused) {
      RefusalKind kind = Problems.kind(refused.getStatusCode().value());
      return told(Problems.of(kind), HttpHeaders.EMPTY);
    }
    Method handler = Objects.requireNonNull(handlers.resolveMethod(fault), "a handler of all else");
    ReflectionUtils.makeAccessible(handler);
    Object answer = ReflectionUtils.invokeMethod(handler, answers, fault);
    return answer instanceof ResponseEntity<?> told
            && told.getBody() instanceof ProblemDetail problem
        ? told(problem, told.getHeaders())
        : told(Problems.of(RefusalKind.INTERNAL), HttpHeaders.EMPTY);
  }

  private static ResponseEntity<ProblemDetail> told(ProblemDetail problem, HttpHeaders headers) {
    return ResponseEntity.status(problem.getStatus())
        .headers(headers)
        .contentType(MediaType.APPLICATION_PROBLEM_JSON)
        .body(problem);
  }
}
