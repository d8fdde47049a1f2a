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
 * Sets the content security policy of pages: no scripts but the files of this program, no inline
 * scripts, only our own style sheet and drawings, forms only to this service, no framing, the
 * microphone on the tap test alone. Set before access is checked, so that it also covers refusals.
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
