package org.standproud.web.pages;

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

/**
 * What a browser may do with a page: run no script but the files that come with this program, none
 * that stands in a page, load nothing but our own style sheet and drawings, send forms only here,
 * and be framed by no one; the microphone is for the tap test alone. Set before anyone is refused,
 * so that it holds for refusals too.
 */
@Component
@Order(SecurityFilterProperties.DEFAULT_FILTER_ORDER - 1)
class PageHeaders extends OncePerRequestFilter {

  private static final String POLICY =
      "default-src 'none'; script-src 'self'; connect-src 'self'; style-src 'self';"
          + " img-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

  @Override
  protected boolean shouldNotFilter(HttpServletRequest request) {
    return request.getRequestURI().startsWith("/v1/");
  }

  @Override
  protected void doFilterInternal(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws ServletException, IOException {
    response.setHeader("Content-Security-Policy", POLICY);
    response.setHeader("Referrer-Policy", "same-origin");
    response.setHeader(
        "Permissions-Policy",
        request.getRequestURI().equals("/tap-test") ? "microphone=(self)" : "microphone=()");
    response.setHeader("Cross-Origin-Opener-Policy", "same-origin");
    response.setHeader("Cross-Origin-Resource-Policy", "same-origin");
    if (!isFile(request.getRequestURI())) {
      response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
    }
    chain.doFilter(request, response);
  }

  private static boolean isFile(String address) {
    return address.startsWith("/look/") || address.startsWith("/webjars/");
  }
}
