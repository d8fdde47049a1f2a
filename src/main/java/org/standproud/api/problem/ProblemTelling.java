package org.standproud.api.problem;

import java.lang.reflect.Method;
import java.util.Objects;
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
    if (fault instanceof ErrorResponse refused) {
      ProblemKind kind = ProblemKind.of(refused.getStatusCode().value());
      return kind.because(kind.meaning());
    }
    Method handler = Objects.requireNonNull(handlers.resolveMethod(fault), "a handler of all else");
    ReflectionUtils.makeAccessible(handler);
    Object answer = ReflectionUtils.invokeMethod(handler, answers, fault);
    return answer instanceof ResponseEntity<?> told
            && told.getBody() instanceof ProblemDetail problem
        ? problem
        : ProblemKind.INTERNAL.because(ProblemKind.INTERNAL.meaning());
  }
}
