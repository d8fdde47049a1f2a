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

/** The problem that a request would be answered with, for one line of many. */
@Component
public final class ProblemTelling {

  private final ProblemAnswers answers;
  private final ExceptionHandlerMethodResolver handlers =
      new ExceptionHandlerMethodResolver(ProblemAnswers.class);

  ProblemTelling(ProblemAnswers answers) {
    this.answers = answers;
  }

  /**
   * Tells what went wrong.
   *
   * @param fault what was thrown
   */
  public ProblemDetail of(Exception fault) {
    return Objects.requireNonNull(answer(fault).getBody(), "a problem");
  }

  /**
   * The whole answer, with when to come again.
   *
   * @param fault what was thrown
   */
  ResponseEntity<ProblemDetail> answer(Exception fault) {
    if (fault instanceof ErrorResponse refused) {
      ProblemKind kind = ProblemKind.of(refused.getStatusCode().value());
      return told(kind.because(kind.meaning()), HttpHeaders.EMPTY);
    }
    Method handler = Objects.requireNonNull(handlers.resolveMethod(fault), "a handler of all else");
    ReflectionUtils.makeAccessible(handler);
    Object answer = ReflectionUtils.invokeMethod(handler, answers, fault);
    return answer instanceof ResponseEntity<?> told
            && told.getBody() instanceof ProblemDetail problem
        ? told(problem, told.getHeaders())
        : told(ProblemKind.INTERNAL.because(ProblemKind.INTERNAL.meaning()), HttpHeaders.EMPTY);
  }

  private static ResponseEntity<ProblemDetail> told(ProblemDetail problem, HttpHeaders headers) {
    return ResponseEntity.status(problem.getStatus())
        .headers(headers)
        .contentType(MediaType.APPLICATION_PROBLEM_JSON)
        .body(problem);
  }
}
