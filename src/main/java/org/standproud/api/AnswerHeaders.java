package org.standproud.api;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.boot.security.autoconfigure.web.servlet.SecurityFilterProperties;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;
import org.standproud.api.conditional.EntityTags;

/**
 * Sets the headers of every answer: no content sniffing, no shared caching of job data, no scripts
 * or frames around answers meant for systems. Pages set their own content security policy.
 */
@Component
@Order(AnswerHeaders.BEFORE_THE_GATE)
public class AnswerHeaders extends OncePerRequestFilter {

  /** Order of the filters whose headers are also set on refusals. */
  public static final int BEFORE_THE_GATE = SecurityFilterProperties.DEFAULT_FILTER_ORDER - 2;

  /** Holds no job data, so clients may cache and revalidate it. */
  static final String CATALOGUE = "/v1/catalogue";

  private static final String NOTHING = "default-src 'none'; frame-ancestors 'none'";

  AnswerHeaders() {}

  @Override
  protected void doFilterInternal(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws ServletException, IOException {
    response.setHeader("X-Content-Type-Options", "nosniff");
    String address = request.getRequestURI();
    if (address.startsWith("/v1/")) {
      response.setHeader("Content-Security-Policy", NOTHING);
      response.setHeader("Referrer-Policy", "no-referrer");
    }
    if (address.startsWith(CATALOGUE)) {
      response.setHeader(HttpHeaders.CACHE_CONTROL, EntityTags.ASK_EACH_TIME);
    } else if (address.startsWith("/v1/")) {
      response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
    }
    chain.doFilter(request, response);
  }
}
