package org.standproud.api.problem;

import org.jspecify.annotations.Nullable;
import org.springframework.core.MethodParameter;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.converter.HttpMessageConverter;
import org.springframework.http.server.ServerHttpRequest;
import org.springframework.http.server.ServerHttpResponse;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.servlet.mvc.method.annotation.ResponseBodyAdvice;
import org.standproud.assessment.TraceId;

/** Every problem carries its trace id, to find it in the logs of both sides. */
@ControllerAdvice
class ProblemLogging implements ResponseBodyAdvice<Object> {

  @Override
  public boolean supports(
      MethodParameter from, Class<? extends HttpMessageConverter<?>> converter) {
    return true;
  }

  @Override
  public @Nullable Object beforeBodyWrite(
      @Nullable Object body,
      MethodParameter from,
      MediaType type,
      Class<? extends HttpMessageConverter<?>> converter,
      ServerHttpRequest request,
      ServerHttpResponse response) {
    String trace = TraceId.current();
    if (body instanceof ProblemDetail problem && trace != null) {
      problem.setProperty("trace", trace);
    }
    return body;
  }
}
